// The house rules held against every source file. Run by tests/run, or alone:
//   node --test tests/architecture/*.test.mjs
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

import { breaches, partOf } from "./rules.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

function sourcesUnder(folder) {
    return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
        const path = join(folder, entry.name);
        if (entry.isDirectory()) return sourcesUnder(path);
        return /\.(h|cpp)$/.test(entry.name) ? [path] : [];
    });
}
// What configures another's library is not the program.
const sources = ["engine", "ui", "web", "assets"].flatMap(sourcesUnder).filter((path) => !path.startsWith("web/toolchain/"));

for (const folder of ["engine", "ui", "web", "assets"]) {
    test(`${folder}: no file includes or uses what its part may not`, () => {
        const files = sources.filter((path) => path.startsWith(`${folder}/`));
        assert.ok(files.length > 0, `no sources found in ${folder}`);
        const found = files.flatMap((path) => breaches(path, readFileSync(join(root, path), "utf8")));
        assert.deepEqual(found, []);
    });
}

test("no source file is longer than 350 lines", () => {
    const long = sources.filter((path) => readFileSync(join(root, path), "utf8").split("\n").length > 351);
    assert.deepEqual(long, []);
});

// ---- The rules themselves: each must be able to fail -------------------------------------------------------------

const forbidden = [
    ["a lower part of the engine that includes a higher", "engine/world/x.cpp", '#include "flight/trim.h"'],
    ["an engine that includes the screens", "engine/review/x.cpp", '#include "ui/view.h"'],
    ["a review that includes a recording", "engine/review/x.cpp", '#include "record/replay.h"'],
    ["a screen that reaches the engine", "ui/screens/x.cpp", '#include "lesson/attempt.h"'],
    ["a screen that reaches the program above it", "ui/screens/x.cpp", '#include "ui/app.h"'],
    ["a view that knows the drawing library", "ui/view.h", "#include <imgui.h>"],
    ["a program that draws by itself", "ui/app.cpp", "#include <imgui.h>"],
    ["a widget that opens a window", "ui/widgets/x.cpp", "#include <GLFW/glfw3.h>"],
    ["sound outside the platform", "ui/x.cpp", "#include <SDL2/SDL.h>"],
    ["the JSON reader outside the data", "engine/lesson/x.cpp", "#include <nlohmann/json.hpp>"],
    ["an engine header under a second name", "ui/scene/x.cpp", '#include "engine/base/units.h"'],
    ["chance in the engine", "engine/flight/x.cpp", "#include <random>"],
    ["a thread in the engine", "engine/flight/x.cpp", "#include <thread>"],
    ["a clock in the command line", "engine/cli/x.cpp", "#include <chrono>"],
    ["printing in the engine", "engine/base/x.cpp", "#include <iostream>"],
    ["a file in the engine", "engine/data/x.cpp", "#include <fstream>"],
    ["a sine of the C++ library", "engine/flight/x.cpp", "double a = std::sin(b);"],
    ["a sine of the C library", "engine/flight/x.cpp", "double a = 2 * ::sin(b);"],
    ["a power without a namespace", "engine/flight/x.cpp", "return pow(a, b);"],
    ["a sort that is not stable", "engine/review/x.cpp", "std::sort(a.begin(), a.end());"],
    ["a file that asks which build it is in", "engine/base/x.cpp", "#ifdef __EMSCRIPTEN__"],
    ["a screen that asks which build it is in", "ui/screens/x.cpp", "#if defined(__EMSCRIPTEN__)"],
    ["a folder that nobody has named", "engine/misc/x.cpp", ""],
];
for (const [what, path, text] of forbidden) {
    test(`the rules catch ${what}`, () => assert.equal(breaches(path, `// a comment\n${text}\n`).length, 1));
}

const allowed = [
    ["musl's sine", "engine/flight/x.cpp", "double a = exact::sin(b);"],
    ["a member function called log", "engine/flight/x.cpp", "report.log(b);"],
    ["a forbidden word in a comment or a string", "engine/flight/x.cpp", '// std::sin(x)\nconst char* a = "std::sort(x)"; /* #ifdef __EMSCRIPTEN__ */'],
    ["a square root, which is exact everywhere", "engine/flight/x.cpp", "double a = std::sqrt(b);"],
    ["printing in the command line", "engine/cli/x.cpp", "#include <iostream>"],
    ["the choice of a build in main", "ui/platform/main.cpp", "#ifdef __EMSCRIPTEN__"],
    ["a screen that draws its view", "ui/screens/x.cpp", '#include <imgui.h>\n#include "ui/view.h"\n#include "ui/widgets/dial.h"'],
];
for (const [what, path, text] of allowed) {
    test(`the rules allow ${what}`, () => assert.deepEqual(breaches(path, text), []));
}

test("every source file belongs to a part", () => assert.deepEqual(sources.filter((path) => partOf(path) === undefined), []));
