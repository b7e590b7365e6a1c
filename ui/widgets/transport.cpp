#include "ui/widgets/transport.h"

#include <algorithm>
#include <cmath>

#include "ui/theme.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

// A triangle that points to the right, or to the left where `way` is -1; `reach` is half its width.
void arrow(ImDrawList* list, ImVec2 centre, float reach, float way, ImU32 ink) {
    const ImVec2 tip{centre.x + way * reach, centre.y}, top{centre.x - way * reach, centre.y - 1.15f * reach},
        bottom{centre.x - way * reach, centre.y + 1.15f * reach};
    if (way > 0) list->AddTriangleFilled(top, tip, bottom, ink);
    else list->AddTriangleFilled(tip, top, bottom, ink);
}

void upright_bar(ImDrawList* list, ImVec2 centre, float half_width, float half_height, ImU32 ink) {
    list->AddRectFilled({centre.x - half_width, centre.y - half_height},
                        {centre.x + half_width, centre.y + half_height}, ink);
}

void diamond(ImDrawList* list, ImVec2 centre, float half, ImU32 ink) {
    list->AddQuadFilled({centre.x, centre.y - half}, {centre.x + half, centre.y}, {centre.x, centre.y + half},
                        {centre.x - half, centre.y}, ink);
}

// `s` is a quarter of the sign's height.
void draw_sign(ImDrawList* list, ImVec2 c, float s, Sign sign, ImU32 ink) {
    const auto beside = [c, s](float steps) { return ImVec2{c.x + steps * s, c.y}; };
    switch (sign) {
    case Sign::play: arrow(list, c, 1.5f * s, 1, ink); break;
    case Sign::pause:
        upright_bar(list, beside(-0.9f), 0.45f * s, 1.7f * s, ink);
        upright_bar(list, beside(0.9f), 0.45f * s, 1.7f * s, ink);
        break;
    case Sign::step_back:
        arrow(list, beside(-0.6f), 0.9f * s, -1, ink);
        upright_bar(list, beside(1.1f), 0.22f * s, 1.1f * s, ink);
        break;
    case Sign::step_on:
        arrow(list, beside(0.6f), 0.9f * s, 1, ink);
        upright_bar(list, beside(-1.1f), 0.22f * s, 1.1f * s, ink);
        break;
    case Sign::mark_back:
        arrow(list, beside(1.0f), 0.9f * s, -1, ink);
        diamond(list, beside(-1.1f), 0.9f * s, ink);
        break;
    case Sign::mark_on:
        arrow(list, beside(-1.0f), 0.9f * s, 1, ink);
        diamond(list, beside(1.1f), 0.9f * s, ink);
        break;
    case Sign::slower: upright_bar(list, c, 1.2f * s, 0.25f * s, ink); break;
    case Sign::faster:
        upright_bar(list, c, 1.2f * s, 0.25f * s, ink);
        upright_bar(list, c, 0.25f * s, 1.2f * s, ink);
        break;
    }
}

}  // namespace

bool sign_button(ImDrawList* list, ImVec2 min, ImVec2 size, const char* name, Sign sign, bool live) {
    const Palette& c = theme().colour;
    const Press press = press_area(name, min, size);
    const ImVec2 max{min.x + size.x, min.y + size.y};
    const float corner = std::max(2.0f, grid(0.375f)), line = std::max(1.0f, std::round(grid(0.1875f)));
    if (live && press.hovered) list->AddRectFilled(min, max, c.band, corner);
    list->AddRect(min, max, live ? c.accent : c.rule, corner, 0, line);
    draw_sign(list, {(min.x + max.x) / 2, (min.y + max.y) / 2}, std::min(size.x, size.y) / 9, sign,
              live ? c.accent : c.rule);
    return live && press.pressed;
}

}  // namespace slopewise
