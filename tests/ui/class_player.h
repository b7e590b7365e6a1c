// The program without a window, before a class.
#pragma once

#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/drive_class.h"
#include "ui/make_view.h"

namespace slopewise::test {

struct ClassPlayer {
    TestHost host;
    App app = make_app(shipped(), host);
    double wall_s = 100.0;

    ClassPlayer() {
        app.settings.up_key_pushes = true;
        wish(OpenClassRoom{});
    }

    template <class Wish>
    void wish(Wish wish) {
        apply(app, wish, host);
    }

    // Lets time pass with the hands as they are.
    void pass(double seconds) {
        constexpr double frame_s = 1.0 / 60.0;
        app.clock.due(wall_s, false);
        for (double left_s = seconds; left_s > 1e-9; left_s -= frame_s)
            advance_class(app, quantize(app.hands.at), wall_s += std::min(left_s, frame_s));
    }

    std::string text() const { return make_view(app).mirror.screen; }
    const RoomShown& shown() const { return app.room.shown; }
};

}  // namespace slopewise::test
