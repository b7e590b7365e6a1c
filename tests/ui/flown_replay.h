// An approach that was flown and its replay, for the tests.
#pragma once

#include <string>
#include <string_view>

#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"
#include "ui/open_replay.h"

namespace slopewise::test {

// An approach from 1 NM flown by hands that do something of everything, until scoring ends; then its replay.
struct Flown {
    TestHost host;
    App app = make_app(shipped(), host);

    explicit Flown(double pull = 0.05) {
        apply(app, ChooseDistance{1}, host);
        apply(app, StartFlight{}, host);
        for (int i = 0; i < 120 * 200 && !app.flight->reviewed; ++i) {
            app.hands.at.stick = i > 600 && i < 900 ? pull : 0.0;
            app.hands.at.throttle += i > 1200 && i < 1260 ? 0.003 : 0.0;
            app.hands.at.trim += i > 1800 && i < 1860 ? 0.002 : 0.0;
            if (i == 2400) app.hands.at.flap = 1;
            tick_session(*app.flight, quantize(app.hands.at));
        }
        apply(app, OpenSummary{}, host);
    }

    ReplaySession& open() {
        apply(app, OpenReplay{}, host);
        return *app.replay;
    }
    void wish(DriveReplay::Wish wish, double amount = 0) { apply(app, DriveReplay{wish, amount}, host); }
    std::string text() const { return make_view(app).mirror.screen; }
};

inline const ReplayMark* find_mark(const ReplaySession& session, std::string_view words) {
    for (const ReplayMark& mark : session.marks)
        if (mark.name.find(words) != std::string::npos) return &mark;
    return nullptr;
}

}  // namespace slopewise::test
