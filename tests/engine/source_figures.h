// The figures that the entries of the sources tell, held to the code.
#pragma once

#include <doctest/doctest.h>

#include <set>
#include <string_view>
#include <vector>

#include "tests/engine/told_figures.h"

namespace slopewise::test {

// Which entries have been held.
struct HeldFigures {
    std::set<std::string_view> ids;

    // The figures that the entry of this id tells are these, in its order, each rounded as it is written.
    void tells(std::string_view id, const std::vector<double>& expected);
};

void hold_what_is_seen(HeldFigures& held);
void hold_what_is_flown(HeldFigures& held);
void hold_what_is_judged(HeldFigures& held);

}  // namespace slopewise::test
