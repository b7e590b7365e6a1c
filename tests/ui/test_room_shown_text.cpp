// What a class is shown, written and read: all of it comes through, and what is none is refused.
#include "tests/check.h"
#include "ui/link_message.h"
#include "ui/room_shown_text.h"

using namespace slopewise;

namespace {

RoomShown everything() {
    RoomShown shown;
    shown.black = shown.side_profile = shown.ghost = true;
    shown.lights = shown.dials = shown.names = false;
    shown.covered.airspeed = shown.covered.stall_warning = true;
    shown.board = {BoardShown::Kind::explain, 3, true};
    shown.ask = {AskShown::Stage::revealed,
                 "2 of 6",
                 "High or low? \"Fast\" \u2013 or slow?\n",
                 {"High, fast", "High, slow", "Low"},
                 {3, 0, 12},
                 {1, 1, 13},
                 true,
                 2,
                 "0.4\u00b0 below the path"};
    for (int line = 0; line < 3; ++line) {
        shown.ink.emplace_back();
        for (int i = 0; i < 40; ++i)
            shown.ink.back().points.push_back(
                {static_cast<float>(i) / 39.1f, 0.1f / static_cast<float>(1 + i * i + line)});
    }
    shown.pointer = {0.123456789f, 1e-6f};
    shown.pointing = true;
    return shown;
}

std::vector<Problem> problems_of(const std::string& text) { return read_room_shown(text, "x").problems; }

}  // namespace

TEST_CASE("room shown: everything comes through its text as it was, to the last bit of a point") {
    for (const RoomShown& shown : {RoomShown{}, everything()}) {
        const Result<RoomShown> read = read_room_shown(room_shown_text(shown), "x");
        REQUIRE(read.ok());
        CHECK(*read.value == shown);
    }
    RoomShown second_not_begun = everything();
    second_not_begun.ask.second.clear();
    const Result<RoomShown> read = read_room_shown(room_shown_text(second_not_begun), "x");
    REQUIRE(read.ok());
    CHECK(*read.value == second_not_begun);
}

TEST_CASE("room shown: what is too much is cut when it is written, so that it can always be read") {
    RoomShown shown = everything();
    shown.ask.question = std::string(RoomLimits::words - 1, 'x') + "\u00b0\u00b0";
    shown.ask.right = 77;
    shown.ask.first = {1, 2};  // of another question
    shown.ask.second = {-4, 5000, 1};
    shown.ask.choices[1] = "";
    shown.board.page = -2;
    shown.pointer = {1e30f, std::nanf("")};
    shown.ink.assign(300, {std::vector<InkPoint>(5000, InkPoint{0.5f, 0.5f})});
    const Result<RoomShown> read = read_room_shown(room_shown_text(shown), "x");
    REQUIRE(read.ok());
    const RoomShown& there = *read.value;
    CHECK(there.ask.question == std::string(RoomLimits::words - 1, 'x'));
    CHECK(there.ask.right == 2);
    CHECK(there.ask.first.empty());
    CHECK(there.ask.second == std::vector<int>{0, 999, 1});
    CHECK(there.ask.choices[1] == " ");
    CHECK(there.board.page == 0);
    CHECK(there.pointer == InkPoint{2, 0});
    REQUIRE(there.ink.size() == RoomLimits::ink_lines);
    std::size_t points = 0;
    for (const InkLine& line : there.ink) points += line.points.size();
    CHECK(points == RoomLimits::ink_points);
    CHECK(there.ink.front().points.size() == RoomLimits::line_points);
}

TEST_CASE("room shown: a text that is none is refused with its problems, and never more") {
    for (const char* bad : {"",
                            "[]",
                            "{",
                            "null",
                            R"({"blak":true})",
                            R"({"black":1})",
                            R"({"covered":["horizon"]})",
                            R"({"board":{"kind":"film","page":0}})",
                            R"({"board":{"kind":"stills","page":100}})",
                            R"({"board":{"kind":"stills","page":0.5}})",
                            R"({"ask":{"stage":"later","right":-1}})",
                            R"({"ask":{"stage":"asked","choices":["a","b"],"first":[1],"right":-1}})",
                            R"({"ask":{"stage":"asked","choices":["a","b"],"first":[1,2.5],"right":-1}})",
                            R"({"ask":{"stage":"asked","choices":["a","b"],"first":[1,-2],"right":-1}})",
                            R"({"ask":{"stage":"asked","choices":["a","b"],"right":2}})",
                            R"({"ask":{"stage":"asked","choices":[""],"right":-1}})",
                            R"({"ink":[[0.5]]})",
                            R"({"ink":[[0.5,9]]})",
                            R"({"ink":[["a","b"]]})",
                            R"({"ink":[0.5,0.5]})",
                            R"({"ink":{}})",
                            R"({"pointer":[0.5]})",
                            R"({"pointer":[0.5,1e300]})"})
        CHECK_MESSAGE(!problems_of(bad).empty(), bad);
    std::string lines = "{\"ink\":[[]";
    for (int i = 0; i < 200; ++i) lines += ",[]";
    CHECK(problems_of(lines + "]}").size() == 1);
    CHECK(problems_of("{\"ask\":{\"stage\":\"asked\",\"right\":-1,\"question\":\"" +
                      std::string(RoomLimits::words + 1, 'x') + "\"}}")
              .size() == 1);
    CHECK(problems_of("{" + std::string(RoomLimits::bytes, ' ') + "}").size() == 1);
}

TEST_CASE("link message: every part comes through, and what is none is refused") {
    LinkMessage message;
    message.kind = LinkMessage::Kind::orphan;
    message.from = "0123456789abcdef";
    message.to = "fedcba9876543210";
    message.run = 7;
    message.since = 119;
    message.frozen = false;
    message.recording = "{\"a\":\n1}";
    message.rows = "c 0 1 2 3 0 0\nt 2\n";
    message.room = room_shown_text(RoomShown{});
    message.settings = "s";
    message.kept = "k";
    message.hands = "power both";
    message.words = "1.2 NM, frozen";
    message.pair = "abcd1234";
    message.pointer = InkPoint{0.1f, 0.7f};
    message.pointing = true;
    const Result<LinkMessage> read = read_link_message(link_message_text(message));
    REQUIRE(read.ok());
    CHECK(link_message_text(*read.value) == link_message_text(message));
    CHECK(read.value->kind == message.kind);
    CHECK(read.value->rows == message.rows);
    CHECK(read.value->recording == message.recording);
    CHECK(read.value->pointer == message.pointer);
    for (const char* bad :
         {"", "{}", "7", R"({"class_link":2,"kind":"alive","from":"0123456789abcdef","run":0})",
          R"({"class_link":1,"kind":"dance","from":"0123456789abcdef","run":0})",
          R"({"class_link":1,"kind":"alive","from":"x","run":0})",
          R"({"class_link":1,"kind":"alive","from":"0123456789ABCDEF","run":0})",
          R"({"class_link":1,"kind":"alive","from":"0123456789abcdef","run":-1})",
          R"({"class_link":1,"kind":"alive","from":"0123456789abcdef","run":0,"more":1})",
          R"({"class_link":1,"kind":"orphan","from":"0123456789abcdef","run":0,"pair":"../../x"})",
          R"({"class_link":1,"kind":"frame","from":"0123456789abcdef","run":0,"pointer":[0,77]})"})
        CHECK_MESSAGE(!read_link_message(bad).ok(), bad);
}
