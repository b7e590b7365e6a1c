// Every figure of the debrief again, from the exported track and set-up, by other code in another language.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { answersOf, bandsOf, gatesOf, readCsv, runOf } from "./recompute.mjs";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");
const slopewise = path.join(root, "build/native/slopewise");

// A flight by a model pilot, recorded, changed by `change` if given, and reviewed into tables.
function exported(lesson, pilot, seed, change) {
    const folder = mkdtempSync(path.join(tmpdir(), "slopewise-"));
    const recording = path.join(folder, "recording.json");
    if (typeof lesson !== "string") {
        writeFileSync(path.join(folder, "lesson.json"), JSON.stringify(lesson));
        lesson = path.join(folder, "lesson.json");
    }
    execFileSync(slopewise, ["fly", lesson, "--pilot", pilot, "--seed", String(seed), "--record", recording]);
    if (change) writeFileSync(recording, JSON.stringify(change(JSON.parse(readFileSync(recording, "utf8")))));
    const json = JSON.parse(execFileSync(slopewise, ["review", recording, "--csv", folder, "--json"], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }));
    const text = (name) => readFileSync(path.join(folder, `${name}.csv`), "utf8");
    const table = (name) => readCsv(text(name));
    return { json, text, setup: table("setup")[0], run: table("run")[0], gates: table("gates"), bands: table("bands"), answers: table("answers"), track: table("track"), dictionary: text("dictionary") };
}

// The recording flown otherwise from a tick on, by rows of [tick, stick, throttle, trim, flap, go-around]. Its hashes
// are then not those of the flight, which the review says and which does not matter here.
const flownOn = (from, ticks, rowsAfter) => (recording) => {
    const controls = recording.controls.filter((row) => row[0] <= from);
    const hashes = Array.from({ length: Math.floor(ticks / 120) }, () => "0".repeat(16));
    return { ...recording, ticks, hashes, controls: [...controls, ...rowsAfter(controls.at(-1))] };
};

// The digits that a column is printed with, from its text.
function digitsOf(text, name) {
    const lines = text.split("\n");
    const at = lines[1].split(",").indexOf(name);
    return Math.max(...lines.slice(2).filter(Boolean).map((line) => (line.split(",")[at].split(".")[1] ?? "").length));
}

// Equal within the rounding: half a unit of the last printed digit, and a twentieth for the track's own.
function same(name, printed, again, digits, where) {
    const context = `${where}: ${name} is ${printed}, again ${again}`;
    if (printed === null || again === null || again === undefined || typeof printed === "string") return assert.equal(printed, again ?? null, context);
    assert.ok(Math.abs(printed - again) <= 0.55 * 10 ** -digits, context);
}

function compare(file, rows, again, text) {
    let compared = 0;
    assert.equal(rows.length, again.length, `${file}: rows`);
    rows.forEach((row, i) => {
        for (const [name, printed] of Object.entries(row)) {
            same(name, printed, again[i][name], digitsOf(text, name), file);
            compared += 1;
        }
    });
    return compared;
}

// Everything in run, gates, bands and answers comes out again of setup and track, and nothing is left out: setup is what
// was flown and what it was held to, track is what was measured.
function everyFigureAgain({ setup, run, gates, bands, answers, track, text }) {
    const points = track.filter((row) => row.scored === 1);
    return compare("run", [run], [runOf(setup, track)], text("run")) + compare("gates", gates, gatesOf(setup, points), text("gates")) +
        compare("bands", bands, bandsOf(setup, points), text("bands")) + compare("answers", answers, answersOf(setup, points), text("answers"));
}

// RMS^2 = bias^2 + scatter^2, on the exported numbers: each is rounded by half a unit of its last digit, which moves its
// square by twice itself times that, and three of them can do so together.
function squaresAgree(run, name, unit, digits) {
    const [whole, bias, scatter] = ["rms", "bias", "scatter"].map((what) => run[`${name}_${what}_${unit}`]);
    const allowed = 10 ** -digits * (Math.abs(whole) + Math.abs(bias) + Math.abs(scatter) + 10 ** -digits);
    assert.ok(whole > 0, `${name} has no deviation at all`);
    assert.ok(Math.abs(whole ** 2 - bias ** 2 - scatter ** 2) <= allowed, `${name}: ${whole}^2 is not ${bias}^2 + ${scatter}^2`);
}

