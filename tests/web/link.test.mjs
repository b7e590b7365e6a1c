// A lesson handed on by its link alone: taken in from a file in one browser, its link copied, opened in a fresh one,
// and flown in both to the same hashes. And links that are damaged or come while the page is open.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";

import { root, stage, wait } from "./trainer.mjs";

const site = stage();

const shown = (trainer) => trainer.page.locator("#mirror").textContent();

// Goes on by so many fields and presses what is reached.
async function choose(trainer, fields) {
    for (let i = 0; i < fields; i++) await trainer.press("Tab", 90);
    await trainer.press("Space", 110);
    await trainer.frames(3);
}

const click = (trainer, x, y) => trainer.click([x, y]);

// A lesson with rough air, so that its seed is part of every hash.
function roughLesson() {
    const lesson = JSON.parse(readFileSync(path.join(root, "assets/lessons/wind_gradient.json"), "utf8"));
    return { ...lesson, id: "own_rough", title: "Rough final", air: { turbulence_w20_kt: 15, seed: 42 } };
}

// From the briefing: ten seconds hands off, then a go-around; what the recording says of each second before it.
async function flownHashes(trainer) {
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await wait(10000);
    await trainer.press("g");
    await trainer.openSheet();
    await trainer.press("t");
    await trainer.screen("Take it with you");
    const download = trainer.page.waitForEvent("download");
    await click(trainer, 160, 230); // the recording, in a window of 1280 x 720
    const recording = JSON.parse(readFileSync(await (await download).path(), "utf8"));
    assert.equal(recording.lesson.title, "Rough final");
    const lastHandsOff = recording.controls.findIndex((row) => row[5] === 1);
    const ticks = lastHandsOff < 0 ? recording.ticks : recording.controls[lastHandsOff][0];
    return recording.hashes.slice(0, Math.floor(ticks / 120));
}

async function answerStickQuestion(trainer) {
    await trainer.screen("Which key");
    await trainer.press("ArrowUp");
    await trainer.screen("Briefing");
}

test("a lesson from a file goes by its link into a fresh browser, and is flown there to the same hashes", async () => {
    const here = await site.open();
    await here.context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await here.press("k");
    await here.screen("Your own lessons. 0 lessons");
    const chooser = here.page.waitForEvent("filechooser");
    await wait(500); // until the browser listens
    await here.press("i");
    await (await chooser).setFiles({ name: "rough.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(roughLesson())) });
    await here.screen("From the file rough.json. Rough final");
    await here.picture("lesson-from-file");
    await choose(here, 2); // past "Fly it": keep it
    await here.screen("Kept on this device: Rough final.");
    await here.picture("own-lessons");
    await click(here, 1032, 297); // "Copy the link"
    await here.screen("The link is copied");
    const link = await here.page.evaluate(() => navigator.clipboard.readText());
    assert.ok(link.startsWith(site.address()), link);
    assert.match(link, /#lesson=1\.[0-9a-f]{16}\.[\w-]+$/);

    const there = await site.open({ after: link.slice(site.address().length), first: "From a link. Rough final" });
    await there.picture("lesson-from-link");
    assert.match(await shown(there), /rough as in 15 kt of wind/);
    assert.equal(await there.page.evaluate(() => location.hash), ""); // it comes in once
    await there.press("Enter");
    await answerStickQuestion(there);
    const thereHashes = await flownHashes(there);

    await click(here, 725, 297); // "Fly it"
    await answerStickQuestion(here);
    const hereHashes = await flownHashes(here);
    const seconds = Math.min(hereHashes.length, thereHashes.length);
    assert.ok(seconds >= 5, `${seconds} seconds to compare`);
    assert.deepEqual(thereHashes.slice(0, seconds), hereHashes.slice(0, seconds));

    await here.page.reload();
    await here.screen("Choose an approach");
    await here.press("k");
    await here.screen("Chosen: Rough final");
    assert.deepEqual(here.errors, []);
    assert.deepEqual(there.errors, []);
    await here.context.close();
    await there.context.close();
});

test("a damaged link is refused in words, and one that comes while the page is open waits to be looked at", async () => {
    const trainer = await site.open({ after: "#lesson=1.0123456789abcdef.AAAA", first: "From a link. It is not taken in." });
    assert.match(await shown(trainer), /damaged/);
    await trainer.picture("lesson-refused");
    await trainer.press("Enter");
    await trainer.screen("start with lesson 1");
    await trainer.page.evaluate(() => (location.hash = `#lesson=${"A".repeat(9000)}`));
    await trainer.screen("letters long; allowed: at most 8000");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
