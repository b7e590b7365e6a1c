// Who flew an attempt, when, with what help, and what they thought of it before they were told: kept with the
// recording, and no part of the flight.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace slopewise {

struct RecordedAids {
    double guide_s = 0.0;  // the path guide shown
    int guide_calls = 0;
    bool guide_ready = false;  // it could have come by itself
    int call_outs = -1;        // made by the instructor's voice; -1: it was off
    int pauses = 0;
    int peeks = -1;             // looks inside while the panel was dark; -1: it was not
    double panel_share = -1.0;  // of the time, looking inside; -1: not measured
    double longest_peek_s = -1.0;
    bool side_profile = false;                       // the path from the side, while flying
    bool magnifier = false;                          // of the lights
    bool lamp_letters = false, lamp_shapes = false;  // beside the lights' colours
    bool lights_hidden = false;
    bool airspeed_hidden = false;
    std::vector<std::string> covered, failed;  // instruments by name, at any time of the scored part
    double partner_s = 0.0;                    // the other pilot flew what the lesson gives to the student
    double lost_s = 0.0;  // by the clock on the wall and not flown: the machine was too slow

    // Nothing showed the path that an aeroplane would not show, nor stood ready to: were help that did not
    // come counted as none, good attempts would count and poor ones would not. Only unaided attempts count in
    // trends.
    bool unaided() const {
        return guide_s == 0.0 && guide_calls == 0 && !guide_ready && call_outs < 0 && !side_profile &&
               partner_s == 0.0;
    }
};

// Before the sheet opens, the student says how it was.
struct Estimate {
    enum class Path { low, on, high };
    enum class Speed { slow, on, fast };
    Path path = Path::on;
    Speed speed = Speed::on;
    bool stable_at_gate = true;
};

struct Circumstances {
    std::string student;              // name or code
    std::int64_t started_unix_s = 0;  // 0: not known
    std::string device;               // "keyboard"
    std::string version;              // of the program that recorded it
    RecordedAids aids;
    std::optional<Estimate> estimate;
};

}  // namespace slopewise
