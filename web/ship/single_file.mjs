// The whole trainer as one file, to be opened from a disk or a memory stick with no server and no network.
import { gzipSync } from "node:zlib";

import { filePolicy } from "./policy.mjs";
import { buildId, fill, replacePart, sha256, shell } from "./shell.mjs";

const packed = (id, content) => `<script type="text/plain" id="${id}">${gzipSync(content, { level: 9 }).toString("base64")}</script>\n`;

// Emscripten's module as a constant of the page's own script.
function programMaker(js) {
    const exported = js.match(/export default (\w+);\s*$/);
    if (!exported) throw new Error("the program's JavaScript does not end with its export");
    return `const createProgram = (() => {\n${js.slice(0, exported.index)}\nreturn ${exported[1]};\n})();\n`;
}

// `program`: { js, wasm, licences }.
export function singleFile(program) {
    const script = `\n${programMaker(program.js.toString())}${shell("program_inside.js")}\n${shell("boot.js")}`;
    if (/<\/script|<!--/i.test(script)) throw new Error("the script would end the element that it stands in");
    const style = `\n${shell("style.css")}`;
    const icon = `data:image/svg+xml;base64,${Buffer.from(shell("icon.svg")).toString("base64")}`;
    const head = `    <link rel="icon" href="${icon}">\n    <style>${style}</style>\n`;
    const body = `${packed("packed-licences", program.licences)}${packed("packed-program", program.wasm)}<script type="module">${script}</script>\n`;
    let page = fill(shell("index.html"), { BUILD: buildId(program), POLICY: filePolicy(sha256(script), sha256(style)), WASM_BYTES: String(program.wasm.length) });
    page = replacePart(page, "site: its files", head);
    return page.replace("</body>", () => `${body}</body>`);
}
