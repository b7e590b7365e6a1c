#include <cmath>

#include "ui/format.h"
#include "ui/input.h"
#include "ui/views.h"

namespace slopewise {
namespace {

std::string true_size_words(const Display& display) {
    const double share = share_of_true_size(display);
    const std::string field = number_words(horizontal_fov_deg) + "\u00b0";
    if (share == 0)
        return "State both to learn how large the view is shown: it is " + field + " across, always.";
    const std::string wide = number_words(true_width_cm(display.viewing_distance_cm)) + " cm";
    if (std::abs(share - 1.0) < 0.05) return "The view is shown in its true size: " + wide + " wide.";
    return "For true size the view of " + field + " would have to be " + wide + " wide; it is shown at " +
           number_words(share, 1) + " of that.";
}

}  // namespace

ScreenAndHelpView screen_and_help_view(const Settings& settings, bool in_flight) {
    ScreenAndHelpView view;
    view.true_size = true_size_words(settings.display);
    // Where a press holds, there is nothing to hold.
    const auto key_to = [&](KeyCommand command) {
        return (settings.keys.sticky ? "Press " : "Hold ") + key_cap(settings.keys.key_of(command));
    };
    view.help = {
        "With eyes outside the panel is dark. " + key_to(KeyCommand::look_in) +
            ", or a finger on the dials, to look in; each look is counted for the summary.",
        key_to(KeyCommand::path_help) +
            " for the path help: for three seconds a bar beside the runway shows where the aim point "
            "belongs. Bar above the aim point: you are high. Level: on the path, or coming back to it well. "
            "None "
            "below 200 ft.",
        "Each third run is flown unaided until the path help is no longer needed: it shows what you do "
        "without. Runs with help at hand count in no trend.",
        "Letters and shapes in the magnifier help who confuses red and white. A screen is no test of "
        "colour vision.",
        "A night approach needs a dark room: a projector turns black into grey."};
    view.keys = key_hints(settings);
    view.keys.push_back({"Q", "on a sheet: where its numbers come from"});
    view.in_flight = in_flight;
    return view;
}

}  // namespace slopewise
