// What is set for controllers, kept and read again, and the steps that measure one.
#include <string>

#include "data/fields.h"
#include "tests/check.h"
#include "tests/ui/controller_player.h"
#include "ui/controller_desk.h"
#include "ui/settings.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

KeptSettings with_controllers(const std::string& list) {
    return parse_settings(R"({"kind": "settings", "stick_sense": "ask", "controllers": )" + list + "}");
}

// A sheet with one device before it.
struct Sheet {
    ControllerDesk desk;
    ControllerBook book;
    ControllerReadings now;

    explicit Sheet(const ControllerReading& device) {
        now.count = 1;
        now.at[0] = device;
        frame();
    }
    void frame() { follow_controllers(desk, now, book, 0.0, false); }
    void give(int axis, double value) {
        now.at[0].axes[static_cast<std::size_t>(axis)] = value;
        frame();
    }
    bool next(bool skip = false) { return next_calibration_step(desk, book, skip); }
    CalibrationStep step() const { return desk.calibration.step; }
};

// Its stick is on axis 3, back negative, and stands off its middle; its lever on axis 0.
ControllerReading odd_device() {
    ControllerReading reading = device("Odd yoke", 5, 3, 'f');
    reading.axes = {0.9, 0.0, 0.1, 0.12, -0.4};
    return reading;
}

void calibrate(Sheet& sheet) {
    begin_calibration(sheet.desk, sheet.book);
    CHECK(sheet.step() == CalibrationStep::let_go);
    sheet.next();
    sheet.give(1, 0.2);  // a hand moves more than it should
    sheet.give(3, -0.7);
    sheet.give(3, -0.6);
    CHECK(sheet.step() == CalibrationStep::pull);
    sheet.next();
    CHECK(sheet.step() == CalibrationStep::push);
    sheet.give(3, 0.8);
    sheet.next();
    CHECK(sheet.step() == CalibrationStep::close_lever);
    sheet.give(3, 0.12);
    sheet.give(0, 1.0);
    sheet.next();
    CHECK(sheet.step() == CalibrationStep::open_lever);
    sheet.give(0, -0.5);
}

}  // namespace

TEST_CASE("calibration: it finds stick and lever by what moved most, with their ends, centre and sense") {
    Sheet sheet(odd_device());
    calibrate(sheet);
    CHECK(sheet.book.devices.empty());  // nothing before the last step
    CHECK(sheet.next());
    REQUIRE(sheet.book.devices.size() == 1);
    const ControllerSetting& kept = sheet.book.devices[0];
    CHECK(kept.axes[3] == AxisSetting{AxisDoes::stick, true, -0.7, 0.12, 0.8, 0.06, 0.4});
    CHECK(kept.axes[0].does == AxisDoes::throttle);
    CHECK(kept.axes[0].inverted);
    CHECK(kept.axes[0].least == -0.5);
    CHECK(kept.axes[0].greatest == 1.0);
    CHECK(kept.axes[1].does == AxisDoes::nothing);  // where the stick is as it comes
    CHECK(kept.axes[4].does == AxisDoes::nothing);  // and the throttle
    CHECK(sheet.desk.news == "Kept for Odd yoke: axis 4 is the stick, axis 1 is the throttle.");

    ControllerPlayer player(odd_device());
    player.settings.controllers = sheet.book;
    player.frame();
    player.give(3, -0.7);
    CHECK(player.hands.at.stick == 1.0);
    player.give(3, 0.12);
    CHECK(player.hands.at.stick == 0.0);
    player.give(3, 0.8);
    CHECK(player.hands.at.stick == -1.0);
    player.give(0, -0.5);
    CHECK(player.hands.at.throttle == 1.0);
}

TEST_CASE("calibration: a step in which nothing moved says so and stays; left out it goes on") {
    Sheet sheet(odd_device());
    begin_calibration(sheet.desk, sheet.book);
    sheet.next();
    sheet.give(3, 0.2);
    CHECK_FALSE(sheet.next());
    CHECK(sheet.step() == CalibrationStep::pull);
    CHECK(sheet.desk.news == "Nothing has moved far enough yet.");
    sheet.next(true);
    CHECK(sheet.step() == CalibrationStep::close_lever);
    sheet.next(true);
    CHECK(sheet.step() == CalibrationStep::none);
    CHECK(sheet.book.devices.empty());
    CHECK(sheet.desk.news == "Nothing was changed.");
}

TEST_CASE("calibration: with no push the stick is taken to go as far forward as it comes back") {
    Sheet sheet(odd_device());
    begin_calibration(sheet.desk, sheet.book);
    sheet.next();
    sheet.give(3, -0.68);
    sheet.next();
    sheet.next(true);
    CHECK(sheet.next(true));
    CHECK_NEAR(sheet.book.devices[0].axes[3].greatest, 0.92, 1e-12);  // 0.12 + 0.8
}

TEST_CASE(
    "calibration: of a device that tells of an axis only when it moves, the ends are found all the same") {
    ControllerReading silent = odd_device();
    silent.axes.fill(std::numeric_limits<double>::quiet_NaN());
    Sheet sheet(silent);
    begin_calibration(sheet.desk, sheet.book);
    sheet.next();
    CHECK_FALSE(sheet.next());  // nothing is told yet
    sheet.give(3, 0.12);
    sheet.give(3, -0.7);
    sheet.next();
    sheet.give(3, 0.8);
    sheet.next();
    sheet.next();  // closed already, and so not told
    sheet.give(0, 0.98);
    sheet.give(0, -0.5);
    CHECK(sheet.next());
    const ControllerSetting& kept = sheet.book.devices[0];
    CHECK(kept.axes[3] == AxisSetting{AxisDoes::stick, true, -0.7, 0.12, 0.8, 0.06, 0.4});
    CHECK(kept.axes[0].greatest == 0.98);
    CHECK(kept.axes[0].inverted);
}

