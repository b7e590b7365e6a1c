// The boards of a class and the ink over them, drawn and pressed with no window.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>

#include "tests/check.h"
#include "tests/screens/stage.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/boards_view.h"
#include "ui/class_views.h"
#include "ui/drive_class.h"
#include "ui/scene/projection.h"
#include "ui/screens/boards.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Kind = BoardShown::Kind;

constexpr std::array<ImVec2, 5> sizes{{{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}}};

// A class before a stage.
struct Lecture {
    TestHost host;
    App app = make_app(shipped(), host);
    Stage stage{{1280, 720}};

    Lecture() {
        apply(app, OpenClassRoom{}, host);
        app.room.panel = ClassRoomView::Panel::show;
        look();
    }
    void look() {
        class_picture_view(app, stage.view);
        class_room_view(app, stage.view);
    }
    void show(Kind kind, int page, bool labels) {
        app.room.shown.board = {kind, page, labels};
        look();
    }
    void apply_all(const Actions& actions) {
        for (const Action& action : actions) apply(app, action, host);
        look();
    }
    // Drags from one place to another over some frames; what was asked for.
    Actions drag(ImVec2 from, ImVec2 to, int frames = 5) {
        Actions all;
        const auto frame = [&] {
            for (const Action& action : stage.draw(Screen::class_room)) all.push_back(action);
        };
        stage.move_mouse(from);
        frame();
        stage.hold_mouse(true);
        frame();
        for (int i = 1; i <= frames; ++i) {
            const float share = static_cast<float>(i) / static_cast<float>(frames);
            stage.move_mouse({from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)});
            frame();
        }
        stage.hold_mouse(false);
        frame();
        return all;
    }
};

std::vector<MoveInk> ink_of(const Actions& actions, MoveInk::Step step) {
    std::vector<MoveInk> found;
    for (const Action& action : actions) {
        const auto* ink = wish_in<MoveInk>(action);
        if (ink != nullptr && ink->step == step) found.push_back(*ink);
    }
    return found;
}

// What of a list's vertices spans.
Box drawn_by(auto&& draw) {
    ImDrawList list(ImGui::GetDrawListSharedData());
    list._ResetForNewFrame();
    list.PushClipRectFullScreen();
    list.PushTextureID(ImGui::GetIO().Fonts->TexID);
    draw(&list);
    Box box{1e9f, 1e9f, -1e9f, -1e9f};
    for (const ImDrawVert& v : list.VtxBuffer)
        box = {std::min(box.left, v.pos.x), std::min(box.top, v.pos.y), std::max(box.right, v.pos.x),
               std::max(box.bottom, v.pos.y)};
    return box;
}

}  // namespace

TEST_CASE("boards: in every look and size nothing lies over anything, before the reveal and after it") {
    Lecture lecture;
    for (const ImVec2 size : sizes) {
        lecture.stage.resize(size);
        for (const Look look : {Look::standard, Look::high_contrast, Look::night}) {
            lecture.app.settings.display.look = look;
            for (const Kind kind : {Kind::stills, Kind::explain}) {
                for (int page = 0; page < board_pages(kind); ++page) {
                    for (const bool labels : {false, true}) {
                        lecture.show(kind, page, labels);
                        for (const Place& place : {Place{Screen::class_window, "class window"},
                                                   Place{Screen::class_room, "class room"}}) {
                            lecture.stage.draw(place.screen);
                            lecture.stage.draw(place.screen);
                            CAPTURE(size_words(size));
                            CAPTURE(place.window);
                            CAPTURE(lecture.stage.view.class_picture.boards.title);
                            CAPTURE(labels);
                            const std::vector<Box> glyphs = lecture.stage.glyphs(place.window);
                            CHECK(glyphs.size() > 30);  // a title and a sentence at least
                            CHECK(words_over_words(glyphs) == 0);
                            CHECK(lecture.stage.drawn().lies_in(lecture.stage.display()));
                        }
                    }
                }
            }
        }
    }
}

TEST_CASE("boards: every set and page can be pressed, and revealed") {
    Lecture lecture;
    Stage& stage = lecture.stage;
    const Actions stills = press(stage, Screen::class_room, "class room", "Stills", "fills");
    REQUIRE(find<DoWithBoard>(stills) != nullptr);
    CHECK(find<DoWithBoard>(stills)->wish == DoWithBoard::Wish::show_stills);
    for (const Kind kind : {Kind::stills, Kind::explain}) {
        lecture.show(kind, 0, false);
        const BoardsView& board = stage.view.class_picture.boards;
        const std::vector<std::string> names = kind == Kind::stills ? board.still_sets : board.pages;
        REQUIRE(static_cast<int>(names.size()) == board_pages(kind));
        for (std::size_t i = 0; i < names.size(); ++i) {
            CAPTURE(names[i]);
            const std::string row = names[i - i % 2];
            const Actions chosen =
                press(stage, Screen::class_room, "class room", names[i].c_str(), row.c_str());
            REQUIRE(find<DoWithBoard>(chosen) != nullptr);
            CHECK(find<DoWithBoard>(chosen)->page == static_cast<int>(i));
        }
        const Actions revealed = press(stage, Screen::class_room, "class room", "Reveal");
        REQUIRE(find<DoWithBoard>(revealed) != nullptr);
        CHECK(find<DoWithBoard>(revealed)->wish == DoWithBoard::Wish::reveal_labels);
    }
}

