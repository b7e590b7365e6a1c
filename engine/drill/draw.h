// Drawing from a seed: the same sequence for everyone who has it.
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "base/interpolate.h"
#include "base/random.h"
#include "drill/drill.h"

namespace slopewise {

inline double draw_between(Random& random, double least, double most) {
    return lerp(least, most, next_uniform(random));
}
inline double draw_from(Random& random, const Interval& interval) {
    return draw_between(random, interval.least, interval.most);
}

// 0 to count - 1.
inline std::size_t draw_index(Random& random, std::size_t count) {
    return static_cast<std::size_t>(next_uniform(random) * static_cast<double>(count));
}

// -1 or +1.
inline double draw_sign(Random& random) { return next_uniform(random) < 0.5 ? -1.0 : 1.0; }

// Fisher and Yates's shuffle, as Knuth gives it (The Art of Computer Programming, vol. 2, algorithm P; from
// memory).
template <class T>
void shuffle(Random& random, std::vector<T>& all) {
    for (std::size_t i = all.size(); i > 1; --i) std::swap(all[i - 1], all[draw_index(random, i)]);
}

// So many indices below `count`, each as often as the others or once more, shuffled round by round; none
// where there is nothing to draw from.
inline std::vector<std::size_t> draw_rounds(Random& random, std::size_t count, std::size_t wanted) {
    std::vector<std::size_t> all;
    if (count == 0) return all;
    while (all.size() < wanted) {
        std::vector<std::size_t> round;
        for (std::size_t i = 0; i < count; ++i) round.push_back(i);
        shuffle(random, round);
        all.insert(all.end(), round.begin(), round.end());
    }
    all.resize(wanted);
    return all;
}

}  // namespace slopewise
