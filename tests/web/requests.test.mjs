// Nothing is fetched from anywhere else, ever: all that a browser asks for in a whole session is
// written down. And the page's policy, which would stop it if something tried.
import assert from "node:assert/strict";
import { copyFileSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { test } from "node:test";
import { pathToFileURL } from "node:url";

import { sitePolicy } from "../../web/ship/policy.mjs";
import { recorded } from "./request_record.mjs";
import { launch, root, serve, Trainer } from "./trainer.mjs";

const small = { width: 640, height: 360 };

// Flight, sheet, files to take along, logbook, class window and licences.
async function wholeSession(trainer) {
    await trainer.flyShort(3);
    await trainer.savedBy("c");
    await trainer.press("Escape");
    await trainer.screen("Choose an approach");
    await trainer.openLogbook();
    await trainer.press("Escape");
    await trainer.screen("Choose an approach");
    await trainer.press("Escape");
    await trainer.screen("start with lesson 1");
    await trainer.press("t");
    await trainer.screen("Teach a class.");
    const opening = trainer.context.waitForEvent("page");
    await trainer.press("w");
    const projector = trainer.beside(await opening);
    await projector.screen("Frozen.");
    const [tab] = await Promise.all([
        trainer.context.waitForEvent("page"),
        trainer.page.evaluate(() => document.getElementById("licences").click()),
    ]);
    await tab.waitForFunction(() => document.body?.textContent.includes("Dear ImGui"));
    return [...trainer.requests, ...projector.requests];
}

for (const name of ["chromium", "firefox"]) {
    test(`${name}: a whole session of the site asks for the site's own files, and nothing else`, async (t) => {
        const server = await serve();
        t.after(() => server.stop());
        const { browser, end } = await recorded(name);
        t.after(() => browser.close());
        const trainer = await Trainer.open(browser, server.address, small);
        await trainer.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
        await wholeSession(trainer);
        assert.deepEqual(await trainer.context.cookies(), []);
        assert.deepEqual(trainer.errors, []);

        const { pages, ofTheBrowser } = await end();
        const elsewhere = pages.filter((one) => !one.startsWith(server.address) && !/^(data|blob):/.test(one));
        assert.deepEqual(elsewhere, []);
        const files = new Set(pages.filter((one) => one.startsWith(server.address)).map((one) => new URL(one).pathname));
        t.diagnostic(`${pages.length} requests, for ${[...files].sort().join(" ")}; ${ofTheBrowser} of the browser's own`);
        for (const file of ["/", "/slopewise.wasm", "/slopewise_second.wasm", "/service_worker.js", "/icon-512.png", "/licences.txt"]) assert.ok(files.has(file), file);
    });

    test(`${name}: a whole session of the one file asks for that file, and nothing else`, async (t) => {
        const stick = mkdtempSync(path.join(tmpdir(), "slopewise-"));
        t.after(() => rmSync(stick, { recursive: true }));
        copyFileSync(path.join(root, "build/web/slopewise.html"), path.join(stick, "slopewise.html"));
        const address = String(pathToFileURL(path.join(stick, "slopewise.html")));
        const { browser, end } = await recorded(name);
        t.after(() => browser.close());
        const trainer = await Trainer.open(browser, address, small);
        const seen = await wholeSession(trainer);
        assert.deepEqual(trainer.errors, []);
        const { pages } = await end();
        const other = (one) => !/^(data|blob):/.test(one) && one.split("#")[0] !== address; // the class window is the file again
        assert.deepEqual([...pages, ...seen].filter(other), []);
    });
}

test("every file is sent with the policy, tells no address to anyone, sets no cookie, and may be framed by nobody", async (t) => {
    const server = await serve();
    t.after(() => server.stop());
    for (const name of readdirSync(path.join(root, "build/web/site")).filter((one) => !/\.(gz|br)$/.test(one))) {
        const { status, headers } = await fetch(server.address + name);
        assert.equal(status, 200, name);
        assert.equal(headers.get("content-security-policy"), `${sitePolicy}; frame-ancestors 'none'`, name);
        assert.equal(headers.get("referrer-policy"), "no-referrer", name);
        assert.equal(headers.get("x-content-type-options"), "nosniff", name);
        assert.equal(headers.get("set-cookie"), null, name);
    }
});

test("the site has no inline script, style or handler, and its policy in the page is the one that the server sends", () => {
    const page = readFileSync(path.join(root, "build/web/site/index.html"), "utf8");
    assert.equal(page.match(/http-equiv="Content-Security-Policy" content="([^"]*)"/)[1], sitePolicy);
    assert.doesNotMatch(sitePolicy, /unsafe-inline|'unsafe-eval'|https?:|\*/);
    assert.doesNotMatch(page, /<style|\sstyle=|\son\w+=|javascript:/i);
    for (const [script, attributes, content] of page.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)) {
        assert.match(attributes, / src="/, script);
        assert.equal(content, "");
    }
});

test("the policy is in force: a script put into the page does not run, and another origin is not reached", async (t) => {
    const server = await serve();
    const browser = await launch();
    t.after(() => browser.close());
    t.after(() => server.stop());
    const { page } = await Trainer.open(browser, server.address, small);
    const stopped = await page.evaluate(async () => {
        const found = [];
        document.addEventListener("securitypolicyviolation", (event) => found.push(event.effectiveDirective));
        const script = document.createElement("script");
        script.textContent = "window.ran = true";
        document.body.append(script);
        const reached = await fetch("http://127.0.0.1:9/").then(() => true, () => false);
        const image = document.createElement("img");
        image.src = "http://127.0.0.1:9/x.png";
        await new Promise((done) => { image.onerror = done; });
        return { ran: window.ran === true, reached, found };
    });
    // Each is told twice: by the policy in the page, which any server sends, and by the one that ours sends beside it.
    const both = ["script-src-elem", "connect-src", "img-src"].flatMap((one) => [one, one]);
    assert.deepEqual(stopped, { ran: false, reached: false, found: both });
});
