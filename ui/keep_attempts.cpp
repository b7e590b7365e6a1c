#include "ui/keep_attempts.h"

#include <algorithm>

#include "logbook/attempt_id.h"
#include "ui/logbook_events.h"

namespace slopewise {
namespace {

// A class's flight is nobody's attempt.
bool is_flown_here(const App& app) { return app.flight && !app.flight->from_logbook && !app.room.open; }

}  // namespace

void begin_keeping(App& app, Host& host) {
    FlightSession& session = *app.flight;
    // A clock that stands before 1970 or after 2286 gives no name that sorts.
    const std::int64_t now_ms = std::clamp<std::int64_t>(host.now_unix_ms(), 1, 9'999'999'999'999);
    session.id = attempt_id(now_ms, host.random());
    Circumstances& c = session.recording.circumstances;
    c.student = app.settings.student;
    c.started_unix_s = now_ms / 1000;
    c.version = SLOPEWISE_VERSION;
}

void keep_up(App& app, Host& host) {
    if (!is_flown_here(app) || app.logbook.standing != Logbook::Standing::open) return;
    FlightSession& session = *app.flight;
    if (!session.journal_open) {
        if (session.kept_ticks == session.recording.ticks && session.kept_ticks > 0) return;
        session.journal_open = true;
        session.journal = journal_mark(session.recording);
        host.logbook().begin_journal(session.id, journal_head(session.recording));
        return;
    }
    if (session.recording.hashes.size() == session.journal.hashes) return;
    journal_piece(session.recording, session.journal, session.piece);
    host.logbook().extend_journal(session.id, session.piece);
}

void keep_attempt(App& app, Host& host) {
    if (!is_flown_here(app)) return;
    FlightSession& session = *app.flight;
    session.recording.circumstances.device = devices_words(session.devices);
    const KeptAttempt kept = kept_of(session);
    keep_whole(app, kept,
               session.reviewed ? *session.reviewed : review_kept(kept, session.scenario, session.criteria),
               host);
    session.kept_ticks = session.recording.ticks;
    session.journal_open = false;
    app.debrief.stop = stop_hint(trend_rows(app.logbook, session.recording.circumstances.student));
}

DebriefState debrief_of(const App& app) {
    const FlightSession& session = *app.flight;
    DebriefState debrief;
    for (const IndexRow* row : rows_of(app.logbook, session.recording.circumstances.student))
        if (!row->cut_off && row->id < session.id && row->row.lesson == session.recording.lesson.id)
            debrief.earlier_rows.push_back(row->row);
    debrief.earlier_runs = static_cast<int>(debrief.earlier_rows.size());
    return debrief;
}

void leave_attempt(App& app, Host& host) {
    if (!is_flown_here(app)) return;
    const FlightSession& session = *app.flight;
    if (session.recording.ticks > session.kept_ticks && session.recording.ticks >= least_kept_ticks)
        keep_attempt(app, host);
    else if (session.kept_ticks == 0) host.logbook().drop_journal(session.id);
}

}  // namespace slopewise
