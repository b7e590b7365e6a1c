// The site in Firefox: started, flown with keys, sheet and logbook; what is kept stays over a reload. Without a server and
// from one file: see offline.test.mjs and file.test.mjs, which run in both browsers.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage, wait } from "./trainer.mjs";

const site = stage("firefox");

test("firefox: a flight with the keys answers to every hand, ends in its sheet and is in the logbook over a reload", async (t) => {
    const trainer = await site.open();
    t.diagnostic(`first usable screen after ${trainer.firstScreenMs} ms`);
    await trainer.picture("firefox-choices");
    await trainer.startFlight();

    const start = await trainer.instruments();
    assert.ok(Math.abs(start.airspeed - 65) <= 2, `starts at ${start.airspeed} kt`);
    await trainer.press("ArrowDown", 900); // the up key pushes, so this one raises the nose
    for (let step = 0; step < 6; ++step) await trainer.press("e");
    await wait(2500);
    const flown = await trainer.instruments();
    assert.ok(flown.power > start.power, `power ${start.power} to ${flown.power} %`);
    assert.notEqual(flown.airspeed, start.airspeed);
    await trainer.picture("firefox-flight");
    await trainer.press("p");
    await trainer.screen("Paused");
    const paused = await trainer.instruments();
    await wait(1000);
    assert.deepEqual(await trainer.instruments(), paused, "time stands still in a pause");
    await trainer.press("p");
    await trainer.press("g");
    await trainer.openSheet();
    await trainer.picture("firefox-sheet");

    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await trainer.openLogbook();
    await trainer.screen("1 attempt");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("firefox: a class window follows its instructor's page", async () => {
    const instructor = await site.open({ width: 640, height: 360, first: "start with lesson 1" });
    await instructor.press("t");
    await instructor.screen("Teach a class.");
    const opening = instructor.context.waitForEvent("page");
    await instructor.press("w");
    const projector = instructor.beside(await opening);
    await projector.screen("Frozen.");
    await instructor.screen("Class window: follows");
    await instructor.press("b");
    await projector.screen("Black.");
    assert.deepEqual([...instructor.errors, ...projector.errors], []);
    await instructor.context.close();
});
