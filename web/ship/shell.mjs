// What both ways to ship are made from: the page's own sources, and the stamp of a build.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";

export const shell = (name) => readFileSync(new URL(`../${name}`, import.meta.url), "utf8");

export const sha256 = (content) => `sha256-${createHash("sha256").update(content).digest("base64")}`;

// Eight figures that change with anything that is shipped, and with nothing else.
export function buildOf(contents) {
    const hash = createHash("sha256");
    for (const content of contents) hash.update(`${content.length} `).update(content);
    return hash.digest("hex").slice(0, 8);
}

// Puts words in the places of a text that are marked @NAME@; each must be there, and none may be left.
export function fill(text, words) {
    for (const [name, word] of Object.entries(words)) {
        if (!text.includes(`@${name}@`)) throw new Error(`there is no @${name}@ to be filled in`);
        text = text.replaceAll(`@${name}@`, () => word);
    }
    const left = text.match(/@[A-Z_]+@/);
    if (left) throw new Error(`${left[0]} was not filled in`);
    return text;
}

// index.html without what stands between its marks <!-- NAME --> and <!-- /NAME -->, or with that alone put in its place.
export function replacePart(page, name, content) {
    const part = new RegExp(`[ \\t]*<!-- ${name} -->[\\s\\S]*?<!-- /${name} -->\\n`);
    if (!part.test(page)) throw new Error(`index.html has no part "${name}"`);
    return page.replace(part, () => content);
}
export const withoutMarks = (page) => page.replace(/[ \t]*<!-- \/?site: .*? -->\n/g, "");

// `program`: what the compiler made, { js, wasm, parts }, and the licences of all it is made of in one text.
export function buildId(program) {
    const sources = ["index.html", "boot.js", "program_beside.js", "program_inside.js", "service_worker.js", "manifest.webmanifest", "style.css", "icon.svg"];
    const { first, second } = program.parts;
    return buildOf([...sources.map(shell), program.js, program.wasm, first, second, program.licences]);
}
