#include <cmath>

#include "base/units.h"
#include "data/write_parts.h"

namespace slopewise {
namespace {

std::string name_in(auto names, auto value) { return std::string(names[static_cast<std::size_t>(value)]); }

// So that a limit at the end of its range is read again as within it.
double rounded(double value) { return std::round(value * 1e6) / 1e6; }

Json aids_json(const LessonAids& aids) {
    Json json{{"lights", name_in(lesson_lights_names, aids.lights)}};
    if (aids.lights_height_m > 0.0) json["lights_height_ft"] = rounded(ft_from_m(aids.lights_height_m));
    if (aids.airspeed_hidden) json["airspeed_hidden"] = true;
    if (aids.eyes_outside) json["eyes_outside"] = true;
    json["help_stage"] = aids.help_stage;
    return json;
}

Json set_up_json(const SetUp& set_up) {
    Json json{{"name", set_up.name}};
    if (set_up.unstable) json["unstable"] = true;
    if (set_up.lights_hidden) json["lights_hidden"] = true;
    json["start"] = start_json(set_up.start);
    if (!set_up.runway_id.empty()) json["runway"] = set_up.runway_id;
    if (set_up.wind.has_value()) json["wind"] = wind_json(*set_up.wind);
    if (set_up.failure.has_value()) json["failure"] = failure_json(*set_up.failure);
    return json;
}

Json practice_json(const Practice& practice) {
    Json json = Json::object();
    if (practice.vary_start) json["vary_start"] = true;
    if (practice.vary_wind) json["vary_wind"] = true;
    if (!practice.runways.empty()) json["runways"] = practice.runways;
    for (const SetUp& set_up : practice.set_ups) json["set_ups"].push_back(set_up_json(set_up));
    for (const double distance_m : practice.chain_m) json["chain_nm"].push_back(nm_from_m(distance_m));
    return json;
}

Json traffic_json(const Traffic& traffic) {
    return {{"ahead_nm", nm_from_m(traffic.ahead_m)},
            {"path_deg", deg_from_rad(traffic.path_rad)},
            {"touchdown_beyond_threshold_ft", ft_from_m(traffic.touchdown_m)},
            {"ground_speed_kt", kt_from_mps(traffic.ground_speed_mps)},
            {"wing_span_ft", ft_from_m(traffic.span_m)}};
}

Json requirement_json(const Requirement& requirement) {
    const RequirementKind& kind = kind_of(requirement);
    Json json{{"what", std::string(kind.name)}};
    if (kind.height != RequirementKind::Height::none)
        json["height_ft"] = rounded(ft_from_m(requirement.height_m));
    const std::string unit(kind.unit.key);
    if (requirement.least > -no_limit) json["least_" + unit] = rounded(requirement.least / kind.unit.si);
    if (requirement.most < no_limit) json["most_" + unit] = rounded(requirement.most / kind.unit.si);
    return json;
}

Json success_json(const Success& success) {
    Json requirements = Json::array();
    for (const Requirement& requirement : success.requirements)
        requirements.push_back(requirement_json(requirement));
    return {{"requirements", requirements}, {"passes", success.passes}, {"of_last_runs", success.runs}};
}

Json syllabus_json(const Syllabus& syllabus) {
    Json json{{"group", name_in(lesson_group_names, syllabus.group)}};
    if (syllabus.place > 0) json["place"] = syllabus.place;
    if (!syllabus.next.empty()) json["next"] = syllabus.next;
    if (!syllabus.drill.empty()) json["drill"] = syllabus.drill;
    return json;
}

Json source_json(const LessonSource& source) {
    Json json{{"of", source.of}, {"sure", name_in(certainty_names, source.certainty)}};
    if (!source.document.empty()) json["document"] = source.document;
    if (!source.section.empty()) json["section"] = source.section;
    return json;
}

Json teaching_json(const Teaching& teaching) {
    Json sources = Json::array();
    for (const LessonSource& source : teaching.sources) sources.push_back(source_json(source));
    return {{"why", teaching.why},
            {"instructor_says", teaching.instructor_says},
            {"mistakes", teaching.mistakes},
            {"sources", sources}};
}

}  // namespace

void add_teaching(Json& json, const Lesson& lesson) {
    if (lesson.briefed_flap >= 0) json["briefed_flap"] = lesson.briefed_flap;
    if (lesson.glide) json["glide"] = true;
    if (lesson.traffic.there()) json["traffic"] = traffic_json(lesson.traffic);
    if (lesson.hands != Hands::both) json["hands"] = name_in(hands_names, lesson.hands);
    if (lesson.aids != LessonAids{}) json["aids"] = aids_json(lesson.aids);
    if (Json practice = practice_json(lesson.practice); !practice.empty()) json["practice"] = practice;
    if (!lesson.success.requirements.empty()) json["success"] = success_json(lesson.success);
    if (lesson.syllabus != Syllabus{}) json["syllabus"] = syllabus_json(lesson.syllabus);
    if (lesson.teaching != Teaching{}) json["teaching"] = teaching_json(lesson.teaching);
}

}  // namespace slopewise
