// Which folder may include what, and what must not appear where: the rules of DEVELOPERS.md as a table, and the
// reading of the sources that holds them against it.

// Each part of the program, and the parts whose headers it may include besides its own. A part is a folder, or
// some files of ui/, where the screens stand between two layers.
const mayUse = {
    "engine/base": [],
    "engine/sources": [],
    "engine/world": ["engine/base"],
    "engine/flight": ["engine/base", "engine/world"],
    "engine/lesson": ["engine/base", "engine/world", "engine/flight"],
    "engine/record": ["engine/base", "engine/world", "engine/flight", "engine/lesson"],
    "engine/review": ["engine/base", "engine/world", "engine/flight", "engine/lesson"],
    "engine/success": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/review"],
    "engine/review/diagnosis": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/review"],
    "engine/debrief": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis"],
    "engine/progress": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief"],
    "engine/drill": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/review/diagnosis", "engine/debrief", "engine/progress"],
    "engine/question": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill"],
    "engine/station": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review"],
    "engine/board": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill", "engine/station"],
    "engine/data": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill", "engine/question"],
    "engine/logbook": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill", "engine/data", "engine/question"],
    "engine/evidence": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill", "engine/data", "engine/logbook"],
    "engine/handout": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/review", "engine/debrief", "engine/drill", "engine/sources"],
    "engine/lockstep": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/data", "engine/logbook"],
    "engine/cli": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/drill", "engine/data", "engine/logbook", "engine/evidence", "engine/handout", "assets", "engine/question"],
    "engine/help": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/review/diagnosis", "engine/debrief", "engine/progress"],
    "engine/share": ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/question", "engine/data"],
    assets: [],
    "ui/view": [],
    "ui/theme": ["ui/view"],
    "ui/widgets": ["ui/view", "ui/theme"],
    "ui/scene": ["engine/base", "engine/world", "ui/view", "ui/theme"],
    "ui/screens": ["ui/view", "ui/theme", "ui/widgets", "ui/scene"],
    ui: ["engine/base", "engine/world", "engine/flight", "engine/lesson", "engine/record", "engine/review", "engine/success", "engine/review/diagnosis", "engine/debrief", "engine/progress", "engine/help", "engine/drill", "engine/data", "engine/logbook", "engine/evidence", "engine/handout", "engine/share", "engine/sources", "assets", "ui/view", "ui/screens", "engine/board", "engine/station", "engine/lockstep", "engine/question"],
    "ui/platform": ["engine/base", "engine/data", "assets", "ui", "ui/view", "ui/theme"],
    web: ["ui", "ui/view", "ui/platform"],
};

