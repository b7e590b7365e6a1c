#include "ui/class_table_desk.h"

#include "handout/handout.h"
#include "handout/lesson_plan.h"
#include "ui/app.h"
#include "ui/drive_drills.h"

namespace slopewise {
namespace {

void tell(ClassTableDesk& desk, std::string words) {
    desk.news = std::move(words);
    ++desk.edition;
}

void make_rows(ClassTableDesk& desk, const Catalog& catalog) {
    desk.rows = class_rows(desk.files, catalog);
    if (desk.sorted_by != ClassColumn::student || desk.falling)
        sort_class_rows(desk.rows, desk.sorted_by, desk.falling);
    ++desk.edition;
}

void choose(ClassTableDesk& desk, bool folder, Host& host) {
    if (desk.reading) return;
    tell(desk, "");
    host.logbook().choose_files(folder);
}

void sort_by(ClassTableDesk& desk, int column, const Catalog& catalog) {
    if (column < 0 || column >= static_cast<int>(class_column_names.size())) return;
    const auto by = static_cast<ClassColumn>(column);
    desk.falling = by == desk.sorted_by && !desk.falling;
    desk.sorted_by = by;
    make_rows(desk, catalog);
}

void hand_over(ClassTableDesk& desk, const char* name, const char* media_type, const std::string& text,
               Host& host) {
    host.offer_file(name, media_type, text);
    tell(desk, std::string("Handed over: ") + name + ".");
}

void print(App& app, const char* name, std::string (*page)(const Scenario&, const School&), Host& host) {
    ClassTableDesk& desk = app.room.table;
    const Scenario base = drill_base(app);
    if (!base.start_trim.flyable)
        return tell(desk,
                    "This aeroplane cannot be flown here. Choose another under \"Where and when\", then ask "
                    "again.");
    host.offer_file(name, "text/html", page(base, app.settings.school));
    tell(desk, std::string("Handed over: ") + name + ". Open it and print it: one page of A4 or Letter.");
}

void end_file(App& app, const std::string& trouble) {
    ClassTableDesk& desk = app.room.table;
    if (!desk.reader) return;
    end_class_file(*desk.reader, trouble, desk.files);
    desk.reader.reset();
    make_rows(desk, app.catalog);
}

}  // namespace

void do_with_class_table(App& app, const DoWithClassTable& wish, Host& host) {
    using Wish = DoWithClassTable::Wish;
    ClassTableDesk& desk = app.room.table;
    const int edition = desk.edition;
    switch (wish.wish) {
    case Wish::add_files: return choose(desk, false, host);
    case Wish::add_folder: return choose(desk, true, host);
    case Wish::sort_by: return sort_by(desk, wish.which, app.catalog);
    case Wish::clear:
        if (desk.reading) return;
        desk = {};
        desk.edition = edition + 1;
        return;
    case Wish::save:
        if (!desk.rows.empty())
            hand_over(desk, "slopewise-class.csv", "text/csv", class_csv(desk.rows), host);
        return;
    case Wish::hand_out: return print(app, "slopewise-handout.html", handout_html, host);
    case Wish::lesson_plan: return print(app, "slopewise-lesson-plan.html", lesson_plan_html, host);
    }
}

bool take_class_table_event(App& app, const StoreEvent& event, Host& host) {
    using Kind = StoreEvent::Kind;
    ClassTableDesk& desk = app.room.table;
    switch (event.kind) {
    case Kind::file_began:
        desk.reading = true;
        desk.reader = begin_class_file(event.words);
        ++desk.edition;
        return true;
    case Kind::file_lines:
        if (!desk.reader) return true;
        for (const std::string& line : event.texts)
            take_class_line(*desk.reader, line, app.catalog, app.settings.school.criteria, desk.files);
        host.logbook().next_file_lines();
        return true;
    case Kind::file_failed: end_file(app, event.words); return true;
    case Kind::file_ended: end_file(app, ""); return true;
    case Kind::files_ended:
        desk.reading = false;
        tell(desk, event.words);  // that there was none, mostly empty
        return true;
    default: return false;
    }
}

}  // namespace slopewise
