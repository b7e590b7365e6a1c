#include "data/write_question_set.h"

#include <cmath>

#include "base/units.h"
#include "data/write_parts.h"

namespace slopewise {
namespace {

// A millionth of a unit, so that what was written is written again the same and ends of ranges are kept.
double rounded(double value) { return std::round(value * 1e6) / 1e6; }

void add(Json& json, const char* key, double value) {
    if (rounded(value) != 0.0) json[key] = rounded(value);
}

Json stands_json(const DrillStart& stands) {
    Json json{{"distance_nm", rounded(nm_from_m(stands.distance_m))}};
    add(json, "offset_deg", deg_from_rad(stands.offset_rad));
    add(json, "steeper_deg", deg_from_rad(stands.steeper_rad));
    add(json, "faster_kt", kt_from_mps(stands.faster_mps));
    if (stands.flap_short > 0) json["flap_short"] = stands.flap_short;
    add(json, "headwind_kt", kt_from_mps(stands.headwind_mps));
    return json;
}

Json question_json(const Question& question) {
    Json json{{"asks", question_kind_names[static_cast<std::size_t>(question.kind)]}};
    if (!question.words.empty()) json["words"] = question.words;
    if (question.kind == QuestionKind::moves_first) {
        json["moved"] = control_step_names[static_cast<std::size_t>(question.step)];
        json["moved_percent"] = rounded(100.0 * question.step_share);
    }
    json["stands"] = stands_json(question.stands);
    if (!question.runway_id.empty()) json["runway"] = question.runway_id;
    if (question.outlook) json["outlook"] = outlook_json(*question.outlook);
    for (const Failure& failure : question.failures) json["failures"].push_back(failure_json(failure));
    json["run_s"] = rounded(question.run_s);
    json["run_on_s"] = rounded(question.run_on_s);
    for (std::size_t i = 0; i < question.hidden.size(); ++i)
        if (question.hidden[i]) json["hidden"].push_back(class_aid_names[i]);
    if (!question.side_profile_after) json["side_profile_after"] = false;
    return json;
}

}  // namespace

std::string question_set_text(const QuestionSet& set) {
    Json json{{"kind", "questions"}, {"id", set.id}, {"title", set.title}};
    if (!set.about.empty()) json["about"] = set.about;
    if (set.place != QuestionSet{}.place) json["place"] = set.place;
    json["questions"] = Json::array();
    for (const Question& question : set.questions) json["questions"].push_back(question_json(question));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise
