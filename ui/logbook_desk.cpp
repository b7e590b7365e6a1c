#include "ui/logbook_desk.h"

#include "debrief/sheet_facts.h"
#include "logbook/student_file.h"
#include "ui/keep_attempts.h"
#include "ui/logbook_events.h"
#include "ui/open_replay.h"

namespace slopewise {
namespace {

void want(App& app, std::string_view id, Logbook::After after, Host& host) {
    app.logbook.wanted = id;
    app.logbook.after = after;
    const auto held = app.logbook.unkept.find(id);
    if (held == app.logbook.unkept.end()) return host.logbook().load(app.logbook.wanted);
    if (Result<KeptAttempt> attempt = read_kept_attempt(held->second, attempt_words(app, id)); attempt.ok())
        use_loaded(app, std::move(*attempt.value), host);
}

void mark_deleted(App& app, std::string_view id, std::int64_t at_unix_s, Host& host) {
    const IndexRow* found = find_row(app.logbook, id);
    if (found == nullptr) return;
    IndexRow row = *found;
    row.deleted_unix_s = at_unix_s;
    if (!app.logbook.unkept.contains(id)) host.logbook().keep_row(row.id, index_row_text(row));
    put_row(app.logbook, std::move(row));
}

// A name as part of a file's name: letters and digits stay, the rest becomes hyphens.
std::string file_part(std::string_view words) {
    std::string part;
    for (const char c : words) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        part += plain ? c : '-';
    }
    return part.empty() ? "no-name" : part;
}

// Those that the store would not take come from here, the others from the store.
void export_attempts(App& app, const std::string& name, std::string head, std::vector<std::string> ids,
                     Host& host) {
    std::erase_if(ids, [&](const std::string& id) {
        const auto held = app.logbook.unkept.find(id);
        if (held == app.logbook.unkept.end()) return false;
        head += held->second + "\n";
        return true;
    });
    host.logbook().export_file(name, head, ids);
}

// "attempt of 2026-03-14".
std::string moment_words(const KeptAttempt& attempt) {
    const std::string date = date_text(attempt.recording.circumstances.started_unix_s);
    return date.empty() ? "the other attempt" : "attempt of " + date;
}

void show(App& app, KeptAttempt attempt) {
    const Scenario scenario = scenario_of(app.catalog, attempt.recording.lesson);
    app.flight = session_of(std::move(attempt), scenario, app.settings.school.criteria);
    app.debrief = debrief_of(app);
    app.debrief.detail_asked = true;
    app.screen = Screen::summary;
    ++app.edition;
}

}  // namespace

// What is flown now gives way to it, so it is kept as far as it came, before the other is asked for.
void open_attempt(App& app, std::string_view id, Host& host) {
    leave_attempt(app, host);
    want(app, id, Logbook::After::show, host);
}

void replay_attempt(App& app, std::string_view id, Host& host) {
    want(app, id, Logbook::After::replay, host);
}

void compare_attempts(App& app, std::string_view id, std::string_view other_id, Host& host) {
    app.logbook.other = other_id;
    want(app, id, Logbook::After::compare, host);
}

// The first of two to be compared waits for the other.
void use_loaded(App& app, KeptAttempt attempt, Host& host) {
    Logbook& book = app.logbook;
    book.wanted.clear();
    switch (book.after) {
    case Logbook::After::show: return show(app, std::move(attempt));
    case Logbook::After::replay: return open_replay(app, attempt.recording, &attempt.track);
    case Logbook::After::compare:
        book.first = std::move(attempt);
        return want(app, std::string(book.other), Logbook::After::compare_other, host);
    case Logbook::After::compare_other:
        if (!book.first) return;
        open_replay(app, book.first->recording, &book.first->track,
                    ComparedAttempt{attempt.recording, moment_words(attempt), &attempt.track});
        book.first.reset();
        return;
    }
}

void save_attempt(App& app, std::string_view id, Host& host) {
    export_attempts(app, "slopewise-attempt-" + std::string(id) + ".jsonl", "", {std::string(id)}, host);
}

void delete_attempt(App& app, std::string_view id, Host& host) {
    mark_deleted(app, id, host.now_unix_ms() / 1000, host);
    app.logbook.news = "Deleted. It can be brought back below.";
}

void bring_back_attempt(App& app, std::string_view id, Host& host) {
    mark_deleted(app, id, 0, host);
    app.logbook.news = "Brought back.";
}

void erase_attempt(App& app, std::string_view id, Host& host) {
    const std::string gone(id);  // the row that names it goes
    take_row_out(app.logbook, gone);
    app.logbook.unkept.erase(gone);
    host.logbook().erase(gone);
    keep_unkept(app, host);  // there may be room now
    app.logbook.news = "Deleted for good.";
}

void choose_student(App& app, std::string_view name, Host& host) {
    app.settings.student = name;
    ++app.edition;
    ++app.logbook.edition;
    host.save(settings_key, settings_text(app.settings));
}

void export_student(App& app, Host& host) {
    const std::vector<const IndexRow*> rows = rows_of(app.logbook, app.settings.student);
    std::vector<std::string> ids;
    for (const IndexRow* row : rows) ids.push_back(row->id);
    export_attempts(app, "slopewise-" + file_part(app.settings.student) + ".jsonl",
                    student_file_head(app.settings.student) + student_rows_line(rows), ids, host);
}

void import_file(App& app, Host& host) {
    if (app.logbook.import && app.logbook.import->running) return;
    app.school_import.reset();  // should one have been begun and given up
    host.logbook().choose_import();
}

std::string attempt_words(const App&, std::string_view id) { return "The attempt " + std::string(id); }

}  // namespace slopewise
