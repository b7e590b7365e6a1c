// The browsers that the page is tested in: Debian's own, with WebGL 2 drawn by software and no traffic of their own.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { homedir, tmpdir } from "node:os";
import path from "node:path";

const deps =
    process.env.SLOPEWISE_DEPS ??
    path.join(process.env.XDG_CACHE_HOME ?? path.join(homedir(), ".cache"), "slopewise");
const installed = createRequire(path.join(deps, "tests.cjs"));
const { chromium, firefox } = installed("playwright-core");

// The rules for accessible pages, and their text, to be run within a page.
export const axe = installed("axe-core");

function launchChromium({ networkLog }) {
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
            ...(networkLog ? [`--log-net-log=${networkLog}`] : []),
        ],
    });
}

// A screen in memory, on a number of its own choice.
async function startDisplay() {
    const server = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "1600x1000x24", "-nolisten", "tcp"], {
        stdio: ["ignore", "ignore", "ignore", "pipe"],
    });
    const [number] = await Promise.race([
        once(server.stdio[3], "data"),
        once(server, "exit").then(() => Promise.reject(new Error("Xvfb stopped"))),
    ]);
    return { name: `:${String(number).trim()}`, stop: () => server.kill() };
}

// Firefox has WebGL 2 only with a screen, so it gets one. Driven by WebDriver BiDi, which Debian's own build speaks.
async function launchFirefox({ proxy }) {
    const display = await startDisplay();
    const downloads = mkdtempSync(path.join(tmpdir(), "slopewise-downloads-"));
    const leave = () => {
        display.stop();
        rmSync(downloads, { recursive: true, force: true });
    };
    try {
        const browser = await firefox.launch({
            channel: "moz-firefox",
            executablePath: "/usr/bin/firefox-esr",
            headless: false,
            env: { ...process.env, DISPLAY: display.name, MOZ_WEBRENDER: "0", LIBGL_ALWAYS_SOFTWARE: "1" },
            downloadsPath: downloads,
            proxy: proxy && { server: proxy },
            firefoxUserPrefs: {
                "network.proxy.allow_hijacking_localhost": proxy !== undefined,
                "webgl.force-enabled": true,
                "app.update.enabled": false,
                "browser.safebrowsing.malware.enabled": false,
                "browser.safebrowsing.phishing.enabled": false,
                "datareporting.healthreport.uploadEnabled": false,
                "extensions.blocklist.enabled": false,
                "network.captive-portal-service.enabled": false,
                "network.connectivity-service.enabled": false,
                "services.settings.server": "",
            },
        });
        browser.on("disconnected", leave);
        return Object.assign(browser, { downloads });
    } catch (error) {
        leave();
        throw error;
    }
}

// `name`: "chromium" or "firefox". `networkLog`: the file that Chromium writes its requests to; `proxy`: the address that
// Firefox sends all of them to, those to this machine too.
export const launch = (name = "chromium", options = {}) => (name === "firefox" ? launchFirefox(options) : launchChromium(options));
