// After one visit the site is on the device, whole: the server may go away, and it is opened, flown and kept as before.
import assert from "node:assert/strict";
import { test } from "node:test";

import { launch, serve, Trainer } from "./trainer.mjs";

const small = { width: 640, height: 360 };

for (const name of ["chromium", "firefox"]) {
    test(`${name}: after one visit the page runs without its server, in another tab too, with its licences and what was kept`, async (t) => {
        const server = await serve();
        const browser = await launch(name);
        t.after(() => browser.close());
        t.after(() => server.stop());
        const trainer = await Trainer.open(browser, server.address, small);
        await trainer.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
        await server.stop();
        await assert.rejects(fetch(server.address), "nobody answers there now");

        await trainer.page.reload();
        await trainer.pastFirstPage();
        await trainer.screen("Choose an approach");
        await trainer.flyShort(3);
        const licences = await trainer.page.evaluate(() => fetch("licences.txt").then((answer) => answer.text()));
        assert.match(licences, /Dear ImGui[\s\S]*SDL2[\s\S]*Emscripten/);

        const tab = await trainer.another(`${server.address}index.html`);
        await tab.openLogbook();
        await tab.screen("1 attempt");
        // The icons and the manifest are what an installed copy is drawn with.
        const there = await tab.page.evaluate(() => Promise.all(
            ["./", "icon-192.png", "icon-512.png", "icon-maskable.png", "manifest.webmanifest"].map((file) => fetch(file).then(({ status }) => status, () => 0)),
        ));
        assert.deepEqual(there, [200, 200, 200, 200, 200]);
        assert.deepEqual([...trainer.errors, ...tab.errors], []);
    });
}

test("chromium finds nothing that would keep the page from being installed", async (t) => {
    const server = await serve();
    const browser = await launch();
    t.after(() => browser.close());
    t.after(() => server.stop());
    const trainer = await Trainer.open(browser, server.address, small);
    await trainer.page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    const cdp = await trainer.context.newCDPSession(trainer.page);
    const { data, errors } = await cdp.send("Page.getAppManifest");
    assert.deepEqual(errors, []);
    assert.equal(JSON.parse(data).short_name, "Slopewise");
    const { installabilityErrors } = await cdp.send("Page.getInstallabilityErrors");
    // A context of its own is what this browser treats as a private window.
    assert.deepEqual(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito"), []);
});

test("the icon as PNG is the icon as SVG, as a browser draws it", async (t) => {
    const server = await serve();
    const browser = await launch();
    t.after(() => browser.close());
    t.after(() => server.stop());
    const { page } = await Trainer.open(browser, server.address, small);
    const worst = await page.evaluate(async () => {
        const drawn = async (file, size) => {
            const image = new Image(size, size);
            image.src = file;
            await image.decode();
            const canvas = Object.assign(document.createElement("canvas"), { width: size, height: size }).getContext("2d");
            canvas.drawImage(image, 0, 0, size, size);
            return canvas.getImageData(0, 0, size, size).data;
        };
        const found = [];
        for (const size of [192, 512]) {
            const [png, svg] = [await drawn(`icon-${size}.png`, size), await drawn("icon.svg", size)];
            const apart = [...png].map((part, i) => Math.abs(part - svg[i]));
            found.push([apart.reduce((most, one) => Math.max(most, one), 0), apart.filter((one) => one > 8).length / apart.length]);
        }
        return found;
    });
    t.diagnostic(`greatest difference and share of parts that differ by more than 8 of 255: ${JSON.stringify(worst)}`);
    // Along an edge two ways to blend it differ by a third of a pixel at most, of a contrast of 240 there; anywhere else
    // they are the same.
    for (const [most, share] of worst) assert.ok(most <= 80 && share <= 0.01, `${most}, ${share}`);
});
