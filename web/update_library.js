// The build that runs and a newer one that waits, linked in as an Emscripten library (see host_web.cpp). Only the site
// has a worker that keeps it on the device (service_worker.js); its page names it.
addToLibrary({
    $slopewiseUpdate: {
        registration: null,
        waits: 0, // not told yet
        checked_ms: 0,

        // The very first build to be kept waits for nothing and is none to tell of.
        see: () => {
            const { waiting, active } = slopewiseUpdate.registration;
            if (waiting && active) slopewiseUpdate.waits = 1;
        },

        follow: (worker) => {
            worker?.addEventListener("statechange", slopewiseUpdate.see);
        },

        // The browser looks for a newer build whenever the page is loaded; a page that stays open for days asks when it
        // is looked at again, at most once an hour.
        look: () => {
            const own = slopewiseUpdate;
            if (document.hidden || Date.now() - own.checked_ms < 3600000) return;
            own.checked_ms = Date.now();
            own.registration.update().catch(() => {}); // no network now
        },

        watch: async () => {
            const own = slopewiseUpdate;
            const address = document.querySelector("meta[name=worker]")?.content;
            if (!address || !navigator.serviceWorker) return;
            try {
                own.registration = await navigator.serviceWorker.register(address, { updateViaCache: "none" });
            } catch {
                return; // not kept in private windows or where the browser does not let the page: it runs all the same
            }
            own.checked_ms = Date.now();
            own.registration.addEventListener("updatefound", () => own.follow(own.registration.installing));
            own.follow(own.registration.installing);
            own.see();
            document.addEventListener("visibilitychange", own.look);
        },

        // Where another tab has taken it already, there is only this page to be loaded again.
        take: () => {
            const waiting = slopewiseUpdate.registration?.waiting;
            if (!waiting) return location.reload();
            waiting.addEventListener("statechange", () => {
                if (waiting.state === "activated") location.reload();
                if (waiting.state === "redundant") slopewiseUpdate.take(); // a still newer one stands in its place
            });
            waiting.postMessage("take");
        },
    },

    // What it fetches may wait until the first screen stands; a machine that draws without a pause is never idle.
    slopewise_watch_updates__deps: ["$slopewiseUpdate"],
    slopewise_watch_updates: () => {
        if (window.requestIdleCallback) requestIdleCallback(slopewiseUpdate.watch, { timeout: 2000 });
        else setTimeout(slopewiseUpdate.watch, 1000);
    },

    slopewise_take_update_waits__deps: ["$slopewiseUpdate"],
    slopewise_take_update_waits: () => {
        const { waits } = slopewiseUpdate;
        slopewiseUpdate.waits = 0;
        return waits;
    },

    slopewise_take_update__deps: ["$slopewiseUpdate"],
    slopewise_take_update: () => slopewiseUpdate.take(),

    slopewise_build_id__deps: ["$stringToNewUTF8"],
    slopewise_build_id: () => stringToNewUTF8(document.querySelector("meta[name=build]")?.content ?? ""),

    slopewise_open_licences: () => document.getElementById("licences")?.click(),
});
