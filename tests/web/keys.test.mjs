// The keyboard in a real page: keys bound anew, keyboards of other countries, keys whose coming up nobody tells, sticky
// keys and clickers.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage } from "./trainer.mjs";

const site = stage();
const settingsKey = "slopewise-settings";

// The middles of what is clicked, at 1280 x 720.
const places = { keysAndFingers: [130, 340], flapDown: [170, 395] };

async function openKept(keys = {}) {
    const trainer = await site.open();
    const kept = { kind: "settings", stick_sense: "up_key_pushes", sound: "off", keys };
    await trainer.page.evaluate(([name, text]) => localStorage.setItem(name, text), [settingsKey, JSON.stringify(kept)]);
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    return trainer;
}

async function fly(trainer) {
    await trainer.press("1");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
}

// The trim as the instruments have it, in whole per cent, nose up positive: it moves only while a key is held.
async function trim(trainer) {
    const text = await trainer.page.locator("#instruments").textContent();
    const [, percent, way] = text.match(/Trim (\d+) % nose (up|down)/);
    return way === "up" ? Number(percent) : -Number(percent);
}

// A key as another keyboard tells of it: what it gives and where it is.
async function give(trainer, type, { code, key, keyCode = 0 }) {
    await trainer.page.evaluate(
        ([kind, told]) => document.getElementById("canvas").dispatchEvent(new KeyboardEvent(kind, { ...told, bubbles: true, cancelable: true })),
        [type, { code, key, keyCode }],
    );
    await trainer.frames(3);
}

async function tap(trainer, told) {
    await give(trainer, "keydown", told);
    await give(trainer, "keyup", told);
}

const flap = async (trainer) => (await trainer.instruments()).flap;

