#include "ui/question_sets.h"

#include <algorithm>

#include "data/write_question_set.h"
#include "question/set_up.h"
#include "share/shared_question_set.h"
#include "ui/drive_asking.h"
#include "ui/lesson_editor_names.h"

namespace slopewise {
namespace {

using Wish = DoWithQuestions::Wish;

// Kinds before the one that has a control to choose.
constexpr int plain_kinds = static_cast<int>(QuestionKind::moves_first);
constexpr std::size_t most_title_bytes = 80, most_about_bytes = 200, most_words_bytes = 120;

const QuestionSet* find_own(const AskDesk& desk, std::string_view id) {
    const auto found = std::ranges::find(desk.own, id, &QuestionSet::id);
    return found != desk.own.end() ? &*found : nullptr;
}

std::string shortened(std::string text, std::size_t most_bytes) {
    if (text.size() <= most_bytes) return text;
    while (most_bytes > 0 && (static_cast<unsigned char>(text[most_bytes]) & 0xC0u) == 0x80u) --most_bytes;
    return text.substr(0, most_bytes);
}

// What a class does not see while this is asked, unless it is changed in the file.
void hide_usual(Question& question) {
    const auto hide = [&](ClassAid aid) { question.hidden[static_cast<std::size_t>(aid)] = true; };
    hide(ClassAid::side_profile);
    if (question.kind == QuestionKind::energy_state || question.kind == QuestionKind::where_hit)
        hide(ClassAid::lights);
    if (question.kind == QuestionKind::lights || question.kind == QuestionKind::where_hit)
        hide(ClassAid::dials);
}

struct Writing {
    App& app;
    Host& host;
    AskDesk& desk = app.room.ask;

    // Keeps a set in the place of the one with its id, as its own text gives it when it is read; else says
    // why not, and changes nothing.
    bool put(const QuestionSet& changed) {
        const Result<QuestionSet> read =
            read_shared_question_set(question_set_text(changed), "These questions", app.catalog);
        if (!read.ok()) {
            for (const Problem& problem : read.problems) desk.news.push_back(to_text(problem) + ".");
            return false;
        }
        std::vector<QuestionSet> own = desk.own;
        std::erase_if(own, [&](const QuestionSet& each) { return each.id == changed.id; });
        own.insert(std::ranges::upper_bound(own, changed.title, {}, &QuestionSet::title), *read.value);
        if (const std::string limit = own_question_sets_limit(own); !limit.empty()) {
            desk.news.push_back(limit);
            return false;
        }
        desk.own = std::move(own);
        save();
        show(changed.id, desk.run.question);
        return true;
    }

    void save() { host.save(own_questions_key, own_question_sets_text(desk.own)); }

    void show(const std::string& id, int question) {
        desk.chosen = id;
        const QuestionSet* set = find_any_set(app, id);
        const int count = set != nullptr ? static_cast<int>(set->questions.size()) : 0;
        desk.run = {count, std::clamp(question, 0, std::max(0, count - 1)), AskStage::ready, {}, {}};
    }

    // A set of one's own that is being written: a copy of the chosen one when that is shipped.
    void edit() {
        const QuestionSet* set = chosen_set(app);
        if (set == nullptr) return;
        if (find_own(desk, set->id) == nullptr) {
            QuestionSet copy = *set;
            copy.title = shortened("Copy of " + set->title, most_title_bytes);
            copy.id = own_id(copy.title, host.random());
            copy.place = QuestionSet{}.place;
            if (!put(copy)) return;
            desk.news.push_back("This copy is yours: " + copy.title + ".");
        }
        desk.editing = true;
    }

    void add_here(int which) {
        if (which < 0 || which >= static_cast<int>(kinds_of_question().size())) return;
        const auto kind = static_cast<QuestionKind>(std::min(which, plain_kinds));
        Question question = question_here(kind, app.flight->scenario, app.flight->attempt);
        if (kind == QuestionKind::moves_first) question.step = static_cast<ControlStep>(which - plain_kinds);
        if (kind == QuestionKind::stable) question.run_s = 12.0;  // a gate's trends look back ten seconds
        hide_usual(question);
        QuestionSet set;
        if (const QuestionSet* own = find_own(desk, desk.chosen)) {
            set = *own;
        } else {
            set.title = "My questions";
            set.id = own_id(set.title, host.random());
        }
        set.questions.push_back(question);
        if (!put(set)) return;
        desk.editing = true;
        desk.run.question = desk.run.questions - 1;
        desk.news.push_back("Added: " + stands_words(question) + ".");
    }

    // Changes the chosen set of one's own, and keeps it.
    template <class Change>
    void change(Change how) {
        const QuestionSet* own = find_own(desk, desk.chosen);
        if (!desk.editing || own == nullptr) return;
        QuestionSet set = *own;
        if (how(set)) put(set);
    }

    void set_words(int what, const std::string& words) {
        change([&](QuestionSet& set) {
            const auto at = static_cast<std::size_t>(desk.run.question);
            if (what == 1) {
                if (words.empty()) return false;  // half written
                set.title = shortened(words, most_title_bytes);
            } else if (what == 2) {
                set.about = shortened(words, most_about_bytes);
            } else if (at < set.questions.size()) {
                set.questions[at].words = shortened(words, most_words_bytes);
            }
            return true;
        });
    }

