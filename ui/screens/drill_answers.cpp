#include "ui/screens/drill_answers.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float number_width() { return grid(1.5f) + text_extent(TextSize::note, "8").x + grid(1); }

// What became of one answer; empty while it is asked.
std::string verdict_of(const DrillView& sheet, int index) {
    if (sheet.stage != DrillView::Stage::revealed || sheet.right_choice < 0) {
        const bool stands = sheet.stage == DrillView::Stage::flown && sheet.said == index;
        return stands ? "you said this" : "";
    }
    if (index == sheet.right_choice) return sheet.said == index ? "right, you said this" : "this was right";
    return index == sheet.said ? "you said this" : "";
}

struct Answer {
    std::string words, verdict;
    bool right = false, said = false;
};

float words_height(const Answer& answer, float width) {
    const float room = width - number_width() - grid(1);
    const float verdict = answer.verdict.empty() ? 0.0f : line_height(TextSize::note);
    return paragraph_height(TextSize::note, answer.words, room, true) + verdict;
}

float answer_height(const Answer& answer, float width) {
    return std::max(44.0f, std::round(words_height(answer, width) + grid(1.5f)));
}

bool draw_answer(ImDrawList* list, ImVec2 min, ImVec2 size, int number, const Answer& answer, bool open) {
    const Palette& c = theme().colour;
    const ImVec2 max{min.x + size.x, min.y + size.y};
    Press press;
    if (open) press = press_area(answer.words.c_str(), min, size);
    const bool touched = press.hovered || press.held || answer.said;
    if (touched) list->AddRectFilled(min, max, c.band, grid(0.375f));
    const ImU32 edge = open || answer.right ? c.accent : c.rule;
    list->AddRect(min, max, edge, grid(0.375f), 0, std::max(1.0f, grid(answer.right ? 0.375f : 0.1875f)));
    if (press.focused) focus_ring(list, min, max, c.ink);

    const float top = std::round(min.y + (size.y - words_height(answer, size.x)) / 2);
    text_at(list, {min.x + grid(1.5f), top}, TextSize::note, c.ink_soft, std::to_string(number));
    Column words{list, min.x + number_width(), size.x - number_width() - grid(1), top};
    paragraph(words, TextSize::note, open ? c.accent : c.ink, answer.words, true);
    if (answer.verdict.empty()) return press.pressed;
    const float mark = note_px() * 0.6f;
    const ImVec2 centre{words.left + mark / 2, words.y + note_px() * 0.55f};
    if (answer.right) mark_in(list, centre, mark, c.good);
    else mark_out(list, centre, mark, c.attention);
    text_at(list, {words.left + mark + grid(0.75f), words.y}, TextSize::note,
            answer.right ? c.good : c.attention, answer.verdict);
    return press.pressed;
}

std::vector<Answer> answers_of(const DrillView& sheet) {
    std::vector<Answer> answers;
    for (int i = 0; i < static_cast<int>(sheet.choices.size()); ++i)
        answers.push_back({sheet.choices[static_cast<std::size_t>(i)], verdict_of(sheet, i),
                           sheet.stage == DrillView::Stage::revealed && i == sheet.right_choice,
                           sheet.said == i});
    return answers;
}

// Whether each has room on one line in half of the column.
bool fit_two(const std::vector<Answer>& answers, float half) {
    return answers.size() > 3 && std::ranges::all_of(answers, [&](const Answer& answer) {
               return text_extent(TextSize::note, answer.words, true).x < half - number_width() - grid(1);
           });
}

}  // namespace

int draw_answers(Column& column, const DrillView& sheet) {
    const std::vector<Answer> answers = answers_of(sheet);
    const float between = grid(0.75f), half = std::floor((column.width - between) / 2);
    const bool two = fit_two(answers, half);
    const float width = two ? half : column.width;
    int pressed = -1;
    for (std::size_t i = 0; i < answers.size(); i += two ? 2 : 1) {
        const bool pair = two && i + 1 < answers.size();
        float height = answer_height(answers[i], width);
        if (pair) height = std::max(height, answer_height(answers[i + 1], width));
        for (std::size_t j = i; j < i + (pair ? 2 : 1); ++j) {
            const float left = column.left + (j > i ? half + between : 0.0f);
            if (draw_answer(column.list, {std::round(left), std::round(column.y)}, {width, height},
                            static_cast<int>(j) + 1, answers[j], sheet.can_answer))
                pressed = static_cast<int>(j);
        }
        column.y += height + between;
    }
    return pressed;
}

}  // namespace slopewise
