// A lesson in a link: it comes out as it went in, and whatever else comes in is refused in words.
#include <doctest/doctest.h>

#include <cstdio>
#include <string>

#include "base/hash.h"
#include "base/random.h"
#include "data/write_lesson.h"
#include "share/base64url.h"
#include "share/lesson_link.h"
#include "share/shared_lesson.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string link_of(const Lesson& lesson) { return *lesson_link(lesson).value; }
std::string good_link() { return link_of(shipped().lessons.front()); }
std::string good_json() { return compact_json(lesson_text(shipped().lessons.front())); }

// A link of the right form and checksum round any text, as somebody with ill intent would make it.
std::string forged(std::string_view json) {
    Hash hash;
    for (const char byte : json) hash.add(std::uint64_t{static_cast<unsigned char>(byte)});
    char sum[20];
    std::snprintf(sum, sizeof sum, "%016llx", static_cast<unsigned long long>(hash.value()));
    return "lesson=1." + std::string(sum) + "." + base64url(json);
}

// The problems of a link that must be refused, a line each.
std::string why_refused(std::string_view link) {
    const Result<Lesson> read = read_lesson_link(link, shipped());
    CHECK_FALSE(read.ok());
    std::string words;
    for (const Problem& problem : read.problems) words += to_text(problem) + "\n";
    CHECK_FALSE(words.empty());
    return words;
}

bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

std::string with(std::string text, std::string_view old, std::string_view instead) {
    const std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), instead);
}

std::size_t pick(Random& random, std::size_t below) { return next_bits(random) % below; }

// Changes, takes out, doubles or swaps a few letters.
std::string mutated(std::string text, Random& random, std::string_view letters) {
    for (std::size_t count = 1 + pick(random, 4); count > 0 && !text.empty(); --count) {
        const std::size_t at = pick(random, text.size());
        switch (pick(random, 4)) {
        case 0: text[at] = letters[pick(random, letters.size())]; break;
        case 1: text.erase(at, 1 + pick(random, 6)); break;
        case 2: text.insert(at, text.substr(pick(random, text.size()), 1 + pick(random, 12))); break;
        default: std::swap(text[at], text[pick(random, text.size())]); break;
        }
    }
    return text;
}

// One digit is another: mostly a lesson still, often out of range or not flyable.
std::string with_other_digit(std::string json, Random& random) {
    constexpr std::string_view digits = "0123456789";
    const std::size_t at = json.find_first_of(digits, pick(random, json.size()));
    if (at != std::string::npos) json[at] = digits[pick(random, digits.size())];
    return json;
}

std::string random_text(Random& random, std::size_t longest) {
    std::string text;
    for (std::size_t i = pick(random, longest); i > 0; --i) text += static_cast<char>(pick(random, 256));
    return text;
}

}  // namespace

TEST_CASE("base64url: the examples of RFC 4648, section 10, without their padding, both ways") {
    const std::pair<const char*, const char*> examples[] = {
        {"", ""},           {"f", "Zg"},          {"fo", "Zm8"},         {"foo", "Zm9v"},
        {"foob", "Zm9vYg"}, {"fooba", "Zm9vYmE"}, {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, letters] : examples) {
        CHECK(base64url(bytes) == letters);
        CHECK(bytes_of_base64url(letters) == std::string(bytes));
    }
    CHECK(base64url("\xFB\xFF\xBF") == "-_-_");  // the two letters that differ from plain base64
}

TEST_CASE("base64url: what no bytes give is refused") {
    for (const char* letters :
         {"Z", "Zm9vY", "Zh", "Zm9", "Zg==", "Zm+v", "Zm/v", "Zm 9v", "Zm9v\n", "Z\xC3\xA9"})
        CHECK_FALSE(bytes_of_base64url(letters).has_value());
    Random random{11};
    for (int i = 0; i < 2000; ++i) {
        const std::string bytes = random_text(random, 60);
        CHECK(bytes_of_base64url(base64url(bytes)) == bytes);
    }
}

TEST_CASE(
    "lesson link: every shipped lesson comes out of its link as it went in, and flies to the same bits") {
    for (const Lesson& lesson : shipped().lessons) {
        CAPTURE(lesson.id);
        const Result<std::string> link = lesson_link(lesson);
        REQUIRE(link.ok());
        CHECK(link.value->size() <= most_link_letters);
        const Result<Lesson> read = read_lesson_link(*link.value, shipped());
        for (const Problem& problem : read.problems) FAIL_CHECK(to_text(problem));
        REQUIRE(read.ok());
        CHECK(lesson_text(*read.value) == lesson_text(lesson));
        const Flight here =
            fly_with(scenario_of(shipped(), lesson), 600, [](const Attempt&) { return Controls{}; });
        const Flight there =
            fly_with(scenario_of(shipped(), *read.value), 600, [](const Attempt&) { return Controls{}; });
        CHECK(state_hash(here.attempt) == state_hash(there.attempt));
    }
}

TEST_CASE("lesson link: the whole address does as well, with blanks about it") {
    CHECK(read_lesson_link(" https://example.org/slopewise/#" + good_link() + "\n", shipped()).ok());
    CHECK(read_lesson_link("#" + good_link(), shipped()).ok());
    CHECK(looks_like_lesson_link("#" + good_link()));
    CHECK_FALSE(looks_like_lesson_link("#top"));
}

