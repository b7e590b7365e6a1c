// The logbook as the program holds it: the list of every attempt on this device, and what is being done with
// it. The attempts themselves stay in the store until one is opened.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "data/catalog.h"
#include "logbook/index_row.h"
#include "ui/logbook_store.h"

namespace slopewise {

struct Logbook {
    enum class Standing { opening, open, refused };
    enum class After { show, replay, compare, compare_other };  // what a loaded attempt is wanted for

    struct Import {
        std::string file;
        std::optional<std::string> student;  // told by its first line
        int line = 0, added = 0, known = 0;
        bool running = false;
        std::string waiting_for;  // id of what the last line brought, until it is kept
        std::vector<Problem> problems;
    };

    Standing standing = Standing::opening;
    std::string trouble;         // why something could not be kept or read; empty mostly
    std::string news;            // what was done last: "12 attempts were added"; empty mostly
    std::vector<IndexRow> rows;  // by id, which is by time; deleted ones too
    // Whole attempts by id: given to the store, which has not yet answered, and those it would not take.
    // These stand in the list as long as the program runs, and can be opened and handed over like the others.
    std::map<std::string, std::string, std::less<>> on_the_way, unkept;
    std::optional<Import> import;
    std::string wanted;                // id of the attempt being loaded; empty: none
    std::string other;                 // id of the one to compare it with
    std::optional<KeptAttempt> first;  // loaded, until the other is
    After after = After::show;
    std::vector<std::string> without_row;  // ids whose rows are to be made again
    int edition = 0;                       // counts changes: what is drawn of it is made again only then
};

// Null when there is none.
const IndexRow* find_row(const Logbook& logbook, std::string_view id);

// The rows of one student that stand, oldest first; and those that were deleted, which can be brought back.
std::vector<const IndexRow*> rows_of(const Logbook& logbook, std::string_view student);
std::vector<const IndexRow*> deleted_rows_of(const Logbook& logbook, std::string_view student);

// Everyone who has an attempt here, deleted or not, by name; "" stands for no name.
std::vector<std::string> students_of(const Logbook& logbook);

// What counts in trends: attempts of one student that came to their end, oldest first.
std::vector<AttemptRow> trend_rows(const Logbook& logbook, std::string_view student);

}  // namespace slopewise
