#include "ui/widgets/controls.h"

#include <algorithm>
#include <cmath>

// For SetKeyOwner alone: a focused slider, or a screen that is gone, keeps keys from moving the focus.
#include <imgui_internal.h>

namespace slopewise {
namespace {

constexpr float least_finger_px = 44;

float corner() { return std::max(2.0f, grid(0.375f)); }
float line_width() { return std::max(1.0f, std::round(grid(0.1875f))); }

// A colour moved towards another, in whole hundredths: the paper's only change under the pointer.
ImU32 mixed(ImU32 from, ImU32 to, int percent) {
    ImU32 result = 0;
    for (int shift = 0; shift < 32; shift += 8) {
        const int a = static_cast<int>((from >> shift) & 255u);
        const int b = static_cast<int>((to >> shift) & 255u);
        result |= static_cast<ImU32>(a + (b - a) * percent / 100) << shift;
    }
    return result;
}

struct ButtonLook {
    ImU32 fill, outline, ink, soft, ring;
};

ButtonLook look_of(Weight weight, const Press& press) {
    const Palette& c = theme().colour;
    const int touched = press.held ? 24 : (press.hovered ? 12 : 0);
    switch (weight) {
    case Weight::primary: {
        const ImU32 fill = mixed(c.accent, c.ink, 3 * touched);
        return {fill, fill, c.accent_ink, mixed(c.accent_ink, c.accent, 25), c.ink};
    }
    case Weight::plain: return {mixed(c.paper, c.accent, touched), c.accent, c.accent, c.ink_soft, c.ink};
    case Weight::quiet: return {mixed(c.paper, c.accent, touched), 0, c.accent, c.ink_soft, c.ink};
    case Weight::shelf:
        return {mixed(c.shelf, c.dial_ink, touched), mixed(c.shelf_edge, c.dial_soft, 40), c.dial_ink,
                c.dial_soft, c.dial_ink};
    }
    return {};
}

float key_gap() { return grid(1); }

}  // namespace

float press_height() {
    return std::max(least_finger_px,
                    std::round(theme().size[static_cast<std::size_t>(TextSize::text)] * 2.0f));
}

float button_width(const ButtonWords& words) {
    float width = text_extent(TextSize::text, words.label, true).x +
                  2 * grid(words.weight == Weight::quiet ? 1.0f : 2.5f);
    if (words.key[0] != '\0') width += key_gap() + text_extent(TextSize::note, words.key).x;
    return std::ceil(std::max(width, words.weight == Weight::primary ? grid(18) : least_finger_px));
}

Press press_area(const char* name, ImVec2 min, ImVec2 size) {
    ImGui::SetCursorScreenPos(min);
    const bool clicked = ImGui::InvisibleButton(name, size);
    const bool dragged = sheet_is_dragged();
    return {clicked && !dragged, ImGui::IsItemHovered() && !dragged, ImGui::IsItemActive() && !dragged,
            ImGui::IsItemFocused() && ImGui::GetIO().NavVisible};
}

void keep_held_keys_from_focus() {
    constexpr ImGuiKey move_focus[] = {ImGuiKey_UpArrow, ImGuiKey_DownArrow, ImGuiKey_LeftArrow,
                                       ImGuiKey_RightArrow, ImGuiKey_Tab};
    const ImGuiID nobody = ImHashStr("the screen before");
    for (const ImGuiKey key : move_focus) {
        if (ImGui::IsKeyDown(key)) ImGui::SetKeyOwner(key, nobody);
    }
}

void hide_focus() {
    ImGui::GetCurrentContext()->NavDisableHighlight = true;
    ImGui::GetIO().NavVisible = false;
}

void keep_arrows_from_focus() {
    const ImGuiID sheet = ImHashStr("the sheet itself");
    for (const ImGuiKey key : {ImGuiKey_UpArrow, ImGuiKey_DownArrow, ImGuiKey_LeftArrow, ImGuiKey_RightArrow})
        ImGui::SetKeyOwner(key, sheet);
}

void let_keys_move_focus(bool on) {
    ImGuiIO& io = ImGui::GetIO();
    if (on) io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    else io.ConfigFlags &= ~ImGuiConfigFlags_NavEnableKeyboard;
}

void focus_ring(ImDrawList* list, ImVec2 min, ImVec2 max, ImU32 colour) {
    const float away = std::max(3.0f, grid(0.375f));
    list->AddRect({min.x - away, min.y - away}, {max.x + away, max.y + away}, colour, corner() + away, 0,
                  std::max(2.0f, line_width()));
}

bool button(ImDrawList* list, ImVec2 min, ImVec2 size, const ButtonWords& words) {
    Press press = press_area(words.label, min, size);
    if (words.weight == Weight::primary) {
        // Focusing what is not wholly in sight would scroll to it, past everything there is to read.
        const float bottom = ImGui::GetWindowPos().y + ImGui::GetWindowHeight();
        if (min.y + size.y <= bottom) ImGui::SetItemDefaultFocus();
        const bool enter =
            ImGui::IsKeyPressed(ImGuiKey_Enter, false) || ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false);
        press.pressed |= enter && !ImGui::GetIO().NavVisible && ImGui::IsWindowFocused();
    }
    const ButtonLook look = look_of(words.weight, press);
    const ImVec2 max{min.x + size.x, min.y + size.y};
    list->AddRectFilled(min, max, look.fill, corner());
    if (look.outline != 0) list->AddRect(min, max, look.outline, corner(), 0, line_width());
    if (press.focused) focus_ring(list, min, max, look.ring);

