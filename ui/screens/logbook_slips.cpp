#include "ui/screens/logbook_slips.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/widgets/controls.h"
#include "ui/widgets/options.h"
#include "ui/widgets/text_field.h"

namespace slopewise {
namespace {

constexpr const char* name_hint = "A code is enough. It stays on this device and in the files you hand over.";

float text_px() { return theme().size[static_cast<std::size_t>(TextSize::text)]; }

float words_height(TextSize size, std::string_view words, float width, bool bold = false) {
    return paragraph_height(size, words, width, bold);
}

void ask_before_deleting(LogbookUi& ui, Actions& actions) {
    const bool for_good = ui.asks == LogbookUi::Asks::erase;
    const std::string question =
        for_good ? "Delete this attempt for good?" : "Delete the attempt of " + ui.words + "?";
    const std::string after =
        for_good ? ui.words + ". It cannot be brought back then; a file that was handed over keeps it."
                 : "It leaves the list and all figures, and can be brought back.";
    const std::array<ButtonWords, 2> buttons{
        {{"Leave it", Weight::primary}, {for_good ? "Delete for good" : "Delete"}}};
    const float width = slip_width(26 * text_px());
    const float height = words_height(TextSize::number, question, width, true) + grid(1) +
                         words_height(TextSize::text, after, width) + grid(2) +
                         button_row_height(width, buttons);
    Column page = begin_slip("delete", {width, height});
    paragraph(page, TextSize::number, theme().colour.ink, question, true);
    gap(page, 1);
    paragraph(page, TextSize::text, theme().colour.ink_soft, after);
    gap(page, 2);
    const int pressed = button_row(page, buttons);
    end_slip(page);
    if (pressed < 0) return;
    if (pressed == 1) {
        if (for_good) actions.emplace_back(EraseAttempt{ui.id});
        else actions.emplace_back(DeleteAttempt{ui.id});
    }
    ui.asks = LogbookUi::Asks::nothing;
}

// As `option_row` sets one without words about it.
float option_height() { return std::max(44.0f, std::round(line_height(TextSize::note) + grid(1))); }

void ask_who_flies(const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    const Palette& c = theme().colour;
    const bool by_finger = sheet.writes_by_finger;
    const std::array<ButtonWords, 2> buttons{
        {{by_finger ? "Write a name" : "Take this name", Weight::primary}, {"Leave it as it is"}}};
    const float width = slip_width(24 * text_px());
    const float height = line_height(TextSize::number) + grid(1.5f) +
                         option_height() * static_cast<float>(sheet.students.size()) + grid(2.25f) +
                         line_height(TextSize::note) + (by_finger ? 0.0f : press_height()) +
                         words_height(TextSize::note, name_hint, width) + grid(2.5f) +
                         button_row_height(width, buttons);
    Column page = begin_slip("student", {width, height});
    paragraph(page, TextSize::number, c.ink, "Who flies?", true);
    gap(page, 0.5f);
    bool answered = false;
    for (const LogbookView::Student& student : sheet.students) {
        if (!option_row(page, student.words.c_str(), "", student.name == sheet.student.name)) continue;
        actions.emplace_back(ChooseStudent{student.name});
        answered = true;
    }
    gap(page, 1);
    heading(page, "Another name or code");
    const bool entered = !by_finger && text_field(page, "name", "or nothing", ui.name, ui.just_asked);
    gap(page, 0.5f);
    paragraph(page, TextSize::note, c.ink_soft, name_hint);
    gap(page, 1.5f);
    const int pressed = button_row(page, buttons);
    end_slip(page);
    if (!answered && by_finger && pressed == 0) actions.emplace_back(WriteStudent{});
    else if (!answered && (entered || pressed == 0)) actions.emplace_back(ChooseStudent{ui.name.data()});
    if (answered || entered || pressed >= 0) ui.asks = LogbookUi::Asks::nothing;
}

}  // namespace

void draw_logbook_slip(const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    switch (ui.asks) {
    case LogbookUi::Asks::nothing: break;
    case LogbookUi::Asks::remove:
    case LogbookUi::Asks::erase: ask_before_deleting(ui, actions); break;
    case LogbookUi::Asks::student: ask_who_flies(sheet, ui, actions); break;
    }
    ui.just_asked = false;
}

}  // namespace slopewise
