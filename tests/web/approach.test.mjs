// A student's whole way through the page, with real keys: choice, question, briefing, approach to 50 ft,
// deviation summary, saved track; and the summary held against that track.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";

import { root, stage, wait } from "./trainer.mjs";

const site = stage();

// The saved track as a list of rows with numbers.
function readTrack(file) {
    const lines = readFileSync(file, "utf8").trimEnd().split("\n");
    assert.match(lines[0], /^# Ground study aid/);
    const names = lines[1].split(",");
    return lines.slice(2).map((line) => Object.fromEntries(line.split(",").map((cell, i) => [names[i], Number(cell)])));
}

// Where two of the files to take along are offered, in a window of 1280 x 720.
const offers = { figures: [160, 170], recording: [160, 230] };

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const scatter = (values) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));

// The number after a label in the summary's text.
function figure(text, label) {
    const found = text.match(new RegExp(`${label}: ([+\u2212\\d.]+)`));
    assert.ok(found, `the summary says nothing of "${label}":\n${text}`);
    return Number(found[1].replace("\u2212", "-"));
}

// A simple pilot: power for the path by the lights and the sink, attitude for the speed, once a second.
async function fly(trainer, { until, each = async () => {} }) {
    for (let second = 0; second < 120; ++second) {
        if ((await trainer.text()).includes(until)) return;
        const now = await trainer.instruments();
        const wantedSink = now.white >= 3 ? -450 : now.white === 1 || now.white === 0 ? -200 : -345;
        if (now.vertical < wantedSink - 60) await trainer.press("e");
        else if (now.vertical > wantedSink + 60) await trainer.press("d");
        if (now.airspeed > 68) await trainer.press("ArrowDown", 120);
        else if (now.airspeed < 62) await trainer.press("ArrowUp", 120);
        await each(now);
        await wait(700);
    }
    assert.fail("the approach did not end within two minutes");
}

test("a student flies an approach with the keys and gets the deviation summary of that flight", async () => {
    const trainer = await site.open();
    await trainer.picture("choices");
    assert.match(await trainer.text(), /Not an approved training device/);

    await trainer.press("1"); // one mile
    await trainer.press("Enter");
    await trainer.screen("Which key should lower the nose");
    await trainer.picture("stick-sense");
    await trainer.press("ArrowUp"); // the up key pushes the nose down
    await trainer.screen("Briefing");
    assert.match(await trainer.text(), /Target speed: 65 kt/);
    assert.match(await trainer.text(), /1 NM: 318 ft/);
    await trainer.picture("briefing");
    await trainer.press("Enter");
    await trainer.screen("Flying");

    // Every control answers: flap up and down, trim, pause.
    const start = await trainer.instruments();
    assert.ok(Math.abs(start.airspeed - 65) <= 2, `starts at ${start.airspeed} kt`);
    assert.equal(start.white, 2);
    await trainer.press("p");
    await trainer.screen("Paused");
    await trainer.picture("paused");
    const paused = await trainer.instruments();
    await wait(1500);
    assert.deepEqual(await trainer.instruments(), paused, "time stands still in a pause");
    await trainer.press("p");

    let pictured = false;
    await fly(trainer, {
        until: "how was it?",
        each: async (now) => {
            if (pictured || now.height > 200) return;
            pictured = true;
            await trainer.picture("flight");
        },
    });
    // The student says how it was; then the sheet says how it was.
    assert.doesNotMatch(await trainer.text(), /Scoring ended|Bias/, "nothing is given away before");
    await trainer.screen("Now: The path was mostly"); // after a few blank seconds
    await trainer.picture("estimate");
    await trainer.press("2");
    await trainer.screen("Now: The speed was mostly");
    await trainer.press("2");
    await trainer.screen("Now: Stable at 300 ft");
    await trainer.press("1");
    await trainer.screen("Deviation summary");
    const summary = await trainer.text();
    assert.match(summary, /You said: on the path, on speed, stable\. It was: .*\. [0-3] of 3\./);
    assert.match(summary, /Decision at 300 ft: (Stable|Not stable) and continued: (right|a miss)\./);
    assert.match(summary, /No fault stands out\.|To work on: /);
    assert.match(summary, /Scoring ended at 50 ft wheel height/);
    await trainer.picture("summary");

    const download = trainer.page.waitForEvent("download");
    await trainer.press("c");
    const track = readTrack(await (await download).path());
    const scored = track.filter((row) => row.scored === 1);

    // What can be taken along says the same as the command line does of the recording taken along.
    await trainer.press("t");
    await trainer.screen("Take it with you");
    await trainer.picture("take-it-with-you");
    const taken = async (place) => {
        const arrives = trainer.page.waitForEvent("download");
        await trainer.click(place);
        const file = await arrives;
        return { name: file.suggestedFilename(), path: await file.path() };
    };
    const figures = await taken(offers.figures);
    const recording = await taken(offers.recording);
    assert.match(figures.name, /^slopewise-[\w-]+-figures\.json$/);
    assert.match(recording.name, /^slopewise-[\w-]+-recording\.json$/);
    await trainer.screen(`Handed over: ${recording.name}`);
    const said = execFileSync(path.join(root, "build/native/slopewise"), ["review", recording.path, "--json"], { encoding: "utf8" });
    assert.equal(readFileSync(figures.path, "utf8"), said);
    await trainer.press("t");
    await trainer.screen("Deviation summary");

    // Held against the track, within what the printed digits can say.
    const path_deg = scored.map((row) => row.path_deviation_deg);
    const speed_kt = scored.map((row) => row.airspeed_kt - 65);
    assert.ok(Math.abs(figure(summary, "Path Bias") - mean(path_deg)) <= 0.006);
    assert.ok(Math.abs(figure(summary, "Path Scatter") - scatter(path_deg)) <= 0.006);
    assert.ok(Math.abs(figure(summary, "Speed Bias") - mean(speed_kt)) <= 0.06);
    assert.ok(Math.abs(figure(summary, "Speed Scatter") - scatter(speed_kt)) <= 0.06);
    const inTolerance = scored.filter((row) => Math.abs(row.path_deviation_deg) <= 0.5 || Math.abs(row.path_deviation_ft) <= 30);
    assert.ok(Math.abs(figure(summary, "Path within 0.5° or 30 ft") - (100 * inTolerance.length) / scored.length) <= 0.51);
    for (const [white, words] of [[4, "4 white"], [2, "2 white 2 red"], [0, "4 red"]]) {
        const share = (100 * scored.filter((row) => row.white_count === white).length) / scored.length;
        assert.ok(Math.abs(figure(summary, `Lights ${words}`) - share) <= 0.51, words);
    }
    assert.ok(scored.at(-1).wheel_height_above_threshold_ft <= 50 && scored.at(-2).wheel_height_above_threshold_ft > 50);
    assert.ok(scored.some((row) => Math.abs(row.lever_percent - scored[0].lever_percent) > 1), "the keys moved the lever");

    // Flown on, unscored, into a go-around.
    await trainer.press("o");
    await trainer.screen("Unscored");
    await trainer.press("g");
    await wait(3000);
    const climbing = await trainer.instruments();
    assert.ok(climbing.power > 90, `go-around power ${climbing.power} %`);
    await trainer.picture("go-around");

    assert.deepEqual(trainer.errors, []);
    for (const url of trainer.requests) assert.ok(url.startsWith(site.address()) || url.startsWith("blob:"), `asked for ${url}`);
    console.log(`first usable screen after ${trainer.firstScreenMs} ms (Chromium headless, software WebGL, this machine)`);
    await trainer.context.close();
});

