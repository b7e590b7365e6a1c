#include "ui/recorded_flight.h"

#include <utility>

#include "data/read_lesson.h"
#include "data/recording_file.h"
#include "data/write_lesson.h"
#include "ui/app.h"
#include "ui/drive_class.h"
#include "ui/drive_station.h"

namespace slopewise {

Lesson as_told(const Lesson& lesson) {
    constexpr int most_rounds = 4;  // a second one is rarely needed
    Lesson told = lesson;
    std::string text = lesson_text(told);
    for (int i = 0; i < most_rounds; ++i) {
        const Result<JsonNode> parsed = parse_json(text, "lesson");
        if (!parsed.ok()) return lesson;
        Result<Lesson> read = read_lesson(*parsed.value, "lesson");
        if (!read.ok()) return lesson;
        told = std::move(*read.value);
        std::string again = lesson_text(told);
        if (again == text) break;
        text = std::move(again);
    }
    return told;
}

std::string put_recorded_flight(App& app, std::string_view text, std::optional<Following>& following) {
    const std::string from = "The other window's run";
    Result<Recording> read = read_recording(text, from);
    if (read.ok()) read.problems = check_lesson(app.catalog, read.value->lesson, from);
    if (!read.problems.empty()) return to_text(read.problems.front());
    if (!put_class_flight(app, read.value->lesson)) return from + " cannot be flown";
    following = follow(std::move(*read.value), app.flight->attempt);
    return {};
}

void fly_recorded(App& app, Following& following, std::int64_t ticks) {
    FlightSession& session = *app.flight;
    for (; ticks > 0 && ticks_behind(following, session.attempt) > 0; --ticks) {
        tick_with(session, led_controls(following, session.attempt));
        compare(following, session.attempt);
    }
    follow_in_calm(app);
}

}  // namespace slopewise
