// What really leaves the page: whether the browser's audio runs, and how loud what goes to the loudspeaker is.
import assert from "node:assert/strict";
import { test } from "node:test";

import { answered, flies, machine, takeOff } from "./machine.mjs";

const on = machine();

// Counts the audio contexts and listens beside the loudspeaker.
function tap() {
    window.tap = { contexts: [], analyser: null };
    const connect = AudioNode.prototype.connect;
    AudioNode.prototype.connect = function (to, ...rest) {
        if (to instanceof AudioDestinationNode && !window.tap.analyser) {
            window.tap.analyser = this.context.createAnalyser();
            window.tap.analyser.fftSize = 32768;
            window.tap.analyser.smoothingTimeConstant = 0;
            connect.call(this, window.tap.analyser);
        }
        return connect.call(this, to, ...rest);
    };
    const Real = window.AudioContext;
    window.AudioContext = class extends Real {
        constructor(...how) {
            super(...how);
            window.tap.contexts.push(this);
        }
    };
}

// { contexts, state, level (root mean square of the last three quarters of a second), loudest_hz below 200 }
const heard = (page) => page.evaluate(() => {
    const { contexts, analyser } = window.tap;
    if (!analyser) return { contexts: contexts.length, state: contexts[0]?.state, level: 0 };
    const samples = new Float32Array(analyser.fftSize);
    analyser.getFloatTimeDomainData(samples);
    const bins = new Float32Array(analyser.frequencyBinCount);
    analyser.getFloatFrequencyData(bins);
    const bin_hz = analyser.context.sampleRate / analyser.fftSize;
    let best = 1;
    for (let i = 1; i * bin_hz < 200; ++i) if (bins[i] > bins[best]) best = i;
    return {
        contexts: contexts.length,
        state: contexts[0].state,
        level: Math.hypot(...Array.from({ length: 256 }, (_, i) => Math.hypot(...samples.subarray(i * 128, i * 128 + 128)))) / Math.sqrt(samples.length),
        loudest_hz: best * bin_hz,
    };
});

async function until(trainer, holds, what) {
    let last;
    for (let tries = 0; tries < 300; ++tries) {
        last = await heard(trainer.page);
        if (holds(last)) return last;
        await trainer.frames(3);
    }
    assert.fail(`${what}: ${JSON.stringify(last)}`);
}

const loud = ({ level }) => level > 0.004;
const still = ({ level }) => level < 1e-4;

const hide = (page, hidden) => page.evaluate((is) => {
    Object.defineProperty(document, "hidden", { get: () => is, configurable: true });
    Object.defineProperty(document, "visibilityState", { get: () => (is ? "hidden" : "visible"), configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
}, hidden);

test("nothing sounds before a press; a flight does, and a pause, a hidden page and muting are silent", { timeout: 300000 }, async () => {
    const trainer = await on.open([tap, answered()]);
    await trainer.frames(20);
    assert.deepEqual(await heard(trainer.page), { contexts: 0, state: undefined, level: 0 });

    await takeOff(trainer);
    const flight = await until(trainer, (now) => now.state === "running" && loud(now), "the engine is heard");
    assert.equal(flight.contexts, 1);
    // The firing of four cylinders between idling and full power: 1,000 to 2,700 turns a minute, two a turn.
    assert.ok(flight.loudest_hz > 33 && flight.loudest_hz < 90, JSON.stringify(flight));

    await trainer.press("p");
    await trainer.screen("Paused.");
    await until(trainer, still, "a pause is silent");
    await trainer.press("p");
    await until(trainer, loud, "it is heard again");

    await hide(trainer.page, true);
    await until(trainer, ({ state }) => state === "suspended", "a hidden page is silent");
    await hide(trainer.page, false);
    await trainer.screen("Paused.");
    await until(trainer, (now) => now.state === "running" && still(now), "and paused when it is seen again");
    await trainer.press("p");
    await until(trainer, loud, "it is heard again");

    await trainer.press("s");
    await until(trainer, still, "muted");
    await flies(trainer);
    assert.ok(still(await heard(trainer.page)));
    await trainer.press("s");
    await until(trainer, loud, "and heard again");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});

test("who wants no sound has no audio opened, and who turns it down hears less", { timeout: 300000 }, async () => {
    const muted = await on.open([tap, answered({ sound: "off" })]);
    await takeOff(muted);
    await flies(muted, 30);
    assert.equal((await heard(muted.page)).contexts, 0);
    await muted.context.close();

    const levels = [];
    for (const volume of [1, 0.5]) {
        const trainer = await on.open([tap, answered({ volume })]);
        await takeOff(trainer);
        await until(trainer, loud, `volume ${volume}`);
        // The engine's own tone, before the hands move: the level settles within a second.
        let before = 0;
        for (let tries = 0; tries < 60; ++tries) {
            const { level } = await heard(trainer.page);
            if (Math.abs(level - before) < 0.03 * before) break;
            before = level;
            await new Promise((done) => setTimeout(done, 800));
        }
        levels.push(before);
        await trainer.context.close();
    }
    // The square of the volume; wind and the engine's settling differ by a few parts in a hundred.
    assert.ok(Math.abs(levels[1] / levels[0] - 0.25) < 0.06, levels.join(" "));
});
