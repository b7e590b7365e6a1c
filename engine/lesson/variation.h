// What changes from run to run, out of a seed that is shown: the same seed and run give the same flight to
// everyone.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "base/units.h"
#include "lesson/lesson.h"

namespace slopewise {

// The first runs of a lesson are all alike, the later ones shuffled. That varied practice is learned faster
// and stays: Huet, Jacobs, Camachon, Missenard and Montagne 2011, J Exp Psychol HPP 37, 1841-1854 (abstract
// read). The numbers below are common practice, no source.
inline constexpr int blocked_runs = 3;
inline constexpr std::array<double, 3> varied_offsets_deg{0.7, 0.0, -0.7};
// Only begun with room to mend it before the gate: from this distance on.
inline constexpr double varied_offset_from_m = m_from_nm(1.5);
inline constexpr std::array<double, 3> varied_headwinds_kt{0.0, 8.0, 15.0};

// The lesson as its run `run_number` (1 is the first) begins. Offsets and winds come in shuffled threes, so
// that each comes once before any comes again; so do the runways and the set-ups. The seed of the turbulence
// changes too. Nothing else does.
Lesson varied(const Lesson& lesson, int run_number, std::uint64_t seed);

// The lesson as one of its set-ups begins it; `set_up` is less than their number.
Lesson with_set_up(const Lesson& lesson, std::size_t set_up);

// Index of the set-up that a run begins with; -1: the lesson has none.
int set_up_of_run(const Lesson& lesson, int run_number, std::uint64_t seed);

// What is not as the lesson has it, for the record: "start 0.7° high, headwind 8 kt, at sandholm"; or "as the
// lesson has it".
std::string variation_words(const Lesson& lesson, const Lesson& flown);

// ---- backward chaining: the last piece first, then from further out ----
// Wightman and Sistrunk 1987, Human Factors 29: final approaches learned from the end backwards transferred
// better than the same number of whole ones (abstract read).

// The lesson begun at one start of its chain (0 the nearest), on the path; the lesson itself where it has no
// chain. A step beyond the last is the last.
Lesson at_chain_step(const Lesson& lesson, int step);

// A step further out after so many unaided runs in succession met the criterion (common practice, no source).
inline constexpr int chain_passes = 2;

// The step that is due after these unaided runs of the lesson, the oldest first; from 0.
int chain_step(const Lesson& lesson, const std::vector<bool>& passed);

}  // namespace slopewise
