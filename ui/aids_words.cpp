// What helped or was kept back in a flight, for the sheet that is talked over.
#include "base/units.h"
#include "ui/format.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& names) {
    std::string words;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) words += i + 1 == names.size() ? " and " : ", ";
        words += names[i];
    }
    return words;
}

std::vector<std::string> aid_names(const AidsUsed& aids) {
    std::vector<std::string> names;
    if (aids.magnifier) names.push_back("the magnifier");
    if (aids.lamp_letters) names.push_back("letters in it");
    if (aids.lamp_shapes) names.push_back("shapes in it");
    if (aids.side_profile) names.push_back("the side profile");
    return names;
}

std::vector<std::string> names_of(const InstrumentSet& some) {
    std::vector<std::string> names;
    for (const InstrumentName& one : instrument_names) {
        if (some.*one.which) names.emplace_back(one.name);
    }
    return names;
}

}  // namespace

std::string aids_words(const FlightSession& session) {
    const std::vector<std::string> aids = aid_names(session.aids);
    const std::vector<std::string> covered = names_of(session.aids.covered);
    const std::vector<std::string> failed = names_of(session.aids.failed);
    std::string words = "Aids: " + (aids.empty() ? "none" : listed(aids)) + ".";
    if (!covered.empty()) words += " Covered: " + listed(covered) + ".";
    if (!failed.empty()) words += " Failed: " + listed(failed) + ".";
    if (!session.aids.eyes_outside) return words;
    std::int64_t ticks = 0;
    for (const Peek& peek : session.peeks) ticks += peek.ticks;
    return words + " Eyes outside; peeks: " + std::to_string(session.peeks.size()) + ", total " +
           number_words(static_cast<double>(ticks) * tick_s, 1) + " s.";
}

}  // namespace slopewise
