// The flight screen at every airfield, in every light and every look, from the built page in a browser, as one sheet:
//
//   node tests/contact/screens.mjs FOLDER
//
// Takes some minutes. The pictures, sheet.html and sheet.png are left in FOLDER.
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

import { launch, serve, Trainer, wait } from "../web/trainer.mjs";

const airfields = ["larkmoor", "larkmoor_downhill", "hazelcombe", "hazelcombe_uphill", "sandholm"];
const looks = ["standard", "high_contrast", "night"];
const outlooks = {
    day: { light: "day" },
    "low sun": { light: "low_sun" },
    rain: { light: "day", overcast: true, rain: true, visibility_km: 5 },
    dusk: { light: "dusk" },
    night: { light: "night" },
    "black hole": { light: "night", ground_lights: false },
};

const folder = process.argv[2] ?? "build/contact";
mkdirSync(folder, { recursive: true });
const server = await serve();
const browser = await launch();
const trainer = await Trainer.open(browser, server.address, { width: 1280, height: 720 });

// Half a mile of a 1 NM final, as a student sets it up.
async function picture(name, settings) {
    const kept = JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off", ...settings });
    await trainer.page.evaluate((text) => localStorage.setItem("slopewise-settings", text), kept);
    await trainer.page.reload();
    await trainer.screen("Slopewise");
    await trainer.press("1");
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
    await wait(3000);
    await trainer.page.screenshot({ path: path.join(folder, `${name}.png`) });
}

const figures = [];
for (const runway of airfields) {
    for (const [light, outlook] of Object.entries(outlooks)) {
        for (const look of looks) {
            const name = `${runway}-${light}-${look}`.replaceAll(" ", "_");
            await picture(name, { look, runway, outlook });
            figures.push(`<figure><img src="${name}.png"><figcaption>${runway}, ${light}, ${look}</figcaption></figure>`);
        }
    }
}

const page = path.resolve(folder, "sheet.html");
writeFileSync(page, `<!doctype html><style>body { margin: 8px; display: grid; grid-template-columns: repeat(6, 1fr);
    gap: 8px; font: 14px sans-serif } figure { margin: 0 } img { width: 100% }</style>${figures.join("")}`);
const sheet = await browser.newPage({ viewport: { width: 1920, height: 1080 } });
await sheet.goto(pathToFileURL(page).href, { timeout: 300000 });
await sheet.screenshot({ path: path.join(folder, "sheet.png"), fullPage: true, timeout: 300000 });
console.log(path.join(folder, "sheet.png"), trainer.errors);
await browser.close();
server.stop();
