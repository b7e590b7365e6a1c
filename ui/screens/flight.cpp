// The window with the shelf under it: eyes outside. What floats over the view is small and keeps to its
// edges.
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "ui/key_meanings.h"
#include "ui/scene/cockpit.h"
#include "ui/scene/magnifier.h"
#include "ui/scene/scene.h"
#include "ui/screens/flight_profile.h"
#include "ui/screens/flight_stick.h"
#include "ui/screens/flight_task.h"
#include "ui/screens/paused_sheet.h"
#include "ui/screens/screens.h"
#include "ui/screens/thumb_pads.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/shelf.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

constexpr ImGuiWindowFlags window_flags =
    ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
    ImGuiWindowFlags_NoBackground | ImGuiWindowFlags_NoBringToFrontOnFocus |
    ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoNav;  // the arrows are the stick

constexpr float view_share = 0.75f;           // of the window's height: eyes outside
constexpr float square_below = 1.5f;          // width to height: below it the instruments need all the width
constexpr float least_height_for_keys = 600;  // less is a phone, which has none
constexpr float upright_view_share = 1.15f;   // of the width: the frame of an upright view

enum class Buttons { beside_shelf, below_shelf, on_strip };

// The keys that do the same as the buttons, as they are bound.
struct ButtonKeys {
    std::string go_around, pause, help, exchange;
};

struct Layout {
    ImVec2 scene_max;  // the frame of the picture, from the window's corner
    ImVec2 view_max;   // what is seen of it: the shelf begins where there is only the glareshield
    ImVec2 shelf_min, shelf_max;
    ImVec2 panel_min, panel_max;  // where the buttons stand
    Buttons buttons = Buttons::beside_shelf;
    float edge = 0;     // pixels kept free at the view's edges
    bool keys = false;  // there is room for the key strip
    ButtonKeys caps;
    bool pads = false;  // thumbs fly
    ThumbPads thumbs;
};

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// Their widths never change in flight, so that no button moves there.
constexpr ButtonWords go_around_words{"Go around", Weight::shelf, "G"};
constexpr ButtonWords pause_words{"Pause", Weight::shelf, "P"};
constexpr ButtonWords fly_on_words{"Fly on", Weight::shelf, "P"};
constexpr ButtonWords help_words{"Path help", Weight::shelf, "A"};
constexpr ButtonWords exchange_words{"Give / take", Weight::shelf, "C"};
constexpr ButtonWords summary_words{"Summary", Weight::plain};

ButtonKeys button_keys(const std::vector<KeyHint>& keys) {
    namespace meaning = key_meaning;
    return {meaning::key_for(keys, meaning::go_around, "G"), meaning::key_for(keys, meaning::pause, "P"),
            meaning::path_help_key(keys), meaning::key_for(keys, meaning::exchange, "C")};
}

ButtonWords keyed(ButtonWords words, const std::string& key) {
    words.key = key.c_str();
    return words;
}

float cap_height() { return std::round(note_height() * 1.12f); }

// The dark strip along the view's lower edge.
float strip_height(const Layout& layout) {
    if (layout.buttons == Buttons::on_strip) return press_height() + 2 * grid(0.75f);
    return layout.keys ? cap_height() + 2 * grid(0.75f) : 0.0f;
}

float between_buttons() { return std::max(3.0f, grid(0.75f)); }

// In an upright window the frame holds much sky and much glareshield; below the world's edge a little of the
// glareshield is enough.
float upright_view_bottom(ImVec2 frame, const SceneView& scene) {
    const Projection projection = make_projection(scene.camera, {0, 0, frame.x, frame.y});
    const auto world_bottom = static_cast<float>(world_bottom_y_px(projection, scene));
    return std::min(frame.y, std::ceil(world_bottom + 0.05f * frame.x));
}

