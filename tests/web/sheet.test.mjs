// The one-page sheet that the command line writes, opened and printed by a browser: one page on either paper,
// nothing loaded, no script, and texts that stay texts.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { after, before, test } from "node:test";
import { launch, root } from "./trainer.mjs";

const slopewise = path.join(root, "build/native/slopewise");
let browser;
before(async () => {
    mkdirSync(path.join(root, "build/pictures"), { recursive: true });
    browser = await launch();
});
after(() => browser.close());

// A sheet of one flight, open in a page that counts what it asks for.
// `circumstances` are written into the recording, as the page does.
async function openSheet(lesson, pilot, student, circumstances) {
    const folder = mkdtempSync(path.join(tmpdir(), "slopewise-"));
    const recording = path.join(folder, "flight.json"), sheet = path.join(folder, "sheet.html");
    execFileSync(slopewise, ["fly", lesson, "--pilot", pilot, "--record", recording]);
    if (circumstances) {
        const kept = JSON.parse(readFileSync(recording, "utf8"));
        writeFileSync(recording, JSON.stringify({ ...kept, circumstances: { ...kept.circumstances, ...circumstances } }));
    }
    execFileSync(slopewise, ["review", recording, "--html", sheet, "--student", student]);
    const page = await browser.newPage();
    const asked = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(`file://${sheet}`);
    return { page, asked };
}

const pagesOf = (pdf) => pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g).length;

const asFlown = {
    started_unix_s: 1773446400,
    device: "stick and lever of a controller",
    aids: { guide_s: 12, guide_calls: 3, side_profile: true, lamp_letters: true, airspeed_hidden: true },
    estimate: { path: "on", speed: "fast", stable_at_gate: true },
};

// The fullest sheets: every gate and band, many faults, long words.
for (const [lesson, pilot] of [["final_calm", "late_power"], ["final_headwind", "ignores_wind"], ["from_below", "low_stretch"], ["from_above", "presses_on"]]) {
    test(`the sheet of ${pilot} on ${lesson} is one page of A4 and one of Letter`, async () => {
        const { page } = await openSheet(lesson, pilot, "A student with a rather long name, group 12 of the evening class", asFlown);
        assert.match(await page.locator("body").innerText(), /You said: on the path, fast, stable\. It was: /);
        for (const format of ["A4", "Letter"]) {
            assert.equal(pagesOf(await page.pdf({ format, preferCSSPageSize: false })), 1, format);
            await page.addStyleTag({ content: "html { filter: grayscale(1); }" });
            assert.equal(pagesOf(await page.pdf({ format, preferCSSPageSize: false })), 1, `${format} in grey`);
        }
        await page.close();
    });
}

test("the sheet loads nothing, runs nothing, and shows a name with markup as it was written", async () => {
    const name = `<img src=x onerror="document.title='run'"> & "Co"`;
    const { page, asked } = await openSheet("from_above", "good", name);
    assert.equal(asked.length, 1, asked.join(" "));
    assert.equal(await page.locator("script, img, link, iframe").count(), 0);
    assert.match(await page.locator("header").innerText(), /<img src=x onerror="document.title='run'"> & "Co"/);
    assert.equal(await page.title(), "Final from above the path");
    assert.match(await page.locator("footer").innerText(), /Not an approved training device\. Time may not be logged or credited/);
    await page.close();
});

test("the sheet says in words what is out, so that it reads without colour", async () => {
    const { page } = await openSheet("from_above", "presses_on", "");
    assert.ok((await page.locator("td.out").count()) > 0);
    const weight = await page.locator("td.out").first().evaluate((cell) => getComputedStyle(cell).fontWeight);
    assert.equal(weight, "700");
    assert.match(await page.locator("body").innerText(), /not stable: high/);
    assert.match(await page.locator("svg").textContent(), /4W 0R/);
    await page.close();
});

// Contrast of two sRGB colours, 0 to 255 each (WCAG 2.2, relative luminance and contrast ratio).
function contrast(a, b) {
    const luminance = (rgb) => {
        const [r, g, blue] = rgb.map((v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
        return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
    };
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
    return (high + 0.05) / (low + 0.05);
}

// The colours that a picture of the page shows in elements: near the left edge, where no label stands.
async function coloursIn(page, png, selectors) {
    const places = [];
    for (const selector of selectors) {
        const boxes = await page.locator(selector).evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON()));
        const box = boxes.find(({ width, height }) => width > 8 && height > 4);
        assert.ok(box, `${selector} is on the sheet`);
        places.push([box.x + 3, box.y + box.height / 2]);
    }
    const reader = await browser.newPage();
    const colours = await reader.evaluate(
        async ([base64, at]) => {
            const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
            const canvas = new OffscreenCanvas(image.width, image.height).getContext("2d");
            canvas.drawImage(image, 0, 0);
            return at.map(([x, y]) => [...canvas.getImageData(Math.round(x), Math.round(y), 1, 1).data].slice(0, 3));
        },
        [png.toString("base64"), places],
    );
    await reader.close();
    return colours;
}

// As Chromium simulates them; without colour is a black and white print as well.
for (const vision of ["none", "protanopia", "deuteranopia", "tritanopia", "achromatopsia"]) {
    test(`seen with ${vision === "none" ? "every colour" : vision}, red and white lamps and the wedge stay apart`, async () => {
        const { page } = await openSheet("from_above", "presses_on", "Student 7", asFlown);
        await page.setViewportSize({ width: 794, height: 1123 }); // A4 at 96 dots an inch
        const cdp = await page.context().newCDPSession(page);
        await cdp.send("Emulation.setEmulatedVisionDeficiency", { type: vision });
        const png = await page.screenshot({ fullPage: true, path: path.join(root, "build/pictures", `sheet-${vision}.png`) });
        const [red, white] = await coloursIn(page, png, ["svg .red", "svg .white"]);
        // 3:1 for graphics (WCAG 2.2, success criterion 1.4.11).
        assert.ok(contrast(red, white) >= 3, `red ${red} on white ${white}`);
        await page.close();
    });
}
