// How the benchmark measures: the quickest of several runs, since whatever else the machine does only ever
// slows.
#pragma once

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <string>

namespace slopewise::bench {

// Seconds that the quickest of `runs` calls of `work` takes.
template <class Work>
double quickest_s(int runs, Work&& work) {
    using Clock = std::chrono::steady_clock;
    double best = 1e9;
    for (int i = 0; i < runs; ++i) {
        const Clock::time_point begin = Clock::now();
        work();
        const double taken = std::chrono::duration<double>(Clock::now() - begin).count();
        if (taken < best) best = taken;
    }
    return best;
}

inline void print_heading() { std::puts("what,ticks,ns_per_tick,approach_ms,approaches_per_s,error_m"); }

// One line of the CSV. error_m: of the position at the end; negative: not measured.
inline void print_row(const std::string& what, std::int64_t ticks, double seconds, double error_m = -1.0) {
    std::printf("%s,%lld,%.1f,%.3f,%.1f,", what.c_str(), static_cast<long long>(ticks),
                1e9 * seconds / static_cast<double>(ticks), 1e3 * seconds, 1.0 / seconds);
    if (error_m >= 0.0) std::printf("%.3g", error_m);
    std::putchar('\n');
    std::fflush(stdout);
}

}  // namespace slopewise::bench
