#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic cautions = SourceTopic::cautions;

constexpr std::string_view aim = "FAA Aeronautical Information Manual";

constexpr TaughtNumber entries[] = {
    {"caution_order", cautions, "Your flight manual, your instructor and the local rules come first.", "", "",
     common_practice},
    {"caution_device", cautions,
     "A ground study aid that no authority has approved: time may not be logged or credited.", "", "",
     common_practice},
    {"caution_invented", cautions, "The airfields and the aircraft are invented, and so are their numbers.",
     "", "", common_practice},
    {"caution_clearance", cautions,
     "The lights promise clear air only within 10\u00b0 of the centreline and, as a rule, to 3.4 NM.", aim,
     "2-1-2 b", read},
    {"caution_lined_up", cautions, "Do not start down by the lights before you are lined up.", aim, "2-1-2 b",
     read},
    {"caution_eye", cautions,
     "The lights tell the angle of your eye. In the four-seat tourer the wheels pass 7 ft lower.", "Geometry",
     "the aircraft's own data, level", calculated},
    {"caution_red", cautions, "No screen shows aviation red: its own red lies just outside of it.",
     "EASA CS-ADR-DSN", "U.930(a)(1), against the red of sRGB", calculated},
    {"caution_flare", cautions,
     "The flare is neither flown nor scored: practised on a screen it carried a lag into flight.",
     "Heffley, Schulman and Clement, NASA CR-166404 (1982)", "in its abstract", secondary},
};

}  // namespace

std::span<const TaughtNumber> caution_entries() { return entries; }

}  // namespace slopewise
