// A class that is asked through the program, for the tests: put, frozen, counted, flown on.
#pragma once

#include <string>
#include <string_view>

#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/ask_view.h"
#include "ui/drive_asking.h"
#include "ui/drive_class.h"

namespace slopewise::test {

struct Classroom {
    TestHost host;
    App app = make_app(shipped(), host);
    double wall_s = 100.0;

    Classroom() {
        apply(app, OpenClassRoom{}, host);
        app.clock.due(wall_s, false);
    }
    AskDesk& desk() { return app.room.ask; }
    const AskShown& shown() const { return app.room.shown.ask; }
    void wish(DoWithQuestions::Wish wish, int which = 0, const std::string& words = "") {
        apply(app, DoWithQuestions{wish, which, words}, host);
    }
    void choose(const std::string& id) { wish(DoWithQuestions::Wish::choose_set, 0, id); }
    void next() { wish(DoWithQuestions::Wish::next); }
    // As frames of a thirtieth of a second.
    void wait(double seconds) {
        for (double left_s = seconds; left_s > 0.0; left_s -= 1.0 / 30.0) {
            wall_s += 1.0 / 30.0;
            advance_class(app, quantize(app.hands.at), wall_s);
        }
    }
    // Asks the next one and waits until it is frozen.
    void ask() {
        next();
        wait(chosen_question(app)->run_s + 1.0);
        REQUIRE(app.flight->paused);
    }
    void count(int choice, int hands) {
        for (int i = 0; i < hands; ++i) wish(DoWithQuestions::Wish::count_hand, choice);
    }
    AskView panel() const {
        AskView view;
        ask_view(app, view);
        return view;
    }
    std::string news() { return desk().news.empty() ? "" : desk().news.back(); }
};

inline std::string class_text(const AskShown& shown) {
    std::string text;
    ask_shown_text(shown, text);
    return text;
}

inline bool has(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

}  // namespace slopewise::test
