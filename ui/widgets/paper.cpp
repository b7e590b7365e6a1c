#include "ui/widgets/paper.h"

#include <algorithm>
#include <cmath>

// For SetKeyOwner alone: page keys scroll the sheet instead of moving the focus.
#include <imgui_internal.h>

namespace slopewise {
namespace {

constexpr ImGuiWindowFlags sheet_flags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                         ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                                         ImGuiWindowFlags_NoNavFocus;

constexpr float drag_starts_px = 8;
constexpr float widest_page = 1.9f;  // of the window's height: lines stay readable on a very wide screen

ImGuiID drag_id() { return ImGui::GetID("dragged"); }
ImGuiID press_id() { return ImGui::GetID("pressed here"); }
ImGuiID hold_id() { return ImGui::GetID("held"); }

float slip_margin() { return std::max(12.0f, grid(3)); }

void begin_window(const char* name, ImVec2 min, ImVec2 size, ImGuiWindowFlags flags) {
    ImGui::SetNextWindowPos(min);
    ImGui::SetNextWindowSize(size);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0f);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, 0.0f);
    ImGui::Begin(name, nullptr, flags);
    ImGui::PopStyleVar(3);
}

void drag_with_mouse() {
    ImGuiStorage* memory = ImGui::GetStateStorage();
    const bool was_dragged = memory->GetBool(drag_id());
    // A press that began on another screen does not drag this one.
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) {
        memory->SetBool(press_id(), ImGui::IsWindowHovered(ImGuiHoveredFlags_AllowWhenBlockedByActiveItem));
    }
    if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) {
        memory->SetBool(press_id(), false);
        if (was_dragged && !ImGui::IsMouseReleased(ImGuiMouseButton_Left)) memory->SetBool(drag_id(), false);
        return;
    }
    const ImVec2 way = ImGui::GetMouseDragDelta(ImGuiMouseButton_Left, 0);
    const bool starts = memory->GetBool(press_id()) && std::abs(way.y) > drag_starts_px &&
                        std::abs(way.y) > std::abs(way.x) && !memory->GetBool(hold_id());
    if (!was_dragged && !starts) return;
    memory->SetBool(drag_id(), true);
    ImGui::SetScrollY(ImGui::GetScrollY() - ImGui::GetIO().MouseDelta.y);
}

// The keys are the sheet's own whether it pages by them or not: else the focus would.
void page_with_keys(bool pages) {
    const ImGuiID id = ImGui::GetID("pages");
    const auto pressed = [id, pages](ImGuiKey key) {
        ImGui::SetKeyOwner(key, id);
        return ImGui::IsKeyPressed(key, id, ImGuiInputFlags_Repeat) && pages;
    };
    const float page = 0.85f * ImGui::GetWindowHeight();
    if (pressed(ImGuiKey_PageDown)) ImGui::SetScrollY(ImGui::GetScrollY() + page);
    if (pressed(ImGuiKey_PageUp)) ImGui::SetScrollY(ImGui::GetScrollY() - page);
    if (pressed(ImGuiKey_Home)) ImGui::SetScrollY(0);
    if (pressed(ImGuiKey_End)) ImGui::SetScrollY(ImGui::GetScrollMaxY());
}

// A thin line at the right edge: how much there is, and where one is.
void scroll_hint(ImDrawList* list) {
    const ImVec2 min = ImGui::GetWindowPos();
    const ImVec2 size = ImGui::GetWindowSize();
    const float thickness = std::max(3.0f, grid(0.5f));
    const float inset = grid(1);
    const float track = size.y - 2 * inset;
    const float whole = size.y + ImGui::GetScrollMaxY();
    const float length = track * size.y / whole;
    const float top = min.y + inset + (track - length) * ImGui::GetScrollY() / ImGui::GetScrollMaxY();
    const float right = min.x + size.x - grid(0.5f);
    list->AddRectFilled({right - thickness, top}, {right, top + length}, theme().colour.rule, thickness / 2);
}

void end_window(const Column& page, float foot, bool pages = true) {
    ImGui::SetCursorScreenPos({page.left, page.y + foot - 1});
    ImGui::Dummy({1, 1});
    if (ImGui::GetScrollMaxY() > 0) {
        drag_with_mouse();
        page_with_keys(pages);
        scroll_hint(page.list);
    }
    ImGui::End();
}

}  // namespace

float sheet_margin() { return std::max(16.0f, grid(4)); }

float grid(float steps) { return theme().unit * steps; }

float line_height(TextSize size) { return std::round(theme().size[static_cast<std::size_t>(size)] * 1.2f); }

float measure(const Column& column) {
    return column.width / theme().size[static_cast<std::size_t>(TextSize::text)];
}

Column begin_sheet(const char* name) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    begin_window(name, {0, 0}, size, sheet_flags | ImGuiWindowFlags_NoBringToFrontOnFocus);
    ImDrawList* list = ImGui::GetWindowDrawList();
    list->AddRectFilled({0, 0}, size, theme().colour.paper);
    const float width = std::min(size.x - 2 * sheet_margin(), std::max(widest_page * size.y, 640.0f));
    return {list, std::round((size.x - width) / 2), width, sheet_margin() - ImGui::GetScrollY()};
}

void end_sheet(const Column& page, bool pages_with_keys) {
    end_window(page, sheet_margin(), pages_with_keys);
}

