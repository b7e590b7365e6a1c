#include "ui/asking_shown.h"

#include "ui/app.h"
#include "ui/drive_asking.h"

namespace slopewise {
namespace {

static_assert(static_cast<std::size_t>(ClassAid::airspeed) + instrument_names.size() ==
                  class_aid_names.size(),
              "the instruments that a question can hide are those that can be covered");

bool is_hidden(const Question& question, ClassAid aid) {
    return question.hidden[static_cast<std::size_t>(aid)];
}

AskShown::Stage shown_stage(AskStage stage) {
    switch (stage) {
    case AskStage::asked: return AskShown::Stage::asked;
    case AskStage::discussed: return AskShown::Stage::discussed;
    case AskStage::revealed: return AskShown::Stage::revealed;
    case AskStage::ready:
    case AskStage::ran_on: break;
    }
    return AskShown::Stage::none;
}

}  // namespace

std::string place_words(const QuestionSet& set, int question) {
    return set.title + ": " + std::to_string(question + 1) + " of " + std::to_string(set.questions.size());
}

void show_run(App& app) {
    const AskDesk& desk = app.room.ask;
    AskShown& ask = app.room.shown.ask;
    ask.stage = shown_stage(desk.run.stage);
    if (ask.stage == AskShown::Stage::none) {
        ask = {};
        return;
    }
    ask.place = place_words(*chosen_set(app), desk.run.question);
    ask.question = asked_words(*chosen_question(app));
    ask.first = desk.run.first;
    ask.second = desk.run.second;
    const bool told = ask.stage == AskShown::Stage::revealed && desk.answer;
    ask.right = told ? desk.answer->right : -1;
    ask.reveal = told ? desk.answer->reveal : "";
}

void hide_aids(App& app, const Question& question) {
    RoomShown& shown = app.room.shown;
    if (!app.room.ask.before)
        app.room.ask.before =
            AidsBefore{shown.lights, shown.dials, shown.side_profile, shown.names, shown.covered};
    shown.names = false;
    if (is_hidden(question, ClassAid::lights)) shown.lights = false;
    if (question.kind == QuestionKind::lights) shown.lights = true;
    if (is_hidden(question, ClassAid::dials)) shown.dials = false;
    if (is_hidden(question, ClassAid::side_profile)) shown.side_profile = false;
    for (std::size_t i = 0; i < instrument_names.size(); ++i)
        if (question.hidden[static_cast<std::size_t>(ClassAid::airspeed) + i])
            shown.covered.*instrument_names[i].which = true;
}

void bring_aids_back(App& app) {
    if (!app.room.ask.before) return;
    const AidsBefore before = *app.room.ask.before;
    RoomShown& shown = app.room.shown;
    shown.lights = before.lights;
    shown.dials = before.dials;
    shown.side_profile = before.side_profile;
    shown.names = before.names;
    shown.covered = before.covered;
    app.room.ask.before.reset();
}

void show_aids_after(App& app, const Question& question) {
    const std::optional<AidsBefore> before = app.room.ask.before;
    bring_aids_back(app);
    if (question.side_profile_after) app.room.shown.side_profile = true;
    app.room.ask.before = before;  // the path from the side goes again with the next question
}

}  // namespace slopewise
