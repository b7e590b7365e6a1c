#include "ui/ask_view.h"

#include "question/set_up.h"
#include "ui/app.h"
#include "ui/drive_asking.h"
#include "ui/drive_class.h"
#include "ui/format.h"
#include "ui/question_sets.h"

namespace slopewise {
namespace {

std::string next_words(const App& app, const Question& question) {
    const AskDesk& desk = app.room.ask;
    const bool counting = desk.run.stage == AskStage::asked || desk.run.stage == AskStage::discussed;
    if (counting && class_runs(app)) return "Freeze now";
    switch (next_step(desk.run, desk.answer ? desk.answer->right : -1, question.run_on_s > 0.0)) {
    case AskStep::ask: return is_over(desk.run.stage) ? "Next question" : "Ask";
    case AskStep::discuss: return "Talk it over, then count again";
    case AskStep::reveal: return "Reveal";
    case AskStep::run_on: return "Run on, " + number_words(question.run_on_s) + " s";
    case AskStep::end: break;
    }
    return "End of the set";
}

void set_view(const App& app, const QuestionSet& set, AskView& view) {
    const AskDesk& desk = app.room.ask;
    for (const Question& question : set.questions)
        view.questions.push_back({asked_words(question), stands_words(question), false});
    view.question = desk.run.question;
    const Question* question = chosen_question(app);
    if (question == nullptr) return;
    const bool counting = desk.run.stage == AskStage::asked || desk.run.stage == AskStage::discussed;
    view.questions[static_cast<std::size_t>(view.question)].asked = desk.run.stage != AskStage::ready;
    view.counting = counting;
    view.can_discuss = desk.run.stage == AskStage::asked;
    view.next = next_words(app, *question);
    view.own_words = question->words;
    if (counting && !desk.answer) view.answer = "What is right is told when it is frozen.";
    if (!desk.answer || desk.run.stage == AskStage::ready) return;
    const Answer& answer = *desk.answer;
    const std::vector<std::string>& choices = app.room.shown.ask.choices;
    const auto right = static_cast<std::size_t>(answer.right);
    if (right < choices.size())
        view.answer = "Right: " + std::to_string(right + 1) + ", " + choices[right] + ". " + answer.reveal;
    view.close = answer.close;
    view.tally = hands_words(desk.run.first, desk.run.second, answer.right);
}

}  // namespace

void ask_view(const App& app, AskView& view) {
    const AskDesk& desk = app.room.ask;
    view = {};
    for (const QuestionSet* set : all_question_sets(app)) {
        const bool own = find_question_set(app.catalog, set->id) != set;
        if (set == chosen_set(app)) view.set = static_cast<int>(view.sets.size());
        view.sets.push_back({set->id, set->title, set->about, own});
    }
    if (const QuestionSet* set = chosen_set(app)) set_view(app, *set, view);
    view.news = desk.news;
    view.editing = desk.editing;
    view.asks_to_remove = desk.asks_to_remove;
    view.kinds = kinds_of_question();
    if (const std::size_t count = desk.tally.size(); count > 0)
        view.kept = std::to_string(count) +
                    (count == 1 ? " answered question is kept." : " answered questions are kept.");
}

void ask_text(const View& view, std::string& text) {
    const AskView& ask = view.ask;
    for (const std::string& news : ask.news) text += news + "\n";
    if (ask.set < 0) {
        text += "Choose a set of questions.\n";
        for (const AskView::Set& set : ask.sets) text += set.title + (set.own ? ", your own" : "") + "\n";
    } else {
        text += "Questions: " + ask.sets[static_cast<std::size_t>(ask.set)].title + "\n";
        for (std::size_t i = 0; i < ask.questions.size(); ++i)
            text += std::to_string(i + 1) + ". " + ask.questions[i].words + " " + ask.questions[i].about +
                    (static_cast<int>(i) == ask.question ? " (this one)" : "") + "\n";
        if (!ask.answer.empty()) text += "For you alone. " + ask.answer + "\n";
        if (!ask.close.empty()) text += ask.close + "\n";
        if (!ask.tally.empty()) text += ask.tally + "\n";
        text += "Next: " + ask.next + "\n";
    }
    if (!ask.kept.empty()) text += ask.kept + "\n";
}

void ask_shown_text(const AskShown& ask, std::string& text) {
    if (ask.stage == AskShown::Stage::none) return;
    const bool revealed = ask.stage == AskShown::Stage::revealed;
    text += "Question, " + ask.place + ": " + ask.question + "\n";
    for (std::size_t i = 0; i < ask.choices.size(); ++i) {
        text += std::to_string(i + 1) + " " + ask.choices[i];
        if ((ask.counts_shown || revealed) && i < ask.first.size() && hands_in(ask.first) > 0) {
            text += ": " + std::to_string(ask.first[i]) + (ask.first[i] == 1 ? " hand" : " hands");
            if (i < ask.second.size()) text += ", then " + std::to_string(ask.second[i]);
        }
        if (revealed && ask.right == static_cast<int>(i)) text += ", right";
        text += "\n";
    }
    if (ask.stage == AskShown::Stage::discussed) text += "Talk it over, then it is counted again.\n";
    if (revealed) text += ask.reveal + "\n";
}

}  // namespace slopewise