    void move_up() {
        change([&](QuestionSet& set) {
            const auto at = static_cast<std::size_t>(desk.run.question);
            if (at == 0 || at >= set.questions.size()) return false;
            std::swap(set.questions[at], set.questions[at - 1]);
            --desk.run.question;
            return true;
        });
    }

    void remove() {
        change([&](QuestionSet& set) {
            const auto at = static_cast<std::size_t>(desk.run.question);
            if (at >= set.questions.size()) return false;
            if (set.questions.size() == 1) {
                desk.news.emplace_back("A set has one question at least. Delete the set instead.");
                return false;
            }
            set.questions.erase(set.questions.begin() + static_cast<std::ptrdiff_t>(at));
            return true;
        });
    }

    // Asked twice: a set is not brought back.
    void remove_set() {
        const QuestionSet* own = find_own(desk, desk.chosen);
        if (own == nullptr) return;
        desk.asks_to_remove = !desk.asks_to_remove;
        if (desk.asks_to_remove) {
            desk.news.push_back("Press again to delete \"" + own->title + "\" for good.");
            return;
        }
        desk.news.push_back("Deleted: " + own->title + ".");
        std::erase_if(desk.own, [id = desk.chosen](const QuestionSet& each) { return each.id == id; });
        save();
        desk.editing = false;
        show("", 0);
    }

    void take_in(const HostText& text) {
        if (text.kind != HostText::Kind::file) {
            desk.news.push_back(text.name + ": " + text.text);
            return;
        }
        Result<QuestionSet> read = read_shared_question_set(text.text, text.name, app.catalog);
        if (!read.ok()) {
            for (const Problem& problem : read.problems) desk.news.push_back(to_text(problem) + ".");
            return;
        }
        QuestionSet set = std::move(*read.value);
        set.place = QuestionSet{}.place;
        // One that is here under this identity but says something else stays; this becomes another.
        if (const QuestionSet* here = find_any_set(app, set.id);
            here != nullptr && question_set_text(*here) != question_set_text(set))
            set.id = own_id(set.title, host.random());
        else if (find_question_set(app.catalog, set.id) != nullptr) return show(set.id, 0);
        if (put(set)) desk.news.push_back("Taken in: " + set.title + ".");
    }
};

}  // namespace

std::vector<const QuestionSet*> all_question_sets(const App& app) {
    std::vector<const QuestionSet*> all;
    for (const QuestionSet& set : app.catalog.question_sets) all.push_back(&set);
    for (const QuestionSet& set : app.room.ask.own) all.push_back(&set);
    return all;
}

const QuestionSet* find_any_set(const App& app, std::string_view id) {
    const QuestionSet* own = find_own(app.room.ask, id);
    return own != nullptr ? own : find_question_set(app.catalog, id);
}

std::vector<std::string> kinds_of_question() {
    std::vector<std::string> kinds;
    for (int i = 0; i < plain_kinds; ++i)
        kinds.emplace_back(question_kind_titles[static_cast<std::size_t>(i)]);
    for (const std::string_view step : control_step_words)
        kinds.push_back(std::string(step) + ": what answers first");
    return kinds;
}

void open_own_questions(App& app, Host& host) {
    const std::string text = host.load(own_questions_key);
    OwnQuestionSets own = read_own_question_sets(text, app.catalog);
    AskDesk& desk = app.room.ask;
    desk.own = std::move(own.sets);
    std::ranges::stable_sort(desk.own, {}, &QuestionSet::title);
    if (own.problems.empty()) return;
    // The first free key, so that an earlier one that was put aside is not written over.
    constexpr int most_put_aside = 9;
    std::string key;
    for (int i = 1; i <= most_put_aside; ++i) {
        key = std::string(own_questions_key) + "-damaged-" + std::to_string(i);
        const std::string there = host.load(key);
        if (there == text) break;
        if (!there.empty() && i < most_put_aside) continue;
        host.save(key, text);
        break;
    }
    desk.news.push_back("Not all of your own questions could be read: " + to_text(own.problems.front()) +
                        ". What was kept is untouched under the name " + key + ".");
}

void edit_questions(App& app, const DoWithQuestions& wish, Host& host) {
    Writing writing{app, host};
    switch (wish.wish) {
    case Wish::edit: return writing.edit();
    case Wish::add_here: return writing.add_here(wish.which);
    case Wish::set_words: return writing.set_words(wish.which, wish.words);
    case Wish::move_up: return writing.move_up();
    case Wish::remove: return writing.remove();
    case Wish::remove_set: return writing.remove_set();
    case Wish::done: app.room.ask.editing = false; return;
    default: return;
    }
}

void hand_over_questions(App& app, Host& host) {
    const QuestionSet* set = chosen_set(app);
    if (set == nullptr) return;
    const std::string name = "slopewise-questions-" + slug_of(set->title) + ".json";
    host.offer_file(name, "application/json", question_set_text(*set));
    app.room.ask.news.push_back("Handed over: " + name + ".");
}

bool take_in_questions(App& app, const HostText& text, Host& host) {
    AskDesk& desk = app.room.ask;
    const bool waits = app.screen == Screen::class_room && desk.waits_for_file;
    const bool is_file = text.kind == HostText::Kind::file;
    if (text.kind == HostText::Kind::link || !(waits || (is_file && holds_question_set(text.text))))
        return false;
    desk.waits_for_file = false;
    desk.news.clear();
    Writing{app, host}.take_in(text);
    if (app.screen != Screen::class_room && !desk.news.empty()) app.notice = desk.news.front();
    return true;
}

}  // namespace slopewise
