#include <algorithm>
#include <iterator>

#include "cli/commands.h"
#include "cli/data_files.h"

namespace slopewise::cli {
namespace {

// What identifies an entry: its kind and its id.
std::string kind_of(const DataEntry& entry) {
    return std::holds_alternative<Aircraft>(entry) ? "aircraft"
           : std::holds_alternative<Runway>(entry) ? "runway"
           : std::holds_alternative<Lesson>(entry) ? "lesson"
           : std::holds_alternative<Drill>(entry)  ? "drill"
                                                   : "questions";
}
std::string id_of(const DataEntry& entry) {
    return std::visit([](const auto& value) { return value.id; }, entry);
}
std::string name_of(const DataEntry& entry) { return kind_of(entry) + " \"" + id_of(entry) + "\""; }

// The files named, and with them all shipped ones that none of them stands in for: a lesson names others.
std::vector<DataFile> with_shipped(const std::vector<DataFile>& files,
                                   const std::vector<std::string>& names) {
    std::vector<DataFile> all = files;
    for (const DataFile& shipped : shipped_files()) {
        const Result<DataEntry> entry = read_entry(shipped);
        const bool replaced = std::find(names.begin(), names.end(), name_of(*entry.value)) != names.end();
        if (!replaced) all.push_back(shipped);
    }
    return all;
}

bool is_among(const std::vector<DataFile>& files, const std::string& name) {
    return std::any_of(files.begin(), files.end(), [&](const DataFile& file) { return file.name == name; });
}

Outcome check(const Arguments& arguments) {
    std::vector<std::string> texts;
    std::vector<Problem> problems;
    for (const std::string& path : arguments.words) {
        Result<std::string> text = read_file(path);
        if (!text.ok()) problems.push_back(text.problems[0]);
        texts.push_back(text.ok() ? std::move(*text.value) : "");
    }
    std::vector<DataFile> files;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const std::string& path = arguments.words[i];
        if (std::any_of(problems.begin(), problems.end(), [&](const Problem& p) { return p.file == path; }))
            continue;
        files.push_back({path, texts[i]});
        const Result<DataEntry> entry = read_entry(files.back());
        names.push_back(entry.ok() ? name_of(*entry.value) : "");
    }
    Result<Catalog> catalog = load_catalog(with_shipped(files, names));
    // Of the files named only: a shipped lesson that a changed aircraft cannot fly is no fault of theirs.
    std::copy_if(catalog.problems.begin(), catalog.problems.end(), std::back_inserter(problems),
                 [&](const Problem& problem) { return is_among(files, problem.file); });

    Outcome outcome{problems.empty() ? good : bad_input, "", problem_lines(problems)};
    for (std::size_t i = 0; i < files.size(); ++i) {
        const bool bad = std::any_of(problems.begin(), problems.end(),
                                     [&](const Problem& problem) { return problem.file == files[i].name; });
        if (!bad) outcome.out += files[i].name + ": good, " + names[i] + "\n";
    }
    return outcome;
}

}  // namespace

const Command& check_command() {
    static const Command command{
        {"check",
         "FILE...",
         1,
         10000,
         "Checks lesson, drill, question, aircraft and runway files (JSON).",
         "Prints a line for every good file, and every problem of the others on standard error, with line, "
         "place,\n"
         "what is there and what is allowed. A lesson is checked against the shipped aircraft and runways "
         "and\n"
         "those among the files; a file takes the place of a shipped one of the same id.",
         {}},
        check};
    return command;
}

}  // namespace slopewise::cli
