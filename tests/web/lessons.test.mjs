// The lessons in a browser, by keys alone: from the first page to the list, a card, and a short flight.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage, wait } from "./trainer.mjs";

const site = stage();

test("two keys lead a newcomer from the first page to a final", async () => {
    const trainer = await site.open({ first: "start with lesson 1" });
    await trainer.press("f");
    await trainer.screen("Which key should lower the nose?");
    await trainer.press("ArrowUp");
    await trainer.screen("Flying.");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("the lessons are listed, chosen, opened and flown by keys alone, and the sheet says what was asked", async () => {
    const trainer = await site.open({ first: "start with lesson 1" });
    await trainer.press("s");
    await trainer.screen("Chosen: 1, Read the lights");
    for (let i = 0; i < 5; i++) await trainer.press("ArrowDown");
    await trainer.screen("Chosen: 6, The last half mile");
    await trainer.press("Enter");
    await trainer.screen("Lesson 6. The last half mile");
    await trainer.screen("An instructor would say:");
    await trainer.press("Enter");
    await trainer.screen("Which key should lower the nose?");
    await trainer.press("ArrowUp");
    await trainer.screen("Run 1, seed 1");
    await trainer.press("Enter");
    await trainer.screen("Flying.");
    await wait(1500);
    await trainer.press("g");
    await trainer.openSheet();
    await trainer.screen("Lesson 6: The last half mile");
    await trainer.screen("3 of the last 4 are asked for");
    await trainer.picture("lesson-summary");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

// What a screen reader hears of a card, "3 white 1 red, 2 NM from the aim point.", is gone with the picture: kept as it
// comes.
function listen(trainer) {
    return trainer.page.evaluate(() => {
        const mirror = document.getElementById("mirror");
        const hear = () => {
            if (/\d white|4 red/.test(mirror.textContent)) window.heard = mirror.textContent;
        };
        new MutationObserver(hear).observe(mirror, { childList: true, characterData: true, subtree: true });
        hear();
    });
}

// Answered as the student is taught to: each lamp more or less is a step of the five choices.
async function answerLights(trainer, card) {
    await trainer.page.waitForFunction((place) => window.heard?.includes(place), `, ${card} of 40`);
    const heard = await trainer.page.evaluate(() => window.heard);
    await trainer.press(String(5 - Number(heard.match(/(\d) white/)?.[1] ?? 0)), 60);
    await trainer.screen("Answered after");
}

test("lesson 1 is completed by keyboard only, from the first page to its mark in the list", async () => {
    const trainer = await site.open({ first: "start with lesson 1" });
    await trainer.press("Enter");
    await trainer.screen("Lesson 1. Read the lights");
    await trainer.press("Enter");
    await trainer.screen("Drill: Read the lights, 40 items");
    await listen(trainer);
    await trainer.press("Enter");
    for (let card = 1; card <= 40; card++) {
        await answerLights(trainer, card);
        await trainer.press("Enter", 60);
    }
    await trainer.screen("Drill result: Read the lights");
    assert.match(await trainer.text(), /answered right: at least 95 %; found 100 %/);
    assert.match(await trainer.text(), /20 of 20 right/);
    await trainer.press("Escape");
    await trainer.page.reload();
    await trainer.screen("Slopewise");
    await trainer.press("s");
    await trainer.screen("Read the lights: Say at a glance what the slope lights tell you: high, on the path or low. Drill. Criteria met.");
    assert.match(await trainer.text(), /Next: 2, Read the picture/);
    await trainer.picture("lessons-one-met");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("the path help called twice in one approach is told on the sheet, with how long it was seen", async () => {
    const trainer = await site.open();
    await trainer.press("1");
    await trainer.press("f");
    await trainer.screen("Which key should lower the nose?");
    await trainer.press("ArrowUp");
    await trainer.screen("Flying.");
    for (let call = 0; call < 2; call++) {
        await trainer.page.keyboard.down("a");
        await trainer.screen("Path help shown");
        if (call === 0) await trainer.picture("path-help");
        await wait(1000);
        await trainer.page.keyboard.up("a");
        await wait(1500);
        assert.doesNotMatch(await trainer.text(), /Path help shown/, "let go, it is gone");
    }
    await trainer.screen("how was it?", 120000); // hands off, down to where scoring ends
    await trainer.press("Escape");
    await trainer.screen("Deviation summary");
    const said = (await trainer.text()).match(/the path guide \((\d+) s, called (\d+) times\)/);
    assert.ok(said, await trainer.text());
    assert.equal(said[2], "2");
    assert.ok(Number(said[1]) >= 2 && Number(said[1]) <= 8, `${said[1]} s`);
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("help for every key is one key away from the first page, the lessons and a card, and leads back", async () => {
    const trainer = await site.open({ first: "start with lesson 1" });
    const thereAndBack = async (words) => {
        await trainer.press("h");
        await trainer.screen("Screen and help.");
        await trainer.press("Escape");
        await trainer.screen(words);
    };
    await thereAndBack("start with lesson 1");
    await trainer.press("s");
    await thereAndBack("Lessons. Next: 1");
    await trainer.press("Enter");
    await thereAndBack("Lesson 1. Read the lights");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
