// Flies each golden flight and prints its name and the hash of the state it ends in. Every build, native or
// WebAssembly, must print what stands in hashes.txt.
#include <cstdio>
#include <string>
#include <vector>

#include "assets/embedded.h"
#include "base/random.h"
#include "data/catalog.h"
#include "lesson/approach_choice.h"
#include "lesson/demonstrate.h"

namespace {

using namespace slopewise;

Catalog shipped_catalog() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    }
    Result<Catalog> catalog = load_catalog(files);
    for (const Problem& problem : catalog.problems) std::fprintf(stderr, "%s\n", to_text(problem).c_str());
    return catalog.ok() ? std::move(*catalog.value) : Catalog{};
}

void print(const std::string& name, const Attempt& attempt) {
    std::printf("%s %lld ticks %016llx\n", name.c_str(), static_cast<long long>(attempt.tick),
                static_cast<unsigned long long>(state_hash(attempt)));
}

void fly_well(const std::string& name, const Scenario& scenario, std::uint64_t seed) {
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, seed);
    demonstrate(scenario, attempt, pilot, [](const Controls&, const Events&) {});
    print(name + " seed " + std::to_string(seed), attempt);
}

// Hands that know nothing: every two seconds other controls, into the stall, the flap limits and the ground.
void fly_wildly(const std::string& name, const Scenario& scenario, std::uint64_t seed, double seconds) {
    Attempt attempt = begin_attempt(scenario);
    Random random{seed};
    Controls controls = attempt.controls;
    while (time_s(attempt) < seconds) {
        if (attempt.tick % 240 == 0) {
            controls = quantize({2.0 * next_uniform(random) - 1.0, next_uniform(random),
                                 2.0 * next_uniform(random) - 1.0,
                                 static_cast<int>(3.0 * next_uniform(random)), false});
        }
        tick(scenario, attempt, controls);
        if (attempt.at_rest) break;
    }
    print(name + " seed " + std::to_string(seed), attempt);
}

// On the path, then full power at 200 ft wheel height, the nose up, and flap up in stages.
void go_around(const std::string& name, const Scenario& scenario) {
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, 5);
    while (wheel_height_m(scenario.aircraft, attempt.flight) > 61.0)
        tick(scenario, attempt, fly(pilot, sight_of(scenario, attempt), time_s(attempt)));
    ControlPositions hands = positions_of(attempt.controls);
    hands.throttle = 1.0;
    hands.go_around = true;
    for (int i = 0; i < 3600; ++i) {
        hands.flap = i < 600 ? 2 : (i < 1800 ? 1 : 0);
        hands.stick = i < 360 ? 0.15 : 0.0;
        tick(scenario, attempt, quantize(hands));
    }
    print(name, attempt);
}

}  // namespace

int main() {
    const Catalog catalog = shipped_catalog();
    if (catalog.lessons.empty()) return 1;
    const auto lesson = [&](const char* id) { return scenario_of(catalog, *find_lesson(catalog, id)); };
    fly_well("final_calm", lesson("final_calm"), 1);
    fly_well("final_headwind", lesson("final_headwind"), 1);
    fly_well("from_above", lesson("from_above"), 2);
    fly_well("from_below", lesson("from_below"), 2);
    fly_well("wind_gradient", lesson("wind_gradient"), 3);
    fly_wildly("wild hands in calm", lesson("final_calm"), 7, 120.0);
    fly_wildly("wild hands in a gradient", lesson("wind_gradient"), 8, 120.0);
    go_around("go-around at 200 ft", lesson("final_headwind"));
    return 0;
}
