// A small server for the built page: node web/serve.mjs [--port N] [--host ADDRESS] [--folder FOLDER]
//
// Only this machine can reach it unless another address is given. The port is 8040, or the next free one; asked
// for with --port, it is that one (0: any free one) or none. Prints the address, serves until it is stopped.
import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

import { serverHeaders } from "./ship/policy.mjs";

const { values: options } = parseArgs({
    options: {
        port: { type: "string" },
        host: { type: "string", default: "127.0.0.1" },
        folder: { type: "string", default: fileURLToPath(new URL("../build/web/site", import.meta.url)) },
    },
});

const mediaTypes = {
    css: "text/css; charset=utf-8",
    html: "text/html; charset=utf-8",
    js: "text/javascript; charset=utf-8",
    json: "application/json",
    png: "image/png",
    svg: "image/svg+xml",
    txt: "text/plain; charset=utf-8",
    wasm: "application/wasm",
    webmanifest: "application/manifest+json",
};

// The file of an address inside the folder, in the smallest form that the browser takes.
function find(address, accepted) {
    let path;
    try {
        path = normalize(decodeURIComponent(new URL(address, "http://localhost").pathname));
    } catch {
        return null; // not an address
    }
    if (path.endsWith("/")) path += "index.html";
    if (path.includes("..") || path.includes("\0")) return null;
    const type = mediaTypes[path.split(".").pop()];
    if (!type) return null; // nothing else is shipped
    for (const [encoding, suffix] of [["br", ".br"], ["gzip", ".gz"], [null, ""]]) {
        if (encoding && !new RegExp(`\\b${encoding}\\b`).test(accepted)) continue;
        const file = join(options.folder, path + suffix);
        const found = statSync(file, { throwIfNoEntry: false });
        if (found?.isFile()) return { file, type, encoding, size: found.size, tag: `"${found.mtimeMs.toString(36)}-${found.size.toString(36)}"` };
    }
    return null;
}

const server = createServer((request, response) => {
    if (request.method !== "GET" && request.method !== "HEAD") {
        response.writeHead(405, { Allow: "GET, HEAD" }).end();
        return;
    }
    const found = find(request.url, request.headers["accept-encoding"] ?? "");
    if (!found) {
        response.writeHead(404, { "Content-Type": mediaTypes.txt }).end("There is no such file here.\n");
        return;
    }
    const headers = {
        ...serverHeaders,
        "Cache-Control": "no-cache", // kept, but asked about each time: a rebuilt page is seen at once
        "Content-Type": found.type,
        ETag: found.tag,
        Vary: "Accept-Encoding",
    };
    if (request.headers["if-none-match"] === found.tag) {
        response.writeHead(304, headers).end();
        return;
    }
    if (found.encoding) headers["Content-Encoding"] = found.encoding;
    response.writeHead(200, { ...headers, "Content-Length": found.size });
    if (request.method === "HEAD") response.end();
    else createReadStream(found.file).on("error", () => response.destroy()).pipe(response);
});

const firstPort = Number(options.port ?? 8040);
const lastPort = options.port === undefined ? firstPort + 20 : firstPort;
let port = firstPort;
server.on("error", (error) => {
    if (error.code === "EADDRINUSE" && port < lastPort) {
        server.listen(++port, options.host);
        return;
    }
    console.error(`serve: ${error.code === "EADDRINUSE" ? `port ${port} is in use; choose another with --port` : error.message}`);
    process.exit(1);
});
server.on("listening", () => {
    const host = ["127.0.0.1", "::1", "0.0.0.0", "::"].includes(options.host) ? "localhost" : options.host;
    console.log(`Slopewise is at http://${host}:${server.address().port}/   (stop with Ctrl-C)`);
});
if (!statSync(join(options.folder, "index.html"), { throwIfNoEntry: false })) {
    console.error(`serve: ${options.folder} holds no page yet: run ./web/run`);
    process.exit(1);
}
server.listen(port, options.host);
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(0));
