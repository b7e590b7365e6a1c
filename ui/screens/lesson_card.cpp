// The card of one lesson: what it is for, how it begins, what it asks for, and what is said about it.
#include <array>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 36;  // text sizes across the page

struct Way {
    ButtonWords words;
    Action action;
};

std::vector<Way> ways(const LessonCardView& card) {
    std::vector<Way> all;
    if (card.drill.empty()) all.push_back({{"Fly it", Weight::primary}, FlyLesson{card.id}});
    else all.push_back({{"Open the drill", Weight::primary}, OpenDrill{card.drill}});
    if (!card.next_id.empty()) all.push_back({{"Next lesson"}, OpenLesson{card.next_id}});
    if (!card.previous_id.empty()) all.push_back({{"Previous"}, OpenLesson{card.previous_id}});
    all.push_back({{"Screen and help", Weight::quiet, "H"}, OpenScreenAndHelp{}});
    return all;
}

void next_step(Column& page, const LessonCardView& card, Actions& actions) {
    const std::vector<Way> all = ways(card);
    std::vector<ButtonWords> words;
    for (const Way& way : all) words.push_back(way.words);
    const int pressed = button_row(page, words);
    if (pressed >= 0) actions.emplace_back(all[static_cast<std::size_t>(pressed)].action);
}

void lines(Column& column, std::string_view title, const std::vector<std::string>& words) {
    if (words.empty()) return;
    heading(column, title);
    for (const std::string& line : words) {
        paragraph(column, TextSize::note, theme().colour.ink, line);
        gap(column, 0.25f);
    }
    gap(column, 1);
}

void begins_and_asks(Column& column, const LessonCardView& card) {
    if (!card.facts.empty()) {
        heading(column, "How it begins");
        for (const LessonFact& fact : card.facts) fact_row(column, fact.name, fact.words);
        gap(column, 1);
    }
    lines(column, "What it asks for", card.criterion);
    paragraph(column, TextSize::note, theme().colour.ink, card.known, true);
    gap(column, 1);
}

void is_said(Column& column, const LessonCardView& card) {
    heading(column, "What an instructor would say");
    paragraph(column, TextSize::note, theme().colour.ink, card.instructor);
    gap(column, 1);
    lines(column, "Common mistakes", card.mistakes);
    if (!card.next.empty()) lines(column, "What comes next", {card.next});
}

}  // namespace

Actions draw_lesson_card(const View& view) {
    Actions actions;
    const LessonCardView& card = view.lesson_card;
    const Palette& c = theme().colour;
    Column page = begin_sheet("lesson card");
    if (title_with_way_back(page, card.number + ". " + card.title, {"All lessons", Weight::plain, "S"}))
        actions.emplace_back(OpenLessons{});
    if (!view.notice.empty()) attention_note(page, view.notice);
    paragraph(page, TextSize::text, c.ink, card.aim, true);
    paragraph(page, TextSize::note, c.ink_soft, card.why);
    gap(page, 1);
    next_step(page, card, actions);
    gap(page, 1.5f);
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        begins_and_asks(columns[0], card);
        is_said(columns[1], card);
        join(page, columns);
    } else {
        begins_and_asks(page, card);
        is_said(page, card);
    }
    lines(page, "Where it comes from", card.sources);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
