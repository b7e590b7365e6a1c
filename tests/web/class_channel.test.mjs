// The browser's way between two windows (web/class_link.js) in node, whose BroadcastChannel is the browsers': what is
// said reaches the pair and the lobby, what waits is bounded, and a page says goodbye.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import vm from "node:vm";

const library = readFileSync(path.join(path.dirname(fileURLToPath(import.meta.url)), "../../web/class_link.js"), "utf8");
const same = (text) => text; // strings are not taken through a memory here
const arrive = () => new Promise((resolve) => setTimeout(resolve, 100));

// A page with the functions of the library, its address ending in `hash`.
function open(hash = "", { storage = true } = {}) {
    const page = { listeners: {}, session: new Map(), opened: [], reloads: 0 };
    const functions = {};
    const context = {
        addToLibrary: (given) => Object.assign(functions, given),
        BroadcastChannel,
        UTF8ToString: same,
        stringToNewUTF8: same,
        location: { hash, href: `http://localhost/${hash}`, reload: () => page.reloads++ },
        window: {
            addEventListener: (kind, listener) => (page.listeners[kind] = listener),
            open: (...asked) => (page.opened.push(asked), page.blocks ? null : { focus() {} }),
        },
        sessionStorage: {
            getItem: (key) => {
                if (!storage) throw new Error("refused");
                return page.session.get(key) ?? null;
            },
            setItem: (key, value) => {
                if (!storage) throw new Error("refused");
                page.session.set(key, value);
            },
        },
    };
    vm.createContext(context);
    vm.runInContext(library, context);
    context.slopewiseClass = functions.$slopewiseClass;
    page.own = functions.$slopewiseClass;
    page.location = context.location;
    page.ask = (name, ...values) => functions[`slopewise_class_${name}`](...values);
    page.takeAll = () => {
        const texts = [];
        for (let text = page.ask("take"); text !== 0; text = page.ask("take")) texts.push(text);
        return texts;
    };
    page.close = () => {
        page.own.pair?.close();
        page.own.lobby?.close();
    };
    page.ask("watch_page");
    return page;
}

test("what is said to a pair reaches that pair alone, and what is said in the lobby reaches every page", async () => {
    const [instructor, projector, other] = [open(), open("#class=abcd1234"), open("#class=zzzz9999")];
    instructor.ask("join", "abcd1234");
    projector.ask("join", projector.ask("pair_of_address"));
    other.ask("join", other.ask("pair_of_address"));
    instructor.ask("post", "a flight");
    projector.ask("post", "a wish");
    instructor.ask("post_lobby", "who");
    await arrive();
    assert.deepEqual(instructor.takeAll(), ["pa wish"]);
    assert.deepEqual(projector.takeAll().sort(), ["lwho", "pa flight"]);
    assert.deepEqual(other.takeAll(), ["lwho"]);
    instructor.ask("join", ""); // leaves it
    projector.ask("post", "unheard");
    await arrive();
    assert.deepEqual(instructor.takeAll(), []);
    for (const page of [instructor, projector, other]) page.close();
});

test("a page that is left says what it was told to say, and before that nothing", async () => {
    const [instructor, projector] = [open(), open("#class=abcd1234")];
    instructor.listeners.pagehide();
    instructor.ask("join", "abcd1234");
    projector.ask("join", "abcd1234");
    instructor.listeners.pagehide();
    instructor.ask("say_at_leaving", "goodbye");
    instructor.listeners.pagehide();
    await arrive();
    assert.deepEqual(projector.takeAll(), ["pgoodbye"]);
    for (const page of [instructor, projector]) page.close();
});

test("what waits while a page is hidden is kept in its order, and past the bound all of it goes and that is told", () => {
    const page = open();
    for (let i = 0; i < page.own.mostTexts; i++) page.own.receive(false, String(i));
    assert.equal(page.own.texts.length, page.own.mostTexts);
    page.own.receive(false, "one too many");
    assert.deepEqual(page.takeAll(), ["p", "pone too many"]);
    assert.equal(page.own.letters, 0);
    const long = "x".repeat(page.own.longest);
    for (let i = 0; i < 3; i++) page.own.receive(false, long); // three are more letters than may wait
    page.own.receive(false, `${long}x`); // too long by itself
    page.own.receive(false, { not: "a text" });
    assert.deepEqual(page.takeAll().map((text) => text.length), [1, long.length + 1]);
});

test("only an address with a whole pair makes a class window, and a new one loads the page again", () => {
    for (const hash of ["", "#class=", "#class=short", "#class=ABCD1234", "#class=abcd1234&x", "#lesson=1.2.3"])
        assert.equal(open(hash).ask("pair_of_address"), "", hash);
    const page = open("");
    page.location.hash = "#lesson=1.2.3";
    page.listeners.hashchange();
    assert.equal(page.reloads, 0);
    page.location.hash = "#class=abcd1234";
    page.listeners.hashchange();
    assert.equal(page.reloads, 1);
});

test("the pair is kept with the tab, and a browser that keeps nothing is no failure", () => {
    const page = open();
    assert.equal(page.ask("kept_pair"), "");
    page.ask("keep_pair", "abcd1234");
    assert.equal(page.ask("kept_pair"), "abcd1234");
    const refused = open("", { storage: false });
    refused.ask("keep_pair", "abcd1234");
    assert.equal(refused.ask("kept_pair"), "");
});

test("a class window is opened under the name of its pair, and a browser that opens none says so", () => {
    const page = open("#top");
    assert.equal(page.ask("open_window", "abcd1234"), 1);
    assert.deepEqual(page.opened[0].slice(0, 2), ["http://localhost/#class=abcd1234", "slopewise-class-abcd1234"]);
    page.blocks = true;
    assert.equal(page.ask("open_window", "abcd1234"), 0);
});
