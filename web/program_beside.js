// Where the site's page has the program from: files beside it. Put before boot.js when the page is built. The build is
// part of their addresses, so that no cache on the way mixes two of them.
const opening = "Loading the trainer";
const notLoaded = "Slopewise could not be loaded. Check the connection and load the page again.";
const canOpenProgram = true;
const build = document.querySelector("meta[name=build]").content;

// Its WebAssembly, as a stream of bytes.
async function openProgram() {
    const address = `slopewise.wasm?${build}`;
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${address}: the server answered ${response.status} ${response.statusText}`);
    return response.body;
}

const programMaker = async () => (await import(`./slopewise.js?${build}`)).default;
