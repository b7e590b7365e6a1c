// A page that survives what machines do, in words that a visitor can use.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

import { answered, flies, machine, notice, small, takeOff } from "./machine.mjs";
import { wait } from "./trainer.mjs";

const on = machine();
const quiet = answered({ sound: "off" });

async function goAround(trainer) {
    await trainer.press("g");
    await trainer.screen("Before the sheet");
    await trainer.press("Escape");
    await trainer.screen("Deviation summary");
}

async function toLogbook(trainer) {
    await trainer.press("l");
    await trainer.screen("Logbook. Student");
    return trainer.text();
}

// ---- the picture ----

for (const [how, script] of [
    ["gives none", () => {
        HTMLCanvasElement.prototype.getContext = () => null;
    }],
    ["throws", () => {
        HTMLCanvasElement.prototype.getContext = () => {
            throw new Error("blocked");
        };
    }],
])
    test(`without WebGL 2 (the browser ${how}) the page says what is missing and what to do`, async () => {
        const { page, context } = await on.openBroken([script]);
        const words = await notice(page, "WebGL 2");
        assert.match(words, /hardware acceleration/);
        assert.match(words, /another browser/);
        assert.ok(await page.locator("#notice-reload").isVisible());
        assert.equal(await page.locator("#notice").getAttribute("role"), "alert");
        await context.close();
    });

const losePicture = (page) => page.evaluate(() => {
    window.pictureLoss = document.getElementById("canvas").getContext("webgl2").getExtension("WEBGL_lose_context");
    window.pictureLoss.loseContext();
});
const restorePicture = (page) => page.evaluate(() => window.pictureLoss.restoreContext());

test("a picture lost in flight pauses it, and given back it is the same to the pixel and flies on", { timeout: 300000 }, async () => {
    const trainer = await on.open([quiet]);
    const { page } = trainer;
    await takeOff(trainer);
    await flies(trainer);
    await trainer.press("p");
    await trainer.screen("Paused.");
    await trainer.frames(10);
    const before = await page.screenshot();
    await losePicture(page);
    await notice(page, "nothing of it is lost");
    await trainer.frames(10);
    await restorePicture(page);
    await page.waitForFunction(() => document.documentElement.dataset.state === "running" && document.getElementById("notice").hidden);
    await trainer.frames(10);
    assert.ok(before.equals(await page.screenshot()), "every letter, shape and colour is drawn again");

    // And once more while it flies.
    await trainer.press("p");
    await flies(trainer);
    await losePicture(page);
    await trainer.screen("Paused.");
    await trainer.screen("The picture was lost. Nothing of the flight is.");
    const { height } = await trainer.instruments();
    await trainer.frames(30);
    assert.equal((await trainer.instruments()).height, height, "it waits");
    await restorePicture(page);
    await page.waitForFunction(() => document.getElementById("notice").hidden);
    await trainer.frames(10);
    assert.equal((await trainer.instruments()).height, height, "and goes on only when told");
    await trainer.picture("picture_back");
    await trainer.press("p");
    assert.ok((await flies(trainer)) < height);
    await goAround(trainer);
    assert.deepEqual(trainer.errors.filter((words) => !/WebGL|CONTEXT_LOST/.test(words)), []);
    await trainer.context.close();
});

test("a picture that does not come back offers to load the page again, and the flight is in the logbook", { timeout: 300000 }, async () => {
    const trainer = await on.open([quiet]);
    const { page } = trainer;
    await takeOff(trainer);
    await flies(trainer);
    await wait(9000); // flown: less than five seconds of flight are not kept
    await losePicture(page);
    await notice(page, "has not come back");
    await trainer.picture("picture_lost");
    assert.ok(await page.locator("#notice-reload").isVisible());
    await Promise.all([page.waitForNavigation(), page.keyboard.press("Enter")]); // the button has the focus
    await trainer.screen("Choose an approach");
    await toLogbook(trainer);
    await trainer.screen("1 attempt"); // as soon as what was cut off is flown again
    await trainer.screen("A flight that was cut off is in the logbook");
    await trainer.context.close();
});

// ---- time ----

// The wall's clock and the page's own, both to be moved.
function clocks() {
    const now = performance.now.bind(performance), date = Date.now;
    window.slept_ms = window.set_ms = 0;
    performance.now = () => now() + window.slept_ms;
    Date.now = () => date() + window.set_ms;
}

test("a laptop that slept finds its flight paused, says for how long, and catches nothing up", { timeout: 300000 }, async () => {
    const trainer = await on.open([clocks, quiet]);
    await takeOff(trainer);
    await flies(trainer);
    const before = (await trainer.instruments()).height;
    await trainer.page.evaluate(() => { window.slept_ms += 600000; });
    await trainer.screen("This machine stood still for 10 min. The flight waited.");
    await trainer.screen("Paused.");
    const after = (await trainer.instruments()).height;
    assert.ok(before - after < 60, `${before} ft, then ${after} ft: ten minutes would be all of the way down`);
    await trainer.picture("slept");
    await trainer.press("p");
    await flies(trainer);
    assert.doesNotMatch(await trainer.text(), /stood still|too slow/);
    await trainer.context.close();
});

