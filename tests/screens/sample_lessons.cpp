#include "tests/screens/sample_lessons.h"

namespace slopewise {
namespace {

using Field = LessonEditorView::Field;
using Kind = LessonEditorView::Kind;

Field number(int number, const char* label, const char* value, const char* unit) {
    Field field;
    field.number = number;
    field.label = label;
    field.value = value;
    field.unit = unit;
    field.amount = 3;
    field.most = 10;
    return field;
}

Field text(int number, const char* label, const char* value, std::size_t most_bytes) {
    Field field;
    field.kind = Kind::text;
    field.number = number;
    field.label = label;
    field.value = value;
    field.most_bytes = most_bytes;
    return field;
}

Field of(Kind kind, int number, const char* label, std::vector<std::string> choices) {
    Field field;
    field.kind = kind;
    field.number = number;
    field.label = label;
    field.choices = std::move(choices);
    return field;
}

}  // namespace

OwnLessonsView sample_own_lessons(int count) {
    OwnLessonsView view;
    for (int i = 0; i < count; ++i)
        view.rows.push_back(
            {"own_" + std::to_string(i), "Gusty final, the second try of " + std::to_string(i),
             "Four-seat tourer, Larkmoor 09, 1.5 % down, at night, dark ground, rain, visibility "
             "5 km; 3 NM, above the path, 15 kt headwind"});
    view.chosen = count > 0 ? 0 : -1;
    view.deleted = {{"own_gone", "A short one, for rain", ""}};
    view.count = std::to_string(count) + " lessons of at most 100";
    view.news = "The link is copied: 1320 letters, the whole lesson. Whoever opens it flies the same.";
    view.draft = "Late wind, low sun";
    view.arrived = "From the coast, from a link";
    return view;
}

LessonEditorView sample_lesson_editor() {
    LessonEditorView view;
    view.standing = "It can be flown.";
    view.can_fly = true;
    view.figures = {{"Sink", "345", "ft/min", ""}, {"Power", "32", "%", ""}, {"Pitch", "-1.2", "\u00b0", ""}};
    view.also = "It also holds 2 failures, which stay as they are.";
    view.news = "Kept on this device: Gusty final.";
    view.groups = {
        {"What it is",
         {text(0, "Title", "Gusty final", 80), text(1, "Aim, in one sentence", "Hold it.", 200)}},
        {"The start, and the speed",
         {number(2, "To the aim point", "3.00", "NM"), number(3, "Off the path, + high", "-0.7", "\u00b0"),
          number(5, "Speed", "65", "kt"), of(Kind::choice, 6, "Flap", {"up", "take-off", "landing"})}},
        {"Wind",
         {of(Kind::choice, 8, "", {"Even", "Gradient", "2 heights"}), number(9, "Headwind", "15", "kt")}},
        {"Aircraft", {of(Kind::list, 23, "", {"Heavier single", "Four-seat tourer", "Two-seat trainer"})}},
        {"Light and weather",
         {of(Kind::choice, 25, "Light", {"Day", "Low sun", "Dusk", "Night"}),
          of(Kind::on_off, 28, "Overcast", {}), number(27, "Visibility", "30", "km")}}};
    view.groups[1].fields[1].problem = "This is -3; allowed: -2 to 3.";
    return view;
}

ArrivedLessonView sample_arrived_lesson() {
    ArrivedLessonView view;
    view.from = "From a link";
    view.title = "Gusty final with a late wind";
    view.aim = "Keep the airspeed while the headwind fades on the way down.";
    view.holds = {{"Aircraft", "Four-seat tourer", "", ""},
                  {"Runway", "Larkmoor 09, 1.5 % down", "", ""},
                  {"Outside", "at night, dark ground, rain, visibility 5 km", "", ""},
                  {"Start", "3.00 NM, +0.7\u00b0 off the path", "", ""},
                  {"Target speed", "65", "kt", ""},
                  {"Wind", "+8 kt at 50 ft, +20 kt at 500 ft", "", ""}};
    view.can_keep = true;
    return view;
}

}  // namespace slopewise
