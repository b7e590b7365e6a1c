// The trainer in a real browser, as the tests use it: served, opened, read and flown with keys.
import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import path from "node:path";
import { after, before } from "node:test";
import { fileURLToPath } from "node:url";

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

const deps =
    process.env.SLOPEWISE_DEPS ??
    path.join(process.env.XDG_CACHE_HOME ?? path.join(homedir(), ".cache"), "slopewise");
const { chromium } = createRequire(path.join(deps, "tests.cjs"))("playwright-core");

// Serves the built site on a free port; resolves to { address, stop }.
export async function serve() {
    const server = spawn(process.execPath, [path.join(root, "web/serve.mjs"), "--port", "0"], { cwd: root });
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

// A browser with software WebGL 2 and no traffic of its own.
export function launch() {
    return chromium.launch({
        executablePath: "/usr/bin/chromium",
        headless: true,
        args: [
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
        ],
    });
}

// The site served and a browser for it, through all tests of a file; a folder for the pictures they take.
export function stage() {
    const on = {};
    before(async () => {
        mkdirSync(path.join(root, "build/pictures"), { recursive: true });
        on.server = await serve();
        on.browser = await launch();
    });
    after(async () => {
        await on.browser?.close();
        on.server?.stop();
    });
    return { open: (options) => Trainer.open(on.browser, on.server.address, options), address: () => on.server.address };
}

export const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

// One open page of the trainer, with what went wrong and what was asked for.
export class Trainer {
    static async open(
        browser,
        address,
        { width = 1280, height = 720, scale = 1, touch = false, reducedMotion = "no-preference", after = "", first = "Choose an approach" } = {},
    ) {
        const context = await browser.newContext({
            viewport: { width, height },
            deviceScaleFactor: scale,
            hasTouch: touch,
            reducedMotion,
            acceptDownloads: true,
        });
        const page = await context.newPage();
        const trainer = new Trainer(page, context);
        page.on("console", (message) => {
            if (message.type() === "error") trainer.errors.push(message.text());
        });
        page.on("pageerror", (error) => trainer.errors.push(String(error)));
        page.on("request", (request) => trainer.requests.push(request.url()));
        trainer.opened = Date.now();
        await page.goto(address + after); // what stands after the address, and what the first screen then says
        if (first === "Choose an approach") await trainer.pastFirstPage();
        await trainer.screen(first);
        trainer.firstScreenMs = Date.now() - trainer.opened;
        return trainer;
    }

    constructor(page, context) {
        this.page = page;
        this.context = context;
        this.errors = [];
        this.requests = [];
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
