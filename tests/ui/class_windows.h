// The two windows of a class without a browser, for the tests: each a page with its program.
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "tests/check.h"
#include "tests/ui/joined_channels.h"
#include "ui/app.h"
#include "ui/class_channel.h"
#include "ui/drive_class.h"
#include "ui/drive_class_link.h"
#include "ui/make_view.h"

namespace slopewise::test {

inline constexpr double frame_s = 1.0 / 60.0;

// A page with its program. Frames follow the program's own, without the drawing.
struct Page {
    explicit Page(Machine& machine, const std::string& pair = "", const std::string& kept = "")
        : host(machine, pair) {
        host.channel.kept = kept;
        app = make_app(shipped(), host);
    }
    void frame(const Actions& wishes = {}) {
        app.hands.last_wall_s = wall_s += frame_s;
        hear_other_window(app, wall_s, host);
        for (const Action& wish : wishes) apply(app, wish, host);
        if (app.room.open) advance_class(app, quantize(app.hands.at), wall_s);
        make_view(app, app.view);
        tell_class_window(app, wall_s, host);
    }
    std::string screen() const { return app.view.mirror.screen; }

    PageHost host;
    App app;
    double wall_s = 100;
};

inline void frames(int count, Page& a, Page& b) {
    for (int i = 0; i < count; ++i) {
        a.frame();
        b.frame();
    }
}

// An instructor's page with its class, and the window that it opened.
struct Room {
    Machine machine;
    Page instructor{machine};
    std::optional<Page> projector;

    Room() {
        instructor.frame({OpenClassRoom{}});
        instructor.frame({DoWithClassWindow{DoWithClassWindow::Wish::open}});
        REQUIRE(is_pair_name(instructor.host.channel.opened));
        open_projector();
    }
    void open_projector() {
        projector.emplace(machine, instructor.host.channel.opened);
        frames(2, instructor, *projector);
    }
    void both(int count = 1) { frames(count, instructor, *projector); }
    // Flown as if by a hand, so that there are controls to tell of.
    void fly(int count) {
        for (int i = 0; i < count; ++i) {
            instructor.app.hands.at.stick = 0.2 * std::sin(0.05 * i);
            instructor.app.hands.at.throttle = 0.4 + 0.2 * std::sin(0.02 * i);
            both();
        }
    }
};

inline bool same_flight(const App& a, const App& b) {
    return a.flight && b.flight && a.flight->attempt.tick == b.flight->attempt.tick &&
           state_hash(a.flight->attempt) == state_hash(b.flight->attempt);
}

inline ShowToClass show(ShowToClass::What what) { return {what}; }

}  // namespace slopewise::test
