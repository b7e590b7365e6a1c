// The first screen: what this is, which approach to fly, and the caution.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/choice_figure.h"
#include "ui/screens/lead_to_sources.h"
#include "ui/screens/screens.h"
#include "ui/screens/update_line.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 36;  // text sizes across the page
constexpr float short_below = 27;       // text sizes down the window: a phone on its side

bool is_short() {
    return ImGui::GetIO().DisplaySize.y <
           short_below * theme().size[static_cast<std::size_t>(TextSize::text)];
}

void label(Column& column, std::string_view words) {
    paragraph(column, TextSize::note, theme().colour.ink_soft, words);
    gap(column, 0.25f);
}

constexpr std::string_view about_words =
    "Practise the picture and the airspeed on a three-degree final approach.";

// Who flies, opposite what the program is for, where that leaves room.
void student_opposite(const Column& page, const std::string& student) {
    const ImVec2 about = text_extent(TextSize::text, about_words);
    const ImVec2 words = text_extent(TextSize::note, student);
    if (about.x + grid(4) + words.x > page.width) return;
    // On its baseline, which lies 0.79 of its height down.
    text_right(page.list, {page.right(), page.y + 0.79f * (about.y - words.y)}, TextSize::note,
               theme().colour.ink_soft, student);
}

void name_and_call(Column& page, const View& view, Actions& actions) {
    const Palette& c = theme().colour;
    if (title_with_way_back(page, "Slopewise", {"First page", Weight::quiet, "Esc"}))
        actions.emplace_back(OpenFirstPage{});
    student_opposite(page, view.choice.student);
    paragraph(page, TextSize::text, c.ink_soft, about_words);
    gap(page, 1);
    rule(page);
    gap(page, is_short() ? 0.5f : 1.0f);
    update_line(page, view, actions);
    paragraph(page, TextSize::number, c.ink, "Choose an approach, then brief it.", true);
    gap(page, is_short() ? 0.5f : 1.0f);
}

void choose_distance(Column& column, const ChoiceView& choice, Actions& actions) {
    std::vector<std::string> labels;
    int chosen = -1;
    for (std::size_t i = 0; i < choice.distances_nm.size(); ++i) {
        labels.push_back(std::to_string(choice.distances_nm[i]) + " NM");
        if (choice.distances_nm[i] == choice.distance_nm) chosen = static_cast<int>(i);
    }
    label(column, "Start this far from the aim point");
    const int pressed = choice_row(column, "distance", labels, chosen);
    if (pressed >= 0)
        actions.emplace_back(ChooseDistance{choice.distances_nm[static_cast<std::size_t>(pressed)]});
}

void choose_position(Column& column, const ChoiceView& choice, Actions& actions) {
    label(column, "Above, on or below the path");
    const int pressed = choice_row(column, "position", choice.positions, choice.position);
    if (pressed >= 0) actions.emplace_back(ChoosePosition{pressed});
}

void choose_headwind(Column& column, const ChoiceView& choice, Actions& actions) {
    label(column, "Headwind");
    const std::string value = std::to_string(std::lround(choice.headwind_kt));
    const auto moved =
        slider(column, {"headwind", value, "kt", "20"}, choice.headwind_kt, choice.max_headwind_kt, 1.0);
    if (moved) actions.emplace_back(ChooseHeadwind{*moved});
}

void choose(Column& column, const ChoiceView& choice, Actions& actions) {
    choose_distance(column, choice, actions);
    gap(column, is_short() ? 1.0f : 1.5f);
    choose_position(column, choice, actions);
    gap(column, is_short() ? 1.0f : 1.5f);
    choose_headwind(column, choice, actions);
}

// What is flown, where and when; pressing the words changes that.
void place(Column& column, const ChoiceView& choice, Actions& actions) {
    const Palette& c = theme().colour;
    const std::string words = choice.place + ". Change: W";
    const float words_height = paragraph_height(TextSize::note, words, column.width);
    const float height = std::max(press_height(), std::round(words_height));
    const ImVec2 min{column.left, std::round(column.y)}, size{column.width, height};
    const Press press = press_area("where and when", min, size);
    Column line{column.list, column.left, column.width, min.y + std::round((height - words_height) / 2)};
    paragraph(line, TextSize::note, press.hovered ? c.ink : c.accent, words);
    if (press.focused) focus_ring(column.list, min, {min.x + size.x, min.y + size.y}, c.ink);
    if (press.pressed) actions.emplace_back(OpenWhereAndWhen{});
    column.y = min.y + height;
}

