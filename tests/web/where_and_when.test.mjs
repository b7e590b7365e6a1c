// Where and when, with real keys: another aircraft at another airfield on a rainy night, flown, named on every sheet,
// and still chosen after a reload; and pictures of it and of every hour, to be looked at.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage, wait } from "./trainer.mjs";

const site = stage();

const shown = (trainer) => trainer.page.locator("#mirror").textContent();

// Goes on by so many fields and presses what is reached.
async function choose(trainer, fields) {
    for (let i = 0; i < fields; i++) await trainer.press("Tab", 90);
    await trainer.press("Space", 110);
    await trainer.frames(3);
}

test("a student flies another aircraft to another airfield on a rainy night, and it is still chosen after a reload", async () => {
    const trainer = await site.open();
    await trainer.press("w");
    await trainer.screen("Where and when");
    await choose(trainer, 5); // past the way back and three others: the fourth airfield
    await trainer.screen("Where and when. Four-seat tourer, Hazelcombe 09, by day");
    await choose(trainer, 7); // past the six others: the first aircraft
    await trainer.screen("Where and when. Heavier single, Hazelcombe 09, by day");
    await choose(trainer, 6); // past the others and three hours: night
    await trainer.screen("Where and when. Heavier single, Hazelcombe 09, at night");
    await choose(trainer, 1);
    await trainer.screen("Where and when. Heavier single, Hazelcombe 09, at night, dark ground");
    await choose(trainer, 2);
    await trainer.screen("Where and when. Heavier single, Hazelcombe 09, at night, dark ground, visibility 5 km");
    await choose(trainer, 4);
    const chosen = "Heavier single, Hazelcombe 09, at night, dark ground, rain, visibility 5 km";
    await trainer.screen(`Where and when. ${chosen}`);
    await trainer.picture("where-and-when");

    await trainer.press("w");
    await trainer.screen("Slopewise");
    await trainer.press("Enter");
    await trainer.screen("Which key");
    await trainer.press("ArrowUp");
    await trainer.screen("Briefing");
    assert.match(await shown(trainer), new RegExp(chosen));
    assert.match(await shown(trainer), /1 white 1 red/); // an APAPI's picture of the path
    await trainer.picture("night-briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await wait(1500);
    const { airspeed } = await trainer.instruments();
    assert.ok(airspeed > 70 && airspeed < 78, `the heavier single approaches at 74 kt, not at ${airspeed}`);
    await trainer.picture("night-flight");
    await trainer.press("g");
    await trainer.openSheet();
    assert.match(await shown(trainer), new RegExp(chosen));
    await trainer.picture("night-summary");

    await trainer.page.reload();
    await trainer.screen("Slopewise");
    assert.match(await shown(trainer), new RegExp(chosen));
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
