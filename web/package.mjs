// package.mjs SITE ONE-FILE PROGRAM WASM-SPLIT --licences NAME=FILE...
//
// Makes both ways to ship from PROGRAM.js and PROGRAM.wasm: the folder SITE that is served as it stands, in two parts by
// the tool WASM-SPLIT, with a .gz and a .br beside each file, made once here so that no server has to compress; and the
// page ONE-FILE that needs no server.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

import { compressed, licenceText, programAt } from "./ship/program.mjs";
import { singleFile } from "./ship/single_file.mjs";
import { siteFiles } from "./ship/site.mjs";

const [site, oneFile, program, wasmSplit, , ...licences] = process.argv.slice(2);
const shipped = programAt(program, licenceText(licences), wasmSplit);

rmSync(site, { recursive: true, force: true });
mkdirSync(site, { recursive: true });
for (const [name, content] of Object.entries(siteFiles(shipped))) {
    writeFileSync(join(site, name), content);
    if (name.endsWith(".png")) continue; // packed already
    for (const [suffix, small] of Object.entries(compressed(content))) writeFileSync(join(site, name + suffix), small);
}
writeFileSync(oneFile, singleFile(shipped));
