// Where and when the approach is flown: the airfield, the aircraft, the light of the hour and the weather.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "ui/screens/screens.h"
#include "ui/widgets/options.h"
#include "ui/widgets/switches.h"

namespace slopewise {
namespace {

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 32;

// What is asked for: the choice as given with one thing changed.
struct Wanted {
    WhereAndWhenChoice choice;
    bool changed = false;

    void take(int& index, int pressed) {
        if (pressed < 0 || pressed == index) return;
        index = pressed;
        changed = true;
    }
};

void option_list(Column& column, const char* words, const std::vector<WhereAndWhenView::Option>& options,
                 int& chosen, Wanted& wanted) {
    heading(column, words);
    int pressed = -1;
    for (std::size_t i = 0; i < options.size(); ++i) {
        const int index = static_cast<int>(i);
        if (option_row(column, options[i].name.c_str(), options[i].about, index == chosen)) pressed = index;
    }
    wanted.take(chosen, pressed);
}

void on_off(Column& column, const char* words, bool& on, Wanted& wanted) {
    if (!switch_row(column, words, on)) return;
    on = !on;
    wanted.changed = true;
}

void light_and_weather(Column& column, const WhereAndWhenView& sheet, Wanted& wanted) {
    heading(column, "Light");
    gap(column, 0.5f);
    wanted.take(wanted.choice.light, choice_row(column, "light", sheet.lights, wanted.choice.light));
    if (sheet.asks_for_ground_lights)
        on_off(column, "Lights on the ground", wanted.choice.ground_lights, wanted);
    gap(column, 1);
    heading(column, "Visibility and weather");
    gap(column, 0.5f);
    wanted.take(wanted.choice.visibility,
                choice_row(column, "visibility", sheet.visibilities, wanted.choice.visibility));
    on_off(column, "Overcast", wanted.choice.overcast, wanted);
    on_off(column, "Rain", wanted.choice.rain, wanted);
}

void airfields(Column& column, const WhereAndWhenView& sheet, Wanted& wanted) {
    option_list(column, "Airfield", sheet.airfields, wanted.choice.airfield, wanted);
}

void aircraft(Column& column, const WhereAndWhenView& sheet, Wanted& wanted) {
    option_list(column, "Aircraft", sheet.aircraft, wanted.choice.aircraft, wanted);
}

void chosen_words(Column& column, const WhereAndWhenView& sheet) {
    paragraph(column, TextSize::text, theme().colour.ink, sheet.sentence + ".", true);
}

}  // namespace

Actions draw_where_and_when(const View& view) {
    Actions actions;
    const WhereAndWhenView& sheet = view.where_and_when;
    Wanted wanted{sheet.chosen};
    Column page = begin_sheet("where and when");
    if (title_with_way_back(page, "Where and when", {"Back to choices", Weight::primary, "W"}))
        actions.emplace_back(CloseWhereAndWhen{});
    const float sizes = measure(page);
    if (sizes >= two_columns_from) {
        const bool three = sizes >= three_columns_from;
        const std::array<float, 3> shares{1, 1, 1};
        std::vector<Column> columns = side_by_side(page, std::span(shares).first(three ? 3 : 2), 4);
        airfields(columns[0], sheet, wanted);
        aircraft(columns[1], sheet, wanted);
        if (!three) gap(columns[1], 1);
        light_and_weather(columns[three ? 2 : 1], sheet, wanted);
        join(page, columns);
    } else {
        airfields(page, sheet, wanted);
        gap(page, 1);
        aircraft(page, sheet, wanted);
        gap(page, 1);
        light_and_weather(page, sheet, wanted);
    }
    gap(page, 1.5f);
    chosen_words(page, sheet);
    end_sheet(page);
    if (wanted.changed) actions.emplace_back(SetWhereAndWhen{wanted.choice});
    return actions;
}

}  // namespace slopewise
