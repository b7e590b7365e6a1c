// The site: a folder of files that any server can serve, installable and whole without a network after a first visit.
import { iconFiles } from "./icons.mjs";
import { sitePolicy } from "./policy.mjs";
import { buildId, fill, sha256, shell, withoutMarks } from "./shell.mjs";

// What a visitor waits for before the first screen; all else is fetched afterwards, to be there without a network.
export const neededAtStart = ["index.html", "boot.js", "style.css", "icon.svg", "slopewise.js", "slopewise.wasm"];

// Name -> content of each file. `program`: { js, parts: { first, second }, licences }.
export function siteFiles(program) {
    const build = buildId(program);
    const { first, second } = program.parts;
    const files = {
        "index.html": fill(withoutMarks(shell("index.html")), { BUILD: build, POLICY: sitePolicy, WASM_BYTES: String(first.length) }),
        "boot.js": `${shell("program_beside.js")}\n${shell("boot.js")}`,
        "style.css": shell("style.css"),
        "icon.svg": shell("icon.svg"),
        "manifest.webmanifest": shell("manifest.webmanifest"),
        "slopewise.js": program.js,
        "slopewise.wasm": first,
        "slopewise_second.wasm": second,
        "licences.txt": program.licences,
        ...iconFiles(shell("icon.svg")),
    };
    // Under the addresses that the page asks for, so that the browser has most of them already.
    const asked = (name) => (name === "index.html" ? "./" : /\.(js|wasm|css)$/.test(name) ? `${name}?${build}` : name);
    const kept = Object.fromEntries(Object.entries(files).map(([name, content]) => [asked(name), sha256(content)]));
    files["service_worker.js"] = fill(shell("service_worker.js"), { BUILD: build, FILES: JSON.stringify(kept, null, 4) });
    return files;
}