Layout layout_of(ImVec2 window, const FlightView& flight) {
    Layout layout;
    layout.caps = button_keys(flight.keys);
    layout.pads = flight.pads.shown();
    layout.edge = grid(window.y < 500 ? 1.0f : 2.0f);
    float view_bottom = std::ceil(view_share * window.y);
    layout.scene_max = {window.x, view_bottom};
    if (window.x < window.y) {
        layout.scene_max.y = std::min(view_bottom, std::ceil(upright_view_share * window.x));
        view_bottom = upright_view_bottom(layout.scene_max, flight.scene);
    }
    layout.view_max = {window.x, view_bottom};
    layout.keys = window.x > window.y && window.y >= least_height_for_keys && !layout.pads;
    layout.shelf_min = {0, view_bottom};
    layout.shelf_max = window;
    layout.panel_max = window;
    const float button = std::max({button_width(keyed(go_around_words, layout.caps.go_around)),
                                   button_width(keyed(pause_words, layout.caps.pause)),
                                   button_width(keyed(fly_on_words, layout.caps.pause))});
    if (window.x < window.y) {
        layout.buttons = Buttons::below_shelf;
        layout.panel_min = {0, window.y - press_height() - 2 * grid(1.5f)};
        layout.shelf_max.y = layout.panel_min.y;
    } else if (window.x < square_below * window.y) {
        layout.buttons = Buttons::on_strip;
        layout.panel_max.y = view_bottom;
        layout.panel_min = {window.x - 2 * button - between_buttons() - 2 * layout.edge,
                            view_bottom - strip_height(layout)};
    } else {
        layout.panel_min = {window.x - button - 2 * layout.edge, view_bottom};
        layout.shelf_max.x = layout.panel_min.x;
    }
    return layout;
}

Actions draw_panel(ImDrawList* list, const Layout& layout, const FlightView& flight, UiState& ui) {
    if (layout.buttons != Buttons::on_strip)
        list->AddRectFilled(layout.panel_min, layout.panel_max, theme().colour.shelf);
    if (layout.buttons == Buttons::beside_shelf)
        list->AddLine(layout.panel_min, {layout.panel_max.x, layout.panel_min.y}, theme().colour.shelf_edge);
    const float between = between_buttons();
    const bool stacked = layout.buttons == Buttons::beside_shelf;
    const ImVec2 room{layout.panel_max.x - layout.panel_min.x - 2 * layout.edge,
                      layout.panel_max.y - layout.panel_min.y};
    const ImVec2 size =
        stacked
            ? ImVec2{room.x, std::floor(std::clamp((room.y - 3 * between) / 2, 44.0f, 1.3f * press_height()))}
            : ImVec2{std::floor((room.x - between) / 2), press_height()};
    const ImVec2 step = stacked ? ImVec2{0, size.y + between} : ImVec2{size.x + between, 0};
    const ImVec2 first{layout.panel_min.x + layout.edge,
                       std::round((layout.panel_min.y + layout.panel_max.y - size.y - step.y) / 2)};

    const bool goes_around = button(list, first, size, keyed(go_around_words, layout.caps.go_around));
    const bool pauses = button(list, {first.x + step.x, first.y + step.y}, size,
                               keyed(flight.paused ? fly_on_words : pause_words, layout.caps.pause));
    if (goes_around || pauses) ui.looking = false;
    if (goes_around) return {GoAround{}};
    if (pauses) return {TogglePause{}};
    return {};
}

// How it was set up, in the corner on the veil of the keys, so that no paper glares at night: the field of
// view is stated because angles are what is taught. Returns where the next thing in that corner may stand.
float draw_setup(ImDrawList* list, const Layout& layout, const FlightView& flight, bool looking) {
    const Palette& c = theme().colour;
    const float edge = layout.edge;
    const float width =
        (layout.buttons == Buttons::below_shelf ? 0.62f : 1.0f) * layout.view_max.x - 2 * edge - grid(2);
    float y = edge;
    for (std::string_view rest = flight.setup; !rest.empty();) {
        const std::string_view line = take_line(rest, TextSize::note, width);
        y += draw_tag(list, {edge, y}, line, {c.strip, c.dial_ink}).y;
    }
    if (!flight.control.empty())
        y += draw_tag(list, {edge, y}, flight.control, {c.strip, c.dial_ink, true}).y;
    if (flight.paused && looking)
        y +=
            draw_tag(list, {edge, y}, "Paused. Press the picture for the choices.", {c.paper, c.ink, true}).y;
    return y + grid(1);
}

// Scoring has ended: said quietly, with the way to the summary.
struct Unscored {
    std::string_view words;
    ImVec2 extent, press, size;
    bool beside = true;  // the button beside the words, not under them
};

