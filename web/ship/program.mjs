// What the compiler made, as it is shipped, with the licences of all its parts in one text.
import { readFileSync } from "node:fs";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

import { inTwoParts, withoutNames } from "./parts.mjs";

// `licences`: NAME=FILE, one for each part.
export function licenceText(licences) {
    const line = "=".repeat(100);
    const parts = licences.map((entry) => {
        const at = entry.indexOf("=");
        return `${line}\n${entry.slice(0, at)}\n${line}\n\n${readFileSync(entry.slice(at + 1), "utf8").trim()}\n`;
    });
    return `Slopewise is made of the parts below; this is each part's own licence.\n\n${parts.join("\n\n")}`;
}

// `path` without its ending: PATH.js and PATH.wasm, which was linked with the names of its functions. `wasmSplit` is
// Binaryen's tool; without it the first part is all there is.
export function programAt(path, licences, wasmSplit) {
    const named = readFileSync(`${path}.wasm`);
    const wasm = withoutNames(named);
    const parts = wasmSplit ? inTwoParts(named, wasmSplit) : { first: wasm, second: Buffer.alloc(0) };
    return { js: readFileSync(`${path}.js`), wasm, parts, licences };
}

export function compressed(content) {
    const bytes = Buffer.from(content);
    return {
        ".gz": gzipSync(bytes, { level: 9 }),
        ".br": brotliCompressSync(bytes, {
            params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_LGWIN]: 22, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length },
        }),
    };
}