void brief_it(Column& column, const ChoiceView& choice, Actions& actions) {
    const Palette& c = theme().colour;
    if (!choice.problem.empty()) {
        paragraph(column, TextSize::text, c.attention, choice.problem, true);
        paragraph(column, TextSize::text, c.ink, "Choose another start, aircraft or less wind.");
        place(column, choice, actions);
        return;
    }
    paragraph(column, TextSize::text, c.ink, choice.sentence + ".", true);
    place(column, choice, actions);
    constexpr std::array<ButtonWords, 3> buttons{{{"Brief it", Weight::primary},
                                                  {"Fly it now", Weight::plain, "F"},
                                                  {"Screen and help", Weight::quiet, "H"}}};
    const int pressed = button_row(column, buttons);
    if (pressed == 0) actions.emplace_back(OpenBriefing{});
    if (pressed == 1) actions.emplace_back(FlyNow{});
    if (pressed == 2) actions.emplace_back(OpenScreenAndHelp{});
}

// Whether the way to the sources has room to the right of the cautions, below the version.
bool sources_beside_caution(const View& view, float width) {
    float widest = 0;
    for (const std::string& line : view.caution)
        widest = std::max(widest, text_extent(TextSize::note, line).x);
    return widest + grid(4) + button_width(sources_words) <= width;
}

float caution_height(const View& view, float width) {
    float height = grid(1);
    for (const std::string& line : view.caution) height += paragraph_height(TextSize::note, line, width);
    if (!view.notice.empty()) height += paragraph_height(TextSize::note, view.notice, width - grid(3));
    if (!sources_beside_caution(view, width)) height += press_height();
    return height;
}

void caution(Column& page, const View& view, Actions& actions) {
    const Palette& c = theme().colour;
    rule(page);
    gap(page, 1);
    if (!view.notice.empty()) {
        const float mark = grid(1.5f);
        mark_out(page.list, {page.left + mark / 2, page.y + line_height(TextSize::note) * 0.42f}, mark,
                 c.attention);
        Column beside{page.list, page.left + grid(3), page.width - grid(3), page.y};
        paragraph(beside, TextSize::note, c.attention, view.notice);
        page.y = beside.y;
    }
    const float bottom = page.y;
    for (const std::string& line : view.caution) paragraph(page, TextSize::note, c.ink_soft, line);
    const float version_width = text_extent(TextSize::note, view.version).x;
    if (page.width > 2 * version_width + grid(90))
        text_right(page.list, {page.right(), bottom}, TextSize::note, c.ink_soft, view.version);
    if (sources_beside_caution(view, page.width)) {
        const float below = (press_height() - line_height(TextSize::note)) / 2;
        Column foot = page;
        foot.y = page.y + below;
        lead_to_sources_beside(foot, 0, actions);
    } else {
        lead_to_sources(page, actions);
    }
}

void figure_in(Column& column, float height, const ChoiceView& choice) {
    draw_choice_figure(column.list, {column.left, column.y}, {column.right(), column.y + height}, choice);
    column.y += height;
}

// What is left of the window for the figure, so that the caution stands at the foot of the sheet.
float figure_height(const Column& page, float foot) {
    const float free =
        ImGui::GetIO().DisplaySize.y - sheet_margin() - foot - grid(2) - (page.y + ImGui::GetScrollY());
    return std::max(free, grid(24));
}

}  // namespace

Actions draw_choices(const View& view) {
    Actions actions;
    Column page = begin_sheet("choices");
    name_and_call(page, view, actions);
    const float foot = caution_height(view, page.width);
    if (measure(page) >= two_columns_from) {
        const float figure = figure_height(page, foot);
        const std::array<float, 2> shares{0.46f, 0.54f};
        std::vector<Column> columns = side_by_side(page, shares, 6);
        choose(columns[0], view.choice, actions);
        if (is_short()) {
            figure_in(
                columns[1],
                columns[0].y - columns[1].y - 2 * press_height() - line_height(TextSize::text) - grid(2.5f),
                view.choice);
            gap(columns[1], 1.5f);
            brief_it(columns[1], view.choice, actions);
        } else {
            gap(columns[0], 2);
            brief_it(columns[0], view.choice, actions);
            figure_in(columns[1], figure, view.choice);
        }
        join(page, columns);
    } else {
        choose(page, view.choice, actions);
        gap(page, 2);
        brief_it(page, view.choice, actions);
        gap(page, 2.5f);
        figure_in(page, std::round(page.width * 0.55f), view.choice);
    }
    gap(page, 2);
    caution(page, view, actions);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