Unscored unscored_of(const Layout& layout, const FlightView& flight) {
    Unscored slip;
    if (flight.scored) return slip;
    slip.words = flight.status.empty() ? std::string_view{"Unscored"} : flight.status;
    slip.extent = text_extent(TextSize::note, slip.words, true);
    slip.press = {button_width(summary_words), press_height()};
    const float pad = grid(1), wide = slip.extent.x + slip.press.x + 4 * pad;
    slip.beside = wide < layout.view_max.x - 2 * layout.edge;
    slip.size = slip.beside ? ImVec2{wide, slip.press.y + 2 * pad}
                            : ImVec2{std::max(slip.extent.x, slip.press.x) + 2 * pad,
                                     slip.press.y + slip.extent.y + 3 * pad};
    return slip;
}

Actions draw_unscored(ImDrawList* list, const Layout& layout, const Unscored& slip, float top) {
    if (slip.words.empty()) return {};
    const Palette& c = theme().colour;
    const float edge = layout.edge, pad = grid(1);
    list->AddRectFilled({edge, top}, {edge + slip.size.x, top + slip.size.y}, c.paper, grid(0.25f));
    text_at(list, {edge + pad, slip.beside ? top + (slip.size.y - slip.extent.y) / 2 : top + pad},
            TextSize::note, c.ink, slip.words, true);
    const ImVec2 place{slip.beside ? edge + slip.size.x - pad - slip.press.x : edge + pad,
                       top + slip.size.y - pad - slip.press.y};
    if (button(list, place, slip.press, summary_words)) return {OpenSummary{}};
    return {};
}

// The thumbs' corners: under the lights and the buttons at the right, under what stands at the left from
// `left_top` on.
ThumbPads thumbs_of(const Layout& layout, const FlightView& flight, float left_top, float unscored_height) {
    const bool upright = layout.buttons == Buttons::below_shelf;
    const auto rows = static_cast<float>(upright && !flight.control.empty() ? 2 : 1);
    const float between = between_buttons();
    const float right = static_cast<float>(magnifier_bottom_px(static_cast<double>(layout.view_max.x))) +
                        rows * (press_height() + between) + between;
    float left = left_top + unscored_height;
    if (flight.scored && !flight.side_profile.flown.empty())
        left += profile_inset_size(layout.view_max).y + between;
    const float bottom = layout.view_max.y - strip_height(layout) - layout.edge;
    return place_thumb_pads({layout.edge, std::ceil(std::max(left, right))},
                            {layout.view_max.x - layout.edge, bottom}, flight.pads.stick_left);
}

// The one short call, always in the same place.
void draw_caption(ImDrawList* list, const Layout& layout, const FlightView& flight) {
    if (flight.caption.empty()) return;
    const float width = marked_tag_width(flight.caption);
    const ImVec2 min{std::round((layout.view_max.x - width) / 2),
                     layout.view_max.y - strip_height(layout) - note_height() - grid(3)};
    draw_tag(list, min, flight.caption, {theme().colour.paper, theme().colour.attention, true, true});
}

// The buttons that a finger holds or presses at the view's right edge: over the glareshield above the
// caption, or over a thumb's pad. `place`: 0 for the first of them, 1 for the one above it; over a pad in a
// wide window, where there is less height than width, that one is beside it.
ImVec2 right_corner(const Layout& layout, ImVec2 size, int place) {
    const float over_caption = layout.view_max.y - strip_height(layout) - note_height() - grid(4);
    const float bottom = layout.pads ? static_cast<float>(layout.thumbs.power.top) - between_buttons()
                                     : std::round(over_caption);
    const float right = layout.view_max.x - layout.edge;
    if (place == 0) return {right - size.x, bottom - size.y};
    if (layout.pads && layout.buttons != Buttons::below_shelf)
        return {right - button_width(keyed(help_words, layout.caps.help)) - between_buttons() - size.x,
                bottom - size.y};
    return {right - size.x, bottom - 2 * size.y - between_buttons()};
}

// The path help for a finger, which holds it as a hand holds its key.
Actions draw_help_call(ImDrawList* list, const Layout& layout, const FlightView& flight) {
    if (!flight.scored || flight.drill.there()) return {};  // a drill is flown unaided
    const ButtonWords words = keyed(help_words, layout.caps.help);
    const ImVec2 size{button_width(words), press_height()};
    button(list, right_corner(layout, size, 0), size, words);
    if (ImGui::IsItemActivated()) return {CallHelp{true}};
    if (ImGui::IsItemDeactivated()) return {CallHelp{false}};
    return {};
}

