// The screen set up with real keys and a real mouse: looks, eyes outside and peeks, the side profile, what the
// browser prefers; and pictures of the flight at every size in every look, to be looked at.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage, wait } from "./trainer.mjs";

const site = stage();
const key = "slopewise-settings";

// What is kept, with the stick question answered and more of the display as given.
const kept = (display = {}) => JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off", ...display });

async function openKept(display, options = {}) {
    const trainer = await site.open(options);
    await trainer.page.evaluate(([name, text]) => localStorage.setItem(name, text), [key, kept(display)]);
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    return trainer;
}

async function fly(trainer, miles = "1") {
    await trainer.press(miles);
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
}

test("with keys and mouse the sheet opens, changes the look, is kept over a reload, and closes", async () => {
    const trainer = await site.open();
    await trainer.press("h");
    await trainer.screen("Look: standard");
    await trainer.click([352, 155]); // "Night", the third of the look's cells at 1280 x 720
    await trainer.screen("Look: night");
    await trainer.press("Escape");
    await trainer.screen("Choose an approach");
    await trainer.page.reload();
    await trainer.pastFirstPage();
    await trainer.screen("Choose an approach");
    await trainer.press("h");
    await trainer.screen("Look: night");
    await trainer.picture("screen-and-help-night");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("less motion is on at the first start when the browser asks for it", async () => {
    const trainer = await site.open({ reducedMotion: "reduce" });
    await trainer.press("h");
    await trainer.screen("Less motion: on");
    await trainer.context.close();
});

test("with eyes outside the panel is dark, V lights it, and a look is counted", async () => {
    const trainer = await openKept({ eyes_outside: "on" });
    await fly(trainer);
    await trainer.screen("The panel is dark");
    await trainer.page.keyboard.down("v");
    await trainer.page.waitForFunction(() => !document.getElementById("mirror").textContent.includes("The panel is dark"));
    await wait(500);
    await trainer.picture("peek");
    await trainer.page.keyboard.up("v");
    await trainer.screen("The panel is dark");
    await trainer.picture("eyes-outside");
    await trainer.press("g");
    await trainer.openSheet();
    const words = (await trainer.text()).match(/Eyes outside; peeks: (\d+); inside (\d+) % of the time, at most ([\d.]+) s at once/);
    assert.ok(words, await trainer.text());
    assert.equal(Number(words[1]), 1);
    assert.ok(Number(words[2]) > 0 && Number(words[2]) < 100, `${words[2]} % inside`);
    assert.ok(Number(words[3]) >= 0.3 && Number(words[3]) < 10, `a look of ${words[3]} s`);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

const sizes = [
    { width: 1280, height: 720 },
    { width: 1920, height: 1080 },
    { width: 844, height: 390, scale: 2 },
    { width: 390, height: 844, scale: 2 },
    { width: 1024, height: 768 },
];

// The looks differ in colours alone, so every size in one of them is enough, unless all are to be looked at.
const allPictures = process.env.SLOPEWISE_ALL_PICTURES === "1";

for (const look of ["standard", "high_contrast", "night"]) {
    test(`in the ${look} look the flight and its sheets are drawn without a complaint`, async () => {
        for (const size of look === "standard" || allPictures ? sizes : sizes.slice(0, 1)) {
            const trainer = await openKept({ look, side_profile: "on" }, size);
            const name = `${look}-${size.width}x${size.height}`;
            await trainer.picture(`choices-${name}`);
            await trainer.press("h");
            await trainer.screen("Screen and help");
            await trainer.picture(`help-${name}`);
            await trainer.press("h");
            await trainer.screen("Choose an approach");
            await fly(trainer, "2");
            await wait(4000);
            await trainer.picture(`flight-${name}`);
            assert.ok((await trainer.instruments()).airspeed > 50);
            assert.deepEqual(trainer.errors, []);
            await trainer.context.close();
        }
    });
}
