#include "ui/widgets/list_keys.h"

#include <imgui.h>

// For SetKeyOwner alone.
#include <imgui_internal.h>

namespace slopewise {

int list_steps() {
    const ImGuiID id = ImGui::GetID("list keys");
    const auto pressed = [id](ImGuiKey key) {
        ImGui::SetKeyOwner(key, id);
        return ImGui::IsKeyPressed(key, id, ImGuiInputFlags_Repeat);
    };
    return (pressed(ImGuiKey_DownArrow) ? 1 : 0) - (pressed(ImGuiKey_UpArrow) ? 1 : 0);
}

}  // namespace slopewise