// Libraries of others, and the only parts that may see each.
const drawers = ["ui/theme", "ui/widgets", "ui/scene", "ui/screens", "ui/platform"];
const libraries = [
    { header: /^nlohmann\//, name: "the JSON reader", parts: ["engine/data", "engine/cli"] },
    { header: /^imgui(_internal)?\.h$/, name: "Dear ImGui", parts: drawers },
    { header: /^(imgui_impl_|GLFW\/|GLES|GL\/)/, name: "the window and drawing", parts: ["ui/platform"] },
    { header: /^SDL/, name: "SDL", parts: ["ui/platform"] },
    { header: /^emscripten/, name: "Emscripten", parts: ["ui/platform", "web"] },
];

// The engine has no clock, no file, no thread, no printing and no chance; the command line may read and print.
const outsideWorld = ["iostream", "fstream", "filesystem", "print"];
const neverInEngine = ["random", "thread", "mutex", "atomic", "future", "chrono", "ctime", "time.h", "execution", "unordered_map", "unordered_set", "format", "locale"];

const transcendental = ["sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "asinh", "acosh", "atanh", "exp", "exp2", "expm1", "log", "log2", "log10", "log1p", "pow", "cbrt", "hypot", "erf", "erfc", "tgamma", "lgamma"];
// A bare call or one in std::; `exact::sin(`, `musl_sin(` and `.log(` are something else.
const transcendentalCall = new RegExp(`(?:^|[^\\w:.>])(?:std::|::)?(?:${transcendental.join("|")})f?\\s*\\(`);
const differsBetweenBuilds = [
    { text: transcendentalCall, what: "calls a mathematical function that differs between C libraries: use base/exact_math.h" },
    { text: /\bstd::(ranges::)?(sort|nth_element|partial_sort)\b/, what: "sorts in an order of equals that differs between libraries: use std::stable_sort" },
    { text: /\bstd::hash\b/, what: "uses std::hash, which differs between libraries: use base/hash.h" },
    { text: /\b(float_control|fast_math|FP_CONTRACT)\b/, what: "changes how the compiler treats floating point" },
];

const mainAndWindow = ["ui/platform/main.cpp", "ui/platform/window.cpp"];

// The part that a file belongs to, by its path from the top folder.
export function partOf(path) {
    if (/^ui\/(view|view_replay|view_logbook|view_lessons|view_sources|view_drills|view_syllabus|view_class|view_ask|view_station|view_boards|view_class_table|view_keys|view_pads|fingers|key_meanings|view_controllers|view_about|device_wishes|scene_view|room_shown|class_wishes|action|display|debrief_view|labelled_value)\.h$/.test(path)) return "ui/view";
    if (/^ui\/(theme|palette)\.(h|cpp)$/.test(path)) return "ui/theme";
    const folder = path.split("/").slice(0, -1).join("/");
    return folder in mayUse ? folder : undefined;
}

// The source without comments and the inside of strings, line for line.
function codeOnly(text) {
    return text.replace(/\/\/[^\n]*|\/\*[\s\S]*?\*\/|"(?:\\.|[^"\\\n])*"/g, (found) => (found[0] === '"' ? '""' : found.replace(/[^\n]/g, " ")));
}

// What an include names: a file of ours by its path from the top folder, or another's header.
function resolve(include, quoted) {
    if (!quoted) return { library: include };
    if (/^(ui|assets|web|engine)\//.test(include)) return { ours: include };
    if (`engine/${include.split("/")[0]}` in mayUse) return { ours: `engine/${include}` };
    return { library: include };
}

// Every breach of the rules in one file, as sentences.
export function breaches(path, text) {
    const part = partOf(path);
    if (part === undefined) return [`${path}: is in a folder that the rules in tests/architecture/rules.mjs do not know`];
    const found = [];
    const inEngine = part.startsWith("engine/");
    const code = codeOnly(text).split("\n");
    text.split("\n").forEach((line, index) => {
        const at = `${path}:${index + 1}`;
        const include = code[index].startsWith("#include") && line.match(/^#include\s+(["<])([^">]+)/);
        if (include) {
            const { ours, library } = resolve(include[2], include[1] === '"');
            if (ours !== undefined) {
                const other = partOf(ours);
                if (other === undefined) found.push(`${at}: includes ${ours}, which is in no part that the rules know`);
                else if (other !== part && !mayUse[part].includes(other)) found.push(`${at}: ${part} may not include ${other} (${include[2]})`);
                if (include[2].startsWith("engine/")) found.push(`${at}: write the engine's headers as "${include[2].slice("engine/".length)}"`);
            } else {
                for (const { header, name, parts } of libraries) {
                    if (header.test(library) && !parts.includes(part)) found.push(`${at}: ${part} may not see ${name} (${library})`);
                }
                if (inEngine && neverInEngine.includes(library)) found.push(`${at}: the engine may not include <${library}>`);
                if (inEngine && part !== "engine/cli" && outsideWorld.includes(library)) found.push(`${at}: the engine touches no file and prints nothing: <${library}>`);
            }
        }
        if (inEngine && !path.startsWith("engine/base/exact_math")) {
            for (const { text: pattern, what } of differsBetweenBuilds) if (pattern.test(code[index])) found.push(`${at}: ${what}`);
        }
        if (/__EMSCRIPTEN__/.test(code[index]) && !mainAndWindow.includes(path)) {
            found.push(`${at}: only ${mainAndWindow.join(" and ")} may ask which build this is`);
        }
    });
    return found;
}
