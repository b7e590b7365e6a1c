// Lists every branch of engine/ that no test takes and that tests/uncovered_branches.txt does not explain; and every
// explanation that explains nothing any more.
//
//   node tests/uncovered.mjs build/coverage/report/branches.json
//
// The list has lines "file: the source line" under "# reason" lines; both kinds stand as often as needed.
import { readFileSync } from 'node:fs';

const list = new URL('uncovered_branches.txt', import.meta.url);
const explained = new Set(
    readFileSync(list, 'utf8').split('\n').map((line) => line.trim()).filter((line) => line && !line.startsWith('#')));
const found = new Map(); // "file: source line" -> its line number

for (const file of JSON.parse(readFileSync(process.argv[2], 'utf8')).files) {
    const source = readFileSync(new URL('../' + file.file, import.meta.url), 'utf8').split('\n');
    for (const line of file.lines) {
        const missed = (line.branches ?? []).some((branch) => branch.count === 0);
        if (missed) found.set(`${file.file.replace(/^engine\//, '')}: ${source[line.line_number - 1].trim()}`, line.line_number);
    }
}

const unexplained = [...found].filter(([words]) => !explained.has(words));
const stale = [...explained].filter((words) => !found.has(words));
for (const [words, line] of unexplained) console.log(`not explained: ${words}   (line ${line})`);
for (const words of stale) console.log(`explained, but every branch of it is taken or it is gone: ${words}`);
console.log(`branches not taken: on ${found.size} lines, ${found.size - unexplained.length} of them explained`);
process.exit(unexplained.length + stale.length > 0 ? 1 : 0);
