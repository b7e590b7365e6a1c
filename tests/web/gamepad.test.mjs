// A gamepad in the browser: a fake one, as the W3C's Gamepad recommendation has it, flies a whole approach, is
// plugged in and out, and is calibrated.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

import { stage } from "./trainer.mjs";

const site = stage();

// Before the page's own scripts: navigator.getGamepads gives what the test holds in `window.pads`.
function fakeGamepads() {
    window.pads = [null, null, null, null];
    navigator.getGamepads = () => window.pads.map((pad) => pad && { ...pad, axes: [...pad.axes], buttons: pad.buttons.map((button) => ({ ...button })) });
    const tell = (kind, pad) => {
        const event = new Event(kind);
        event.gamepad = pad;
        window.dispatchEvent(event);
    };
    window.plugIn = (index, id, axes, buttons, mapping) => {
        window.pads[index] = {
            id, index, mapping, connected: true, timestamp: performance.now(),
            axes: axes.slice(), buttons: Array.from({ length: buttons }, () => ({ pressed: false, touched: false, value: 0 })),
        };
        tell("gamepadconnected", window.pads[index]);
    };
    window.unplug = (index) => {
        const pad = { ...window.pads[index], connected: false };
        window.pads[index] = null;
        tell("gamepaddisconnected", pad);
    };
    window.give = (index, axes, pressed) => {
        const pad = window.pads[index];
        for (const [axis, value] of Object.entries(axes)) pad.axes[axis] = value;
        pad.buttons.forEach((button, i) => {
            button.pressed = pressed.includes(i);
            button.value = button.pressed ? 1 : 0;
        });
        pad.timestamp = performance.now();
    };
}

// Where things stand in a window of 1280 x 720; a press that misses makes the next wait fail.
const at = { sheetFile: [160, 110], wayIn: [126, 396], calibrate: [170, 300] };

const standard = "Fake gamepad (STANDARD GAMEPAD)";

class Pad {
    constructor(trainer, index = 0) {
        this.trainer = trainer;
        this.index = index;
    }
    async plugIn(id = standard, axes = [0, 0, 0, 0], buttons = 17, mapping = "standard") {
        await this.trainer.page.evaluate((given) => window.plugIn(...given), [this.index, id, axes, buttons, mapping]);
        await this.trainer.frames(4);
    }
    async unplug() {
        await this.trainer.page.evaluate((index) => window.unplug(index), this.index);
        await this.trainer.frames(4);
    }
    async give(axes, pressed = []) {
        await this.trainer.page.evaluate((given) => window.give(...given), [this.index, axes, pressed]);
        await this.trainer.frames(3);
    }
    async press(button) {
        await this.give({}, [button]);
        await this.give({});
    }
}

