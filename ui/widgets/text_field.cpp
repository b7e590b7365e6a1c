#include "ui/widgets/text_field.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

// Takes away what stands after the last letter allowed.
int keep_to_letters(ImGuiInputTextCallbackData* data) {
    std::size_t letters = 0;
    for (int i = 0; i < data->BufTextLen; ++i) {
        const bool begins = (static_cast<unsigned char>(data->Buf[i]) & 0xC0u) != 0x80u;
        if (!begins || ++letters <= *static_cast<const std::size_t*>(data->UserData)) continue;
        data->DeleteChars(i, data->BufTextLen - i);
        break;
    }
    return 0;
}

void push_look() {
    const Palette& c = theme().colour;
    ImGui::PushStyleColor(ImGuiCol_FrameBg, c.paper);
    ImGui::PushStyleColor(ImGuiCol_Border, c.accent);
    ImGui::PushStyleColor(ImGuiCol_Text, c.ink);
    ImGui::PushStyleColor(ImGuiCol_TextDisabled, c.ink_soft);
    ImGui::PushStyleColor(ImGuiCol_TextSelectedBg, c.band);
    ImGui::PushStyleColor(ImGuiCol_NavHighlight, c.ink);
}

}  // namespace

bool text_field(Column& column, const char* name, const char* hint, std::span<char> text, bool begin) {
    std::size_t letters = text.size() / 4;
    const float height = press_height();
    const float size = theme().size[static_cast<std::size_t>(TextSize::text)];
    ImGui::SetCursorScreenPos({std::round(column.left), std::round(column.y)});
    push_look();
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, ImVec2(grid(1.5f), std::floor((height - size) / 2)));
    ImGui::PushStyleVar(ImGuiStyleVar_FrameBorderSize, std::max(1.0f, std::round(grid(0.1875f))));
    ImGui::PushStyleVar(ImGuiStyleVar_FrameRounding, grid(0.5f));
    // The face that is drawn for numbers, at the size of text.
    ImGui::PushFont(theme().regular);
    ImGui::SetWindowFontScale(1.0f);
    ImGui::SetWindowFontScale(size / ImGui::GetFontSize());
    ImGui::SetNextItemWidth(column.width);
    if (begin) ImGui::SetKeyboardFocusHere();
    const bool entered = ImGui::InputTextWithHint(
        (std::string("##") + name).c_str(), hint, text.data(), text.size(),
        ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_CallbackEdit, keep_to_letters, &letters);
    ImGui::SetWindowFontScale(1.0f);
    ImGui::PopFont();
    ImGui::PopStyleVar(3);
    ImGui::PopStyleColor(6);
    column.y += height;
    return entered;
}

}  // namespace slopewise