test("with the mouse alone a student chooses, answers, flies with stick, lever, flap and trim, and goes around", async () => {
    // Where things stand in a window of 1280 x 720; a press that misses makes the next wait fail.
    const at = { brief: [104, 554], upKey: [328, 390], fly: [104, 677], view: [640, 300], lever: [825, 637], goAround: [1185, 597], skip: [510, 441] };
    const trainer = await site.open();
    const mouse = trainer.page.mouse;
    const click = (place) => trainer.click(place);
    const drag = async ([x, y], dy) => {
        await mouse.move(x, y);
        await trainer.frames(3);
        await mouse.down();
        await trainer.frames(3);
        await mouse.move(x, y + dy, { steps: 4 });
        await wait(600);
        await mouse.up();
    };
    await click(at.brief);
    await trainer.screen("Which key should lower the nose");
    await click(at.upKey);
    await trainer.screen("Briefing");
    await click(at.fly);
    await trainer.screen("Flying");
    const before = await trainer.instruments();
    await drag(at.lever, -30);
    await drag(at.view, 60);
    await mouse.move(...at.view);
    await mouse.wheel(0, -120);
    await wait(1500);
    const after = await trainer.instruments();
    assert.ok(after.power > before.power + 10, `the lever moved the power from ${before.power} to ${after.power} %`);
    await click(at.goAround);
    await trainer.screen("how was it?");
    await click(at.skip);
    await trainer.screen("Deviation summary");
    assert.match(await trainer.text(), /Scoring ended with the go-around/);

    const download = trainer.page.waitForEvent("download");
    await trainer.press("c");
    const track = readTrack(await (await download).path());
    assert.ok(track.some((row) => row.stick_percent > 5), "dragging down in the view pulls the stick");
    assert.equal(track.at(-1).stick_percent < 1, true, "let go, it springs back to trim");
    assert.notEqual(track.at(-1).trim_percent, track[0].trim_percent, "the wheel over the view trims");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
