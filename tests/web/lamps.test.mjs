// Four lamps of the right colours, in the right order, at their true places: read from the pixels that Chromium
// shows. The flight screen stands where the test says (tests/pages/still_page.cpp); where the lamps must then be and
// what they must show is worked out here, from the published siting and sectors of a PAPI and from plain geometry.
import assert from "node:assert/strict";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { after, before, test } from "node:test";

import { pixelsOf, serveTestPages } from "./still_pages.mjs";
import { launch, root, serve, Trainer } from "./trainer.mjs";

// Larkmoor 27, as assets/runways/larkmoor.json describes it: level, 30 m wide, 1,500 m long, a PAPI for 3 degrees on
// the left. Its aim point: ICAO's for 1,200 m to 2,400 m (EASA CS ADR-DSN.L.540, table L-1), where the PAPI stands
// too. Units from 15 m beside the runway's edge, 9 m apart (UFC 3-535-01, 12-3). The leftmost first; an angle is that
// from which a unit shows white (settings of FAA AC 150/5345-28: slope -30', -10', +10', +30' from the outermost in).
const aim_m = 300;
const lamps = [
    { y_m: -57, white_from_deg: 2.5 },
    { y_m: -48, white_from_deg: 2.5 + 1 / 3 },
    { y_m: -39, white_from_deg: 3 + 1 / 6 },
    { y_m: -30, white_from_deg: 3.5 },
];

// What the pilot is told (FAA Aeronautical Information Manual 2-1-2): above 3.5 degrees four white, about 3.3 three,
// on 3 two, about 2.7 one, below 2.5 none.
const deviations = [
    { words: "well above", deg: 0.8, seen: "WWWW" },
    { words: "slightly high", deg: 0.33, seen: "WWWR" },
    { words: "on the path", deg: 0, seen: "WWRR" },
    { words: "slightly low", deg: -0.33, seen: "WRRR" },
    { words: "well below", deg: -0.8, seen: "RRRR" },
];
const distances_nm = [3, 2, 1, 0.5];

const window_px = { width: 1920, height: 1080 };
const view_height_px = Math.ceil(0.75 * window_px.height); // the shelf of the instruments is a quarter
const rad = Math.PI / 180;
const focal_px = window_px.width / 2 / Math.tan(20 * rad); // 40 degrees across, as the screen states

// From the eye's elevation at each lens to the colour; no lamp may be so near its change that it is pink (3 minutes
// of arc are the most that a change may take: ICAO Annex 14, 5.3.5).
function colourFromAngle(eye, lamp) {
    const over_deg = Math.atan2(eye.z_m, Math.hypot(aim_m - eye.x_m, lamp.y_m)) / rad - lamp.white_from_deg;
    assert.ok(Math.abs(over_deg) > 0.05, `the row is badly chosen: ${over_deg} degrees from a change`);
    return over_deg > 0 ? "W" : "R";
}

// A pinhole camera, its axis pitched from the horizon and along the runway.
function project(eye, pitch_deg, point) {
    const [sin, cos] = [Math.sin(pitch_deg * rad), Math.cos(pitch_deg * rad)];
    const along_m = point.x_m - eye.x_m, above_m = point.z_m - eye.z_m;
    const ahead_m = along_m * cos + above_m * sin, up_m = above_m * cos - along_m * sin;
    return {
        x: window_px.width / 2 + (focal_px * (point.y_m - eye.y_m)) / ahead_m,
        y: view_height_px / 2 - (focal_px * up_m) / ahead_m,
    };
}

// How much a pixel is of a lamp of either colour, 0 to 1. Nothing of the country by day is so red or so white: its
// reddest is brick in haze (red over green by a third), its palest straw (blue at two thirds of full).
const share = (value, from, to) => Math.min(1, Math.max(0, (value - from) / (to - from)));
const redness = ([r, g, b]) => share(r - Math.max(g, b), 40, 150);
const whiteness = ([r, g, b]) => share(Math.min(r, g, b), 185, 240);

const lampness = (pixel) => Math.max(redness(pixel), whiteness(pixel));

