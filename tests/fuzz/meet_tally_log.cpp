#include "data/tally_log.h"

#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {

void meet_tally_log(std::string_view text) {
    const TallyLog log = read_tally_log(text);
    demand_told(log.problems);
    const std::string written = tally_log_text(log.asked, text.size() * 10 + 100000);
    if (written.size() > most_tally_bytes) return;
    const TallyLog again = read_tally_log(written);
    demand(again.problems.empty(), "answers that were kept are read: " +
                                       (again.problems.empty() ? "" : to_text(again.problems.front())));
    demand(again.asked.size() == log.asked.size() && tally_log_text(again.asked) == written,
           "answers are kept the same again");
    for (const AskedQuestion& one : log.asked)
        demand(one.right >= 0 && static_cast<std::size_t>(one.right) < one.choices.size() &&
                   one.first.size() == one.choices.size(),
               "hands are counted of the choices");
    demand(!tally_csv(log.asked).empty(), "answers are a table");
}

std::vector<std::string> seeds_of_tally_log() {
    AskedQuestion one;
    one.asked_unix_s = 1764000000;
    one.ahead_of_utc_s = 3600;
    one.set_id = "energy_states";
    one.set_title = "Energy states";
    one.number = 2;
    one.kind = "energy_state";
    one.words = "High or low? \"Fast\" or slow?";
    one.choices = {"High", "Low", "On the path"};
    one.first = {3, 0, 12};
    one.right = 1;
    AskedQuestion other = one;
    other.second = {1, 1, 13};
    const AskedQuestion asked[] = {one, other};
    return {tally_log_text(asked)};
}

}  // namespace slopewise::test
