// A class in one table: the files that were opened for it, in memory alone, and what is asked of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "evidence/class_table.h"

namespace slopewise {

struct App;
struct DoWithClassTable;
class Host;
struct StoreEvent;

struct ClassTableDesk {
    ClassFiles files;
    std::optional<ClassFileReader> reader;  // of the file that is being read
    bool reading = false;                   // more of what was chosen is to come
    std::vector<ClassRow> rows;             // as sorted
    ClassColumn sorted_by = ClassColumn::student;
    bool falling = false;
    std::string news;  // what was done last; empty mostly
    int edition = 0;   // counts changes
};

void do_with_class_table(App& app, const DoWithClassTable& wish, Host& host);

// True when the event was of files for the table and is done with.
bool take_class_table_event(App& app, const StoreEvent& event, Host& host);

}  // namespace slopewise
