// What the logbook's tests do: open it, look into the browser's database, fly a little, take a file in and hand one over.
import { mkdirSync } from "node:fs";
import path from "node:path";

import { root, stage, wait } from "./trainer.mjs";

export const on = stage();
export const small = { width: 640, height: 360 }; // software drawing takes its time
export const folder = path.join(root, "build/logbook");
mkdirSync(folder, { recursive: true });

// The stick question answered, as after a first flight.
const answered = () =>
    localStorage.setItem("slopewise-settings", JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", sound: "off" }));

export async function open(options = small) {
    const trainer = await on.open(options);
    await trainer.page.evaluate(answered);
    await reload(trainer);
    return trainer;
}

export async function reload(trainer) {
    await trainer.page.reload();
    await trainer.screen("Choose an approach");
}

// Another tab of the same browser.
export async function another(trainer) {
    const page = await trainer.context.newPage();
    await page.goto(on.address());
    const tab = Object.assign(Object.create(Object.getPrototypeOf(trainer)), trainer, { page });
    await tab.screen("Choose an approach");
    return tab;
}

// All that the database holds: { rows, attempts (as texts), journal (keys) }.
export function database(page) {
    return page.evaluate(async () => {
        const settled = (request) => new Promise((resolve, reject) => {
            request.onsuccess = () => resolve(request.result);
            request.onerror = () => reject(request.error);
        });
        const db = await settled(indexedDB.open("slopewise"));
        const all = (name, what) => settled(db.transaction(name).objectStore(name)[what]());
        const unpack = (kept) => typeof kept === "string" ? kept
            : new Response(new Blob([kept]).stream().pipeThrough(new DecompressionStream("gzip"))).text();
        const found = {
            ids: await all("rows", "getAllKeys"),
            rows: await all("rows", "getAll"),
            attempts: await Promise.all((await all("attempts", "getAll")).map(unpack)),
            journal: await all("journal", "getAllKeys"),
        };
        db.close();
        return found;
    });
}

export const flownSeconds = (attempt) => JSON.parse(attempt).recording.ticks / 120;

export async function start(trainer) {
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
}

// A few seconds of flight, ended by going around, and its summary.
export async function flyShort(trainer, seconds = 6) {
    await start(trainer);
    await wait(1000 * seconds);
    await trainer.press("g");
    await trainer.screen("Before the sheet");
    await trainer.press("Escape");
    await trainer.screen("Deviation summary");
}

export async function openLogbook(trainer) {
    await trainer.press("l");
    await trainer.screen("Logbook. Student");
}

export async function takeIn(trainer, file) {
    const asked = trainer.page.waitForEvent("filechooser");
    await wait(500); // until the browser has been told to ask us, not the user
    await trainer.press("i");
    const chooser = await asked;
    await chooser.setFiles(file);
    // Told when all of it is read; until then the words of the file before it may still stand there.
    const name = path.basename(file);
    await trainer.page.waitForFunction((wanted) => {
        const told = document.getElementById("mirror").textContent;
        return told.includes(wanted) && !told.includes(`Taking in ${wanted}`);
    }, name);
    return trainer.text();
}

export async function handedOver(trainer, key) {
    const [download] = await Promise.all([trainer.page.waitForEvent("download"), trainer.press(key)]);
    return download.path();
}
