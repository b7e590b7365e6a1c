// A browser whose machine misbehaves: scripts that run in a page before its own, and pages opened under them. Nothing
// here is of one browser; SLOPEWISE_BROWSER names another than the usual one.
import { after, before } from "node:test";

import { launch, serve, Trainer } from "./trainer.mjs";

export const small = { width: 640, height: 360 }; // software drawing takes its time

// Who has flown before: the stick question is answered.
export const answered = (more = {}) => ({
    script: (settings) => {
        try {
            localStorage.getItem("slopewise-settings") ?? localStorage.setItem("slopewise-settings", settings);
        } catch {}
    },
    with: JSON.stringify({ kind: "settings", stick_sense: "up_key_pushes", ...more }),
});

export function machine() {
    const on = {};
    before(async () => {
        on.server = await serve();
        on.browser = await launch(process.env.SLOPEWISE_BROWSER);
    });
    after(async () => {
        await on.browser?.close();
        on.server?.stop();
    });
    // Each of `scripts` is a function, or { script, with: its argument }.
    const open = (scripts, options = small) => {
        const browser = {
            newContext: async (how) => {
                const context = await on.browser.newContext(how);
                for (const one of scripts) await context.addInitScript(one.script ?? one, one.with);
                return context;
            },
        };
        return Trainer.open(browser, on.server.address, options);
    };
    // A page that does not come to its first screen.
    const openBroken = async (scripts) => {
        const context = await on.browser.newContext({ viewport: small });
        for (const one of scripts) await context.addInitScript(one.script ?? one, one.with);
        const page = await context.newPage();
        await page.goto(on.server.address);
        return { page, context };
    };
    return { open, openBroken };
}

export async function takeOff(trainer) {
    await trainer.press("Enter");
    await trainer.screen("Briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");
}

// Waits until the instruments have moved, so it flies, and says how high it is then.
export async function flies(trainer, frames = 10) {
    const { height } = await trainer.instruments();
    await trainer.page.waitForFunction(
        (before) => !document.getElementById("instruments").textContent.includes(`Height ${before} ft`),
        height,
        { timeout: 120000 },
    );
    await trainer.frames(frames);
    return (await trainer.instruments()).height;
}

// The words over the page, once they hold what is waited for.
export async function notice(page, words, timeout = 60000) {
    await page.waitForFunction(
        (wanted) => !document.getElementById("notice").hidden && document.getElementById("notice-words").textContent.includes(wanted),
        words,
        { timeout },
    );
    return page.locator("#notice-words").textContent();
}
