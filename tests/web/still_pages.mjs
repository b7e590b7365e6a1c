// The pages of tests/pages/ in a browser, each with a canvas of the whole window as the program's page has, and the
// reading of what they show.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import path from "node:path";
import { inflateSync } from "node:zlib";

import { root } from "./trainer.mjs";

const html = (program, words) => `<!doctype html><title>${program}</title>
<link rel="stylesheet" href="/style.css">
<main id="stage"><canvas id="canvas" tabindex="0"></canvas></main>
<div id="mirror" class="unseen"></div><div id="instruments" class="unseen"></div>
<script type="module">
    import create from "/${program}.js";
    globalThis.said = [];
    const print = (line) => said.push(line);
    create({ canvas: document.getElementById("canvas"), arguments: ${JSON.stringify(words)}, print, printErr: print });
</script>`;

// Serves /NAME?a,b,c as a page that runs build/web/NAME.js with the words a, b, c; resolves to { address, stop }.
export async function serveTestPages() {
    const send = (response, type, content) => response.writeHead(200, { "Content-Type": type }).end(content);
    const server = createServer((request, response) => {
        const { pathname, search } = new URL(request.url, "http://localhost");
        const [, name, suffix] = pathname.match(/^\/(\w+)(\.\w+)?$/) ?? [];
        if (suffix === ".css") send(response, "text/css", readFileSync(path.join(root, "web", `${name}.css`)));
        else if (suffix === ".js") send(response, "text/javascript", readFileSync(path.join(root, "build/web", `${name}.js`)));
        else if (suffix === ".wasm") send(response, "application/wasm", readFileSync(path.join(root, "build/web", `${name}.wasm`)));
        else if (name?.endsWith("_page")) send(response, "text/html", html(name, search.slice(1).split(",")));
        else response.writeHead(404).end();
    });
    await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
    return { address: `http://127.0.0.1:${server.address().port}`, stop: () => server.close() };
}

// The pixels of a screenshot: { width, height, at(x, y) -> [r, g, b], png }. Read from the PNG by its specification
// (W3C PNG, third edition, 9.2: what each filter adds back); eight bits, not interlaced, as Chromium writes it.
export async function pixelsOf(page) {
    const png = await page.screenshot();
    const width = png.readUInt32BE(16), height = png.readUInt32BE(20);
    assert.deepEqual([png[24], png[28]], [8, 0], "eight bits a channel, not interlaced");
    const channels = { 2: 3, 6: 4 }[png[25]];
    const parts = [];
    for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) {
        if (png.toString("latin1", at + 4, at + 8) === "IDAT") parts.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
    }
    const rows = inflateSync(Buffer.concat(parts)), stride = width * channels;
    let above = new Uint8Array(stride);
    const data = [];
    for (let y = 0; y < height; ++y) {
        const filter = rows[y * (stride + 1)], row = new Uint8Array(rows.buffer, rows.byteOffset + y * (stride + 1) + 1, stride);
        for (let i = 0; i < stride; ++i) {
            const left = i < channels ? 0 : row[i - channels], up = above[i], corner = i < channels ? 0 : above[i - channels];
            if (filter === 1) row[i] += left;
            else if (filter === 2) row[i] += up;
            else if (filter === 3) row[i] += (left + up) >> 1;
            else if (filter === 4) {
                const toLeft = Math.abs(up - corner), toUp = Math.abs(left - corner), toCorner = Math.abs(left + up - 2 * corner);
                row[i] += toLeft <= toUp && toLeft <= toCorner ? left : toUp <= toCorner ? up : corner;
            }
        }
        data.push((above = row));
    }
    return { width, height, png, at: (x, y) => [data[y][channels * x], data[y][channels * x + 1], data[y][channels * x + 2]] };
}
