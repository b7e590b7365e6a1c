#include "ui/screens/ask_board.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

namespace slopewise {
namespace {

using Stage = AskShown::Stage;

constexpr float bar_share = 0.3f;       // of a choice's width
constexpr float question_share = 0.4f;  // of the band's width, where the choices stand beside it
constexpr float beside_from = 24;       // text sizes across the band

struct Choice {
    std::string words;            // "2  high and slow"
    std::string count;            // "7", "7, then 9"; empty: not told
    float first = 0, second = 0;  // shares of the hands
    bool right = false;
};

int sum(const std::vector<int>& hands) { return std::accumulate(hands.begin(), hands.end(), 0); }

bool tells_counts(const AskShown& ask) {
    return (ask.counts_shown || ask.stage == Stage::revealed) && sum(ask.first) > 0;
}

std::vector<Choice> choices_of(const AskShown& ask) {
    std::vector<Choice> choices;
    const bool counts = tells_counts(ask);
    const float most = static_cast<float>(std::max({1, sum(ask.first), sum(ask.second)}));
    for (std::size_t i = 0; i < ask.choices.size(); ++i) {
        Choice choice;
        choice.words = std::to_string(i + 1) + "  " + ask.choices[i];
        choice.right = ask.stage == Stage::revealed && ask.right == static_cast<int>(i);
        if (choice.right) choice.words += " (right)";
        if (counts && i < ask.first.size()) {
            choice.count = std::to_string(ask.first[i]);
            choice.first = static_cast<float>(ask.first[i]) / most;
        }
        if (counts && i < ask.second.size()) {
            choice.count += ", then " + std::to_string(ask.second[i]);
            choice.second = static_cast<float>(ask.second[i]) / most;
        }
        choices.push_back(std::move(choice));
    }
    return choices;
}

float mark_room() { return line_height(TextSize::note); }

// A row: the mark of the right one, the words, the count, and a bar for each count.
void draw_choice(Column& column, const Choice& choice) {
    const Palette& c = theme().colour;
    const float line = line_height(TextSize::note), left = column.left + mark_room();
    const bool counted = !choice.count.empty();
    const float bars = counted ? bar_share * column.width : 0.0f;
    const float count_width =
        counted ? text_extent(TextSize::note, choice.count, choice.right).x + grid(1) : 0.0f;
    const float words_width = std::max(1.0f, column.width - mark_room() - bars - count_width - grid(0.5f));
    if (choice.right)
        mark_in(column.list, {column.left + mark_room() * 0.4f, column.y + line * 0.45f}, line * 0.5f,
                c.good);
    const float top = column.y;
    Column words{column.list, left, words_width, column.y};
    paragraph(words, TextSize::note, choice.right ? c.good : c.ink, choice.words, choice.right);
    column.y = std::max(words.y, top + line);
    if (!counted) return;
    const float from = column.right() - bars, tall = line * 0.28f;
    text_right(column.list, {from - grid(0.5f), top}, TextSize::note, c.ink, choice.count, choice.right);
    const auto bar = [&](float y, float share, ImU32 colour) {
        column.list->AddRect({from, y}, {column.right(), y + tall}, c.rule);
        column.list->AddRectFilled({from, y}, {from + share * bars, y + tall}, colour);
    };
    bar(top + line * 0.12f, choice.first, c.ink_soft);
    if (choice.count.find(',') != std::string::npos) bar(top + line * 0.52f, choice.second, c.accent);
}

void draw_words(Column& column, const AskShown& ask) {
    const Palette& c = theme().colour;
    paragraph(column, TextSize::note, c.ink_soft, ask.place);
    paragraph(column, TextSize::note, c.ink, ask.question, true);
    if (ask.stage == Stage::discussed)
        paragraph(column, TextSize::note, c.ink, "Talk it over. Then it is counted again.");
    if (ask.stage == Stage::revealed) paragraph(column, TextSize::note, c.ink, ask.reveal);
}

// Everything on the band, from its upper left corner; returns how far down it reaches.
float draw_content(ImDrawList* list, ImVec2 min, ImVec2 max, const AskShown& ask) {
    Column all{list, min.x + grid(1), max.x - min.x - grid(2), min.y + grid(0.5f)};
    const std::vector<Choice> choices = choices_of(ask);
    if (measure(all) < beside_from) {
        draw_words(all, ask);
        for (const Choice& choice : choices) draw_choice(all, choice);
    } else {
        const std::array<float, 2> shares{question_share, 1 - question_share};
        std::vector<Column> sides = side_by_side(all, shares, 2);
        draw_words(sides[0], ask);
        for (const Choice& choice : choices) draw_choice(sides[1], choice);
        join(all, sides);
    }
    return all.y + grid(0.5f);
}

}  // namespace

float ask_board_height(float width, const AskShown& ask) {
    if (ask.stage == Stage::none) return 0;
    // Drawn into a list that nobody sees.
    constexpr float plenty = 10000;
    ImDrawList unseen(ImGui::GetDrawListSharedData());
    unseen._ResetForNewFrame();
    unseen.PushTextureID(ImGui::GetIO().Fonts->TexID);
    unseen.PushClipRect({0, 0}, {width, plenty});
    return std::ceil(draw_content(&unseen, {0, 0}, {width, plenty}, ask));
}

void draw_ask_board(ImDrawList* list, ImVec2 min, ImVec2 max, const AskShown& ask) {
    if (ask.stage == Stage::none) return;
    const Palette& c = theme().colour;
    list->AddRectFilled(min, max, c.paper);
    list->AddRect(min, max, c.paper_edge);
    list->PushClipRect(min, max, true);
    draw_content(list, min, max, ask);
    list->PopClipRect();
}

}  // namespace slopewise
