// Fingers in a real browser, two at a time, sent as the browser itself sends them: both thumb pads at once, a tap
// while a pad is held, a page that neither scrolls nor zooms, a screen that is turned in flight; and
// pictures at the sizes of phones and tablets, to be looked at.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage } from "./trainer.mjs";

const site = stage();

const settings = (more = {}) => JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off", ...more });

// The fingers of one page; each call sends all that rest on it, as a touch screen does.
class Hand {
    constructor(cdp, trainer) {
        this.cdp = cdp;
        this.trainer = trainer;
        this.resting = new Map(); // name -> [x, y]
    }

    points() {
        return [...this.resting].map(([id, [x, y]]) => ({ id, x, y }));
    }

    send(type, points = this.points()) {
        return this.cdp.send("Input.dispatchTouchEvent", { type, touchPoints: points });
    }

    async down(id, at) {
        this.resting.set(id, at);
        await this.send("touchStart");
        await this.trainer.frames(3);
    }

    // In steps, each seen by the program.
    async move(id, to, steps = 4) {
        const from = this.resting.get(id);
        for (let i = 1; i <= steps; ++i) {
            this.resting.set(id, from.map((value, axis) => value + ((to[axis] - value) * i) / steps));
            await this.send("touchMove");
            await this.trainer.frames(1);
        }
        await this.trainer.frames(2);
    }

    async up(id) {
        const [x, y] = this.resting.get(id);
        this.resting.delete(id);
        await this.send("touchEnd", [{ id, x, y }]); // of an end Chromium wants to hear which finger went
        await this.trainer.frames(3);
    }

    async tap(id, at) {
        await this.down(id, at);
        await this.up(id);
    }

    async lost() {
        this.resting.clear();
        await this.send("touchCancel");
        await this.trainer.frames(3);
    }
}

// Flying from three miles on a screen that was touched.
async function flyByFinger(size, more = {}) {
    const trainer = await site.open({ ...size, touch: true, scale: 1 });
    await trainer.page.evaluate((text) => localStorage.setItem("slopewise-settings", text), settings(more));
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    const hand = new Hand(await trainer.context.newCDPSession(trainer.page), trainer);
    await trainer.press("3");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    // A finger that touches the picture and goes: from then on there are thumbs.
    await hand.tap(9, [size.width / 2, size.height / 5]);
    await trainer.screen("Thumb pads");
    return { trainer, hand };
}

// Waits until the instruments are as wanted; says what they were when they never are.
async function instrumentsSay(trainer, wanted, what, seconds = 60) {
    const until = Date.now() + 1000 * seconds;
    let now;
    do {
        now = await trainer.instruments();
        if (wanted(now)) return now;
        await trainer.frames(2);
    } while (Date.now() < until);
    assert.fail(`${what}: ${JSON.stringify(now)}`);
}

const pageStands = async (trainer) => {
    const page = await trainer.page.evaluate(() => ({ scale: visualViewport.scale, x: scrollX, y: scrollY, left: visualViewport.offsetLeft, top: visualViewport.offsetTop }));
    assert.deepEqual(page, { scale: 1, x: 0, y: 0, left: 0, top: 0 });
};

const phone = { width: 844, height: 390 };
const powerPad = [60, 230], stickPad = [784, 230]; // well inside the lower corners of the view

test("both thumbs fly at once: one moves the power and leaves it there, the other pulls and lets go; nothing scrolls or zooms", async () => {
    const { trainer, hand } = await flyByFinger(phone);
    const before = await trainer.instruments();
    await hand.down(0, powerPad);
    await hand.down(1, stickPad);
    await hand.move(0, [60, 160]);
    await hand.move(1, [784, 290]);
    await trainer.picture("touch-both");
    const powered = await instrumentsSay(trainer, (now) => now.power > before.power + 25, "the power did not follow the thumb");
    await instrumentsSay(trainer, (now) => now.vertical > before.vertical + 200, "the nose did not come up with the other thumb");
    await hand.up(1);
    await hand.up(0);
    await trainer.frames(10);
    const after = await trainer.instruments();
    assert.ok(after.power >= powered.power - 1, `the lever did not stay: ${powered.power} -> ${after.power}`);
    await pageStands(trainer);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("a finger on a pad is not the mouse: with both held, a third one pauses and flies on", async () => {
    const { trainer, hand } = await flyByFinger(phone);
    await hand.down(0, powerPad);
    await hand.down(1, stickPad);
    const pause = [784, 366], goAround = [784, 318]; // the buttons beside the shelf
    await hand.tap(2, pause);
    await trainer.screen("Paused.");
    await hand.up(0);
    await hand.up(1);
    await trainer.picture("touch-paused");
    await trainer.press("p");
    await trainer.screen("Thumb pads");
    await hand.down(0, powerPad);
    await hand.tap(2, goAround);
    await trainer.screen("how was it?"); // the decision ends what is scored
    await hand.up(0);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("a pinch, a double tap and a pull from the top leave the page as it is", async () => {
    const { trainer, hand } = await flyByFinger(phone);
    await hand.down(0, [380, 120]);
    await hand.down(1, [460, 120]);
    await hand.move(0, [150, 120]);
    await hand.move(1, [690, 120]);
    await hand.up(0);
    await hand.up(1);
    await hand.tap(0, [422, 100]);
    await hand.tap(0, [422, 100]);
    await hand.down(0, [422, 5]);
    await hand.move(0, [422, 280], 8);
    await hand.up(0);
    await pageStands(trainer);
    await trainer.screen("Flying");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("turned in flight, it flies on with the thumbs in the new corners; a finger that the browser takes away lets go", async () => {
    const { trainer, hand } = await flyByFinger(phone);
    const started = await trainer.instruments();
    await hand.down(1, stickPad);
    await hand.move(1, [784, 260]);
    await trainer.page.setViewportSize({ width: 390, height: 844 });
    await trainer.frames(5);
    await hand.lost();
    await trainer.screen("Flying");
    await trainer.picture("touch-turned");
    const turned = await instrumentsSay(trainer, (now) => now.height < started.height || now.height > started.height, "the flight stood still");
    const canvas = await trainer.page.evaluate(() => [document.getElementById("canvas").clientWidth, document.getElementById("canvas").clientHeight]);
    assert.deepEqual(canvas, [390, 844]);
    await pageStands(trainer);
    const pad = [52, 230]; // the power lever's, in an upright phone
    await hand.down(0, pad);
    await hand.move(0, [pad[0], pad[1] - 60]);
    await instrumentsSay(trainer, (now) => now.power > turned.power + 10, "no power from the turned screen's pad");
    await hand.up(0);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

for (const [name, size, more] of [
    ["phone", phone, {}],
    ["phone-upright", { width: 390, height: 844 }, {}],
    ["tablet", { width: 1024, height: 768 }, {}],
    ["tablet-upright", { width: 768, height: 1024 }, {}],
    ["phone-left", phone, { school: { kind: "school", stick_hand: "left" } }],
]) {
    test(`a picture of the pads on a ${name}`, async () => {
        const { trainer } = await flyByFinger(size, more);
        await trainer.frames(4);
        await trainer.picture(`touch-${name}`);
        await pageStands(trainer);
        assert.deepEqual(trainer.errors, []);
        await trainer.context.close();
    });
}
