#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"
#include "ui/settings.h"

namespace slopewise::test {

// Never refused: what is bad has its default, so what is kept next must be without a problem.
void meet_settings(std::string_view text) {
    const KeptSettings read = parse_settings(text);
    demand_told(read.problems);
    const std::string written = settings_text(read.settings);
    const KeptSettings again = parse_settings(written);
    demand(again.problems.empty(), "settings that were kept are read: " +
                                       (again.problems.empty() ? "" : to_text(again.problems.front())));
    demand(settings_text(again.settings) == written, "settings are kept the same again");
    demand(again.settings.where_and_when == read.settings.where_and_when &&
               again.settings.student == read.settings.student,
           "settings keep where is flown and who flies");
}

std::vector<std::string> seeds_of_settings() {
    Settings settings;
    std::vector<std::string> seeds{settings_text(settings)};
    settings.up_key_pushes = true;
    settings.student = "Kestrel \"7\"";
    settings.display.eyes_outside = true;
    settings.display.screen_width_cm = 34;
    settings.school.name = "Reed Hill";
    settings.school.flap_step_count = 1;
    settings.school.flap_schedule[0] = {100.0, 2};
    seeds.push_back(settings_text(settings));
    return seeds;
}

}  // namespace slopewise::test
