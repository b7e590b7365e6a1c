// Keeps the whole site on the device, so that it runs without a network. One build is fetched whole, beside the one in
// use, or not at all; then it waits until the user takes it. Nothing here ever takes it by itself.
const build = "@BUILD@";
const files = @FILES@;

// What is kept belongs to the whole origin, where another copy of the site may stand in another folder.
const family = `slopewise ${self.registration.scope} `;
const kept = family + build;

self.addEventListener("install", (event) => event.waitUntil(fetchWhole()));
self.addEventListener("activate", (event) => event.waitUntil(forgetOlder()));
self.addEventListener("message", (event) => {
    if (event.data === "take") self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
    const { request } = event;
    if (request.method !== "GET" || new URL(request.url).origin !== location.origin) return;
    event.respondWith(fromKept(request.url).then((found) => found ?? fetch(request)));
});

// A file that is not of this build, half of it or changed on its way is no file of ours: then all of it is refused, and
// the browser tries again another day.
async function fetchWhole() {
    try {
        const cache = await caches.open(kept);
        await cache.addAll(Object.entries(files).map(([name, integrity]) => new Request(name, { cache: "no-cache", integrity })));
    } catch (error) {
        await caches.delete(kept);
        throw error;
    }
}

async function forgetOlder() {
    const older = (await caches.keys()).filter((name) => name.startsWith(family) && name !== kept);
    await Promise.all(older.map((name) => caches.delete(name)));
    await self.clients.claim();
}

async function fromKept(address) {
    const { scope } = self.registration;
    const page = new URL("index.html", scope);
    const asked = new URL(address);
    const name = asked.pathname === page.pathname ? scope : asked;
    return (await caches.open(kept)).match(name, { ignoreSearch: true, ignoreVary: true });
}
