// A class in one table: a row for each student and lesson, sorted by whichever head is pressed. Only what is
// in the window is drawn.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/logbook_rows.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

using Row = ClassTableView::Row;
using Wish = DoWithClassTable::Wish;

constexpr float table_from = 36;  // text sizes across the page
constexpr std::size_t columns = 7;

struct ColumnOf {
    const char* head;
    std::string Row::*cell;
    float share;  // of the width that is left for words; 0: as wide as its figures
    const char* widest;
};
constexpr std::array<ColumnOf, columns> all{{{"Student", &Row::student, 0.20f, ""},
                                             {"Lesson", &Row::lesson, 0.37f, ""},
                                             {"Attempts", &Row::attempts, 0, "150 (120)"},
                                             {"Off path", &Row::bias, 0, "\u22120.88\u00b0"},
                                             {"Spread", &Row::spread, 0, "\u00b10.88\u00b0"},
                                             {"Last", &Row::last, 0, "2026-08-28"},
                                             {"Fault", &Row::fault, 0.43f, ""}}};
constexpr std::array<ButtonWords, 3> bring{
    {{"Add files", Weight::primary}, {"Add a folder"}, {"Clear", Weight::quiet}}};
constexpr std::array<ButtonWords, 3> take{
    {{"Save as CSV", Weight::plain, "C"}, {"Handout"}, {"Lesson plan"}}};

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float line_px() { return line_height(TextSize::note); }

struct Places {
    std::array<float, columns> left{}, width{};
};

// The mark beside the head that the rows are sorted by: the way they run.
float sort_mark_px() { return note_px(); }

Places places_of(const Column& page) {
    const float between = grid(2);
    Places at;
    float words = page.width - between * static_cast<float>(columns - 1);
    for (std::size_t i = 0; i < columns; ++i) {
        if (all[i].share > 0) continue;
        at.width[i] = std::max(text_extent(TextSize::note, all[i].widest).x,
                               text_extent(TextSize::note, all[i].head, true).x + sort_mark_px());
        words -= at.width[i];
    }
    float left = page.left;
    for (std::size_t i = 0; i < columns; ++i) {
        if (all[i].share > 0) at.width[i] = words * all[i].share;
        at.left[i] = std::round(left);
        left += at.width[i] + between;
    }
    return at;
}

// An open arrow head: up where the least stands first.
void sort_mark(ImDrawList* list, ImVec2 centre, bool falling) {
    const float w = 0.28f * note_px(), h = (falling ? 0.16f : -0.16f) * note_px();
    const std::array<ImVec2, 3> points{
        {{centre.x - w, centre.y - h}, {centre.x, centre.y + h}, {centre.x + w, centre.y - h}}};
    list->AddPolyline(points.data(), 3, theme().colour.ink, 0, std::max(1.5f, note_px() / 9));
}

void heads(Column& page, const ClassTableView& sheet, const Places& at, Actions& actions) {
    const Palette& c = theme().colour;
    for (std::size_t i = 0; i < columns; ++i) {
        const bool sorted = static_cast<int>(i) == sheet.sorted_by;
        const ImVec2 min{at.left[i], std::round(page.y)}, size{at.width[i], press_height()};
        const Press press = press_area(all[i].head, min, size);
        const float y = min.y + (size.y - note_px()) / 2;
        if (press.hovered) page.list->AddRectFilled(min, {min.x + size.x, min.y + size.y}, c.band);
        const float words =
            text_at(page.list, {min.x, y}, TextSize::note, sorted ? c.ink : c.ink_soft, all[i].head, sorted)
                .x;
        if (sorted)
            sort_mark(page.list, {min.x + words + 0.5f * note_px(), y + 0.55f * note_px()}, sheet.falling);
        if (press.focused) focus_ring(page.list, min, {min.x + size.x, min.y + size.y}, c.ink);
        if (press.pressed) actions.emplace_back(DoWithClassTable{Wish::sort_by, static_cast<int>(i)});
    }
    page.y += press_height();
}

// On a narrow page the same as a row of choices, by what else is wanted most.
void narrow_heads(Column& page, const ClassTableView& sheet, Actions& actions) {
    static const std::array<std::string, 4> names{"Student", "Lesson", "Spread", "Last"};
    constexpr std::array<int, 4> which{0, 1, 4, 5};
    const auto* const chosen = std::ranges::find(which, sheet.sorted_by);
    paragraph(
        page, TextSize::note, theme().colour.ink_soft,
        sheet.falling ? "Sorted, the greatest first; press again to turn" : "Sorted by; press again to turn");
    const int index = chosen == which.end() ? -1 : static_cast<int>(chosen - which.begin());
    const int pressed = choice_row(page, "sorted by", names, index);
    if (pressed >= 0)
        actions.emplace_back(DoWithClassTable{Wish::sort_by, which[static_cast<std::size_t>(pressed)]});
    gap(page, 0.5f);
}

