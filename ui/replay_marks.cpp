#include "ui/replay_marks.h"

#include <algorithm>
#include <cmath>

#include "debrief/reviewed_flight.h"
#include "review/words.h"
#include "ui/format.h"

namespace slopewise {
namespace {

using Kind = ReplayMark::Kind;

// Common practice, no source: chosen so that a usual approach has a few dozen marks at most.
constexpr std::size_t lasting_points = 10;   // a light picture counts once it has lasted a second
constexpr std::size_t still_points = 10;     // a lever that has rested for a second was let go
constexpr double least_lever_step = 0.05;    // share of travel
constexpr double least_trim_step = 0.05;     // of the way from middle to stop
constexpr double stirring = 0.004;           // less is no movement: the 16-bit steps are far finer
constexpr std::size_t most_evidence = 4;     // moments of one fault
constexpr std::int64_t together_ticks = 36;  // 0.3 s

std::int64_t tick_of(double time_s) { return std::llround(time_s / tick_s); }
std::int64_t tick_of(const TrackPoint& point) { return tick_of(point.time_s); }

struct Marks {
    const ReplayedFlight& flight;
    const ReviewedFlight& reviewed;
    const std::vector<TrackPoint>& points = flight.track.points;
    std::size_t scored = flight.track.scored;
    std::vector<ReplayMark> all{};

    void add(Kind kind, std::int64_t tick, std::string name) { all.push_back({kind, tick, std::move(name)}); }
};

const char* end_words(End end) {
    switch (end) {
    case End::none: return "end of scoring";
    case End::reached_floor: return "scoring ends";
    case End::went_around: return "go-around";
    case End::ground_short: return "on the ground short of the runway";
    case End::overflew: return "past the runway's far end";
    }
    return "";
}

void add_ends(Marks& marks) {
    const std::int64_t last = last_tick(marks.flight), ended = tick_of(marks.points[marks.scored - 1]);
    const End end = marks.flight.end;
    marks.add(Kind::start, 0, "start");
    if (end != End::none) marks.add(Kind::end, ended, end_words(end));
    if (last - ended > together_ticks || end == End::none) marks.add(Kind::end, last, "end of the recording");
}

void add_gates(Marks& marks) {
    for (const GateValue& gate : marks.reviewed.review.summary.gates) {
        if (gate.reached)
            marks.add(Kind::gate, tick_of(gate.time_s), number_words(gate.height_ft) + " ft gate");
    }
}

// Scored only: what the lights do in a go-around tells nothing.
void add_lights(Marks& marks) {
    int shown = marks.points.front().white_count;
    for (std::size_t i = 1; i < marks.scored; ++i) {
        const int now = marks.points[i].white_count;
        if (now == shown) continue;
        std::size_t k = i;
        while (k < marks.scored && marks.points[k].white_count == now && k - i < lasting_points) ++k;
        if (k - i < lasting_points) continue;
        shown = now;
        marks.add(Kind::lights, tick_of(marks.points[i]),
                  light_words(now, units_showing(marks.points[i].white_fraction),
                              marks.reviewed.review.summary.light_kind));
    }
}

// Movements of a lever that stays where it is put: from rest to rest, told at their beginning.
template <class Value, class Words>
void add_movements(Marks& marks, double least, Value value, Words words) {
    const auto& points = marks.points;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (std::abs(value(points[i]) - value(points[i - 1])) < stirring) continue;
        std::size_t last = i;
        for (std::size_t k = i + 1; k < points.size() && k - last <= still_points; ++k) {
            if (std::abs(value(points[k]) - value(points[k - 1])) >= stirring) last = k;
        }
        const double from = value(points[i - 1]), to = value(points[last]);
        if (std::abs(to - from) >= least) marks.add(Kind::input, tick_of(points[i]), words(from, to));
        i = last;
    }
}

void add_flap(Marks& marks) {
    const Aircraft& aircraft = marks.flight.rewind.scenario.aircraft;
    for (std::size_t i = 1; i < marks.points.size(); ++i) {
        const int now = marks.points[i].flap_setting;
        if (now == marks.points[i - 1].flap_setting || now < 0 || now >= aircraft.flap_count) continue;
        marks.add(Kind::input, tick_of(marks.points[i]),
                  "flap " + aircraft.flaps[static_cast<std::size_t>(now)].name);
    }
}

void add_inputs(Marks& marks) {
    add_flap(marks);
    add_movements(
        marks, least_lever_step, [](const TrackPoint& p) { return p.lever; },
        [](double from, double to) {
            return "power lever " + number_words(100 * from) + " to " + percent_words(to);
        });
    add_movements(
        marks, least_trim_step, [](const TrackPoint& p) { return p.trim; },
        [](double from, double to) { return to > from ? "trim nose up" : "trim nose down"; });
    for (const PathAnswer& answer : marks.reviewed.review.path_answers) {
        if (answer.reaction_s < 0.0) continue;
        std::string name = answer.high ? "first answer to high" : "first answer to low";
        if (answer.wrong_way_first) name += ", after a wrong one";
        marks.add(Kind::input, tick_of(marks.points[answer.begin].time_s + answer.reaction_s), name);
    }
}

void add_errors(Marks& marks) {
    const ReviewedFlight& reviewed = marks.reviewed;
    marks.add(Kind::worst, tick_of(marks.points[reviewed.review.summary.worst.point]), "worst moment");
    const Finding* priority = reviewed.diagnosis.priority();
    if (priority == nullptr) return;
    const auto& moments = priority->evidence.moments;
    for (std::size_t i = 0; i < std::min(moments.size(), most_evidence); ++i)
        marks.add(Kind::evidence, tick_of(marks.points[moments[i]]), std::string(priority->fault->title));
}

// The one that gives a common mark its place and its sign.
bool leads(Kind a, Kind b) {
    const auto rank = [](Kind kind) {
        switch (kind) {
        case Kind::start:
        case Kind::end: return 5;
        case Kind::worst: return 4;
        case Kind::evidence: return 3;
        case Kind::gate: return 2;
        case Kind::input: return 1;
        case Kind::lights: return 0;
        }
        return 0;
    };
    return rank(a) > rank(b);
}

std::vector<ReplayMark> joined(std::vector<ReplayMark> marks) {
    std::stable_sort(marks.begin(), marks.end(),
                     [](const ReplayMark& a, const ReplayMark& b) { return a.tick < b.tick; });
    std::vector<ReplayMark> result;
    for (ReplayMark& mark : marks) {
        if (result.empty() || mark.tick - result.back().tick > together_ticks) {
            result.push_back(std::move(mark));
            continue;
        }
        ReplayMark& before = result.back();
        if (before.name.find(mark.name) == std::string::npos) before.name += ", " + mark.name;
        if (!leads(mark.kind, before.kind)) continue;
        before.kind = mark.kind;
        before.tick = mark.tick;
    }
    return result;
}

}  // namespace

std::vector<ReplayMark> replay_marks(const ReplayedFlight& flight, const Criteria& criteria) {
    const ReviewedFlight reviewed = review_flight(flight.rewind.scenario, criteria, flight.track, flight.end);
    Marks marks{flight, reviewed};
    add_ends(marks);
    add_gates(marks);
    add_lights(marks);
    add_inputs(marks);
    add_errors(marks);
    return joined(std::move(marks.all));
}

}  // namespace slopewise
