#include "ui/widgets/light_picture.h"

#include <algorithm>
#include <cmath>

#include "ui/theme.h"

namespace slopewise {

namespace {

constexpr std::size_t usual_lamps = 4;

ImU32 lamp_ink(double white_fraction) {
    const ImVec4 red = ImGui::ColorConvertU32ToFloat4(theme().colour.lamp_red),
                 white = ImGui::ColorConvertU32ToFloat4(theme().colour.lamp_white);
    const float w = static_cast<float>(std::clamp(white_fraction, 0.0, 1.0));
    return ImGui::ColorConvertFloat4ToU32(
        {red.x + (white.x - red.x) * w, red.y + (white.y - red.y) * w, red.z + (white.z - red.z) * w, 1.0f});
}

}  // namespace

ImVec2 light_picture_size(float height, std::size_t lamps) {
    return {std::round(height * (0.80f * static_cast<float>(std::max<std::size_t>(lamps, 1)) + 0.20f)),
            std::round(height)};
}

ImVec2 draw_light_picture(ImDrawList* list, ImVec2 position, float height, const LightPicture& picture) {
    const std::size_t lamps = picture.white_fraction.empty() ? usual_lamps : picture.white_fraction.size();
    const ImVec2 size = light_picture_size(height, lamps);
    list->AddRectFilled(position, {position.x + size.x, position.y + size.y}, theme().colour.shelf,
                        size.y * 0.18f);
    const float pitch = size.y * 0.80f, radius = size.y * 0.27f;
    float x = position.x + size.x / 2 - pitch * static_cast<float>(lamps - 1) / 2;
    for (const double white : picture.white_fraction) {
        const ImVec2 centre{x, position.y + size.y / 2};
        if (white >= 0) list->AddCircleFilled(centre, radius, lamp_ink(white), 24);
        else list->AddCircle(centre, radius, theme().colour.dial_soft, 24, 1.0f);  // shows nothing
        x += pitch;
    }
    return size;
}

}  // namespace slopewise
