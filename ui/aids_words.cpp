// What helped or was kept back in a flight, for the sheet that is talked over.
#include "debrief/sheet_facts.h"
#include "ui/views.h"

namespace slopewise {

std::vector<std::string> names_of(const InstrumentSet& some) {
    std::vector<std::string> names;
    for (const InstrumentName& one : instrument_names) {
        if (some.*one.which) names.emplace_back(one.name);
    }
    return names;
}

std::string aids_words(const FlightSession& session) {
    return aids_sentence(session.recording.circumstances.aids);
}

}  // namespace slopewise
