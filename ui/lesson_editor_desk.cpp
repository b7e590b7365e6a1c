#include "ui/lesson_editor_desk.h"

#include <algorithm>

#include "data/write_lesson.h"
#include "share/lesson_link.h"
#include "share/own_lessons.h"
#include "share/shared_lesson.h"
#include "ui/lesson_editor_fields.h"
#include "ui/lesson_editor_names.h"
#include "ui/question_sets.h"

namespace slopewise {
namespace {

// Whether a lesson is good, and its figures. What is flown and kept is what its own text gives when it is
// read, so that whoever gets that text flies the same.
LessonDraft checked(const Catalog& catalog, Lesson lesson) {
    LessonDraft draft;
    Result<Lesson> read = read_shared_lesson(lesson_text(lesson), "This lesson", catalog);
    draft.problems = std::move(read.problems);
    draft.lesson = read.ok() ? std::move(*read.value) : std::move(lesson);
    if (!draft.problems.empty()) return draft;
    draft.briefing = make_briefing(scenario_of(catalog, draft.lesson));
    if (!draft.briefing.flyable)
        draft.problems.push_back({"This lesson", 0, "", "cannot be flown: " + draft.briefing.reason, ""});
    return draft;
}

std::string copy_title(const std::string& title) {
    constexpr std::size_t most_bytes = 80;
    const std::string copy = "Copy of " + title;
    return copy.size() <= most_bytes ? copy : title;
}

struct Desk {
    App& app;
    Host& host;
    LessonDesk& desk = app.lessons;

    void tell(std::string words) { desk.news = std::move(words); }

    void save() {
        ++desk.edition;
        host.save(own_lessons_key, own_lessons_text(std::span<const Lesson>(desk.own)));
    }

    // Puts a lesson among the kept ones, in the place of one with the same identity; false: there is no room.
    bool put(const Lesson& lesson) {
        std::vector<Lesson> own = desk.own;
        std::erase_if(own, [&](const Lesson& each) { return each.id == lesson.id; });
        own.insert(std::ranges::upper_bound(own, lesson.title, {}, &Lesson::title), lesson);
        desk.trouble = own_lessons_limit(own);
        if (!desk.trouble.empty()) return false;
        desk.own = std::move(own);
        desk.chosen = lesson.id;
        save();
        return true;
    }

    bool is_draft_changed() const {
        const std::string text = lesson_text(desk.draft->lesson);
        const Lesson* kept = find_own(desk, desk.draft->lesson.id);
        const bool is_kept = kept != nullptr && lesson_text(*kept) == text;
        return !is_kept && text != desk.draft->begun;
    }

    // As it last could be flown, so that a page that is closed loses at most what made it bad.
    void save_draft() {
        if (desk.draft && !desk.draft->problems.empty()) return;
        const bool changed = desk.draft && is_draft_changed();
        host.save(lesson_draft_key, changed ? lesson_text(desk.draft->lesson) : std::string());
    }

    // A draft that was changed and never kept can be brought back.
    void put_draft_aside() {
        if (!desk.draft) return;
        if (is_draft_changed()) desk.deleted.push_back(desk.draft->lesson);
        ++desk.edition;
        desk.draft.reset();
        save_draft();
    }

    void open_draft() {
        const std::string text = host.load(lesson_draft_key);
        if (text.empty()) return;
        const Result<Lesson> read =
            read_shared_lesson(text, "The lesson that was being written", app.catalog);
        if (read.ok()) desk.draft = checked(app.catalog, *read.value);
        else desk.trouble = to_text(read.problems.front());
    }

    void write(Lesson lesson) {
        put_draft_aside();
        desk.draft = checked(app.catalog, std::move(lesson));
        desk.draft->begun = lesson_text(desk.draft->lesson);
        app.screen = Screen::lesson_editor;
    }

    void write_new() {
        Lesson lesson = chosen_scenario(app).lesson;
        lesson.title = "New lesson";
        lesson.id = own_id(lesson.title, host.random());
        write(std::move(lesson));
    }

    void copy(Lesson lesson) {
        lesson.title = copy_title(lesson.title);
        lesson.id = own_id(lesson.title, host.random());
        if (put(lesson)) tell("Copied.");
    }

    // Until it is kept it is named after its title.
    void name_draft() {
        Lesson& lesson = desk.draft->lesson;
        if (find_own(desk, lesson.id) == nullptr) lesson.id = renamed_own_id(lesson.id, lesson.title);
    }

    void keep_draft() {
        if (!desk.draft || !desk.draft->problems.empty()) return;
        name_draft();
        if (put(desk.draft->lesson)) tell("Kept on this device: " + desk.draft->lesson.title + ".");
        save_draft();
    }