// Where two share the controls: for a finger.
Actions draw_exchange(ImDrawList* list, const Layout& layout, const FlightView& flight) {
    if (!flight.scored || flight.control.empty() || flight.drill.there()) return {};
    const ButtonWords words = keyed(exchange_words, layout.caps.exchange);
    const ImVec2 size{button_width(words), press_height()};
    if (button(list, right_corner(layout, size, 1), size, words)) return {ExchangeControls{}};
    return {};
}

// The keys of the hands along the view's lower edge: as many as fit whole.
void draw_strip(ImDrawList* list, const Layout& layout, const FlightView& flight) {
    const float height = strip_height(layout);
    if (height <= 0) return;
    const Palette& c = theme().colour;
    const float top = layout.view_max.y - height;
    list->AddRectFilled({0, top}, layout.view_max, c.strip);
    if (!layout.keys) return;
    const float right =
        layout.buttons == Buttons::on_strip ? layout.panel_min.x : layout.view_max.x - layout.edge;
    const float cap_top = std::round(top + (height - cap_height()) / 2);
    float left = layout.edge;
    for (const KeyHint& hint : flight.keys) {
        const float width =
            key_caps_width(cap_height(), hint.key) + grid(1) + text_extent(TextSize::note, hint.meaning).x;
        if (left + width > right) break;
        const float caps = key_caps(list, {left, cap_top}, cap_height(), hint.key, c.dial_ink, c.dial_soft);
        text_at(list, {left + caps + grid(1), cap_top + (cap_height() - note_height()) / 2}, TextSize::note,
                c.dial_ink, hint.meaning);
        left += width + grid(3);
    }
}

void add(Actions& actions, const Actions& more) { actions.insert(actions.end(), more.begin(), more.end()); }

}  // namespace

Actions draw_flight(const View& view, UiState& ui) {
    const FlightView& flight = view.flight;
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    Layout layout = layout_of(window, flight);
    if (!flight.paused) ui.looking = false;

    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(window);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0f);
    ImGui::Begin("flight", nullptr, window_flags);
    ImGui::PopStyleVar(2);
    ImDrawList* list = ImGui::GetWindowDrawList();

    draw_scene(list, {0, 0}, layout.scene_max, flight.scene);
    draw_strip(list, layout, flight);
    const float below_setup = draw_setup(list, layout, flight, ui.looking);
    const float next = draw_flight_task(list, {layout.edge, below_setup},
                                        0.62f * layout.view_max.x - 2 * layout.edge, flight.drill);
    const Unscored unscored = unscored_of(layout, flight);
    if (layout.pads) layout.thumbs = thumbs_of(layout, flight, next, unscored.size.y);
    const bool thumbs_fly = layout.pads && !flight.paused;
    const Actions thumbs = follow_thumbs(layout.thumbs, flight.pads, thumbs_fly, ui.pads);
    if (thumbs_fly) draw_thumb_pads(list, layout.thumbs, flight.pads, flight.instruments, ui.pads);
    if (thumbs_fly) ui.pads.areas = {2, {layout.thumbs.power, layout.thumbs.stick}};
    draw_caption(list, layout, flight);
    const Actions summary = draw_unscored(list, layout, unscored, next);
    const Display& display = view.display;
    if (flight.scored)
        draw_profile_inset(list, layout.scene_max, layout.view_max, {layout.edge, next}, flight);
    const std::string look_way = key_meaning::look_in_way(flight.keys);
    Actions actions = draw_shelf(list, layout.shelf_min, layout.shelf_max, flight.instruments,
                                 {display.projector_text, display.eyes_outside, flight.panel_dark, look_way});
    const Actions pressed = draw_panel(list, layout, flight, ui);
    const Actions help = draw_help_call(list, layout, flight);
    const Actions exchange = draw_exchange(list, layout, flight);
    const Actions stick = mouse_stick(list, {0, 0}, layout.view_max, flight.instruments, !flight.paused, ui);
    ImGui::End();

    add(actions, summary);
    add(actions, pressed);
    add(actions, help);
    add(actions, exchange);
    add(actions, stick);
    add(actions, thumbs);  // the last: a finger that lets go of the picture has not let go of its pad
    if (flight.paused && !ui.looking) add(actions, draw_paused_sheet(flight, ui));
    return actions;
}

}  // namespace slopewise
