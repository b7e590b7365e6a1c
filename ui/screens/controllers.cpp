// Sticks, yokes and levers: what each part does, how it feels, and the steps that measure it.
#include <array>
#include <cmath>
#include <span>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/axis_plot.h"
#include "ui/widgets/chooser.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/dial.h"
#include "ui/widgets/switches.h"

namespace slopewise {
namespace {

using Wish = DoWithController::Wish;

constexpr float two_columns_from = 32;  // text sizes across the page
constexpr double most_dead_zone_percent = 30, dead_zone_step = 1, expo_step = 10;
constexpr int buttons_from = 12;  // where buttons are counted on behind the axes

void ask(Actions& actions, Wish wish, int which = 0, double amount = 0) {
    actions.emplace_back(DoWithController{wish, which, amount});
}

void choose_device(Column& column, const ControllersView& sheet, Actions& actions) {
    heading(column, sheet.devices.size() > 1 ? "The device that is set here" : "The device");
    gap(column, 0.5f);
    if (sheet.devices.size() == 1) {
        paragraph(column, TextSize::text, theme().colour.ink, sheet.devices.front(), true);
    } else {
        std::vector<std::string> numbered;
        for (std::size_t i = 0; i < sheet.devices.size(); ++i) numbered.push_back(std::to_string(i + 1));
        const int pressed = choice_row(column, "device", numbered, sheet.device);
        gap(column, 0.5f);
        paragraph(column, TextSize::text, theme().colour.ink,
                  sheet.devices[static_cast<std::size_t>(sheet.device)], true);
        if (pressed >= 0) ask(actions, Wish::choose, pressed);
    }
    paragraph(column, TextSize::note, theme().colour.ink_soft, sheet.advice);
    gap(column, 1);
}

void begin(Column& column, const ControllersView& sheet, Actions& actions) {
    const std::array<ButtonWords, 2> words{{{"Calibrate step by step"}, {"As it comes"}}};
    const int pressed = button_row(column, std::span(words.data(), sheet.kept ? 2 : 1));
    if (pressed == 0) ask(actions, Wish::calibrate);
    if (pressed == 1) ask(actions, Wish::forget);
    gap(column, 1);
}

void calibration(Column& column, const ControllersView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    heading(column, sheet.step_count);
    gap(column, 0.5f);
    paragraph(column, TextSize::text, c.ink, sheet.step, true);
    paragraph(column, TextSize::note, c.ink_soft,
              sheet.found.empty() ? "Then go on. Nothing is changed before the last step." : sheet.found);
    gap(column, 1);
    const std::array<ButtonWords, 3> words{
        {{sheet.last_step ? "Finish" : "Next", Weight::primary, "Enter"}, {"Leave this out"}, {"Stop"}}};
    const int pressed = button_row(column, words);
    if (pressed == 0) ask(actions, Wish::next_step);
    if (pressed == 1) ask(actions, Wish::next_step, 1);
    if (pressed == 2) ask(actions, Wish::leave);
    gap(column, 1);
}

void percent_slider(Column& column, const char* name, const char* words, double share, double most,
                    double step, Wish wish, int axis, Actions& actions) {
    paragraph(column, TextSize::note, theme().colour.ink, words);
    const std::string value = whole_number(100 * share);
    const auto moved = slider(column, {name, value, "%", "100"}, std::round(100 * share), most, step);
    if (moved) ask(actions, wish, axis, *moved / 100);
}

void plot(Column& column, const ControllersView::Axis& axis) {
    if (axis.told) axis_plot(column, axis.raw_trace, axis.shaped_trace, axis.springs || axis.stays);
    else paragraph(column, TextSize::note, theme().colour.ink_soft, "Not moved yet.");
    gap(column, 0.5f);
}

void axis_settings(Column& column, const ControllersView& sheet, int number, Actions& actions) {
    const ControllersView::Axis& axis = sheet.axes[static_cast<std::size_t>(number)];
    constexpr double still = 0.1;  // of full: further over, its mark is lit
    const bool over = axis.told && std::abs(axis.raw) > still;
    ImGui::PushID(number);
    if (const auto chosen = chooser(column, axis.name.c_str(), sheet.axis_choices, axis.chosen, over))
        ask(actions, Wish::set_axis, number, *chosen);
    if (axis.springs || axis.stays) {
        plot(column, axis);
        if (switch_row(column, "The other way round", axis.inverted)) ask(actions, Wish::invert, number);
    }
    if (axis.springs) {
        percent_slider(column, "dead zone", "Dead zone about the centre", axis.dead_zone,
                       most_dead_zone_percent, dead_zone_step, Wish::set_dead_zone, number, actions);
        percent_slider(column, "expo", "Expo: gentler near the centre", axis.expo, 100, expo_step,
                       Wish::set_expo, number, actions);
    }
    ImGui::PopID();
    gap(column, axis.springs || axis.stays ? 1.5f : 0.5f);
}

void axes_that(Column& column, const ControllersView& sheet, bool fly, Actions& actions) {
    for (int i = 0; i < static_cast<int>(sheet.axes.size()); ++i) {
        const ControllersView::Axis& axis = sheet.axes[static_cast<std::size_t>(i)];
        if ((axis.springs || axis.stays) == fly) axis_settings(column, sheet, i, actions);
    }
}

bool any_axis(const ControllersView& sheet, bool flies) {
    for (const ControllersView::Axis& axis : sheet.axes)
        if ((axis.springs || axis.stays) == flies) return true;
    return false;
}

void flying_axes(Column& column, const ControllersView& sheet, Actions& actions) {
    if (!any_axis(sheet, true)) return;
    heading(column, "What is flown with");
    paragraph(column, TextSize::note, theme().colour.ink_soft,
              "Thin: what the device gives. Thick: what is flown, after dead zone and expo.");
    gap(column, 0.5f);
    axes_that(column, sheet, true, actions);
}

void the_rest(Column& column, const ControllersView& sheet, Actions& actions) {
    if (any_axis(sheet, false)) {
        heading(column, "Other axes");
        axes_that(column, sheet, false, actions);
        gap(column, 1);
    }
    if (sheet.buttons.empty()) return;
    heading(column, "Buttons");
    for (int i = 0; i < static_cast<int>(sheet.buttons.size()); ++i) {
        const ControllersView::Button& one = sheet.buttons[static_cast<std::size_t>(i)];
        if (const auto chosen = chooser(column, one.name.c_str(), sheet.button_choices, one.chosen, one.down))
            ask(actions, Wish::set_axis, buttons_from + i, *chosen);
    }
}

// While a calibration runs, every axis is shown and none is set.
void all_plots(Column& column, const ControllersView& sheet) {
    for (const ControllersView::Axis& axis : sheet.axes) {
        paragraph(column, TextSize::note, theme().colour.ink, axis.name, true);
        plot(column, axis);
    }
}

void filled(Column& page, const ControllersView& sheet, Actions& actions) {
    const bool calibrates = !sheet.step.empty();
    const bool beside = measure(page) >= two_columns_from;
    const std::array<float, 2> shares{1, 1};
    std::vector<Column> columns = beside ? side_by_side(page, shares, 4) : std::vector<Column>{page};
    Column& second = columns.back();
    choose_device(columns[0], sheet, actions);
    if (calibrates) {
        calibration(columns[0], sheet, actions);
        all_plots(beside ? second : columns[0], sheet);
    } else {
        begin(columns[0], sheet, actions);
        flying_axes(columns[0], sheet, actions);
        the_rest(beside ? second : columns[0], sheet, actions);
    }
    join(page, columns);
}

}  // namespace

Actions draw_controllers(const View& view) {
    const ControllersView& sheet = view.controllers;
    const Palette& c = theme().colour;
    Actions actions;
    Column page = begin_sheet("controllers");
    const bool calibrates = !sheet.step.empty();
    const ButtonWords back{calibrates ? "Back" : "Done", calibrates ? Weight::plain : Weight::primary, "Esc"};
    if (title_with_way_back(page, "Stick and levers", back)) actions.emplace_back(CloseControllers{});
    if (!sheet.news.empty()) {
        paragraph(page, TextSize::note, c.attention, sheet.news);
        gap(page, 1);
    }
    if (sheet.devices.empty()) paragraph(page, TextSize::text, c.ink, sheet.advice);
    else filled(page, sheet, actions);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
