#include "data/school_file.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "data/criteria_file.h"
#include "data/read_aircraft.h"

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

constexpr Range flap_height_ft{100.0, 3000.0};
constexpr int most_setting = 3;  // an aircraft has four at most

// Characters of UTF-8: the bytes that do not go on with one.
std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0u) != 0x80u; }));
}

std::string read_name(Fields& fields) {
    if (!fields.has("name")) return {};
    const JsonNode* found = fields.raw("name", JsonNode::Kind::text);
    if (found == nullptr) return {};
    const std::size_t length = characters(found->text);
    const bool plain = std::ranges::none_of(
        found->text, [](char c) { return static_cast<unsigned char>(c) < 0x20u || c == 0x7F; });
    if (plain && length <= most_school_name) return found->text;
    fields.report("name",
                  plain ? "is " + std::to_string(length) + " characters long" : "has a control character",
                  "at most " + std::to_string(most_school_name) + " characters on one line");
    return {};
}

// The highest first, each with more flap than the one before.
void read_flap_schedule(Fields& fields, School& school) {
    if (!fields.has("flap_schedule")) return;
    for (Fields& step : fields.list("flap_schedule", 0, most_flap_steps)) {
        ScheduledFlap read{m_from_ft(step.number("by_ft", flap_height_ft)),
                           step.integer("setting", 1, most_setting)};
        step.finish();
        const ScheduledFlap* before =
            school.flap_step_count > 0 ? &school.flap_schedule[school.flap_step_count - 1] : nullptr;
        if (before != nullptr &&
            (read.by_height_m >= before->by_height_m || read.setting <= before->setting)) {
            fields.report("flap_schedule", "has a step that is not lower with more flap than the one before",
                          "the highest first, each with more flap");
            school.flap_step_count = 0;
            return;
        }
        school.flap_schedule[school.flap_step_count++] = read;
    }
}

std::optional<SchoolAircraft> read_own_aircraft(Fields& fields, const std::string& file,
                                                std::vector<Problem>& problems) {
    if (!fields.has("aircraft")) return std::nullopt;
    const JsonNode* found = fields.raw("aircraft", JsonNode::Kind::object);
    if (found == nullptr) return std::nullopt;
    Result<Aircraft> read = read_aircraft(*found, file);
    for (Problem& problem : read.problems) {
        problem.path = "/aircraft" + problem.path;
        problems.push_back(std::move(problem));
    }
    if (!read.ok()) return std::nullopt;
    return SchoolAircraft{std::move(*read.value), json_text(*found)};
}

Json flap_schedule_json(const School& school) {
    Json steps = Json::array();
    for (std::size_t i = 0; i < school.flap_step_count; ++i) {
        const ScheduledFlap& step = school.flap_schedule[i];
        steps.push_back(
            {{"by_ft", std::round(1e6 * ft_from_m(step.by_height_m)) / 1e6}, {"setting", step.setting}});
    }
    return steps;
}

}  // namespace

School read_school(Fields fields, const std::string& file, std::vector<Problem>& problems) {
    constexpr std::string_view kinds[] = {"school"};
    School school;
    fields.one_of("kind", kinds);
    school.name = read_name(fields);
    if (fields.has("criteria")) school.criteria = read_criteria(fields.object("criteria"));
    school.gust_share = fields.number_or("gust_percent", 100.0 * school.gust_share, {0.0, 100.0}) / 100.0;
    school.runway_unit = static_cast<RunwayUnit>(fields.one_of_or("runway_unit", 0, runway_unit_names));
    school.pressure_unit =
        static_cast<PressureUnit>(fields.one_of_or("pressure_unit", 0, pressure_unit_names));
    school.stick_hand = static_cast<StickHand>(fields.one_of_or("stick_hand", 0, stick_hand_names));
    read_flap_schedule(fields, school);
    school.aircraft = read_own_aircraft(fields, file, problems);
    fields.finish();
    return school;
}

Result<School> read_school(std::string_view text, const std::string& file) {
    Result<JsonNode> parsed = parse_json(text, file);
    if (!parsed.ok()) return failure<School>(std::move(parsed.problems));
    std::vector<Problem> problems;
    School school = read_school(Fields(*parsed.value, file, "", problems), file, problems);
    if (!problems.empty()) return failure<School>(std::move(problems));
    return success(std::move(school));
}

std::string school_text(const School& school) {
    Json json{{"kind", "school"}};
    if (!school.name.empty()) json["name"] = school.name;
    json["gust_percent"] = std::round(1e6 * 100.0 * school.gust_share) / 1e6;
    json["runway_unit"] = runway_unit_names[static_cast<std::size_t>(school.runway_unit)];
    json["pressure_unit"] = pressure_unit_names[static_cast<std::size_t>(school.pressure_unit)];
    json["stick_hand"] = stick_hand_names[static_cast<std::size_t>(school.stick_hand)];
    if (school.flap_step_count > 0) json["flap_schedule"] = flap_schedule_json(school);
    json["criteria"] = Json::parse(criteria_text(school.criteria), nullptr, false);
    if (school.aircraft) json["aircraft"] = Json::parse(school.aircraft->text, nullptr, false);
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise
