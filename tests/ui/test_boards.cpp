// The boards through the program: what the class is told before the reveal and after it, and the ink.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "base/units.h"
#include "board/runway_shape.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/board_makers.h"
#include "ui/boards_view.h"
#include "ui/class_views.h"
#include "ui/ink_lines.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Kind = BoardShown::Kind;
using Wish = DoWithBoard::Wish;

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

struct Class {
    TestHost host;
    App app = make_app(shipped(), host);
    View view;

    Class() { apply(app, OpenClassRoom{}, host); }
    RoomShown& shown() { return app.room.shown; }
    const BoardsView& board(Kind kind, int page, bool labels) {
        shown().board = {kind, page, labels};
        return now();
    }
    const BoardsView& now() {
        class_picture_view(app, view);
        return view.class_picture.boards;
    }
    std::string text() {
        now();
        std::string words;
        boards_text(view.class_picture, words);
        return words;
    }
    void wish(Wish what, int page = 0) { apply(app, DoWithBoard{what, page}, host); }
    void ink(MoveInk::Step step, float x, float y) { apply(app, MoveInk{step, {x, y}}, host); }
    void frame_at(double wall_s) { app.hands.last_wall_s = wall_s; }
};

}  // namespace

TEST_CASE("boards: one is shown over a frozen flight, its labels hidden, the ink of before wiped") {
    Class c;
    c.app.flight->paused = false;
    begin_ink(c.shown(), {0.5f, 0.5f});
    c.wish(Wish::show_stills, 2);
    CHECK(c.shown().board == BoardShown{Kind::stills, 2, false});
    CHECK(c.app.flight->paused);
    CHECK(c.shown().ink.empty());
    c.wish(Wish::reveal_labels);
    CHECK(c.shown().board.labels);
    c.wish(Wish::show_explain, 1);
    CHECK(c.shown().board == BoardShown{Kind::explain, 1, false});
    for (const int none : {-1, board_pages(Kind::explain), 1000}) {
        c.wish(Wish::show_explain, none);
        CHECK(c.shown().board.page == 1);
    }
    c.wish(Wish::show_flight);
    CHECK(c.shown().board == BoardShown{});
    c.wish(Wish::reveal_labels);  // there is nothing to reveal
    CHECK_FALSE(c.shown().board.labels);
}

TEST_CASE("boards: the key Y reveals, and hides again") {
    Class c;
    c.wish(Wish::show_stills, 0);
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(Key::y)] = true;
    for (const bool labels : {true, false}) {
        for (const Action& action : read_class_keys(raw)) apply(c.app, action, c.host);
        CHECK(c.shown().board.labels == labels);
    }
}

TEST_CASE("boards: no line tells before the reveal what is to be found out") {
    Class c;
    for (const Kind kind : {Kind::stills, Kind::explain}) {
        for (int page = 0; page < board_pages(kind); ++page) {
            c.board(kind, page, false);
            const std::string hidden = c.text();
            const BoardsView before = c.now();
            CHECK_FALSE(before.title.empty());
            CHECK_FALSE(before.answer.empty());
            CHECK(before.sentences.size() <= 3);
            CHECK(before.motion.still_words.empty());
            for (const auto& one : before.stills) {
                CHECK(one.label.empty());
                CHECK(one.scene.lamp_count == 0);
                CHECK(has(hidden, one.mark));
            }
            for (const auto& one : before.heights) CHECK(one.height.empty());
            for (const auto& one : before.headwinds) CHECK((one.sink + one.power + one.ground_speed).empty());
            for (const auto& one : before.outlines) CHECK(one.trap.empty());

            const BoardsView& after = c.board(kind, page, true);
            const std::string told = c.text();
            CAPTURE(hidden);
            CAPTURE(told);
            CHECK(after.sentences.size() <= 3);
            CHECK(told.size() > hidden.size());
            const auto only_after = [&](const std::string& words) {
                CHECK_FALSE(words.empty());
                CHECK(has(told, words));
                CHECK_FALSE(has(hidden, words));
            };
            for (const auto& one : after.stills) {
                only_after(one.mark + ": " + one.label);
                CHECK(one.scene.lamp_count == 4);
            }
            for (const auto& one : after.heights) only_after(one.height);
            for (const auto& one : after.headwinds)
                only_after("sink " + one.sink + " ft/min, power " + one.power);
            for (const auto& one : after.outlines) only_after(one.trap);
        }
    }
}

