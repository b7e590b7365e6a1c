// The two thumb pads over the flight: where they are, what they do, and what they leave free.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/screens/stage.h"
#include "ui/scene/projection.h"
#include "ui/theme.h"

using namespace slopewise;

namespace {

constexpr ImVec2 phone{844, 390}, upright_phone{390, 844}, tablet{1024, 768}, upright_tablet{768, 1024};
constexpr std::array<ImVec2, 8> touched{
    {phone, upright_phone, tablet, upright_tablet, {667, 375}, {360, 640}, {1280, 720}, {640, 360}}};

// A stage whose screen has been touched; no finger rests on it.
void touch(Stage& stage) {
    stage.view.flight.pads.wanted = true;
    stage.view.flight.pads.fingers.ever = true;
}

void rest(Stage& stage, std::initializer_list<Finger> fingers) {
    Fingers& now = stage.view.flight.pads.fingers;
    now.count = 0;
    for (const Finger& finger : fingers) now.at[static_cast<std::size_t>(now.count++)] = finger;
}

Finger moved(Finger finger, double dy) {
    finger.came = false;
    finger.y += dy;
    return finger;
}

Finger down_on(const FingerArea& pad, int id) {
    const double x = (pad.left + pad.right) / 2, y = (pad.top + pad.bottom) / 2;
    return {id, true, x, y, x, y};
}

struct Pads {
    FingerArea power, stick;
};

Pads pads_of(Stage& stage) {
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    REQUIRE(stage.ui.pads.areas.count == 2);
    return {stage.ui.pads.areas.at[0], stage.ui.pads.areas.at[1]};
}

bool meets(const FingerArea& pad, const Box& box) {
    return box.left < static_cast<float>(pad.right) && box.right > static_cast<float>(pad.left) &&
           box.top < static_cast<float>(pad.bottom) && box.bottom > static_cast<float>(pad.top);
}

// The last one counts, as it does in the program.
template <class Wanted>
const Wanted* last(const Actions& actions) {
    const Wanted* found = nullptr;
    for (const Action& action : actions)
        if (const auto* wanted = wish_in<Wanted>(action)) found = wanted;
    return found;
}

}  // namespace

TEST_CASE("thumb pads: only a screen that was touched has them, and only where they are wanted") {
    Stage stage(phone);
    stage.view.flight.pads.wanted = true;
    stage.draw(Screen::flight);
    CHECK(stage.ui.pads.areas.count == 0);
    stage.view.flight.pads.fingers.ever = true;
    stage.draw(Screen::flight);
    CHECK(stage.ui.pads.areas.count == 2);
    stage.view.flight.pads.wanted = false;
    stage.draw(Screen::flight);
    CHECK(stage.ui.pads.areas.count == 0);
    touch(stage);
    stage.draw(Screen::flight);
    stage.draw(Screen::choices);  // no other screen leaves corners where a finger is no mouse
    CHECK(stage.ui.pads.areas.count == 0);
}

TEST_CASE(
    "thumb pads: they stand in the lower corners, each larger than two fingers, and cover no button, dial or "
    "lever") {
    for (const ImVec2 size : touched) {
        CAPTURE(size_words(size));
        Stage stage(size);
        stage.view.flight.control = "You have power, I have pitch";  // with every button there is
        touch(stage);
        const Pads pads = pads_of(stage);
        for (const FingerArea& pad : {pads.power, pads.stick}) {
            CHECK(pad.right - pad.left >= 66);
            CHECK(pad.bottom - pad.top >= 88);
            CHECK(pad.left >= 0);
            CHECK(pad.right <= static_cast<double>(size.x));
        }
        CHECK(pads.power.right < 0.36 * static_cast<double>(size.x));
        CHECK(pads.stick.left > 0.64 * static_cast<double>(size.x));
        for (const char* label :
             {"Pause", "Go around", "Path help", "Give / take", "trim", "flap", "power"}) {
            CAPTURE(std::string(label));
            const auto place = stage.place_of(Screen::flight, "flight", label);
            REQUIRE(place.has_value());
            CHECK_FALSE(meets(pads.power, *place));
            CHECK_FALSE(meets(pads.stick, *place));
        }
        const auto view = stage.place_of(Screen::flight, "flight", "stick");
        REQUIRE(view.has_value());
        CHECK(pads.power.bottom <= static_cast<double>(view->bottom) + 1);  // over the picture, not the dials
    }
}

