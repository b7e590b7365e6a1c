// Prints what a visitor downloads: node web/measure.mjs [--limit BYTES] (exit 1 when brotli's total is over it).
import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

const { values: options } = parseArgs({ options: { limit: { type: "string" } } });
const site = fileURLToPath(new URL("../build/web/site", import.meta.url));
const size = (name) => statSync(join(site, name)).size;

// The licences are shipped but fetched only by who reads them.
const names = readdirSync(site).filter((name) => !/\.(br|gz)$/.test(name) && name !== "licences.txt");
const rows = names.map((name) => ({ name, raw: size(name), gzip: size(`${name}.gz`), brotli: size(`${name}.br`) }));
rows.sort((a, b) => b.raw - a.raw);
const sum = (key) => rows.reduce((total, row) => total + row[key], 0);
const total = { name: "all of it", raw: sum("raw"), gzip: sum("gzip"), brotli: sum("brotli") };

const cell = (value) => String(value).padStart(10);
console.log(`${"bytes".padEnd(16)}${["raw", "gzip", "brotli"].map(cell).join("")}`);
for (const row of [...rows, total]) console.log(`${row.name.padEnd(16)}${[row.raw, row.gzip, row.brotli].map(cell).join("")}`);

if (options.limit && total.brotli > Number(options.limit)) {
    console.error(`The page is ${total.brotli} bytes as it is sent; the limit is ${options.limit}.`);
    process.exit(1);
}
