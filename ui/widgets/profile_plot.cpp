#include "ui/widgets/profile_plot.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <string>

#include "ui/theme.h"
#include "ui/widgets/dial.h"
#include "ui/widgets/light_picture.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/profile_panel.h"

namespace slopewise {

namespace {

constexpr double flicker_nm = 0.02;  // about a second

using Panel = ProfilePanel;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// A step that gives between three and six divisions.
double pleasant_step(double range) {
    for (const double step : {5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 250.0, 500.0}) {
        if (range / step <= 5.01) return step;
    }
    return 1000.0;
}

// Numbers right-aligned against the axis; the topmost carries the unit above it.
void value_axis(ImDrawList* list, const Panel& panel, double step, const char* unit) {
    const Palette& colour = theme().colour;
    float last_y = 1e9f;
    for (double value = std::ceil(panel.low / step) * step; value <= panel.high + 1e-9; value += step) {
        const float y = panel.y(value);
        list->AddLine({panel.min.x - note_px() * 0.25f, y}, {panel.min.x, y}, colour.ink_soft, 1.0f);
        if (last_y - y < note_px() * 1.1f) continue;
        last_y = y;
        const std::string words = whole_number(value);
        text_right(list, {panel.min.x - note_px() * 0.45f, std::round(y - note_px() / 2)}, TextSize::note,
                   colour.ink, words);
    }
    text_right(
        list, {panel.min.x - note_px() * 0.45f, std::round(std::min(panel.min.y, last_y) - note_px() * 1.5f)},
        TextSize::note, colour.ink_soft, unit);
}

const ProfilePoint* nearest(const std::vector<ProfilePoint>& profile, double distance_nm) {
    const auto found = std::min_element(
        profile.begin(), profile.end(), [distance_nm](const ProfilePoint& a, const ProfilePoint& b) {
            return std::abs(a.distance_nm - distance_nm) < std::abs(b.distance_nm - distance_nm);
        });
    return found == profile.end() ? nullptr : &*found;
}

// Names at the lines themselves. All of them fall to the right, so there is always room below a line to the
// left of a place on it, and above it to the right.
void name_below(ImDrawList* list, const Panel& panel, double distance_nm, double value, const char* words,
                ImU32 ink) {
    text_right(list, {panel.x(distance_nm), std::round(panel.y_inside(value) + note_px() * 0.2f)},
               TextSize::note, ink, words);
}
void name_above(ImDrawList* list, const Panel& panel, double distance_nm, double value, const char* words,
                ImU32 ink) {
    text_at(list, {std::round(panel.x(distance_nm)), std::round(panel.y_inside(value) - note_px() * 1.1f)},
            TextSize::note, ink, words);
}

void label_lines(ImDrawList* list, const Panel& panel, const SummaryView& summary) {
    const Palette& colour = theme().colour;
    // The path and the flown line are named where they are farthest apart, clear of the band's own name; a
    // flight that ended before is not named.
    double apart_ft = -1, place_nm = 0.7 * panel.far_nm;
    bool flown_is_above = true;
    for (const ProfilePoint& p : summary.profile) {
        const double off_ft = p.height_ft - height_ft(summary.path_deg, p.distance_nm);
        if (p.distance_nm < 0.58 * panel.far_nm || p.distance_nm > 0.85 * panel.far_nm ||
            std::abs(off_ft) <= apart_ft)
            continue;
        apart_ft = std::abs(off_ft);
        place_nm = p.distance_nm;
        flown_is_above = off_ft >= 0;
    }
    char words[64];
    std::snprintf(words, sizeof words, "%.3g\xC2\xB0 path", summary.path_deg);
    const ProfilePoint* point = apart_ft >= 0 ? nearest(summary.profile, place_nm) : nullptr;
    const double path_value = height_ft(summary.path_deg, place_nm);
    if (flown_is_above) name_below(list, panel, place_nm, path_value, words, colour.ink_soft);
    else name_above(list, panel, place_nm, path_value, words, colour.ink_soft);
    if (point != nullptr && flown_is_above)
        name_above(list, panel, place_nm, point->height_ft, "flown", colour.ink);
    if (point != nullptr && !flown_is_above)
        name_below(list, panel, place_nm, point->height_ft, "flown", colour.ink);

    const double edge_nm = 0.40 * panel.far_nm;
    std::snprintf(words, sizeof words, "\xC2\xB1%.2g\xC2\xB0, at least \xC2\xB1%.0f ft", summary.wedge_deg,
                  summary.floor_ft);
    name_above(list, panel, edge_nm,
               height_ft(summary.path_deg, edge_nm) + tolerance_at(summary, edge_nm).above_ft, words,
               colour.ink_soft);
}

void draw_path(ImDrawList* list, const Panel& panel, const SummaryView& summary) {
    const Palette& colour = theme().colour;
    draw_wedge(list, panel, summary);
    list->AddLine({panel.x(panel.far_nm), panel.y_inside(height_ft(summary.path_deg, panel.far_nm))},
                  {panel.x(0), panel.y(0)}, colour.ink_soft, 1.0f);
    draw_flown(list, panel, summary.profile, note_px() * 0.13f, theme().colour.ink,
               [](const ProfilePoint& p) { return p.height_ft; });
    draw_frame(list, panel);

    label_lines(list, panel, summary);
    text_right(list, {panel.max.x, panel.min.y}, TextSize::note, colour.ink,
               "Height of the eye above the aim point", true);
}

void draw_speed(ImDrawList* list, const Panel& panel, const SummaryView& summary) {
    const Palette& colour = theme().colour;
    const double low_kt = summary.target_kt - summary.slow_kt, high_kt = summary.target_kt + summary.fast_kt;
    fill_between(
        list, panel, theme().colour.band, [&](double) { return high_kt; }, [&](double) { return low_kt; });
    const float target_y = panel.y(summary.target_kt);
    list->AddLine({panel.min.x, target_y}, {panel.max.x, target_y}, colour.ink_soft, 1.0f);
    draw_flown(list, panel, summary.profile, note_px() * 0.13f, theme().colour.ink,
               [](const ProfilePoint& p) { return p.airspeed_kt; });
    draw_frame(list, panel);
}

// A picture's tablet in its lane.
struct Tablet {
    const PictureChange* change;
    double lasts_nm;
    float left;
};

// Tablets stand where their picture begins, pushed to the right a little where they crowd. Where that is not
// enough, the shorter-lived of two neighbours gives way; its tick on the path remains.
std::vector<Tablet> placed(const std::vector<PictureChange>& changes, const Panel& panel, float width,
                           float between, double end_nm) {
    std::vector<Tablet> tablets;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const double next_nm = i + 1 < changes.size() ? changes[i + 1].distance_nm : end_nm;
        tablets.push_back({&changes[i], changes[i].distance_nm - next_nm, 0.0f});
    }
    for (bool crowded = true; crowded;) {
        crowded = false;
        float free_from = panel.min.x - 1;
        for (std::size_t i = 0; i < tablets.size() && !crowded; ++i) {
            const float x = panel.x(tablets[i].change->distance_nm);
            tablets[i].left = std::max(x, free_from);
            free_from = tablets[i].left + width + between;
            crowded = tablets[i].left - x > 0.5f * width || tablets[i].left + width > panel.max.x + 1;
            if (!crowded) continue;
            const bool drop_before = i > 0 && tablets[i - 1].lasts_nm < tablets[i].lasts_nm;
            tablets.erase(tablets.begin() + static_cast<std::ptrdiff_t>(drop_before ? i - 1 : i));
        }
    }
    return tablets;
}

void draw_lights(ImDrawList* list, const Panel& panel, float top, float height, const SummaryView& summary) {
    const std::vector<PictureChange> changes = picture_changes(summary.profile, summary.stacked_lights);
    if (changes.empty()) return;
    for (const PictureChange& change : changes) {
        const float x = panel.x(change.distance_nm);
        list->AddLine({x, panel.y_inside(change.height_ft)}, {x, top}, theme().colour.rule, 1.0f);
    }
    const float width = light_picture_size(height, changes.front().picture).x;
    const double end_nm = summary.profile.back().distance_nm;
    for (const Tablet& tablet : placed(changes, panel, width, height * 0.25f, end_nm)) {
        draw_light_picture(list, {std::round(tablet.left), top}, height, tablet.change->picture);
    }
}

void draw_worst(ImDrawList* list, const Panel& path, const Panel& speed, const SummaryView& summary) {
    if (summary.worst_distance_nm < 0) return;
    const ProfilePoint* point = nearest(summary.profile, summary.worst_distance_nm);
    if (point == nullptr) return;
    const ImU32 ink = theme().colour.attention;
    const float x = path.x(point->distance_nm), mark = note_px() * 0.8f;
    const float height_y = path.y_inside(point->height_ft), speed_y = speed.y_inside(point->airspeed_kt);
    const float line = std::max(1.0f, note_px() * 0.06f);
    if (path.max.y > height_y + mark) list->AddLine({x, height_y + mark * 0.6f}, {x, path.max.y}, ink, line);
    list->AddLine({x, speed.min.y}, {x, speed.max.y}, ink, line);
    mark_out(list, {x, height_y}, mark, ink);
    mark_out(list, {x, speed_y}, mark, ink);
    // The word stands below the path where there is room to its left, which there is until close in.
    const ImVec2 extent = text_extent(TextSize::note, "worst", true);
    const float left = std::max(path.min.x + 4, x - extent.x - note_px() * 0.5f);
    const float y = std::min(path.max.y - extent.y - 2, height_y + note_px() * 0.5f);
    text_at(list, {std::round(left), std::round(y)}, TextSize::note, ink, "worst", true);
}

// Above the flown line, where the one fault was seen.
void draw_fault_moments(ImDrawList* list, const Panel& path, const SummaryView& summary) {
    for (const double distance_nm : summary.fault.moments_nm) {
        const ProfilePoint* point = nearest(summary.profile, distance_nm);
        if (point == nullptr) return;
        const float y = path.y_inside(point->height_ft) - note_px() * 0.2f;
        mark_seen(list, {path.x(point->distance_nm), y}, note_px() * 0.6f, theme().colour.accent);
    }
}

}  // namespace