TEST_CASE(
    "thumb pads: they hide neither runway nor lights, from the start of the approach to its end at 50 ft") {
    // The eye's height where the wheels are at 50 ft, and how far before the threshold that is on the path.
    constexpr double end_x_m = -24.0, end_z_m = 17.0;
    for (const ImVec2 size : touched) {
        CAPTURE(size_words(size));
        Stage stage(size);
        touch(stage);
        SceneView& scene = stage.view.flight.scene;
        const double start_x_m = scene.camera.x_m, start_z_m = scene.camera.z_m;
        // The frame of the picture, as the flight screen lays it out.
        const float three_quarters = std::ceil(0.75f * size.y);
        const float frame_height =
            size.x < size.y ? std::min(three_quarters, std::ceil(1.15f * size.x)) : three_quarters;
        int looked_at = 0, hidden = 0;
        for (int step = 0; step <= 10; ++step) {
            const double share = step / 10.0;
            scene.camera.x_m = start_x_m + share * (end_x_m - start_x_m);
            scene.camera.z_m = start_z_m + share * (end_z_m - start_z_m);
            const Pads pads = pads_of(stage);
            const Projection projection = make_projection(
                scene.camera, {0, 0, static_cast<double>(size.x), static_cast<double>(frame_height)});
            const auto look_for = [&](const WorldPoint& point) {
                const CameraPoint seen = to_camera(projection, point);
                if (seen.ahead_m < near_plane_m) return;
                const ScreenPoint at = to_screen(projection, seen);
                ++looked_at;
                hidden += pads.power.holds(at.x_px, at.y_px) || pads.stick.holds(at.x_px, at.y_px) ? 1 : 0;
            };
            for (double along_m = 0; along_m <= scene.runway.length_m; along_m += 5) {
                const double z_m = along_m * scene.runway.slope;
                look_for({along_m, -scene.runway.width_m / 2, z_m});
                look_for({along_m, scene.runway.width_m / 2, z_m});
            }
            for (int i = 0; i < scene.lamp_count; ++i) {
                const LampView& lamp = scene.lamps[static_cast<std::size_t>(i)];
                look_for({lamp.x_m, lamp.y_m, lamp.z_m});
            }
        }
        CHECK(looked_at > 4000);
        CHECK(hidden == 0);
    }
}

TEST_CASE(
    "thumb pads: no word of theirs meets another, with a caption, what is flown and the words of a lesson") {
    for (const ImVec2 size : touched) {
        CAPTURE(size_words(size));
        Stage stage(size);
        touch(stage);
        stage.view.flight.caption = "Stall warning: lower the nose";
        stage.view.flight.control = "You have power, I have pitch";
        pads_of(stage);
        CHECK(words_over_words(stage.glyphs("flight")) == 0);
        CHECK(stage.drawn().lies_in(stage.display()));
    }
}

TEST_CASE(
    "thumb pads: the lever follows the thumb one to one from wherever it came down, and stays where it let "
    "go") {
    Stage stage(phone);
    touch(stage);
    PadsView& given = stage.view.flight.pads;
    given.lever = 0.3;
    const Pads pads = pads_of(stage);
    const Finger thumb = down_on(pads.power, 4);
    rest(stage, {thumb});
    CHECK(find<SetThrottle>(stage.draw(Screen::flight)) == nullptr);  // coming down moves nothing
    rest(stage, {moved(thumb, -10)});
    const Actions up = stage.draw(Screen::flight);
    REQUIRE(find<SetThrottle>(up) != nullptr);
    CHECK(find<SetThrottle>(up)->by_thumb);
    const double step = find<SetThrottle>(up)->fraction - 0.3;
    CHECK(step > 0.0);
    given.lever = find<SetThrottle>(up)->fraction;
    rest(stage, {moved(thumb, -30)});
    const Actions further = stage.draw(Screen::flight);
    REQUIRE(find<SetThrottle>(further) != nullptr);
    CHECK(find<SetThrottle>(further)->fraction == doctest::Approx(0.3 + 3 * step).epsilon(1e-9));
    given.lever = find<SetThrottle>(further)->fraction;
    CHECK(find<SetThrottle>(stage.draw(Screen::flight)) == nullptr);  // a thumb at rest asks for nothing
    rest(stage, {});
    CHECK(find<SetThrottle>(stage.draw(Screen::flight)) == nullptr);
    CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
}

TEST_CASE(
    "thumb pads: past the end the lever answers at once to the way back, and full power stays until the "
    "thumb moves") {
    Stage stage(phone);
    touch(stage);
    PadsView& given = stage.view.flight.pads;
    given.lever = 0.9;
    const Pads pads = pads_of(stage);
    const Finger thumb = down_on(pads.power, 0);
    rest(stage, {thumb});
    stage.draw(Screen::flight);
    rest(stage, {moved(thumb, -300)});
    const Actions full = stage.draw(Screen::flight);
    REQUIRE(find<SetThrottle>(full) != nullptr);
    CHECK(find<SetThrottle>(full)->fraction == 1.0);
    given.lever = 1.0;
    rest(stage, {moved(thumb, -290)});
    const Actions back = stage.draw(Screen::flight);
    REQUIRE(find<SetThrottle>(back) != nullptr);
    CHECK(find<SetThrottle>(back)->fraction < 0.97);
    given.lever = 1.0;  // "Go around", pressed by another finger
    CHECK(find<SetThrottle>(stage.draw(Screen::flight)) == nullptr);
}

