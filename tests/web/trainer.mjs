// The trainer in a real browser, as the tests use it: served, opened, read and flown with keys.
import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import { after, before } from "node:test";
import { fileURLToPath } from "node:url";

import { launch } from "./browsers.mjs";

export { launch };

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

// Serves the built site, or another folder, on a free port; resolves to { address, stop }.
export async function serve({ folder = path.join(root, "build/web/site"), port = 0 } = {}) {
    const server = spawn(process.execPath, [path.join(root, "web/serve.mjs"), "--port", String(port), "--folder", folder], { cwd: root });
    const address = await new Promise((resolve, reject) => {
        let said = "";
        server.stdout.on("data", (text) => {
            said += text;
            const found = said.match(/http:\/\/\S+/);
            if (found) resolve(found[0]);
        });
        server.stderr.on("data", (text) => (said += text));
        server.on("exit", () => reject(new Error(`the server stopped: ${said}`)));
    });
    return { address, stop: () => server.kill() };
}

// The site served and a browser for it, through all tests of a file; a folder for the pictures they take.
export function stage(browser = "chromium") {
    const on = {};
    before(async () => {
        mkdirSync(path.join(root, "build/pictures"), { recursive: true });
        on.server = await serve();
        on.browser = await launch(browser);
    });
    after(async () => {
        await on.browser?.close();
        on.server?.stop();
    });
    return {
        open: (options) => Trainer.open(on.browser, on.server.address, options),
        address: () => on.server.address,
        stopServer: () => on.server.stop(),
    };
}

// What a newcomer may open it on. Where the first screen is too small for what stands there, it scrolls.
const phone = { scale: 2, touch: true };
export const firstScreens = [
    {},
    { width: 640, height: 360 },
    { width: 390, height: 844, ...phone },
    { width: 844, height: 390, ...phone },
];

export const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

// One open page of the trainer, with what went wrong and what was asked for.
export class Trainer {
    static async open(
        browser,
        address,
        { width = 1280, height = 720, scale = 1, touch = false, reducedMotion = "no-preference", after = "", first = "Choose an approach", before } = {},
    ) {
        const context = await browser.newContext({
            viewport: { width, height },
            deviceScaleFactor: scale,
            hasTouch: touch,
            reducedMotion,
            acceptDownloads: true,
        });
        context.setDefaultTimeout(120000); // a machine that does much else starts a page slowly
        const trainer = new Trainer(await context.newPage(), context);
        if (before) await trainer.page.addInitScript(before); // in the page, before anything of ours
        trainer.opened = Date.now();
        await trainer.page.goto(address + after); // what stands after the address, and what the first screen then says
        if (first === "Choose an approach") await trainer.pastFirstPage();
        if (first) await trainer.screen(first);
        trainer.firstScreenMs = Date.now() - trainer.opened;
        return trainer;
    }

    constructor(page, context) {
        this.page = page;
        this.context = context;
        this.errors = [];
        this.requests = [];
        // Where Firefox takes a screenshot, its driver tries a style of its own, which the page's policy refuses. One of
        // ours would be told by Chromium too.
        const told = (words) => {
            if (!words.includes("blocked an inline style (style-src-elem)")) this.errors.push(words);
        };
        page.on("console", (message) => {
            if (message.type() === "error") told(message.text());
        });
        page.on("pageerror", (error) => told(String(error)));
        page.on("request", (request) => this.requests.push(request.url()));
    }

    // A page that this one has opened.
    beside(page) {
        return new Trainer(page, this.context);
    }

    // Another tab of the same browser.
    async another(address, first = "Choose an approach") {
        const tab = new Trainer(await this.context.newPage(), this.context);
        await tab.page.goto(address);
        await tab.screen(first);
        return tab;
    }

    text() {
        return this.page.locator("#mirror").textContent();
    }

    // Waits until the screen's text holds `words`.
    async screen(words, timeout = 120000) {
        await this.page.waitForFunction(
            (wanted) => document.getElementById("mirror")?.textContent.includes(wanted),
            words,
            { timeout },
        );
    }