TEST_CASE("ink: a drag over the frozen picture draws where the hand went, and over the dials nothing") {
    Lecture lecture;
    const auto picture = lecture.stage.place_of(Screen::class_room, "class room", "picture");
    REQUIRE(picture.has_value());
    const ImVec2 from{picture->left + 100, picture->top + 80}, to{picture->left + 300, picture->top + 200};
    const Actions drawn = lecture.drag(from, to);
    REQUIRE(ink_of(drawn, MoveInk::Step::begin).size() == 1);
    CHECK(ink_of(drawn, MoveInk::Step::draw).size() >= 5);
    CHECK(ink_of(drawn, MoveInk::Step::end).size() == 1);
    // Shares of a canvas as wide as the view and half as high about the middle of the view's frame, which has
    // three quarters of the window whatever of it the dials cover.
    const InkPoint begun = ink_of(drawn, MoveInk::Step::begin).front().at;
    const float width = picture->right - picture->left;
    CHECK_NEAR(begun.x, 100 / width, 0.003);  // of two pixels: the view's edges were felt for
    CHECK_NEAR(begun.y, 0.5 + (from.y - 0.375 * 720) / (0.5 * width), 0.006);
    lecture.apply_all(drawn);
    REQUIRE(lecture.app.room.shown.ink.size() == 1);
    CHECK(lecture.app.room.shown.ink.front().points.size() >= 5);

    const ImVec2 dials{picture->middle().x, picture->bottom + 60};
    const Actions nothing = lecture.drag(dials, {dials.x + 60, dials.y + 20});
    CHECK(ink_of(nothing, MoveInk::Step::begin).empty());
    CHECK(ink_of(nothing, MoveInk::Step::draw).empty());
}

TEST_CASE("ink: while the approach runs a drag only points") {
    Lecture lecture;
    const auto picture = lecture.stage.place_of(Screen::class_room, "class room", "picture");
    REQUIRE(picture.has_value());
    freeze_or_run(lecture.app);
    lecture.look();
    lecture.apply_all(lecture.drag(picture->middle(), {picture->left + 30, picture->top + 30}));
    CHECK(lecture.app.room.shown.ink.empty());
    CHECK(lecture.app.room.shown.pointing);
    lecture.stage.move_mouse({picture->middle().x, picture->bottom + 60});
    lecture.apply_all(lecture.stage.draw(Screen::class_room));
    CHECK_FALSE(lecture.app.room.shown.pointing);
}

TEST_CASE("ink: a line stays on what it was drawn on in a window of another shape") {
    const Stage stage({1280, 720});
    // The view's angles follow its width from its middle: a place on the ground in both.
    CameraView camera;
    camera.x_m = -1500;
    camera.z_m = 95;
    camera.pitch_rad = -0.06;
    camera.horizontal_fov_rad = 0.7;
    const auto share_of_place = [&](ImVec2 min, ImVec2 max) {
        const Projection p =
            make_projection(camera, {double(min.x), double(min.y), double(max.x), double(max.y)});
        const ScreenPoint at = to_screen(p, to_camera(p, {-100, 40, 0}));
        const InkSheet sheet = ink_over_scene(min, max, max, 720);
        return ImVec2{(float(at.x_px) - sheet.canvas_min.x) / (sheet.canvas_max.x - sheet.canvas_min.x),
                      (float(at.y_px) - sheet.canvas_min.y) / (sheet.canvas_max.y - sheet.canvas_min.y)};
    };
    const ImVec2 narrow = share_of_place({0, 0}, {794, 540}), wide = share_of_place({0, 0}, {1280, 540}),
                 high = share_of_place({10, 30}, {794, 700});
    constexpr double tolerance = 1e-5;  // rounding of pixels in single precision
    CHECK_NEAR(narrow.x, wide.x, tolerance);
    CHECK_NEAR(narrow.y, wide.y, tolerance);
    CHECK_NEAR(narrow.x, high.x, tolerance);
    CHECK_NEAR(narrow.y, high.y, tolerance);
}

TEST_CASE("ink: a board's figure has one shape in the instructor's window and on the projector") {
    Lecture lecture;
    for (const Kind kind : {Kind::stills, Kind::explain}) {
        for (int page = 0; page < board_pages(kind); ++page) {
            lecture.show(kind, page, true);
            const auto shape = [&](ImVec2 max) {
                const InkSheet sheet = ink_over_board({0, 0}, max, lecture.stage.view);
                return (sheet.canvas_max.x - sheet.canvas_min.x) / (sheet.canvas_max.y - sheet.canvas_min.y);
            };
            // Whole pixels of some 350 rows.
            CHECK_NEAR(shape({794, 720}), shape({1280, 720}), 0.01);
        }
    }
}

// The readability rules for a projected picture: lines of 0.4 % of its height are seen from six heights away;
// the pointer from the back row (the brief of this screen: 4 %).
TEST_CASE("ink: a line is thick and the pointer large enough for the back row") {
    const Stage stage({1280, 720});
    constexpr float height = 720;
    const InkSheet sheet = ink_over_scene({0, 0}, {1280, 540}, {1280, 540}, height);
    RoomShown shown;
    shown.ink = {{{{0.2f, 0.5f}, {0.6f, 0.5f}}}};
    const Box line = drawn_by([&](ImDrawList* list) { draw_ink(list, sheet, shown); });
    CHECK(line.height() >= 0.005f * height);
    CHECK(line.right - line.left >= 0.4f * 1280);
    shown.ink.clear();
    shown.pointing = true;
    shown.pointer = {0.5f, 0.5f};
    const Box ring = drawn_by([&](ImDrawList* list) { draw_ink(list, sheet, shown); });
    CHECK(ring.height() >= 0.04f * height);
    CHECK_NEAR(ring.middle().x, 640, 1);
    CHECK_NEAR(ring.middle().y, 270, 1);
}
