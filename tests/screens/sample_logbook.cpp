#include "tests/screens/sample_logbook.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace slopewise {
namespace {

constexpr std::array<const char*, 3> lessons{"Final approach, 15 knot headwind", "Final from above the path",
                                             "Final down a wind gradient"};
constexpr std::array<const char*, 4> faults{"Ducking under", "none found",
                                            "Stretching the approach with the nose",
                                            "Chasing the lights near the ground"};

LogbookRowView row(int number) {
    const auto pick = [number](const auto& from) {
        return from[static_cast<std::size_t>(number) % from.size()];
    };
    LogbookRowView view;
    view.id = std::to_string(1795654559123LL - number) + "-7f3a09bc";
    view.when = std::to_string(28 - number % 28) + " Nov 2026, 14:" + std::to_string(10 + number % 50);
    view.lesson = pick(lessons);
    view.marks = number % 5 == 3 ? "aided" : number % 7 == 4 ? "aided, cut off" : "";
    view.path_bias = number % 2 == 0 ? "+0.12\u00b0" : "\u22120.34\u00b0";
    view.path_scatter = "\u00b10.30\u00b0";
    view.speed_bias = number % 3 == 0 ? "\u221212.1 kt" : "+2.4 kt";
    view.speed_scatter = "\u00b13.0 kt";
    view.unstable = number % 4 == 1;
    view.missed = number % 8 == 1;
    view.stability = number % 9 == 8 ? "not reached" : view.unstable ? "not stable" : "stable";
    view.decision = number % 9 == 8 ? "\u2013" : view.missed ? "miss" : "right";
    view.fault = pick(faults);
    return view;
}

}  // namespace

LogbookView sample_logbook(int attempts) {
    LogbookView view;
    view.student = {"Kestrel 7", "Kestrel 7"};
    view.students = {{"", "No name"}, {"Heron 2", "Heron 2"}, {"Kestrel 7", "Kestrel 7"}};
    view.gate = "At 300 ft";
    view.count = std::to_string(attempts) + " attempts kept";
    for (int i = 0; i < attempts; ++i) view.rows.push_back(row(i));
    if (attempts > 0)
        view.deleted = {{"1795654559000-00000001", "3 Nov 2026, 09:12, Final from above the path"}};
    view.chosen = attempts > 0 ? 0 : -1;
    if (attempts > 1) view.earlier = view.rows[1].id;
    return view;
}

ProgressView sample_progress(int attempts) {
    ProgressView view;
    view.student = "Kestrel 7";
    if (attempts == 0) view.nothing = "No attempt of this student has come to its end yet.";
    const std::string all = std::to_string(attempts);
    view.lessons = {{"", "All lessons", all, all, "0"},
                    {"final_calm", "Final approach, calm", all, all, "0"}};
    float sum = 0;
    for (int i = 0; i < attempts; ++i) {
        TrendPoint point;
        const float learnt = std::exp(-static_cast<float>(i % 400) / 12.0f);
        point.bias_deg =
            0.05f + 0.7f * learnt * (0.5f + 0.5f * std::abs(std::sin(static_cast<float>(i) * 1.7f)));
        point.scatter_deg =
            0.2f + 0.6f * learnt * (0.5f + 0.5f * std::abs(std::sin(static_cast<float>(i) * 2.3f)));
        point.unaided = i % 5 != 3;
        point.begins_session = i % 8 == 0;
        point.after_long_gap = i == 16;
        if (point.unaided) {
            sum = std::max(0.0f, sum + (i % 6 == 1 || i < 5 ? -0.981f : 0.348f));
            point.median_bias_deg = 0.05f + 0.5f * learnt;
            point.median_scatter_deg = 0.2f + 0.45f * learnt;
            point.learning_sum = sum;
            if (sum >= 2.5f && view.signal_at < 0) view.signal_at = i;
        }
        view.points.push_back(point);
    }
    view.limit = 2.5;
    view.strict_limit = 3.0;
    view.learning = "No signal yet: the sum is 1.39 of 2.5.";
    view.parameters = {
        "LC-CUSUM over the unaided attempts. A pass: stable at the gate by all criteria, and the right "
        "decision there.",
        "Failing 40 % is inadequate (p0 0.40), failing 15 % adequate (p1 0.15). A pass adds 0.348, a "
        "failure takes off 0.981.",
        "It signals at h 2.5 (strict: 3.0). It can be wrong."};
    view.decisions = "Decisions at the gate: 12 right, 2 missed, 1 cautious. Gate not reached: 0.";
    if (attempts > 3) view.hints = {"The last approach was more than 14 days ago: a refresher is due."};
    view.evidence_words = "2 of 3 items: evidence not yet complete";
    view.evidence = {
        {"Lights read at a glance: 20 items, 95 % right, half of them within 1.5 s", "not done", false},
        {"No miss in the last ten decisions at the gate, three or more of them unstable",
         "10 decisions, 4 unstable, 0 missed", true},
        {"The first approach of a new day in tolerance, on two of three days", "2 of the last 3 days", true}};
    return view;
}

}  // namespace slopewise
