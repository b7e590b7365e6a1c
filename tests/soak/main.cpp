// Eight hours of flying in one process, as CSV: what is held each hour. Fails where the program holds more
// after eight hours than after two, in which each lesson has been flown once. `soak HOURS` flies for as long.
#include <cstdio>
#include <cstdlib>

#include "tests/soak/soak_flight.h"

using namespace slopewise::test;

int main(int count, char** arguments) {
    const double hours = count > 1 ? std::atof(arguments[1]) : 8.0;
    const SoakResult result = soak(hours, 1.0);
    std::puts("flown_h,held_bytes,resident_bytes,logbook_bytes,attempts,drills");
    for (const SoakSample& one : result.samples)
        std::printf("%.2f,%lld,%lld,%lld,%d,%d\n", one.flown_h, static_cast<long long>(one.held_bytes),
                    static_cast<long long>(one.resident_bytes), static_cast<long long>(one.logbook_bytes),
                    one.attempts, one.drills);
    const auto growth = static_cast<long long>(growth_bytes(result, 2.0));
    std::printf(
        "%d frames, %d flights scored, %d attempts kept, %d lessons flown; grown by %lld bytes after the "
        "second hour, besides the logbook's rows; at most %lld\n",
        result.frames, result.scored, result.kept, result.lessons, growth,
        static_cast<long long>(most_growth_bytes));
    return growth <= most_growth_bytes ? 0 : 1;
}