TEST_CASE(
    "thumb pads: the other thumb is the stick in the sense of the up key, and let go it is back at trim") {
    for (const bool up_pushes : {true, false}) {
        CAPTURE(up_pushes);
        Stage stage(phone);
        touch(stage);
        stage.view.flight.pads.up_pushes = up_pushes;
        const Pads pads = pads_of(stage);
        const Finger thumb = down_on(pads.stick, 1);
        rest(stage, {thumb});
        stage.draw(Screen::flight);
        rest(stage, {moved(thumb, -25)});
        const Actions up = stage.draw(Screen::flight);
        REQUIRE(find<MoveStick>(up) != nullptr);
        CHECK(find<MoveStick>(up)->by_thumb);
        CHECK((up_pushes ? -1 : 1) * find<MoveStick>(up)->stick > 0.1);
        rest(stage, {moved(thumb, 500)});
        const Actions down = stage.draw(Screen::flight);
        REQUIRE(find<MoveStick>(down) != nullptr);
        CHECK(find<MoveStick>(down)->stick == (up_pushes ? 1.0 : -1.0));
        rest(stage, {});
        const Actions let_go = stage.draw(Screen::flight);
        REQUIRE(find<MoveStick>(let_go) != nullptr);
        CHECK(find<MoveStick>(let_go)->stick == 0.0);
        CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
    }
}

TEST_CASE(
    "thumb pads: both thumbs fly at once, and a third finger that lets go of the picture leaves the stick "
    "held") {
    Stage stage(phone);
    touch(stage);
    const Pads pads = pads_of(stage);
    const Finger left = down_on(pads.power, 0), right = down_on(pads.stick, 1);
    stage.move_mouse({422, 120});
    stage.draw(Screen::flight);
    stage.hold_mouse(true);
    stage.draw(Screen::flight);
    rest(stage, {left, right});
    stage.draw(Screen::flight);
    rest(stage, {moved(left, -12), moved(right, 20)});
    stage.hold_mouse(false);
    const Actions both = stage.draw(Screen::flight);
    CHECK(find<SetThrottle>(both) != nullptr);
    REQUIRE(last<MoveStick>(both) != nullptr);
    CHECK(last<MoveStick>(both)->stick > 0.05);
}

TEST_CASE("thumb pads: a pause lets go, and the thumb that stayed has to come down anew") {
    Stage stage(phone);
    touch(stage);
    const Pads pads = pads_of(stage);
    const Finger thumb = down_on(pads.stick, 1);
    rest(stage, {thumb});
    stage.draw(Screen::flight);
    rest(stage, {moved(thumb, 30)});
    stage.draw(Screen::flight);
    stage.view.flight.paused = true;
    const Actions paused = stage.draw(Screen::flight);
    REQUIRE(last<MoveStick>(paused) != nullptr);
    CHECK(last<MoveStick>(paused)->stick == 0.0);
    CHECK(stage.ui.pads.areas.count == 0);  // the sheet over the picture hears every finger
    stage.view.flight.paused = false;
    CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
}

TEST_CASE("thumb pads: a finger that slides onto a pad holds nothing") {
    Stage stage(phone);
    touch(stage);
    const Pads pads = pads_of(stage);
    Finger finger = down_on(pads.stick, 2);
    finger.began_x = 422;
    finger.began_y = 100;
    rest(stage, {finger});
    CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
    CHECK(stage.ui.pads.stick_finger == -1);
}

TEST_CASE("thumb pads: for a left hand's stick they change sides") {
    Stage stage(phone);
    touch(stage);
    const Pads right_handed = pads_of(stage);
    stage.view.flight.pads.stick_left = true;
    const Pads left_handed = pads_of(stage);
    CHECK(left_handed.power.left == right_handed.stick.left);
    CHECK(left_handed.stick.left == right_handed.power.left);
}

TEST_CASE("thumb pads: a turned screen keeps the thumbs that fly") {
    Stage stage(phone);
    touch(stage);
    const Pads pads = pads_of(stage);
    const Finger thumb = down_on(pads.stick, 1);
    rest(stage, {thumb});
    stage.draw(Screen::flight);
    rest(stage, {moved(thumb, 30)});
    stage.draw(Screen::flight);
    stage.resize(upright_phone);
    const Actions turned = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(turned) != nullptr);
    CHECK(find<MoveStick>(turned)->stick > 0.05);
}
