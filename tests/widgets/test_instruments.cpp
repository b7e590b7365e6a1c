// The shelf and the profile plot: what they say of their data, and that they fit every window.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include <imgui.h>

#include "assets/embedded.h"
#include "tests/screens/sample_view.h"
#include "tests/wish_in.h"
#include "ui/theme.h"
#include "ui/widgets/airspeed.h"
#include "ui/widgets/profile_plot.h"
#include "ui/widgets/shelf.h"

using namespace slopewise;

namespace {

// One Dear ImGui window over the whole display, with no renderer behind it.
struct Bench {
    explicit Bench(ImVec2 size) : display(size) {
        context = ImGui::CreateContext();
        ImGui::SetCurrentContext(context);
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.DisplaySize = display;
        io.DeltaTime = 1.0f / 60.0f;
        load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
        fit_theme(display.x, display.y);
        unsigned char* pixels = nullptr;
        int wide = 0, tall = 0;
        io.Fonts->GetTexDataAsAlpha8(&pixels, &wide, &tall);
    }
    ~Bench() { ImGui::DestroyContext(context); }
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    template <class Draw>
    void frame(Draw draw) {
        ImGui::NewFrame();
        ImGui::SetNextWindowPos({0, 0});
        ImGui::SetNextWindowSize(display);
        ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
        ImGui::Begin("bench", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground);
        draw(ImGui::GetWindowDrawList());
        ImGui::End();
        ImGui::PopStyleVar();
        ImGui::Render();
    }

    ImVec2 display;
    ImGuiContext* context = nullptr;
};

struct Bounds {
    float left = 1e9f, right = -1e9f, top = 1e9f, bottom = -1e9f;
};
Bounds bounds_of(const ImDrawList& list) {
    Bounds b;
    for (const ImDrawVert& v : list.VtxBuffer) {
        b.left = std::min(b.left, v.pos.x);
        b.right = std::max(b.right, v.pos.x);
        b.top = std::min(b.top, v.pos.y);
        b.bottom = std::max(b.bottom, v.pos.y);
    }
    return b;
}

template <class Wanted>
const Wanted* find(const Actions& actions) {
    for (const Action& action : actions) {
        if (const auto* wanted = wish_in<Wanted>(action)) return wanted;
    }
    return nullptr;
}

ProfilePoint point(double distance_nm, int white) {
    ProfilePoint p{distance_nm, 318 * distance_nm, 65, {}};
    for (int i = 0; i < 4; ++i) p.white_fraction[static_cast<std::size_t>(i)] = i < white ? 1.0 : 0.0;
    return p;
}

}  // namespace

TEST_CASE("airspeed: the hand goes clockwise with speed and stops at the ends of the scale") {
    const InstrumentsView i = sample_view().flight.instruments;
    double last_rad = -10;
    for (double kt = 40; kt <= 160; kt += 5) {
        const double angle_rad = airspeed_angle_rad(i, kt);
        CHECK(angle_rad > last_rad);
        last_rad = angle_rad;
    }
    CHECK(airspeed_angle_rad(i, 0) == airspeed_angle_rad(i, -20));
    CHECK(airspeed_angle_rad(i, 300) == airspeed_angle_rad(i, 400));
}

TEST_CASE("shelf: everything keeps inside its rectangle in every shape of window") {
    for (const ImVec2 size : {ImVec2(1280, 720), ImVec2(1920, 1080), ImVec2(844, 390), ImVec2(1024, 768),
                              ImVec2(2560, 1080), ImVec2(390, 844)}) {
        CAPTURE(size.x);
        CAPTURE(size.y);
        Bench bench(size);
        const float top = size.y - shelf_height(size.x, size.y);
        bench.frame([&](ImDrawList* list) {
            const Actions actions = draw_shelf(list, {0, top}, size, sample_view().flight.instruments);
            CHECK(actions.empty());
            const Bounds b = bounds_of(*list);
            CHECK(b.left >= -1.0f);
            CHECK(b.right <= size.x + 1.0f);
            CHECK(b.top >= top - 1.0f);
            CHECK(b.bottom <= size.y + 1.0f);
        });
    }
}

