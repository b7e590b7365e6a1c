#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic lights = SourceTopic::lights;

constexpr std::string_view maker = "FAA AC 150/5345-28 and AC 150/5340-30";
constexpr std::string_view annex14 = "ICAO Annex 14, Volume I";
constexpr std::string_view easa = "EASA CS-ADR-DSN";
constexpr std::string_view aim = "FAA Aeronautical Information Manual";

constexpr TaughtNumber entries[] = {
    {"papi_settings", lights,
     "PAPI on a 3.0\u00b0 path: its four units turn white above 3.50\u00b0, 3.17\u00b0, 2.83\u00b0 and "
     "2.50\u00b0.",
     maker, "setting angles, as a maker's manual gives them (table 8)", secondary},
    {"papi_pictures", lights,
     "All white above 3.5\u00b0, three white at 3.2\u00b0, two and two at 3.0\u00b0, one white at "
     "2.8\u00b0, all red below 2.5\u00b0.",
     aim, "2-1-2, figure 2-1-5", read},
    {"papi_order", lights,
     "On the path the two units nearest the runway are red, the two farthest from it white.", easa,
     "M.645(b)(2)(i)", read},
    {"papi_band", lights, "Two white and two red are 0.33\u00b0 deep: 35 ft at 1 NM, 18 ft at 0.5 NM.",
     "Geometry", "distance \u00d7 the tangents of the setting angles", calculated},
    {"papi_band_near", lights, "The same is 22 ft deep at 200 ft, and 6 ft at 50 ft.", "Geometry",
     "on a 3\u00b0 path, by the setting angles", calculated},
    {"papi_blend", lights, "A unit turns from red to white within 3 minutes of arc: 5 ft at 1 NM.", annex14,
     "5.3.5, as an encyclopaedia gives it", secondary},
    {"papi_harmonised", lights,
     "PAPI set for a glide path of 3.0\u00b0: 3.58\u00b0, 3.25\u00b0, 2.75\u00b0 and 2.42\u00b0.", maker,
     "setting angles, as a maker's manual gives them (table 8)", secondary},
    {"papi_place", lights, "PAPI: the inner unit is 15 m from the runway's edge, the units 9 m apart.",
     "UFC 3-535-01 (2005)", "12-3", read},
    {"apapi_settings", lights,
     "APAPI on a 3.0\u00b0 path: its two units turn white above 3.25\u00b0 and 2.75\u00b0.", maker,
     "setting angles, as a maker's manual gives them (table 9)", secondary},
    {"apapi_picture", lights, "APAPI: one red and one white on the path; both white high, both red low.",
     easa, "M.645(b)(3)", read},
    {"apapi_place", lights, "APAPI: the inner unit is 10 m from the runway's edge, the units 6 m apart.",
     "ICAO Doc 9157, Part 4", "10 m as an encyclopaedia gives it, 6 m remembered", memory},
    {"vasi_settings", lights,
     "VASI on a 3.0\u00b0 path: the near bar turns white above 2.75\u00b0, the far bar above 3.25\u00b0.",
     annex14, "setting angles, not seen", memory},
    {"vasi_picture", lights,
     "VASI: the far bar red over the near bar white is on the path; both white high, both red low.",
     "Horonjeff et al., Planning and Design of Airports, 5th ed.", "figure 8-6", read},
    {"vasi_blend", lights, "A VASI bar passes through mixed shades, here over 0.25\u00b0.", "", "",
     common_practice},
    {"light_side", lights, "The lights stand on the left unless that is impracticable.", easa, "M.645(b)(1)",
     read},
    {"light_beam", lights, "A unit shows within 15\u00b0 either side of its axis.", "", "", common_practice},
    {"light_intensity", lights, "A unit sends 15,000 cd towards the approach by day.", annex14,
     "intensity figures, not seen", memory},
    {"light_threshold", lights,
     "A lamp is noticed from 0.0001 lux by day, 0.00001 at dusk and 0.0000008 at night.", "ICAO Annex 3",
     "visual thresholds for runway visual range, not seen", memory},
};

}  // namespace

std::span<const TaughtNumber> light_entries() { return entries; }

}  // namespace slopewise
