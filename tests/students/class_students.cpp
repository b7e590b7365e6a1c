#include "tests/students/class_students.h"

#include <cstdio>

#include "lesson/approach_choice.h"
#include "lesson/demonstrate.h"
#include "logbook/attempt_id.h"

namespace slopewise::test {
namespace {

constexpr std::int64_t first_unix_s = 1795701900;  // 26 Nov 2026

// The hand grows unsteadier and the aim wanders with the number; every third has a habit by name.
PilotSkill skill_of(int number) {
    const PilotSkill good;
    PilotSkill skill = number % 3 == 0
                           ? *pilot_skill(pilot_names[static_cast<std::size_t>(number) % pilot_names.size()])
                           : good;
    skill.hand_noise += 0.0006 * number;
    skill.aim_beyond_m += 3.0 * (number % 7) - 9.0;
    return skill;
}

KeptAttempt flown(const Lesson& lesson, const Catalog& catalog, const PilotSkill& skill, std::uint64_t seed,
                  Circumstances circumstances) {
    const Scenario scenario = scenario_of(catalog, lesson);
    Recording recording = begin_recording(lesson);
    const std::int64_t started_ms = 1000 * circumstances.started_unix_s;
    recording.circumstances = std::move(circumstances);
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, skill, seed);
    demonstrate(scenario, attempt, pilot,
                [&](const Controls& controls, const Events&) { record(recording, controls, attempt); });
    return kept_from(attempt_id(started_ms, static_cast<std::uint32_t>(seed)), std::move(recording),
                     scenario);
}

}  // namespace

std::vector<std::string> ClassStudent::lines(bool with_rows) const {
    std::vector<const IndexRow*> list;
    for (const IndexRow& row : rows) list.push_back(&row);
    std::vector<std::string> all{student_file_head(name)};
    if (with_rows) all.push_back(student_rows_line(list));
    for (std::string& line : all) line.pop_back();  // its line feed
    all.insert(all.end(), attempts.begin(), attempts.end());
    return all;
}

ClassStudent class_student(int number, const Catalog& catalog) {
    char digits[8];
    std::snprintf(digits, sizeof digits, "%02d", number % 100);
    ClassStudent student;
    student.name = std::string("Heron ") + digits;
    student.file = std::string("heron-") + digits + ".jsonl";
    const Lesson& near = *find_lesson(catalog, "last_half_mile");
    const Lesson mile = lesson_of({1, number % 2 == 0 ? StartSide::above : StartSide::on, 5.0}, near);
    const int attempts = 5 + 7 * number % 11;
    for (int i = 0; i < attempts; ++i) {
        Circumstances circumstances;
        circumstances.student = student.name;
        circumstances.started_unix_s = first_unix_s + 86400 * number + 3600 * i;
        if (i % 4 == 3) circumstances.aids.guide_s = 10.0;
        const KeptAttempt kept = flown(i % 3 == 2 ? mile : near, catalog, skill_of(number),
                                       static_cast<std::uint64_t>(1000 * number + i), circumstances);
        const Scenario scenario = scenario_of(catalog, kept.recording.lesson);
        student.rows.push_back(index_row(kept, review_kept(kept, scenario, Criteria{})));
        student.attempts.push_back(kept_attempt_text(kept));
    }
    return student;
}

}  // namespace slopewise::test
