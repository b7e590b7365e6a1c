// From a key's event to the changed pixel, in Chromium: the throttle lever on the shelf moves by a step when its key is
// pressed, and nothing else moves where it stands.
//
// 14 CFR Part 60 (appendix A, table A1A: transport delay or latency of no more than 100 ms for levels C and D, 150 ms
// for levels A and B; from memory of the published table) says what a qualified simulator may take. Slopewise is none
// and claims nothing by it: the two limits are an anchor.
//
// The key is pressed by the browser's own input path. Its event carries the time at which the browser took it in; from
// there to the frame in which the canvas, read back, differs is one figure. The other is the browser's own, from the
// event to the next picture it shows (Event Timing, in steps of 8 ms). A screen's own delay is in neither.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage } from "./trainer.mjs";

const on = stage();
const presses = 60;
const lever = { x: 800, y: 552, width: 46, height: 130 }; // of the throttle at 1280 x 720, without the engine's mark beside it

const sorted = (values) => [...values].sort((a, b) => a - b);
const share = (values, part) => sorted(values)[Math.min(values.length - 1, Math.floor(part * values.length))];
const words = (values) => `median ${share(values, 0.5).toFixed(1)} ms, 95th percentile ${share(values, 0.95).toFixed(1)} ms, longest ${share(values, 1).toFixed(1)} ms`;

// Watches the page: `found` holds for each press the time from its event to the first frame whose pixels differ,
// `shown` what the browser itself says. An animation frame asked for within one comes after the program's own, while
// what it drew is still in the buffer.
function watch(page, place) {
    return page.evaluate((place) => {
        const canvas = document.getElementById("canvas");
        const gl = canvas.getContext("webgl2");
        const scale = canvas.width / canvas.clientWidth;
        const [width, height] = [place.width * scale, place.height * scale].map(Math.round);
        const bytes = new Uint8Array(4 * width * height);
        const picture = () => {
            gl.readPixels(Math.round(place.x * scale), Math.round(canvas.height - (place.y + place.height) * scale), width, height, gl.RGBA, gl.UNSIGNED_BYTE, bytes);
            let sum = 0;
            for (const byte of bytes) sum = (Math.imul(sum, 31) + byte) | 0;
            return sum;
        };
        const state = (window.delays = { found: [], shown: [], frames: 0, began: performance.now() });
        let pressed = null, before = null;
        window.addEventListener("keydown", (event) => (pressed = { at: event.timeStamp, before }), { capture: true });
        requestAnimationFrame(function look() {
            const now = picture();
            ++state.frames;
            if (pressed && pressed.before !== null && now !== pressed.before) {
                state.found.push(performance.now() - pressed.at);
                pressed = null;
            }
            before = now;
            requestAnimationFrame(look);
        });
        new PerformanceObserver((list) => {
            for (const entry of list.getEntries()) if (entry.name === "keydown") state.shown.push(entry.duration);
        }).observe({ type: "event", durationThreshold: 16 });
    }, place);
}

test("from a key's event to the changed pixel, beside what Part 60 allows a qualified simulator", { timeout: 600000 }, async () => {
    const trainer = await on.open();
    await trainer.page.evaluate(() => localStorage.setItem("slopewise-settings", JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off" })));
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await trainer.press("3");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await trainer.frames(20); // the country is drawn up in the first frames
    await watch(trainer.page, lever);
    for (let i = 0; i < presses; ++i) {
        const key = i % 2 === 0 ? "e" : "d";
        await trainer.page.keyboard.down(key);
        await trainer.page.waitForFunction((wanted) => window.delays.found.length >= wanted, i + 1, { timeout: 10000 });
        await trainer.page.keyboard.up(key);
        await new Promise((rest) => setTimeout(rest, 120 + 40 * Math.random())); // anywhere within a frame
    }
    const { found, shown, frames, ms } = await trainer.page.evaluate(() => ({ ...window.delays, ms: performance.now() - window.delays.began }));
    assert.match(await trainer.text(), /Flying/, "it still flew when the last key was pressed");
    const frame_ms = ms / frames;
    console.log(`input to picture, ${found.length} keys, 1280 x 720, Chromium headless, software GL, a frame takes ${frame_ms.toFixed(1)} ms: to the changed pixel ${words(found)}`);
    if (shown.length > 0) console.log(`input to picture, as the browser tells it (${shown.length} keys): ${words(shown)}`);
    assert.equal(found.length, presses);
    // What the program adds is counted in frames, whatever machine draws them: a key that came before a frame is in that
    // frame, so half a frame is waited for and one drawn; two more allow for one that was dropped. On a machine that
    // draws 60 a second this is under 59 ms; the limits in milliseconds are for such a machine, so they are held only
    // where frames are that quick.
    assert.ok(share(found, 0.5) < 2.5 * frame_ms + 8, `median ${share(found, 0.5)} ms at ${frame_ms} ms a frame`);
    assert.ok(share(found, 0.95) < 4 * frame_ms + 8, `95th percentile ${share(found, 0.95)} ms at ${frame_ms} ms a frame`);
    if (frame_ms < 17.5) assert.ok(share(found, 0.5) < 100 && share(found, 0.95) < 150);
    await trainer.context.close();
});