// How many pixels' worth of one colour there are within `reach` pixels about a place, and their middle.
function weigh(picture, place, reach, measure) {
    let weight = 0, x = 0, y = 0;
    for (let row = Math.floor(place.y - reach); row <= place.y + reach; ++row) {
        for (let column = Math.floor(place.x - reach); column <= place.x + reach; ++column) {
            if (Math.abs(column + 0.5 - place.x) > reach || Math.abs(row + 0.5 - place.y) > reach) continue;
            const here = measure(picture.at(column, row));
            weight += here;
            x += here * (column + 0.5);
            y += here * (row + 0.5);
        }
    }
    return { weight, x: x / weight, y: y / weight };
}

function lampAt(picture, place, reach) {
    const red = weigh(picture, place, reach, redness), white = weigh(picture, place, reach, whiteness);
    return red.weight > white.weight ? { colour: "R", ...red, other: white.weight } : { colour: "W", ...white, other: red.weight };
}

// The colours of the large discs in the upper right corner, left to right: runs of lamp pixels in the row that has
// most of them, but none thinner than 8 px, which letters are.
function discsIn(picture, { left, bottom }) {
    let best = "", most = 0;
    for (let row = 0; row < bottom; ++row) {
        let colours = "", total = 0, run = 0;
        for (let column = Math.floor(left); column <= picture.width; ++column) {
            const lit = column < picture.width && lampness(picture.at(column, row)) > 0.9;
            if (lit) ++run;
            else {
                if (run >= 8) {
                    total += run;
                    colours += redness(picture.at(column - Math.ceil(run / 2), row)) > 0.5 ? "R" : "W";
                }
                run = 0;
            }
        }
        if (total > most) [best, most] = [colours, total];
    }
    return best;
}

// The likeliest bar of four between two distances: where the least lit of the four places is most lit, and dark between.
function barIn(picture, from_m, to_m) {
    let best = { score: 0, found: "none" };
    for (let to_aim_m = from_m; to_aim_m >= to_m; to_aim_m -= 2) {
        const columns = lamps.map(({ y_m }) => Math.floor(window_px.width / 2 + (focal_px * y_m) / to_aim_m));
        const dark = [0, 1, 2].map((i) => Math.floor((columns[i] + columns[i + 1]) / 2));
        for (let row = 0; row < 0.8 * view_height_px; ++row) {
            const lit = columns.map((column) => lampness(picture.at(column, row)));
            const score = Math.min(...lit) - Math.max(...dark.map((column) => lampness(picture.at(column, row))));
            if (score <= best.score) continue;
            best = { score, to_aim_m, found: columns.map((column) => (redness(picture.at(column, row)) > whiteness(picture.at(column, row)) ? "R" : "W")).join("") };
        }
    }
    return best;
}

let server, site, browser, page;
before(async () => {
    mkdirSync(path.join(root, "build/pictures"), { recursive: true });
    server = await serveTestPages();
    site = await serve();
    browser = await launch();
    page = await (await browser.newContext({ viewport: window_px })).newPage();
});
after(async () => {
    await browser?.close();
    server?.stop();
    site?.stop();
});

// The screen with the eye there; resolves to the pixels and the pitch of the view.
async function standAt(nm, deg) {
    await page.goto(`${server.address}/still_page?larkmoor,${nm},${deg}`);
    await page.waitForFunction(() => globalThis.said?.some((line) => line.startsWith("pitch")), undefined, { timeout: 120000 });
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(done)))));
    const pitch_deg = Number((await page.evaluate(() => said.find((line) => line.startsWith("pitch")))).split(" ")[1]);
    return { picture: await pixelsOf(page), pitch_deg };
}

function eyeAt(nm, deg) {
    const to_aim_m = nm * 1852;
    return { x_m: aim_m - to_aim_m, y_m: 0, z_m: to_aim_m * Math.tan((3 + deg) * rad) };
}

