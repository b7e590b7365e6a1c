#include "data/circumstances_json.h"

#include <nlohmann/json.hpp>

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::array<std::string_view, 3> path_names{"low", "on", "high"};
constexpr std::array<std::string_view, 3> speed_names{"slow", "on", "fast"};
constexpr int most_count = 1000000;

constexpr std::size_t most_instruments = 20, longest_name = 40;

std::vector<std::string> read_names(Fields& fields, std::string_view key) {
    std::vector<std::string> names;
    if (!fields.has(key)) return names;
    const JsonNode* list = fields.raw(key, JsonNode::Kind::list);
    if (list == nullptr) return names;
    for (const JsonNode& item : list->items) {
        const bool good = !item.text.empty() && item.text.size() <= longest_name;  // of other kinds: empty
        if (!good || names.size() == most_instruments) {
            fields.report(key, "has an entry that is no instrument", "up to 20 names of 1 to 40 bytes");
            return {};
        }
        names.push_back(item.text);
    }
    return names;
}

RecordedAids read_aids(Fields fields) {
    RecordedAids aids;
    aids.guide_s = fields.number_or("guide_s", 0.0, {0.0, 1e5});
    if (fields.has("guide_calls")) aids.guide_calls = fields.integer("guide_calls", 0, most_count);
    aids.guide_ready = fields.flag_or("guide_ready", false);
    if (fields.has("call_outs")) aids.call_outs = fields.integer("call_outs", 0, most_count);
    if (fields.has("pauses")) aids.pauses = fields.integer("pauses", 0, most_count);
    if (fields.has("peeks")) aids.peeks = fields.integer("peeks", 0, most_count);
    aids.panel_share = fields.number_or("panel_percent", -100.0, {0.0, 100.0}) / 100.0;
    aids.longest_peek_s = fields.number_or("longest_peek_s", -1.0, {0.0, 1e5});
    aids.side_profile = fields.flag_or("side_profile", false);
    aids.magnifier = fields.flag_or("magnifier", false);
    aids.lamp_letters = fields.flag_or("lamp_letters", false);
    aids.lamp_shapes = fields.flag_or("lamp_shapes", false);
    aids.lights_hidden = fields.flag_or("lights_hidden", false);
    aids.airspeed_hidden = fields.flag_or("airspeed_hidden", false);
    aids.covered = read_names(fields, "covered");
    aids.failed = read_names(fields, "failed");
    aids.partner_s = fields.number_or("partner_s", 0.0, {0.0, 1e5});
    aids.lost_s = fields.number_or("lost_s", 0.0, {0.0, 1e5});
    fields.finish();
    return aids;
}

Estimate read_estimate(Fields fields) {
    Estimate estimate;
    estimate.path = static_cast<Estimate::Path>(fields.one_of("path", path_names));
    estimate.speed = static_cast<Estimate::Speed>(fields.one_of("speed", speed_names));
    estimate.stable_at_gate = fields.flag_or("stable_at_gate", true);
    fields.finish();
    return estimate;
}

Json aids_json(const RecordedAids& aids) {
    Json json = Json::object();
    if (aids.guide_s > 0.0) json["guide_s"] = aids.guide_s;
    if (aids.guide_calls > 0) json["guide_calls"] = aids.guide_calls;
    if (aids.guide_ready) json["guide_ready"] = true;
    if (aids.call_outs >= 0) json["call_outs"] = aids.call_outs;
    if (aids.pauses > 0) json["pauses"] = aids.pauses;
    if (aids.peeks >= 0) json["peeks"] = aids.peeks;
    if (aids.panel_share >= 0.0) json["panel_percent"] = 100.0 * aids.panel_share;
    if (aids.longest_peek_s >= 0.0) json["longest_peek_s"] = aids.longest_peek_s;
    if (aids.side_profile) json["side_profile"] = true;
    if (aids.magnifier) json["magnifier"] = true;
    if (aids.lamp_letters) json["lamp_letters"] = true;
    if (aids.lamp_shapes) json["lamp_shapes"] = true;
    if (aids.lights_hidden) json["lights_hidden"] = true;
    if (aids.airspeed_hidden) json["airspeed_hidden"] = true;
    if (!aids.covered.empty()) json["covered"] = aids.covered;
    if (!aids.failed.empty()) json["failed"] = aids.failed;
    if (aids.partner_s > 0.0) json["partner_s"] = aids.partner_s;
    if (aids.lost_s > 0.0) json["lost_s"] = aids.lost_s;
    return json;
}

}  // namespace

Circumstances read_circumstances(Fields fields) {
    Circumstances c;
    c.student = fields.text_or("student", "");
    c.started_unix_s = static_cast<std::int64_t>(fields.number_or("started_unix_s", 0.0, {0.0, 1e11}));
    c.device = fields.text_or("device", "");
    c.version = fields.text_or("version", "");
    if (fields.has("aids")) c.aids = read_aids(fields.object("aids"));
    if (fields.has("estimate")) c.estimate = read_estimate(fields.object("estimate"));
    fields.finish();
    return c;
}

std::string circumstances_text(const Circumstances& c) {
    Json json = Json::object();
    if (!c.student.empty()) json["student"] = c.student;
    if (c.started_unix_s > 0) json["started_unix_s"] = c.started_unix_s;
    if (!c.device.empty()) json["device"] = c.device;
    if (!c.version.empty()) json["version"] = c.version;
    const Json aids = aids_json(c.aids);
    if (!aids.empty()) json["aids"] = aids;
    if (c.estimate)
        json["estimate"] = {{"path", path_names[static_cast<std::size_t>(c.estimate->path)]},
                            {"speed", speed_names[static_cast<std::size_t>(c.estimate->speed)]},
                            {"stable_at_gate", c.estimate->stable_at_gate}};
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace slopewise