    const ImVec2 label = text_extent(TextSize::text, words.label, true);
    const bool has_key = words.key[0] != '\0';
    const ImVec2 key = has_key ? text_extent(TextSize::note, words.key) : ImVec2{0, 0};
    const float whole = label.x + (has_key ? key_gap() + key.x : 0.0f);
    const float left = min.x + (size.x - whole) / 2;
    const float middle = min.y + size.y / 2;
    text_at(list, {left, middle - label.y / 2}, TextSize::text, look.ink, words.label, true);
    // On the label's baseline, which lies 0.29 of the height below a line's middle in this face.
    if (has_key)
        text_at(list, {left + label.x + key_gap(), middle + 0.29f * (label.y - key.y) - key.y / 2},
                TextSize::note, look.soft, words.key);
    return press.pressed;
}

int button_row(Column& column, std::span<const ButtonWords> buttons) {
    int pressed = -1;
    float left = column.left;
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        const float width = std::min(button_width(buttons[i]), column.width);
        if (left > column.left && left + width > column.right() + 0.5f) {
            left = column.left;
            column.y += press_height() + grid(1);
        }
        if (button(column.list, {std::round(left), std::round(column.y)}, {width, press_height()},
                   buttons[i]))
            pressed = static_cast<int>(i);
        left += width + grid(1.5f);
    }
    column.y += press_height();
    return pressed;
}

float button_row_height(float width, std::span<const ButtonWords> buttons) {
    float height = press_height();
    float used = 0;
    for (const ButtonWords& words : buttons) {
        const float own = std::min(button_width(words), width);
        if (used > 0 && used + own > width + 0.5f) {
            used = 0;
            height += press_height() + grid(1);
        }
        used += own + grid(1.5f);
    }
    return height;
}

bool title_with_way_back(Column& page, std::string_view title, const ButtonWords& back) {
    const float width = button_width(back), top = page.y;
    const bool beside = text_extent(TextSize::title, title, true).x + grid(4) + width <= page.width;
    paragraph(page, TextSize::title, theme().colour.ink, title, true);
    if (!beside) gap(page, 1);
    const ImVec2 place = beside ? ImVec2{std::round(page.right() - width), top} : ImVec2{page.left, page.y};
    const bool taken = button(page.list, place, {width, press_height()}, back);
    page.y = std::max(page.y, place.y + press_height());
    gap(page, 1.5f);
    return taken;
}