TEST_CASE("boards: what the stills say of the trap is the figure of the geometry") {
    Class c;
    const Scenario& flown = c.app.flight->scenario;
    const Runway usual = standard_runway(flown.surroundings.runway);
    const auto words = [&](double width_m, double slope) {
        Runway runway = usual;
        runway.width_m = width_m;
        runway.slope = slope;
        return off_path_words(path_of_usual_shape_rad(runway, usual, still_distance_m),
                              usual.lights.nominal_path_rad);
    };
    c.board(Kind::stills, static_cast<int>(StillSet::widths), true);
    for (const double width_m : {18.0, 45.0}) CHECK(has(c.text(), words(width_m, 0.0)));
    c.board(Kind::stills, static_cast<int>(StillSet::slopes), true);
    for (const double slope : {0.02, -0.02}) CHECK(has(c.text(), words(30.0, slope)));
    c.board(Kind::explain, static_cast<int>(ExplainPage::slope), true);
    for (const double slope : {0.02, -0.02}) CHECK(has(c.text(), words(30.0, slope)));
    // 1 NM is 6,076 ft; tan 3 less tan 2 degrees of it (closed form).
    CHECK(off_path_words(rad_from_deg(2.0), rad_from_deg(3.0)) == "1.0\u00b0 (106 ft at 1 NM) low");
    CHECK(off_path_words(rad_from_deg(3.5), rad_from_deg(3.0)) == "0.5\u00b0 (53 ft at 1 NM) high");
}

// 318 ft a mile at 3 degrees: 6,076 ft by the tangent (our list of numbers, closed form).
TEST_CASE("boards: the heights of the path from the side are those of its angle") {
    Class c;
    const BoardsView& board = c.board(Kind::explain, static_cast<int>(ExplainPage::side), true);
    REQUIRE(board.heights.size() == 4);
    CHECK(board.heights[0].height == "955 ft");
    CHECK(board.heights[1].height == "637 ft");
    CHECK(board.heights[2].height == "318 ft");
    CHECK(board.heights[3].height == "159 ft");
    CHECK(has(c.text(), "Every mile is 318 ft."));
}

TEST_CASE("boards: the point that stands still is where the flight goes, in the picture that is frozen") {
    Class c;
    FlightState& flight = c.app.flight->attempt.flight;
    flight.vz_mps = -flight.vx_mps * std::tan(rad_from_deg(4.0));
    const BoardsView& board = c.board(Kind::explain, static_cast<int>(ExplainPage::motion), true);
    CHECK_NEAR(deg_from_rad(board.motion.still.up_rad), -4.0, 1e-9);
    CHECK(board.motion.still.right_rad == 0.0);
    CHECK(has(c.text(), "short"));
    const double before_m = board.motion.scene.camera.x_m;
    flight.x_m += 500.0;  // no new edition: the flight alone has moved
    CHECK_NEAR(c.now().motion.scene.camera.x_m, before_m + 500.0, 1e-9);
    // A climb comes down nowhere: from one mile, on the path.
    flight.vz_mps = 2.0;
    const BoardsView& climbing = c.now();
    CHECK_NEAR(deg_from_rad(climbing.motion.still.up_rad), -3.0, 1e-9);
    CHECK(has(c.text(), "From 1 NM"));
    CHECK(has(c.text(), "at the aim point"));
}

