// Asked once: which key, or which way of the thumb, lowers the nose. Both answers are common, and the wrong
// one spoils every flight.
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/screens/screens.h"
#include "ui/widgets/aircraft_mark.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 30;
constexpr float nose_down_rad = -0.26f;  // more than is ever flown, so that the picture is plain

struct Answer {
    float arrow;  // -1 up, +1 down the page
    const std::string& words;
    const char* because;
    bool up_key_pushes;
    bool by_thumb;
};

std::array<Answer, 2> answers_of(const StickQuestionView& question) {
    return {{{-1, question.up, "As a stick: forward lowers the nose.", true, question.by_thumb},
             {+1, question.down, "Down lowers the nose, up raises it.", false, question.by_thumb}}};
}

// The cap of a key with its side below it, or a round pad.
void cap(ImDrawList* list, ImVec2 min, float size, bool round, ImU32 ink) {
    const float deep = size * 0.08f, line = std::max(1.5f, size / 40);
    if (round) {
        constexpr int segments = 64;
        const ImVec2 centre{min.x + size / 2, min.y + size / 2};
        list->AddCircleFilled({centre.x, centre.y + deep}, size / 2, theme().colour.rule, segments);
        list->AddCircleFilled(centre, size / 2, theme().colour.paper, segments);
        list->AddCircle(centre, size / 2, ink, segments, line);
        return;
    }
    const ImVec2 max{min.x + size, min.y + size};
    const float corner = size * 0.12f;
    list->AddRectFilled({min.x, min.y + deep}, {max.x, max.y + deep}, theme().colour.rule, corner);
    list->AddRectFilled(min, max, theme().colour.paper, corner);
    list->AddRect(min, max, ink, corner, 0, line);
}

void big_key(ImDrawList* list, ImVec2 centre, float size, const Answer& answer, ImU32 ink) {
    const float arrow = answer.arrow;
    cap(list, {std::round(centre.x - size / 2), std::round(centre.y - size / 2)}, size, answer.by_thumb, ink);
    const ImVec2 tip{centre.x, centre.y + arrow * size * 0.26f};
    const ImVec2 neck{centre.x, centre.y + arrow * size * 0.04f};
    const ImVec2 foot{centre.x, centre.y - arrow * size * 0.26f};
    const float half = size * 0.17f;
    // Clockwise either way up, as ImGui fills best.
    list->AddTriangleFilled(tip, {neck.x - arrow * half, neck.y}, {neck.x + arrow * half, neck.y}, ink);
    list->AddLine(foot, neck, ink, size * 0.075f);
}

// A bent arrow before the nose, turning down.
void nose_arrow(ImDrawList* list, ImVec2 centre, float radius, ImU32 ink) {
    const float from = -0.16f, to = 0.42f;  // about the aircraft's middle, clockwise on the page
    const float line = std::max(2.0f, radius / 60);
    list->PathArcTo(centre, radius, from, to, 24);
    list->PathStroke(ink, 0, line);
    const ImVec2 end{centre.x + radius * std::cos(to), centre.y + radius * std::sin(to)};
    const ImVec2 along{-std::sin(to), std::cos(to)};
    const ImVec2 out{std::cos(to), std::sin(to)};
    const float head = radius * 0.11f;
    list->AddTriangleFilled({end.x + along.x * head, end.y + along.y * head},
                            {end.x - out.x * head * 0.6f, end.y - out.y * head * 0.6f},
                            {end.x + out.x * head * 0.6f, end.y + out.y * head * 0.6f}, ink);
}

bool answer_card(Column& column, float height, const Answer& answer) {
    const Palette& c = theme().colour;
    const ImVec2 min{column.left, std::round(column.y)};
    const ImVec2 max{column.right(), min.y + height};
    const Press press = press_area(answer.words.c_str(), min, {column.width, height});
    if (answer.up_key_pushes) ImGui::SetItemDefaultFocus();
    if (press.hovered || press.held) column.list->AddRectFilled(min, max, c.band, grid(0.5f));
    column.list->AddRect(min, max, c.accent, grid(0.5f), 0, std::max(1.5f, grid(0.1875f)));
    if (press.focused) focus_ring(column.list, min, max, c.ink);

    const float words =
        line_height(TextSize::number) +
        line_height(TextSize::note) *
            static_cast<float>(broken_lines(TextSize::note, answer.because, column.width - grid(4)).size());
    const float picture = height - words - grid(4);
    const float middle = min.y + grid(1.5f) + picture / 2;
    const float craft = std::min({picture * 1.2f, column.width * 0.54f, grid(44)});
    const float key = std::min({picture * 0.62f, column.width * 0.2f, craft * 0.44f});
    const float between = craft * 0.1f;
    const float left = column.left + (column.width - key - between - craft * 1.12f) / 2;
    const ImVec2 hub{left + key + between + craft / 2, middle};
    big_key(column.list, {left + key / 2, middle}, key, answer, c.ink);
    aircraft_mark(column.list, hub, craft, nose_down_rad, c.ink,
                  press.hovered || press.held ? c.band : c.paper);
    nose_arrow(column.list, hub, craft * 0.58f, c.accent);

    const float centre = column.left + column.width / 2;
    float y = max.y - grid(2) - words;
    text_centred(column.list, {centre, y + line_height(TextSize::number) / 2}, TextSize::number, c.accent,
                 answer.words, true);
    y += line_height(TextSize::number);
    for (const std::string_view line : broken_lines(TextSize::note, answer.because, column.width - grid(4))) {
        text_centred(column.list, {centre, y + line_height(TextSize::note) / 2}, TextSize::note, c.ink_soft,
                     line);
        y += line_height(TextSize::note);
    }
    column.y = max.y;
    return press.pressed;
}

}  // namespace

Actions draw_stick_sense(const View& view) {
    Actions actions;
    const std::array<Answer, 2> answers = answers_of(view.stick_question);
    Column page = begin_sheet("stick sense");
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const bool wide = measure(page) >= two_columns_from;
    paragraph(page, TextSize::title, theme().colour.ink, view.stick_question.asks, true);
    paragraph(page, TextSize::text, theme().colour.ink_soft,
              "Asked once. It can be changed on every briefing.");
    gap(page, 3);

    const float free = window.y - (page.y + ImGui::GetScrollY()) - sheet_margin();
    if (wide) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        const float height = std::clamp(free, grid(22), grid(64));
        for (std::size_t i = 0; i < answers.size(); ++i)
            if (answer_card(columns[i], height, answers[i]))
                actions.emplace_back(AnswerStickSense{answers[i].up_key_pushes});
        join(page, columns);
    } else {
        const float height = std::clamp(free / 2 - grid(1.5f), grid(34), grid(52));
        for (const Answer& answer : answers) {
            if (answer_card(page, height, answer))
                actions.emplace_back(AnswerStickSense{answer.up_key_pushes});
            gap(page, 3);
        }
        page.y -= grid(3);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
