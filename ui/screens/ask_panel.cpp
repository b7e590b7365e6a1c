#include "ui/screens/ask_panel.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <string>
#include <vector>

#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"
#include "ui/widgets/options.h"
#include "ui/widgets/text_field.h"

namespace slopewise {
namespace {

using Wish = DoWithQuestions::Wish;

struct Pressed {
    ButtonWords words;
    DoWithQuestions wish;
};

// A row of buttons, each with what it asks for.
void buttons(Column& column, const std::vector<Pressed>& all, Actions& actions) {
    std::vector<ButtonWords> words;
    for (const Pressed& one : all) words.push_back(one.words);
    const int pressed = button_row(column, words);
    if (pressed >= 0) actions.emplace_back(all[static_cast<std::size_t>(pressed)].wish);
    gap(column, 0.5f);
}

void tell_news(Column& column, const AskView& ask) {
    for (const std::string& news : ask.news) attention_note(column, news);
}

void tally(Column& column, const AskView& ask, Actions& actions) {
    if (ask.kept.empty()) return;
    heading(column, "Answers of the class");
    paragraph(column, TextSize::note, theme().colour.ink_soft, ask.kept);
    gap(column, 0.5f);
    buttons(column,
            {{{"Take away (CSV)"}, {Wish::save_tally, 0, ""}},
             {{"What the columns mean", Weight::quiet}, {Wish::save_tally, 1, ""}}},
            actions);
}

void list_of_sets(Column& column, const AskView& ask, Actions& actions) {
    heading(column, "Sets of questions");
    for (const AskView::Set& set : ask.sets) {
        const std::string name = set.title + (set.own ? " (your own)" : "");
        if (option_row(column, name.c_str(), set.about, false))
            actions.emplace_back(DoWithQuestions{Wish::choose_set, 0, set.id});
    }
    gap(column, 0.5f);
    buttons(column, {{{"Take in a set", Weight::quiet}, {Wish::take_in, 0, ""}}}, actions);
}

// One row a choice: its number and words, the hands so far, and one more or less.
void count_hands(Column& column, const AskView& ask, const AskShown& shown, Actions& actions) {
    const std::vector<int>& hands = shown.stage == AskShown::Stage::discussed ? shown.second : shown.first;
    const float tall = press_height(), side = tall;
    for (std::size_t i = 0; i < shown.choices.size(); ++i) {
        const std::string id = std::to_string(i + 1);
        const float top = column.y, presses = 2 * side + grid(1);
        Column words{column.list, column.left, column.width - presses - grid(5), top + grid(0.5f)};
        paragraph(words, TextSize::note, theme().colour.ink, id + "  " + shown.choices[i]);
        std::string count = i < hands.size() ? std::to_string(hands[i]) : "";
        if (!ask.counting && i < shown.second.size()) count += ", then " + std::to_string(shown.second[i]);
        text_right(column.list, {column.right() - presses - grid(1), top + grid(0.5f)}, TextSize::note,
                   theme().colour.ink, count, true);
        if (ask.counting) {
            ImGui::PushID(static_cast<int>(i));
            const auto press = [&](float left, const char* sign, Wish wish) {
                if (button(column.list, {left, top}, {side, tall}, {sign}))
                    actions.emplace_back(DoWithQuestions{wish, static_cast<int>(i), ""});
            };
            press(column.right() - presses, "\u2212", Wish::uncount_hand);
            press(column.right() - side, "+", Wish::count_hand);
            ImGui::PopID();
        }
        column.y = std::max(words.y, top + tall) + grid(0.5f);
    }
}

void run(Column& column, const AskView& ask, const AskShown& shown, Actions& actions) {
    const Palette& c = theme().colour;
    const bool asked = shown.stage != AskShown::Stage::none;
    const std::array<ButtonWords, 3> steps{{{ask.next.c_str(), Weight::primary, "Page down"},
                                            {"Back", Weight::plain, "Page up"},
                                            {"All sets", Weight::quiet}}};
    const int pressed = button_row(column, steps);
    if (pressed == 0) actions.emplace_back(DoWithQuestions{Wish::next, 0, ""});
    if (pressed == 1) actions.emplace_back(DoWithQuestions{Wish::previous, 0, ""});
    if (pressed == 2) actions.emplace_back(DoWithQuestions{Wish::leave_set, 0, ""});
    gap(column, 0.5f);
    if (!ask.answer.empty()) fact_row(column, "For you alone", ask.answer);
    if (!ask.close.empty()) attention_note(column, ask.close);
    if (!asked) return;
    gap(column, 0.5f);
    count_hands(column, ask, shown, actions);
    if (ask.counting) paragraph(column, TextSize::note, c.ink_soft, "Keys 1 to 8 count a hand each.");
    if (!ask.tally.empty()) paragraph(column, TextSize::note, c.ink, ask.tally);
    gap(column, 0.5f);
    std::vector<Pressed> more;
    if (ask.can_discuss) more.push_back({{"Talk it over, count again"}, {Wish::discuss, 0, ""}});
    if (ask.counting)
        more.push_back({{shown.counts_shown ? "Hide the counts" : "Show the counts", Weight::quiet, "V"},
                        {Wish::show_counts, 0, ""}});
    if (!more.empty()) buttons(column, more, actions);
}

// What stands in a field is the hand's while it writes.
void text_row(Column& column, const char* label, const std::string& given, std::size_t most_bytes, int which,
              WrittenText& written, Actions& actions) {
    constexpr std::size_t bytes_of_a_letter = 4;
    const std::size_t room = bytes_of_a_letter * (most_bytes + 1);
    if (written.bytes.size() != room || written.given != given) {
        written.given = given;
        written.bytes.assign(room, '\0');
        std::memcpy(written.bytes.data(), given.data(), std::min(given.size(), room - 1));
    }
    paragraph(column, TextSize::note, theme().colour.ink_soft, label);
    gap(column, 0.25f);
    text_field(column, label, "", written.bytes, false);
    if (const std::string now = written.bytes.data(); now != written.given) {
        written.given = now;
        actions.emplace_back(DoWithQuestions{Wish::set_words, which, now});
    }
    gap(column, 0.75f);
}

void write(Column& column, const AskView& ask, UiState& ui, Actions& actions) {
    const AskView::Set& set = ask.sets[static_cast<std::size_t>(ask.set)];
    text_row(column, "Title of the set", set.title, 80, 1, ui.lessons.texts[0], actions);
    text_row(column, "What it is about", set.about, 200, 2, ui.lessons.texts[1], actions);
    text_row(column, "Your own words for the question chosen above", ask.own_words, 120, 0,
             ui.lessons.texts[2], actions);
    buttons(column, {{{"Move it up"}, {Wish::move_up, 0, ""}}, {{"Delete it"}, {Wish::remove, 0, ""}}},
            actions);
    heading(column, "Add a question");
    paragraph(
        column, TextSize::note, theme().colour.ink_soft,
        "About the approach as it stands: put it there at the station, freeze it, and choose what is asked.");
    gap(column, 0.5f);
    for (std::size_t i = 0; i < ask.kinds.size(); ++i)
        if (option_row(column, ask.kinds[i].c_str(), "", false))
            actions.emplace_back(DoWithQuestions{Wish::add_here, static_cast<int>(i), ""});
    gap(column, 0.5f);
    buttons(column,
            {{{"Done", Weight::primary}, {Wish::done, 0, ""}},
             {{ask.asks_to_remove ? "Delete the set for good" : "Delete the set", Weight::quiet},
              {Wish::remove_set, 0, ""}}},
            actions);
}

void questions(Column& column, const AskView& ask, Actions& actions) {
    for (std::size_t i = 0; i < ask.questions.size(); ++i) {
        const AskView::Question& question = ask.questions[i];
        const std::string name = std::to_string(i + 1) + ". " + question.words;
        if (option_row(column, name.c_str(), question.about, static_cast<int>(i) == ask.question))
            actions.emplace_back(DoWithQuestions{Wish::go_to, static_cast<int>(i), ""});
    }
    gap(column, 0.5f);
}

void one_set(Column& column, const View& view, UiState& ui, Actions& actions) {
    const AskView& ask = view.ask;
    const AskView::Set& set = ask.sets[static_cast<std::size_t>(ask.set)];
    heading(column, set.title);
    if (ask.editing) {
        questions(column, ask, actions);
        return write(column, ask, ui, actions);
    }
    run(column, ask, view.class_picture.shown.ask, actions);
    questions(column, ask, actions);
    buttons(column,
            {{{set.own ? "Change" : "Change a copy", Weight::quiet}, {Wish::edit, 0, ""}},
             {{"Hand over", Weight::quiet}, {Wish::hand_over, 0, ""}}},
            actions);
}

}  // namespace

void draw_ask_panel(Column& column, const View& view, UiState& ui, Actions& actions) {
    const AskView& ask = view.ask;
    tell_news(column, ask);
    if (ask.set < 0) list_of_sets(column, ask, actions);
    else one_set(column, view, ui, actions);
    if (!ask.editing) tally(column, ask, actions);
}

}  // namespace slopewise
