// Cards of "find the fault": a flawed approach is played; when did it show, and what was it?
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"
#include "record/recording.h"
#include "review/criteria.h"
#include "review/diagnosis/diagnosis.h"

namespace slopewise {

// One flawed approach, to be played as any recording is.
struct FaultFlight {
    Scenario scenario;
    Recording recording;
    Track track;
    Diagnosis diagnosis;
};

// The approach of a model pilot from a start, whole; null where the pilot has no such name, or the start
// cannot be flown.
std::shared_ptr<const FaultFlight> fly_fault(const FaultCards::Flight& flight, const Scenario& base,
                                             const Criteria& criteria, std::uint64_t seed);

struct FaultDeck {
    std::vector<Card> cards;
    std::vector<std::shared_ptr<const FaultFlight>> flights;  // Card::flight is the place here
};

// The fault is the one that the diagnosis puts first, and its moments are the diagnosis's; a flight it finds
// nothing in is not shown. The choices are that fault and three others that it did not find, by their titles.
FaultDeck fault_deck(const FaultCards& settings, int items, const Scenario& base, const Criteria& criteria,
                     std::uint64_t seed);

// Whether a mark lies within the evidence: about one of its moments, or anywhere where the fault shows all
// the time.
bool mark_is_in_time(const FaultCards& settings, const Card& card, double mark_s);

}  // namespace slopewise