TEST_CASE("calibration: stopped or unplugged, it changes nothing") {
    Sheet sheet(odd_device());
    calibrate(sheet);
    leave_calibration(sheet.desk);
    CHECK(sheet.step() == CalibrationStep::none);
    CHECK(sheet.book.devices.empty());
    calibrate(sheet);
    sheet.now = {};
    sheet.frame();
    CHECK(sheet.step() == CalibrationStep::none);
    CHECK(sheet.book.devices.empty());
    CHECK(sheet.desk.news == "Unplugged: Odd yoke. Nothing was changed.");
}

TEST_CASE("controllers: what comes and goes is told in words") {
    Sheet sheet(device("First", 2, 2, 'a'));
    CHECK(sheet.desk.news == "Connected: First.");
    sheet.now.at[sheet.now.count++] = device("Second", 2, 2, 'b');
    sheet.frame();
    CHECK(sheet.desk.news == "Connected: Second.");
    sheet.now.at[0] = sheet.now.at[1];
    sheet.now.count = 1;
    CHECK(follow_controllers(sheet.desk, sheet.now, sheet.book, 0.0, false));
    CHECK(sheet.desk.news == "Unplugged: First.");
    REQUIRE(shown_controller(sheet.desk) != nullptr);
    CHECK(words_of(shown_controller(sheet.desk)->name) == "Second");
}

TEST_CASE("controllers: what is set is kept and read again, all of it") {
    Settings settings;
    ControllerSetting one = usual_setting(standard_gamepad());
    one.axes[2] = {AxisDoes::flap, true, -0.91, 0.02, 0.87, 0.08, 0.55};
    one.buttons[31] = ButtonDoes::exchange;
    keep_setting(settings.controllers, one);
    keep_setting(settings.controllers, usual_setting(device("A \"b\" \\ h\xC3\xB6he", 3, 2, 'c')));
    const KeptSettings kept = parse_settings(settings_text(settings));
    CHECK(kept.problems.empty());
    CHECK(kept.settings.controllers == settings.controllers);
    CHECK(parse_settings(settings_text(Settings{})).settings.controllers.devices.empty());
}

TEST_CASE("controllers: a bad kept value has its default alone, and is told of") {
    const KeptSettings kept = with_controllers(
        R"([{"id": "ab", "name": "S", "axes": [{"does": "stick", "dead_zone": 7, "expo": 0.2},
            {"does": "fly", "least": 0.3, "centre": 0.2, "greatest": 1}], "buttons": "flap_up nonsense pause"}])");
    CHECK(kept.problems.size() == 4);
    REQUIRE(kept.settings.controllers.devices.size() == 1);
    const ControllerSetting& one = kept.settings.controllers.devices[0];
    CHECK(one.axes[0] == AxisSetting{AxisDoes::stick, false, -1, 0, 1, 0.06, 0.2});
    CHECK(one.axes[1] == AxisSetting{});
    CHECK(one.buttons[0] == ButtonDoes::flap_up);
    CHECK(one.buttons[1] == ButtonDoes::nothing);
    CHECK(one.buttons[2] == ButtonDoes::pause);
}

TEST_CASE("controllers: a device with a bad id is left out, and nothing of foreign text breaks the reading") {
    for (
        const std::string list :
        {R"([{"id": "XYZ", "axes": [], "buttons": "nothing"}])", R"([{"id": ""}])", R"([{}])", R"([7, null])",
         R"({"id": "ab"})", R"("ab")",
         R"([{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"},{"id":"a"}])"}) {
        CAPTURE(list);
        const KeptSettings kept = with_controllers(list);
        CHECK_FALSE(kept.problems.empty());
        CHECK(kept.settings.controllers.devices.empty());
    }
    const std::string id40(40, 'a');
    CHECK(with_controllers("[{\"id\": \"" + id40 + "\"}]").settings.controllers.devices.empty());
    CHECK(with_controllers("[{\"id\": \"" + id40.substr(1) + "\"}]").settings.controllers.devices.size() ==
          1);
    // The same device twice is one, as it stands last.
    const KeptSettings twice =
        with_controllers(R"([{"id": "a", "buttons": "pause"}, {"id": "a", "buttons": "go_around"}])");
    REQUIRE(twice.settings.controllers.devices.size() == 1);
    CHECK(twice.settings.controllers.devices[0].buttons[0] == ButtonDoes::go_around);
}

TEST_CASE("controllers: eight devices are kept, and the one set longest ago makes room") {
    ControllerBook book;
    for (char id = 'a'; id <= 'f'; ++id) keep_setting(book, usual_setting(device("D", 2, 2, id)));
    for (char id = '1'; id <= '3'; ++id) keep_setting(book, usual_setting(device("D", 2, 2, id)));
    CHECK(book.devices.size() == most_kept_controllers);
    CHECK_FALSE(is_kept(book, device("D", 2, 2, 'a').id));
    CHECK(is_kept(book, device("D", 2, 2, 'b').id));
    CHECK(is_kept(book, device("D", 2, 2, '3').id));
}
