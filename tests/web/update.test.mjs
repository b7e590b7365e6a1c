// A newer build on the server: it is fetched whole, tells of itself between flights, and is taken when the user says so.
import assert from "node:assert/strict";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { test } from "node:test";

import { programAt } from "../../web/ship/program.mjs";
import { siteFiles } from "../../web/ship/site.mjs";
import { launch, root, serve, Trainer } from "./trainer.mjs";

const small = { width: 640, height: 360 };
const tells = "A newer version is here";
const site = path.join(root, "build/web/site");

// The same program with a line more: another build.
function newerBuild() {
    const program = programAt(path.join(root, "build/web/web/slopewise"), readFileSync(path.join(site, "licences.txt")));
    const parts = { first: readFileSync(path.join(site, "slopewise.wasm")), second: readFileSync(path.join(site, "slopewise_second.wasm")) };
    return siteFiles({ ...program, parts, js: Buffer.concat([program.js, Buffer.from("\n// newer\n")]) });
}
const newer = newerBuild();
const buildOf = (page) => page.match(/<meta name="build" content="([0-9a-f]{8})">/)[1];
const builds = { older: buildOf(readFileSync(path.join(site, "index.html"), "utf8")), newer: buildOf(newer["index.html"]) };

// Puts the newer build where the older is served, but for `broken`, a file that did not arrive whole.
function publish(folder, broken) {
    for (const [name, content] of Object.entries(newer)) {
        writeFileSync(path.join(folder, name), name === broken ? content.slice(0, content.length / 2) : content);
        for (const suffix of [".gz", ".br"]) rmSync(path.join(folder, name + suffix), { force: true });
    }
}

async function visit(t, name) {
    const folder = mkdtempSync(path.join(tmpdir(), "slopewise-"));
    cpSync(site, folder, { recursive: true });
    const server = await serve({ folder });
    const browser = await launch(name);
    t.after(() => browser.close());
    t.after(() => server.stop());
    t.after(() => rmSync(folder, { recursive: true }));
    const trainer = await Trainer.open(browser, server.address, small);
    await trainer.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    return { trainer, folder, server };
}

// Has the browser look for a newer build, as it does by itself when the page is loaded; true when one waits afterwards.
const look = (trainer) => trainer.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
    const coming = registration.installing;
    if (coming) {
        await new Promise((done) => {
            const see = () => coming.state !== "installing" && done();
            coming.addEventListener("statechange", see);
            see();
        });
    }
    return registration.waiting !== null;
});

// Where the button stands among the choices, in a window of 640 x 360. The page may be gone within the frames that a
// click waits for.
const useItNow = (trainer) => trainer.click([222, 120]).catch((error) => {
    if (!String(error).includes("because of a navigation")) throw error;
});

test("two builds have two stamps, and the same build always the same one", () => {
    assert.notEqual(builds.older, builds.newer);
    assert.equal(buildOf(newerBuild()["index.html"]), builds.newer);
});

for (const name of ["chromium", "firefox"]) {
    test(`${name}: a newer build comes in flight, is told of after it, waits through a reload, and keeps what was kept`, async (t) => {
        const { trainer, folder } = await visit(t, name);
        await trainer.flyShort(3);
        await trainer.press("Escape");
        await trainer.screen("Choose an approach");
        assert.doesNotMatch(await trainer.text(), /newer version/);

        await trainer.startFlight();
        publish(folder);
        assert.equal(await look(trainer), true, "it is loaded and waits");
        await trainer.frames(30);
        assert.match(await trainer.text(), /Flying/);
        assert.doesNotMatch(await trainer.text(), /newer version/);
        await trainer.press("g");
        await trainer.openSheet();
        assert.doesNotMatch(await trainer.text(), /newer version/);
        await trainer.press("Escape");
        await trainer.screen(tells);
        await trainer.picture(`update-${name}`);

        // Loaded again, it is still the older one that runs, and still the user who decides.
        await trainer.page.reload();
        await trainer.screen(tells);
        assert.equal(await trainer.build(), builds.older);

        await useItNow(trainer);
        await trainer.page.waitForFunction((build) => document.querySelector("meta[name=build]")?.content === build, builds.newer);
        await trainer.screen("Choose an approach");
        await trainer.frames(30);
        assert.doesNotMatch(await trainer.text(), /newer version/);
        await trainer.openLogbook();
        await trainer.screen("2 attempts");
        assert.deepEqual(await trainer.page.evaluate(() => caches.keys().then((all) => all.map((one) => one.slice(-8)))), [builds.newer]);
        assert.deepEqual(trainer.errors, []);
    });

    test(`${name}: a newer build that did not arrive whole is refused, and the older one runs on without the server`, async (t) => {
        const { trainer, folder, server } = await visit(t, name);
        publish(folder, "slopewise.wasm");
        assert.equal(await look(trainer), false);
        await server.stop();
        await trainer.page.reload();
        await trainer.pastFirstPage();
        await trainer.screen("Choose an approach");
        assert.doesNotMatch(await trainer.text(), /newer version/);
        assert.equal(await trainer.build(), builds.older);
        assert.deepEqual(await trainer.page.evaluate(() => caches.keys().then((all) => all.map((one) => one.slice(-8)))), [builds.older]);
    });
}

test("taken in one tab, it is not forced on another, which gets it when it is loaded again", async (t) => {
    const { trainer, folder, server } = await visit(t, "chromium");
    const other = await trainer.another(server.address, "start with lesson 1");
    await other.press("f");
    await other.screen("Which key");
    await other.press("ArrowUp");
    publish(folder);
    await look(trainer);
    await trainer.screen(tells);
    await useItNow(trainer);
    await trainer.page.waitForFunction((build) => document.querySelector("meta[name=build]")?.content === build, builds.newer);
    assert.equal(await other.build(), builds.older, "nobody is taken out of a flight");
    await other.page.reload();
    await other.screen("Slopewise");
    assert.equal(await other.build(), builds.newer);
});