// The page as any visitor gets it, with the fake in it; the stick question is answered.
async function open() {
    const trainer = await site.open();
    await trainer.page.addInitScript(fakeGamepads);
    await trainer.page.evaluate(() => localStorage.setItem("slopewise-settings", JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off" })));
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    return trainer;
}

const live = (trainer) => trainer.page.locator("#instruments").textContent();

async function openSheet(trainer) {
    await trainer.press("h");
    await trainer.screen("Look: standard");
    await trainer.frames(3);
}

test("a fake gamepad flies a whole approach to 50 ft, and the sheet says so", async () => {
    const trainer = await open();
    const pad = new Pad(trainer);
    await trainer.press("1"); // one mile
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await pad.plugIn();
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await pad.give({});

    // A simple hand: the right stick for the path by the lights and the sink, the left one for the speed.
    const clamp = (value, most) => Math.max(-most, Math.min(most, value));
    let moved = false;
    for (let turn = 0; turn < 600 && !(await trainer.text()).includes("how was it?"); ++turn) {
        const now = await trainer.instruments();
        if (Number.isNaN(now.airspeed)) continue;
        const wantedSink = now.white >= 3 ? -450 : now.white === 1 || now.white === 0 ? -200 : -345;
        const power = clamp((wantedSink - now.vertical) / 600, 0.4);
        const pull = clamp((now.airspeed - 65) / 25, 0.45);
        moved ||= Math.abs(power) > 0.1 || Math.abs(pull) > 0.1;
        await pad.give({ 1: pull, 3: -power });
    }
    await trainer.screen("how was it?");
    assert.ok(moved, "the fake hand moved its sticks");
    await trainer.press("Escape");
    await trainer.screen("Deviation summary");
    assert.match(await trainer.text(), /Scoring ended at 50 ft wheel height/);

    // The printed sheet says what it was flown with.
    await trainer.press("t");
    await trainer.screen("Take it with you");
    const arrives = trainer.page.waitForEvent("download");
    await trainer.click(at.sheetFile); // the sheet, first of the files
    const file = await arrives;
    const sheet = readFileSync(await file.path(), "utf8");
    assert.match(file.suggestedFilename(), /\.html$/);
    assert.match(sheet, /Flown with: controller: Fake gamepad/);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("its buttons pause, step the flap and go around; unplugged in flight, the flight pauses", async () => {
    const trainer = await open();
    const pad = new Pad(trainer);
    await pad.plugIn();
    await trainer.press("1");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    const before = await trainer.instruments();
    await pad.press(4); // flap up
    await trainer.page.waitForFunction((was) => !document.getElementById("instruments").textContent.includes(`Flap ${was}`), before.flap);
    await pad.press(9);
    await trainer.screen("Paused");
    await pad.press(9);
    await trainer.screen("Flying");
    await pad.give({ 1: 0.4 });
    await pad.unplug();
    await trainer.screen("Paused");
    await pad.plugIn();
    await pad.press(9);
    await trainer.screen("Flying");
    await pad.press(3);
    await trainer.screen("how was it?");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("the sheet tells of what comes and goes, and calibrates a stick step by step; it is kept over a reload", async () => {
    const trainer = await open();
    const pad = new Pad(trainer);
    await openSheet(trainer);
    await trainer.picture("controllers-way-in");
    await trainer.click(at.wayIn);
    await trainer.screen("Stick and levers.");
    await trainer.screen("press one of its buttons");
    await trainer.picture("controllers-none");
    const odd = ["Odd yoke", [0.9, 0, 0.1, 0.1], 6, ""];
    await pad.plugIn(...odd);
    await trainer.screen("Connected: Odd yoke.");
    await trainer.screen("Axis 2: stick"); // as it comes
    await pad.give({ 2: 0.4 });
    await trainer.page.waitForFunction(() => /Axis 3 gives 40 %/.test(document.getElementById("instruments").textContent));
    await pad.give({ 2: 0.1 });
    await trainer.picture("controllers-device");

    await trainer.click(at.calibrate); // "Calibrate step by step"
    await trainer.screen("Step 1 of 5: Move the stick or yoke about");
    await pad.give({ 3: 0.3 });
    await pad.give({ 3: 0.1 });
    await trainer.press("Enter");
    await trainer.screen("Step 2 of 5: Pull it fully back");
    await trainer.press("Enter"); // nothing has moved
    await trainer.screen("Nothing has moved far enough yet.");
    await pad.give({ 3: -0.8 });
    await trainer.screen("Axis 4 moves most.");
    await trainer.picture("controllers-step");
    await trainer.press("Enter");
    await trainer.screen("Step 3 of 5: Push it fully forward");
    await pad.give({ 3: 0.9 });
    await trainer.press("Enter");
    await trainer.screen("Step 4 of 5: Close the throttle lever");
    await pad.give({ 3: 0.1, 0: 1 });
    await trainer.press("Enter");
    await trainer.screen("Step 5 of 5: Open the throttle lever fully");
    await pad.give({ 0: -0.9 });
    await trainer.press("Enter");
    await trainer.screen("Kept for Odd yoke: axis 4 is the stick, axis 1 is the throttle.");
    await trainer.screen("Axis 4: stick, inverted");
    await trainer.picture("controllers-kept");

    await pad.unplug();
    await trainer.screen("Unplugged: Odd yoke.");
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await openSheet(trainer);
    await trainer.click(at.wayIn);
    await trainer.screen("Stick and levers.");
    await pad.plugIn(...odd);
    await trainer.screen("As you set it.");
    await trainer.screen("Axis 4: stick, inverted");
    assert.match(await live(trainer), /Axis 4/);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
