// What the sheet about controllers remembers: the device shown, its last seconds, and a calibration that
// runs.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "ui/controller.h"
#include "ui/controller_book.h"

namespace slopewise {

enum class CalibrationStep { none, let_go, pull, push, close_lever, open_lever };

struct Calibration {
    CalibrationStep step = CalibrationStep::none;
    std::int32_t instance = -1;  // of the device
    ControllerSetting setting;   // as it will be kept; until then nothing is changed
    std::array<double, most_axes> begun{}, lowest{}, highest{};  // of the step that runs
    std::array<double, most_axes> rest{};                        // when it was let go
    int stick = -1, lever = -1;                                  // the axes that were found
    double pulled = 0;                                           // what the stick gave when pulled
    bool set_anything = false;
};

struct ControllerDesk {
    ControllerReadings now;
    std::int32_t shown = -1;  // the instance of the device shown
    std::string news;         // what came, went or became of a calibration
    Calibration calibration;
    std::array<std::vector<float>, most_axes> raw_trace, shaped_trace;  // oldest first
    double sampled_s = 0;
};

// The device shown: the one chosen while it is connected, else the first; null when none is.
const ControllerReading* shown_controller(const ControllerDesk& desk);

// Once a frame: what comes and goes, and while the sheet is open the trace of the device shown. True when a
// device has gone since the last frame.
bool follow_controllers(ControllerDesk& desk, const ControllerReadings& now, const ControllerBook& book,
                        double wall_s, bool sheet_open);

// The steps of a calibration, of the device shown. Nothing is changed before its last step; one that found
// nothing says so and stays. True when the book has been changed.
void begin_calibration(ControllerDesk& desk, const ControllerBook& book);
bool next_calibration_step(ControllerDesk& desk, ControllerBook& book, bool skip);
void leave_calibration(ControllerDesk& desk);
// Once a frame while one runs: how far each axis has moved.
void follow_calibration(ControllerDesk& desk);
// The axis that has moved most since the step began, when that was far enough to be meant; else -1.
int axis_moved_most(const ControllerDesk& desk);

}  // namespace slopewise