void wide_row(ImDrawList* list, const Places& at, float y, const Row& row) {
    for (std::size_t i = 0; i < columns; ++i)
        text_within(list, {at.left[i], y}, at.width[i], TextSize::note, theme().colour.ink, row.*all[i].cell,
                    i == 0);
}

void narrow_row(const Column& page, float y, const Row& row) {
    const Palette& c = theme().colour;
    const auto line = [&](int number) { return y + static_cast<float>(number) * line_px(); };
    const float date = text_extent(TextSize::note, row.last).x;
    text_within(page.list, {page.left, y}, page.width - date - grid(1), TextSize::note, c.ink, row.student,
                true);
    text_right(page.list, {page.right(), y}, TextSize::note, c.ink_soft, row.last);
    text_within(page.list, {page.left, line(1)}, page.width, TextSize::note, c.ink, row.lesson);
    text_within(page.list, {page.left, line(2)}, page.width, TextSize::note, c.ink,
                "attempts " + row.attempts + "; off path " + row.bias + ", spread " + row.spread);
    text_within(page.list, {page.left, line(3)}, page.width, TextSize::note, c.ink_soft, row.fault);
}

void table(Column& page, const ClassTableView& sheet, Actions& actions) {
    const bool wide = measure(page) >= table_from;
    const Places at = places_of(page);
    if (wide) heads(page, sheet, at, actions);
    else narrow_heads(page, sheet, actions);
    const float padding = grid(0.75f);
    const float height = std::round((wide ? 1.0f : 4.0f) * line_px() + 2 * padding);
    const int count = static_cast<int>(sheet.rows.size());
    const float top = page.y, window = ImGui::GetIO().DisplaySize.y;
    const int first = std::clamp(static_cast<int>(-top / height), 0, std::max(0, count - 1));
    for (int i = first; i < count && top + height * static_cast<float>(i) < window; ++i) {
        const float y = std::round(top + height * static_cast<float>(i));
        Column line{page.list, page.left, page.width, y};
        rule(line);
        const Row& row = sheet.rows[static_cast<std::size_t>(i)];
        if (wide) wide_row(page.list, at, y + padding, row);
        else narrow_row(page, y + padding, row);
    }
    page.y = top + height * static_cast<float>(count);
    rule(page);
    gap(page, 1);
}

void news(Column& page, const ClassTableView& sheet) {
    for (const std::string& words : sheet.news) {
        if (words.starts_with("Not read:")) attention_note(page, words);
        else paragraph(page, TextSize::note, theme().colour.ink, words);
    }
    if (!sheet.news.empty()) gap(page, 0.5f);
}

void meanings(Column& page) {
    constexpr std::array<const char*, 4> lines{
        "Attempts: that came to their end; in brackets the unaided ones, where others were aided.",
        "Off path (high: +) and spread: the median of the last five unaided attempts at the lesson, as on "
        "the "
        "student's own progress sheet.",
        "Fault: the one that came most often in the last three attempts; none where none was found.",
        "It shows evidence. It ranks nobody, and it does not say that anyone is ready to land."};
    for (const char* words : lines) paragraph(page, TextSize::note, theme().colour.ink_soft, words);
}

}  // namespace

Actions draw_class_table(const View& view, bool) {
    Actions actions;
    const ClassTableView& sheet = view.class_table;
    Column page = begin_sheet("class table");
    if (title_with_way_back(page, "A class in a table", {"Back", Weight::quiet, "Esc"}))
        actions.emplace_back(CloseClassTable{});
    paragraph(page, TextSize::note, theme().colour.ink_soft,
              "Open your students' files. Nothing of them leaves this machine, and nothing is kept: it is "
              "gone when "
              "you clear it or close the program.");
    gap(page, 0.5f);
    ImGui::BeginDisabled(sheet.reading);
    constexpr std::array<Wish, 3> brings{Wish::add_files, Wish::add_folder, Wish::clear};
    if (const int pressed = button_row(page, bring); pressed >= 0)
        actions.emplace_back(DoWithClassTable{brings[static_cast<std::size_t>(pressed)]});
    ImGui::EndDisabled();
    gap(page, 0.5f);
    constexpr std::array<Wish, 3> takes{Wish::save, Wish::hand_out, Wish::lesson_plan};
    if (const int pressed = button_row(page, take); pressed >= 0)
        actions.emplace_back(DoWithClassTable{takes[static_cast<std::size_t>(pressed)]});
    gap(page, 0.5f);
    if (!sheet.summary.empty()) paragraph(page, TextSize::note, theme().colour.ink, sheet.summary, true);
    news(page, sheet);
    if (!sheet.rows.empty()) table(page, sheet, actions);
    meanings(page);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
