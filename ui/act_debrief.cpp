// What is asked for after a flight: the estimate, the sheet, its files, the replay.
#include "ui/act.h"

#include "review/track_csv.h"
#include "ui/estimate_view.h"
#include "ui/keep_attempts.h"
#include "ui/open_replay.h"
#include "ui/take_away.h"

namespace slopewise {

void act(App& app, const AnswerEstimate& wish, Host& host) {
    if (app.screen == Screen::estimate && app.hands.last_wall_s >= app.debrief.questions_from_s &&
        answer_estimate(wish.question, wish.answer, *app.flight, app.debrief)) {
        app.screen = Screen::summary;
        keep_attempt(app, host);
    }
}
void act(App& app, const SkipEstimate&, Host&) { app.screen = Screen::summary; }
void act(App& app, const OpenSummary&, Host&) {
    if (!app.flight || !app.flight->reviewed || app.drills.flown) return;
    review_session(*app.flight);
    app.screen = Screen::summary;
}
void act(App& app, const ShowDetail&, Host&) { app.debrief.detail_asked = true; }
void act(App& app, const OpenTakeAway&, Host&) { app.screen = Screen::take_away; }
void act(App& app, const CloseTakeAway&, Host&) { app.screen = Screen::summary; }
void act(App& app, const TakeAway& wish, Host& host) {
    const File file = file_to_take(*app.flight, wish.index);
    host.offer_file(file.name, file.media_type, file.text);
    app.debrief.handed_over = file.name;
}
void act(App& app, const SaveTrack&, Host& host) {
    if (app.flight) host.offer_file("slopewise-track.csv", "text/csv", track_csv(app.flight->track));
}
void act(App& app, const OpenReplay&, Host&) {
    if (app.flight) open_replay(app, app.flight->recording, &app.flight->track);
}
void act(App& app, const CloseReplay&, Host&) { close_replay(app); }
void act(App& app, const DriveReplay& wish, Host&) {
    if (app.screen == Screen::drill && app.drills.cards && app.drills.cards->replay)
        drive(*app.drills.cards->replay, wish);
    else if (app.replay) drive(*app.replay, wish);
}

}  // namespace slopewise
