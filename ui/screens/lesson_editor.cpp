// A lesson that is being written: every field with its unit, what is wrong beside it, and the way to fly it.
#include <algorithm>
#include <array>
#include <cstring>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/notes.h"
#include "ui/widgets/options.h"
#include "ui/widgets/stepper.h"
#include "ui/widgets/switches.h"
#include "ui/widgets/text_field.h"

namespace slopewise {
namespace {

using Field = LessonEditorView::Field;
using Wish = DoWithLesson::Wish;

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 32;

// What stands in the field is the hand's while it writes; what comes from outside is written over it.
void text_row(Column& column, const std::string& id, const Field& field, WrittenText& written,
              Actions& actions) {
    constexpr std::size_t bytes_of_a_letter = 4;
    const std::size_t room = bytes_of_a_letter * (field.most_bytes + 1);
    if (written.bytes.size() != room || written.given != field.value) {
        written.given = field.value;
        written.bytes.assign(room, '\0');
        std::memcpy(written.bytes.data(), field.value.data(), std::min(field.value.size(), room - 1));
    }
    paragraph(column, TextSize::note, theme().colour.ink_soft, field.label);
    gap(column, 0.25f);
    text_field(column, id.c_str(), "", written.bytes, false);
    if (const std::string now = written.bytes.data(); now != written.given) {
        written.given = now;
        actions.emplace_back(SetLessonField{field.number, 0.0, now});
    }
    gap(column, 0.75f);
}

int choice(Column& column, const std::string& id, const Field& field) {
    const int chosen = static_cast<int>(field.amount);
    if (field.kind == LessonEditorView::Kind::choice) {
        if (!field.label.empty()) paragraph(column, TextSize::note, theme().colour.ink, field.label);
        gap(column, 0.5f);
        const int pressed = choice_row(column, id.c_str(), field.choices, chosen);
        gap(column, 0.5f);
        return pressed;
    }
    int pressed = -1;
    for (std::size_t i = 0; i < field.choices.size(); ++i)
        if (option_row(column, field.choices[i].c_str(), "", static_cast<int>(i) == chosen))
            pressed = static_cast<int>(i);
    return pressed;
}

struct Drawing {
    LessonEditorUi& ui;
    Actions& actions;
    std::size_t texts = 0;  // drawn so far

    void field(Column& column, const std::string& id, const Field& field) {
        switch (field.kind) {
        case LessonEditorView::Kind::number:
            if (const auto value = stepper(column, {id.c_str(), field.label.c_str(), field.value, field.unit},
                                           field.amount, field.least, field.most, field.step))
                actions.emplace_back(SetLessonField{field.number, *value, ""});
            break;
        case LessonEditorView::Kind::on_off:
            if (switch_row(column, field.label.c_str(), field.amount > 0.5))
                actions.emplace_back(SetLessonField{field.number, field.amount > 0.5 ? 0.0 : 1.0, ""});
            break;
        case LessonEditorView::Kind::choice:
        case LessonEditorView::Kind::list:
            if (const int pressed = choice(column, id, field); pressed >= 0)
                actions.emplace_back(SetLessonField{field.number, static_cast<double>(pressed), ""});
            break;
        case LessonEditorView::Kind::text:
            if (texts < ui.texts.size()) text_row(column, id, field, ui.texts[texts++], actions);
            break;
        }
        if (!field.problem.empty()) attention_note(column, field.problem);
    }

    void group(Column& column, const LessonEditorView::Group& group) {
        heading(column, group.title);
        ImGui::PushID(group.title.c_str());
        for (const Field& each : group.fields) field(column, each.label, each);
        ImGui::PopID();
        gap(column, 1);
    }
};

// What it is good for now, and the ways on.
void standing(Column& page, const LessonEditorView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    if (sheet.can_fly) paragraph(page, TextSize::text, c.ink, sheet.standing, true);
    else paragraph(page, TextSize::text, c.attention, sheet.standing, true);
    for (const std::string& problem : sheet.problems) attention_note(page, problem);
    std::string figures;
    for (const LabelledValue& value : sheet.figures)
        figures += (figures.empty() ? "" : ", ") + value.label + " " + value.value + " " + value.unit;
    if (!figures.empty()) paragraph(page, TextSize::note, c.ink_soft, "On the path: " + figures + ".");
    if (!sheet.also.empty()) paragraph(page, TextSize::note, c.ink_soft, sheet.also);
    if (!sheet.news.empty()) paragraph(page, TextSize::note, c.ink, sheet.news, true);
    gap(page, 1);
    if (!sheet.can_fly) return;
    constexpr std::array<ButtonWords, 2> buttons{{{"Fly it now", Weight::primary}, {"Keep", Weight::plain}}};
    const int pressed = button_row(page, buttons);
    // Enter ends the writing of a text, and no more than that.
    const bool ends_writing = ImGui::GetIO().WantTextInput && ImGui::IsKeyPressed(ImGuiKey_Enter, false);
    if (pressed == 0 && !ends_writing) actions.emplace_back(DoWithLesson{Wish::fly_draft, ""});
    if (pressed == 1) actions.emplace_back(DoWithLesson{Wish::keep, ""});
    gap(page, 1);
}

}  // namespace

Actions draw_lesson_editor(const View& view, LessonEditorUi& ui) {
    const LessonEditorView& sheet = view.lesson_editor;
    Actions actions;
    Column page = begin_sheet("lesson editor");
    if (title_with_way_back(page, "Write a lesson", {"Back to your lessons", Weight::plain, "Esc"}))
        actions.emplace_back(CloseOwnLessons{});
    standing(page, sheet, actions);
    const std::array<float, 3> shares{1, 1, 1};
    const float sizes = measure(page);
    const std::size_t count = sizes >= three_columns_from ? 3 : (sizes >= two_columns_from ? 2 : 1);
    std::vector<Column> columns = side_by_side(page, std::span(shares).first(count), 4);
    Drawing drawing{ui, actions};
    for (const LessonEditorView::Group& group : sheet.groups)
        drawing.group(*std::ranges::min_element(columns, {}, &Column::y), group);
    join(page, columns);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