std::vector<PictureChange> picture_changes(const std::vector<ProfilePoint>& profile, bool stacked) {
    const auto whole = [](const ProfilePoint& p) {
        std::array<int, 4> state{};
        for (std::size_t i = 0; i < state.size(); ++i)
            state[i] = p.white_fraction[i] < 0 ? -1 : (p.white_fraction[i] >= 0.5 ? 1 : 0);
        return state;
    };
    std::vector<PictureChange> changes;
    std::array<int, 4> shown{-2, -2, -2, -2};
    for (std::size_t i = 0; i < profile.size(); ++i) {
        const std::array<int, 4> now = whole(profile[i]);
        if (now == shown) continue;
        // It must last: look on until it changes or a moment has passed.
        std::size_t k = i;
        while (k + 1 < profile.size() && whole(profile[k + 1]) == now &&
               profile[i].distance_nm - profile[k].distance_nm < flicker_nm)
            ++k;
        if (i > 0 && profile[i].distance_nm - profile[k].distance_nm < flicker_nm && k + 1 < profile.size())
            continue;
        shown = now;
        PictureChange change{profile[i].distance_nm, profile[i].height_ft, {}};
        change.picture.stacked = stacked;
        for (const int lamp : now)
            if (lamp >= 0) change.picture.white_fraction.push_back(lamp);
        changes.push_back(std::move(change));
    }
    return changes;
}