test("the clock set back and years ahead: flights are as they are, and each stands in the logbook by its own date", { timeout: 300000 }, async () => {
    const trainer = await on.open([clocks, quiet]);
    const day_ms = 86400000;
    for (const jump_ms of [-400 * day_ms, 5 * 365 * day_ms, -day_ms]) {
        await takeOff(trainer);
        await flies(trainer);
        await trainer.page.evaluate((ms) => { window.set_ms += ms; }, jump_ms);
        await flies(trainer);
        assert.doesNotMatch(await trainer.text(), /Paused|stood still|too slow/);
        await goAround(trainer);
        await trainer.press("Escape");
        await trainer.screen("Choose an approach");
    }
    assert.match(await toLogbook(trainer), /3 attempts/);
    // What an attempt is called begins with when it was begun, and the list is in that order.
    const begun_ms = await trainer.page.evaluate(async () => {
        const settled = (request) => new Promise((done) => { request.onsuccess = () => done(request.result); });
        const db = await settled(indexedDB.open("slopewise"));
        const ids = await settled(db.transaction("rows").objectStore("rows").getAllKeys());
        db.close();
        return ids.map((id) => Number(id.slice(0, 13)));
    });
    assert.equal(begun_ms.length, 3);
    // By the clock of the moment the first was begun now, the second 400 days before, the third four years after.
    const days = begun_ms.map((ms) => Math.round((ms - begun_ms[1]) / day_ms));
    assert.deepEqual(days, [-400, 0, 5 * 365 - 400]);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

// Each frame of the page takes so long.
function slowFrames() {
    const frame = window.requestAnimationFrame.bind(window);
    window.each_ms = 0;
    window.requestAnimationFrame = (draw) =>
        frame((now) => {
            for (const until = performance.now() + window.each_ms; performance.now() < until; );
            draw(now);
        });
}

test("a very slow machine flies slower, says by how much, and stops saying so when it keeps up", { timeout: 300000 }, async () => {
    const trainer = await on.open([slowFrames, quiet]);
    await takeOff(trainer);
    await flies(trainer);
    await trainer.page.evaluate(() => { window.each_ms = 450; });
    // 0.25 s of at least 0.45 s; the first seconds that are measured may still hold quicker frames.
    await trainer.page.waitForFunction(
        () => /This machine is too slow: time runs at 0\.[2-6]\b/.test(document.getElementById("mirror").textContent),
        undefined,
        { timeout: 120000 },
    );
    await trainer.picture("too_slow");
    const before = (await trainer.instruments()).height;
    await trainer.frames(4);
    // At most a quarter of a second a frame, of perhaps 15 ft/s: no catching up, no spiral.
    assert.ok(before - (await trainer.instruments()).height < 8 * 0.25 * 15);
    await trainer.page.evaluate(() => { window.each_ms = 0; });
    await trainer.page.waitForFunction(() => !document.getElementById("mirror").textContent.includes("too slow"), undefined, { timeout: 60000 });
    await goAround(trainer);
    await trainer.context.close();
});

// ---- room to keep things ----

function refusesStorage() {
    for (const name of ["localStorage", "sessionStorage", "indexedDB"])
        Object.defineProperty(window, name, {
            get() {
                throw new DOMException("denied", "SecurityError");
            },
        });
}

test("where the browser keeps nothing the page says so, flies, and hands over what was flown", { timeout: 300000 }, async () => {
    const trainer = await on.open([refusesStorage]);
    await trainer.screen("Attempts are not kept here: hand them over from the logbook before you close the page.");
    await trainer.picture("nothing_kept");
    await trainer.press("Enter");
    await trainer.screen("Which key should lower the nose");
    await trainer.press("ArrowUp");
    await trainer.screen("Briefing");
    await trainer.screen("This browser does not let the page keep settings.");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await flies(trainer);
    await wait(1500); // flown
    await goAround(trainer);
    await trainer.press("Escape");
    await trainer.screen("Choose an approach");
    const book = await toLogbook(trainer);
    assert.match(book, /1 attempt/);
    assert.match(book, /does not let the page keep a logbook/);
    assert.match(book, /hand over what you want to keep before you close the page/);
    const [download] = await Promise.all([trainer.page.waitForEvent("download"), trainer.press("t")]);
    const lines = readFileSync(await download.path(), "utf8").trim().split("\n");
    assert.equal(lines.filter((line) => line.includes('"recording"')).length, 1, "the attempt is in the file");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

// ---- memory ----

// No more memory than the page begins with, while the tab's own storage says so.
function littleMemory() {
    const grow = WebAssembly.Memory.prototype.grow;
    WebAssembly.Memory.prototype.grow = function (pages) {
        if (sessionStorage.getItem("full")) throw new RangeError("WebAssembly.Memory.grow(): Maximum memory size exceeded");
        return grow.call(this, pages);
    };
}

test("out of memory the page stops, says why and what to do, and what was flown is in the logbook", { timeout: 300000 }, async () => {
    const trainer = await on.open([littleMemory, quiet]);
    const { page } = trainer;
    await takeOff(trainer);
    await flies(trainer);
    await wait(9000); // flown: less than five seconds of flight are not kept
    await page.evaluate(() => sessionStorage.setItem("full", "yes"));
    await page.reload();
    const words = await notice(page, "no more memory");
    assert.match(words, /kept on this device is safe/);
    assert.match(words, /in the logbook up to its last second/);
    assert.match(words, /Close other tabs, then load the page again/);
    await page.screenshot({ path: new URL("../../build/pictures/no_memory.png", import.meta.url).pathname });
    await page.evaluate(() => sessionStorage.removeItem("full"));
    await Promise.all([page.waitForNavigation(), page.locator("#notice-reload").click()]);
    await trainer.screen("Choose an approach");
    await toLogbook(trainer);
    await trainer.screen("1 attempt"); // as soon as what was cut off is flown again
    await trainer.context.close();
});
