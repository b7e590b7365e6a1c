// The files of thirty students in the browser: looked at side by side, each with its own figures, at once, and nothing of
// them goes into this device's logbook.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync, rmSync } from "node:fs";
import path from "node:path";
import { before, test } from "node:test";

import { root, stage, wait } from "./trainer.mjs";

const site = stage();
const folder = path.join(root, "build/class");
const files = () => readdirSync(folder).sort().map((name) => path.join(folder, name));

before(() => {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
    execFileSync(path.join(root, "build/native/class_files"), [folder]);
});

test("thirty students' files give the table of the command line, and stay out of the logbook", async (t) => {
    const trainer = await site.open({ first: "start with lesson 1" });
    await trainer.press("i");
    await trainer.screen("A class in a table.");
    await trainer.picture("class-table-empty");
    const choosing = trainer.page.waitForEvent("filechooser");
    await wait(500); // until the browser has been told to ask us, not the user
    await trainer.press("Enter"); // the first thing to do: add files
    const chooser = await choosing;
    await trainer.page.evaluate(() => {
        window.changes = [];
        const mirror = document.getElementById("mirror");
        new MutationObserver(() => window.changes.push([performance.now(), mirror.textContent])).observe(mirror, { childList: true, characterData: true, subtree: true });
    });
    await chooser.setFiles(files());
    await trainer.screen("30 students");
    const took = await trainer.page.evaluate(() => window.changes.find(([, text]) => text.includes("30 students"))[0] - window.changes[0][0]);
    t.diagnostic(`from the first line read to the table of thirty files: ${Math.round(took)} ms`);
    await trainer.picture("class-table");
    const arrives = trainer.page.waitForEvent("download");
    await trainer.press("c"); // as CSV
    const file = await arrives;
    const here = readFileSync(await file.path(), "utf8");
    const there = execFileSync(path.join(root, "build/native/slopewise"), ["evidence", ...files()], { encoding: "utf8" });
    assert.equal(here, there);
    await trainer.press("Escape");
    await trainer.screen("Slopewise");
    await trainer.press("l");
    await trainer.screen("Logbook");
    assert.doesNotMatch(await trainer.text(), /Heron/);
    assert.deepEqual(trainer.errors, []);
    assert.ok(trainer.requests.every((url) => url.startsWith(site.address()) || url.startsWith("blob:")), "nothing leaves the machine");
    await trainer.context.close();
});
