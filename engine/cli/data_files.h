// Where the command line's data comes from: files the user names, and the lessons, aircraft and runways
// that are compiled in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "data/catalog.h"

namespace slopewise::cli {

// The whole file. Files beyond what it may hold (a recording's 16 MiB) come back one byte over it, so that
// reading stops and the parser can say so.
Result<std::string> read_file(const std::string& path, std::size_t most_bytes = std::size_t{16} << 20);
inline constexpr std::size_t most_student_file_bytes = std::size_t{1} << 30;

// False when it could not be written whole; `reason` then says why.
bool write_file(const std::string& path, std::string_view text, std::string& reason);

// The data files compiled in, and all of them read.
std::vector<DataFile> shipped_files();
const Catalog& shipped_catalog();

// A lesson ready to fly: a shipped one by its id, or one in a file, checked against the shipped aircraft
// and runways.
Result<Scenario> find_scenario(const std::string& id_or_path);

// All problems, a line each.
std::string problem_lines(const std::vector<Problem>& problems);

}  // namespace slopewise::cli
