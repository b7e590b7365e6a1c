// What the program asks of the browser, linked in as an Emscripten library (see host_web.cpp).
addToLibrary({
    $slopewisePage: {
        hidden: 0,
        texts: [], // that came from outside and wait to be taken: [kind, name, text]
        mostFileBytes: 1048576,

        // A lesson in the address is taken out of it, so that it comes in once and not at every reload. What is far
        // too long is handed on short: it is refused in words, and costs nothing.
        takeLink: () => {
            if (!location.hash.includes("lesson=")) return;
            slopewisePage.texts.push(["link", "", location.hash.slice(1, 20001)]);
            history.replaceState(null, "", location.pathname + location.search);
        },

        takeFile: async (file) => {
            if (file.size > slopewisePage.mostFileBytes) {
                slopewisePage.texts.push(["unread_file", file.name, "is longer than 1 MB"]);
                return;
            }
            try {
                slopewisePage.texts.push(["file", file.name, await file.text()]);
            } catch (error) {
                slopewisePage.texts.push(["unread_file", file.name, `cannot be read (${error?.name ?? error})`]);
            }
        },
    },

    slopewise_watch_page__deps: ["$slopewisePage"],
    slopewise_watch_page: () => {
        document.addEventListener("visibilitychange", () => {
            if (document.hidden) slopewisePage.hidden = 1;
            // A hidden page draws no frame that could silence it.
            const context = Module["SDL2"]?.audioContext;
            if (document.hidden) context?.suspend();
            else context?.resume();
        });
        // A page that is laid aside, as by a machine that goes to sleep, need not have been hidden before.
        document.addEventListener("freeze", () => { slopewisePage.hidden = 1; });
        slopewisePage.takeLink();
        window.addEventListener("hashchange", slopewisePage.takeLink);
    },

    slopewise_choose_text_file__deps: ["$slopewisePage"],
    slopewise_choose_text_file: () => {
        const chooser = document.createElement("input");
        chooser.type = "file";
        chooser.accept = ".json,application/json";
        chooser.addEventListener("change", () => {
            if (chooser.files[0]) slopewisePage.takeFile(chooser.files[0]);
        });
        chooser.click();
    },

    // Zeros and unit separators are no part of a text of ours; as marks they stay to be refused.
    slopewise_take_text__deps: ["$slopewisePage", "$stringToNewUTF8"],
    slopewise_take_text: () => {
        const text = slopewisePage.texts.shift();
        if (text === undefined) return 0;
        return stringToNewUTF8(text.map((part) => part.replace(/[\u0000\u001f]/g, "\ufffd")).join("\u001f"));
    },

    slopewise_page_address__deps: ["$stringToNewUTF8"],
    slopewise_page_address: () => stringToNewUTF8(location.href.replace(/#.*$/, "")),

    // Where the clipboard is not allowed, the words stand in a prompt to be copied by hand.
    slopewise_copy_text__deps: ["$UTF8ToString"],
    slopewise_copy_text: (wordsAt) => {
        const words = UTF8ToString(wordsAt);
        const show = () => window.prompt("Copy this link:", words);
        if (navigator.clipboard) navigator.clipboard.writeText(words).catch(show);
        else show();
    },

    slopewise_take_hidden__deps: ["$slopewisePage"],
    slopewise_take_hidden: () => {
        const hidden = slopewisePage.hidden;
        slopewisePage.hidden = 0;
        return hidden;
    },

    slopewise_can_fill_screen: () => (document.fullscreenEnabled ? 1 : 0),

    // The program asks a frame after the hand has let go. Some browsers take that for a wish of the hand and some do
    // not: then it is done from within what the hand does next.
    slopewise_toggle_full_screen: () => {
        const toggle = () =>
            document.fullscreenElement
                ? document.exitFullscreen()
                : document.documentElement.requestFullscreen({ navigationUI: "hide" });
        const kinds = ["pointerup", "keyup"];
        const next = () => {
            for (const kind of kinds) window.removeEventListener(kind, next, true);
            toggle().catch((error) => console.log(`full screen: ${error?.message ?? error}`));
        };
        toggle().catch(() => {
            for (const kind of kinds) window.addEventListener(kind, next, true);
        });
    },

    slopewise_prefers_reduced_motion: () => (matchMedia("(prefers-reduced-motion: reduce)").matches ? 1 : 0),

    slopewise_writes_by_finger: () =>
        matchMedia("(pointer: coarse)").matches && !matchMedia("(any-pointer: fine)").matches ? 1 : 0,
    slopewise_ask_text__deps: ["$stringToNewUTF8", "$UTF8ToString"],
    slopewise_ask_text: (question) => {
        const text = prompt(UTF8ToString(question));
        return text === null ? 0 : stringToNewUTF8(text);
    },

    slopewise_now_unix_ms: () => Date.now(),
    slopewise_ahead_of_utc_s: () => -60 * new Date().getTimezoneOffset(),
    slopewise_random: () => crypto.getRandomValues(new Uint32Array(1))[0],

    // Storage may be refused altogether (private windows): then nothing is kept, and nothing breaks.
    slopewise_load__deps: ["$stringToNewUTF8", "$UTF8ToString"],
    slopewise_load: (key) => {
        try {
            const text = localStorage.getItem(UTF8ToString(key));
            return text === null ? 0 : stringToNewUTF8(text);
        } catch {
            return 0;
        }
    },

    slopewise_save__deps: ["$UTF8ToString"],
    slopewise_save: (key, text) => {
        try {
            localStorage.setItem(UTF8ToString(key), UTF8ToString(text));
            return 1;
        } catch {
            return 0;
        }
    },

    // Everything of ours on this device: the kept texts, the logbook, what was stored to work without a network. Then
    // the page begins anew. Another tab that holds the logbook lets it go (logbook_library.js).
    slopewise_erase_all: () => {
        const gone = (request) => new Promise((done) => (request.onsuccess = request.onerror = request.onblocked = done));
        const erase = async () => {
            for (const kept of [localStorage, sessionStorage])
                for (const key of Object.keys(kept)) if (key.startsWith("slopewise")) kept.removeItem(key);
            await gone(indexedDB.deleteDatabase("slopewise"));
            if (!("caches" in window)) return;
            for (const name of await caches.keys()) if (name.startsWith("slopewise")) await caches.delete(name);
            for (const worker of (await navigator.serviceWorker?.getRegistrations()) ?? []) await worker.unregister();
        };
        erase().catch((error) => console.error(error)).finally(() => location.reload());
    },

    slopewise_offer_file__deps: ["$UTF8ToString"],
    slopewise_offer_file: (name, mediaType, text) => {
        const blob = new Blob([UTF8ToString(text)], { type: UTF8ToString(mediaType) });
        const link = document.createElement("a");
        link.href = URL.createObjectURL(blob);
        link.download = UTF8ToString(name);
        link.click();
        setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    },

    // Not every browser has a voice. What is still being said gives way: a call is of this moment.
    slopewise_speak__deps: ["$UTF8ToString"],
    slopewise_speak: (words) => {
        if (!("speechSynthesis" in window)) return;
        const call = new SpeechSynthesisUtterance(UTF8ToString(words).replace(" - ", ", "));
        call.lang = "en";
        speechSynthesis.cancel();
        speechSynthesis.speak(call);
    },
});
