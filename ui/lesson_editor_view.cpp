#include <algorithm>

#include "base/units.h"
#include "data/write_lesson.h"
#include "share/own_lessons.h"
#include "ui/format.h"
#include "ui/lesson_editor.h"
#include "ui/lesson_editor_fields.h"
#include "ui/lesson_editor_parts.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// A row's words cost solving a trimmed start, so they are not made in every frame.
void make_rows(const LessonDesk& desk, const Catalog& catalog, OwnLessonsView& view) {
    view.made_edition = desk.edition;
    view.rows.clear();
    view.deleted.clear();
    for (const Lesson& lesson : desk.own)
        view.rows.push_back({lesson.id, lesson.title, lesson_words(catalog, lesson)});
    for (auto lesson = desk.deleted.rbegin(); lesson != desk.deleted.rend(); ++lesson)
        view.deleted.push_back({lesson->id, lesson->title.empty() ? "no title" : lesson->title, ""});
    view.count = std::to_string(desk.own.size()) + (desk.own.size() == 1 ? " lesson" : " lessons") +
                 " of at most " + std::to_string(most_own_lessons);
}

std::string standing_words(const LessonDraft& draft) {
    const std::size_t count = draft.problems.size();
    if (count == 0) return "It can be flown.";
    return count == 1 ? "One thing is to be put right."
                      : std::to_string(count) + " things are to be put right.";
}

// What to expect of it, as its briefing will say.
std::vector<LabelledValue> figures(const Briefing& briefing) {
    return {{"Sink", number_words(fpm_from_mps(briefing.sink_mps)), "ft/min", ""},
            {"Power", number_words(100.0 * briefing.power), "%", ""},
            {"Pitch", signed_words(deg_from_rad(briefing.pitch_rad), 1), "\u00b0", ""},
            {"Ground speed", number_words(kt_from_mps(briefing.ground_speed_mps)), "kt", ""}};
}

std::string wind_words(const Wind& wind) {
    const auto kt = [](double mps) { return signed_words(kt_from_mps(mps)) + " kt"; };
    if (wind.kind != Wind::Kind::table) {
        const std::string words = wind.headwind_mps == 0.0 ? "calm" : kt(wind.headwind_mps) + " headwind";
        return words + (wind.kind == Wind::Kind::logarithmic ? " at 10 m, less below" : "");
    }
    std::string words;
    for (std::size_t i = 0; i < static_cast<std::size_t>(wind.table_size); ++i)
        words += (words.empty() ? "" : ", ") + kt(wind.table[i].headwind_mps) + " at " +
                 number_words(ft_from_m(wind.table[i].height_m)) + " ft";
    return words;
}

std::string air_words(const Lesson& lesson) {
    std::string words =
        lesson.turbulence_w20_mps > 0.0
            ? "rough as in " + number_words(kt_from_mps(lesson.turbulence_w20_mps)) + " kt of wind"
            : "smooth";
    if (const AirEvent* gust = first_gust(lesson))
        words += ", a gust of " + signed_words(kt_from_mps(gust->along_mps)) + " kt at " +
                 number_words(nm_from_m(gust->at_distance_m), 2) + " NM";
    return words;
}

std::vector<LabelledValue> holds(const Catalog& catalog, const Lesson& lesson) {
    const Scenario scenario = scenario_of(catalog, lesson);
    std::vector<LabelledValue> rows{
        {"Aircraft", scenario.aircraft.name, "", ""},
        {"Runway", scenario.surroundings.runway.name, "", ""},
        {"Outside", outlook_words(lesson.outlook), "", ""},
        {"Start",
         number_words(nm_from_m(lesson.start.distance_m), 2) + " NM, " +
             signed_words(deg_from_rad(lesson.start.offset_rad), 1) + "\u00b0 off the path",
         "", ""},
        {"Target speed", number_words(kt_from_mps(lesson.target_cas_mps)), "kt", ""},
        {"Wind", wind_words(lesson.wind), "", ""},
        {"Air", air_words(lesson), "", ""}};
    if (const std::string others = other_parts(lesson); !others.empty())
        rows.push_back({"Also", others, "", ""});
    return rows;
}

}  // namespace

std::string lesson_words(const Catalog& catalog, const Lesson& lesson) {
    const Scenario scenario = scenario_of(catalog, lesson);
    return place_words(scenario) + "; " + setup_words(scenario);
}

void own_lessons_view(const LessonDesk& desk, const Catalog& catalog, OwnLessonsView& view) {
    if (view.made_edition != desk.edition) make_rows(desk, catalog, view);
    const auto chosen = std::ranges::find(view.rows, desk.chosen, &OwnLessonsView::Row::id);
    view.chosen = chosen != view.rows.end() ? static_cast<int>(chosen - view.rows.begin()) : -1;
    view.news = desk.news;
    view.trouble = desk.trouble;
    view.draft.clear();
    view.arrived.clear();
    if (desk.draft) view.draft = desk.draft->lesson.title.empty() ? "no title yet" : desk.draft->lesson.title;
    if (desk.arrived && desk.arrived->lesson)
        view.arrived = desk.arrived->lesson->title + ", from " + desk.arrived->from;
}

LessonEditorView lesson_editor_view(const LessonDesk& desk, const Catalog& catalog) {
    LessonEditorView view;
    if (!desk.draft) return view;
    const LessonDraft& draft = *desk.draft;
    lesson_fields(draft.lesson, draft.problems, catalog, view);
    view.standing = standing_words(draft);
    view.can_fly = draft.problems.empty();
    if (view.can_fly) view.figures = figures(draft.briefing);
    if (const std::string others = other_parts(draft.lesson); !others.empty())
        view.also = "It also holds " + others + ", which stay as they are.";
    view.news = desk.trouble.empty() ? desk.news : desk.trouble;
    return view;
}

ArrivedLessonView arrived_lesson_view(const LessonDesk& desk, const Catalog& catalog) {
    ArrivedLessonView view;
    if (!desk.arrived) return view;
    const ArrivedLesson& arrived = *desk.arrived;
    view.from = "From " + arrived.from;
    for (const Problem& problem : arrived.problems) view.problems.push_back(to_text(problem) + ".");
    if (!arrived.lesson) return view;
    view.title = arrived.lesson->title;
    view.aim = arrived.lesson->aim;
    view.holds = holds(catalog, *arrived.lesson);
    const Lesson* kept = find_own(desk, arrived.lesson->id);
    view.can_keep = kept == nullptr || lesson_text(*kept) != lesson_text(*arrived.lesson);
    if (!view.can_keep) view.known = "You have kept this lesson already.";
    return view;
}

}  // namespace slopewise
