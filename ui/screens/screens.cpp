#include "ui/screens/screens.h"

#include "ui/theme.h"

namespace slopewise {

Actions draw_screen(Screen screen, const View& view, UiState& ui) {
    wear_look(view.display.look, view.display.projector_text);
    switch (screen) {
    case Screen::choices: return draw_choices(view);
    case Screen::stick_sense: return draw_stick_sense(view);
    case Screen::briefing: return draw_briefing(view);
    case Screen::flight: return draw_flight(view, ui);
    case Screen::summary: return draw_summary(view);
    case Screen::screen_and_help: return draw_screen_and_help(view);
    case Screen::where_and_when: return draw_where_and_when(view);
    }
    return {};
}

}  // namespace slopewise
