#include "ui/pads_view.h"

namespace slopewise {

void pads_view(const App& app, PadsView& view) {
    view.fingers = app.hands.fingers;
    view.wanted = app.settings.keys.thumb_pads;
    view.stick_left = app.settings.school.stick_hand == StickHand::left;
    view.up_pushes = app.settings.up_key_pushes.value_or(true);
    view.lever = app.hands.at.throttle;
}

}  // namespace slopewise
