// Where the page that is one file has the program from: its own end. Put before boot.js when the page is built, behind
// `createProgram`, which is Emscripten's.
const opening = "Unpacking the trainer";
const notLoaded = "Slopewise could not be unpacked: this file may be damaged. Copy it again, from where it is whole.";
const canOpenProgram = typeof DecompressionStream === "function";

// What is packed in an element as base64 of gzip, as a stream of bytes; in pieces, so that the page can say how far it
// is. Each piece is whole groups of four letters.
function unpacked(id) {
    const letters = document.getElementById(id).textContent, piece = 1 << 18;
    let at = 0;
    const bytes = new ReadableStream({
        pull(out) {
            if (at >= letters.length) return out.close();
            out.enqueue(Uint8Array.from(atob(letters.slice(at, at + piece)), (letter) => letter.charCodeAt(0)));
            at += piece;
        },
    });
    return bytes.pipeThrough(new DecompressionStream("gzip"));
}

const openProgram = async () => unpacked("packed-program");
const programMaker = async () => createProgram;

// All of it is here at once.
let first;
const withSecond = (imports) => imports;
const followWithSecond = async () => {};

// There is no file of licences beside this one: the link leads to the text inside it.
async function linkLicences() {
    const text = await new Response(unpacked("packed-licences")).text();
    document.getElementById("licences").href = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
}
if (canOpenProgram) linkLicences();
