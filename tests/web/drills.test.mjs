// The drill of the lights with keys alone, in a browser: opened from the first page, answered to its end, its result
// kept through a reload.
import assert from "node:assert/strict";
import { test } from "node:test";

import { stage } from "./trainer.mjs";

const site = stage();

test("a student takes the drill of the lights by keyboard only, and its result is there after a reload", async () => {
    const trainer = await site.open();
    await trainer.press("d");
    await trainer.screen("Drills.");
    await trainer.press("Enter"); // the next that is not passed: the first
    await trainer.screen("Drill: Read the lights, 40 items");
    await trainer.press("Enter");
    for (let card = 1; card <= 40; card++) {
        await trainer.screen(`Drill: Read the lights, ${card} of 40`);
        const before = await trainer.text();
        assert.ok(!/Right\.|Not right/.test(before), "nothing is told before the answer");
        await trainer.press("3");
        await trainer.screen("Answered after");
        const after = await trainer.text();
        assert.match(after, /Right\.|Not right, you said/);
        if (card === 1) await trainer.picture("drill-card");
        await trainer.press("Enter");
    }
    await trainer.screen("Drill result: Read the lights");
    const result = await trainer.text();
    assert.match(result, /\d+ of 20 right/);
    assert.match(result, /Not yet/); // who always says the same passes nothing
    assert.match(result, /answered right: at least 95 %; found \d+ %/);
    assert.match(result, /Seed \d+/);
    await trainer.picture("drill-result");
    await trainer.page.reload();
    await trainer.screen("Slopewise");
    await trainer.press("d");
    await trainer.screen("Last result: not yet.");
    assert.deepEqual(trainer.errors, []);
    await trainer.context.close();
});
