// A record of every request that a browser makes in its life, whoever in it makes it: page, worker, or the browser itself.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, request as ask } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";

import { launch } from "./browsers.mjs";

// Chromium writes down what its network does. It has traffic of its own that no switch ends; what a page or a worker asks
// for has its origin as the initiator, and the first page is what the test itself opens.
async function recordedChromium() {
    const folder = mkdtempSync(path.join(tmpdir(), "slopewise-"));
    const file = path.join(folder, "network.json");
    const browser = await launch("chromium", { networkLog: file });
    const end = async () => {
        await browser.close();
        const { constants, events } = JSON.parse(readFileSync(file, "utf8"));
        rmSync(folder, { recursive: true });
        const asked = events.filter(({ type, params }) => type === constants.logEventTypes.URL_REQUEST_START_JOB && params?.url);
        const own = asked.filter(({ params }) => params.initiator === "not an origin" && !/^http:\/\/(localhost|127\.0\.0\.1):/.test(params.url));
        return { pages: asked.filter((one) => !own.includes(one)).map(({ params }) => params.url), ofTheBrowser: own.length };
    };
    return { browser, end };
}

// Firefox is given a proxy, for this machine's own addresses too. With the settings of browsers.mjs it asks for nothing
// of its own, so all that comes is counted.
async function recordedFirefox() {
    const asked = [];
    const server = createServer((request, response) => {
        asked.push(request.url);
        const to = new URL(request.url, "http://no-absolute-address.invalid");
        if (to.hostname !== "localhost") return response.writeHead(403).end();
        const onward = ask(to, { method: request.method, headers: request.headers }, (answer) => {
            response.writeHead(answer.statusCode, answer.headers);
            answer.pipe(response);
        });
        onward.on("error", () => response.destroy());
        request.pipe(onward);
    });
    server.on("connect", (request, socket) => {
        asked.push(request.url);
        socket.end("HTTP/1.1 403 Forbidden\r\n\r\n");
    });
    await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
    const browser = await launch("firefox", { proxy: `http://127.0.0.1:${server.address().port}` });
    const end = async () => {
        await browser.close();
        server.close().closeAllConnections();
        return { pages: asked, ofTheBrowser: 0 };
    };
    return { browser, end };
}

// Resolves to { browser, end }; `end` closes the browser and resolves to { pages: [addresses], ofTheBrowser: a number }.
export const recorded = (name) => (name === "firefox" ? recordedFirefox() : recordedChromium());
