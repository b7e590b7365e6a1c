// All lessons in the order of the syllabus, in their groups. Any of them can be opened at any time.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/list_keys.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 44;  // text sizes across the page

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

std::vector<const LessonsView::Row*> all_rows(const LessonsView& sheet) {
    std::vector<const LessonsView::Row*> rows;
    for (const LessonsView::Group& group : sheet.groups)
        for (const LessonsView::Row& row : group.rows) rows.push_back(&row);
    return rows;
}

// Number, title and aim; what is known of it beside them where that leaves room, else below.
struct RowPlaces {
    float number = 0, words = 0, known = 0;  // widths
    bool beside = false;
};

RowPlaces places_in(float width) {
    RowPlaces places;
    places.number = std::round(note_px() * 2.2f);
    places.beside = width >= two_columns_from * theme().size[static_cast<std::size_t>(TextSize::text)];
    const float rest = width - places.number - grid(3);
    places.words = places.beside ? std::round(0.55f * rest) : rest;
    places.known = places.beside ? rest - places.words - grid(3) : rest;
    return places;
}

std::string title_of(const LessonsView::Row& row) { return row.title + (row.next ? "  (next)" : ""); }

void fill(Column words, Column known, const LessonsView::Row& row, bool chosen, float& bottom) {
    const Palette& c = theme().colour;
    const bool beside = known.left != words.left;
    paragraph(words, TextSize::note, chosen || row.next ? c.accent : c.ink, title_of(row), true);
    paragraph(words, TextSize::note, c.ink, row.aim);
    if (!beside) known.y = words.y;
    paragraph(known, TextSize::note, c.ink_soft, row.known);
    bottom = std::max(words.y, known.y);
}

float row_height(const RowPlaces& places, const LessonsView::Row& row) {
    const float words = paragraph_height(TextSize::note, title_of(row), places.words, true) +
                        paragraph_height(TextSize::note, row.aim, places.words);
    const float known = paragraph_height(TextSize::note, row.known, places.known);
    const float height = places.beside ? std::max(words, known) : words + known;
    return std::max(44.0f, std::round(height + grid(1.5f)));
}

// The chosen row is brought into the window when it is another than in the last frame.
void follow(float top, float bottom) {
    const float window = ImGui::GetIO().DisplaySize.y, edge = grid(1);
    if (top < edge) ImGui::SetScrollY(ImGui::GetScrollY() + top - edge);
    else if (bottom > window - edge) ImGui::SetScrollY(ImGui::GetScrollY() + bottom - window + edge);
}

void draw_row(Column& page, const LessonsView::Row& row, bool chosen, Actions& actions) {
    const Palette& c = theme().colour;
    const RowPlaces places = places_in(page.width);
    const ImVec2 min{page.left, std::round(page.y)};
    const float height = row_height(places, row);
    const ImVec2 max{page.right(), min.y + height};
    const Press press = press_area(row.id.c_str(), min, {page.width, height});
    if (chosen || press.hovered) page.list->AddRectFilled(min, max, c.band);
    if (chosen) page.list->AddRectFilled(min, {min.x + grid(0.5f), max.y}, c.accent);
    const float top = min.y + grid(0.75f), left = page.left + grid(1.5f);
    text_right(page.list, {left + places.number - grid(1), top}, TextSize::note, c.ink_soft, row.number);
    const Column words{page.list, left + places.number, places.words, top};
    const Column known{page.list, places.beside ? words.right() + grid(3) : words.left, places.known, top};
    float bottom = top;
    fill(words, known, row, chosen, bottom);
    if (press.focused) focus_ring(page.list, min, max, c.ink);
    page.y = max.y;
    if (press.pressed) actions.emplace_back(OpenLesson{row.id});
}

void choose_with_keys(const LessonsView& sheet, const std::vector<const LessonsView::Row*>& rows,
                      Actions& actions) {
    const int wanted = sheet.chosen + list_steps();
    if (wanted == sheet.chosen || wanted < 0 || wanted >= static_cast<int>(rows.size())) return;
    actions.emplace_back(ChooseLesson{rows[static_cast<std::size_t>(wanted)]->id});
}

void head(Column& page, const View& view, const std::vector<const LessonsView::Row*>& rows,
          Actions& actions) {
    const Palette& c = theme().colour;
    const LessonsView& sheet = view.lessons;
    if (title_with_way_back(page, "Lessons", {"Back", Weight::plain, "S"}))
        actions.emplace_back(CloseLessons{});
    if (!view.notice.empty()) attention_note(page, view.notice);
    paragraph(page, TextSize::text, c.ink, sheet.going_on, true);
    paragraph(page, TextSize::note, c.ink_soft, "The order is advice: any lesson can be flown at any time.");
    gap(page, 1);
    constexpr std::array<ButtonWords, 2> buttons{
        {{"Open the lesson", Weight::primary}, {"Screen and help", Weight::quiet, "H"}}};
    const int pressed = button_row(page, buttons);
    if (pressed == 0 && sheet.chosen >= 0)
        actions.emplace_back(OpenLesson{rows[static_cast<std::size_t>(sheet.chosen)]->id});
    if (pressed == 1) actions.emplace_back(OpenScreenAndHelp{});
    gap(page, 1);
}

}  // namespace

Actions draw_lessons(const View& view, UiState& ui) {
    Actions actions;
    const LessonsView& sheet = view.lessons;
    const std::vector<const LessonsView::Row*> rows = all_rows(sheet);
    Column page = begin_sheet("lessons");
    choose_with_keys(sheet, rows, actions);
    head(page, view, rows, actions);
    int index = 0;
    for (const LessonsView::Group& group : sheet.groups) {
        heading(page, group.title);
        for (const LessonsView::Row& row : group.rows) {
            const bool chosen = index++ == sheet.chosen;
            const float top = page.y;
            draw_row(page, row, chosen, actions);
            if (chosen && ui.lesson_shown != sheet.chosen) follow(top, page.y);
        }
        gap(page, 1.5f);
    }
    ui.lesson_shown = sheet.chosen;
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
