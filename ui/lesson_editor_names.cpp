#include "ui/lesson_editor_names.h"

#include <cstdio>
#include <string_view>

#include "base/hash.h"
#include "data/write_lesson.h"

namespace slopewise {
namespace {

constexpr std::string_view own_mark = "own-";
constexpr std::size_t number_letters = 9;

std::string own_name(const std::string& title) {
    constexpr std::size_t most_of_title = 26;
    return std::string(own_mark) + slug_of(title).substr(0, most_of_title);
}

std::uint32_t number_of(const std::string& text) {
    Hash hash;
    for (const char byte : text) hash.add(std::uint64_t{static_cast<unsigned char>(byte)});
    return static_cast<std::uint32_t>(hash.value());
}

}  // namespace

std::string slug_of(const std::string& title) {
    std::string slug;
    for (const char c : title) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        const bool capital = c >= 'A' && c <= 'Z';
        if (plain || capital) slug += capital ? static_cast<char>(c - 'A' + 'a') : c;
        else if (!slug.empty() && slug.back() != '-') slug += '-';
    }
    while (!slug.empty() && slug.back() == '-') slug.pop_back();
    return slug;
}

std::string own_id(const std::string& title, std::uint32_t number) {
    char text[number_letters + 1];
    std::snprintf(text, sizeof text, "-%08x", static_cast<unsigned>(number));
    return own_name(title) + text;
}

std::string renamed_own_id(const std::string& id, const std::string& title) {
    if (!id.starts_with(own_mark) || id.size() <= own_mark.size() + number_letters) return id;
    return own_name(title) + id.substr(id.size() - number_letters);
}

void give_honest_id(Lesson& lesson, const Catalog& catalog) {
    const Lesson* shipped = find_lesson(catalog, lesson.id);
    const std::string text = lesson_text(lesson);
    if (shipped == nullptr || lesson_text(*shipped) == text) return;
    lesson.id = own_id(lesson.title, number_of(text));
}

}  // namespace slopewise
