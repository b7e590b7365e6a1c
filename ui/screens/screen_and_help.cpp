// How the program is shown, set once by whoever sets up the screen, and help with the keys.
#include <algorithm>
#include <array>
#include <cmath>
#include <span>
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

void sound_part(Column& column, const SoundView& sound, Actions& actions) {
    heading(column, "Sound");
    if (switch_row(column, "Engine, wind, warning, gates", sound.audible))
        actions.emplace_back(ToggleSound{});
    gap(column, 0.5f);
    const double percent = 100 * sound.volume;
    const std::string value = whole_number(percent);
    if (const auto moved = slider(column, {"volume", value, "% loud", "100"}, percent, 100, 5))
        actions.emplace_back(SetVolume{*moved / 100});
    gap(column, 0.5f);
    paragraph(column, TextSize::note, theme().colour.ink_soft,
              "Whatever is heard is also seen. Nothing sounds in a pause.");
}

void instructors_part(Column& column, Actions& actions) {
    constexpr std::array<ButtonWords, 2> words{{{"What counts as stable"}, {"School"}}};
    heading(column, "For the instructor");
    gap(column, 0.5f);
    const int pressed = button_row(column, words);
    if (pressed == 0) actions.emplace_back(OpenCriteria{});
    if (pressed == 1) actions.emplace_back(OpenSchool{});
}

void devices_part(Column& column, bool can_fill_screen, Actions& actions) {
    constexpr std::array<ButtonWords, 4> words{
        {{"Keys and fingers"}, {"Stick and levers"}, {"About Slopewise"}, {"Full screen"}}};
    heading(column, "What it is flown with");
    gap(column, 0.5f);
    switch (button_row(column, std::span(words).first(can_fill_screen ? 4 : 3))) {
    case 0: actions.emplace_back(OpenKeys{}); break;
    case 1: actions.emplace_back(OpenControllers{}); break;
    case 2: actions.emplace_back(OpenAbout{}); break;
    case 3: actions.emplace_back(ToggleFullScreen{}); break;
    }
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

// What a part of the sheet shows and writes to.
struct Sheet {
    const View& view;
    Wanted& wanted;
    Actions& actions;
};
using Part = void (*)(Column&, Sheet&);
using Parts = std::span<const Part>;

constexpr Part look_part = [](Column& column, Sheet& s) { choose_look(column, s.wanted); };
constexpr Part heard_part = [](Column& column, Sheet& s) { sound_part(column, s.view.sound, s.actions); };
constexpr Part size_part = [](Column& column, Sheet& s) {
    true_size(column, s.view.screen_and_help, s.wanted);
};
constexpr Part school_part = [](Column& column, Sheet& s) { instructors_part(column, s.actions); };
constexpr Part hands_part = [](Column& column, Sheet& s) {
    devices_part(column, s.view.screen_and_help.can_fill_screen, s.actions);
};
constexpr Part aids_part = [](Column& column, Sheet& s) { aids(column, s.wanted); };
constexpr Part covers_part = [](Column& column, Sheet& s) { covers(column, s.wanted); };
constexpr Part failures_part = [](Column& column, Sheet& s) { failures(column, s.wanted); };
constexpr Part help_part = [](Column& column, Sheet& s) { help(column, s.view.screen_and_help, s.actions); };

// Where each stands: what leads on to other sheets is seen without scrolling in a common window.
constexpr std::array left{look_part, hands_part, school_part, heard_part, size_part};
constexpr std::array middle{aids_part, covers_part};
constexpr std::array right{failures_part, help_part};
constexpr std::array left_with_covers{look_part, hands_part, school_part, heard_part, covers_part, size_part};
constexpr std::array right_with_aids{aids_part, failures_part, help_part};
constexpr std::array all_parts{look_part,     aids_part, hands_part,  heard_part, covers_part,
                               failures_part, size_part, school_part, help_part};
constexpr Parts left_of_three{left}, middle_of_three{middle}, right_of_three{right};
constexpr Parts left_of_two{left_with_covers}, right_of_two{right_with_aids};
constexpr Parts only_column{all_parts};

void below_each_other(Column& column, Parts parts, Sheet& sheet) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0) gap(column, 1);
        parts[i](column, sheet);
    }
}

void in_columns(Column& page, std::span<const Parts> parts, Sheet& sheet) {
    const std::vector<float> shares(parts.size(), 1.0f);
    std::vector<Column> columns = side_by_side(page, shares, 4);
    for (std::size_t i = 0; i < parts.size(); ++i) below_each_other(columns[i], parts[i], sheet);
    join(page, columns);
}

}  // namespace

Actions draw_screen_and_help(const View& view) {
    Actions actions;
    Wanted wanted{view.display, false};
    Column page = begin_sheet("screen and help");
    const ButtonWords back{view.screen_and_help.in_flight ? "Back to the flight" : "Back", Weight::primary,
                           "H"};
    if (title_with_way_back(page, "Screen and help", back)) actions.emplace_back(CloseScreenAndHelp{});
    Sheet all{view, wanted, actions};
    const float sizes = measure(page);
    if (sizes >= three_columns_from)
        in_columns(page, std::array{left_of_three, middle_of_three, right_of_three}, all);
    else if (sizes >= two_columns_from) in_columns(page, std::array{left_of_two, right_of_two}, all);
    else below_each_other(page, only_column, all);
    end_sheet(page);
    if (wanted.changed) actions.emplace_back(SetDisplay{wanted.display});
    return actions;
}

}  // namespace slopewise