float slip_width(float wanted) {
    return std::min(wanted, ImGui::GetIO().DisplaySize.x - 2 * slip_margin() - grid(2));
}

Column begin_slip(const char* name, ImVec2 content) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const ImVec2 size{content.x + 2 * slip_margin(),
                      std::min(content.y + 2 * slip_margin(), window.y - grid(2))};
    const ImVec2 min{std::round((window.x - size.x) / 2), std::round((window.y - size.y) / 2)};
    const ImVec2 max{min.x + size.x, min.y + size.y};
    begin_window(name, min, size, sheet_flags);
    ImDrawList* list = ImGui::GetWindowDrawList();
    list->AddRectFilled(min, max, theme().colour.paper, grid(0.25f));
    list->AddRect(min, max, theme().colour.paper_edge, grid(0.25f));
    return {list, min.x + slip_margin(), content.x, min.y + slip_margin() - ImGui::GetScrollY()};
}

void end_slip(const Column& page) { end_window(page, slip_margin()); }

bool sheet_is_dragged() { return ImGui::GetStateStorage()->GetBool(drag_id()); }

void hold_sheet(bool held) { ImGui::GetStateStorage()->SetBool(hold_id(), held); }

void gap(Column& column, float steps) { column.y += grid(steps); }

void rule(Column& column) {
    const float y = std::round(column.y);
    column.list->AddRectFilled({column.left, y},
                               {column.right(), y + std::max(1.0f, std::round(grid(0.125f)))},
                               theme().colour.rule);
}

void heading(Column& column, std::string_view words) {
    rule(column);
    gap(column, 0.75f);
    paragraph(column, TextSize::note, theme().colour.ink, words, true);
    gap(column, 0.25f);
}

std::string_view take_line(std::string_view& rest, TextSize size, float width, bool bold) {
    const std::string_view words = rest;
    std::size_t end = 0;  // of what fits on the line so far
    for (std::size_t at = 0; at <= words.size(); ++at) {
        if (at < words.size() && words[at] != ' ') continue;
        if (end > 0 && text_extent(size, words.substr(0, at), bold).x > width) {
            rest = words.substr(end + 1);
            return words.substr(0, end);
        }
        end = at;
    }
    rest = {};
    return words;
}

std::vector<std::string_view> broken_lines(TextSize size, std::string_view words, float width, bool bold) {
    std::vector<std::string_view> lines;
    while (!words.empty()) lines.push_back(take_line(words, size, width, bold));
    return lines;
}

void paragraph(Column& column, TextSize size, ImU32 colour, std::string_view words, bool bold) {
    while (!words.empty()) {
        const std::string_view line = take_line(words, size, column.width, bold);
        text_at(column.list, {column.left, column.y}, size, colour, line, bold);
        column.y += line_height(size);
    }
}

float paragraph_height(TextSize size, std::string_view words, float width, bool bold) {
    return static_cast<float>(broken_lines(size, words, width, bold).size()) * line_height(size);
}

std::vector<Column> side_by_side(const Column& page, std::span<const float> shares, float between) {
    float whole = 0;
    for (const float share : shares) whole += share;
    const float usable = page.width - grid(between) * static_cast<float>(shares.size() - 1);
    std::vector<Column> columns;
    float left = page.left;
    for (const float share : shares) {
        const float width = std::floor(usable * share / whole);
        columns.push_back({page.list, std::round(left), width, page.y});
        left += width + grid(between);
    }
    return columns;
}

void join(Column& page, std::span<const Column> columns) {
    for (const Column& column : columns) page.y = std::max(page.y, column.y);
}

void text_right(ImDrawList* list, ImVec2 right_top, TextSize size, ImU32 colour, std::string_view words,
                bool bold) {
    text_at(list, {right_top.x - text_extent(size, words, bold).x, right_top.y}, size, colour, words, bold);
}

void text_centred(ImDrawList* list, ImVec2 centre, TextSize size, ImU32 colour, std::string_view words,
                  bool bold) {
    const ImVec2 extent = text_extent(size, words, bold);
    text_at(list, {centre.x - extent.x / 2, centre.y - extent.y / 2}, size, colour, words, bold);
}

void mark_in(ImDrawList* list, ImVec2 centre, float size, ImU32 colour) {
    const float s = size / 2;
    const ImVec2 tick[]{{centre.x - 0.9f * s, centre.y},
                        {centre.x - 0.25f * s, centre.y + 0.7f * s},
                        {centre.x + s, centre.y - 0.8f * s}};
    list->AddPolyline(tick, 3, colour, 0, std::max(1.5f, size / 6));
}

void mark_out(ImDrawList* list, ImVec2 centre, float size, ImU32 colour) {
    const float s = size / 2;
    const ImVec2 diamond[]{{centre.x, centre.y - s},
                           {centre.x + s, centre.y},
                           {centre.x, centre.y + s},
                           {centre.x - s, centre.y}};
    list->AddPolyline(diamond, 4, colour, ImDrawFlags_Closed, std::max(1.5f, size / 6));
}

void mark_seen(ImDrawList* list, ImVec2 tip, float size, ImU32 colour) {
    list->AddTriangleFilled({tip.x - size / 2, tip.y - 0.9f * size}, {tip.x + size / 2, tip.y - 0.9f * size},
                            tip, colour);
}

}  // namespace slopewise
