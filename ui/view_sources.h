// What the sheet "Where the numbers come from" shows.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct SourcesView {
    enum class Trust { read, between, unconfirmed };  // between: in a secondary place, calculated, common

    struct Entry {
        std::string says;      // "A unit turns from red to white within 3 minutes of arc: 5 ft at 1 NM."
        std::string place;     // "ICAO Annex 14, Volume I: 5.3.5"; empty: none
        std::string how_sure;  // "read in a secondary place"
        Trust trust = Trust::between;
    };
    struct Group {
        std::string title;  // "Lights"
        std::vector<Entry> entries;
    };

    std::vector<std::string> topics;  // "All", "Lights" ...
    int topic = 0;                    // chosen, into `topics`
    std::vector<Group> groups;
    std::string count;  // how many there are, and how sure they are
    std::string back;   // "Back to the briefing"
};

}  // namespace slopewise