test("a key bound on the sheet flies instead of the old one, is told, and is kept over a reload", async () => {
    const trainer = await openKept();
    await trainer.press("h");
    await trainer.screen("Screen and help");
    await trainer.click(places.keysAndFingers);
    await trainer.screen("Keys and fingers");
    await trainer.picture("keys");
    await trainer.click(places.flapDown);
    await trainer.screen("flap down a step: press its key now");
    await trainer.press("Tab");
    await trainer.screen("Tab is the program's own");
    await trainer.press("]");
    await trainer.screen("flap down a step: Right bracket ]");
    await trainer.picture("keys-bound");
    await trainer.press("Escape");
    await trainer.screen("Screen and help");
    await trainer.press("h");
    await trainer.screen("Choose an approach");
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await fly(trainer);
    const before = await flap(trainer);
    await trainer.press("r");
    await trainer.page.waitForFunction((was) => !document.getElementById("instruments").textContent.includes(`Flap ${was}`), before);
    const up = await flap(trainer);
    await trainer.press("f");
    await trainer.frames(3);
    assert.equal(await flap(trainer), up, "F still works the flap");
    await trainer.press("]");
    await trainer.page.waitForFunction((was) => document.getElementById("instruments").textContent.includes(`Flap ${was}`), before);
    await trainer.picture("keys-flight");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("a French keyboard flies by its letters and pauses by its P, a Russian one by the same places", async () => {
    const trainer = await openKept();
    await fly(trainer);
    const before = await flap(trainer);
    await tap(trainer, { code: "KeyR", key: "r", keyCode: 82 }); // French: where it is on all
    const one = await flap(trainer);
    assert.notEqual(one, before);
    await tap(trainer, { code: "KeyF", key: "\u0430", keyCode: 0 }); // Russian: no code of old for it
    assert.equal(await flap(trainer), before);
    await tap(trainer, { code: "Semicolon", key: "m", keyCode: 77 }); // French M: mirror start is a flight anew
    await trainer.screen("Flying");
    await tap(trainer, { code: "KeyP", key: "\u0437" }); // Russian
    await trainer.screen("Paused");
    await tap(trainer, { code: "KeyP", key: "p", keyCode: 80 });
    await trainer.page.waitForFunction(() => !document.getElementById("mirror").textContent.includes("Paused"));
    await tap(trainer, { code: "KeyP", key: "p", keyCode: 80 });
    await trainer.screen("Paused");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("an umlaut can be bound, is called by what it gives, and flies", async () => {
    const trainer = await openKept({ flap_up: "semicolon \u00d6" });
    await fly(trainer);
    const before = await flap(trainer);
    await tap(trainer, { code: "Semicolon", key: "\u00f6", keyCode: 192 });
    assert.notEqual(await flap(trainer), before);
    await trainer.press("p");
    await trainer.screen("Paused");
    await trainer.press("h");
    await trainer.screen("F \u00d6: flap down / up a step");
    await trainer.context.close();
});

test("a key held while the window loses its focus is let go, and so is one that came up while the page was hidden", async () => {
    for (const lost of ["blur", "visibilitychange"]) {
        const trainer = await openKept();
        await fly(trainer);
        await trainer.page.keyboard.down("u");
        await trainer.page.waitForFunction(() => Number(document.getElementById("instruments").textContent.match(/Trim (\d+) % nose up/)?.[1]) >= 5);
        await trainer.page.evaluate((kind) => (kind === "blur" ? window : document).dispatchEvent(new Event(kind)), lost);
        await trainer.frames(3);
        const then = await trim(trainer);
        await trainer.frames(20);
        assert.equal(await trim(trainer), then, `after ${lost} the trim still moved`);
        assert.ok(then < 100, "it stopped at the end of its travel, which shows nothing");
        await trainer.page.keyboard.up("u");
        await trainer.press("u"); // and a new press is heard
        assert.ok((await trim(trainer)) > then);
        await trainer.context.close();
    }
});

test("with sticky keys one tap holds, which is told, the next lets go, and going around lets go of all", async () => {
    const trainer = await openKept({ sticky: "on" });
    await fly(trainer);
    await trainer.press("u");
    await trainer.screen("Held: trim nose up");
    await trainer.picture("keys-sticky");
    const then = await trim(trainer);
    await trainer.frames(10);
    assert.ok((await trim(trainer)) > then, "a tap held nothing");
    await trainer.press("u");
    await trainer.page.waitForFunction(() => !document.getElementById("mirror").textContent.includes("Held:"));
    const stopped = await trim(trainer);
    await trainer.frames(10);
    assert.equal(await trim(trainer), stopped);
    await trainer.press("ArrowDown");
    await trainer.screen("Held: nose up");
    await trainer.press("g");
    await trainer.page.waitForFunction(() => !document.getElementById("mirror").textContent.includes("Held:"));
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("what belongs to the browser stays there, and F5 of a clicker does not end a flight", async () => {
    const trainer = await openKept();
    await trainer.page.evaluate(() => {
        window.kept = [];
        window.addEventListener("keydown", (event) => { if (event.defaultPrevented) window.kept.push(event.key); });
    });
    await tap(trainer, { code: "F5", key: "F5", keyCode: 116 });
    assert.deepEqual(await trainer.page.evaluate(() => window.kept), [], "the page cannot be loaded again");
    await fly(trainer);
    const before = await flap(trainer);
    await trainer.page.evaluate(() => (window.kept = []));
    await tap(trainer, { code: "F5", key: "F5", keyCode: 116 });
    await tap(trainer, { code: "Slash", key: "/", keyCode: 191 });
    assert.deepEqual(await trainer.page.evaluate(() => window.kept), ["F5", "/"]);
    // Ctrl and R loads the page again everywhere, and steps no flap.
    await trainer.page.evaluate(() => document.getElementById("canvas").dispatchEvent(new KeyboardEvent("keydown", { code: "KeyR", key: "r", keyCode: 82, ctrlKey: true, bubbles: true, cancelable: true })));
    await trainer.frames(3);
    assert.equal(await flap(trainer), before);
    await trainer.context.close();
});
