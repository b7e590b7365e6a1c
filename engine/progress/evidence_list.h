// What there is evidence of, and what not yet, before an instructor and a student talk about a first landing
// lesson. The list shows evidence; the instructor decides. It never says that anyone is ready to land.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "progress/attempt_row.h"
#include "progress/cusum.h"

namespace slopewise {

// From the drills, which are no flights; each is empty where the drill was not done.
struct DrillResults {
    struct Lamps {
        int items = 0;
        double right_share = 0.0, median_s = 0.0;
    };
    struct Pictures {
        double bias_rad = 0.0, right_share = 0.0;
    };
    std::optional<Lamps> lamps;
    std::optional<Pictures> pictures;
    std::optional<bool> knowledge;
};

struct EvidenceItem {
    std::string what;  // "Lights read at a glance: 20 of them, 95 % right, half within 1.5 s"
    bool complete = false;
    std::string found;  // "18 of 20 right, median 1.2 s"; "not done"
};

// Seven items; times are taken as UTC days.
std::vector<EvidenceItem> evidence_list(std::span<const AttemptRow> rows, const CusumParameters& parameters,
                                        const DrillResults& drills);

// "evidence complete" or "3 of 7 items: not yet complete".
std::string evidence_words(std::span<const EvidenceItem> items);

}  // namespace slopewise
