// Asked before the sheet opens: the student says how it was, and then sees how it was. Nearly blank on
// purpose.
#include <algorithm>
#include <cmath>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr ButtonWords skip_words{"Open the sheet without", Weight::quiet, "Esc"};

float question_height() { return line_height(TextSize::text) + grid(0.5f) + press_height() + grid(2); }

// In the middle of the window, as wide as three answers want.
Column middle_of(const Column& page, std::size_t questions) {
    const float width = std::min(page.width, grid(64));
    const float height = line_height(TextSize::note) + grid(2) +
                         question_height() * static_cast<float>(questions) + press_height();
    const float free = ImGui::GetIO().DisplaySize.y - 2 * sheet_margin() - height;
    return {page.list, std::round(page.left + (page.width - width) / 2), width,
            page.y + std::max(0.0f, std::round(0.4f * free))};
}

}  // namespace

Actions draw_estimate(const View& view) {
    const Palette& c = theme().colour;
    const EstimateView& sheet = view.estimate;
    Actions actions;
    Column page = begin_sheet("estimate");
    Column middle = middle_of(page, sheet.questions.size());
    paragraph(middle, TextSize::note, c.ink_soft,
              sheet.blank ? "How was it? Think back. The questions come in a moment."
                          : "Before the sheet opens: how was it? Keys 1 to 3 answer.");
    gap(middle, 2);
    if (sheet.blank) middle.y += question_height() * static_cast<float>(sheet.questions.size());
    for (std::size_t i = 0; i < sheet.questions.size() && !sheet.blank; ++i) {
        const EstimateView::Question& question = sheet.questions[i];
        const bool asked = static_cast<int>(i) == sheet.asking;
        paragraph(middle, TextSize::text, asked ? c.ink : c.ink_soft, question.words, asked);
        gap(middle, 0.5f);
        const int pressed = choice_row(middle, question.words.c_str(), question.answers, question.chosen);
        if (pressed >= 0) actions.emplace_back(AnswerEstimate{static_cast<int>(i), pressed});
        gap(middle, 2);
    }
    const float width = std::min(button_width(skip_words), middle.width);
    if (button(middle.list, {std::round(middle.left - grid(1)), std::round(middle.y)},
               {width, press_height()}, skip_words))
        actions.emplace_back(SkipEstimate{});
    page.y = middle.y + press_height();
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