void draw_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SummaryView& summary) {
    const float note = note_px(), left = min.x + text_extent(TextSize::note, "1000").x + note * 0.6f;
    const float lamps_px = std::round(note * 0.75f), axis_px = note * 1.5f, title_px = note * 1.4f;
    const float room = max.y - min.y - note * 1.5f - lamps_px - note * 0.8f - title_px - axis_px;
    if (room < 4 * note || max.x - left < 8 * note) return;

    double far_nm = 1.0, top_ft = 100.0, least_kt = summary.target_kt - summary.slow_kt,
           most_kt = summary.target_kt + summary.fast_kt;
    for (const ProfilePoint& p : summary.profile) {
        far_nm = std::max(far_nm, p.distance_nm);
        top_ft = std::max(top_ft, p.height_ft);
        least_kt = std::min(least_kt, p.airspeed_kt);
        most_kt = std::max(most_kt, p.airspeed_kt);
    }
    far_nm = std::ceil(far_nm * 2.0 - 0.05) / 2.0;
    top_ft = std::max(top_ft, height_ft(summary.path_deg, far_nm) + tolerance_at(summary, far_nm).above_ft);
    const double step_ft = pleasant_step(top_ft);

    Panel path{{left, min.y + note * 1.5f}, {max.x, 0}, far_nm,
               max.x - note * 2.2f,         0,          std::ceil(top_ft / step_ft - 0.05) * step_ft};
    path.max.y = path.min.y + room * 0.66f;
    Panel speed{{left, path.max.y + lamps_px + note * 0.8f + title_px},
                {max.x, max.y - axis_px},
                far_nm,
                path.aim_x,
                std::floor((least_kt - 2.0) / 5.0) * 5.0,
                std::ceil((most_kt + 2.0) / 5.0) * 5.0};

    draw_path(list, path, summary);
    value_axis(list, path, step_ft, "ft");
    draw_speed(list, speed, summary);
    value_axis(list, speed, pleasant_step(speed.high - speed.low), "kt");
    char words[64];
    std::snprintf(words, sizeof words, "Airspeed, target %.0f kt; tolerance \xE2\x88\x92%.0f to +%.0f kt",
                  summary.target_kt, summary.slow_kt, summary.fast_kt);
    // In a narrow plot the band alone shows the tolerance.
    if (text_extent(TextSize::note, words, true).x > max.x - left)
        std::snprintf(words, sizeof words, "Airspeed, target %.0f kt", summary.target_kt);
    text_right(list, {max.x, speed.min.y - title_px}, TextSize::note, theme().colour.ink, words, true);
    draw_distance_axis(list, speed);
    draw_lights(list, path, path.max.y + note * 0.4f, lamps_px, summary);
    draw_fault_moments(list, path, summary);
    draw_worst(list, path, speed, summary);
}

}  // namespace slopewise
