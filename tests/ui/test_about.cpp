// The sheet about the program itself: what is kept and where, and that nothing is erased by one press.
#include <doctest/doctest.h>

#include <string>

#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Wish = DoWithProgram::Wish;

std::string about_words(const App& app) { return make_view(app).mirror.screen; }

bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("about: it tells the version, the cautions, where things are kept, and what it is made of") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenAbout{}, host);
    CHECK(app.screen == Screen::about);
    const std::string words = about_words(app);
    CHECK(holds(words, "Version " + make_view(app).version));
    CHECK_FALSE(make_view(app).version.empty());
    CHECK(holds(words, "Not an approved training device"));
    CHECK(holds(words, "Not for use in flight"));
    CHECK(holds(words, "Kept in the tests' memory"));
    CHECK(holds(words, "Logbook: each approach"));
    for (const char* part : {"Dear ImGui", "SDL2", "JSON for Modern C++", "B612", "musl", "Emscripten"})
        CHECK_MESSAGE(holds(words, part), part);
    apply(app, CloseAbout{}, host);
    CHECK(app.screen == Screen::welcome);
}

TEST_CASE("about: what is counted is what is kept") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenAbout{}, host);
    CHECK(holds(about_words(app), "student's name or code: no attempts"));
    app.logbook.rows.resize(2);
    app.lessons.own.resize(1);
    CHECK(holds(about_words(app), "student's name or code: 2 attempts"));
    CHECK(holds(about_words(app), "of one being written: 1 lesson\n"));
    app.logbook.unkept.emplace("a", "text");
    CHECK(holds(about_words(app), "2 attempts, 1 of them only until this window closes"));
    app.logbook.standing = Logbook::Standing::refused;
    app.logbook.trouble = "This browser keeps nothing.";
    CHECK(holds(about_words(app), "not kept: This browser keeps nothing."));
}

TEST_CASE("about: all that is kept goes only when it is asked for twice") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenAbout{}, host);
    apply(app, DoWithProgram{Wish::erase_all}, host);
    CHECK_FALSE(host.erased);
    CHECK(holds(about_words(app), "Erase all of it for good?"));
    apply(app, DoWithProgram{Wish::keep_all}, host);
    apply(app, DoWithProgram{Wish::erase_all}, host);
    CHECK_FALSE(host.erased);
    apply(app, CloseAbout{}, host);  // leaving the sheet is no answer
    apply(app, OpenAbout{}, host);
    apply(app, DoWithProgram{Wish::erase_all}, host);
    CHECK_FALSE(host.erased);
    apply(app, DoWithProgram{Wish::erase_all}, host);
    CHECK(host.erased);
}
