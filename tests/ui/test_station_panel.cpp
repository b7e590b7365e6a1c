// The station's panel as it is drawn: everything can be read and pressed, at every size of window.
#include <algorithm>

#include "tests/check.h"
#include "tests/screens/stage.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/drive_class.h"
#include "ui/make_view.h"
#include "ui/station_rows.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::array<ImVec2, 5> sizes{{{1280, 720}, {1920, 1080}, {1024, 768}, {844, 390}, {390, 844}}};

// A class in wind with calm air beside it, and a change that could not be made.
View station_in_trouble() {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenClassRoom{}, host);
    apply(app, ChooseClassPanel{static_cast<int>(ClassRoomView::Panel::station)}, host);
    app.room.shown.ghost = app.room.shown.side_profile = true;
    app.room.shown.black = true;  // the picture is another's
    app.room.station.trouble = "That cannot be flown: full power is too little.";
    return make_view(app);
}

}  // namespace

TEST_CASE("station panel: at every size no words of it overlap, and each row's label is another") {
    const View view = station_in_trouble();
    for (const ImVec2 size : sizes) {
        Stage stage(size);
        stage.view = view;
        CAPTURE(size_words(size));
        stage.draw(Screen::class_room);
        stage.draw(Screen::class_room);
        const std::vector<Box> glyphs = stage.glyphs("class room");
        CHECK(glyphs.size() > 150);  // the head of the panel alone, on the lowest window
        CHECK(words_over_words(glyphs) == 0);
        const float right = stage.display().right;
        CHECK(std::ranges::all_of(glyphs, [&](const Box& glyph) { return glyph.right <= right + 1; }));
    }
    std::vector<std::string> labels;
    for (const StationView::Group& group : view.station.groups)
        for (const StationView::Row& row : group.rows) labels.push_back(row.label);
    std::ranges::sort(labels);
    CHECK(std::ranges::adjacent_find(labels) == labels.end());
}

TEST_CASE("station panel: the places an approach is put to are in reach without scrolling, a finger high") {
    Stage stage({1280, 720});
    stage.view = station_in_trouble();
    const auto pressed = press(stage, Screen::class_room, "class room", "Low", "Path");
    const auto* wish = find<SetStation>(pressed);
    REQUIRE(wish != nullptr);
    const StationRowWords& row =
        station_groups()[static_cast<std::size_t>(wish->group)].rows[static_cast<std::size_t>(wish->row)];
    CHECK(row.label == "Path");
    CHECK(wish->choice == 2);
    const auto place = stage.place_of(Screen::class_room, "class room", "20", "Headwind, kt");
    REQUIRE(place.has_value());
    CHECK(place->height() >= 24);  // WCAG 2.2, success criterion 2.5.8: 24 pixels at least
}
