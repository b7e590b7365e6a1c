// Somebody at their own machine, who writes lessons and gets some from others.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <utility>

#include "share/lesson_link.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/lesson_editor_desk.h"

namespace slopewise::test {

inline bool holds(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

// Somebody at their own machine.
struct Desktop {
    using Wish = DoWithLesson::Wish;

    TestHost host;
    App app = make_app(shipped(), host);

    Desktop() { app.settings.up_key_pushes = true; }
    Desktop(TestHost kept, App begun) : host(std::move(kept)), app(std::move(begun)) {}

    void ask(Wish wish, const std::string& id = "") { apply(app, DoWithLesson{wish, id}, host); }
    LessonEditorView sheet() const { return lesson_editor_view(app.lessons, app.catalog); }
    OwnLessonsView list() const {
        OwnLessonsView view;
        own_lessons_view(app.lessons, app.catalog, view);
        return view;
    }

    const LessonEditorView::Field* field(const std::string& label) const {
        static LessonEditorView view;
        view = sheet();
        for (const LessonEditorView::Group& group : view.groups)
            for (const LessonEditorView::Field& each : group.fields)
                if (each.label == label || (each.label.empty() && group.title == label)) return &each;
        return nullptr;
    }
    void set(const std::string& label, double amount, const std::string& words = "") {
        const LessonEditorView::Field* found = field(label);
        REQUIRE_MESSAGE(found != nullptr, label);
        apply(app, SetLessonField{found->number, amount, words}, host);
    }

    void open_link(const std::string& link) {
        host.from_outside.push_back({HostText::Kind::link, "", link});
        take_in_lesson_texts(app, host);
    }
    void open_file(const std::string& name, const std::string& text) {
        host.from_outside.push_back({HostText::Kind::file, name, text});
        take_in_lesson_texts(app, host);
    }

    // A gusty final in a fading wind, kept.
    std::string keep_gusty() {
        ask(Wish::write_new);
        set("Title", 0, "Gusty final");
        set("Aim, in one sentence", 0, "Keep the speed in the gust.");
        set("To the aim point", 1.5);
        set("Off the path, + high", -0.4);
        set("Wind", 2);  // two heights
        set("Headwind there", 7);
        set("Rough as in wind of", 15);
        set("Variant of the air", 42);
        set("Gust, + headwind", -10);
        set("at", 0.75);
        ask(Wish::keep);
        REQUIRE(app.lessons.own.size() == 1);
        return app.lessons.own.front().id;
    }
};

// Flies hands off for so long, with a wave in the stick, and says where that led.
inline std::uint64_t flown_hash(App& app) {
    for (int i = 0; i < 120 * 30; ++i) {
        app.hands.at.stick = 0.1 * ((i / 90) % 3 - 1);
        tick_session(*app.flight, quantize(app.hands.at));
    }
    return state_hash(app.flight->attempt);
}

}  // namespace slopewise::test
