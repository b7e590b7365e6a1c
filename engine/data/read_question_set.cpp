#include "data/read_question_set.h"

#include "base/units.h"
#include "data/fields.h"
#include "data/read_happenings.h"
#include "data/read_outlook.h"

namespace slopewise {
namespace {

DrillStart read_stands(Fields fields) {
    DrillStart stands;
    stands.distance_m = m_from_nm(fields.number("distance_nm", {0.25, 9.0}));
    stands.offset_rad = rad_from_deg(fields.number_or("offset_deg", 0.0, {-2.0, 3.0}));
    stands.steeper_rad = rad_from_deg(fields.number_or("steeper_deg", 0.0, {-5.0, 5.0}));
    stands.faster_mps = mps_from_kt(fields.number_or("faster_kt", 0.0, {-15.0, 30.0}));
    stands.flap_short = fields.has("flap_short") ? fields.integer("flap_short", 0, 3) : 0;
    stands.headwind_mps = mps_from_kt(fields.number_or("headwind_kt", 0.0, {-15.0, 40.0}));
    fields.finish();
    return stands;
}

AidsHidden read_hidden(Fields& fields, QuestionKind kind) {
    AidsHidden hidden{};
    if (!fields.has("hidden")) return hidden;
    for (const std::string& name : fields.texts("hidden", 1, class_aid_names.size(), 40)) {
        bool known = false;
        for (std::size_t i = 0; i < class_aid_names.size(); ++i) {
            if (name != class_aid_names[i]) continue;
            known = hidden[i] = true;
        }
        if (known) continue;
        std::string names;
        for (const std::string_view one : class_aid_names)
            names += (names.empty() ? "\"" : ", \"") + std::string(one) + "\"";
        fields.report("hidden", "has \"" + name + "\", which cannot be hidden", names);
    }
    if (kind == QuestionKind::lights && hidden[static_cast<std::size_t>(ClassAid::lights)])
        fields.report("hidden", "has the lights that are asked about", "anything else");
    return hidden;
}

Question read_question(Fields& fields) {
    Question question;
    question.kind = static_cast<QuestionKind>(fields.one_of("asks", question_kind_names));
    question.words = fields.text_or("words", "", 120);
    question.stands = read_stands(fields.object("stands"));
    question.runway_id = fields.text_or("runway", "", 40);
    if (fields.has("outlook")) question.outlook = read_outlook(fields.object("outlook"));
    if (fields.has("failures")) {
        for (const Fields& failure : fields.list("failures", 1, most_question_failures))
            question.failures.push_back(read_failure(failure));
    }
    question.run_s = fields.number_or("run_s", question.run_s, {0.0, 60.0});
    question.run_on_s = fields.number_or("run_on_s", question.run_on_s, {0.0, 120.0});
    question.hidden = read_hidden(fields, question.kind);
    question.side_profile_after = fields.flag_or("side_profile_after", true);
    if (question.kind == QuestionKind::moves_first) {
        question.step = static_cast<ControlStep>(fields.one_of("moved", control_step_names));
        question.step_share = fields.number_or("moved_percent", 20.0, {1.0, 100.0}) / 100.0;
    }
    fields.finish();
    return question;
}

}  // namespace

Result<QuestionSet> read_question_set(const JsonNode& root, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(root, file, "", problems);
    QuestionSet set;
    fields.text("kind");
    set.id = fields.text("id", 40);
    set.title = fields.text("title", 80);
    set.about = fields.text_or("about", "", 200);
    if (fields.has("place")) set.place = fields.integer("place", 1, 99);
    for (Fields& question : fields.list("questions", 1, most_questions))
        set.questions.push_back(read_question(question));
    fields.finish();
    if (!problems.empty()) return failure<QuestionSet>(std::move(problems));
    return success(std::move(set));
}

}  // namespace slopewise
