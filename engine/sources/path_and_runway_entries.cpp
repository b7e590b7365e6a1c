#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic path = SourceTopic::path;
constexpr SourceTopic runway = SourceTopic::runway;

constexpr std::string_view annex14 = "ICAO Annex 14, Volume I";
constexpr std::string_view easa = "EASA CS-ADR-DSN";
constexpr std::string_view aim = "FAA Aeronautical Information Manual";
constexpr std::string_view flying = "FAA Airplane Flying Handbook, FAA-H-8083-3C";

constexpr TaughtNumber entries[] = {
    {"nominal_path", path, "The usual path is 3.0\u00b0.", aim,
     "2-1-2 a 2: a VASI is normally set to 3\u00b0", read},
    {"path_heights", path,
     "The path is 955 ft above the aim point at 3 NM, 637 ft at 2 NM, 318 ft at 1 NM and 159 ft at 0.5 NM.",
     "Geometry", "distance \u00d7 tan 3\u00b0", calculated},
    {"path_gradient", path, "A path of 3.0\u00b0 comes down 318 ft in 1 NM.", "FAA Order 8260.3",
     "optimum final descent, as pilots quote it; calculated here as well", secondary},
    {"aim_still", path, "The aim point is the one spot that does not move.", flying, "page 176", read},
    {"aim_below_horizon", path,
     "On a steady path the aim point stays equally far below the horizon all the way down.", flying,
     "page 176", read},
    {"start_off_path", path, "\"Above\" and \"Below\" start 0.7\u00b0 off the path.", "", "",
     common_practice},
    {"start_distances", path, "An approach starts 1, 2 or 3 NM from the aim point.", "", "", common_practice},
    {"view_width", path, "The view is 40\u00b0 across, always.", "", "", common_practice},
    {"true_size", path, "True size: the picture is 2 \u00d7 the viewing distance \u00d7 tan 20\u00b0 wide.",
     "Geometry", "the chord of the view's angle", calculated},
    {"width_trap", path,
     "From 1 NM, a runway 18 m wide made to look like one of 30 m is flown at 1.8\u00b0, one 45 m wide at "
     "4.5\u00b0.",
     "Geometry", "equal form ratio (Mertens, FAA-AM-79-25); which way: FAA AIM 8-1-5", calculated},
    {"slope_trap", path,
     "From 1 NM, a runway that rises by 2 % made to look level is flown at 1.9\u00b0, one that falls by 2 % "
     "at "
     "4.1\u00b0.",
     "Geometry", "equal form ratio (Mertens, FAA-AM-79-25); which way: FAA AIM 8-1-5", calculated},
    {"dark_ground", path, "Over dark ground, pilots in a study held 2.2\u00b0 on average.",
     "Mertens and Lewis, FAA-AM-82-6", "its abstract", secondary},

    {"aim_marking", runway,
     "The aim point lies 150 m beyond the threshold of a runway under 800 m, 250 m under 1,200 m, 300 m "
     "under 2,400 m, and 400 m beyond that of a longer one.",
     easa, "L.540, table L-1", read},
    {"aim_origin", runway, "The slope lights' path begins where the aiming-point marking begins.", easa,
     "L.540, table L-1, note a", read},
    {"edge_lights", runway, "Edge lights stand at most 60 m apart.", annex14, "5.3.9, not seen", memory},
    {"approach_lights", runway,
     "Simple approach lights reach out to 420 m, a light every 60 m, with a crossbar 30 m wide at 300 m.",
     annex14, "5.3.4, not seen", memory},
    {"end_lights", runway, "The threshold's lights are green, those of the far end red.", aim, "2-1-4 c",
     read},
    {"runway_lights_lit", runway,
     "Runway lights are lit at dusk, at night, in rain, and when the visibility is under 8 km.", "", "",
     common_practice},
    {"visibilities", runway, "The visibility is 3, 5, 10 or 30 km.", "", "", common_practice},
    {"usual_flare", runway, "A usual flare adds 197 to 656 ft to where the path meets the runway.", "", "",
     common_practice},
};

}  // namespace

std::span<const TaughtNumber> path_and_runway_entries() { return entries; }

}  // namespace slopewise
