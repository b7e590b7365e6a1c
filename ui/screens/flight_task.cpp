#include "ui/screens/flight_task.h"

#include "ui/widgets/paper.h"
#include "ui/widgets/tag.h"

namespace slopewise {

float draw_flight_task(ImDrawList* list, ImVec2 place, float width, const FlownDrillView& drill) {
    if (!drill.there()) return place.y;
    const Palette& c = theme().colour;
    float y = place.y;
    for (std::string_view rest = drill.share; !rest.empty();) {
        const std::string_view line = take_line(rest, TextSize::note, width);
        y += draw_tag(list, {place.x, y}, line, {c.strip, c.dial_ink}).y;
    }
    for (std::string_view rest = drill.task; !rest.empty();) {
        const std::string_view line = take_line(rest, TextSize::note, width, true);
        y += draw_tag(list, {place.x, y}, line,
                      {c.paper, drill.called ? c.attention : c.ink, true, drill.called})
                 .y;
    }
    return y + grid(1);
}

}  // namespace slopewise
