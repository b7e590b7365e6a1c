#include "review/diagnosis/diagnosis.h"

#include <algorithm>

#include "review/diagnosis/detectors.h"

namespace slopewise {

bool Diagnosis::finds(std::string_view id) const {
    return std::ranges::any_of(findings, [&](const Finding& finding) { return finding.fault->id == id; });
}

Diagnosis diagnose(const Approach& approach) {
    Diagnosis diagnosis;
    bool told = false;
    for (const Fault& fault : faults()) {
        Evidence evidence = fault.detect(approach);
        if (evidence.strength < 1.0) continue;
        told |= fault.tells_of_going_around;
        diagnosis.findings.push_back({&fault, std::move(evidence)});
    }
    const auto& findings = diagnosis.findings;
    if (told && findings.front().fault->detect == detect::pressed_on)
        std::ranges::rotate(diagnosis.findings, diagnosis.findings.begin() + 1);
    return diagnosis;
}

}  // namespace slopewise