for (const [lesson, pilot, end] of [["final_calm", "good", 1], ["from_below", "over_control", 1], ["from_above", "needle_chasing", 1], ["final_headwind", "ignores_wind", 3], ["from_below", "low_stretch", 1], ["wind_gradient", "light_chasing", 1], ["from_above", "late_power", 1]]) {
    test(`every figure of ${pilot} on ${lesson} comes out of the exported files again`, () => {
        const files = exported(lesson, pilot, 4);
        const compared = everyFigureAgain(files);
        assert.ok(compared >= 150, `only ${compared} figures were compared`);
        assert.equal(files.run.end, end);
        squaresAgree(files.run, "path", "deg", 4);
        squaresAgree(files.run, "speed", "kt", 3);
    });
}

const tooHigh = { ...JSON.parse(readFileSync(path.join(root, "assets/lessons/final_calm.json"), "utf8")), id: "too_high" };
tooHigh.start = { ...tooHigh.start, distance_nm: 1, offset_deg: 1.2 };

test("every figure of a go-around comes out again, with the minute that was flown on", () => {
    const called = exported(tooHigh, "good", 1);
    everyFigureAgain(called);
    assert.equal(called.run.end, 2);
    assert.equal(called.run.decision, 1, "unstable and gone around is right");
    assert.equal(called.run.go_around_full_power_s, null, "the lever had not come up when it was called");

    const end = Math.round(called.run.scored_s * 120);
    const flown = exported(tooHigh, "good", 1, flownOn(end, end + 9600, ([, stick, , trim, flap]) => [[end + 120, stick, 65535, trim, flap, 1], [end + 1800, stick, 65535, trim, 1, 1]]));
    everyFigureAgain(flown);
    assert.equal(flown.run.end, 2);
    assert.ok(flown.run.go_around_full_power_s >= 1 && flown.run.go_around_full_power_s <= 1.2, `full power after ${flown.run.go_around_full_power_s} s`);
    assert.ok(flown.track.length > called.track.length + 700, "eighty seconds at ten a second were flown on");

    const unsaid = exported("final_calm", "good", 1, flownOn(6000, 8000, ([tick, stick, , trim, flap]) => [[tick + 1, stick, 65535, trim, flap, 0]]));
    everyFigureAgain(unsaid);
    assert.equal(unsaid.run.end, 2, "full power and climbing, though nobody said so");
    assert.equal(unsaid.run.go_around_full_power_s, 0.1);
});

test("every figure of an approach that overflies the runway, or stops in the air, comes out again", () => {
    const over = exported("final_calm", "good", 1, flownOn(1000, 36000, ([tick, stick, , trim, flap]) => [[tick + 1, stick, 45000, trim, flap, 0]]));
    everyFigureAgain(over);
    assert.equal(over.run.end, 4);
    const stopped = exported("final_calm", "good", 1, flownOn(1000, 1800, () => []));
    everyFigureAgain(stopped);
    assert.equal(stopped.run.end, 0);
    assert.equal(stopped.run.decision, 0);
});

test("the JSON has the figures of the CSV", () => {
    const { json, run, gates, bands } = exported("from_above", "needle_chasing", 5);
    assert.deepEqual(json.run, [run]);
    assert.deepEqual(json.gates, gates);
    assert.deepEqual(json.bands, bands);
});

test("the dictionary tells what every column of every file means", () => {
    const files = exported("final_calm", "good", 1);
    for (const file of ["setup", "run", "gates", "bands", "answers", "track"]) {
        for (const column of files.text(file).split("\n")[1].split(",")) {
            if (["lesson", "gate", "band"].includes(column)) continue; // names of rows
            assert.match(files.dictionary, new RegExp(`^${file}\\.csv,${column},`, "m"));
        }
    }
});
