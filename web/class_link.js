// How the two windows of a class hear each other: BroadcastChannel, linked in as an Emscripten library (see
// class_channel_web.cpp).
//
//   slopewise-class-PAIR   one instructor's page and its class window
//   slopewise-class        the lobby: who has lost the other
//
// A class window is this page with #class=PAIR in its address, where it stays, so that it is one again when it is loaded
// again. The instructor's page keeps its pair in sessionStorage, which is the tab's own. What comes waits to be taken,
// also while the page is hidden and draws no frames; when far too much waits, all of it goes and that is told.
addToLibrary({
    $slopewiseClass__deps: ["$UTF8ToString"],
    $slopewiseClass: {
        pair: null, // channels; opened when they are first needed
        lobby: null,
        texts: [], // [lobby, text]; a null text: all that was there is lost
        letters: 0,
        mostTexts: 6000, // as many frames as a minute and a half has
        mostLetters: 16777216,
        longest: 8388608,
        farewell: "",

        receive: (lobby, text) => {
            const own = slopewiseClass;
            if (typeof text !== "string" || text.length > own.longest) return;
            if (own.texts.length >= own.mostTexts || own.letters + text.length > own.mostLetters) {
                own.texts = [[false, null]];
                own.letters = 0;
            }
            own.texts.push([lobby, text]);
            own.letters += text.length;
        },

        listen: (name, lobby) => {
            const channel = new BroadcastChannel(name);
            channel.onmessage = ({ data }) => slopewiseClass.receive(lobby, data);
            return channel;
        },

        // The lobby is heard from the first time this page joins a pair or speaks there.
        openLobby: () => {
            slopewiseClass.lobby ??= slopewiseClass.listen("slopewise-class", true);
        },

        pairOfAddress: () => {
            return location.hash.match(/^#class=([a-z0-9]{8,32})$/)?.[1] ?? "";
        },
    },

    slopewise_class_there: () => (typeof BroadcastChannel === "function" ? 1 : 0),

    slopewise_class_pair_of_address__deps: ["$slopewiseClass", "$stringToNewUTF8"],
    slopewise_class_pair_of_address: () => stringToNewUTF8(slopewiseClass.pairOfAddress()),

    // Private windows may refuse storage: then a page that is loaded again asks in the lobby like a fresh one.
    slopewise_class_kept_pair__deps: ["$stringToNewUTF8"],
    slopewise_class_kept_pair: () => {
        try {
            return stringToNewUTF8(sessionStorage.getItem("slopewise-class-pair") ?? "");
        } catch {
            return stringToNewUTF8("");
        }
    },
    slopewise_class_keep_pair__deps: ["$UTF8ToString"],
    slopewise_class_keep_pair: (pairAt) => {
        try {
            sessionStorage.setItem("slopewise-class-pair", UTF8ToString(pairAt));
        } catch {}
    },

    // A page that was open becomes a class window, or that of another pair, only by being loaded.
    slopewise_class_watch_page__deps: ["$slopewiseClass"],
    slopewise_class_watch_page: () => {
        window.addEventListener("hashchange", () => {
            if (slopewiseClass.pairOfAddress() !== "") location.reload();
        });
        window.addEventListener("pagehide", () => {
            if (slopewiseClass.farewell !== "") slopewiseClass.pair?.postMessage(slopewiseClass.farewell);
        });
    },

    slopewise_class_join__deps: ["$slopewiseClass", "$UTF8ToString"],
    slopewise_class_join: (pairAt) => {
        const pair = UTF8ToString(pairAt);
        slopewiseClass.pair?.close();
        slopewiseClass.pair = pair === "" ? null : slopewiseClass.listen(`slopewise-class-${pair}`, false);
        slopewiseClass.openLobby();
    },

    slopewise_class_post__deps: ["$slopewiseClass", "$UTF8ToString"],
    slopewise_class_post: (text) => slopewiseClass.pair?.postMessage(UTF8ToString(text)),
    slopewise_class_post_lobby__deps: ["$slopewiseClass", "$UTF8ToString"],
    slopewise_class_post_lobby: (text) => {
        slopewiseClass.openLobby();
        slopewiseClass.lobby.postMessage(UTF8ToString(text));
    },
    slopewise_class_say_at_leaving__deps: ["$slopewiseClass", "$UTF8ToString"],
    slopewise_class_say_at_leaving: (text) => {
        slopewiseClass.farewell = UTF8ToString(text);
    },

    // Zeros are no part of a text of ours; as marks they stay to be refused.
    slopewise_class_take__deps: ["$slopewiseClass", "$stringToNewUTF8"],
    slopewise_class_take: () => {
        const next = slopewiseClass.texts.shift();
        if (next === undefined) return 0;
        const [lobby, text] = next;
        slopewiseClass.letters -= text?.length ?? 0;
        return stringToNewUTF8((lobby ? "l" : "p") + (text ?? "").replaceAll("\u0000", "\ufffd"));
    },

    // By its name, so that a second wish finds the same window again.
    slopewise_class_open_window__deps: ["$UTF8ToString"],
    slopewise_class_open_window: (pairAt) => {
        const pair = UTF8ToString(pairAt);
        const address = `${location.href.replace(/#.*$/, "")}#class=${pair}`;
        const opened = window.open(address, `slopewise-class-${pair}`, "popup,width=1280,height=720");
        opened?.focus();
        return opened ? 1 : 0;
    },
    slopewise_class_close_this_window: () => window.close(),
});
