// How the help fades over the runs of a student. Rules R3 and R5, as the design numbers them.
#include "help/help_stage.h"

#include <vector>

#include "debrief/sheet_facts.h"
#include "record/circumstances.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

std::vector<AttemptRow> runs(std::initializer_list<double> path_shares) {
    std::vector<AttemptRow> rows;
    for (const double share : path_shares) rows.emplace_back().path_share = share;
    return rows;
}

}  // namespace

// Rule R3: Guadagnoli & Lee 2004 (read in abstract): the difficulty that teaches most moves with the skill.
// The shares and numbers of runs are common practice, no source.
TEST_CASE("R3: a stage forward after three of the last four runs at 70 %, by results and never by time") {
    CHECK(help_stage({}) == 0);
    CHECK(help_stage(runs({0.7, 0.7})) == 0);
    CHECK(help_stage(runs({0.7, 0.7, 0.7})) == 1);
    CHECK(help_stage(runs({0.7, 0.69, 0.7, 0.7})) == 1);
    CHECK(help_stage(runs({0.7, 0.69, 0.7, 0.69, 0.7})) == 0);  // two of the last four
    CHECK(help_stage(runs({0.7, 0.69, 0.69, 0.7, 0.7})) == 0);
    CHECK(help_stage(runs({0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5})) == 0);
    // Twelve good ones would be ten steps were they counted again: each step asks for three of its own.
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.9, 0.9})) == 1);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.9, 0.9, 0.9})) == 2);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9})) == last_help_stage);
}

// Rule R3: Guadagnoli & Lee 2004, as above.
TEST_CASE("R3: one back after two runs in a row below 40 %, and never before the first stage") {
    CHECK(help_stage(runs({0.39, 0.39})) == 0);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.39})) == 1);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.39, 0.39})) == 0);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.39, 0.40, 0.39})) == 1);
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.3, 0.3, 0.3})) == 1);  // the third begins anew
    CHECK(help_stage(runs({0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.3, 0.3, 0.3, 0.3})) == 0);
}

// Rule R5: Park, Shea & Wright 2000 (recalled): trials without help between those with it keep what guidance
// gives. Every third: common practice, no source.
TEST_CASE("R5: every third run is flown unaided until the last stage is reached, where all are") {
    for (int stage = 0; stage < last_help_stage; ++stage) {
        for (std::size_t earlier = 0; earlier < 12; ++earlier)
            CHECK(is_unaided_run(earlier, stage) == (earlier % 3 == 2));
    }
    for (std::size_t earlier = 0; earlier < 6; ++earlier)
        CHECK_FALSE(is_unaided_run(earlier, last_help_stage));

    const HelpPlan third = help_plan(runs({0.5, 0.5}), true);
    CHECK(third.by_itself);
    CHECK(third.unaided_run);
    CHECK(third.stage == 0);
    const HelpPlan fourth = help_plan(runs({0.9, 0.9, 0.9}), false);
    CHECK_FALSE(fourth.by_itself);
    CHECK_FALSE(fourth.unaided_run);
    CHECK(fourth.stage == 1);
    const std::vector<AttemptRow> nine(9, runs({0.9}).front());
    CHECK(may_come_by_itself(help_plan(runs({0.9}), true)));
    CHECK_FALSE(may_come_by_itself(help_plan(nine, true)));
}

// Rule R5: the guidance hypothesis, Salmoni, Schmidt & Walter 1984 (recalled): what is done with help does
// not show what stays. Help that stood ready counts as help: else only the poor runs, to which it came, would
// be left out.
TEST_CASE("R5: only runs without help at hand count as unaided") {
    CHECK(RecordedAids{}.unaided());
    RecordedAids shown, called, ready, voice, silent_voice;
    shown.guide_s = 1.0;
    called.guide_calls = 1;
    ready.guide_ready = true;
    voice.call_outs = 2;
    silent_voice.call_outs = 0;
    for (const RecordedAids& aids : {shown, called, ready, voice, silent_voice}) CHECK_FALSE(aids.unaided());

    CHECK(aids_sentence(ready) == "Aids: the path guide (ready, not shown).");
    CHECK(aids_sentence(voice) == "Aids: call-outs (2).");

    AttemptRow passed, helped;
    for (AttemptRow* row : {&passed, &helped}) {
        row->gate_reached = row->stable_at_gate = true;
        row->decision = Decision::right;
    }
    helped.unaided = false;
    CHECK(learning_row(std::vector<AttemptRow>{helped, passed, helped}).at == std::vector<std::size_t>{1});
}
