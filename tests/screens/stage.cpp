#include "tests/screens/stage.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

// To ask where a window has scrolled and what the mouse is over.
#include <imgui_internal.h>

#include "assets/embedded.h"
#include "tests/screens/sample_view.h"
#include "ui/theme.h"

namespace slopewise {
namespace {

constexpr float step_px = 20;  // less than half of the least thing that can be pressed

void add(Actions& all, const Actions& more) { all.insert(all.end(), more.begin(), more.end()); }

float scroll_max(const char* window) {
    const ImGuiWindow* found = ImGui::FindWindowByName(window);
    return found != nullptr ? found->ScrollMax.y : 0.0f;
}

// Share of the smaller box that both cover.
float covered(const Box& a, const Box& b) {
    const float width = std::min(a.right, b.right) - std::max(a.left, b.left);
    const float height = std::min(a.bottom, b.bottom) - std::max(a.top, b.top);
    if (width <= 0 || height <= 0) return 0;
    const auto area = [](const Box& box) { return (box.right - box.left) * (box.bottom - box.top); };
    return width * height / std::max(1.0f, std::min(area(a), area(b)));
}

}  // namespace

Stage::Stage(ImVec2 size) : view(sample_view()) {
    context_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    io.ConfigInputTrickleEventQueue = false;  // a test's events belong to the frame it means
    io.DeltaTime = 1.0f / 60.0f;
    load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    io.Fonts->GetTexDataAsAlpha8(&pixels, &width, &height);
    resize(size);
}

Stage::~Stage() { ImGui::DestroyContext(context_); }

void Stage::resize(ImVec2 size) {
    ImGui::GetIO().DisplaySize = size;
    fit_theme(size.x, size.y);
}

Box Stage::display() const {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    return {0, 0, size.x, size.y};
}

Actions Stage::draw(Screen screen) {
    ImGui::NewFrame();
    const Actions actions = draw_screen(screen, view, ui);
    ImGui::Render();
    return actions;
}

Actions Stage::key(Screen screen, ImGuiKey key) {
    hold_key(key, true);
    Actions actions = draw(screen);
    hold_key(key, false);
    add(actions, draw(screen));
    return actions;
}

Actions Stage::click(Screen screen, ImVec2 place) {
    move_mouse(place);
    Actions actions = draw(screen);
    hold_mouse(true);
    add(actions, draw(screen));
    hold_mouse(false);
    add(actions, draw(screen));
    add(actions, draw(screen));
    return actions;
}

// Dear ImGui tells where what has the keyboard's focus is drawn: given to `wanted` for a frame, it says where
// to look.
ImVec2 Stage::told_place(Screen screen, ImGuiWindow& window, ImGuiID wanted) {
    ImGuiContext& context = *context_;
    const auto before = std::tuple(context.NavWindow, context.NavId, context.NavLayer,
                                   context.NavFocusScopeId, context.NavIdIsAlive, window.NavRectRel[0]);
    context.NavWindow = &window;
    context.NavId = wanted;
    window.NavRectRel[0] = {};
    draw(screen);
    const ImVec2 told = ImGui::WindowRectRelToAbs(&window, window.NavRectRel[0]).GetCenter();
    std::tie(context.NavWindow, context.NavId, context.NavLayer, context.NavFocusScopeId,
             context.NavIdIsAlive, window.NavRectRel[0]) = before;
    draw(screen);
    return told;
}

std::optional<Box> Stage::place_of(Screen screen, const char* window, const char* label, const char* group) {
    draw(screen);
    draw(screen);
    ImGuiWindow* found = ImGui::FindWindowByName(window);
    if (found == nullptr) return std::nullopt;
    const ImGuiID wanted = ImHashStr(label, 0, group != nullptr ? ImHashStr(group, 0, found->ID) : found->ID);
    const auto is_there = [&](float x, float y) {
        move_mouse({x, y});
        draw(screen);
        return context_->HoveredId == wanted;
    };
    // From a point inside, the last whole pixel in a direction that is still inside.
    const auto edge = [&](ImVec2 from, ImVec2 way) {
        float inside = 0, outside = step_px;
        while (is_there(from.x + way.x * outside, from.y + way.y * outside)) {
            inside = outside;
            outside += step_px;
        }
        while (outside - inside > 1) {
            const float middle = std::floor((inside + outside) / 2);
            (is_there(from.x + way.x * middle, from.y + way.y * middle) ? inside : outside) = middle;
        }
        return inside;
    };
    const auto around = [&](ImVec2 at) {
        return Box{at.x - edge(at, {-1, 0}), at.y - edge(at, {0, -1}), at.x + edge(at, {1, 0}) + 1,
                   at.y + edge(at, {0, 1}) + 1};
    };
    const ImVec2 told = told_place(screen, *found, wanted);
    const ImVec2 first{std::floor(told.x), std::floor(told.y)};
    if (is_there(first.x, first.y)) return around(first);
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    for (float y = 10; y < size.y; y += step_px)
        for (float x = 10; x < size.x; x += step_px)
            if (is_there(x, y)) return around({x, y});
    return std::nullopt;
}

void Stage::move_mouse(ImVec2 place) { ImGui::GetIO().AddMousePosEvent(place.x, place.y); }
void Stage::hold_mouse(bool down) { ImGui::GetIO().AddMouseButtonEvent(ImGuiMouseButton_Left, down); }
void Stage::turn_wheel(float notches) { ImGui::GetIO().AddMouseWheelEvent(0, notches); }
void Stage::hold_key(ImGuiKey key, bool down) { ImGui::GetIO().AddKeyEvent(key, down); }

std::vector<Box> Stage::glyphs(std::string_view window) const {
    const ImVec2 blank = ImGui::GetIO().Fonts->TexUvWhitePixel;
    std::vector<Box> boxes;
    for (const ImDrawList* list : ImGui::GetDrawData()->CmdLists) {
        if (window != list->_OwnerName) continue;
        const auto& v = list->VtxBuffer;
        // A character is four vertices with the corners of its picture; lines and fills use the blank spot,
        // and smooth lines a picture of their own whose corners do not span a box.
        for (int i = 0; i + 3 < v.Size; ++i) {
            const bool picture = v[i].uv.x != blank.x && v[i].uv.x == v[i + 3].uv.x &&
                                 v[i].uv.y == v[i + 1].uv.y && v[i + 2].uv.x == v[i + 1].uv.x &&
                                 v[i + 2].uv.y == v[i + 3].uv.y && v[i].pos.x == v[i + 3].pos.x &&
                                 v[i].pos.y == v[i + 1].pos.y && v[i + 1].uv.x > v[i].uv.x &&
                                 v[i + 2].uv.y > v[i].uv.y;
            if (!picture) continue;
            boxes.push_back({v[i].pos.x, v[i].pos.y, v[i + 2].pos.x, v[i + 2].pos.y});
            i += 3;
        }
    }
    return boxes;
}

Box Stage::drawn() const {
    Box all{1e9f, 1e9f, -1e9f, -1e9f};
    for (const ImDrawList* list : ImGui::GetDrawData()->CmdLists) {
        for (const ImDrawCmd& command : list->CmdBuffer) {
            for (unsigned i = 0; i < command.ElemCount; ++i) {
                const auto index = list->IdxBuffer[static_cast<int>(command.IdxOffset + i)];
                const ImVec2 p = list->VtxBuffer[static_cast<int>(command.VtxOffset + index)].pos;
                const float x = std::clamp(p.x, command.ClipRect.x, command.ClipRect.z);
                const float y = std::clamp(p.y, command.ClipRect.y, command.ClipRect.w);
                all = {std::min(all.left, x), std::min(all.top, y), std::max(all.right, x),
                       std::max(all.bottom, y)};
            }
        }
    }
    return all;
}

int Stage::vertices() const { return ImGui::GetDrawData()->TotalVtxCount; }

float Stage::scroll_room(const char* window) const { return scroll_max(window); }

float Stage::scrolled(const char* window) const {
    const ImGuiWindow* found = ImGui::FindWindowByName(window);
    return found != nullptr ? found->Scroll.y : 0.0f;
}

Actions press(Stage& stage, Screen screen, const char* window, const char* label, const char* group) {
    const auto place = stage.place_of(screen, window, label, group);
    REQUIRE_MESSAGE(place.has_value(), label, " can be pressed");
    return stage.click(screen, place->middle());
}

int words_over_words(const std::vector<Box>& glyphs) {
    int count = 0;
    for (std::size_t i = 0; i < glyphs.size(); ++i) {
        for (std::size_t j = i + 1; j < glyphs.size(); ++j)
            count += covered(glyphs[i], glyphs[j]) > 0.3f ? 1 : 0;
    }
    return count;
}

}  // namespace slopewise
