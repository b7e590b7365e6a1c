#include "data/school_file.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_school(std::string_view text) {
    const Result<School> read = read_school(text, "x");
    if (!demand_answer(read)) return;
    const std::string written = school_text(*read.value);
    const Result<School> again = read_school(written, "x");
    demand(again.ok(), "a school that was written is read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(school_text(*again.value) == written, "a school is written the same again");
    demand(again.value->flap_step_count == read.value->flap_step_count &&
               again.value->aircraft.has_value() == read.value->aircraft.has_value(),
           "a school keeps its aircraft and flap steps");
    if (read.value->aircraft) fly_final(read.value->aircraft->aircraft, plain_runway(), text);
}

std::vector<std::string> seeds_of_school() {
    School school;
    std::vector<std::string> seeds{school_text(school)};
    school.name = "Reed Hill \"flying\"";
    school.gust_share = 1.0;
    school.runway_unit = RunwayUnit::feet;
    school.flap_step_count = 2;
    school.flap_schedule = {ScheduledFlap{300.0, 1}, ScheduledFlap{100.0, 2}};
    school.aircraft = SchoolAircraft{tourer(), shipped_texts("aircraft").front()};
    seeds.push_back(school_text(school));
    return seeds;
}

}  // namespace slopewise::test