    void fly(const Lesson& lesson) {
        desk.flown = lesson;
        desk.behind_briefing = app.screen;
        apply(app, OpenBriefing{}, host);
    }

    void hand_over(const Lesson& lesson) {
        const std::string name = "slopewise-lesson-" + slug_of(lesson.title) + ".json";
        host.offer_file(name, "application/json", lesson_text(lesson));
        tell("Handed over: " + name + ".");
    }

    void copy_link(const Lesson& lesson) {
        const Result<std::string> link = lesson_link(lesson);
        if (!link.ok()) {
            desk.trouble = to_text(link.problems.front()) + ".";
            return;
        }
        const std::string page = host.page_address();
        const bool is_file = page.starts_with("file:");  // leads nowhere elsewhere, and names this machine
        const std::string address = (is_file ? "" : page) + "#" + *link.value;
        host.copy_text(address);
        tell("The link is copied: " + std::to_string(address.size()) + " letters, the whole lesson. " +
             (is_file ? "Put it behind the address of any page of Slopewise."
                      : "Whoever opens it flies the same."));
    }

    void remove(const Lesson& lesson) {
        desk.deleted.push_back(lesson);
        const std::string id = lesson.id;
        tell("Deleted: " + lesson.title + ". It can be brought back until you leave the program.");
        std::erase_if(desk.own, [&](const Lesson& each) { return each.id == id; });
        desk.chosen = desk.own.empty() ? "" : desk.own.front().id;
        save();
    }

    void bring_back(const std::string& id) {
        const auto found = std::ranges::find(desk.deleted, id, &Lesson::id);
        if (found == desk.deleted.end()) return;
        const Lesson lesson = *found;
        if (!checked(app.catalog, lesson).problems.empty()) {  // it was never kept: it is written on
            desk.deleted.erase(found);
            return write(lesson);
        }
        if (!put(lesson)) return;
        std::erase_if(desk.deleted, [&](const Lesson& each) { return each.id == id; });
        ++desk.edition;
        tell("Brought back: " + lesson.title + ".");
    }

    void leave_arrived() {
        desk.arrived.reset();
        app.screen = desk.behind_arrived;
    }

    // One that is kept already under this identity but says something else stays: this one becomes another.
    void keep_arrived() {
        Lesson lesson = *desk.arrived->lesson;
        if (find_own(desk, lesson.id) != nullptr || find_lesson(app.catalog, lesson.id) != nullptr)
            lesson.id = own_id(lesson.title, host.random());
        app.screen = Screen::own_lessons;
        if (!put(lesson)) return;
        tell("Kept on this device: " + lesson.title + ".");
        desk.arrived.reset();
    }

    void arrive(const HostText& text) {
        const bool is_link = text.kind == HostText::Kind::link;
        const std::string name = is_link ? "The link" : text.name;
        Result<Lesson> read;
        if (is_link) read = read_lesson_link(text.text, app.catalog);
        else if (text.kind == HostText::Kind::file) read = read_shared_lesson(text.text, name, app.catalog);
        else read = failure<Lesson>({{name, 0, "", text.text, ""}});
        if (read.ok()) {
            give_honest_id(*read.value, app.catalog);
            read.problems = checked(app.catalog, *read.value).problems;
            if (!read.problems.empty()) read.value.reset();
        }
        desk.arrived = ArrivedLesson{is_link ? "a link" : "the file " + text.name, std::move(read.value),
                                     std::move(read.problems)};
        lay_before_user();
    }