    // A fresh browser shows a newcomer's first page, from which C leads to the choice of an approach.
    async pastFirstPage() {
        await this.screen("Slopewise");
        if ((await this.text()).includes("start with lesson 1")) await this.press("c");
    }

    // The instruments of the moment, as numbers: { airspeed, height, vertical, power, flap, white }.
    async instruments() {
        const text = await this.page.locator("#instruments").textContent();
        const number = (label) => Number(text.match(new RegExp(`${label} ([\u2212\\d.]+)`))?.[1].replace("\u2212", "-"));
        const lights = text.match(/Lights (.*)/)?.[1] ?? "";
        const white = lights.match(/(\d) white/) ? Number(lights.match(/(\d) white/)[1]) : lights === "4 red" ? 0 : -1;
        return {
            airspeed: number("Airspeed"),
            height: number("Height"),
            vertical: number("Vertical speed"),
            power: number("Power"),
            flap: text.match(/Flap (.*)/)?.[1],
            white,
        };
    }

    // So many frames of the page, however long they take on this machine.
    frames(count = 2) {
        return this.page.evaluate(
            (left) => new Promise((done) => {
                const next = () => (left-- > 0 ? requestAnimationFrame(next) : done());
                next();
            }),
            count,
        );
    }

    // A key held for so long, and for two frames at least.
    async press(key, ms = 110) {
        await this.page.keyboard.down(key);
        await Promise.all([wait(ms), this.frames()]);
        await this.page.keyboard.up(key);
    }

    // A key let go at once, for what steps: on a slow machine one that is held for two frames is held long enough to go on
    // by itself.
    async tap(key) {
        await this.page.keyboard.press(key);
        await this.frames(3);
    }

    // The left button pressed and let go at a place, each in frames of its own.
    async click([x, y]) {
        const { mouse } = this.page;
        await mouse.move(x, y);
        await this.frames(3);
        await mouse.down();
        await this.frames(3);
        await mouse.up();
        await this.frames();
    }

    // From the choice of an approach into its flight; a newcomer is asked which key lowers the nose.
    async startFlight() {
        await this.press("Enter");
        await this.page.waitForFunction(() => /Briefing|lower the nose/.test(document.getElementById("mirror").textContent));
        if ((await this.text()).includes("lower the nose")) await this.press("ArrowUp");
        await this.screen("Briefing");
        await this.press("Enter");
        await this.screen("Flying");
    }

    // So many seconds with a hand on the stick, then a go-around, and its summary.
    async flyShort(seconds = 4) {
        await this.startFlight();
        for (let second = 0; second < seconds; ++second) {
            await this.press(second % 2 === 0 ? "ArrowUp" : "ArrowDown", 100);
            await wait(900);
        }
        await this.press("g");
        await this.openSheet();
    }

    // The name of the file that is handed over when `key` is pressed. playwright-core hears of no file that a page of
    // Firefox hands over by itself, so there the folder is looked at where it comes to lie.
    async savedBy(key) {
        const { downloads } = this.context.browser();
        const coming = downloads ? undefined : this.page.waitForEvent("download");
        await this.press(key);
        if (coming) return (await coming).suggestedFilename();
        for (let tries = 0; tries < 300; ++tries, await wait(100)) {
            const name = readdirSync(downloads).find((one) => !one.endsWith(".part"));
            if (name && statSync(path.join(downloads, name)).size > 0) return name;
        }
        throw new Error("no file came within 30 s");
    }

    async openLogbook() {
        await this.press("l");
        await this.screen("Logbook. Student");
    }

    // The build that the page is of, as the program says it.
    build() {
        return this.page.locator("meta[name=build]").getAttribute("content");
    }

    // Past the question how it was, which comes first, to the summary.
    async openSheet() {
        await this.screen("how was it?");
        await this.press("Escape");
        await this.screen("Deviation summary");
    }

    picture(name) {
        return this.page.screenshot({ path: path.join(root, "build/pictures", `${name}.png`) });
    }
}
