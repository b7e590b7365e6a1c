#include "ui/station_view.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "base/units.h"
#include "ui/app.h"
#include "ui/station_rows.h"

namespace slopewise {
namespace {

constexpr std::size_t points_a_sample = 10;  // the calm flight keeps ten a second

// What is less is not told: half a lamp's height over the runway, a needle's width, a breath.
constexpr double told_ft = 10.0, told_kt = 1.0, told_s = 1.0;

int chosen_wish(const App& app, StationWish wish) {
    const StationDesk& desk = app.room.station;
    const RoomShown& shown = app.room.shown;
    switch (wish) {
    case StationWish::who_has: return desk.demonstrator >= 0 ? -1 : static_cast<int>(desk.share);
    case StationWish::demonstrate: return desk.demonstrator + 1;
    case StationWish::calm_beside: return shown.ghost ? 1 : 0;
    case StationWish::lights: return shown.lights ? 0 : 1;
    case StationWish::again:
    case StationWish::restore: break;  // done, and then nothing stands
    }
    return -1;
}

void make_rows(const App& app, StationView& view) {
    view.groups.clear();
    for (const StationGroupWords& group : station_groups()) {
        StationView::Group& made = view.groups.emplace_back();
        made.title = group.title;
        for (const StationRowWords& row : group.rows)
            made.rows.push_back({std::string(row.label), station_choices(row, app.flight->scenario), -1});
    }
    view.flight = app.room.flights;
}

void write_who(const StationDesk& desk, std::string& words) {
    words = "The model pilot ";
    if (desk.demonstrator >= 0) {
        words.append(pilot_words[static_cast<std::size_t>(desk.demonstrator)]).append(".");
        return;
    }
    switch (desk.share) {
    case ControlShare::both: words = "The one at the keys flies."; break;
    case ControlShare::power:
        words.append("has the stick and the trim, the one at the keys the power.");
        break;
    case ControlShare::pitch:
        words.append("has the power, the one at the keys the stick and the trim.");
        break;
    case ControlShare::none: words.append("flies, the one at the keys watches."); break;
    }
}

void append(std::string& words, const char* form, double value, const char* word) {
    char text[48];
    std::snprintf(text, sizeof text, form, value, word);
    words.append(text);
}

// "Same hands in calm air: 120 ft higher here, 5 kt faster, 14 s earlier".
void write_calm(const CalmDifference& calm, std::string& words) {
    words = "Same hands in calm air: ";
    if (calm.came_down) {
        append(words, "on the ground %.1f NM %s", std::abs(nm_from_m(calm.short_of_m)),
               "before the aim point");
        return;
    }
    const double ft = ft_from_m(calm.higher_m), kt = kt_from_mps(calm.faster_mps);
    if (std::abs(ft) < told_ft) words.append("as high here");
    else
        append(words, "%.0f ft %s here", 10.0 * std::round(std::abs(ft) / 10.0), ft > 0 ? "higher" : "lower");
    if (std::abs(kt) >= told_kt) append(words, ", %.0f kt %s", std::abs(kt), kt > 0 ? "faster" : "slower");
    if (calm.was_there && calm.earlier_s >= told_s) append(words, ", %.0f s %s", calm.earlier_s, "earlier");
}

}  // namespace

void calm_beside_view(const App& app, SideProfileView& view) {
    const CalmBeside& calm = app.room.station.calm;
    if (!app.room.shown.ghost || calm.flown.empty()) {
        view.calm.clear();
        view.calm_words.clear();
        return;
    }
    const auto point = [](const CalmPoint& p) {
        return ProfilePoint{nm_from_m(p.distance_m), ft_from_m(p.eye_height_m), kt_from_mps(p.cas_mps), {}};
    };
    if (!view.calm.empty()) view.calm.pop_back();  // where it was in the last frame
    if (view.calm.size() * points_a_sample > calm.flown.size()) view.calm.clear();  // another flight's
    view.calm.reserve(calm.flown.capacity() / points_a_sample + 2);
    for (std::size_t i = view.calm.size() * points_a_sample; i < calm.flown.size(); i += points_a_sample)
        view.calm.push_back(point(calm.flown[i]));
    view.calm.push_back(point(calm.flown.back()));
    view.calm_words.reserve(96);
    write_calm(calm_difference(calm, observe(app.flight->scenario, app.flight->attempt)), view.calm_words);
}

void station_view(const App& app, StationView& view) {
    const StationDesk& desk = app.room.station;
    if (view.flight != app.room.flights) make_rows(app, view);
    const auto groups = station_groups();
    for (std::size_t i = 0; i < groups.size(); ++i) {
        for (std::size_t j = 0; j < groups[i].rows.size(); ++j) {
            const StationRowWords& row = groups[i].rows[j];
            view.groups[i].rows[j].chosen =
                row.row ? choice_now(*row.row, app.flight->scenario, app.flight->attempt)
                        : chosen_wish(app, row.wish);
        }
    }
    view.who.reserve(96);
    write_who(desk, view.who);
    view.trouble = desk.trouble;
}

void station_text(const StationView& view, std::string& text) {
    text += "Station.\n";
    if (!view.trouble.empty()) text += view.trouble + "\n";
    text += view.who + "\n";
    for (const StationView::Group& group : view.groups) {
        text += group.title + ".\n";
        for (const StationView::Row& row : group.rows) {
            text += row.label + ": ";
            text += row.chosen < 0 ? "none of " : row.choices[static_cast<std::size_t>(row.chosen)] + ", of ";
            for (std::size_t i = 0; i < row.choices.size(); ++i)
                text += (i == 0 ? "" : ", ") + row.choices[i];
            text += ".\n";
        }
    }
}

}  // namespace slopewise
