#include "ui/lead_class.h"

#include <algorithm>
#include <utility>

#include "data/recording_file.h"
#include "ui/app.h"
#include "ui/class_kept.h"
#include "ui/class_talk.h"
#include "ui/drive_class.h"
#include "ui/drive_class_link.h"
#include "ui/recorded_flight.h"
#include "ui/room_shown_text.h"

namespace slopewise {
namespace {

using Kind = LinkMessage::Kind;

constexpr double speaks_every_s = 1.0, asks_lobby_every_s = 1.0, looks_at_kept_every_s = 0.25;

// A run is asked for so often, so far apart. Less than it takes to be held for gone: a second copy of a page
// cannot take the run from the first by waiting.
constexpr int most_takes = 5;
constexpr double takes_every_s = 0.5;

constexpr std::size_t most_offers = 8;

LeadingLink& leading(App& app) { return app.room.link.leading; }

void lead_pair(App& app, const std::string& pair, Host& host) {
    join_pair(app, pair, host);
    host.class_channel().keep_pair(pair);
    LeadingLink& link = leading(app);
    link.heard = link.told = link.led_by_other = false;
}

// ---- heard ----

void take_over(App& app, const LinkMessage& state, Host& host) {
    LeadingLink& link = leading(app);
    link.takes_left = 0;
    link.offers.clear();
    if (!app.room.open) open_class_room(app, host);
    if (!app.room.open) return;
    std::optional<Following> following;
    link.trouble = put_recorded_flight(app, state.recording, following);
    if (!link.trouble.empty()) return;
    fly_recorded(app, *following, most_recording_ticks);
    set_sharing(*app.flight, state.hands);
    app.flight->to_speak = CallOut::none;
    if (app.flight->attempt.tick > 0) app.hands.at = positions_of(app.flight->attempt.controls);
    Result<RoomShown> room = read_room_shown(state.room, "The class window");
    if (room.ok()) app.room.shown = std::move(*room.value);
    take_kept_room(app, state.kept);
    link.told = false;
}

void take_offer(LeadingLink& link, const LinkMessage& message, double wall_s) {
    if (message.pair.empty()) return;
    const auto same = std::ranges::find(link.offers, message.pair, &LeadingLink::Offer::pair);
    if (same != link.offers.end()) *same = {message.pair, message.words, wall_s};
    else if (link.offers.size() < most_offers) link.offers.push_back({message.pair, message.words, wall_s});
}

// ---- told ----

void keep_settings_told(App& app, LinkMessage& message) {
    LeadingLink& link = leading(app);
    link.edition = app.edition;
    std::string settings = settings_text(app.settings);
    if (link.told && settings == link.settings) return;
    message.settings = link.settings = std::move(settings);
}

InkPoint place_of(InkPoint at) {
    const auto in = [](float share) {
        return share >= RoomLimits::nearest && share <= RoomLimits::farthest ? share : 0.0f;
    };
    return {in(at.x), in(at.y)};
}

void tell_everything(App& app, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    const FlightSession& session = *app.flight;
    link.told = false;
    LinkMessage run = message_of(Kind::run);
    run.run = link.run = app.room.flights;
    run.frozen = link.frozen = session.paused;
    run.recording = recording_text(session.recording);
    run.hands = link.hands = sharing_text(session);
    link.room = app.room.shown;
    run.room = room_shown_text(link.room);
    run.kept = link.kept = kept_room_text(app);
    keep_settings_told(app, run);
    link.rows = journal_mark(session.recording);
    link.ticks = session.recording.ticks;
    link.told = true;
    link.told_s = link.kept_s = wall_s;
    say(app, std::move(run), host);
}

// The pointer moves oftener than anything else, and goes alone.
bool add_room(App& app, LinkMessage& frame) {
    LeadingLink& link = leading(app);
    const RoomShown& shown = app.room.shown;
    const bool moved = !(shown.pointer == link.room.pointer) || shown.pointing != link.room.pointing;
    link.room.pointer = shown.pointer;
    link.room.pointing = shown.pointing;
    if (!(shown == link.room)) {
        link.room = shown;
        frame.room = room_shown_text(shown);
    } else if (moved) {
        frame.pointer = place_of(shown.pointer);
        frame.pointing = shown.pointing;
    } else {
        return false;
    }
    return true;
}

bool add_kept(App& app, LinkMessage& frame, double wall_s, bool room_changed) {
    LeadingLink& link = leading(app);
    if (!room_changed && wall_s - link.kept_s < looks_at_kept_every_s) return false;
    link.kept_s = wall_s;
    std::string kept = kept_room_text(app);
    if (kept == link.kept) return false;
    frame.kept = link.kept = std::move(kept);
    return true;
}

void tell_changes(App& app, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    const FlightSession& session = *app.flight;
    LinkMessage frame = message_of(Kind::frame);
    frame.run = link.run;
    frame.frozen = session.paused;
    bool changed = std::exchange(link.frozen, session.paused) != session.paused;
    if (session.recording.ticks != link.ticks) {
        journal_piece(session.recording, link.rows, frame.rows);
        frame.since = static_cast<int>(link.ticks);
        link.ticks = session.recording.ticks;
        changed = true;
    }
    if (std::string hands = sharing_text(session); hands != link.hands) {
        frame.hands = link.hands = std::move(hands);
        changed = true;
    }
    const bool room_changed = add_room(app, frame);
    changed |= room_changed;
    changed |= add_kept(app, frame, wall_s, room_changed);
    if (app.edition != link.edition) keep_settings_told(app, frame);
    changed |= !frame.settings.empty();
    if (!changed && wall_s - link.told_s < speaks_every_s) return;
    link.told_s = wall_s;
    say(app, std::move(frame), host);
}

// ---- asked ----

// Nobody waits for it any more who has gone on to something else.
bool still_wants_run(const App& app) {
    return app.room.open || app.screen == Screen::welcome || app.screen == Screen::choices;
}

void ask_for_run(App& app, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    if (link.takes_left == 0 || wall_s - link.took_s < takes_every_s) return;
    if (!still_wants_run(app)) {
        link.takes_left = 0;
        return;
    }
    link.took_s = wall_s;
    if (--link.takes_left == 0) {
        if (app.room.open) link.trouble = "The class window does not answer.";
        return;
    }
    say(app, message_of(Kind::take), host);
}

void ask_lobby(App& app, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    std::erase_if(link.offers,
                  [&](const LeadingLink::Offer& offer) { return wall_s - offer.heard_s > silent_after_s; });
    if (!app.room.open || is_followed(app, wall_s) || wall_s - link.asked_s < asks_lobby_every_s) return;
    link.asked_s = wall_s;
    say_in_lobby(app, message_of(Kind::who), host);
}

}  // namespace

void hear_class_window(App& app, const LinkMessage& message, bool lobby, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    const std::string& me = app.room.link.me;
    if (lobby) {
        if (message.kind == Kind::orphan && message.to == me) take_offer(link, message, wall_s);
        return;
    }
    switch (message.kind) {
    case Kind::hello:
    case Kind::alive:
        link.heard = true;
        link.heard_s = wall_s;
        link.led_by_other = !message.to.empty() && message.to != me;
        if (message.kind == Kind::hello) link.told = false;
        break;
    case Kind::left: link.heard = link.told = false; break;
    case Kind::wish:
        if (const std::optional<ClassWish> wish = passed_wish(message.words);
            wish && app.screen == Screen::class_room)
            apply(app, Action{*wish}, host);
        break;
    case Kind::state:
        if (message.to != me || link.takes_left == 0) break;
        link.heard = true;
        link.heard_s = wall_s;
        take_over(app, message, host);
        break;
    case Kind::take:
        if (link.takes_left == 0) {
            LinkMessage mine = message_of(Kind::mine);
            mine.to = message.from;
            say(app, std::move(mine), host);
        }
        break;
    case Kind::mine:
        if (message.to != me || link.takes_left == 0) break;
        link.takes_left = 0;
        app.room.link.pair.clear();
        host.class_channel().join("");
        host.class_channel().keep_pair("");
        break;
    default: break;
    }
}

void lead_class_window(App& app, double wall_s, Host& host) {
    LeadingLink& link = leading(app);
    if (app.room.open && app.room.link.pair.empty()) lead_pair(app, drawn_name(host), host);
    ask_for_run(app, wall_s, host);
    ask_lobby(app, wall_s, host);
    if (std::exchange(link.taught, app.room.open) && !app.room.open) say(app, message_of(Kind::ended), host);
    if (!app.room.open || link.takes_left > 0 || !is_followed(app, wall_s)) {
        link.told = false;
        return;
    }
    if (!link.told || link.run != app.room.flights || app.flight->recording.ticks < link.ticks)
        tell_everything(app, wall_s, host);
    else tell_changes(app, wall_s, host);
}

bool is_followed(const App& app, double wall_s) {
    const LeadingLink& link = app.room.link.leading;
    return link.heard && !link.led_by_other && wall_s - link.heard_s <= silent_after_s;
}

void open_class_window(App& app, Host& host) {
    LeadingLink& link = leading(app);
    if (!app.room.link.there) {
        link.trouble = "This program has one window. Two need a browser; here Z shows the picture alone.";
        return;
    }
    if (app.room.link.pair.empty() || link.led_by_other) lead_pair(app, drawn_name(host), host);
    link.trouble.clear();
    if (host.class_channel().open_window(app.room.link.pair)) return;
    link.trouble =
        "The browser did not open a window. Allow it for this page, or open this address yourself: " +
        host.page_address() + "#class=" + app.room.link.pair;
}

void close_class_window(App& app, Host& host) { say(app, message_of(Kind::close), host); }

void go_on_with_run(App& app, Host& host) {
    LeadingLink& link = leading(app);
    if (link.offers.empty()) return;
    const std::string pair = link.offers.front().pair;
    link.offers.clear();
    go_on_after_reload(app, pair, host);
}

void go_on_after_reload(App& app, const std::string& pair, Host& host) {
    lead_pair(app, pair, host);
    leading(app).takes_left = most_takes;
    leading(app).took_s = -takes_every_s;  // at once
}

}  // namespace slopewise
