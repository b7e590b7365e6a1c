// A set of questions against a catalog.
#include <algorithm>

#include "base/units.h"
#include "data/catalog.h"
#include "lesson/where_and_when.h"
#include "question/set_up.h"

namespace slopewise {
namespace {

// Within what a lesson's file may say of its start (read_start): it is flown as its own text has it. More
// than 9 degrees high it cannot be: it stands at most 3 high, and at most 8 degrees down there is no higher
// line.
bool can_be_written(const Start& start) {
    const double descent_deg = deg_from_rad(-start.path_rad), offset_deg = deg_from_rad(start.offset_rad);
    return start.distance_m <= m_from_nm(10.0) && descent_deg >= 0.0 && descent_deg <= 8.0 &&
           offset_deg >= -2.0;
}

// Whether this aircraft comes steadily to how the question stands on this runway.
bool is_flown_by(const Question& question, const Aircraft& aircraft, const Runway& runway) {
    WhereAndWhen there;
    there.aircraft_id = aircraft.id;
    there.runway_id = runway.id;
    const Lesson lesson = lesson_at(Lesson{}, there, aircraft);
    const Lesson asked = question_lesson(question, make_scenario(lesson, aircraft, runway));
    return can_be_written(asked.start) && make_scenario(asked, aircraft, runway).start_trim.flyable;
}

}  // namespace

std::vector<Problem> check_question_set(const Catalog& catalog, const QuestionSet& set,
                                        const std::string& file) {
    std::vector<Problem> problems;
    for (std::size_t i = 0; i < set.questions.size(); ++i) {
        const Question& question = set.questions[i];
        const std::string at = "/questions/" + std::to_string(i);
        const std::string& id = question.runway_id;
        if (!id.empty() && find_runway(catalog, id) == nullptr) {
            std::string known;
            for (const Runway& runway : catalog.runways)
                known += (known.empty() ? "\"" : ", \"") + runway.id + "\"";
            problems.push_back({file, 0, at + "/runway", "is \"" + id + "\", which is not known", known});
            continue;
        }
        const bool flown = std::ranges::any_of(catalog.runways, [&](const Runway& runway) {
            return (id.empty() || runway.id == id) &&
                   std::ranges::any_of(catalog.aircraft, [&](const Aircraft& aircraft) {
                       return is_flown_by(question, aircraft, runway);
                   });
        });
        if (!flown)
            problems.push_back(
                {file, 0, at + "/stands", "cannot be flown by any aircraft here", "a steady approach"});
    }
    return problems;
}

}  // namespace slopewise
