// One's own lessons: those kept on this device, and what is done with the one that is chosen.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"
#include "ui/widgets/options.h"

namespace slopewise {
namespace {

using Wish = DoWithLesson::Wish;

constexpr float two_columns_from = 36;  // text sizes across the page

float text_px() { return theme().size[static_cast<std::size_t>(TextSize::text)]; }

void wish(Actions& actions, Wish what, const std::string& id = "") {
    actions.emplace_back(DoWithLesson{what, id});
}

// The ways to another lesson.
void beginnings(Column& page, const OwnLessonsView& sheet, Actions& actions) {
    std::vector<ButtonWords> buttons{
        {"Write a new one", sheet.rows.empty() ? Weight::primary : Weight::plain, "N"},
        {"Take in a file", Weight::quiet, "I"}};
    std::vector<Wish> wishes{Wish::write_new, Wish::take_in};
    if (!sheet.draft.empty()) {
        buttons.push_back({"Write on", Weight::quiet});
        wishes.push_back(Wish::write_on);
    }
    if (!sheet.arrived.empty()) {
        buttons.push_back({"What came in", Weight::quiet});
        wishes.push_back(Wish::look_at_arrived);
    }
    const int pressed = button_row(page, buttons);
    if (pressed >= 0) wish(actions, wishes[static_cast<std::size_t>(pressed)]);
    gap(page, 0.5f);
    const Palette& c = theme().colour;
    if (!sheet.draft.empty())
        paragraph(page, TextSize::note, c.ink_soft, "Being written: " + sheet.draft + ".");
    if (!sheet.arrived.empty())
        paragraph(page, TextSize::note, c.ink_soft, "Came in: " + sheet.arrived + ".");
}

void tidings(Column& page, const View& view) {
    const OwnLessonsView& sheet = view.own_lessons;
    if (!view.notice.empty()) attention_note(page, view.notice);
    if (!sheet.trouble.empty()) attention_note(page, sheet.trouble);
    if (!sheet.news.empty()) paragraph(page, TextSize::note, theme().colour.ink, sheet.news, true);
    gap(page, 1);
}

void chosen_one(Column& column, const OwnLessonsView& sheet, LessonEditorUi& ui, Actions& actions) {
    const OwnLessonsView::Row& row = sheet.rows[static_cast<std::size_t>(sheet.chosen)];
    heading(column, row.title);
    paragraph(column, TextSize::note, theme().colour.ink_soft, row.about + ".");
    gap(column, 1);
    constexpr std::array<ButtonWords, 6> buttons{{{"Fly it", Weight::primary},
                                                  {"Change it", Weight::plain},
                                                  {"Copy the link", Weight::plain},
                                                  {"Hand over as a file", Weight::quiet},
                                                  {"Make a copy", Weight::quiet},
                                                  {"Delete", Weight::quiet}}};
    constexpr std::array<Wish, 5> wishes{Wish::fly, Wish::open, Wish::copy_link, Wish::hand_over, Wish::copy};
    const int pressed = button_row(column, buttons);
    if (pressed == 5) {
        ui.asks_to_delete = true;
        ui.id = row.id;
        ui.title = row.title;
    } else if (pressed >= 0) {
        wish(actions, wishes[static_cast<std::size_t>(pressed)], row.id);
    }
    gap(column, 1);
}

void list(Column& column, const OwnLessonsView& sheet, Actions& actions) {
    heading(column, sheet.count);
    for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
        const OwnLessonsView::Row& row = sheet.rows[i];
        ImGui::PushID(row.id.c_str());
        if (option_row(column, row.title.c_str(), row.about, static_cast<int>(i) == sheet.chosen))
            wish(actions, Wish::choose, row.id);
        ImGui::PopID();
    }
}

// What was deleted in this sitting.
void deleted(Column& column, const OwnLessonsView& sheet, Actions& actions) {
    if (sheet.deleted.empty()) return;
    gap(column, 1);
    heading(column, "Deleted: can be brought back until you leave");
    for (const OwnLessonsView::Row& row : sheet.deleted) {
        const ButtonWords back{"Bring back", Weight::quiet};
        paragraph(column, TextSize::note, theme().colour.ink, row.title);
        ImGui::PushID(row.id.c_str());
        if (button_row(column, std::span(&back, 1)) == 0) wish(actions, Wish::bring_back, row.id);
        ImGui::PopID();
    }
}

void ask_before_deleting(LessonEditorUi& ui, Actions& actions) {
    const std::string question = "Delete \"" + ui.title + "\"?";
    const std::string after = "It can be brought back until you leave the program.";
    constexpr std::array<ButtonWords, 2> buttons{{{"Leave it", Weight::primary}, {"Delete it"}}};
    const float width = slip_width(26 * text_px());
    const float height = paragraph_height(TextSize::number, question, width, true) + grid(1) +
                         paragraph_height(TextSize::text, after, width) + grid(2) +
                         button_row_height(width, buttons);
    Column page = begin_slip("delete lesson", {width, height});
    paragraph(page, TextSize::number, theme().colour.ink, question, true);
    gap(page, 1);
    paragraph(page, TextSize::text, theme().colour.ink_soft, after);
    gap(page, 2);
    const int pressed = button_row(page, buttons);
    end_slip(page);
    if (pressed == 1) wish(actions, Wish::remove, ui.id);
    if (pressed >= 0) ui.asks_to_delete = false;
}

// While something is asked, the sheet lies still under a veil.
void veil(const Column& page) {
    const ImU32 paper = theme().colour.paper;
    page.list->AddRectFilled({0, 0}, ImGui::GetIO().DisplaySize,
                             (paper & ~IM_COL32_A_MASK) | (170u << IM_COL32_A_SHIFT));
}

void lessons(Column& page, const OwnLessonsView& sheet, LessonEditorUi& ui, Actions& actions) {
    if (sheet.rows.empty()) {
        paragraph(page, TextSize::text, theme().colour.ink,
                  "No lesson of your own is kept here yet. Write one: it begins with the approach you have "
                  "chosen.");
        return deleted(page, sheet, actions);
    }
    const bool two = measure(page) >= two_columns_from;
    if (!two) {
        if (sheet.chosen >= 0) chosen_one(page, sheet, ui, actions);
        list(page, sheet, actions);
        return deleted(page, sheet, actions);
    }
    const std::array<float, 2> shares{1, 1};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    list(columns[0], sheet, actions);
    if (sheet.chosen >= 0) chosen_one(columns[1], sheet, ui, actions);
    deleted(columns[1], sheet, actions);
    join(page, columns);
}

}  // namespace

Actions draw_own_lessons(const View& view, LessonEditorUi& ui) {
    const OwnLessonsView& sheet = view.own_lessons;
    Actions actions;
    Column page = begin_sheet("own lessons");
    ImGui::BeginDisabled(ui.asks_to_delete);
    if (title_with_way_back(page, "Your own lessons", {"Back", Weight::plain, "K"}))
        actions.emplace_back(CloseOwnLessons{});
    beginnings(page, sheet, actions);
    tidings(page, view);
    lessons(page, sheet, ui, actions);
    ImGui::EndDisabled();
    if (ui.asks_to_delete) veil(page);
    end_sheet(page);
    if (ui.asks_to_delete) ask_before_deleting(ui, actions);
    return actions;
}

}  // namespace slopewise
