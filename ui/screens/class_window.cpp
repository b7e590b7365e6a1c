// The class window: the picture alone, for the projector.
#include "ui/screens/class_picture.h"
#include "ui/screens/screens.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr ImGuiWindowFlags window_flags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                          ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                                          ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoNav;

}  // namespace

Actions draw_class_window(const View& view) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(window);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0f);
    ImGui::Begin("class window", nullptr, window_flags);
    ImGui::PopStyleVar(2);
    ImDrawList* list = ImGui::GetWindowDrawList();
    const std::string& waiting = view.class_picture.waiting;
    if (waiting.empty()) {
        draw_class_picture(list, {0, 0}, window, view, false);
    } else {
        list->AddRectFilled({0, 0}, window, theme().colour.shelf);
        text_centred(list, {window.x / 2, window.y / 2}, TextSize::text, theme().colour.dial_ink, waiting);
    }
    ImGui::End();
    return {};
}

}  // namespace slopewise
