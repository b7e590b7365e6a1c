// Rows of an invented student for the logbook's tests.
#pragma once

#include <cstdio>
#include <string>

#include "base/units.h"
#include "ui/logbook.h"

namespace slopewise::test {

inline constexpr std::int64_t first_unix_s = 1795701900;  // 26 Nov 2026, 14:05 UTC

// The i-th attempt, eight a day ten minutes apart: learning, at first failing, every fifth aided.
inline IndexRow invented_row(int i, const std::string& student) {
    char id[32];
    std::snprintf(id, sizeof id, "%013lld-%08x", 1000LL * (first_unix_s + 600 * i), static_cast<unsigned>(i));
    IndexRow row;
    row.id = id;
    row.student = student;
    row.row.lesson = i % 3 == 2 ? "from_above" : "final_headwind";
    row.row.started_unix_s = first_unix_s + 86400LL * (i / 8) + 600LL * (i % 8);
    row.row.unaided = i % 5 != 3;
    row.row.duration_s = 150;
    row.row.path_rad = {rad_from_deg(i % 2 == 0 ? 0.3 : -0.2), rad_from_deg(0.4), rad_from_deg(0.5)};
    row.row.speed_mps = {mps_from_kt(-2.1), mps_from_kt(3.0), mps_from_kt(3.7)};
    row.row.gate_reached = true;
    row.row.stable_at_gate = i >= 4;
    row.row.decision = i >= 4 ? Decision::right : Decision::miss;
    row.row.priority_fault = i % 2 == 0 ? "ducking_under" : "";
    return row;
}

inline Logbook invented_logbook(int attempts, const std::string& student = "Kestrel 7") {
    Logbook logbook;
    logbook.standing = Logbook::Standing::open;
    for (int i = 0; i < attempts; ++i) logbook.rows.push_back(invented_row(i, student));
    ++logbook.edition;
    return logbook;
}

}  // namespace slopewise::test
