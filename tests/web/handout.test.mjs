// The handout and the lesson plan that the command line writes, printed by a browser: one page on either paper, whatever
// the aircraft and the lights, nothing loaded, no script.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { after, before, test } from "node:test";
import { launch, root } from "./trainer.mjs";

const slopewise = path.join(root, "build/native/slopewise");
const pictures = path.join(root, "build/pictures");
let browser, folder;
before(async () => {
    mkdirSync(pictures, { recursive: true });
    folder = mkdtempSync(path.join(tmpdir(), "slopewise-"));
    browser = await launch();
});
after(() => browser.close());

const pagesOf = (pdf) => pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g).length;

// The longest name that a school's file takes.
function longSchool() {
    const file = path.join(folder, "school.json");
    writeFileSync(file, JSON.stringify({ kind: "school", name: "W".repeat(60) }));
    return file;
}

async function open(options) {
    const file = path.join(folder, "page.html");
    writeFileSync(file, execFileSync(slopewise, ["handout", ...options]));
    const page = await browser.newPage();
    const asked = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(`file://${file}`);
    return { page, asked };
}

for (const [runway, ...more] of [["larkmoor"], ["larkmoor", "--plan"], ["whinstead"], ["stonegill"]]) {
    test(`the ${more.length > 0 ? "lesson plan" : "handout"} of ${runway} is one page of A4 and one of Letter`, async () => {
        const { page, asked } = await open(["--runway", runway, "--school", longSchool(), ...more]);
        for (const format of ["A4", "Letter"]) {
            const pdf = await page.pdf({ format, preferCSSPageSize: false, path: path.join(pictures, `${more.length > 0 ? "plan" : "handout"}-${format}.pdf`) });
            assert.equal(pagesOf(pdf), 1, format);
        }
        assert.equal(asked.length, 1, asked.join(" "));
        assert.equal(await page.locator("script, img, link, iframe").count(), 0);
        // Nothing runs over the edge of the narrower paper: 190 mm between A4's margins, at 96 dots an inch.
        await page.setViewportSize({ width: 718, height: 1000 });
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
        await page.close();
    });
}
