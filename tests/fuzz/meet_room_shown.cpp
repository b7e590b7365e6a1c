#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "ui/room_shown_text.h"

namespace slopewise::test {

void meet_room_shown(std::string_view text) {
    const Result<RoomShown> read = read_room_shown(text, "x");
    if (!demand_answer(read)) return;
    const RoomShown& shown = *read.value;
    const std::string written = room_shown_text(shown);
    const Result<RoomShown> again = read_room_shown(written, "x");
    demand(again.ok(), "what is shown is read by the other window: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(room_shown_text(*again.value) == written, "what is shown is told the same again");
    demand(shown.ask.right < static_cast<int>(shown.ask.choices.size()) &&
               (shown.ask.first.empty() || shown.ask.first.size() == shown.ask.choices.size()) &&
               (shown.ask.second.empty() || shown.ask.second.size() == shown.ask.choices.size()),
           "hands are counted of the choices");
}

std::vector<std::string> seeds_of_room_shown() {
    RoomShown shown;
    std::vector<std::string> seeds{room_shown_text(shown)};
    shown.black = shown.ghost = true;
    shown.covered.airspeed = true;
    shown.board = {BoardShown::Kind::explain, 3, true};
    shown.ask = {AskShown::Stage::revealed,
                 "2 of 6",
                 "High or low? \"Fast\" or slow?\n",
                 {"High, fast", "High, slow", "Low"},
                 {3, 0, 12},
                 {1, 1, 13},
                 true,
                 2,
                 "0.4\u00b0 below the path"};
    shown.ink = {{{{0.1f, 0.2f}, {0.3f, 0.4f}}}, {{{0.5f, 1e-6f}}}};
    shown.pointer = {0.123456789f, 1e-6f};
    seeds.push_back(room_shown_text(shown));
    return seeds;
}

}  // namespace slopewise::test
