// Where the taught numbers come from: the table itself. Its figures are held to the code in
// test_source_figures.cpp.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

#include "sources/sources.h"
#include "tests/engine/told_figures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("sources: every entry names its document, or says that it is common practice with no source") {
    CHECK(taught_numbers().size() > 80);
    for (const TaughtNumber& entry : taught_numbers()) {
        CAPTURE(std::string(entry.id));
        CHECK(entry.document.empty() == (entry.sureness == Sureness::common_practice));
        CHECK(!(entry.document.empty() && !entry.section.empty()));
        CHECK(entry.says.ends_with("."));
        CHECK(entry.says.size() < 200);  // two lines of a sheet
    }
}

TEST_CASE("sources: no id is there twice, no sentence either, and each is found by its id") {
    std::set<std::string_view> ids, sentences;
    for (const TaughtNumber& entry : taught_numbers()) {
        CAPTURE(std::string(entry.id));
        CHECK(ids.insert(entry.id).second);
        CHECK(sentences.insert(entry.says).second);
        CHECK(find_taught_number(entry.id) == &entry);
    }
    CHECK(find_taught_number("no_such_number") == nullptr);
}

TEST_CASE("sources: they stand by topic, in the topics' order, and every topic has some") {
    const auto& all = taught_numbers();
    CHECK(std::ranges::is_sorted(all, {}, &TaughtNumber::topic));
    for (std::size_t topic = 0; topic < source_topic_names.size(); ++topic) {
        CAPTURE(std::string(source_topic_names[topic]));
        CHECK(std::ranges::count(all, static_cast<SourceTopic>(topic), &TaughtNumber::topic) > 0);
    }
}

TEST_CASE("sources: what is not read in its document does not claim to be") {
    // Words that tell of a copy, a quotation or a memory belong to lesser sureness.
    for (const TaughtNumber& entry : taught_numbers()) {
        CAPTURE(std::string(entry.id));
        const auto tells = [&](const char* words) {
            return entry.section.find(words) != std::string_view::npos;
        };
        if (tells("quote") || tells("give it") || tells("gives") || tells("abstract"))
            CHECK(entry.sureness != Sureness::read);
        if (tells("not seen") || tells("remembered")) CHECK(entry.sureness == Sureness::memory);
    }
}

TEST_CASE("sources: the figures of a sentence are read as they are written") {
    const auto figures = told_figures("At 1,000 ft 0.33\u00b0, or 5 of W20. In 2.");
    REQUIRE(figures.size() == 4);
    CHECK(figures[0].value == 1000.0);
    CHECK(figures[1].value == 0.33);
    CHECK(figures[1].rounding == doctest::Approx(0.005));
    CHECK(figures[2].value == 5.0);
    CHECK(figures[3].value == 2.0);
}
