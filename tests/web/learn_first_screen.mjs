// Writes web/ship/first_screen.txt anew: node tests/web/learn_first_screen.mjs
//
// Binaryen puts a mark into each function of the program; the page is opened as a newcomer opens it, on each of
// `firstScreens`, and whatever has run by then is listed. Wanted when second_part.test.mjs says that the second part was waited for.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

import { plainName, unescaped } from "../../web/ship/parts.mjs";
import { siteFiles } from "../../web/ship/site.mjs";
import { firstScreens, launch, root, serve, Trainer, wait } from "./trainer.mjs";

const wasmSplit = process.argv[2] ?? path.join(process.env.SLOPEWISE_DEPS ?? path.join(process.env.XDG_CACHE_HOME ?? path.join(process.env.HOME, ".cache"), "slopewise"), "emscripten/binaryen/bin/wasm-split");
const built = path.join(root, "build/web/web/slopewise");
const list = path.join(root, "web/ship/first_screen.txt");

// Keeps what WebAssembly exports, to ask it afterwards for its marks.
const keepExports = () => {
    const { instantiate } = WebAssembly;
    WebAssembly.instantiate = async (...given) => {
        const instance = await instantiate.apply(WebAssembly, given);
        window.marked ??= instance.exports;
        return instance;
    };
};

// The marks, written behind the memory that the program has: after that it cannot go on.
const takeMarks = () => {
    const memory = Object.values(window.marked).find((one) => one instanceof WebAssembly.Memory);
    const behind = memory.buffer.byteLength;
    memory.grow(64);
    return [...new Uint8Array(memory.buffer, behind, window.marked.write_marks(behind, memory.buffer.byteLength - behind))];
};

async function marksOf(browser, address, options) {
    const trainer = await Trainer.open(browser, address, { ...options, before: keepExports, first: "start with lesson 1" });
    await wait(1000);
    if (options.touch) await trainer.page.touchscreen.tap(10, 10);
    await trainer.page.mouse.move(20, 20);
    await trainer.page.keyboard.press("Shift"); // any key, and none that leads on
    await wait(1000);
    const marks = Buffer.from(await trainer.page.evaluate(takeMarks));
    await trainer.context.close();
    return marks;
}

const folder = mkdtempSync(path.join(tmpdir(), "slopewise-learn-"));
const file = (name) => path.join(folder, name);
execFileSync(wasmSplit, ["--instrument", `${built}.wasm`, "--profile-export=write_marks", "-o", file("marked")]);
const program = { js: readFileSync(`${built}.js`), parts: { first: readFileSync(file("marked")), second: Buffer.alloc(8) }, wasm: "", licences: "" };
for (const [name, content] of Object.entries(siteFiles(program))) writeFileSync(file(name), content);
const server = await serve({ folder });
const browser = await launch();

const ran = new Set();
for (const options of firstScreens) {
    writeFileSync(file("marks"), await marksOf(browser, server.address, options));
    const told = execFileSync(wasmSplit, [`--print-profile=${file("marks")}`, `${built}.wasm`], { encoding: "utf8", maxBuffer: 1 << 28 });
    for (const line of told.split("\n")) {
        if (line.startsWith("+ ")) ran.add(plainName(unescaped(line.slice(2))));
    }
}
await browser.close();
server.stop();
rmSync(folder, { recursive: true });
writeFileSync(list, `# What runs until the first screen stands; written by tests/web/learn_first_screen.mjs.\n${[...ran].sort().join("\n")}\n`);
console.log(`${ran.size} names, in ${path.relative(root, list)}`);
