// The golden flights: one list, flown by every build.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "data/catalog.h"
#include "lesson/attempt.h"

namespace slopewise::golden {

struct GoldenFlight {
    std::string name;
    Scenario scenario;
    std::function<void(const Scenario&, Attempt&)> fly;  // from its beginning to its end
};

// Every shipped lesson by the good pilot; the three aircraft in wind, turbulence, gusts, sink and shear; each
// kind of failure; each model pilot; hands that know nothing; a go-around.
std::vector<GoldenFlight> golden_flights(const Catalog& catalog);

}  // namespace slopewise::golden
