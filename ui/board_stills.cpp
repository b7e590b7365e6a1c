// Three stills of one thing that differs, and the trap in it; the same as outlines.
#include <cmath>

#include "base/units.h"
#include "board/runway_shape.h"
#include "ui/board_makers.h"
#include "ui/format.h"
#include "ui/seat_scene.h"

namespace slopewise {
namespace {

constexpr std::array<const char*, 3> marks{"A", "B", "C"};
constexpr double still_view_pitch_rad = rad_from_deg(-2.0);  // horizon and runway about the middle

constexpr std::array<std::array<const char*, 3>, still_set_count> still_labels{
    {{"2.5\u00b0", "3.0\u00b0", "3.5\u00b0"},
     {"18 m, narrow", "30 m, usual", "45 m, wide"},
     {"2 % up", "level", "2 % down"},
     {"day", "night, lit ground", "night, dark ground"}}};

std::string degrees(double rad) { return number_words(deg_from_rad(rad), 1) + "\u00b0"; }

double height_m(double path_rad) { return still_distance_m * std::tan(path_rad); }

std::string feet(double m) { return number_words(ft_from_m(m)) + " ft"; }

Runway changed(const Runway& usual, ExplainPage page, std::size_t i) {
    Runway runway = usual;
    if (page == ExplainPage::width) runway.width_m = still_widths_m[i];
    else runway.slope = still_slopes_percent[i] / 100.0;
    return runway;
}

// Where copying the usual shape leads on the first and the last of the three.
std::string copied_words(const Runway& usual, ExplainPage page, const char* first, const char* last) {
    const double path_rad = usual.lights.nominal_path_rad;
    const auto copied = [&](std::size_t i) {
        const double flown_rad = path_of_usual_shape_rad(changed(usual, page, i), usual, still_distance_m);
        return degrees(flown_rad) + ", " + off_path_words(flown_rad, path_rad);
    };
    return std::string("Who copies the usual shape flies ") + first + " at " + copied(0) + ", and " + last +
           " at " + copied(2) + ".";
}

std::vector<std::string> found_words(const Runway& usual, StillSet set) {
    const double path_rad = usual.lights.nominal_path_rad;
    switch (set) {
    case StillSet::paths:
        return {"The aim point stands as far under the horizon as the path is steep, at every distance.",
                "Half a degree is " + feet(height_m(rad_from_deg(3.5)) - height_m(path_rad)) +
                    " at 1 NM. The trap: what is looked at for long soon looks usual."};
    case StillSet::widths:
        return {"All three are on " + degrees(path_rad) + ". A narrow runway looks high, a wide one low.",
                copied_words(usual, ExplainPage::width, "the narrow one", "the wide one")};
    case StillSet::slopes:
        return {"All three are on " + degrees(path_rad) + ". A rising runway looks high, a falling one low.",
                copied_words(usual, ExplainPage::slope, "the rising one", "the falling one")};
    case StillSet::lights: break;
    }
    return {"None: all three are on " + degrees(path_rad) + ".",
            "Dark ground looks high. In a study (FAA-AM-82-6) pilots held " + degrees(dark_ground_path_rad) +
                " over it: " + off_path_words(dark_ground_path_rad, path_rad) + "."};
}

}  // namespace

std::string off_path_words(double flown_rad, double nominal_rad) {
    const double off_m = height_m(flown_rad) - height_m(nominal_rad);
    return degrees(std::abs(flown_rad - nominal_rad)) + " (" + feet(std::abs(off_m)) + " at 1 NM) " +
           (off_m < 0.0 ? "low" : "high");
}

void stills_board(const Scenario& flown, const Display& display, StillSet set, bool revealed,
                  BoardsView& view) {
    constexpr std::array<const char*, still_set_count> titles{
        "One place, three paths", "One path, three widths", "One path, three slopes",
        "One path, three hours"};
    constexpr std::array<const char*, still_set_count> questions{
        "All from 1 NM: one on 2.5\u00b0, one on 3.0\u00b0, one on 3.5\u00b0. Which is which?",
        "All from 1 NM: one runway is narrow, one usual, one wide. Is any of them too high, or too low?",
        "All from 1 NM: one runway rises, one is level, one falls. Is any of them too high, or too low?",
        "All from 1 NM. Which of them is the lowest?"};
    const auto index = static_cast<std::size_t>(set);
    view.figure = BoardsView::Figure::stills;
    view.title = titles[index];
    view.sentences = {questions[index]};
    std::vector<BoardStill> stills = make_stills(flown, set);
    for (std::size_t i = 0; i < stills.size(); ++i) {
        const BoardStill& one = stills[i];
        BoardsView::Still still;
        still.scene = seen_from(one.scenario, {one.eye, one.pitch_rad, 0.0, {}});
        still.scene.camera.pitch_rad = still_view_pitch_rad;
        still.scene.magnifier = display.magnifier;
        still.scene.lamp_letters = display.lamp_letters;
        still.scene.lamp_shapes = display.lamp_shapes;
        still.scene.reduced_motion = true;          // it stands still
        if (!revealed) still.scene.lamp_count = 0;  // they would tell
        still.mark = marks[i];
        const char* label = still_labels[index][static_cast<std::size_t>(one.which)];
        if (revealed) still.label = label;
        view.answer += (i > 0 ? "; " : "") + still.mark + ": " + label;
        view.stills.push_back(std::move(still));
    }
    view.answer += ".";
    for (std::string& words : found_words(standard_runway(flown.surroundings.runway), set)) {
        view.answer += " " + words;
        if (revealed) view.sentences.push_back(std::move(words));
    }
}

void outlines_board(const Scenario& flown, ExplainPage page, bool revealed, BoardsView& view) {
    const Runway usual = standard_runway(flown.surroundings.runway);
    const double path_rad = usual.lights.nominal_path_rad;
    const bool width = page == ExplainPage::width;
    view.figure = BoardsView::Figure::outlines;
    view.title = width ? "What a width does to the picture" : "What a slope does to the picture";
    view.sentences = {std::string("From 1 NM on ") + degrees(path_rad) +
                          ": in full the runway as it is seen, " + "dashed the usual one.",
                      "Does it look high or low? And what would be flown to make it look usual?"};
    if (revealed)
        view.sentences.push_back("The horizon does not lie: the aim point stands " + degrees(path_rad) +
                                 " under it on each.");
    const auto seen_at = [&](const Runway& runway) {
        const Point3 aim = aim_point(runway);
        const auto corners =
            runway_outline(runway, {aim.x_m - still_distance_m, 0.0, aim.z_m + height_m(path_rad)});
        std::array<SeenAt, 4> seen;
        for (std::size_t i = 0; i < corners.size(); ++i) seen[i] = {corners[i].right_rad, corners[i].up_rad};
        return seen;
    };
    for (const std::size_t i : {std::size_t{0}, std::size_t{2}}) {
        const Runway runway = changed(usual, page, i);
        const double flown_rad = path_of_usual_shape_rad(runway, usual, still_distance_m);
        const std::string trap = std::string(flown_rad < path_rad ? "Looks high" : "Looks low") +
                                 "; made to look usual, it is flown at " + degrees(flown_rad) + ", " +
                                 off_path_words(flown_rad, path_rad) + ".";
        BoardsView::Outline outline;
        const auto set = static_cast<std::size_t>(width ? StillSet::widths : StillSet::slopes);
        outline.name = still_labels[set][i];
        outline.seen = seen_at(runway);
        outline.usual = seen_at(usual);
        if (revealed) outline.trap = trap;
        view.answer += (i > 0 ? " " : "") + outline.name + ": " + trap;
        view.outlines.push_back(std::move(outline));
    }
}

}  // namespace slopewise
