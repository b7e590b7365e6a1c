// What the program asks of the browser, linked in as an Emscripten library (see host_web.cpp).
addToLibrary({
    $slopewisePage: { hidden: 0 },

    slopewise_watch_page__deps: ["$slopewisePage"],
    slopewise_watch_page: () => {
        document.addEventListener("visibilitychange", () => {
            if (document.hidden) slopewisePage.hidden = 1;
        });
    },

    slopewise_take_hidden__deps: ["$slopewisePage"],
    slopewise_take_hidden: () => {
        const hidden = slopewisePage.hidden;
        slopewisePage.hidden = 0;
        return hidden;
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

    slopewise_offer_file__deps: ["$UTF8ToString"],
    slopewise_offer_file: (name, mediaType, text) => {
        const blob = new Blob([UTF8ToString(text)], { type: UTF8ToString(mediaType) });
        const link = document.createElement("a");
        link.href = URL.createObjectURL(blob);
        link.download = UTF8ToString(name);
        link.click();
        setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    },

    slopewise_show_mirror__deps: ["$UTF8ToString"],
    slopewise_show_mirror: (screen, instruments) => {
        document.getElementById("mirror").textContent = UTF8ToString(screen);
        document.getElementById("instruments").textContent = UTF8ToString(instruments);
    },
});
