// The files of a class, read to be laid side by side: several students' files, or single attempts. Nothing of
// them is kept anywhere.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "data/catalog.h"
#include "logbook/index_row.h"

namespace slopewise {

// An attempt that came to its end.
struct ClassAttempt {
    std::string id;
    std::string student;  // the name flown under; else that of the file; else "no name, FILE"
    AttemptRow row;
};

struct ClassFiles {
    std::vector<ClassAttempt> attempts;         // by student as they came; see class_table.h
    std::set<std::string, std::less<>> ids;     // of all attempts read, those cut off too
    std::map<std::string, std::string> titles;  // of lessons that are not in the catalog, by their id
    std::vector<Problem> problems;              // file, line and reason; at most most_class_problems
    int files = 0, twice = 0, cut_off = 0;      // read; attempts met again; attempts cut off, left out
    int flown_again = 0;                        // attempts without a row in their file, measured anew
};

// Where the reading of one file stands.
struct ClassFileReader {
    std::string file;                                   // as it is called in what is told
    std::string student;                                // by its first line; empty: not told
    std::map<std::string, IndexRow, std::less<>> rows;  // that came with it, by id
    int line = 0, attempts = 0, refused = 0;
    bool given_up = false;
};

inline constexpr std::size_t most_class_attempts = 20000;
inline constexpr std::size_t most_class_problems = 200;
inline constexpr int most_refused_lines = 20;  // a file with more is not worth reading on

ClassFileReader begin_class_file(std::string file);

// One line, in order, without its end; empty ones count. An attempt whose row came with the file is taken by
// that row, which is what its student's own progress sheet is made of; another is flown again and measured by
// `criteria`. A line that cannot be read is told and left out; after too many, or a first line that is none
// of ours, the rest is passed over.
void take_class_line(ClassFileReader& reader, std::string_view line, const Catalog& catalog,
                     const Criteria& criteria, ClassFiles& into);

// Tells of a file that held nothing. `trouble`: why it could not be read to its end; empty when it was.
void end_class_file(const ClassFileReader& reader, const std::string& trouble, ClassFiles& into);

}  // namespace slopewise
