// The logbook: who the student is, every attempt kept here, and what is done with one.
#include <array>
#include <cmath>

#include "ui/screens/logbook_rows.h"
#include "ui/screens/logbook_slips.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

void ask(LogbookUi& ui, LogbookUi::Asks question) {
    ui.asks = question;
    ui.just_asked = true;
    ui.name = {};
}

void student(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    constexpr std::array<ButtonWords, 4> buttons{{{"Progress", Weight::plain, "P"},
                                                  {"Another student", Weight::quiet},
                                                  {"Hand over this student's file", Weight::quiet, "T"},
                                                  {"Take in a file", Weight::quiet, "I"}}};
    paragraph(page, TextSize::number, theme().colour.ink, sheet.student.words, true);
    gap(page, 0.5f);
    switch (button_row(page, buttons)) {
    case 0: actions.emplace_back(OpenProgress{}); break;
    case 1: ask(ui, LogbookUi::Asks::student); break;
    case 2: actions.emplace_back(ExportStudent{}); break;
    case 3: actions.emplace_back(ImportFile{}); break;
    default: break;
    }
    gap(page, 1);
}

void attention(Column& page, const std::string& words) {
    const Palette& c = theme().colour;
    const float mark = grid(1.5f);
    mark_out(page.list, {page.left + mark / 2, page.y + line_height(TextSize::note) * 0.42f}, mark,
             c.attention);
    Column beside{page.list, page.left + grid(3), page.width - grid(3), page.y};
    paragraph(beside, TextSize::note, c.attention, words);
    page.y = beside.y;
}

// What the store says: that it is not open, what went wrong, what was done last, what a file has brought.
void tidings(Column& page, const LogbookView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    const float top = page.y;
    if (!sheet.standing.empty()) paragraph(page, TextSize::note, c.ink, sheet.standing, true);
    if (!sheet.trouble.empty()) {
        attention(page, sheet.trouble);
        gap(page, 0.5f);
        constexpr std::array<ButtonWords, 1> hand_over{{{"Hand over the file"}}};
        if (button_row(page, hand_over) == 0) actions.emplace_back(ExportStudent{});
        gap(page, 0.5f);
    }
    if (!sheet.news.empty()) paragraph(page, TextSize::note, c.ink, sheet.news);
    if (!sheet.importing.empty()) paragraph(page, TextSize::note, c.ink, sheet.importing);
    for (const std::string& problem : sheet.problems) attention(page, problem);
    if (page.y > top) gap(page, 1);
}

// How many there are, and the way to what was deleted.
void list_head(Column& page, const LogbookView& sheet, LogbookUi& ui) {
    rule(page);
    gap(page, 0.25f);
    if (sheet.deleted.empty()) {
        gap(page, 0.75f);
        paragraph(page, TextSize::note, theme().colour.ink, sheet.count, true);
        gap(page, 0.5f);
        return;
    }
    // No colon: in the small bold face it leans over the letter before it.
    const std::string words =
        std::string(ui.deleted_open ? "Put away the deleted (" : "Deleted, can be brought back (") +
        std::to_string(sheet.deleted.size()) + ")";
    const ButtonWords fold{words.c_str(), Weight::quiet};
    const float width = std::min(button_width(fold), page.width);
    const bool beside = text_extent(TextSize::note, sheet.count, true).x + grid(2) + width <= page.width;
    const float words_y = page.y + (beside ? (press_height() - note_px()) / 2 : grid(0.75f));
    text_at(page.list, {page.left, words_y}, TextSize::note, theme().colour.ink, sheet.count, true);
    if (!beside) page.y += line_height(TextSize::note) + grid(0.75f);
    const float left = beside ? page.right() - width : page.left;
    ImGui::PushID("deleted");
    if (button(page.list, {std::round(left), std::round(page.y)}, {width, press_height()}, fold))
        ui.deleted_open = !ui.deleted_open;
    ImGui::PopID();
    page.y += press_height();
}

void attempts(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    list_head(page, sheet, ui);
    if (ui.deleted_open && !sheet.deleted.empty()) {
        draw_deleted_rows(page, sheet, ui, actions);
        rule(page);
        gap(page, 1);
    }
    if (!sheet.rows.empty()) return draw_logbook_rows(page, sheet, ui, actions);
    if (!sheet.standing.empty()) return;
    paragraph(page, TextSize::text, theme().colour.ink,
              "Nothing is kept of this student yet. Fly an approach: it is kept by itself when it ends.");
}

// While something is asked, the sheet lies still under a veil.
void veil(const Column& page) {
    const ImU32 paper = theme().colour.paper;
    page.list->AddRectFilled({0, 0}, ImGui::GetIO().DisplaySize,
                             (paper & ~IM_COL32_A_MASK) | (170u << IM_COL32_A_SHIFT));
}

}  // namespace

Actions draw_logbook(const View& view, LogbookUi& ui) {
    Actions actions;
    const LogbookView& sheet = view.logbook;
    const bool asked = ui.asks != LogbookUi::Asks::nothing;
    Column page = begin_sheet("logbook");
    ImGui::BeginDisabled(asked);
    if (title_with_way_back(page, "Logbook", {"Back", Weight::plain, "L"}))
        actions.emplace_back(CloseLogbook{});
    student(page, sheet, ui, actions);
    tidings(page, sheet, actions);
    attempts(page, sheet, ui, actions);
    ImGui::EndDisabled();
    if (asked) veil(page);
    end_sheet(page);
    draw_logbook_slip(sheet, ui, actions);
    return actions;
}

}  // namespace slopewise
