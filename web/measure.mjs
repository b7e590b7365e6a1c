// Prints what a visitor downloads: node web/measure.mjs [--limit BYTES] [--ratio LIMIT]
//
// Until the first screen, by file; then what is fetched afterwards, the rest of the program and what is there without a
// network; and, where the build has it (tests/pages/empty_page.cpp), a page with nothing but an empty Dear ImGui window, in
// the same shell and in one part. Exit 1 when brotli's total until the first screen is over LIMIT times the empty page's, or that
// with the rest of the program is over BYTES.
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

import { compressed, programAt } from "./ship/program.mjs";
import { neededAtStart, siteFiles } from "./ship/site.mjs";

const { values: options } = parseArgs({ options: { limit: { type: "string" }, ratio: { type: "string" } } });
const built = fileURLToPath(new URL("../build/web", import.meta.url));
const site = join(built, "site");

const sizesOf = (name, content) => {
    const small = compressed(content);
    return { name, raw: Buffer.byteLength(content), gzip: small[".gz"].length, brotli: small[".br"].length };
};
const sumOf = (name, rows) => ({ name, ...Object.fromEntries(["raw", "gzip", "brotli"].map((key) => [key, rows.reduce((total, row) => total + row[key], 0)])) });
const print = ({ name, ...sizes }) => console.log(`${name.padEnd(36)}${Object.values(sizes).map((value) => String(value).padStart(10)).join("")}`);

const read = (name) => readFileSync(join(site, name));
const [atStart, afterwards] = [true, false].map((start) =>
    readdirSync(site).filter((name) => !/\.(br|gz)$/.test(name) && neededAtStart.includes(name) === start).map((name) => sizesOf(name, read(name))));
atStart.sort((a, b) => b.raw - a.raw);
const total = sumOf("the page, to its first screen", atStart);

print({ name: "bytes", raw: "raw", gzip: "gzip", brotli: "brotli" });
for (const row of [...atStart, total]) print(row);
const isProgram = ({ name }) => name.endsWith(".wasm");
const rest = sumOf("the rest of the program, at once", afterwards.filter(isProgram));
print(rest);
print(sumOf("what else is kept, for no network", afterwards.filter((row) => !isProgram(row))));
const oneFile = join(built, "slopewise.html");
if (existsSync(oneFile)) print({ name: "slopewise.html, the one file", raw: readFileSync(oneFile).length });

const problems = [];
const whole = total.brotli + rest.brotli;
if (options.limit && whole > Number(options.limit)) problems.push(`The page with the rest of its program is ${whole} bytes as it is sent; the limit is ${options.limit}.`);

const emptyPage = join(built, "empty_page");
if (existsSync(`${emptyPage}.wasm`)) {
    const files = siteFiles(programAt(emptyPage, ""));
    const empty = sumOf("an empty Dear ImGui page", neededAtStart.map((name) => sizesOf(name, files[name])));
    const ratio = total.brotli / empty.brotli;
    print(empty);
    console.log(`To its first screen the page is ${ratio.toFixed(2)} times an empty Dear ImGui page, as both are sent.`);
    if (options.ratio && !(ratio <= Number(options.ratio))) problems.push(`The limit is ${options.ratio} times an empty page.`);
} else if (options.ratio) {
    problems.push("There is no empty page to compare with: build the target empty_page.");
}
for (const problem of problems) console.error(problem);
process.exit(problems.length > 0 ? 1 : 0);
