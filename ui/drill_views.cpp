#include "ui/drill_views.h"

#include <algorithm>

#include "ui/app.h"
#include "ui/student_name.h"

namespace slopewise {
namespace {

// So long the words of the hand-over stay.
constexpr double hand_over_s = 6.0;

std::string back_words(Screen behind) { return behind == Screen::drills ? "Drills" : "Back"; }

// The last result of a drill; null where it was never done to its end.
const DrillResult* last_of(const std::vector<DrillResult>& results, const std::string& id) {
    const DrillResult* last = nullptr;
    for (const DrillResult& result : results)
        if (result.drill_id == id) last = &result;
    return last;
}

std::string sentence_of(std::string words) { return words + "."; }

std::string passes_words(const Drill& drill) {
    std::string words = "Passes: ";
    for (std::size_t i = 0; i < drill.criteria.size(); ++i)
        words += (i > 0 ? "; " : "") + criterion_text(drill.criteria[i]);
    return sentence_of(words);
}

std::string about_words(const Drill& drill) {
    std::string words = drill.aim + " ";
    words += is_flown(drill) ? "One flight. " : std::to_string(drill.items) + " items. ";
    return words + passes_words(drill);
}

DrillsView::Row row_of(const Drill& drill, const DrillResult* last) {
    DrillsView::Row row{drill.id, std::to_string(drill.place) + ". " + drill.title, about_words(drill), ""};
    if (last == nullptr) row.last = "Not done yet.";
    else row.last = last->passed() ? "Last result: passed." : "Last result: not yet.";
    return row;
}

// "You have power." "I have power.": who says what when the controls are handed over.
std::string hand_over_words(const SharedControls& sharing) {
    std::string words;
    for (const ControlCall& call : sharing.calls) {
        words += call.speaker == Speaker::student ? "You: \"" : "Instructor: \"";
        words.append(call.words).append("\" ");
    }
    return words;
}

}  // namespace

void drills_view(const App& app, DrillsView& view) {
    const std::vector<DrillResult> results = results_of(app.drills, app.settings.student);
    view = {};
    view.student = student_words(app.settings.student);
    view.trouble = app.drills.trouble;
    bool found = false;
    for (const Drill& drill : app.catalog.drills) {
        const DrillResult* last = last_of(results, drill.id);
        if (!found && (last == nullptr || !last->passed())) {
            view.next = static_cast<int>(view.rows.size());
            found = true;
        }
        view.rows.push_back(row_of(drill, last));
    }
}

DrillResultView drill_result_view(const App& app) {
    DrillResultView view;
    const DrillResult& result = *app.drills.result;
    const Drill* drill = find_drill(app.catalog, result.drill_id);
    if (drill != nullptr) view.title = drill->title;
    view.back = back_words(app.drills.behind);
    view.verdict = result.passed()    ? "Passed: every limit was met."
                   : !result.finished ? "Not finished: nothing is judged."
                                      : "Not yet: not every limit was met.";
    if (result.items > 0)
        view.items = std::to_string(result.right) + " of " + std::to_string(result.items) + " right" +
                     (drill != nullptr && drill->judged_over > 0 ? " (the last are judged)" : "");
    for (const JudgedCriterion& one : result.criteria) view.limits.push_back({one.asked, one.found, one.met});
    const auto has_limit = [&](Measure measure) {
        return drill != nullptr && std::ranges::any_of(drill->criteria, [&](const DrillCriterion& one) {
                   return one.measure == measure;
               });
    };
    for (const Figure& figure : result.figures)
        if (!has_limit(figure.measure)) view.figures.push_back(figure_text(figure));
    view.seed = "Seed " + std::to_string(result.seed) + ": who takes the same seed has the same items.";
    view.next = result_lines(result).back();
    return view;
}

void flown_drill_view(const App& app, FlightView& view) {
    if (!app.drills.flown || !app.flight) {
        view.drill.task.clear();
        return;
    }
    const FlownDrill& flown = *app.drills.flown;
    const Attempt& attempt = app.flight->attempt;
    const FlownView shown = flown_view(flown, attempt);
    view.drill.task = shown.say;
    view.drill.called = shown.called;
    view.drill.share =
        time_s(attempt) < hand_over_s && !shown.telling ? hand_over_words(flown.sharing) : shown.share;
    if (!shown.lights_shown) view.scene.lamp_count = 0;
    view.scored = true;  // no summary is behind it
    view.status.clear();
    view.can_mirror = false;
}

}  // namespace slopewise
