#include "ui/about_view.h"

#include <array>
#include <string_view>

#include "ui/format.h"

namespace slopewise {
namespace {

// The parts that ship, as web/CMakeLists.txt gathers their licences.
constexpr std::array<std::string_view, 7> made_of{
    "Slopewise: MIT",
    "Dear ImGui: MIT",
    "SDL2: zlib",
    "JSON for Modern C++: MIT",
    "B612, the typeface: SIL Open Font Licence 1.1",
    "musl, the C library: MIT",
    "Emscripten and its C++ library: MIT, and Apache 2.0 with LLVM exceptions"};

std::string counted(std::size_t count, const char* one, const char* many) {
    return (count == 0 ? std::string("no") : std::to_string(count)) + " " + (count == 1 ? one : many);
}

std::string attempts_words(const Logbook& logbook) {
    if (logbook.standing == Logbook::Standing::refused) return "not kept: " + logbook.trouble;
    const std::size_t unkept = logbook.unkept.size();
    std::string words = counted(logbook.rows.size(), "attempt", "attempts");
    if (unkept > 0) words += ", " + std::to_string(unkept) + " of them only until this window closes";
    return words;
}

}  // namespace

void about_view(const App& app, AboutView& view) {
    const ProgramDesk& desk = app.program;
    view.where = desk.where;
    view.kept = {
        {"Logbook", "each approach with its controls, its track and the student's name or code",
         attempts_words(app.logbook)},
        {"Settings", "the screen, the keys, the controllers, the school, the student's name", "kept"},
        {"Own lessons", "your own, and the draft of one being written",
         counted(app.lessons.own.size(), "lesson", "lessons")},
        {"Drills", "the result of each run", counted(app.drills.kept.size(), "result", "results")},
        {"Class", "own question sets and the hands that were counted, without names",
         counted(app.room.ask.own.size(), "set", "sets") + ", " +
             counted(app.room.ask.tally.size(), "answered question", "answered questions")}};
    view.asks_to_erase = desk.asks_to_erase;
    view.update_waits = desk.update_waits;
    view.news = desk.news;
    view.parts.assign(made_of.begin(), made_of.end());
}

std::string about_text(const View& view) {
    const AboutView& about = view.about;
    std::string text = "About Slopewise. Version " + view.version + "\n";
    for (const std::string& line : view.caution) text += line + "\n";
    if (about.update_waits) text += "A newer version is here.\n";
    text += "Kept in " + about.where + ", and nowhere else:\n";
    for (const AboutView::Kept& kept : about.kept)
        text += kept.what + ": " + kept.about + ": " + kept.much + "\n";
    if (about.asks_to_erase) text += "Erase all of it for good?\n";
    if (!about.news.empty()) text += about.news + "\n";
    for (const std::string& part : about.parts) text += part + "\n";
    return text;
}

}  // namespace slopewise
