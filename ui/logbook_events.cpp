#include "ui/logbook_events.h"

#include <algorithm>

#include "ui/import_attempts.h"
#include "ui/keep_attempts.h"
#include "ui/logbook_desk.h"
#include "ui/school_desk.h"

namespace slopewise {
namespace {

using Kind = StoreEvent::Kind;

// "1 min 12 s".
std::string time_words(std::int64_t ticks) {
    const auto seconds = static_cast<int>(static_cast<double>(ticks) * tick_s);
    if (seconds < 60) return std::to_string(seconds) + " s";
    return std::to_string(seconds / 60) + " min " + std::to_string(seconds % 60) + " s";
}

struct TakeIn {
    App& app;
    Host& host;
    Logbook& book = app.logbook;

    void event(const StoreEvent& event) {
        if (take_school_event(app, event, host) || take_class_table_event(app, event, host)) return;
        switch (event.kind) {
        case Kind::opened: return opened(event.texts);
        case Kind::refused: return refused(event.words);
        case Kind::kept: return kept(event.id);
        case Kind::not_kept: return not_kept(event);
        case Kind::loaded: return loaded(event.id, event.texts.front());
        case Kind::not_loaded: return not_loaded(event.id, event.words);
        case Kind::changed: return changed(event);
        case Kind::journal: return cut_off(event);
        case Kind::exported: return tell_news("Handed over: " + event.words + ".");
        case Kind::import_began: return begin_import(app, event.words, host);
        case Kind::import_line:
            return import_line(app, event.texts.empty() ? std::string_view{} : event.texts.front(), host);
        case Kind::import_failed: return fail_import(app, event.words);
        case Kind::import_ended: return end_import(app);
        default: return;  // files for the class's table
        }
    }

    void tell_news(std::string words) {
        book.news = std::move(words);
        ++book.edition;
    }
    void tell_trouble(std::string words) {
        book.trouble = std::move(words);
        ++book.edition;
    }

    // A row that cannot be read is of an older version: it is made again from its attempt, which stays as it
    // is.
    void opened(const std::vector<std::string>& texts) {
        book.standing = Logbook::Standing::open;
        for (const std::string& text : texts) {
            const std::size_t end = text.find('\n');
            const std::string_view row = std::string_view(text).substr(std::min(end, text.size() - 1) + 1);
            if (std::optional<IndexRow> read = read_index_row(row)) book.rows.push_back(std::move(*read));
            else book.without_row.push_back(text.substr(0, end));
        }
        std::ranges::sort(book.rows, {}, &IndexRow::id);
        if (!book.without_row.empty()) host.logbook().load(book.without_row.back());
        ++book.edition;
        choose_first_page();
    }

    // With no attempt in the logbook the first page is a newcomer's; never under the hand.
    void choose_first_page() {
        if (app.screen == Screen::welcome && !is_newcomer(app)) app.screen = Screen::choices;
    }

    void refused(const std::string& words) {
        book.standing = Logbook::Standing::refused;
        tell_trouble(words + " You can fly; hand over what you want to keep before you close the page.");
        // Whoever never opens the logbook is told as well.
        if (app.notice.empty())
            app.notice =
                "Attempts are not kept here: hand them over from the logbook before you close the page.";
    }

    void kept(const std::string& id) {
        book.on_the_way.erase(id);
        if (book.unkept.erase(id) > 0) ++book.edition;
        if (book.import && book.import->waiting_for == id) import_kept(app, host);
    }

    void not_kept(const StoreEvent& event) {
        auto attempt = book.on_the_way.extract(event.id);
        if (book.import && book.import->waiting_for == event.id) {
            take_row_out(book, event.id);
            return fail_import(app, "was not taken in whole: " + event.words);
        }
        tell_trouble(
            (attempt ? "An attempt is not kept: " : "The flight is not kept as it is flown: ") + event.words +
            " What was kept before is safe. Hand over this student's file, which holds all of it, then "
            "delete attempts for good, or make room on the device.");
        if (attempt) book.unkept.insert(std::move(attempt));
    }