int choice_row(Column& column, const char* name, std::span<const std::string> labels, int chosen) {
    const Palette& c = theme().colour;
    const float height = press_height();
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, min.y + height};
    const float each = column.width / static_cast<float>(labels.size());
    int pressed = -1;
    ImVec2 ring_min, ring_max;
    bool ringed = false;

    ImGui::PushID(name);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const float left = std::round(min.x + each * static_cast<float>(i));
        const float right = std::round(min.x + each * static_cast<float>(i + 1));
        const Press press = press_area(labels[i].c_str(), {left, min.y}, {right - left, height});
        const bool is_chosen = static_cast<int>(i) == chosen;
        if (press.pressed) pressed = static_cast<int>(i);
        const ImU32 fill = is_chosen ? c.accent : mixed(c.paper, c.accent, press.hovered ? 12 : 0);
        const ImDrawFlags corners = (i == 0 ? ImDrawFlags_RoundCornersLeft : 0) |
                                    (i + 1 == labels.size() ? ImDrawFlags_RoundCornersRight : 0);
        column.list->AddRectFilled({left, min.y}, {right, max.y}, fill, corner(),
                                   corners == 0 ? ImDrawFlags_RoundCornersNone : corners);
        if (i > 0) column.list->AddLine({left, min.y}, {left, max.y}, c.accent, line_width());
        text_centred(column.list, {(left + right) / 2, min.y + height / 2}, TextSize::text,
                     is_chosen ? c.accent_ink : c.accent, labels[i], is_chosen);
        if (press.focused) {
            ringed = true;
            ring_min = {left, min.y};
            ring_max = {right, max.y};
        }
    }
    ImGui::PopID();
    column.list->AddRect(min, max, c.accent, corner(), 0, line_width());
    if (ringed) focus_ring(column.list, ring_min, ring_max, c.ink);
    column.y += height;
    return pressed;
}

std::optional<double> slider(Column& column, const SliderWords& words, double value, double most,
                             double step) {
    const Palette& c = theme().colour;
    const float height = press_height();
    const float knob = height * 0.28f;
    const float unit_width = text_extent(TextSize::text, words.unit).x;
    const float value_width = text_extent(TextSize::number, words.widest, true).x;
    const float track_width = column.width - unit_width - value_width - grid(3);
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const Press press = press_area(words.name, min, {track_width, height});
    hold_sheet(press.held);

    // Travel is shorter than the area by half a knob at each end.
    const float from = min.x + knob, to = min.x + track_width - knob;
    double wanted = value;
    if (press.held) {
        const double share = std::clamp((ImGui::GetIO().MousePos.x - from) / (to - from), 0.0f, 1.0f);
        wanted = std::round(share * most / step) * step;
    }
    if (press.focused) {
        const ImGuiID id = ImGui::GetItemID();
        const auto pressed = [id](ImGuiKey key) {
            ImGui::SetKeyOwner(key, id);
            return ImGui::IsKeyPressed(key, id, ImGuiInputFlags_Repeat);
        };
        if (pressed(ImGuiKey_RightArrow)) wanted = std::min(most, wanted + step);
        if (pressed(ImGuiKey_LeftArrow)) wanted = std::max(0.0, wanted - step);
    }

    const float middle = min.y + height / 2;
    const float at = from + (to - from) * static_cast<float>(wanted / most);
    const float thick = std::max(3.0f, grid(0.5f));
    column.list->AddRectFilled({from, middle - thick / 2}, {to, middle + thick / 2}, c.rule, thick / 2);
    column.list->AddRectFilled({from, middle - thick / 2}, {at, middle + thick / 2}, c.accent, thick / 2);
    column.list->AddCircleFilled({at, middle}, knob,
                                 press.hovered || press.held ? mixed(c.accent, c.ink, 36) : c.accent, 32);
    column.list->AddCircleFilled({at, middle}, knob * 0.36f, c.accent_ink, 24);
    if (press.focused) focus_ring(column.list, min, {min.x + track_width, min.y + height}, c.ink);

    const float value_right = min.x + track_width + grid(2) + value_width;
    const float number_height = theme().size[static_cast<std::size_t>(TextSize::number)];
    const float text_height = theme().size[static_cast<std::size_t>(TextSize::text)];
    text_right(column.list, {value_right, middle - number_height / 2}, TextSize::number, c.ink, words.value,
               true);
    text_at(column.list,
            {value_right + grid(0.75f), middle + 0.29f * (number_height - text_height) - text_height / 2},
            TextSize::text, c.ink_soft, words.unit);
    column.y += height;
    if (wanted != value) return wanted;
    return std::nullopt;
}

}  // namespace slopewise
