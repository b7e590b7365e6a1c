// Where the site's page has the program from: files beside it. Put before boot.js when the page is built. The build is
// part of their addresses, so that no cache on the way mixes two of them.
const opening = "Loading the trainer";
const notLoaded = "Slopewise could not be loaded. Check the connection and load the page again.";
const canOpenProgram = true;
const build = document.querySelector("meta[name=build]").content;

async function answerOf(address) {
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${address}: the server answered ${response.status} ${response.statusText}`);
    return response;
}

// The first part of its WebAssembly, as a stream of bytes.
async function openProgram() {
    // Kept on the device, the second is there as soon. And it has to be: what is waited for below is asked of the network
    // alone, past the worker that keeps it.
    if (navigator.serviceWorker?.controller) await fetchSecond();
    return (await answerOf(`slopewise.wasm?${build}`)).body;
}

// ---- The second part -------------------------------------------------------------------------------------------------
//
// What the first screen does not run (web/ship/parts.mjs) follows while that screen is read. Until then each of its
// functions is imported from here, under its place in the table of functions; once there, it has put itself into that
// place. A visitor who is quicker than the line waits for it: the call itself does, so nothing can go wrong between.
const secondAddress = `slopewise_second.wasm?${build}`;
let secondBytes;
let first; // what the first part exports, once it runs
let whole = false;

const withSecond = (imports) => ({ ...imports, second: new Proxy({}, { get: (_, place) => (...given) => functionAt(place)(...given) }) });

function functionAt(place) {
    if (!whole) waitForSecond();
    const table = Object.values(first).find((one) => one instanceof WebAssembly.Table);
    return table.get(Number(place));
}

async function fetchSecond() {
    secondBytes = await (await answerOf(secondAddress)).arrayBuffer();
}

async function followWithSecond() {
    if (!secondBytes) await fetchSecond();
    const compiled = await WebAssembly.compile(secondBytes);
    if (!whole) await WebAssembly.instantiate(compiled, { first });
    whole = true;
}

function waitForSecond() {
    try {
        performance.mark("waited for the second part");
        new WebAssembly.Instance(new WebAssembly.Module(secondBytes ?? secondAtOnce()), { first });
        whole = true;
    } catch (error) {
        tellProblem(notLoaded, String(error?.stack ?? error));
        throw error;
    }
}

function secondAtOnce() {
    const request = new XMLHttpRequest();
    request.open("GET", secondAddress, false);
    request.overrideMimeType("text/plain; charset=x-user-defined"); // what is waited for comes as text: a letter is a byte
    request.send();
    if (request.status !== 200) throw new Error(`${secondAddress}: the server answered ${request.status} ${request.statusText}`);
    return Uint8Array.from(request.responseText, (letter) => letter.charCodeAt(0) & 255);
}

const programMaker = async () => (await import(`./slopewise.js?${build}`)).default;
