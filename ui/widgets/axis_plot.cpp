#include "ui/widgets/axis_plot.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr std::size_t room = 180;  // points across: what the sheet keeps

struct Frame {
    ImVec2 min, max;

    // The newest point lies at the right edge.
    ImVec2 at(std::size_t i, std::size_t count, float value) const {
        const float ago = static_cast<float>(count - 1 - i) / static_cast<float>(room - 1);
        const float middle = (min.y + max.y) / 2, half = (max.y - min.y) / 2;
        return {max.x - std::min(ago, 1.0f) * (max.x - min.x),
                middle - half * std::clamp(value, -1.0f, 1.0f)};
    }
};

void draw_trace(ImDrawList* list, const Frame& frame, const std::vector<float>& trace, ImU32 ink,
                float width) {
    for (std::size_t i = 1; i < trace.size(); ++i)
        list->AddLine(frame.at(i - 1, trace.size(), trace[i - 1]), frame.at(i, trace.size(), trace[i]), ink,
                      width);
    if (!trace.empty())
        list->AddCircleFilled(frame.at(trace.size() - 1, trace.size(), trace.back()), 1.6f * width, ink, 16);
}

}  // namespace

void axis_plot(Column& column, const std::vector<float>& given, const std::vector<float>& made, bool flies) {
    const Palette& c = theme().colour;
    const float line = std::max(1.0f, std::round(grid(0.1875f)));
    const float height = grid(flies ? 9 : 5), edge = grid(0.75f);
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, std::round(min.y + height)};
    column.list->AddRectFilled(min, max, c.band);
    column.list->AddRect(min, max, c.rule, 0, 0, line);
    const Frame frame{{min.x + edge, min.y + edge}, {max.x - edge, max.y - edge}};
    const float middle = std::round((min.y + max.y) / 2);
    column.list->AddLine({frame.min.x, middle}, {frame.max.x, middle}, c.rule, line);
    draw_trace(column.list, frame, given, c.ink_soft, line);
    if (flies) draw_trace(column.list, frame, made, c.accent, 2.5f * line);
    column.y = max.y;
}

}  // namespace slopewise
