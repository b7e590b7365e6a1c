// A flight replayed in a real browser, with real keys, a mouse and a finger: steps, marks, speed, seat and side;
// and pictures at three sizes, to be looked at.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage, wait } from "./trainer.mjs";

const site = stage();

const settings = JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off" });

// Flies a few seconds from one mile with some inputs, goes around, and opens the replay from the summary.
async function openReplay(options) {
    const trainer = await site.open(options);
    await trainer.page.evaluate((text) => localStorage.setItem("slopewise-settings", text), settings);
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await trainer.press("1");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await wait(2500);
    await trainer.press("ArrowDown", 700);
    await wait(1500);
    await trainer.press("e", 1200);
    await wait(2500);
    await trainer.press("g");
    await trainer.openSheet();
    await trainer.press("r");
    await trainer.screen("Replay.");
    return trainer;
}

// Where it stands while paused, in seconds: "Paused at 0:04.20 of 0:09.31".
async function position(trainer) {
    const found = (await trainer.text()).match(/Paused at (\d+):([\d.]+) of (\d+):([\d.]+)/);
    assert.ok(found, `it is not paused:\n${await trainer.text()}`);
    return { now: 60 * Number(found[1]) + Number(found[2]), end: 60 * Number(found[3]) + Number(found[4]) };
}

test("with keys a replay is stepped, played, sped up, and taken from mark to mark", async () => {
    const trainer = await openReplay();
    const start = await position(trainer);
    assert.equal(start.now, 0);
    assert.ok(start.end > 5, `the flight lasts ${start.end} s`);
    await trainer.screen("At: start");

    await trainer.tap("ArrowRight");
    await trainer.screen("Paused at 0:00.10");
    await trainer.tap(".");
    await trainer.tap(".");
    await trainer.tap(".");
    await trainer.screen("Paused at 0:00.12"); // 15 ticks are 0.125 s, shown as 0.12
    await trainer.tap(",");
    await trainer.screen("Paused at 0:00.11");
    await trainer.tap("ArrowLeft");
    await trainer.screen("Paused at 0:00.01");

    // A presenter's clicker: every mark on the way to the end, and the go-around is one.
    const seen = [];
    for (let i = 0; i < 40; ++i) {
        const before = await position(trainer);
        await trainer.press("PageDown");
        await trainer.frames(3);
        const after = await position(trainer);
        if (after.now === before.now) break;
        assert.ok(after.now > before.now);
        seen.push((await trainer.text()).match(/At: (.*)/)?.[1]);
    }
    assert.ok(seen.length >= 3, `the marks are ${seen.join("; ")}`);
    assert.ok(seen.some((name) => name?.includes("power lever")), seen.join("; "));
    assert.ok(seen.some((name) => name?.includes("worst moment")), seen.join("; "));
    assert.ok(seen.at(-1).includes("go-around"), seen.join("; "));
    await trainer.press("PageUp");
    await trainer.screen(`At: ${seen.at(-2)}`);

    await trainer.press("Home");
    await trainer.screen("Paused at 0:00.00");
    await trainer.press("ArrowDown");
    await trainer.screen("speed × 0.5");
    await trainer.press("ArrowUp");
    await trainer.press("ArrowUp");
    await trainer.screen("speed × 2");
    await trainer.press("Space");
    await trainer.screen("Playing");
    await wait(1000);
    await trainer.press("Space");
    await trainer.screen("Paused at");
    const played = (await position(trainer)).now;
    assert.ok(played > 0.8, `in about a second at twice the speed it went ${played} s`);

    // The instruments of the moment are there to be read, as in flight.
    assert.ok((await trainer.instruments()).airspeed > 40);

    await trainer.press("v");
    await trainer.screen("Shown from: seat\n");
    await wait(400);
    await trainer.picture("replay-seat-1280x720");
    await trainer.press("v");
    await trainer.screen("Shown from: side\n");
    await wait(400);
    await trainer.picture("replay-side-1280x720");
    await trainer.press("Backspace");
    await trainer.screen("Deviation summary");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

for (const size of [
    { width: 1280, height: 720 },
    { width: 844, height: 390, scale: 2 },
    { width: 390, height: 844, scale: 2 },
]) {
    test(`the time line is dragged with the mouse in a window of ${size.width} x ${size.height}`, async () => {
        const trainer = await openReplay(size);
        const { end } = await position(trainer);
        const mouse = trainer.page.mouse;
        // The line lies over the buttons; its height follows the text, so it is sought from the lower edge up.
        let hit = false;
        for (let y = size.height - 60; y > size.height / 2 && !hit; y -= 8) {
            await mouse.move(size.width * 0.5, y);
            await trainer.frames();
            await mouse.down();
            await trainer.frames(3);
            await mouse.move(size.width * 0.7, y, { steps: 3 });
            await trainer.frames(5); // the moves come one a frame
            const text = await trainer.text();
            await mouse.up();
            await trainer.frames();
            const at = text.match(/Paused at (\d+):([\d.]+)/);
            hit = at !== null && Math.abs(60 * Number(at[1]) + Number(at[2]) - 0.7 * end) < 0.04 * end;
        }
        assert.ok(hit, "dragging to seven tenths of the line goes to seven tenths of the time");
        await wait(400);
        await trainer.picture(`replay-${size.width}x${size.height}`);
        assert.deepEqual(trainer.errors, []);
        await trainer.context.close();
    });
}
