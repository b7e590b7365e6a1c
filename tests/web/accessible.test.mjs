// The page for who cannot see it, cannot use a mouse, or needs it larger: axe-core's rules (WCAG 2.2 A and AA and its
// best practices) on what stands around the canvas, the mirror's text, the order of focus, and the page zoomed to 200 %.
import assert from "node:assert/strict";
import { test } from "node:test";

import { axe } from "./browsers.mjs";
import { stage } from "./trainer.mjs";

const on = stage();

// What axe-core finds, as sentences. Evaluated by the browser's own tools, so that the page's policy holds.
async function findings(page) {
    await page.evaluate(axe.source);
    const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations", "incomplete"] }));
    const told = (kind) => found[kind].map((one) => `${one.id} (${one.impact}): ${one.nodes.map((node) => node.target.join(" ")).join(", ")}`);
    return { broken: told("violations"), unsure: told("incomplete"), held: found.passes?.length };
}

async function fly(trainer) {
    await trainer.page.evaluate(() => localStorage.setItem("slopewise-settings", JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off" })));
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
    await trainer.press("1");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
}

test("axe-core finds nothing wrong on the first page, in flight, on the sheet, and about the program", { timeout: 300000 }, async () => {
    const trainer = await on.open({ first: "start with lesson 1" });
    assert.deepEqual((await findings(trainer.page)).broken, [], "the first page");
    await fly(trainer);
    assert.deepEqual((await findings(trainer.page)).broken, [], "in flight");
    await trainer.press("g");
    await trainer.openSheet();
    assert.deepEqual((await findings(trainer.page)).broken, [], "the deviation summary");
    assert.equal(await trainer.page.title(), "Deviation summary: Slopewise");
    await trainer.context.close();
});

test("axe-core finds nothing wrong where there is no picture", async () => {
    const trainer = await on.open({ first: "", before: () => (HTMLCanvasElement.prototype.getContext = () => null) });
    await trainer.page.waitForSelector("#notice[role=alert]");
    assert.deepEqual((await findings(trainer.page)).broken, []);
    await trainer.context.close();
});

test("axe-core itself works here: a picture without words is found", async () => {
    const trainer = await on.open({ first: "start with lesson 1" });
    await trainer.page.evaluate(() => document.querySelector("main").append(document.createElement("img")));
    assert.match((await findings(trainer.page)).broken.join("\n"), /^image-alt/m);
    await trainer.context.close();
});

test("what the canvas shows stands in the page as a heading and lines, and only what changes is written anew", { timeout: 300000 }, async () => {
    const trainer = await on.open({ first: "start with lesson 1" });
    await fly(trainer);
    const { heading, lines, live } = await trainer.page.evaluate(() => ({
        heading: document.querySelector("#mirror h2").textContent,
        lines: document.querySelectorAll("#mirror p").length,
        live: [document.getElementById("mirror"), document.getElementById("instruments")].map((one) => one.ariaLive),
    }));
    assert.match(heading, /^Flying\. /);
    assert.ok(lines > 0);
    assert.deepEqual(live, ["polite", "off"], "instruments are read, never spoken unasked");
    await trainer.page.evaluate(() => (document.querySelector("#mirror h2").kept = true));
    await trainer.press("p");
    await trainer.screen("Paused");
    assert.ok(await trainer.page.evaluate(() => document.querySelector("#mirror h2").kept), "the line that stayed is the same element");
    await trainer.context.close();
});

test("with keys alone: the canvas has the focus, Tab reaches what can be pressed, and nothing holds the focus fast", async () => {
    const trainer = await on.open({ first: "start with lesson 1" });
    assert.equal(await trainer.page.evaluate(() => document.activeElement.id), "canvas");
    assert.equal(await trainer.page.evaluate(() => document.documentElement.lang), "en");
    await trainer.press("Enter"); // the primary button, whatever has the focus
    await trainer.screen("Lesson 1");
    await trainer.context.close();
});

test("zoomed to 200 % every line can still be reached, and nothing is cut off at the side", async () => {
    // A browser's zoom of 200 % is half the layout pixels, each of two device pixels.
    const trainer = await on.open({ width: 640, height: 360, scale: 2, first: "start with lesson 1" });
    await trainer.picture("zoomed-first-page");
    await fly(trainer);
    await trainer.picture("zoomed-flight");
    await trainer.press("g");
    await trainer.openSheet();
    await trainer.picture("zoomed-summary");
    const sides = await trainer.page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    assert.equal(sides[0], sides[1]);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
