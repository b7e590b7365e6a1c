// The card of one lesson: what it is for, how it begins, what it asks for, what is said about it.
#include <algorithm>

#include "base/units.h"
#include "progress/lesson_progress.h"
#include "ui/format.h"
#include "ui/syllabus_views.h"
#include "ui/views.h"

namespace slopewise {
namespace {

std::string start_words(const Scenario& scenario) {
    const Lesson& lesson = scenario.lesson;
    const Practice& practice = lesson.practice;
    const std::string flap = scenario.aircraft.flaps[static_cast<std::size_t>(lesson.start.flap)].name;
    std::string words;
    if (!practice.chain_m.empty()) {
        for (const double start_m : practice.chain_m)
            words += (words.empty() ? "From " : ", then ") + number_words(nm_from_m(start_m), 1) + " NM";
        words += ", on the path";
    } else if (!practice.set_ups.empty()) {
        words = "One of " + std::to_string(practice.set_ups.size()) + " ways; which one is told afterwards";
    } else {
        words = setup_words(scenario);
        words = words.substr(0, words.rfind(", "));  // the wind has its own row
    }
    words += ", at " + number_words(kt_from_mps(lesson.start.cas_mps)) + " kt, flap " + flap;
    if (practice.vary_start) words += "; from the fourth run on high, on or low";
    return words + ".";
}

std::string calm_or(double headwind_mps) {
    const double kt = kt_from_mps(headwind_mps);
    return kt < 0.5 ? "Calm" : number_words(kt) + " kt headwind";
}

std::string wind_words(const Lesson& lesson) {
    std::string words = calm_or(lesson.wind.headwind_mps);
    if (lesson.wind.kind == Wind::Kind::logarithmic) words += ", less near the ground";
    if (lesson.wind.kind == Wind::Kind::table && lesson.wind.table_size > 0) {
        words.clear();
        for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.wind.table_size); ++i)
            words += (i > 0 ? ", " : "") + calm_or(lesson.wind.table[i].headwind_mps) + " at " +
                     number_words(ft_from_m(lesson.wind.table[i].height_m)) + " ft";
    }
    if (lesson.turbulence_w20_mps > 0.0) words += ", rough air";
    if (lesson.air_event_count > 0) words += ", with gusts";
    if (lesson.practice.vary_wind) words += "; from the fourth run on 0, 8 or 15 kt";
    return words + ".";
}

std::string lights_words(const LessonAids& aids) {
    const std::string height = number_words(ft_from_m(aids.lights_height_m)) + " ft";
    switch (aids.lights) {
    case LessonAids::Lights::shown: return "Lights shown";
    case LessonAids::Lights::hidden: return "Lights not shown";
    case LessonAids::Lights::hidden_below: return "Lights not shown below " + height;
    case LessonAids::Lights::hidden_above: return "Lights shown only below " + height;
    case LessonAids::Lights::after_first_input: return "Lights shown after your first input";
    }
    return {};
}

std::string aids_words(const Lesson& lesson) {
    std::string words = lights_words(lesson.aids);
    if (lesson.aids.airspeed_hidden) words += ", airspeed covered";
    if (lesson.aids.eyes_outside) words += ", panel dark until you look at it";
    if (lesson.side_profile) words += ", the path from the side";
    return words + ".";
}

std::string_view hands_words(Hands hands) {
    switch (hands) {
    case Hands::both: return "You have power and pitch.";
    case Hands::power_only: return "You have power; the other pilot has pitch.";
    case Hands::pitch_only: return "You have pitch, trim and flap; the other pilot has power.";
    case Hands::watch: return "You watch.";
    }
    return {};
}

void criterion_of(const App& app, const Lesson& lesson, LessonCardView& view) {
    if (const Drill* drill = find_drill(app.catalog, lesson.syllabus.drill)) {
        view.drill = drill->id;
        view.drill_title = drill->title;
        view.criterion = {"Asked for in the drill \"" + drill->title + "\", and shown there."};
        const std::vector<std::string> met = drills_met(app);
        const bool done = std::ranges::find(met, drill->id) != met.end();
        view.known = done ? "Criteria met." : "Criteria not met yet.";
        return;
    }
    for (const Requirement& requirement : lesson.success.requirements)
        view.criterion.push_back(requirement_words(requirement));
    if (lesson.success.passes > 0) view.criterion.push_back("in " + runs_words(lesson.success));
}

std::string id_at_place(const Catalog& catalog, int place) {
    const auto found = std::ranges::find_if(
        catalog.lessons, [&](const Lesson& lesson) { return lesson.syllabus.place == place; });
    return place < 1 || found == catalog.lessons.end() ? "" : found->id;
}

// The lesson that the data names; where the order ends, the one before has none.
void way_on(const Catalog& catalog, const Lesson& lesson, LessonCardView& view) {
    view.previous_id = id_at_place(catalog, lesson.syllabus.place - 1);
    const Lesson* next = find_lesson(catalog, lesson.syllabus.next);
    if (next == nullptr) return;
    view.next_id = next->id;
    view.next = std::to_string(next->syllabus.place) + ", " + next->title + ".";
}

}  // namespace

LessonCardView lesson_card_view(const App& app) {
    LessonCardView view;
    const Lesson* found = find_lesson(app.catalog, app.syllabus.card);
    if (found == nullptr) return view;
    const Lesson& lesson = *found;
    view.id = lesson.id;
    view.number = std::to_string(lesson.syllabus.place);
    view.title = lesson.title;
    view.aim = lesson.aim;
    view.why = lesson.teaching.why;
    criterion_of(app, lesson, view);
    if (view.drill.empty()) {
        view.facts = {{"Start", start_words(scenario_of(app.catalog, lesson))},
                      {"Wind", wind_words(lesson)},
                      {"Shown", aids_words(lesson)},
                      {"Controls", std::string(hands_words(lesson.hands))}};
        const LessonProgress progress =
            lesson_progress(lesson, trend_rows(app.logbook, app.settings.student));
        if (progress.flown > 0) view.known = runs_judged_words(lesson.success, progress.runs);
    }
    view.instructor = lesson.teaching.instructor_says;
    view.mistakes = lesson.teaching.mistakes;
    for (const LessonSource& source : lesson.teaching.sources) view.sources.push_back(source_words(source));
    way_on(app.catalog, lesson, view);
    return view;
}

}  // namespace slopewise