    void loaded(const std::string& id, const std::string& text) {
        Result<KeptAttempt> attempt = read_kept_attempt(text, attempt_words(app, id));
        std::vector<Problem> problems = attempt.problems;
        if (attempt.ok())
            problems = check_lesson(app.catalog, attempt.value->recording.lesson, attempt_words(app, id));
        if (!problems.empty()) return not_loaded(id, to_text(problems.front()) + ".");
        if (id == book.wanted) return use_loaded(app, std::move(*attempt.value), host);
        make_row(*attempt.value);
    }

    void make_row(const KeptAttempt& attempt) {
        const Scenario scenario = scenario_of(app.catalog, attempt.recording.lesson);
        IndexRow row = index_row(attempt, review_kept(attempt, scenario, app.settings.school.criteria));
        host.logbook().keep_row(row.id, index_row_text(row));
        put_row(book, std::move(row));
        next_without_row(attempt.id);
    }

    void next_without_row(const std::string& done) {
        if (std::erase(book.without_row, done) > 0 && !book.without_row.empty())
            host.logbook().load(book.without_row.back());
    }

    void not_loaded(const std::string& id, const std::string& words) {
        tell_trouble("One attempt cannot be opened. " + words + " All others are as they were.");
        if (id == book.wanted) book.wanted.clear();
        next_without_row(id);
    }

    void changed(const StoreEvent& event) {
        const std::optional<IndexRow> row =
            event.texts.empty() ? std::nullopt : read_index_row(event.texts.front());
        if (row) put_row(book, *row);
        else if (event.texts.empty()) take_row_out(book, event.id);
    }

    void cut_off(const StoreEvent& event) {
        Result<Recording> recording = read_journal(event.texts, "The journal of a flight that was cut off");
        std::vector<Problem> problems = recording.problems;
        if (recording.ok())
            problems = check_lesson(app.catalog, recording.value->lesson, "A flight that was cut off");
        if (!problems.empty()) {
            tell_trouble(to_text(problems.front()) + ". It cannot be read.");
            return;
        }
        if (recording.value->ticks < least_kept_ticks) {
            host.logbook().drop_journal(event.id);
            return;
        }
        const Scenario scenario = scenario_of(app.catalog, recording.value->lesson);
        const std::int64_t ticks = recording.value->ticks;
        const KeptAttempt attempt = kept_from(event.id, std::move(*recording.value), scenario);
        keep_whole(app, attempt, review_kept(attempt, scenario, app.settings.school.criteria), host);
        tell_news("A flight that was cut off is in the logbook: " + time_words(ticks) + " of it.");
    }
};

}  // namespace

void take_logbook_events(App& app, Host& host) {
    host.logbook().take_events(app.store_events);
    for (const StoreEvent& event : app.store_events) TakeIn{app, host}.event(event);
}

void keep_whole(App& app, const KeptAttempt& attempt, const ReviewedFlight& reviewed, Host& host) {
    IndexRow row = index_row(attempt, reviewed);
    std::string text = kept_attempt_text(attempt);
    if (app.logbook.standing == Logbook::Standing::refused) {
        app.logbook.unkept[attempt.id] = std::move(text);
    } else {
        host.logbook().keep(attempt.id, index_row_text(row), text);
        app.logbook.on_the_way[attempt.id] = std::move(text);
    }
    put_row(app.logbook, std::move(row));
}

void keep_unkept(App& app, Host& host) {
    Logbook& book = app.logbook;
    if (book.standing != Logbook::Standing::open) return;
    for (const auto& [id, text] : book.unkept)
        if (const IndexRow* row = find_row(book, id)) host.logbook().keep(id, index_row_text(*row), text);
    book.on_the_way.merge(book.unkept);
}

void put_row(Logbook& logbook, IndexRow row) {
    const auto place = std::ranges::lower_bound(logbook.rows, row.id, {}, &IndexRow::id);
    if (place != logbook.rows.end() && place->id == row.id) *place = std::move(row);
    else logbook.rows.insert(place, std::move(row));
    ++logbook.edition;
}

void take_row_out(Logbook& logbook, std::string_view id) {
    std::erase_if(logbook.rows, [&](const IndexRow& row) { return row.id == id; });
    ++logbook.edition;
}

}  // namespace slopewise
