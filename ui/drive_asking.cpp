#include "ui/drive_asking.h"

#include <algorithm>
#include <utility>

#include "data/tally_log.h"
#include "data/write_lesson.h"
#include "lesson/where_and_when.h"
#include "question/set_up.h"
#include "share/shared_lesson.h"
#include "ui/app.h"
#include "ui/asking_shown.h"
#include "ui/drive_class.h"
#include "ui/question_sets.h"

namespace slopewise {
namespace {

using Wish = DoWithQuestions::Wish;

FlownSoFar flown_so_far(const App& app) {
    return {app.flight->scenario, app.flight->attempt, app.flight->track, app.settings.school.criteria};
}

bool is_asked(const AskRun& run) { return run.stage == AskStage::asked || run.stage == AskStage::discussed; }

// Puts the flight as the question wants it, and lets it run to the freeze; why it could not be: else empty.
// What is flown is what the lesson's own text gives, so that the class window flies the same.
std::string put_question(App& app, const Question& question) {
    WhereAndWhen there = app.settings.where_and_when;
    if (!question.runway_id.empty()) there.runway_id = question.runway_id;
    const Lesson usual = lesson_of(ApproachChoice{}, *base_lesson(app.catalog));
    const Lesson base = lesson_at(usual, there, *find_aircraft(app.catalog, there.aircraft_id));
    const Lesson lesson = question_lesson(question, scenario_of(app.catalog, base));
    const Result<Lesson> read = read_shared_lesson(lesson_text(lesson), "The question", app.catalog);
    if (!read.ok()) return to_text(read.problems.front());
    if (!put_class_flight(app, *read.value)) return "cannot be flown with this aeroplane here";
    app.room.ask.held = quantize(app.flight->scenario.start_trim.controls);
    if (question.run_s > 0.0) run_class_for(app, question.run_s);
    return "";
}

// Of what is right now, and only while the flight stands still.
void work_out_now(App& app, const Question& question) {
    AskDesk& desk = app.room.ask;
    const std::int64_t tick = app.flight->attempt.tick;
    if (desk.answer && desk.answered_flight == app.room.flights && desk.answered_tick == tick) return;
    desk.answer = work_out(question, flown_so_far(app));
    desk.answered_flight = app.room.flights;
    desk.answered_tick = tick;
    // Put elsewhere by the station, it may have other lights: then it is counted anew.
    std::vector<std::string> choices =
        answer_choices(question, app.flight->scenario, app.settings.school.criteria.convention);
    if (choices == app.room.shown.ask.choices) return;
    if (desk.run.first.size() != choices.size())
        take_step(desk.run, AskStep::ask, static_cast<int>(choices.size()));
    app.room.shown.ask.choices = std::move(choices);
    show_run(app);
}

// Asks this question, or where it cannot be flown here the next that can.
void ask_from(App& app, int index) {
    AskDesk& desk = app.room.ask;
    stop_asking(app);
    for (; index < desk.run.questions; ++index) {
        go_to_question(desk.run, index);
        const Question& question = *chosen_question(app);
        if (const std::string trouble = put_question(app, question); !trouble.empty()) {
            desk.news.push_back("Question " + std::to_string(index + 1) + " was passed over: " + trouble +
                                ".");
            continue;
        }
        hide_aids(app, question);
        RoomShown& shown = app.room.shown;
        shown.black = false;
        shown.board = {};
        shown.ink.clear();
        shown.ask.choices =
            answer_choices(question, app.flight->scenario, app.settings.school.criteria.convention);
        take_step(desk.run, AskStep::ask, static_cast<int>(shown.ask.choices.size()));
        return show_run(app);
    }
}

// Another window of this program may have kept some meanwhile: those are read first.
void keep_answers(App& app, Host& host) {
    AskDesk& desk = app.room.ask;
    if (hands_in(desk.run.first) == 0) return;
    const QuestionSet& set = *chosen_set(app);
    const Question& question = *chosen_question(app);
    const AskShown& shown = app.room.shown.ask;
    AskedQuestion asked{host.now_unix_ms() / 1000,
                        host.ahead_of_utc_s(),
                        set.id,
                        set.title,
                        desk.run.question + 1,
                        std::string(question_kind_names[static_cast<std::size_t>(question.kind)]),
                        shown.question,
                        shown.choices,
                        desk.run.first,
                        desk.run.second,
                        desk.answer->right};
    std::vector<AskedQuestion> kept = read_tally_log(host.load(class_tally_key)).asked;
    if (kept.size() >= desk.tally.size()) desk.tally = std::move(kept);  // fewer: nothing can be kept here
    desk.tally.push_back(std::move(asked));
    host.save(class_tally_key, tally_log_text(desk.tally));
}

void reveal(App& app, Host& host) {
    AskDesk& desk = app.room.ask;
    work_out_now(app, *chosen_question(app));
    take_step(desk.run, AskStep::reveal, 0);
    keep_answers(app, host);
    show_aids_after(app, *chosen_question(app));
    show_run(app);
}

void run_on(App& app) {
    const Question& question = *chosen_question(app);
    take_step(app.room.ask.run, AskStep::run_on, 0);
    show_run(app);
    app.room.ask.held.reset();
    if (question.kind == QuestionKind::moves_first) {
        const ControlPositions now = positions_of(app.flight->attempt.controls);
        app.hands.at = stepped(question, app.flight->scenario, now);
        app.room.ask.held = quantize(app.hands.at);
    }
    run_class_for(app, question.run_on_s);
}

void choose(App& app, const std::string& id) {
    const QuestionSet* set = find_any_set(app, id);
    if (set == nullptr) return;
    stop_asking(app);
    app.room.ask.chosen = id;
    app.room.ask.run = {static_cast<int>(set->questions.size()), 0, AskStage::ready, {}, {}};
}

void go_on(App& app, Host& host) {
    AskDesk& desk = app.room.ask;
    // Who has chosen no set yet and presses the clicker begins with the first.
    if (desk.chosen.empty() && !all_question_sets(app).empty())
        choose(app, all_question_sets(app).front()->id);
    const Question* question = chosen_question(app);
    if (question == nullptr || desk.editing) return;
    if (is_asked(desk.run) && class_runs(app)) return freeze_or_run(app);
    if (is_asked(desk.run)) work_out_now(app, *question);
    const int right = desk.answer ? desk.answer->right : -1;
    const bool over = is_over(desk.run.stage);
    switch (const AskStep step = next_step(desk.run, right, question->run_on_s > 0.0); step) {
    case AskStep::ask: return ask_from(app, desk.run.question + (over ? 1 : 0));
    case AskStep::reveal: return reveal(app, host);
    case AskStep::run_on: return run_on(app);
    case AskStep::discuss: take_step(desk.run, step, 0); return show_run(app);
    case AskStep::end:
        stop_asking(app);
        take_step(desk.run, step, 0);
        desk.news.emplace_back("That was the last question of this set.");
    }
}

void leave_set(App& app) {
    stop_asking(app);
    app.room.ask.chosen.clear();
    app.room.ask.run = {};
    app.room.ask.editing = false;
}

void count(App& app, int choice, int more) {
    if (count_hand(app.room.ask.run, choice, more)) show_run(app);
}

void hand_over_tally(App& app, bool meanings, Host& host) {
    if (meanings) host.offer_file("slopewise-class-answers-dictionary.csv", "text/csv", tally_dictionary());
    else host.offer_file("slopewise-class-answers.csv", "text/csv", tally_csv(app.room.ask.tally));
}

}  // namespace

void stop_asking(App& app) {
    AskDesk& desk = app.room.ask;
    bring_aids_back(app);
    desk.answer.reset();
    desk.held.reset();
    app.room.shown.ask = {};
    go_to_question(desk.run, desk.run.question);
}

void leave_question(App& app) {
    AskRun& run = app.room.ask.run;
    const bool over = is_over(run.stage);
    stop_asking(app);
    if (over) go_to_question(run, (run.question + 1) % run.questions);
}

const QuestionSet* chosen_set(const App& app) { return find_any_set(app, app.room.ask.chosen); }

const Question* chosen_question(const App& app) {
    const QuestionSet* set = chosen_set(app);
    const auto at = static_cast<std::size_t>(app.room.ask.run.question);
    return set != nullptr && at < set->questions.size() ? &set->questions[at] : nullptr;
}

void open_ask_desk(App& app, Host& host) {
    open_own_questions(app, host);
    const std::string text = host.load(class_tally_key);
    TallyLog log = read_tally_log(text);
    app.room.ask.tally = std::move(log.asked);
    if (log.problems.empty()) return;
    host.save(std::string(class_tally_key) + "-damaged", text);
    app.room.ask.news.push_back("A kept answer of a class cannot be read (" + to_text(log.problems.front()) +
                                "). The others are kept; the whole text was put aside.");
}

void begin_asking(App& app) {
    AskDesk& desk = app.room.ask;
    desk.before.reset();
    leave_set(app);
    desk.asks_to_remove = desk.waits_for_file = false;
}

Controls asking_controls(const App& app, const Controls& controls) {
    return app.room.freeze_at_tick && app.room.ask.held ? *app.room.ask.held : controls;
}

void follow_asking(App& app) {
    const Question* question = chosen_question(app);
    if (question == nullptr || !app.flight || !is_asked(app.room.ask.run)) return;
    if (class_runs(app)) app.room.ask.answer.reset();
    else work_out_now(app, *question);
}

void take_up_asking(App& app, const std::string& set_id) {
    const AskShown shown = app.room.shown.ask;
    if (shown.stage == AskShown::Stage::none) return choose(app, set_id);
    AskDesk& desk = app.room.ask;
    for (const QuestionSet* set : all_question_sets(app)) {
        const int count = static_cast<int>(set->questions.size());
        for (int i = 0; i < count; ++i) {
            if (place_words(*set, i) != shown.place) continue;
            desk.chosen = set->id;
            const AskStage stage = shown.stage == AskShown::Stage::asked       ? AskStage::asked
                                   : shown.stage == AskShown::Stage::discussed ? AskStage::discussed
                                                                               : AskStage::revealed;
            desk.run = {count, i, stage, shown.first, shown.second};
            desk.answer.reset();
            desk.before = AidsBefore{};  // what was shown before, nobody knows any more
            if (stage == AskStage::revealed) desk.answer = Answer{shown.right, shown.reveal, ""};
            return;
        }
    }
    // A set that is not here: nothing can be gone on with.
    app.room.shown.ask = {};
}

void do_with_questions(App& app, const DoWithQuestions& wish, Host& host) {
    AskDesk& desk = app.room.ask;
    if (!app.room.open || !app.flight) return;
    const bool counts = wish.wish == Wish::count_hand || wish.wish == Wish::uncount_hand;
    if (!counts) desk.news.clear();
    if (wish.wish != Wish::remove_set) desk.asks_to_remove = false;
    switch (wish.wish) {
    case Wish::choose_set: return choose(app, wish.words);
    case Wish::leave_set: return leave_set(app);
    case Wish::next: return go_on(app, host);
    case Wish::previous:
        if (!desk.editing) ask_from(app, std::max(0, desk.run.question - 1));
        return;
    case Wish::go_to:
        if (!desk.editing && wish.which >= 0) ask_from(app, wish.which);
        else go_to_question(desk.run, wish.which);
        return;
    case Wish::count_hand: return count(app, wish.which, 1);
    case Wish::uncount_hand: return count(app, wish.which, -1);
    case Wish::show_counts: app.room.shown.ask.counts_shown = !app.room.shown.ask.counts_shown; return;
    case Wish::discuss:
        if (desk.run.stage != AskStage::asked) return;
        take_step(desk.run, AskStep::discuss, 0);
        return show_run(app);
    case Wish::hand_over: return hand_over_questions(app, host);
    case Wish::save_tally: return hand_over_tally(app, wish.which == 1, host);
    case Wish::take_in: desk.waits_for_file = true; return host.choose_text_file();
    default: stop_asking(app); return edit_questions(app, wish, host);
    }
}

}  // namespace slopewise
