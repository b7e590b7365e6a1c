#include "debrief/flight_tables.h"

namespace slopewise {
namespace {

struct AnswerSource {
    const PathAnswer& answer;
    double begin_s;
};
using A = const AnswerSource&;

constexpr Column<AnswerSource> columns[] = {
    {"begin_s", 4, "when the path left the answer band", [](A a) { return a.begin_s; }},
    {"high", 0, "1 high, 0 low", [](A a) { return double(a.answer.high); }},
    {"reaction_s", 3, "to the first right-way input; empty: none came",
     [](A a) { return known_if(a.answer.reaction_s >= 0.0, a.answer.reaction_s); }},
    {"wrong_way_first", 0, "1: the first input went the wrong way",
     [](A a) { return double(a.answer.wrong_way_first); }},
    {"settling_s", 3, "until the path was back; empty: never",
     [](A a) { return known_if(a.answer.settling_s >= 0.0, a.answer.settling_s); }},
    {"overshot", 0, "1: out on the other side within 20 s", [](A a) { return double(a.answer.overshot); }},
};

}  // namespace

Table answer_table(const ReviewedFlight& flight) {
    Table table{"answers", "", {}, {}};
    set_heads(table, columns);
    for (const PathAnswer& answer : flight.review.path_answers)
        add_row(table, columns, "", AnswerSource{answer, flight.track.points[answer.begin].time_s});
    return table;
}

}  // namespace slopewise
