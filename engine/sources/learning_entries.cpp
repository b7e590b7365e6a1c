#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic learning = SourceTopic::learning;

constexpr std::string_view biau = "Biau et al., British Journal of Surgery 95 (2008), 925\u2013929";

constexpr TaughtNumber entries[] = {
    {"curve_method", learning, "The learning curve is an LC-CUSUM: it tests whether failures are rare.", biau,
     "in its abstract", secondary},
    {"curve_rates", learning,
     "Failing 40 % is inadequate, failing 15 % adequate; it signals at 2.5, strictly at 3.0.", "", "",
     common_practice},
    {"curve_scores", learning, "A pass adds 0.348, a failure takes off 0.981.", biau,
     "logarithms of the ratios of those rates", calculated},
    {"curve_errors", learning, "Of students who still fail 40 %, 24 in 100 reach 2.5 within 30 attempts.",
     "Simulation", "of students drawn at random", calculated},
    {"trend_median", learning, "A trend is the median of 5 unaided runs.", "", "", common_practice},
    {"session_gap", learning, "Runs more than 4 hours apart are of different sessions.", "", "",
     common_practice},
    {"session_end", learning,
     "Stop for today after 20 minutes flown, 10 runs, or 3 runs each worse than the one before.", "", "",
     common_practice},
    {"refresher", learning, "A refresher is due after 14 days.", "", "", common_practice},
    {"evidence_lights", learning, "Evidence, lights: 20 items, 95 % right, half of them within 1.5 s.", "",
     "", common_practice},
    {"evidence_picture", learning, "Evidence, picture: bias under 0.25\u00b0, 80 % right at half a degree.",
     "", "", common_practice},
    {"evidence_decisions", learning,
     "Evidence, decisions: none missed of the last 10, at least 3 of them unstable.", "", "",
     common_practice},
    {"evidence_days", learning,
     "Evidence, days: the first approach of a new day in tolerance on 2 of 3 days.", "", "", common_practice},
    {"evidence_variants", learning,
     "Evidence, variants: passed with the lights hidden, with the airspeed hidden, in 15 kt of headwind.", "",
     "", common_practice},
};

}  // namespace

std::span<const TaughtNumber> learning_entries() { return entries; }

}  // namespace slopewise
