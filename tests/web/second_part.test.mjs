// The program comes in two parts: the first is enough for the first screen, and whatever wants the second waits for it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { firstScreens, launch, serve, Trainer, wait } from "./trainer.mjs";

let server;
before(async () => { server = await serve(); });
after(() => server?.stop());

// The page with a word in what its requests for the second part are answered: `answer` is given each of them.
async function opened(t, name, answer, options = {}) {
    const browser = await launch(name);
    t.after(() => browser.close());
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 }, serviceWorkers: "block", ...options });
    context.setDefaultTimeout(120000);
    const trainer = new Trainer(await context.newPage(), context);
    await context.route("**/slopewise_second.wasm*", answer);
    await trainer.page.goto(server.address);
    await trainer.screen("start with lesson 1");
    return trainer;
}

const waitedFor = (trainer) => trainer.page.evaluate(() => performance.getEntriesByName("waited for the second part").length);

for (const { width = 1280, height = 720, scale, touch } of firstScreens) {
    test(`at ${width} x ${height}${touch ? ", a telephone," : ""} the first screen wants nothing of the second part`, async (t) => {
        const never = () => {}; // answered
        const trainer = await opened(t, "chromium", never, { viewport: { width, height }, deviceScaleFactor: scale, hasTouch: touch });
        await trainer.page.mouse.move(20, 20);
        await trainer.page.keyboard.press("Shift");
        await wait(500);
        assert.equal(await waitedFor(trainer), 0, "list again what it runs: node tests/web/learn_first_screen.mjs");
    });
}

for (const name of ["chromium", "firefox"]) {
    test(`${name}: who is quicker than the line waits for the second part, and goes on`, async (t) => {
        const trainer = await opened(t, name, (route) => { if (route.request().resourceType() === "xhr") route.continue(); });
        await trainer.press("c");
        await trainer.screen("Choose an approach");
        assert.equal(await waitedFor(trainer), 1);
        // Firefox's driver, told to keep service workers away, hands the page an undefined one.
        assert.deepEqual(trainer.errors.filter((words) => !words.includes("own.registration is undefined")), []);
    });
}

test("where the second part cannot be had, the page says so and offers to load again", async (t) => {
    const trainer = await opened(t, "chromium", (route) => route.abort());
    assert.equal(await trainer.page.locator("#notice").isVisible(), false);
    await trainer.page.keyboard.press("c");
    await trainer.page.locator("#notice").getByText("could not be loaded. Check the connection").waitFor();
    assert.ok(await trainer.page.locator("#notice-reload").isVisible());
});