// A hand takes the needle's colour, which nothing else on a dial has.
TEST_CASE("shelf: an instrument that fails loses its hand and keeps its dial; the others stay") {
    Bench bench({1280, 720});
    const auto needle_corners = [&](const InstrumentsView& shown) {
        int count = 0;
        bench.frame([&](ImDrawList* list) {
            const int before = list->VtxBuffer.Size;
            draw_shelf(list, {0, 540}, {1100, 720}, shown);
            for (int i = before; i < list->VtxBuffer.Size; ++i)
                count += list->VtxBuffer[i].col == theme().colour.needle ? 1 : 0;
        });
        return count;
    };
    const InstrumentsView whole = sample_view().flight.instruments;
    const int all = needle_corners(whole);
    int left = all;
    InstrumentsView worse = whole;
    for (bool InstrumentSet::*which :
         {&InstrumentSet::airspeed, &InstrumentSet::altimeter, &InstrumentSet::vertical_speed,
          &InstrumentSet::power, &InstrumentSet::flap, &InstrumentSet::trim}) {
        InstrumentsView alone = whole;
        alone.failed.*which = true;
        CHECK(needle_corners(alone) < all);
        worse.failed.*which = true;
        const int now = needle_corners(worse);
        CHECK(now < left);
        left = now;
        alone.covered.*which = true;  // a lid hides a failed one as well
        CHECK(needle_corners(alone) < all);
    }
}

TEST_CASE("shelf: the levers follow the hand") {
    const ImVec2 size(1280, 720);
    Bench bench(size);
    const float top = size.y - shelf_height(size.x, size.y);
    const InstrumentsView instruments = sample_view().flight.instruments;
    bool throttle = false, flap = false, trim = false;
    // A finger pressed down here and there over the upper part of the shelf finds each lever.
    for (float x = 4; x < size.x; x += 12) {
        ImGuiIO& io = ImGui::GetIO();
        Actions got;
        const auto draw = [&](ImDrawList* list) { got = draw_shelf(list, {0, top}, size, instruments); };
        io.AddMousePosEvent(x, top + 24);
        bench.frame(draw);
        io.AddMouseButtonEvent(0, true);
        bench.frame(draw);
        bench.frame(draw);
        if (const auto* set = find<SetThrottle>(got)) {
            throttle = true;
            CHECK(set->fraction > 0.7);
        }
        if (const auto* set = find<SetFlap>(got)) {
            flap = true;
            CHECK(set->index == 0);
        }
        if (const auto* set = find<SetTrim>(got)) {
            trim = true;
            CHECK(set->trim < -0.5);
        }
        io.AddMouseButtonEvent(0, false);
        bench.frame(draw);
    }
    CHECK(throttle);
    CHECK(flap);
    CHECK(trim);
}

// 3 degrees and half a degree either side; the floor takes over close in: 30 ft is half a degree at 0.56 NM.
TEST_CASE("profile: the tolerance is the wedge or the floor, whichever is wider") {
    SummaryView summary;
    summary.path_deg = 3;
    summary.wedge_deg = 0.5;
    summary.floor_ft = 30;
    const double feet = 6076.115, deg = 3.14159265358979323846 / 180;
    const Tolerance far_out = tolerance_at(summary, 3);
    CHECK(std::abs(far_out.above_ft - 3 * feet * (std::tan(3.5 * deg) - std::tan(3 * deg))) < 0.01);
    CHECK(std::abs(far_out.below_ft - 3 * feet * (std::tan(3 * deg) - std::tan(2.5 * deg))) < 0.01);
    CHECK(tolerance_at(summary, 0.2).above_ft == 30);
    CHECK(tolerance_at(summary, 0.2).below_ft == 30);
    CHECK(tolerance_at(summary, 0).above_ft == 30);
}

TEST_CASE("profile: a light picture is shown where it begins, and a flicker is not a picture") {
    std::vector<ProfilePoint> profile;
    for (int i = 0; i <= 200; ++i) {
        const double nm = 2.0 - 0.01 * i;
        int white = nm > 1.5 ? 2 : (nm > 1.0 ? 3 : 2);
        if (i == 30) white = 1;  // one point only
        profile.push_back(point(nm, white));
    }
    const std::vector<PictureChange> changes = picture_changes(profile);
    REQUIRE(changes.size() == 3);
    CHECK(std::abs(changes[0].distance_nm - 2.0) < 1e-9);
    CHECK(std::abs(changes[1].distance_nm - 1.5) < 0.011);
    CHECK(std::abs(changes[2].distance_nm - 1.0) < 0.011);
    CHECK(std::count(changes[1].picture.white_fraction.begin(), changes[1].picture.white_fraction.end(),
                     1.0) == 3);
    CHECK(picture_changes({}).empty());
}

TEST_CASE("profile: it keeps inside its rectangle, with a flight and without") {
    Bench bench(ImVec2(1000, 640));
    for (const bool flown : {true, false}) {
        bench.frame([&](ImDrawList* list) {
            SummaryView summary = sample_view().summary;
            if (!flown) summary.profile.clear();
            draw_profile(list, {40, 30}, {960, 610}, summary);
            const Bounds b = bounds_of(*list);
            CHECK(b.left >= 39);
            CHECK(b.right <= 961);
            CHECK(b.top >= 29);
            CHECK(b.bottom <= 611);
        });
    }
}
