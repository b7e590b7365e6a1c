// Loads the program into the page, says how far it is, and says in plain words when it cannot run.
const part = (id) => document.getElementById(id);
const canvas = part("canvas");

// ---- What the visitor is told -----------------------------------------------------------------------------

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

function tellProgress(loaded, total) {
    const percent = Math.min(100, Math.floor((100 * loaded) / total));
    part("notice-progress").value = percent / 100;
    part("notice-words").textContent = `Loading the trainer: ${percent} %`;
}

// ---- Loading ----------------------------------------------------------------------------------------------

// The browser compiles while it receives; the bytes are counted on their way through. They are counted as they
// are after unpacking, so the total is the file's own size, not the Content-Length of what was sent.
async function compileWithProgress(address, total) {
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${address}: the server answered ${response.status} ${response.statusText}`);
    let loaded = 0;
    const counter = new TransformStream({
        transform(chunk, out) {
            loaded += chunk.byteLength;
            tellProgress(loaded, total);
            out.enqueue(chunk);
        },
    });
    const counted = new Response(response.body.pipeThrough(counter), { headers: { "Content-Type": "application/wasm" } });
    return WebAssembly.compileStreaming(counted);
}

function canDrawWebGl2() {
    const probe = document.createElement("canvas").getContext("webgl2");
    probe?.getExtension("WEBGL_lose_context")?.loseContext(); // browsers keep few; give this one back at once
    return probe !== null;
}

async function start() {
    if (typeof WebAssembly !== "object" || !WebAssembly.compileStreaming || typeof TransformStream !== "function") {
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
    const compiled = compileWithProgress("slopewise.wasm", Number(part("notice-progress").dataset.bytes));
    let failedToLoad;
    const instantiated = new Promise((_, reject) => { failedToLoad = reject; });
    const { default: createSlopewise } = await import("./slopewise.js");
    const running = createSlopewise({
        canvas,
        print,
        printErr: print,
        instantiateWasm(imports, ready) {
            compiled
                .then(async (module) => ready(await WebAssembly.instantiate(module, imports), module))
                .catch(failedToLoad);
            return {};
        },
        onAbort: (what) => tellProblem("Slopewise has stopped because of a fault of its own. What was kept on this device is safe.", [what, ...printed].join("\n")),
        onExit: (code) => { if (code !== 0) tellProblem("Slopewise could not start.", printed.join("\n")); },
    });
    await Promise.race([running, instantiated]);
    if (stopped) return;
    part("notice").hidden = true;
    document.documentElement.dataset.state = "running";
    canvas.focus({ preventScroll: true });
}

// ---- Around the canvas ------------------------------------------------------------------------------------

// The picture is the whole page: a wheel, a pinch or a finger belongs to the program. Ctrl and plus or minus
// still zoom the page, which some people need.
for (const kind of ["wheel", "gesturestart", "contextmenu"]) {
    canvas.addEventListener(kind, (event) => event.preventDefault(), { passive: false });
}
// GLFW's own handling of fingers loses taps and drags: the first finger is handed on as the mouse instead.
for (const [touch, mouse] of [["touchstart", "mousedown"], ["touchmove", "mousemove"], ["touchend", "mouseup"], ["touchcancel", "mouseup"]]) {
    window.addEventListener(touch, (event) => {
        if (event.target !== canvas) return;
        event.preventDefault();
        event.stopPropagation();
        const finger = event.changedTouches[0];
        if (finger.identifier !== 0) return;
        const at = { clientX: finger.clientX, clientY: finger.clientY, button: 0, buttons: mouse === "mouseup" ? 0 : 1, bubbles: true };
        canvas.dispatchEvent(new MouseEvent("mousemove", at));
        if (mouse !== "mousemove") canvas.dispatchEvent(new MouseEvent(mouse, at));
    }, { capture: true, passive: false });
}
canvas.addEventListener("pointerdown", () => canvas.focus({ preventScroll: true }));
// Keys that scroll or move the focus when nothing has taken them.
window.addEventListener("keydown", (event) => {
    const scrolls = ["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight", "PageUp", "PageDown", "Home", "End", " "];
    if (document.activeElement === canvas && scrolls.includes(event.key)) event.preventDefault();
});

canvas.addEventListener("webglcontextlost", (event) => {
    event.preventDefault();
    tellProblem("The picture was lost: the graphics driver stopped. Load the page again to go on.", "webglcontextlost");
});
window.addEventListener("error", (event) => {
    if (event.error instanceof WebAssembly.RuntimeError) tellProblem("Slopewise has stopped because of a fault of its own. What was kept on this device is safe.", `${event.message}\n${event.error.stack ?? ""}`);
});
part("notice-reload").addEventListener("click", () => location.reload());

start().catch((error) => tellProblem("Slopewise could not be loaded. Check the connection and load the page again.", String(error?.stack ?? error)));
