#include "tests/fuzz/shipped_texts.h"

#include "logbook/attempt_id.h"
#include "tests/fixtures.h"

namespace slopewise::test {

std::vector<std::string> shipped_texts(std::string_view folder) {
    std::vector<std::string> texts;
    for (const DataFile& file : shipped_files())
        if (file.name.find("/" + std::string(folder) + "/") != std::string::npos)
            texts.emplace_back(file.text);
    return texts;
}

const Recording& short_recording() {
    static const Recording recording = [] {
        Recording flown =
            fly_with(shipped_scenario("final_calm"), 3 * hash_interval_ticks, [](const Attempt& a) {
                Controls controls = a.controls;
                controls.stick = static_cast<std::int16_t>(40 * (a.tick / 40));
                return controls;
            }).recording;
        flown.circumstances.student = "Kestrel 7";
        flown.circumstances.started_unix_s = 1764000000;
        flown.circumstances.device = "keyboard";
        flown.circumstances.aids.covered = {"airspeed"};
        flown.circumstances.aids.panel_share = 0.3;
        flown.circumstances.estimate = Estimate{};
        return flown;
    }();
    return recording;
}

KeptAttempt short_attempt(unsigned number) {
    return kept_from(attempt_id(1764000000123, number), short_recording(), shipped_scenario("final_calm"));
}

}  // namespace slopewise::test