TEST_CASE("boards: both windows make the same of what is shown, whatever else they hold") {
    Class leads;
    Class follows;
    follows.app.settings.student = "Somebody else";
    follows.app.screen = Screen::class_window;
    for (const Kind kind : {Kind::stills, Kind::explain}) {
        for (int page = 0; page < board_pages(kind); ++page) {
            leads.board(kind, page, true);
            follows.shown() = leads.shown();
            CHECK(follows.text() == leads.text());
            const BoardsView& a = leads.now();
            const BoardsView& b = follows.now();
            REQUIRE(a.stills.size() == b.stills.size());
            for (std::size_t i = 0; i < a.stills.size(); ++i) {
                CHECK(a.stills[i].scene.camera.z_m == b.stills[i].scene.camera.z_m);
                CHECK(a.stills[i].scene.runway == b.stills[i].scene.runway);
            }
        }
    }
}

TEST_CASE("ink: drawn when frozen or over a board, not on a moving or a black picture") {
    Class c;
    const auto stroke = [&] {
        c.ink(MoveInk::Step::begin, 0.1f, 0.1f);
        c.ink(MoveInk::Step::draw, 0.2f, 0.1f);
        c.ink(MoveInk::Step::end, 0.2f, 0.1f);
        c.ink(MoveInk::Step::draw, 0.9f, 0.9f);  // let go: nothing more
    };
    stroke();
    REQUIRE(c.shown().ink.size() == 1);
    CHECK(c.shown().ink[0].points == std::vector<InkPoint>{{0.1f, 0.1f}, {0.2f, 0.1f}});
    c.app.flight->paused = false;
    stroke();
    CHECK(c.shown().ink.size() == 1);
    c.app.flight->paused = true;
    c.shown().black = true;
    stroke();
    CHECK(c.shown().ink.size() == 1);
    c.shown().black = false;
    stroke();
    CHECK(c.shown().ink.size() == 2);
    c.wish(Wish::take_back);
    CHECK(c.shown().ink.size() == 1);
    c.wish(Wish::wipe);
    CHECK(c.shown().ink.empty());
    c.wish(Wish::take_back);
    CHECK(c.shown().ink.empty());
}

TEST_CASE("ink: however long one draws, lines and points stay within their limits, and a line whole") {
    RoomShown shown;
    draw_ink_to(shown, {0.5f, 0.5f});  // nothing was begun
    CHECK(shown.ink.empty());
    begin_ink(shown, {0, 0});
    draw_ink_to(shown, {0.0005f, 0.0005f});
    CHECK(shown.ink[0].points.size() == 1);  // nearer than a step
    InkPoint last;
    for (int i = 1; i <= 5000; ++i) {
        const float turn = 0.02f * static_cast<float>(i);
        last = {0.5f + 0.4f * std::cos(turn), 0.5f + 0.4f * std::sin(turn)};
        draw_ink_to(shown, last);
        REQUIRE(shown.ink[0].points.size() <= most_ink_points);
    }
    CHECK(shown.ink[0].points.size() > most_ink_points / 2 - 1);
    CHECK(shown.ink[0].points.front() == InkPoint{0, 0});
    CHECK(shown.ink[0].points.back() == last);
    for (std::size_t i = 0; i < 2 * most_ink_lines; ++i) begin_ink(shown, {0.25f, 0.25f});
    CHECK(shown.ink.size() == most_ink_lines);
    CHECK(shown.ink.front().points.size() == 1);  // the oldest went
    begin_ink(shown, {1e9f, -1e9f});
    CHECK(std::abs(shown.ink.back().points[0].x) <= 3);
    CHECK(std::abs(shown.ink.back().points[0].y) <= 3);
    wipe_ink(shown);
    CHECK(shown.ink.empty());
}

TEST_CASE("pointer: it is shown while it moves and two seconds after") {
    Class c;
    const auto points = [&](double wall_s, float x) {
        c.frame_at(wall_s);
        c.ink(MoveInk::Step::point, x, 0.5f);
        return c.shown().pointing;
    };
    CHECK(points(100.0, 0.1f));
    CHECK(points(101.9, 0.1f));
    CHECK_FALSE(points(102.1, 0.1f));
    CHECK(points(105.0, 0.2f));
    c.ink(MoveInk::Step::leave, 0.2f, 0.5f);
    CHECK_FALSE(c.shown().pointing);
}
