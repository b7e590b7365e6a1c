#include "ui/widgets/replay_plot.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <string>

#include "ui/theme.h"
#include "ui/widgets/aircraft_mark.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/dial.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/side_profile.h"
#include "ui/widgets/trace.h"

namespace slopewise {
namespace {

constexpr float least_notes = 5.8f;       // heights in text sizes: with the side view alone
constexpr float least_side_notes = 5.0f;  // before there are traces
constexpr float least_trace_notes = 1.7f;
constexpr float most_trace_notes = 4.5f;
constexpr std::size_t all_traces = 4;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float stroke_px() { return std::max(1.6f, note_px() * 0.1f); }
float title_px() { return std::round(note_px() * 1.35f); }

struct Trace {
    ReplayValue value;
    double low = 0, high = 1;
    std::string title;
    bool compared = false;  // the other attempt's line too
    float share = 1;        // of the room for traces
};

std::string number(double value, const char* unit) { return whole_number(value) + unit; }

std::string speed_title(const ReplayView& replay) {
    std::string words = "Airspeed " + number(replay.now.airspeed_kt, " kt");
    if (replay.other_is_there) words += ", dashed " + whole_number(replay.other_now.airspeed_kt);
    return words + ", target " + whole_number(replay.target_kt);
}

std::string lever_title(const ReplayView& replay) {
    std::string words = "Power lever " + number(replay.now.lever_percent, " %");
    if (replay.other_is_there) words += ", dashed " + whole_number(replay.other_now.lever_percent);
    return words;
}

std::string stick_title(const ReplayView& replay) {
    const double percent = std::round(100.0 * std::abs(replay.now.stick));
    if (percent == 0.0) return "Stick at trim";
    return "Stick " + number(percent, replay.now.stick > 0 ? " % pulled" : " % pushed");
}

std::string flap_title(const ReplayView& replay, const std::vector<std::string>& names) {
    const auto setting = static_cast<std::size_t>(std::lround(std::max(0.0, replay.now.flap)));
    return setting < names.size() ? "Flap " + names[setting] : std::string("Flap");
}

// The last give way first.
std::array<Trace, all_traces> traces(const ReplayView& replay, const std::vector<std::string>& flap_names) {
    double low_kt = replay.target_kt - replay.slow_kt, high_kt = replay.target_kt + replay.fast_kt;
    for (const auto* points : {&replay.flown, &replay.other}) {
        for (const ReplayPoint& p : *points) {
            low_kt = std::min(low_kt, p.airspeed_kt);
            high_kt = std::max(high_kt, p.airspeed_kt);
        }
    }
    const double most_flap = std::max(1, replay.most_flap);
    return {{{[](const ReplayPoint& p) { return p.airspeed_kt; }, low_kt - 2, high_kt + 2,
              speed_title(replay), true, 1.6f},
             {[](const ReplayPoint& p) { return p.lever_percent; }, 0, 100, lever_title(replay), true, 1.2f},
             {[](const ReplayPoint& p) { return p.stick; }, -1, 1, stick_title(replay), false, 1},
             {[](const ReplayPoint& p) { return p.flap; }, -0.1, most_flap + 0.1,
              flap_title(replay, flap_names), false, 0.7f}}};
}

struct Plan {
    ProfilePanel side;
    std::size_t traces = 0;  // so many fit
    float trace_room = 0;    // without titles
};

Plan plan_for(ImVec2 min, ImVec2 max, const SideProfileView& path, const ReplayView& replay) {
    const float note = note_px(), axis_px = note * 1.5f;
    double far_nm = 0.5, near_nm = 0.0, top_ft = 100.0;
    for (const auto* points : {&replay.flown, &replay.other}) {
        for (const ReplayPoint& p : *points) {
            far_nm = std::max(far_nm, p.distance_nm);
            near_nm = std::min(near_nm, p.distance_nm);
            top_ft = std::max(top_ft, p.height_ft);
        }
    }
    far_nm += 0.05;
    const double highest_deg =
        path.sector_deg.empty() ? path.path_deg + path.wedge_deg : highest_sector_deg(path);
    top_ft = std::max(1.04 * top_ft, height_ft(highest_deg, far_nm));

    Plan plan;
    const float room = max.y - min.y - title_px() - axis_px;
    const float least_trace = least_trace_notes * note + title_px();
    const float beyond_least = room - least_side_notes * note;
    plan.traces = std::min(all_traces, static_cast<std::size_t>(std::max(0.0f, beyond_least / least_trace)));
    const float titles = static_cast<float>(plan.traces) * title_px();
    plan.trace_room =
        std::clamp(0.5f * room - titles, least_trace_notes * note * static_cast<float>(plan.traces),
                   most_trace_notes * note * static_cast<float>(plan.traces));
    if (plan.traces == 0) plan.trace_room = 0;

    const ImVec2 low{min.x + note * 2.6f, min.y + title_px()};
    const ImVec2 high{max.x - note * 0.6f, min.y + title_px() + room - titles - plan.trace_room};
    const float width = high.x - low.x, beyond = note * 1.6f;  // room for the words "aim point"
    const float aim_share = static_cast<float>(far_nm / (far_nm - near_nm));
    plan.side = {low, high, far_nm, std::min(low.x + width * aim_share, high.x - beyond), 0, top_ft};
    return plan;
}

ImVec2 place_of(const ProfilePanel& panel, const ReplayPoint& point, ReplayValue value) {
    return {std::clamp(panel.x(point.distance_nm), panel.min.x, panel.max.x), panel.y_inside(value(point))};
}

// What is flown so far is strong, what is to come pale; the other attempt dashed.
void draw_lines(ImDrawList* list, const ProfilePanel& panel, const ReplayView& replay, ReplayValue value,
                bool compared) {
    const Palette& c = theme().colour;
    const float stroke = stroke_px();
    draw_solid(list, trace_line(panel, replay.flown, value), c.ink_soft, std::max(1.0f, 0.5f * stroke));
    std::vector<ImVec2> so_far = trace_line(panel, replay.flown, value, replay.tick);
    so_far.push_back(place_of(panel, replay.now, value));
    draw_solid(list, so_far, c.ink, stroke);
    if (!compared) return;
    draw_dashed(list, trace_line(panel, replay.other, value), c.accent, stroke, note_px() * 0.4f);
}

void draw_marks(ImDrawList* list, const ProfilePanel& panel, const ReplayView& replay, ReplayValue height) {
    const Palette& c = theme().colour;
    for (const ReplayMark& mark : replay.marks) {
        const auto tick = static_cast<double>(mark.tick);
        const auto at = std::partition_point(replay.flown.begin(), replay.flown.end(),
                                             [&](const ReplayPoint& p) { return p.tick < tick - 0.5; });
        if (at == replay.flown.end()) continue;
        const ImVec2 place = place_of(panel, *at, height);
        const float size = note_px();
        if (mark.kind == ReplayMark::Kind::gate)
            list->AddLine({place.x, place.y - size * 0.45f}, {place.x, place.y + size * 0.45f}, c.ink,
                          std::max(1.0f, 0.6f * stroke_px()));
        if (mark.kind == ReplayMark::Kind::worst || mark.kind == ReplayMark::Kind::evidence)
            mark_out(list, place, size * 0.6f, c.attention);
    }
}

// Where it stands, through every panel.
void draw_cursor(ImDrawList* list, const ProfilePanel& panel, const ReplayView& replay) {
    const float x = std::clamp(panel.x(replay.now.distance_nm), panel.min.x, panel.max.x);
    list->AddLine({x, panel.min.y}, {x, panel.max.y}, theme().colour.accent,
                  std::max(1.0f, note_px() * 0.05f));
}

// As many words over a panel as fit.
void draw_title(ImDrawList* list, const ProfilePanel& panel, std::string_view words) {
    const std::string_view fits = take_line(words, TextSize::note, panel.max.x - panel.min.x);
    if (text_extent(TextSize::note, fits).x > panel.max.x - panel.min.x) return;
    text_at(list, {panel.min.x, std::round(panel.min.y - 1.15f * note_px())}, TextSize::note,
            theme().colour.ink, fits);
}

// A name beside an aircraft: over it to the right, or under it, and never out of the panel.
void draw_name(ImDrawList* list, const ProfilePanel& panel, ImVec2 place, std::string_view name, bool over,
               ImU32 ink) {
    const float note = note_px(), width = text_extent(TextSize::note, name).x;
    const float y = over ? place.y - 2.1f * note : place.y + 0.9f * note;
    if (y < panel.min.y || y + note > panel.max.y) return;
    const ImVec2 at{std::round(std::min(place.x + 0.6f * note, panel.max.x - width)), std::round(y)};
    list->AddRectFilled({at.x - 2, at.y}, {at.x + width + 2, at.y + note}, theme().colour.paper);
    text_at(list, at, TextSize::note, ink, name);
}

void draw_aircraft(ImDrawList* list, const ProfilePanel& panel, const ReplayView& replay,
                   ReplayValue height) {
    const Palette& c = theme().colour;
    const float length = std::max(20.0f, note_px() * 1.8f);
    const ImVec2 now = place_of(panel, replay.now, height);
    if (replay.other_is_there) {
        const ImVec2 other = place_of(panel, replay.other_now, height);
        aircraft_mark(list, other, length, static_cast<float>(replay.other_pitch_rad), c.ink_soft, c.paper);
        const bool other_over = other.y < now.y;
        draw_name(list, panel, other, replay.other_name, other_over, c.ink_soft);
        draw_name(list, panel, now, replay.name, !other_over, c.ink);
    }
    aircraft_mark(list, now, length, static_cast<float>(replay.pitch_rad), c.accent, c.paper);
}

void draw_side(ImDrawList* list, const ProfilePanel& panel, const SideProfileView& path,
               const ReplayView& replay) {
    const ReplayValue height = [](const ReplayPoint& p) { return p.height_ft; };
    list->PushClipRect({panel.min.x - 3 * note_px(), panel.min.y}, {panel.max.x, panel.max.y + 1}, true);
    draw_wedge(list, panel, path);
    if (!path.sector_deg.empty()) {
        const float lamp_px = std::clamp(0.95f * light_sector_px(panel, path), 4.0f, note_px() * 0.5f);
        draw_light_sectors(list, panel, path, lamp_px);
    }
    draw_cursor(list, panel, replay);
    draw_lines(list, panel, replay, height, true);
    draw_marks(list, panel, replay, height);
    draw_aircraft(list, panel, replay, height);
    list->PopClipRect();
    list->AddLine({panel.min.x, panel.max.y}, panel.max, theme().colour.ink_soft, 1.0f);
}

void draw_trace(ImDrawList* list, const ProfilePanel& panel, const Trace& trace, const ReplayView& replay,
                bool is_speed) {
    const Palette& c = theme().colour;
    const float left = panel.min.x;
    if (is_speed) {
        list->AddRectFilled({left, panel.y_inside(replay.target_kt + replay.fast_kt)},
                            {panel.max.x, panel.y_inside(replay.target_kt - replay.slow_kt)}, c.band);
        const float y = panel.y_inside(replay.target_kt);
        list->AddLine({left, y}, {panel.max.x, y}, c.ink_soft, 1.0f);
    } else {
        const float middle = panel.y_inside((trace.low + trace.high) / 2);
        list->AddLine({left, middle}, {panel.max.x, middle}, c.rule, 1.0f);
    }
    draw_cursor(list, panel, replay);
    draw_lines(list, panel, replay, trace.value, trace.compared);
    draw_frame(list, panel);
    list->AddCircleFilled(place_of(panel, replay.now, trace.value), stroke_px() * 1.8f, c.accent, 16);
    draw_title(list, panel, trace.title);
}

std::string side_title(const ReplayView& replay) {
    char out[32];
    std::snprintf(out, sizeof out, "%.2f NM", std::abs(replay.now.distance_nm));
    return "Eye " + whole_number(replay.now.height_ft) + " ft over the aim point, " + out +
           (replay.now.distance_nm < 0 ? " beyond" : " out");
}

double tick_at(const ProfilePanel& panel, const ReplayView& replay, float x_px) {
    const auto away = [&](const ReplayPoint& p) { return std::abs(panel.x(p.distance_nm) - x_px); };
    return std::min_element(replay.flown.begin(), replay.flown.end(),
                            [&](const ReplayPoint& a, const ReplayPoint& b) { return away(a) < away(b); })
        ->tick;
}

}  // namespace

std::optional<double> draw_replay_plot(ImDrawList* list, ImVec2 min, ImVec2 max, const FlightView& seat,
                                       const ReplayView& replay) {
    const SideProfileView& path = seat.side_profile;
    if (replay.flown.empty() || max.x - min.x < 10 * note_px() || max.y - min.y < least_notes * note_px())
        return std::nullopt;
    const Plan plan = plan_for(min, max, path, replay);
    const ProfilePanel& side = plan.side;
    const Press press = press_area("side view", min, {max.x - min.x, max.y - min.y});

    draw_title(list, side, side_title(replay));
    draw_side(list, side, path, replay);
    std::array<Trace, all_traces> all = traces(replay, seat.instruments.flap_names);
    float shares = 0;
    for (std::size_t i = 0; i < plan.traces; ++i) shares += all[i].share;
    ProfilePanel lowest = side;
    for (std::size_t i = 0; i < plan.traces; ++i) {
        const float top = lowest.max.y + title_px();
        ProfilePanel panel = side;
        panel.min.y = top;
        panel.max.y = top + std::floor(plan.trace_room * all[i].share / shares);
        panel.low = all[i].low;
        panel.high = all[i].high;
        draw_trace(list, panel, all[i], replay, i == 0);
        lowest = panel;
    }
    draw_distance_axis(list, lowest);
    if (!press.held) return std::nullopt;
    return tick_at(side, replay, ImGui::GetIO().MousePos.x);
}

}  // namespace slopewise
