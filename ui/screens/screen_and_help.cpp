// How the program is shown, set once by whoever sets up the screen, and help with the keys.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>

#include "ui/screens/lead_to_sources.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/dial.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/switches.h"

namespace slopewise {
namespace {

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 32;

// What the sheet asks for is the display that it was given with one thing changed.
struct Wanted {
    Display display;
    bool changed = false;
};

void on_off(Column& column, const char* words, bool& on, Wanted& wanted) {
    if (!switch_row(column, words, on)) return;
    on = !on;
    wanted.changed = true;
}

void choose_look(Column& column, Wanted& wanted) {
    static const std::array<std::string, 3> looks{"Standard", "Bright", "Night"};
    heading(column, "Look for this room");
    gap(column, 0.5f);
    const int pressed = choice_row(column, "look", looks, static_cast<int>(wanted.display.look));
    if (pressed >= 0) {
        wanted.display.look = static_cast<Look>(pressed);
        wanted.changed = true;
    }
    gap(column, 0.5f);
    on_off(column, "Large text for a projector", wanted.display.projector_text, wanted);
    on_off(column, "Less motion", wanted.display.reduced_motion, wanted);
}

void length(Column& column, const char* name, const char* words, double most_cm, double step_cm, double& cm,
            Wanted& wanted) {
    paragraph(column, TextSize::note, theme().colour.ink, words);
    const std::string value = cm > 0 ? whole_number(cm) : "\xE2\x80\x93";
    const auto moved = slider(column, {name, value, "cm", "1000"}, cm, most_cm, step_cm);
    if (!moved) return;
    cm = *moved;
    wanted.changed = true;
}

void true_size(Column& column, const ScreenAndHelpView& sheet, Wanted& wanted) {
    heading(column, "True size");
    gap(column, 0.5f);
    length(column, "screen width", "Width of the screen, filled by the window", most_screen_width_cm, 1,
           wanted.display.screen_width_cm, wanted);
    length(column, "viewing distance", "From your eye to the screen", most_viewing_distance_cm, 5,
           wanted.display.viewing_distance_cm, wanted);
    gap(column, 0.5f);
    paragraph(column, TextSize::note, theme().colour.ink_soft, sheet.true_size);
}

void instructors_part(Column& column, Actions& actions) {
    constexpr std::array<ButtonWords, 2> words{{{"What counts as stable"}, {"School"}}};
    heading(column, "For the instructor");
    gap(column, 0.5f);
    const int pressed = button_row(column, words);
    if (pressed == 0) actions.emplace_back(OpenCriteria{});
    if (pressed == 1) actions.emplace_back(OpenSchool{});
}

void aids(Column& column, Wanted& wanted) {
    Display& d = wanted.display;
    heading(column, "In flight");
    on_off(column, "Eyes outside: a dark panel", d.eyes_outside, wanted);
    on_off(column, "The path from the side", d.side_profile, wanted);
    on_off(column, "Path help comes by itself", d.help_by_itself, wanted);
    on_off(column, "Call-outs: \"low\", \"slow\"", d.call_outs, wanted);
    on_off(column, "Magnifier for the lights", d.magnifier, wanted);
    on_off(column, "Letters R and W in it", d.lamp_letters, wanted);
    on_off(column, "Shapes in it", d.lamp_shapes, wanted);
}

// A switch for each instrument; `what` follows its name.
void instruments(Column& column, std::string_view title, std::string_view what, InstrumentSet& some,
                 Wanted& wanted) {
    heading(column, title);
    for (const InstrumentName& one : instrument_names) {
        const std::string words = std::string(one.title) + std::string(what);
        on_off(column, words.c_str(), some.*one.which, wanted);
    }
}

void covers(Column& column, Wanted& wanted) {
    instruments(column, "Covered instruments", "", wanted.display.covered, wanted);
}

void failures(Column& column, Wanted& wanted) {
    instruments(column, "Failed instruments", " failed", wanted.display.failed, wanted);
}

void help(Column& column, const ScreenAndHelpView& sheet, Actions& actions) {
    heading(column, "Help");
    gap(column, 0.5f);
    key_rows(column, sheet.keys);
    for (const std::string& line : sheet.help) {
        gap(column, 0.5f);
        paragraph(column, TextSize::note, theme().colour.ink_soft, line);
    }
    lead_to_sources(column, actions);
}

}  // namespace

Actions draw_screen_and_help(const View& view) {
    Actions actions;
    Wanted wanted{view.display, false};
    const ScreenAndHelpView& sheet = view.screen_and_help;
    Column page = begin_sheet("screen and help");
    const ButtonWords back{sheet.in_flight ? "Back to the flight" : "Back", Weight::primary, "H"};
    if (title_with_way_back(page, "Screen and help", back)) actions.emplace_back(CloseScreenAndHelp{});
    const float sizes = measure(page);
    if (sizes >= three_columns_from) {
        const std::array<float, 3> shares{1, 1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        choose_look(columns[0], wanted);
        gap(columns[0], 1);
        true_size(columns[0], sheet, wanted);
        gap(columns[0], 1);
        instructors_part(columns[0], actions);
        aids(columns[1], wanted);
        gap(columns[1], 1);
        covers(columns[1], wanted);
        failures(columns[2], wanted);
        gap(columns[2], 1);
        help(columns[2], sheet, actions);
        join(page, columns);
    } else if (sizes >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        choose_look(columns[0], wanted);
        gap(columns[0], 1);
        true_size(columns[0], sheet, wanted);
        gap(columns[0], 1);
        covers(columns[0], wanted);
        gap(columns[0], 1);
        instructors_part(columns[0], actions);
        aids(columns[1], wanted);
        gap(columns[1], 1);
        failures(columns[1], wanted);
        gap(columns[1], 1);
        help(columns[1], sheet, actions);
        join(page, columns);
    } else {
        choose_look(page, wanted);
        gap(page, 1);
        aids(page, wanted);
        gap(page, 1);
        covers(page, wanted);
        gap(page, 1);
        failures(page, wanted);
        gap(page, 1);
        true_size(page, sheet, wanted);
        gap(page, 1);
        instructors_part(page, actions);
        gap(page, 1);
        help(page, sheet, actions);
    }
    end_sheet(page);
    if (wanted.changed) actions.emplace_back(SetDisplay{wanted.display});
    return actions;
}

}  // namespace slopewise
