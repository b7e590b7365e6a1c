#include "ui/follow_class.h"

#include <algorithm>
#include <limits>
#include <variant>

#include "base/units.h"
#include "data/recording_file.h"
#include "ui/app.h"
#include "ui/class_talk.h"
#include "ui/drive_class_link.h"
#include "ui/format.h"
#include "ui/recorded_flight.h"
#include "ui/room_shown_text.h"
#include "ui/school_desk.h"

namespace slopewise {
namespace {

using Kind = LinkMessage::Kind;

// Frames of two windows do not fall together: a few ticks are held back, so that the picture moves evenly.
constexpr std::int64_t held_back_ticks = 4;  // 33 ms; within 100 ms of a change the class is to see it

constexpr double speaks_every_s = 1.0, asks_every_s = 0.5;

// A flight that cannot be made the same is not asked for in every frame.
constexpr double puts_right_every_s = 10.0;

bool is_led(const FollowingLink& link, double wall_s) {
    return !link.leader_left && wall_s - link.heard_s <= silent_after_s;
}

// As the instructor has them, so that both pictures are alike: never kept on this device.
void take_settings(App& app, std::string_view text) {
    if (text.empty()) return;
    const School before = app.settings.school;
    app.settings = parse_settings(text).settings;
    if (!put_school_aircraft(app, before).empty()) app.settings.school.aircraft.reset();
    ++app.edition;
}

void take_room(App& app, const LinkMessage& message) {
    RoomShown& shown = app.room.shown;
    if (!message.room.empty()) {
        Result<RoomShown> read = read_room_shown(message.room, "The other window");
        if (read.ok()) shown = std::move(*read.value);
        else app.notice = to_text(read.problems.front());
    }
    if (message.pointer) {
        shown.pointer = *message.pointer;
        shown.pointing = message.pointing;
    }
}

void take_run(App& app, const LinkMessage& message) {
    FollowingLink& link = app.room.link.following;
    link.run = message.run;
    link.frozen = message.frozen;
    link.lost = false;
    link.kept = message.kept;
    take_settings(app, message.settings);
    link.trouble = put_recorded_flight(app, message.recording, link.flight);
    if (!link.trouble.empty()) {
        link.flight.reset();
        app.flight.reset();
        return;
    }
    fly_recorded(app, *link.flight, most_recording_ticks);
    set_sharing(*app.flight, message.hands);
    take_room(app, message);
}

void take_frame(App& app, const LinkMessage& message) {
    FollowingLink& link = app.room.link.following;
    if (message.run != link.run || (!link.flight && link.trouble.empty())) link.lost = true;
    if (link.lost || !link.flight) return;
    take_settings(app, message.settings);
    if (!message.rows.empty() &&
        (message.since != link.flight->led.ticks || !learn(*link.flight, message.rows)))
        link.lost = true;
    if (!message.hands.empty()) set_sharing(*app.flight, message.hands);
    if (!message.kept.empty()) link.kept = message.kept;
    link.frozen = message.frozen;
    take_room(app, message);
}

void forget_run(App& app) {
    app.room.link.following.flight.reset();
    app.room.link.following.trouble.clear();
    app.room.link.following.lost = false;
    app.flight.reset();
}

void hand_over(App& app, const std::string& to, Host& host) {
    FollowingLink& link = app.room.link.following;
    if (link.flight) fly_recorded(app, *link.flight, most_recording_ticks);  // what was held back too
    LinkMessage state = message_of(Kind::state);
    state.to = to;
    state.run = link.run;
    state.recording = recording_text(app.flight->recording);
    state.hands = sharing_text(*app.flight);
    state.room = room_shown_text(app.room.shown);
    state.kept = link.kept;
    say(app, std::move(state), host);
}

std::string run_words(const FlightSession& session) {
    const TrackPoint now = observe(session.scenario, session.attempt);
    return number_words(nm_from_m(now.distance_m), 1) + (session.paused ? " NM, frozen" : " NM, running");
}

void answer_lobby(App& app, const LinkMessage& message, double wall_s, Host& host) {
    if (message.kind != Kind::who || !app.flight || is_led(app.room.link.following, wall_s)) return;
    LinkMessage orphan = message_of(Kind::orphan);
    orphan.to = message.from;
    orphan.pair = app.room.link.pair;
    orphan.words = run_words(*app.flight);
    say_in_lobby(app, std::move(orphan), host);
}

void fly_on(App& app, double wall_s) {
    FollowingLink& link = app.room.link.following;
    const int due = link.clock.due(wall_s, !link.frozen);
    if (!link.flight || !app.flight) return;
    FlightSession& session = *app.flight;
    if (!link.frozen) watch(session, app.settings.display, false);
    const std::int64_t behind = ticks_behind(*link.flight, session.attempt);
    const std::int64_t evenly = std::max(std::min<std::int64_t>(due, behind), behind - held_back_ticks);
    fly_recorded(app, *link.flight, link.frozen ? behind : evenly);
    session.paused = link.frozen;
    session.to_speak = CallOut::none;  // the instructor's page speaks
    const std::int64_t differs_at = link.flight->first_diverged_tick;
    if (differs_at < 0 || wall_s - link.put_right_s < puts_right_every_s) return;
    app.notice = "This flight differed from the instructor's after " + std::to_string(differs_at / 120) +
                 " s and was asked for anew.";
    link.put_right_s = wall_s;
    link.lost = true;
}

}  // namespace

void hear_instructor(App& app, const LinkMessage& message, bool lobby, double wall_s, Host& host) {
    if (lobby) return answer_lobby(app, message, wall_s, host);
    FollowingLink& link = app.room.link.following;
    const bool leads = message.from == link.leader;
    const bool of_instructor = message.kind == Kind::run || message.kind == Kind::frame ||
                               message.kind == Kind::ended || message.kind == Kind::close ||
                               message.kind == Kind::take;
    if (message.kind == Kind::left && leads) {
        link.leader_left = link.frozen = true;
        return;
    }
    if (!of_instructor || (!leads && is_led(link, wall_s))) return;
    link.leader = message.from;
    link.leader_left = false;
    link.heard_s = wall_s;
    switch (message.kind) {
    case Kind::run: return take_run(app, message);
    case Kind::frame: return take_frame(app, message);
    case Kind::ended: return forget_run(app);
    case Kind::close: return host.class_channel().close_this_window();
    default:
        if (app.flight) hand_over(app, message.from, host);
    }
}

void miss_something(App& app) { app.room.link.following.lost = true; }

void follow_instructor(App& app, double wall_s, Host& host) {
    FollowingLink& link = app.room.link.following;
    fly_on(app, wall_s);
    const bool asks = link.lost && wall_s - link.asked_s >= asks_every_s;
    if (!asks && wall_s - link.spoke_s < speaks_every_s) return;
    LinkMessage message = message_of(asks ? Kind::hello : Kind::alive);
    if (is_led(link, wall_s)) message.to = link.leader;
    say(app, std::move(message), host);
    link.spoke_s = wall_s;
    if (asks) link.asked_s = wall_s;
}

void pass_to_instructor(const App& app, const Action& action, Host& host) {
    const ClassWish* wish = std::get_if<ClassWish>(&action);
    if (wish == nullptr) return;
    LinkMessage message = message_of(Kind::wish);
    message.words = passed_words(*wish);
    if (!message.words.empty()) say(app, std::move(message), host);
}

}  // namespace slopewise
