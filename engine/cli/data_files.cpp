#include "cli/data_files.h"

#include <cassert>
#include <cerrno>
#include <cstdio>
#include <cstring>

#include "assets/embedded.h"

namespace slopewise::cli {
namespace {

std::string shipped_lesson_ids() {
    std::string ids;
    for (const Lesson& lesson : shipped_catalog().lessons) ids += ", \"" + lesson.id + "\"";
    return ids;
}

}  // namespace

Result<std::string> read_file(const std::string& path, std::size_t most_bytes) {
    ++most_bytes;  // by the one too many the parser sees that it is too large
    const auto cannot = [&] {
        return failure<std::string>(
            {{path, 0, "", std::string("cannot be read: ") + std::strerror(errno), ""}});
    };
    std::FILE* file = std::fopen(path.c_str(), "rb");
    if (file == nullptr) return cannot();
    std::string text;
    char block[1 << 16];
    std::size_t got = 0;
    while (text.size() < most_bytes && (got = std::fread(block, 1, sizeof block, file)) > 0)
        text.append(block, got < most_bytes - text.size() ? got : most_bytes - text.size());
    const bool failed = std::ferror(file) != 0;
    const int reason = errno;
    std::fclose(file);
    errno = reason;
    return failed ? cannot() : success(std::move(text));
}

bool write_file(const std::string& path, std::string_view text, std::string& reason) {
    errno = 0;
    std::FILE* file = std::fopen(path.c_str(), "wb");
    bool written = file != nullptr && std::fwrite(text.data(), 1, text.size(), file) == text.size();
    if (file != nullptr && std::fclose(file) != 0) written = false;
    if (!written) reason = std::strerror(errno);
    return written;
}

std::vector<DataFile> shipped_files() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    }
    return files;
}

const Catalog& shipped_catalog() {
    static const Result<Catalog> catalog = load_catalog(shipped_files());
    assert(catalog.ok());  // a test loads every shipped file
    return *catalog.value;
}

Result<Scenario> find_scenario(const std::string& id_or_path) {
    const Catalog& catalog = shipped_catalog();
    if (const Lesson* lesson = find_lesson(catalog, id_or_path))
        return success(scenario_of(catalog, *lesson));

    Result<std::string> text = read_file(id_or_path);
    if (!text.ok()) {
        text.problems[0].allowed = "a lesson file" + shipped_lesson_ids();
        return failure<Scenario>(std::move(text.problems));
    }
    Result<DataEntry> entry = read_entry({id_or_path, *text.value});
    if (!entry.ok()) return failure<Scenario>(std::move(entry.problems));
    const Lesson* lesson = std::get_if<Lesson>(&*entry.value);
    if (lesson == nullptr)
        return failure<Scenario>({{id_or_path, 0, "/kind", "is not a lesson", "\"lesson\""}});
    std::vector<Problem> problems = check_lesson(catalog, *lesson, id_or_path);
    if (!problems.empty()) return failure<Scenario>(std::move(problems));
    return success(scenario_of(catalog, *lesson));
}

std::string problem_lines(const std::vector<Problem>& problems) {
    std::string lines;
    for (const Problem& problem : problems) lines += to_text(problem) + "\n";
    return lines;
}

}  // namespace slopewise::cli
