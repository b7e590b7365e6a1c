#include "ui/class_kept.h"

#include <algorithm>
#include <array>

#include "data/json_tree.h"
#include "ui/app.h"
#include "ui/drive_asking.h"
#include "ui/drive_station.h"

namespace slopewise {
namespace {

// A desk's own text, as it likes; an empty one is not kept.
struct KeptDesk {
    std::string_view name;
    std::string (*text)(const App& app);
    void (*take)(App& app, const std::string& text);
};

constexpr std::array<std::string_view, 3> panels{"ask", "station", "show"};

std::string panel_text(const App& app) {
    return std::string(panels[static_cast<std::size_t>(app.room.panel)]) + (app.room.alone ? " away" : "");
}

void take_panel(App& app, const std::string& text) {
    for (std::size_t i = 0; i < panels.size(); ++i)
        if (text.starts_with(panels[i])) app.room.panel = static_cast<ClassRoomView::Panel>(i);
    app.room.alone = text.ends_with(" away");
}

std::string questions_text(const App& app) { return app.room.ask.chosen; }

std::string station_text(const App& app) {
    const StationDesk& desk = app.room.station;
    if (desk.demonstrator >= 0) return std::string(pilot_names[static_cast<std::size_t>(desk.demonstrator)]);
    return std::string(hands_names[static_cast<std::size_t>(hands_of(desk.share))]);
}

void take_station(App& app, const std::string& text) {
    StationDesk& desk = app.room.station;
    const auto* const pilot = std::ranges::find(pilot_names, text);
    if (pilot != pilot_names.end()) desk.demonstrator = static_cast<int>(pilot - pilot_names.begin());
    const auto* const hands = std::ranges::find(hands_names, text);
    if (hands != hands_names.end()) desk.share = share_of(static_cast<Hands>(hands - hands_names.begin()));
    if (app.flight) seat_at_station(app);
}

// A desk with something to keep: a row here.
constexpr std::array<KeptDesk, 3> desks{{{"panel", panel_text, take_panel},
                                         {"questions", questions_text, take_up_asking},
                                         {"station", station_text, take_station}}};

}  // namespace

std::string kept_room_text(const App& app) {
    std::string text = "{";
    for (const KeptDesk& desk : desks) {
        const std::string own = desk.text(app);
        if (own.empty()) continue;
        if (text.size() > 1) text += ',';
        text.append("\"").append(desk.name).append("\":").append(json_string(own));
    }
    return text + "}";
}

void take_kept_room(App& app, std::string_view text) {
    const Result<JsonNode> parsed = parse_json(text, "What the class window kept");
    if (!parsed.ok()) return;
    for (const JsonMember& member : parsed.value->members)
        for (const KeptDesk& desk : desks)
            if (member.name == desk.name && member.value.kind == JsonNode::Kind::text)
                desk.take(app, member.value.text);
}

}  // namespace slopewise
