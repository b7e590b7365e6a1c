#include "tests/fuzz/readers.h"

#include <array>

#include "tests/fuzz/demand.h"

namespace slopewise::test {
namespace {

#define SLOPEWISE_ROW(name) Reader{#name, meet_##name, seeds_of_##name},
constexpr std::array all{SLOPEWISE_READERS(SLOPEWISE_ROW)};
#undef SLOPEWISE_ROW

}  // namespace

std::span<const Reader> readers() { return all; }

const Reader* find_reader(std::string_view name) {
    for (const Reader& reader : all)
        if (reader.name == name) return &reader;
    return nullptr;
}

void demand_told(const std::vector<Problem>& problems) {
    for (const Problem& problem : problems) {
        demand(!problem.file.empty() && !problem.what.empty() && problem.line >= 0,
               "a problem names its file and says what is there: " + to_text(problem));
        demand(problem.path.empty() || problem.path.front() == '/', "a path is one: " + to_text(problem));
    }
}

}  // namespace slopewise::test
