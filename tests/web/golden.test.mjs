// The golden flights in the browser's own WebAssembly, not node's: an empty page runs the program that prints their
// hashes, and what it prints must be what stands in tests/golden/hashes.txt.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import path from "node:path";
import { after, before, test } from "node:test";

import { launch, root } from "./trainer.mjs";

const built = (name) => readFileSync(path.join(root, "build/web", name));
const files = {
    "/": ["text/html", () => "<!doctype html><title>Golden flights</title>"],
    "/golden_flights.js": ["text/javascript", () => built("golden_flights.js")],
    "/golden_flights.wasm": ["application/wasm", () => built("golden_flights.wasm")],
};

let server, browser;
before(async () => {
    server = createServer((request, response) => {
        const [type, content] = files[request.url] ?? [];
        if (type) response.writeHead(200, { "Content-Type": type }).end(content());
        else response.writeHead(404).end();
    });
    await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
    browser = await launch();
});
after(async () => {
    await browser?.close();
    server?.close();
});

// Runs the program in the page as its script tag would; resolves to its exit code and the lines it printed.
function runInPage() {
    return new Promise((resolve, reject) => {
        const lines = [];
        globalThis.Module = {
            print: (line) => lines.push(line),
            onExit: (code) => resolve({ code, lines }),
            onAbort: (reason) => reject(new Error(`aborted: ${reason}`)),
        };
        const script = document.createElement("script");
        script.src = "/golden_flights.js";
        script.onerror = () => reject(new Error("the program could not be loaded"));
        document.head.append(script);
    });
}

test("every golden flight is the same in Chromium", { timeout: 300000 }, async () => {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${server.address().port}/`);
    const { code, lines } = await page.evaluate(runInPage);
    assert.equal(code, 0);
    const expected = readFileSync(path.join(root, "tests/golden/hashes.txt"), "utf8").trimEnd().split("\n");
    assert.ok(expected.length >= 12, "there are fewer than twelve golden flights");
    assert.deepEqual(lines, expected);
});
