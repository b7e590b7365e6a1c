#include "ui/open_replay.h"

#include "ui/app.h"

namespace slopewise {
namespace {

// Empty with a notice when it cannot be flown here.
std::optional<Scenario> scenario_for(App& app, const Recording& recording) {
    const std::vector<Problem> problems = check_lesson(app.catalog, recording.lesson, "recording");
    if (problems.empty()) return scenario_of(app.catalog, recording.lesson);
    app.notice = "This recording cannot be replayed here: " + to_text(problems.front());
    return std::nullopt;
}

}  // namespace

void open_replay(App& app, const Recording& recording, const Track* kept,
                 const std::optional<ComparedAttempt>& other) {
    const std::optional<Scenario> scenario = scenario_for(app, recording);
    if (!scenario) return;
    ReplaySession session = begin_replay(recording, *scenario, app.settings.school.criteria, kept);
    if (other) {
        const std::optional<Scenario> there = scenario_for(app, other->recording);
        if (!there) return;
        compare_with(session, other->recording, *there, other->kept);
        session.other->name = other->name;
    }
    app.replay = std::move(session);
    if (app.screen != Screen::replay) app.after_replay = app.screen;
    app.screen = Screen::replay;
    ++app.edition;
}

void close_replay(App& app) {
    if (!app.replay) return;
    app.replay.reset();
    app.screen = app.after_replay;
    ++app.edition;
}

}  // namespace slopewise
