// The program in two parts: what runs until the first screen stands, and the rest, which follows while that is read.
//
// Binaryen's wasm-split cuts it; first_screen.txt says which functions stay in the first part. That is a matter of
// speed alone: a function of the second part that is wanted sooner is waited for (program_beside.js).
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

// ---- WebAssembly Core Specification 2.0: sections (5.5.2), the names of functions (7.4.1) --------------------------

// An unsigned number at `at` (LEB128) and where it ends.
function numberAt(bytes, at) {
    for (let value = 0, factor = 1; ; factor *= 128) {
        const byte = bytes[at++];
        value += (byte & 127) * factor;
        if (byte < 128) return [value, at];
    }
}

export function functionNames(wasm) {
    const [section] = WebAssembly.Module.customSections(new WebAssembly.Module(wasm), "name");
    if (!section) throw new Error("the program was linked without the names of its functions");
    const bytes = new Uint8Array(section), words = new TextDecoder(), names = [];
    for (let at = 0; at < bytes.length; ) {
        const kind = bytes[at];
        let [length, next] = numberAt(bytes, at + 1);
        at = next + length;
        if (kind !== 1) continue; // 1: functions
        let count;
        for ([count, next] = numberAt(bytes, next); count > 0; --count) {
            [, next] = numberAt(bytes, next); // which one
            [length, next] = numberAt(bytes, next);
            names.push(words.decode(bytes.subarray(next, next += length)));
        }
    }
    return names;
}

export function withoutNames(wasm) {
    const kept = [wasm.subarray(0, 8)];
    for (let at = 8; at < wasm.length; ) {
        const [length, content] = numberAt(wasm, at + 1), end = content + length;
        const [letters, name] = numberAt(wasm, content);
        const isNames = wasm[at] === 0 && wasm.subarray(name, name + letters).toString() === "name";
        if (!isNames) kept.push(wasm.subarray(at, end));
        at = end;
    }
    return Buffer.concat(kept);
}

// ---- Which part a function stands in ---------------------------------------------------------------------------------

// Its name as one would say it: no parameters and no arguments of templates, so that a change of those changes no part.
export function plainName(name) {
    let depth = 0, plain = "";
    const letters = name.replaceAll("(anonymous namespace)::", "").replace(/operator(\(\)|<=>|->|<<|>>|<=|>=|<|>)/g, "operator");
    for (const letter of letters) {
        if ("<(".includes(letter)) ++depth;
        else if (">)".includes(letter)) --depth;
        else if (depth === 0) plain += letter;
    }
    return plain.replace(/\[abi:\w+\]| const\b|_\d+$/g, "").trim().split(" ").at(-1);
}

const listed = () => readFileSync(new URL("first_screen.txt", import.meta.url), "utf8").split("\n").filter((line) => line && !line.startsWith("#"));

// As Binaryen writes a name, and back.
const escaped = (name) => name.replace(/[^\w!#$%&'*+\-./:<=>?@^`|~]/g, (letter) => [...Buffer.from(letter)].map((byte) => `\\${byte.toString(16).padStart(2, "0")}`).join(""));
export const unescaped = (name) => name.replace(/(\\[0-9a-f]{2})+/g, (bytes) => Buffer.from(bytes.replaceAll("\\", ""), "hex").toString());

// { first, second } of a program that was linked with names; neither has them any more.
export function inTwoParts(wasm, wasmSplit) {
    const stays = new Set(listed());
    const names = functionNames(wasm).filter((name) => stays.has(plainName(name)));
    const folder = mkdtempSync(join(tmpdir(), "slopewise-parts-"));
    const file = (name) => join(folder, name);
    try {
        writeFileSync(file("whole.wasm"), wasm);
        writeFileSync(file("stays.txt"), names.map(escaped).join("\n"));
        execFileSync(wasmSplit, [file("whole.wasm"), "--split", `--keep-funcs=@${file("stays.txt")}`, "--import-namespace=first",
            "--placeholder-namespace=second", "-o1", file("first.wasm"), "-o2", file("second.wasm")]);
        return { first: readFileSync(file("first.wasm")), second: readFileSync(file("second.wasm")) };
    } finally {
        rmSync(folder, { recursive: true });
    }
}
