#include "ui/class_views.h"

#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "base/units.h"
#include "ui/app.h"
#include "ui/ask_view.h"
#include "ui/boards_view.h"
#include "ui/drive_class.h"
#include "ui/drive_class_link.h"
#include "ui/format.h"
#include "ui/keys_view.h"
#include "ui/station_view.h"
#include "ui/views.h"

namespace slopewise {
namespace {

Display class_display(const App& app) {
    const RoomShown& shown = app.room.shown;
    Display display = app.settings.display;
    display.projector_text |= app.screen == Screen::class_window;  // the back row reads it
    display.eyes_outside = false;
    display.side_profile = shown.side_profile;
    display.covered = shown.covered;
    display.failed = {};
    return display;
}

std::string truth_words(const FlightSession& session) {
    const TrackPoint now = observe(session.scenario, session.attempt);
    const double target_mps = session.scenario.lesson.target_cas_mps;
    const double off_deg = deg_from_rad(now.path_error_rad), off_kt = kt_from_mps(now.cas_mps - target_mps);
    const std::string path = std::abs(off_deg) < 0.05 ? "On the path"
                                                      : number_words(std::abs(off_deg), 1) + "\u00b0 " +
                                                            (off_deg > 0 ? "high" : "low");
    const std::string speed = std::abs(off_kt) < 0.5
                                  ? "on speed"
                                  : number_words(std::abs(off_kt)) + " kt " + (off_kt > 0 ? "fast" : "slow");
    return path + ", " + speed + ", sink " + number_words(fpm_from_mps(now.sink_mps)) + " ft/min, lights " +
           light_picture(session.scenario, now.white_fraction).words;
}

std::string state_words(const FlightSession& session) {
    const TrackPoint now = observe(session.scenario, session.attempt);
    const std::string where = number_words(nm_from_m(now.distance_m), 1) + " NM, " + "wheels at " +
                              number_words(ft_from_m(now.wheel_height_m)) + " ft";
    if (session.attempt.end == End::went_around)
        return (session.paused ? "Went around, frozen. " : "Going around. ") + where;
    if (session.attempt.end != End::none && session.paused) return "The approach is over. " + where;
    return (session.paused ? "Frozen at " : "Running: ") + where;
}

// Of the panel that hides and shows: one line for what is seen, one for what is not.
void shown_text(const RoomShown& shown, std::string& text) {
    const std::array<std::pair<std::string_view, bool>, 5> parts{{{"slope lights", shown.lights},
                                                                  {"dials", shown.dials},
                                                                  {"path from the side", shown.side_profile},
                                                                  {"calm air beside it", shown.ghost},
                                                                  {"words over the picture", shown.names}}};
    for (const bool on : {true, false}) {
        std::string names;
        const auto add = [&](std::string_view name) {
            names += (names.empty() ? "" : ", ") + std::string(name);
        };
        for (const auto& [name, is_on] : parts)
            if (is_on == on) add(name);
        for (const InstrumentName& instrument : instrument_names)
            if (shown.covered.*instrument.which != on) add(instrument.name);
        if (!names.empty()) text += (on ? "Shown: " : "Hidden: ") + names + ".\n";
    }
}

}  // namespace

void class_picture_view(const App& app, View& view) {
    view.class_picture.shown = app.room.shown;
    view.display = class_display(app);
    if (!app.flight) return;
    if (view.edition != app.edition) flight_words(*app.flight, app.settings, view.flight);
    view.edition = app.edition;
    flight_view(*app.flight, view.display, false, app.clock.fraction(), view.flight);
    tell_what_is_held(app, view.flight);
    if (!app.room.shown.lights) {
        view.flight.scene.lamp_count = 0;
        view.flight.lights = {{}, false, "not shown"};
    }
    calm_beside_view(app, view.flight.side_profile);
    boards_view(app, view.class_picture);
}

void class_room_view(const App& app, View& view) {
    ClassRoomView& room = view.class_room;
    room.panel = app.room.panel;
    room.alone = app.room.alone;
    room.paused = app.flight->paused;
    room.ended = app.flight->attempt.end != End::none;
    room.state = state_words(*app.flight);
    ask_view(app, view.ask);
    station_view(app, view.station);
    view.station.calm = view.flight.side_profile.calm_words;
    class_link_view(app, view);
    room.truth = truth_words(*app.flight);
}

void class_picture_text(const View& view, std::string& text) {
    const RoomShown& shown = view.class_picture.shown;
    if (shown.black) text += "Black.\n";
    if (!view.class_picture.waiting.empty()) text += view.class_picture.waiting + "\n";
    if (shown.black) return;
    if (!view.flight.side_profile.calm_words.empty()) text += view.flight.side_profile.calm_words + ".\n";
    boards_text(view.class_picture, text);
    ask_shown_text(shown.ask, text);
}

void class_room_text(const View& view, std::string& text) {
    text += "Teach a class.\n" + view.class_room.state + "\n";
    class_link_text(view, text);
    class_picture_text(view, text);
    if (view.class_room.panel == ClassRoomView::Panel::ask) ask_text(view, text);
    if (view.class_room.panel == ClassRoomView::Panel::station) station_text(view.station, text);
    if (view.class_room.panel == ClassRoomView::Panel::show) shown_text(view.class_picture.shown, text);
}

}  // namespace slopewise