TEST_CASE("lesson link: each way of being wrong is told in its own words") {
    const std::string link = good_link();
    CHECK(holds(why_refused(""), "holds no lesson"));
    CHECK(holds(why_refused("#top"), "holds no lesson"));
    CHECK(holds(why_refused(" \n"), "holds no lesson"));
    CHECK(holds(why_refused(forged("{}")), "holds no lesson"));
    CHECK(holds(why_refused("lesson="), "does not begin as one does"));
    CHECK(holds(why_refused("lesson=hello"), "does not begin as one does"));
    CHECK(holds(why_refused("lesson=-1.00.AA"), "does not begin as one does"));
    CHECK(holds(why_refused(with(link, "=1.", "=2.")), "newer version of Slopewise (format 2)"));
    CHECK(holds(why_refused(with(link, "=1.", "=99999999999999.")), "does not begin as one does"));
    CHECK(holds(why_refused(link + "!"), "letters that no link has"));
    CHECK(holds(why_refused(link.substr(0, link.size() - 8)), "damaged"));
    CHECK(holds(why_refused(link + std::string(most_link_letters, 'A')), "at most 8000"));
    CHECK(holds(why_refused(forged("{")), "The link:1:"));
    CHECK(holds(why_refused(forged("[]")), "holds no lesson"));
    CHECK(holds(why_refused(forged(with(good_json(), "\"lesson\"", "\"runway\""))), "holds no lesson"));
    CHECK(holds(why_refused(forged(with(good_json(), "\"tourer\"", "\"jet\""))), "/aircraft is \"jet\""));
    CHECK(holds(why_refused(forged(with(good_json(), "\"distance_nm\":3.0", "\"distance_nm\":300"))),
                "allowed: 0.25 to 10"));
    CHECK(holds(why_refused(forged(with(good_json(), "\"distance_nm\":3.0", "\"distance_nm\":1e999"))),
                "The link:1:"));
}

TEST_CASE("lesson link: words with characters that are not seen or turn the line are refused") {
    for (const char* letter :
         {"\\u0000", "\\n", "\\u001b", "\\u007f", "\\u0085", "\\u00ad", "\\u061c", "\\u200b", "\\u202e",
          "\\u2066", "\\ufeff", "\\ufffa", "\\udb40\\udc41", "\xE2\x80\xAE"})
        CHECK(holds(
            why_refused(forged(with(good_json(), "\"title\":\"", "\"title\":\"a" + std::string(letter)))),
            "/title has characters that cannot be seen"));
    CHECK(holds(why_refused(forged(with(good_json(), "\"title\":\"", "\"title\":\"\xFF"))), "The link:1:"));
    const std::string deep =
        why_refused(forged(R"({"kind":"lesson","list":["a\u200b"],"b\u202e":{"c":"\u0007"}})"));
    CHECK(holds(deep, "/list/0 has characters that cannot be seen"));
    CHECK(holds(deep, "/?/c has characters that cannot be seen"));
    const Result<Lesson> german = read_lesson_link(forged(with(good_json(), "\"title\":\"",
                                                               "\"title\":\"\xC3\x9C"
                                                               "ben \xE2\x80\x93 ")),
                                                   shipped());
    CHECK(german.ok());
    // Signs that are seen, from between and beyond those that are not: a dash, a superscript, a replacement
    // mark, a face, and one of the planes for private use.
    for (const char* seen : {"\\u2013", "\\u2070", "\\ufffd", "\\ud83d\\ude00", "\\udb80\\udc00"})
        CHECK(read_lesson_link(forged(with(good_json(), "\"title\":\"", "\"title\":\"a" + std::string(seen))),
                               shipped())
                  .ok());
}

TEST_CASE("lesson link: only blanks between the words of JSON are left out, none within a text") {
    CHECK(compact_json("{ \"a b\" :\r\n\t[ 1,\t2 ] }") == "{\"a b\":[1,2]}");
    CHECK(compact_json(R"({ "a" : "say \" x \" " , "b" : "\\" , "c" : 1 })") ==
          R"({"a":"say \" x \" ","b":"\\","c":1})");
}

TEST_CASE("lesson link: a lesson too long for a link is told to go as a file") {
    Lesson lesson = shipped().lessons.front();
    lesson.aim = std::string(7000, 'a');  // beyond what a reader allows, but so is the link
    const Result<std::string> link = lesson_link(lesson);
    REQUIRE_FALSE(link.ok());
    CHECK(holds(to_text(link.problems.front()), "hand it over as a file"));
}

TEST_CASE("lesson link: 20,000 random and mutated links never give a lesson that would not pass its checks") {
    const std::string letters = "ABCxyz019-_.=#{}\"e:,[]\\";
    Random random{2026};
    int taken = 0, refused = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string link;
        switch (pick(random, 5)) {
        case 0: link = mutated(good_link(), random, letters); break;
        case 1: link = "lesson=1." + random_text(random, 200); break;
        case 2: link = forged(random_text(random, 200)); break;
        case 3: link = forged(mutated(good_json(), random, letters)); break;
        default: link = forged(with_other_digit(good_json(), random)); break;
        }
        const Result<Lesson> read = read_lesson_link(link, shipped());
        if (!read.ok()) {
            ++refused;
            if (read.problems.empty()) FAIL_CHECK(link);
            continue;
        }
        ++taken;
        if (!check_lesson(shipped(), *read.value, "x").empty()) FAIL_CHECK(link);
        // What was taken in lies in the reader's ranges: it is read again from its own text, and stays
        // itself.
        const Result<Lesson> again = read_shared_lesson(lesson_text(*read.value), "x", shipped());
        if (!again.ok() || lesson_text(*again.value) != lesson_text(*read.value)) FAIL_CHECK(link);
    }
    MESSAGE(taken, " taken, ", refused, " refused");
    CHECK(taken > 100);  // the test reaches the way in
    CHECK(refused > 10000);
}
