// Loads the program into the page, says how far it is, and says in plain words when it cannot run. Where the program is
// had from stands before this in the same script: program_beside.js or program_inside.js.
const part = (id) => document.getElementById(id);
const canvas = part("canvas");

// ---- What the visitor is told -----------------------------------------------------------------------------

let program; // once it runs
let stopped = false; // the first thing that goes wrong is the cause; what follows from it is not told

function tellProblem(words, reason, { reload = true } = {}) {
    if (stopped) return;
    stopped = true;
    part("notice-words").textContent = words;
    part("notice-reason").textContent = reason ?? "";
    part("notice-details").hidden = !reason;
    part("notice-reload").hidden = !reload;
    part("notice-progress").hidden = true;
    part("notice").setAttribute("role", "alert");
    part("notice").hidden = false;
    document.documentElement.dataset.state = "stopped";
}

// A fault, or no more memory: the program stops where it is.
function tellFault(reason) {
    const noMemory = /memory|OOM|allocation/i.test(reason);
    tellProblem(
        (noMemory
            ? "Slopewise has stopped: this browser gave it no more memory. "
            : "Slopewise has stopped because of a fault of its own. ") +
            "What was kept on this device is safe, and a flight in progress is in the logbook up to its last second." +
            (noMemory ? " Close other tabs, then load the page again." : ""),
        reason,
    );
    program?.SDL2?.audioContext?.suspend();
}

// The picture may come back by itself; until then the flight waits. Then it is offered to load the page again.
const pictureWaits_ms = 6000;
let pictureWaits;

function tellPictureLost() {
    if (stopped) return;
    part("notice-words").textContent =
        "The picture was lost: the graphics driver stopped, or others needed it. The flight is paused, and nothing of it " +
        "is lost. Waiting for the picture to come back.";
    part("notice-progress").hidden = true;
    part("notice-reload").hidden = true;
    part("notice").hidden = false;
    document.documentElement.dataset.state = "picture-lost";
    pictureWaits = setTimeout(() => {
        part("notice-words").textContent =
            "The picture has not come back so far. You can go on waiting, or load the page again: what was flown is in " +
            "the logbook, where this browser lets the page keep one.";
        part("notice-reload").hidden = false;
        part("notice-reload").focus();
    }, pictureWaits_ms);
}

function tellPictureBack() {
    clearTimeout(pictureWaits);
    if (stopped) return;
    part("notice").hidden = true;
    document.documentElement.dataset.state = "running";
    canvas.focus({ preventScroll: true });
}

function tellProgress(loaded, total) {
    const percent = Math.min(100, Math.floor((100 * loaded) / total));
    part("notice-progress").value = percent / 100;
    part("notice-words").textContent = `${opening}: ${percent} %`;
}

// ---- Loading ----------------------------------------------------------------------------------------------

// The browser compiles while it receives; the bytes are counted on their way through. They are counted as they
// are after unpacking, so the total is the file's own size, not the Content-Length of what was sent.
async function compileWithProgress(total) {
    const bytes = await openProgram();
    let loaded = 0;
    const counter = new TransformStream({
        transform(chunk, out) {
            loaded += chunk.byteLength;
            tellProgress(loaded, total);
            out.enqueue(chunk);
        },
    });
    const counted = new Response(bytes.pipeThrough(counter), { headers: { "Content-Type": "application/wasm" } });
    return WebAssembly.compileStreaming(counted);
}

function canDrawWebGl2() {
    let probe = null;
    try {
        probe = document.createElement("canvas").getContext("webgl2");
    } catch {
        return false; // as some blockers answer
    }
    probe?.getExtension("WEBGL_lose_context")?.loseContext(); // browsers keep few; give this one back at once
    return probe !== null;
}

async function start() {
    if (typeof WebAssembly !== "object" || !WebAssembly.compileStreaming || typeof TransformStream !== "function" || !canOpenProgram) {
        tellProblem("This browser is too old for Slopewise. Any current version of a common browser will do.", "", { reload: false });
        return;
    }
    if (!canDrawWebGl2()) {
        tellProblem(
            "This browser cannot draw the picture: Slopewise needs WebGL 2. Switch on hardware acceleration in the " +
                "browser's settings, or use another browser, then load the page again.",
            "canvas.getContext(\"webgl2\") gave nothing.",
        );
        return;
    }
    const printed = []; // the last lines are the reason when it stops
    const print = (line) => {
        console.log(line);
        printed.push(line);
        if (printed.length > 20) printed.shift();
    };
    const compiled = compileWithProgress(Number(part("notice-progress").dataset.bytes));
    let failedToLoad;
    const instantiated = new Promise((_, reject) => { failedToLoad = reject; });
    const createSlopewise = await programMaker();
    const running = createSlopewise({
        canvas,
        print,
        printErr: print,
        instantiateWasm(imports, ready) {
            compiled
                .then(async (module) => {
                    const instance = await WebAssembly.instantiate(module, withSecond(imports));
                    first = instance.exports;
                    ready(instance, module);
                })
                .catch(failedToLoad);
            return {};
        },
        onAbort: (what) => tellFault([what, ...printed].join("\n")),
        onExit: (code) => { if (code !== 0) tellProblem("Slopewise could not start.", printed.join("\n")); },
    });
    program = await Promise.race([running, instantiated]);
    if (stopped) return;
    part("notice").hidden = true;
    document.documentElement.dataset.state = "running";
    canvas.focus({ preventScroll: true });
    followWithSecond().catch((error) => console.warn(`The second part has not come: ${error}`)); // it is asked for again when it is wanted
}

// ---- Around the canvas ------------------------------------------------------------------------------------

// The picture is the whole page: a wheel, a pinch or a finger belongs to the program. Ctrl and plus or minus
// still zoom the page, which some people need.
for (const kind of ["wheel", "gesturestart", "contextmenu"]) {
    canvas.addEventListener(kind, (event) => event.preventDefault(), { passive: false });
}
// GLFW's own handling of fingers knows only one, and loses taps and drags: the program hears them here, on what holds
// the canvas (listen_for_fingers in ui/platform/window.cpp), and they go no further.
for (const kind of ["touchstart", "touchmove", "touchend", "touchcancel"]) {
    part("stage").addEventListener(kind, (event) => {
        if (event.cancelable) event.preventDefault();
        event.stopPropagation();
    }, { capture: true, passive: false });
}
canvas.addEventListener("pointerdown", () => canvas.focus({ preventScroll: true }));
// A browser lets sound begin in a gesture only, and fingers never reach the canvas, where SDL would listen for one.
window.addEventListener("pointerup", () => program?.SDL2?.audioContext?.resume());
// Keys that scroll or move the focus when nothing has taken them.
window.addEventListener("keydown", (event) => {
    const scrolls = ["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight", "PageUp", "PageDown", "Home", "End", " "];
    if (document.activeElement === canvas && scrolls.includes(event.key)) event.preventDefault();
});

canvas.addEventListener("webglcontextlost", (event) => {
    event.preventDefault(); // or it never comes back
    tellPictureLost();
});
canvas.addEventListener("webglcontextrestored", tellPictureBack);
window.addEventListener("error", (event) => {
    if (event.error instanceof WebAssembly.RuntimeError) tellFault(`${event.message}\n${event.error.stack ?? ""}`);
});
part("notice-reload").addEventListener("click", () => location.reload());

start().catch((error) => error instanceof RangeError ? tellFault(String(error.stack ?? error)) : tellProblem(notLoaded, String(error?.stack ?? error)));
