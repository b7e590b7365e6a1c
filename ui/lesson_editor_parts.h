// The parts of a lesson that its editor shows otherwise than they are kept: places in the catalog, the kind
// of wind, the first gust.
#pragma once

#include <string>
#include <vector>

#include "data/catalog.h"

namespace slopewise {

// The place of a lesson's aircraft, or runway, among those there are; the first when it is none of them.
int aircraft_index(const Lesson& lesson, const Catalog& catalog);
int runway_index(const Lesson& lesson, const Catalog& catalog);

// Another aircraft brings its approach speed, its landing flap and its usual mass.
void set_aircraft(Lesson& lesson, int index, const Catalog& catalog);
void set_runway(Lesson& lesson, int index, const Catalog& catalog);

std::vector<std::string> flap_choices(const Lesson& lesson, const Catalog& catalog);

// A table begins with two heights, in the headwind there was.
void set_wind_kind(Lesson& lesson, Wind::Kind kind);
bool has_wind_table(const Lesson& lesson);
bool has_one_headwind(const Lesson& lesson);

// The first gust that a distance sets off; null when there is none.
const AirEvent* first_gust(const Lesson& lesson);
// Puts one there, or takes it away when its strength is 0. One more than a lesson holds is not put there.
void set_gust(Lesson& lesson, double along_mps);
void set_gust_place(Lesson& lesson, double distance_m);

// "2 failures, 1 sink patch or shear": what the editor leaves as it is; empty when there is nothing else.
std::string other_parts(const Lesson& lesson);

}  // namespace slopewise
