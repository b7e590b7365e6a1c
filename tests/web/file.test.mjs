// The whole trainer as one file on a memory stick: opened by double click, with no server and no network.
import assert from "node:assert/strict";
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { after, before, describe, test } from "node:test";
import { pathToFileURL } from "node:url";

import { launch, root, Trainer } from "./trainer.mjs";

const small = { width: 640, height: 360 };
const slopewise = path.join(root, "build/web/slopewise.html");

test("the file names no other file and no host, and its policy allows its own script and style alone", () => {
    const page = readFileSync(slopewise, "utf8");
    const [, policy] = page.match(/<meta http-equiv="Content-Security-Policy" content="([^"]*)">/);
    assert.match(policy, /default-src 'none'; script-src 'sha256-[^']+' 'wasm-unsafe-eval'; style-src 'sha256-[^']+'; connect-src 'none'/);
    assert.doesNotMatch(policy, /unsafe-inline|unsafe-eval'?.*unsafe-eval|https?:|'self'/);
    assert.deepEqual([...page.matchAll(/<link [^>]*href="(?!data:)[^"]*"/g)].map(String), []);
    assert.doesNotMatch(page, /<script[^>]* src=|@import|serviceWorker\.register\("http/);
});

for (const name of ["chromium", "firefox"]) {
    describe(name, () => {
        let browser, stick, address;
        before(async () => {
            stick = mkdtempSync(path.join(tmpdir(), "memory stick "));
            copyFileSync(slopewise, path.join(stick, "slopewise.html"));
            address = String(pathToFileURL(path.join(stick, "slopewise.html")));
            browser = await launch(name);
        });
        after(async () => {
            await browser.close();
            rmSync(stick, { recursive: true });
        });
        const open = (options) => Trainer.open(browser, address, { ...small, ...options });

        test("it is opened and flown, asks for nothing, and says which build it is", async () => {
            const trainer = await open();
            const site = readFileSync(path.join(root, "build/web/site/index.html"), "utf8");
            assert.equal(await trainer.build(), site.match(/<meta name="build" content="(\w+)">/)[1], "one build, both ways to ship");
            await trainer.flyShort(4);
            // Firefox counts the opening of a file as no request.
            assert.deepEqual(trainer.requests.filter((one) => !/^(data|blob):/.test(one) && one !== address), []);
            assert.deepEqual(trainer.errors, []);
            await trainer.picture(`file-${name}`);
            await trainer.context.close();
        });

        test("settings and logbook are there when it is opened again", async () => {
            const trainer = await open();
            await trainer.flyShort(3);
            await trainer.page.reload();
            await trainer.screen("Choose an approach"); // no newcomer's page: the answer about the stick was kept
            await trainer.openLogbook();
            await trainer.screen("1 attempt");
            const again = await trainer.another(address);
            await again.openLogbook();
            await again.screen("1 attempt");
            assert.deepEqual([...trainer.errors, ...again.errors], []);
            await trainer.context.close();
        });

        test("the track of a flight is handed over as a file", async () => {
            const trainer = await open();
            await trainer.flyShort(3);
            assert.match(await trainer.savedBy("c"), /\.csv$/);
            await trainer.context.close();
        });

        test("a link with a lesson in it is looked at like on the site", async () => {
            const trainer = await open({ after: "#lesson=damaged", first: "damaged" });
            await trainer.context.close();
        });

        test("the licences inside it are read in a tab of their own", async () => {
            const trainer = await open();
            const [tab] = await Promise.all([
                trainer.context.waitForEvent("page"),
                trainer.page.evaluate(() => document.getElementById("licences").click()),
            ]);
            await tab.waitForFunction(() => document.body?.textContent.includes("Dear ImGui"));
            assert.match(await tab.evaluate(() => document.body.textContent), /Slopewise is made of the parts below[\s\S]*SDL2[\s\S]*musl[\s\S]*Emscripten/);
            await trainer.context.close();
        });

        test("a class is led in two windows of it", async () => {
            const trainer = await open({ first: "start with lesson 1" });
            await trainer.press("t");
            await trainer.screen("Teach a class.");
            const opening = trainer.context.waitForEvent("page");
            await trainer.press("w");
            const projector = trainer.beside(await opening);
            await projector.screen("Frozen.");
            await trainer.screen("Class window: follows");
            await trainer.press("b");
            await projector.screen("Black.");
            assert.deepEqual([...trainer.errors, ...projector.errors], []);
            await trainer.context.close();
        });
    });
}
