// The class in a table, without a window: what opening files does, and what it leaves alone.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/units.h"
#include "tests/students/class_students.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/class_table_view.h"
#include "ui/format.h"
#include "ui/logbook_events.h"
#include "ui/logbook_views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Wish = DoWithClassTable::Wish;

const std::vector<ClassStudent>& some_students() {
    static const std::vector<ClassStudent> all{class_student(1, shipped()), class_student(2, shipped()),
                                               class_student(3, shipped())};
    return all;
}

App opened(TestHost& host) {
    App app = make_app(shipped(), host);
    take_logbook_events(app, host);
    apply(app, OpenClassTable{}, host);
    for (const ClassStudent& student : some_students())
        host.store.class_files.emplace_back(student.file, student.lines());
    return app;
}

void ask(App& app, TestHost& host, Wish wish, int which = 0) {
    apply(app, DoWithClassTable{wish, which}, host);
    for (int frame = 0; frame < 100; ++frame) take_logbook_events(app, host);
}

ClassTableView view_of(const App& app) {
    ClassTableView view;
    class_table_view(app, view);
    return view;
}

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("class table: the figures shown are the last points of each student's own progress sheet") {
    TestHost host;
    App app = opened(host);
    ask(app, host, Wish::add_files);
    const ClassTableView view = view_of(app);
    CHECK_FALSE(view.reading);
    CHECK(has(view.summary, "3 students, "));
    for (const ClassStudent& student : some_students()) {
        Logbook own;
        own.standing = Logbook::Standing::open;
        own.rows = student.rows;
        ++own.edition;
        for (const std::string lesson : {"last_half_mile", "own_approach"}) {
            ProgressView sheet;
            LogbookChoice choice;
            choice.lesson = lesson;
            progress_view(own, app.catalog, student.name, choice, sheet);
            const auto last = std::find_if(sheet.points.rbegin(), sheet.points.rend(),
                                           [](const TrendPoint& point) { return point.unaided; });
            if (last == sheet.points.rend()) continue;
            const auto row = std::ranges::find_if(view.rows, [&](const ClassTableView::Row& one) {
                return one.student == student.name && one.lesson == lesson_title(app.catalog, lesson);
            });
            REQUIRE(row != view.rows.end());
            CHECK(row->spread == "\u00b1" + number_words(last->median_scatter_deg, 2) + "\u00b0");
            CHECK(has(row->attempts, std::to_string(sheet.points.size())));
        }
    }
}

TEST_CASE("class table: nothing of the files comes into this device's logbook, and clearing forgets them") {
    TestHost host;
    App app = opened(host);
    ask(app, host, Wish::add_folder);
    CHECK(host.store.folder_asked);
    CHECK(!view_of(app).rows.empty());
    CHECK(host.store.attempts.empty());
    CHECK(host.store.rows.empty());
    CHECK(app.logbook.rows.empty());
    ask(app, host, Wish::clear);
    CHECK(view_of(app).rows.empty());
    CHECK(app.room.table.files.attempts.empty());
}

TEST_CASE("class table: a bad file is told by name, line and reason, and the others are in the table") {
    TestHost host;
    App app = opened(host);
    host.store.class_files.insert(host.store.class_files.begin(),
                                  {"letter.txt", {"Dear class,", "well done."}});
    ask(app, host, Wish::add_files);
    const ClassTableView view = view_of(app);
    CHECK(has(view.summary, "3 students, "));
    REQUIRE(view.news.size() == 1);
    CHECK(has(view.news[0], "Not read: letter.txt:1: is no attempt of Slopewise"));
    std::string text;
    class_table_text(view, text);
    CHECK(has(text, "letter.txt:1"));
    CHECK(has(text, "Heron 01"));
}

TEST_CASE("class table: a head pressed again turns the order, and the file is saved as it is shown") {
    TestHost host;
    App app = opened(host);
    ask(app, host, Wish::add_files);
    constexpr int spread = 4;
    ask(app, host, Wish::sort_by, spread);
    const ClassTableView rising = view_of(app);
    CHECK(rising.sorted_by == spread);
    CHECK_FALSE(rising.falling);
    ask(app, host, Wish::sort_by, spread);
    const ClassTableView falling = view_of(app);
    CHECK(falling.falling);
    CHECK(falling.rows.front().spread == rising.rows.back().spread);
    CHECK(falling.rows.front().spread != rising.rows.front().spread);
    ask(app, host, Wish::save);
    CHECK(has(host.file, "median_scatter_deg"));
    const std::string first = falling.rows.front().student;
    const std::size_t header = host.file.find("\nstudent,");
    CHECK(host.file.find("\n" + first, header) == host.file.find('\n', header + 1));
}

TEST_CASE("class table: handout and lesson plan are of the aircraft chosen and of the school") {
    TestHost host;
    App app = opened(host);
    app.settings.school.name = "Marsh & Co";
    ask(app, host, Wish::hand_out);
    CHECK(has(host.file, "Final approach: the numbers"));
    CHECK(has(host.file, "Marsh &amp; Co"));
    CHECK(has(host.file, find_aircraft(app.catalog, app.settings.where_and_when.aircraft_id)->name));
    ask(app, host, Wish::lesson_plan);
    CHECK(has(host.file, "Lesson plan"));
    CHECK(has(view_of(app).news.front(), "one page of A4 or Letter"));
}

TEST_CASE("class table: a column that there is not, and saving an empty table, do nothing") {
    TestHost host;
    App app = opened(host);
    ask(app, host, Wish::sort_by, 99);
    ask(app, host, Wish::sort_by, -1);
    CHECK(app.room.table.sorted_by == ClassColumn::student);
    ask(app, host, Wish::save);
    CHECK(host.file.empty());
}
