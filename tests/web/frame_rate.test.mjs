// Frames a second in headless Chromium, where the processor stands in for the graphics card: the flight screen against
// a page of Dear ImGui with nothing in it, built and opened the same way, in the same run. Printed, and held to what
// a stick can be flown with.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { serveTestPages } from "./still_pages.mjs";
import { launch, serve, Trainer } from "./trainer.mjs";

const window_px = { width: 1280, height: 720 };

let empty, site, browser;
before(async () => {
    empty = await serveTestPages();
    site = await serve();
    browser = await launch();
});
after(async () => {
    await browser?.close();
    empty?.stop();
    site?.stop();
});

// The page draws once for each animation frame (emscripten_set_main_loop), so counting these counts its pictures.
// Returns the mean over some seconds and the longest wait between two pictures.
function frameRate(page, seconds = 4) {
    return page.evaluate(
        (ms) =>
            new Promise((done) => {
                let begin, last, frames = 0, longest_ms = 0;
                requestAnimationFrame(function count(now) {
                    if (begin === undefined) begin = now;
                    else {
                        ++frames;
                        longest_ms = Math.max(longest_ms, now - last);
                    }
                    last = now;
                    if (now - begin < ms) requestAnimationFrame(count);
                    else done({ fps: (1000 * frames) / (now - begin), longest_ms });
                });
            }),
        1000 * seconds,
    );
}

test("the flight screen goes on drawing, and its rate is told beside that of an empty page", { timeout: 300000 }, async () => {
    const trainer = await Trainer.open(browser, site.address, window_px);
    await trainer.press("1", 250);
    await trainer.press("Enter", 250);
    await trainer.screen("Which key should lower the nose");
    await trainer.press("ArrowUp", 250);
    await trainer.screen("Briefing");
    await trainer.press("Enter", 250);
    await trainer.screen("Flying");
    await new Promise((done) => setTimeout(done, 1000)); // the country is drawn up in the first frames
    const flight = await frameRate(trainer.page);
    assert.match(await trainer.text(), /Flying/, "it still flew when the count ended");
    await trainer.context.close();

    const page = await (await browser.newContext({ viewport: window_px })).newPage();
    await page.goto(`${empty.address}/empty_page`);
    await page.waitForFunction(() => document.getElementById("canvas").width === innerWidth, undefined, { timeout: 120000 });
    await new Promise((done) => setTimeout(done, 1000));
    const nothing = await frameRate(page);
    await page.context().close();

    const words = ({ fps, longest_ms }) => `${fps.toFixed(1)} (longest wait ${longest_ms.toFixed(0)} ms)`;
    console.log(`frames a second at 1280 x 720, Chromium headless, software GL: flight ${words(flight)}, an empty page ${words(nothing)}, ratio ${(flight.fps / nothing.fps).toFixed(2)}`);
    // How fast that is, is the machine's as much as ours: what is asserted is only that both pages go on drawing at the
    // least rate at which the other tests of this folder can fly, whatever else the machine does (on 2 cores shared with
    // two compilers 13.8 was seen, of 60 for the empty page).
    assert.ok(flight.fps > 4, `${flight.fps} frames a second`);
    assert.ok(nothing.fps > 4, "the empty page ran");
});
