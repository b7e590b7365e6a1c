// Files into the logbook and out of it: a student's whole file, and what is no file of ours.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";

import { database, flyShort, folder, handedOver, open, openLogbook, takeIn } from "./logbook_steps.mjs";
import { root } from "./trainer.mjs";

test("a student's file goes into an empty browser, whole; its progress is what the command line says of it", async () => {
    const trainer = await open();
    for (let i = 0; i < 2; ++i) {
        await flyShort(trainer);
        await trainer.press("Escape");
        await trainer.screen("Choose an approach");
    }
    await openLogbook(trainer);
    const file = path.join(folder, "student.jsonl");
    writeFileSync(file, readFileSync(await handedOver(trainer, "t")));
    const before = await database(trainer.page);
    await trainer.press("p");
    await trainer.screen("Progress. Student");
    const csv = readFileSync(await handedOver(trainer, "c"), "utf8");
    assert.ok(csv.split("\n").length >= 4, csv);
    assert.equal(csv, execFileSync(path.join(root, "build/native/slopewise"), ["progress", file, "--csv"], { encoding: "utf8" }));
    await trainer.context.close();

    const other = await open();
    await openLogbook(other);
    assert.match(await takeIn(other, file), /student\.jsonl: 2 attempts taken in\./);
    const again = path.join(folder, "again.jsonl"); // under a name of its own, so that its words are told from the first one's
    copyFileSync(file, again);
    assert.match(await takeIn(other, again), /again\.jsonl: 0 attempts taken in, 2 already here\./);
    assert.deepEqual(await database(other.page), before);
    await other.context.close();
});

test("a damaged file, one of 100 MB, one of a newer version and one of something else: each is told, nothing is harmed", async () => {
    const trainer = await open();
    await flyShort(trainer);
    await trainer.press("Escape");
    await trainer.screen("Choose an approach");
    await openLogbook(trainer);
    const good = readFileSync(await handedOver(trainer, "t"), "utf8");
    const before = await database(trainer.page);
    const [head, , attempt] = good.split("\n");
    const write = (name, text) => {
        const file = path.join(folder, name);
        writeFileSync(file, text);
        return file;
    };

    const damaged = write("damaged.jsonl", `${head}\n${attempt.slice(0, -40)}\n${attempt}\n`);
    const told = await takeIn(trainer, damaged);
    assert.match(told, /damaged\.jsonl: 0 attempts taken in, 1 already here, 1 problem\./);
    assert.match(told, /damaged\.jsonl:2: is damaged/);

    const newer = await takeIn(trainer, write("newer.jsonl", good.replace('"slopewise_student":1', '"slopewise_student":2')));
    assert.match(newer, /newer\.jsonl:1: .*newer version/);

    assert.match(await takeIn(trainer, write("picture.png", "\x89PNG\r\n\x1a\n0000")), /picture\.png:1: is no attempt/);

    // In one line, which no file of ours is; then in many, of which the first is ours.
    const line = write("hundred.jsonl", Buffer.alloc(100 << 20, "x"));
    assert.match(await takeIn(trainer, line), /hundred\.jsonl:? has a line of more than 32 MB/);
    const lines = write("lines.jsonl", Buffer.concat([Buffer.from(`${head}\n${attempt}\n`), Buffer.alloc(100 << 20, "0123456789abcde\n")]));
    assert.match(await takeIn(trainer, lines), /lines\.jsonl: 0 attempts taken in, 1 already here, 20 problems\./);

    assert.deepEqual(await database(trainer.page), before);
    await trainer.press("Enter");
    await trainer.screen("Deviation summary");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
