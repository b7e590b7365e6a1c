#include "lesson/variation.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numeric>

#include "base/random.h"
#include "base/units.h"

namespace slopewise {
namespace {

// What is drawn. Each has numbers of its own, so that a lesson that varies one thing more does not change the
// others.
enum class Drawn : std::uint64_t { start = 1, wind, runway, set_up, air };

Random numbers_of(Drawn what, std::uint64_t seed, int round) {
    Random random{seed};
    random.state = next_bits(random) ^ static_cast<std::uint64_t>(what);
    random.state = next_bits(random) ^ static_cast<std::uint64_t>(round);
    return random;
}

// The card that comes at turn `turn` (0 or more) out of a deck of `size` that is shuffled anew each time it
// has been dealt (Fisher-Yates).
std::size_t dealt(Drawn what, std::uint64_t seed, int turn, std::size_t size) {
    const int each = static_cast<int>(size);
    Random random = numbers_of(what, seed, turn / each);
    std::vector<std::size_t> deck(size);
    std::iota(deck.begin(), deck.end(), std::size_t{0});
    for (std::size_t last = size; last-- > 1;) {
        const double place = next_uniform(random) * static_cast<double>(last + 1);
        std::swap(deck[last], deck[std::min(last, static_cast<std::size_t>(place))]);
    }
    return deck[static_cast<std::size_t>(turn % each)];
}

void shuffle(Lesson& lesson, int turn, std::uint64_t seed) {
    const Practice& practice = lesson.practice;
    if (practice.vary_start && lesson.start.distance_m >= varied_offset_from_m)
        lesson.start.offset_rad =
            rad_from_deg(varied_offsets_deg[dealt(Drawn::start, seed, turn, varied_offsets_deg.size())]);
    if (practice.vary_wind) {
        lesson.wind = Wind{};
        lesson.wind.headwind_mps =
            mps_from_kt(varied_headwinds_kt[dealt(Drawn::wind, seed, turn, varied_headwinds_kt.size())]);
    }
    if (!practice.runways.empty()) {
        const std::size_t runway = dealt(Drawn::runway, seed, turn, practice.runways.size() + 1);
        if (runway > 0) lesson.runway_id = practice.runways[runway - 1];
    }
    Random air = numbers_of(Drawn::air, seed, turn);
    lesson.seed = next_bits(air) % 1000001;  // within what a lesson's file may say
}

std::string number(const char* pattern, double value) {
    char text[60];
    std::snprintf(text, sizeof text, pattern, value);
    return text;
}

}  // namespace

Lesson with_set_up(const Lesson& base, std::size_t i) {
    Lesson lesson = base;
    const SetUp& set_up = base.practice.set_ups[i];
    lesson.start = set_up.start;
    if (!set_up.runway_id.empty()) lesson.runway_id = set_up.runway_id;
    if (set_up.wind.has_value()) lesson.wind = *set_up.wind;
    if (set_up.lights_hidden) lesson.aids.lights = LessonAids::Lights::hidden;
    if (set_up.failure.has_value() && lesson.failure_count < static_cast<int>(most_failures))
        lesson.failures[static_cast<std::size_t>(lesson.failure_count++)] = *set_up.failure;
    return lesson;
}

int set_up_of_run(const Lesson& lesson, int run_number, std::uint64_t seed) {
    const std::size_t count = lesson.practice.set_ups.size();
    if (count == 0) return -1;
    return static_cast<int>(dealt(Drawn::set_up, seed, std::max(run_number, 1) - 1, count));
}

Lesson varied(const Lesson& lesson, int run_number, std::uint64_t seed) {
    const int set_up = set_up_of_run(lesson, run_number, seed);
    Lesson flown = set_up < 0 ? lesson : with_set_up(lesson, static_cast<std::size_t>(set_up));
    if (run_number > blocked_runs) shuffle(flown, run_number - blocked_runs - 1, seed);
    return flown;
}

std::string variation_words(const Lesson& lesson, const Lesson& flown) {
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
    if (flown.start.distance_m != lesson.start.distance_m)
        add(number("start at %.1f NM", nm_from_m(flown.start.distance_m)));
    if (const double offset_deg = deg_from_rad(flown.start.offset_rad);
        flown.start.offset_rad != lesson.start.offset_rad)
        add(std::abs(offset_deg) < 0.05
                ? "start on the path"
                : number("start %.1f\u00b0 ", std::abs(offset_deg)) + (offset_deg > 0.0 ? "high" : "low"));
    if (flown.start.cas_mps != lesson.start.cas_mps)
        add(number("start at %.0f kt", kt_from_mps(flown.start.cas_mps)));
    if (flown.wind.headwind_mps != lesson.wind.headwind_mps)
        add(number("headwind %.0f kt", kt_from_mps(flown.wind.headwind_mps)));
    if (flown.runway_id != lesson.runway_id) add("at " + flown.runway_id);
    if (flown.failure_count != lesson.failure_count) add("with a failure");
    if (flown.aids.lights != lesson.aids.lights) add("lights hidden");
    return words.empty() ? "as the lesson has it" : words;
}

Lesson at_chain_step(const Lesson& lesson, int step) {
    Lesson flown = lesson;
    const std::vector<double>& chain_m = lesson.practice.chain_m;
    if (chain_m.empty()) return flown;
    const int last = static_cast<int>(chain_m.size()) - 1;
    flown.start.distance_m = chain_m[static_cast<std::size_t>(std::clamp(step, 0, last))];
    flown.start.offset_rad = 0.0;
    return flown;
}

int chain_step(const Lesson& lesson, const std::vector<bool>& passed) {
    const int last = static_cast<int>(lesson.practice.chain_m.size()) - 1;
    int step = 0, in_succession = 0;
    for (const bool pass : passed) {
        in_succession = pass ? in_succession + 1 : 0;
        if (in_succession < chain_passes) continue;
        in_succession = 0;
        step = std::min(step + 1, std::max(last, 0));
    }
    return step;
}

}  // namespace slopewise