    void lay_before_user() {
        if (app.screen == Screen::flight && app.flight) app.flight->paused = true;
        if (app.replay) app.replay->playing = false;
        if (app.screen == Screen::arrived_lesson) return;
        const bool briefed = app.screen == Screen::briefing && desk.flown;
        if (const Screen behind = briefed ? desk.behind_briefing : app.screen;
            behind != Screen::arrived_lesson)
            desk.behind_arrived = behind;
        app.screen = Screen::arrived_lesson;
    }
};

}  // namespace

const Lesson* find_own(const LessonDesk& desk, std::string_view id) {
    const auto found = std::ranges::find(desk.own, id, &Lesson::id);
    return found != desk.own.end() ? &*found : nullptr;
}

void open_lesson_desk(App& app, Host& host) {
    const std::string text = host.load(own_lessons_key);
    OwnLessons own = read_own_lessons(text, app.catalog);
    app.lessons.own = std::move(own.lessons);
    std::ranges::stable_sort(app.lessons.own, {}, &Lesson::title);
    Desk{app, host}.open_draft();
    if (own.problems.empty()) return;
    // The first free key, so that an earlier one that was put aside is not written over.
    constexpr int most_put_aside = 9;
    std::string key;
    for (int i = 1; i <= most_put_aside; ++i) {
        key = std::string(own_lessons_key) + "-damaged-" + std::to_string(i);
        const std::string there = host.load(key);
        if (there == text) break;
        if (!there.empty() && i < most_put_aside) continue;
        host.save(key, text);
        break;
    }
    app.lessons.trouble = "Not all of your own lessons could be read: " + to_text(own.problems.front()) +
                          ". " + std::to_string(app.lessons.own.size()) +
                          " could. What was kept is untouched under the name " + key + ".";
}

void open_own_lessons(App& app) {
    app.screen = Screen::own_lessons;
    app.ui.lessons.asks_to_delete = false;
    app.lessons.news.clear();
    if (find_own(app.lessons, app.lessons.chosen) == nullptr)
        app.lessons.chosen = app.lessons.own.empty() ? "" : app.lessons.own.front().id;
}

void close_own_lessons(App& app) {
    if (app.screen == Screen::lesson_editor) return open_own_lessons(app);
    if (app.screen == Screen::arrived_lesson) app.screen = app.lessons.behind_arrived;
    else if (app.ui.lessons.asks_to_delete) app.ui.lessons.asks_to_delete = false;
    else app.screen = app.home;
}

void set_draft_field(App& app, const SetLessonField& wish, Host& host) {
    if (!app.lessons.draft) return;
    LessonDraft& draft = *app.lessons.draft;
    Lesson lesson = draft.lesson;
    set_lesson_field(lesson, wish.field, wish.amount, wish.words, app.catalog);
    std::string begun = std::move(draft.begun);
    draft = checked(app.catalog, std::move(lesson));
    draft.begun = std::move(begun);
    app.lessons.news.clear();
    app.lessons.trouble.clear();
    Desk{app, host}.save_draft();
}

void do_with_lesson(App& app, const DoWithLesson& wish, Host& host) {
    using Wish = DoWithLesson::Wish;
    Desk work{app, host};
    LessonDesk& desk = app.lessons;
    if (wish.wish != Wish::choose) desk.news.clear();
    const bool is_arrived = desk.arrived && desk.arrived->lesson;
    const bool is_draft_good = desk.draft && desk.draft->problems.empty();
    const Lesson* own = find_own(desk, wish.id);
    switch (wish.wish) {
    case Wish::choose: desk.chosen = wish.id; break;
    case Wish::write_new: work.write_new(); break;
    case Wish::write_on:
        if (desk.draft) app.screen = Screen::lesson_editor;
        break;
    case Wish::open:
        if (own != nullptr) work.write(*own);
        break;
    case Wish::copy:
        if (own != nullptr) work.copy(*own);
        break;
    case Wish::keep: work.keep_draft(); break;
    case Wish::fly_draft:
        if (!is_draft_good) break;
        work.name_draft();
        work.fly(desk.draft->lesson);
        break;
    case Wish::fly:
        if (own != nullptr) work.fly(*own);
        break;
    case Wish::hand_over:
        if (own != nullptr) work.hand_over(*own);
        break;
    case Wish::copy_link:
        if (own != nullptr) work.copy_link(*own);
        break;
    case Wish::remove:
        if (own != nullptr) work.remove(Lesson(*own));
        break;
    case Wish::bring_back: work.bring_back(wish.id); break;
    case Wish::take_in: host.choose_text_file(); break;
    case Wish::look_at_arrived:
        if (desk.arrived) work.lay_before_user();
        break;
    case Wish::fly_arrived:
        if (is_arrived) work.fly(*desk.arrived->lesson);
        break;
    case Wish::keep_arrived:
        if (is_arrived) work.keep_arrived();
        break;
    case Wish::leave_arrived: work.leave_arrived(); break;
    }
}

void take_in_lesson_texts(App& app, Host& host) {
    for (const HostText& text : host.take_texts())
        if (!take_in_questions(app, text, host)) Desk{app, host}.arrive(text);
}

void leave_lesson_briefing(App& app) {
    app.lessons.flown.reset();
    app.screen = app.lessons.behind_briefing;
}

std::optional<Lesson> mirrored_lesson(const Catalog& catalog, const Lesson& lesson) {
    Lesson other = lesson;
    other.start.offset_rad = -other.start.offset_rad;
    LessonDraft draft = checked(catalog, std::move(other));
    if (!draft.problems.empty()) return std::nullopt;
    return std::move(draft.lesson);
}

}  // namespace slopewise
