// How the browser's store reads files, in node: their lines in order, a batch at a time, the next only when the one before
// was taken in; a file that is not ours costs that file alone.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import vm from "node:vm";

const web = path.join(path.dirname(fileURLToPath(import.meta.url)), "../../web");
const sources = ["logbook_library.js", "files_library.js"].map((name) => readFileSync(path.join(web, name), "utf8"));

// The library with nothing of Emscripten's around it.
function library() {
    const parts = {};
    const context = vm.createContext({ addToLibrary: (all) => Object.assign(parts, all), TextDecoderStream, Promise, console });
    for (const source of sources) vm.runInContext(source, context);
    const [book, files] = [parts.$slopewiseLogbook, parts.$slopewiseFiles];
    Object.assign(context, { slopewiseLogbook: book, slopewiseFiles: files });
    return { book, files, next: parts.slopewise_store_next_file_lines, nextLine: parts.slopewise_store_next_import_line };
}

const file = (name, text) => new File([text], name);

// All events of a reading, each batch taken in when it came.
async function eventsOf({ book, next, nextLine }, reading) {
    const all = [];
    let done = false;
    const finished = reading.then(() => (done = true));
    while (!done || book.events.length > 0) {
        await new Promise((resolve) => setTimeout(resolve, 0));
        for (const event of book.events.splice(0)) {
            all.push(event);
            if (event.kind === "file_lines") next();
            if (event.kind === "import_line") nextLine();
        }
    }
    await finished;
    return all;
}

test("files are read one after the other, each line once and in order", async () => {
    const it = library();
    const lines = Array.from({ length: 500 }, (_, i) => `line ${i} \u00e9`);
    const events = await eventsOf(it, it.files.readFiles([file("a.jsonl", lines.join("\r\n") + "\r\n"), file("b.jsonl", "one\n\ntwo")]));
    assert.deepEqual([...new Set(events.map(({ kind }) => kind))], ["file_began", "file_lines", "file_ended", "files_ended"]);
    assert.deepEqual(events.filter(({ kind }) => kind === "file_began").map(({ words }) => words), ["a.jsonl", "b.jsonl"]);
    const second = events.findLastIndex(({ kind }) => kind === "file_began");
    const linesOf = (some) => some.flatMap(({ kind, texts }) => (kind === "file_lines" ? [...texts] : []));
    assert.deepEqual(linesOf(events.slice(0, second)), lines);
    assert.deepEqual(linesOf(events.slice(second)), ["one", "", "two"]);
    assert.equal(events.at(-1).words, "");
});

test("a batch ends once it is as long as a batch may be, and waits to be taken in", async () => {
    const it = library();
    it.files.batchLength = 100;
    const reading = it.files.readFiles([file("a.jsonl", Array.from({ length: 10 }, (_, i) => `${i}`.repeat(40)).join("\n"))]);
    await new Promise((resolve) => setTimeout(resolve, 50));
    assert.deepEqual(Array.from(it.book.events, ({ kind }) => kind), ["file_began", "file_lines"]); // no more until it is asked for
    const events = await eventsOf(it, reading);
    const batches = events.filter(({ kind }) => kind === "file_lines").map(({ texts }) => texts.length);
    assert.deepEqual(batches, [3, 3, 3, 1]);
});

test("a file with too long a line, or one that cannot be read, is told, and the next is read", async () => {
    const it = library();
    it.files.longestLine = 1000;
    const broken = { name: "gone.jsonl", stream: () => { throw new DOMException("gone", "NotFoundError"); } };
    const events = await eventsOf(it, it.files.readFiles([file("long.jsonl", "x".repeat(200000)), broken, file("b.jsonl", "one")]));
    const failed = events.filter(({ kind }) => kind === "file_failed").map(({ words }) => words);
    assert.deepEqual(failed, [it.files.lineTooLong, "cannot be read (NotFoundError)"]);
    assert.equal(events.filter(({ kind }) => kind === "file_ended").length, 1);
    assert.equal(events.at(-2).kind, "file_ended");
});

test("a folder without a file of ours says so", async () => {
    const it = library();
    const events = await eventsOf(it, it.files.readFiles([]));
    assert.equal(events.length, 1);
    assert.match(events[0].words, /no file whose name ends in \.jsonl/);
});

test("an import still comes a line at a time", async () => {
    const it = library();
    const events = await eventsOf(it, it.files.importFile(file("a.jsonl", "one\r\ntwo\n\nthree\u0000")));
    assert.deepEqual(events.map(({ kind, texts }) => [kind, ...texts]), [
        ["import_began"], ["import_line", "one"], ["import_line", "two"], ["import_line", ""], ["import_line", "three\ufffd"], ["import_ended"],
    ]);
});
