// The briefing: the numbers, the heights, what the lights will show, what to remember, the keys. One screen.
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/screens/lead_to_sources.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/light_picture.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 34;
// Text sizes down the window that all of it needs with so many keys, and with each more.
constexpr float least_height = 27, usual_keys = 9, each_key_more = 1.25f;

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float text_height() { return theme().size[static_cast<std::size_t>(TextSize::text)]; }

float height_needed(const BriefingView& briefing) {
    const float more = static_cast<float>(briefing.keys.size()) - usual_keys;
    return least_height + each_key_more * std::max(0.0f, more);
}

void numbers(Column& column, const BriefingView& briefing) {
    heading(column, "The numbers");
    labelled_rows(column, briefing.numbers);
}

// Distances and heights side by side, as they come: the farthest first.
void heights(Column& column, const BriefingView& briefing) {
    const Palette& c = theme().colour;
    heading(column, "On the path, above the aim point");
    gap(column, 0.25f);
    const float each = column.width / static_cast<float>(std::max<std::size_t>(briefing.heights.size(), 1));
    for (std::size_t i = 0; i < briefing.heights.size(); ++i) {
        const LabelledValue& height = briefing.heights[i];
        const float left = column.left + each * static_cast<float>(i);
        text_at(column.list, {left, column.y}, TextSize::note, c.ink_soft, height.label);
        const float below = column.y + line_height(TextSize::note) - grid(0.25f);
        const ImVec2 value = text_at(column.list, {left, below}, TextSize::text, c.ink, height.value, true);
        text_at(column.list, {left + value.x + grid(0.75f), below + 0.79f * (text_height() - note_height())},
                TextSize::note, c.ink_soft, height.unit);
    }
    column.y += line_height(TextSize::note) + line_height(TextSize::text);
}

void lights(Column& column, const BriefingView& briefing) {
    const Palette& c = theme().colour;
    heading(column, "What the lights will show");
    const float lamp = std::round(note_height() * 0.82f);
    float lamps_width = 0;
    for (const auto& row : briefing.lights) {
        const float top = std::round(column.y + grid(0.5f));
        const ImVec2 size = draw_light_picture(column.list, {column.left, top + (note_height() - lamp) / 2},
                                               lamp, row.lights);
        lamps_width = std::max(lamps_width, size.x);
        Column words{column.list, column.left + lamps_width + grid(2), column.width - lamps_width - grid(2),
                     top};
        paragraph(words, TextSize::note, c.ink, row.where, true);
        words.y -= grid(0.25f);
        paragraph(words, TextSize::note, c.ink_soft, row.meaning);
        column.y = words.y;
    }
}

void reminders(Column& column, const BriefingView& briefing) {
    heading(column, "Remember");
    for (const std::string& sentence : briefing.reminders) {
        paragraph(column, TextSize::note, theme().colour.ink, sentence);
        gap(column, 0.5f);
    }
}

// Two sentences a line, read across.
void reminders_in_two(Column& page, const BriefingView& briefing) {
    heading(page, "Remember");
    const std::array<float, 2> shares{1, 1};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    for (std::size_t i = 0; i < briefing.reminders.size(); ++i) {
        Column& column = columns[i % 2];
        if (i % 2 == 0) columns[0].y = columns[1].y = std::max(columns[0].y, columns[1].y);
        paragraph(column, TextSize::note, theme().colour.ink, briefing.reminders[i]);
        gap(column, 0.25f);
    }
    join(page, columns);
}

void keys(Column& column, const BriefingView& briefing, Actions& actions) {
    heading(column, "Keys");
    gap(column, 0.5f);
    key_rows(column, briefing.keys);
    const std::array<ButtonWords, 1> change{{{"Change the stick keys", Weight::quiet}}};
    Column outset{column.list, column.left - grid(1), column.width + grid(1), column.y};
    if (button_row(outset, change) == 0) actions.emplace_back(AskStickSense{});
    column.y = outset.y;
}

std::array<ButtonWords, 2> step_words(const BriefingView& briefing) {
    return {{{"Fly it", Weight::primary}, {briefing.back.c_str(), Weight::plain}}};
}

float steps_width(const BriefingView& briefing) {
    const std::array<ButtonWords, 2> steps = step_words(briefing);
    return button_width(steps[0]) + grid(1.5f) + button_width(steps[1]);
}

void next_step(Column& column, const BriefingView& briefing, Actions& actions) {
    const int pressed = button_row(column, step_words(briefing));
    if (pressed == 0) actions.emplace_back(StartFlight{});
    if (pressed == 1) actions.emplace_back(GoToChoices{});
}

// Where the sheet is longer than the window, the step on stands at its head: beside the title if there is
// room.
void title(Column& page, const BriefingView& briefing, bool steps_at_head, Actions& actions) {
    const Palette& c = theme().colour;
    const float steps = steps_width(briefing);
    const bool beside =
        steps_at_head && text_extent(TextSize::title, briefing.title, true).x + grid(4) + steps <= page.width;
    if (beside) {
        Column corner{page.list, page.right() - steps, steps + 1, page.y};
        next_step(corner, briefing, actions);
    }
    paragraph(page, TextSize::title, c.ink, briefing.title, true);
    if (beside) page.y = std::max(page.y, page.y - line_height(TextSize::title) + press_height() + grid(1));
    paragraph(page, TextSize::text, c.ink_soft, briefing.aim);
    paragraph(page, TextSize::note, c.ink_soft,
              briefing.place + "." + (briefing.run.empty() ? "" : " " + briefing.run));
    if (steps_at_head && !beside) {
        gap(page, 2);
        next_step(page, briefing, actions);
    }
    gap(page, 0.5f);
}

}  // namespace

Actions draw_briefing(const View& view) {
    Actions actions;
    const BriefingView& briefing = view.briefing;
    Column page = begin_sheet("briefing");
    const float sizes = measure(page);
    const bool fits = sizes >= three_columns_from &&
                      ImGui::GetIO().DisplaySize.y >= height_needed(briefing) * text_height();
    title(page, briefing, !fits, actions);
    if (sizes >= three_columns_from) {
        const std::array<float, 3> shares{0.34f, 0.33f, 0.33f};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        numbers(columns[0], briefing);
        gap(columns[0], 1.5f);
        heights(columns[0], briefing);
        lights(columns[1], briefing);
        keys(columns[2], briefing, actions);
        join(page, columns);
        gap(page, 1.5f);
        reminders_in_two(page, briefing);
    } else if (sizes >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        numbers(columns[0], briefing);
        gap(columns[0], 1.5f);
        heights(columns[0], briefing);
        gap(columns[0], 1.5f);
        reminders(columns[0], briefing);
        lights(columns[1], briefing);
        gap(columns[1], 1.5f);
        keys(columns[1], briefing, actions);
        join(page, columns);
    } else {
        numbers(page, briefing);
        gap(page, 1.5f);
        heights(page, briefing);
        gap(page, 1.5f);
        lights(page, briefing);
        gap(page, 1.5f);
        reminders(page, briefing);
        gap(page, 1.5f);
        keys(page, briefing, actions);
    }
    if (fits) {
        gap(page, 2);
        next_step(page, briefing, actions);
        lead_to_sources_beside(page, steps_width(briefing), actions);
    } else {
        gap(page, 1);
        lead_to_sources(page, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