for (const nm of distances_nm) {
    for (const { words, deg, seen } of deviations) {
        test(`at ${nm} NM, ${words}, the picture shows ${seen} where the lamps stand`, { timeout: 180000 }, async () => {
            const { picture, pitch_deg } = await standAt(nm, deg);
            const eye = eyeAt(nm, deg);
            assert.equal(lamps.map((lamp) => colourFromAngle(eye, lamp)).join(""), seen, "the row agrees with the sectors");

            const places = lamps.map((lamp) => project(eye, pitch_deg, { x_m: aim_m, y_m: lamp.y_m, z_m: 0 }));
            const apart_px = places[1].x - places[0].x; // 4.3 at 3 NM
            const found = places.map((place) => lampAt(picture, place, apart_px / 2));
            assert.equal(found.map((lamp) => lamp.colour).join(""), seen);
            found.forEach((lamp, i) => {
                // Half a pixel: what one sample a pixel can tell of a small disc's middle, and more than a lamp of
                // another's place could hide in; measured: 0.26 px at 3 NM, 0.10 px nearer.
                assert.ok(Math.abs(lamp.x - places[i].x) <= 0.5, `lamp ${i}: ${lamp.x} px across, expected ${places[i].x}`);
                assert.ok(Math.abs(lamp.y - places[i].y) <= 0.5, `lamp ${i}: ${lamp.y} px down, expected ${places[i].y}`);
                // A lamp of 1.6 px across, the smallest that is drawn, covers two pixels; of one colour alone.
                assert.ok(lamp.weight > 1, `lamp ${i} is of ${lamp.weight} px`);
                assert.ok(lamp.other < 0.1 * lamp.weight, `lamp ${i} is ${lamp.other} px of the other colour`);
            });
            // Four, to be counted: dark between them, and no fifth beside them.
            for (let i = 0; i < 3; ++i) {
                const between = { x: (places[i].x + places[i + 1].x) / 2, y: (places[i].y + places[i + 1].y) / 2 };
                const here = lampness(picture.at(Math.floor(between.x), Math.floor(between.y)));
                assert.ok(here < 0.5, `between lamps ${i} and ${i + 1} it is not dark`);
            }
            for (const beyond of [{ x: places[0].x - apart_px, y: places[0].y }, { x: places[3].x + apart_px, y: places[3].y }]) {
                assert.ok(lampAt(picture, beyond, apart_px / 2).weight < 0.5, "there is a fifth lamp");
            }
            // Where the screen shows less than the eye would resolve, the inset shows the same four, larger.
            const inset = discsIn(picture, { left: 0.85 * window_px.width, bottom: 0.14 * window_px.height });
            assert.equal(inset, nm >= 2 ? seen : "");
            writeFileSync(path.join(root, "build/pictures", `lamps-${nm}nm-${seen}.png`), picture.png);
        });
    }
}

// The shipped page cannot be made to stand, and does not say how the nose lies: so its lamps are looked for along the
// way that ten seconds of flight can have gone, at every height on the screen. The proportions of the bar are its own.
for (const nm of [3, 2, 1]) {
    test(`in the page itself, at ${nm} NM and on the path, there are two white lamps and two red`, { timeout: 180000 }, async () => {
        const trainer = await Trainer.open(browser, site.address, window_px);
        await trainer.press(String(nm), 250);
        await trainer.press("Enter", 250);
        await trainer.screen("Which key should lower the nose");
        await trainer.press("ArrowUp", 250);
        await trainer.screen("Briefing");
        await trainer.press("Enter", 250);
        await trainer.screen("Flying");
        await new Promise((done) => setTimeout(done, 500)); // the first frame of a flight draws the country
        const picture = await pixelsOf(trainer.page);
        const { found, score, to_aim_m } = barIn(picture, nm * 1852, nm * 1852 - 400);
        // All four stand out from between them by a third of a full lamp: at 3 NM the least measured was 0.65.
        assert.ok(score > 0.33, `no bar of four is found; the likeliest is ${found} at ${to_aim_m} m, of ${score}`);
        assert.equal(found, "WWRR", `found at ${to_aim_m} m`);
        assert.deepEqual(trainer.errors, []);
        await trainer.context.close();
    });
}
