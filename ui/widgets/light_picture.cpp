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

ImVec2 light_picture_size(float height, const LightPicture& picture) {
    const std::size_t lamps = picture.white_fraction.empty() ? usual_lamps : picture.white_fraction.size();
    const std::size_t across = picture.stacked ? 1 : lamps;
    return {std::round(height * (0.80f * static_cast<float>(across) + 0.20f)), std::round(height)};
}

ImVec2 draw_light_picture(ImDrawList* list, ImVec2 position, float height, const LightPicture& picture) {
    const ImVec2 size = light_picture_size(height, picture);
    list->AddRectFilled(position, {position.x + size.x, position.y + size.y}, theme().colour.shelf,
                        size.y * 0.18f);
    const float lamps = static_cast<float>(picture.white_fraction.size());
    const float pitch = size.y * (picture.stacked ? 0.46f : 0.80f),
                radius = size.y * (picture.stacked ? 0.20f : 0.27f);
    const ImVec2 step = picture.stacked ? ImVec2{0, pitch} : ImVec2{pitch, 0};
    ImVec2 centre{position.x + (size.x - step.x * (lamps - 1)) / 2,
                  position.y + (size.y - step.y * (lamps - 1)) / 2};
    for (const double white : picture.white_fraction) {
        list->AddCircleFilled(centre, radius, lamp_ink(white), 24);
        centre = {centre.x + step.x, centre.y + step.y};
    }
    return size;
}

}  // namespace slopewise
