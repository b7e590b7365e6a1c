#include "share/lesson_link.h"

#include <charconv>
#include <cstdint>
#include <cstdio>

#include "base/hash.h"
#include "data/write_lesson.h"
#include "share/base64url.h"
#include "share/shared_lesson.h"

namespace slopewise {
namespace {

const std::string name = "The link";

Result<Lesson> refused(std::string what, std::string allowed = "") {
    return failure<Lesson>({{name, 0, "", std::move(what), std::move(allowed)}});
}

std::string checksum(std::string_view bytes) {
    Hash hash;
    for (const char byte : bytes) hash.add(std::uint64_t{static_cast<unsigned char>(byte)});
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash.value()));
    return text;
}

std::string_view without_blanks(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

// Takes what stands before the next dot; nothing when there is no dot.
std::string_view take_part(std::string_view& rest) {
    const std::size_t dot = rest.find('.');
    if (dot == std::string_view::npos) return {};
    const std::string_view part = rest.substr(0, dot);
    rest.remove_prefix(dot + 1);
    return part;
}

// A positive whole number; 0 when it is none.
int format_of(std::string_view part) {
    int format = 0;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), format);
    return error == std::errc() && end == part.data() + part.size() && format > 0 ? format : 0;
}

}  // namespace

Result<std::string> lesson_link(const Lesson& lesson) {
    const std::string json = compact_json(lesson_text(lesson));
    std::string link = std::string(lesson_link_key) + std::to_string(lesson_link_format) + "." +
                       checksum(json) + "." + base64url(json);
    if (link.size() <= most_link_letters) return success(std::move(link));
    return failure<std::string>(
        {{"The lesson", 0, "", "makes a link of " + std::to_string(link.size()) + " letters",
          "at most " + std::to_string(most_link_letters) + "; hand it over as a file"}});
}

bool looks_like_lesson_link(std::string_view text) {
    return text.find(lesson_link_key) != std::string_view::npos;
}

Result<Lesson> read_lesson_link(std::string_view text, const Catalog& catalog) {
    std::string_view rest = without_blanks(text);
    if (const std::size_t key = rest.find(lesson_link_key); key != std::string_view::npos)
        rest.remove_prefix(key);
    else return refused("holds no lesson", "what was copied, whole: it goes on after \"#lesson=\"");
    if (rest.size() > most_link_letters)
        return refused("is " + std::to_string(rest.size()) + " letters long",
                       "at most " + std::to_string(most_link_letters));
    rest.remove_prefix(lesson_link_key.size());
    const int format = format_of(take_part(rest));
    if (format > lesson_link_format)
        return refused(
            "was made by a newer version of Slopewise (format " + std::to_string(format) + ")",
            "format " + std::to_string(lesson_link_format) + "; load the page again to get that version");
    const std::string_view sum = take_part(rest);
    if (format == 0 || sum.empty())
        return refused("is damaged: it does not begin as one does", "the whole link, again");
    const std::optional<std::string> json = bytes_of_base64url(rest);
    if (!json)
        return refused("is damaged: it has letters that no link has, or ends too soon",
                       "the whole link, again");
    if (checksum(*json) != sum)
        return refused("is damaged: a part of it is missing or changed", "the whole link, again");
    return read_shared_lesson(*json, name, catalog);
}

}  // namespace slopewise
