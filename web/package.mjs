// package.mjs SITE FILE... --licences NAME=FILE...
//
// Puts the folder together that is served: the files, the licences of all parts in one text, and beside each of
// them its .gz and .br, made once here so that no server has to compress.
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const [site, ...rest] = process.argv.slice(2);
const split = rest.indexOf("--licences");
const files = rest.slice(0, split);
const licences = rest.slice(split + 1);

function compressed(bytes) {
    return {
        ".gz": gzipSync(bytes, { level: 9 }),
        ".br": brotliCompressSync(bytes, {
            params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_LGWIN]: 22, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
        }),
    };
}

function put(name, bytes) {
    const path = join(site, name);
    writeFileSync(path, bytes);
    for (const [suffix, small] of Object.entries(compressed(bytes))) writeFileSync(path + suffix, small);
}

function licenceText() {
    const line = "=".repeat(100);
    const parts = licences.map((entry) => {
        const at = entry.indexOf("=");
        return `${line}\n${entry.slice(0, at)}\n${line}\n\n${readFileSync(entry.slice(at + 1), "utf8").trim()}\n`;
    });
    return `Slopewise is made of the parts below; this is each part's own licence.\n\n${parts.join("\n\n")}`;
}

rmSync(site, { recursive: true, force: true });
mkdirSync(site, { recursive: true });
for (const file of files) {
    let bytes = readFileSync(file);
    if (basename(file) === "index.html") {
        const wasm = files.find((name) => name.endsWith(".wasm"));
        bytes = Buffer.from(bytes.toString("utf8").replace("@WASM_BYTES@", String(statSync(wasm).size)));
    }
    put(basename(file), bytes);
}
put("licences.txt", Buffer.from(licenceText()));
