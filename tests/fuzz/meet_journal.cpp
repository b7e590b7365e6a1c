// A journal is pieces; here they stand in one text, between record separators (ASCII 30).
#include "logbook/journal.h"

#include "data/recording_file.h"
#include "lockstep/following.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {
namespace {

constexpr char separator = '\x1E';

std::vector<std::string> pieces_of(std::string_view text) {
    std::vector<std::string> pieces{""};
    for (const char c : text) {
        if (c == separator) pieces.emplace_back();
        else pieces.back() += c;
    }
    return pieces;
}

// A class window flies by such pieces.
void follow_pieces(const Recording& head, const std::vector<std::string>& pieces) {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    Following following = follow(head, attempt);
    for (std::size_t i = 1; i < pieces.size(); ++i) learn(following, pieces[i]);
    for (int i = 0; i < 1000 && ticks_behind(following, attempt) > 0; ++i) {
        tick(scenario, attempt, led_controls(following, attempt));
        compare(following, attempt);
    }
}

}  // namespace

void meet_journal(std::string_view text) {
    const std::vector<std::string> pieces = pieces_of(text);
    for (const std::string& piece : pieces) {
        const std::optional<JournalPiece> read = read_journal_piece(piece);
        if (read) demand(read->ticks >= 0, "a piece says how far it is flown");
    }
    const Result<Recording> read = read_journal(pieces, "x");
    if (!demand_answer(read)) return;
    // What was found is kept as an attempt, and must be read again as one.
    const std::string written = recording_text(*read.value);
    const Result<Recording> again = read_recording(written, "x");
    demand(again.ok(), "what a journal told is kept as a recording: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    const Result<Recording> head = read_recording(pieces.front(), "x");
    if (head.ok()) follow_pieces(*head.value, pieces);
}

std::vector<std::string> seeds_of_journal() {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    Recording recording = begin_recording(scenario.lesson);
    std::string text = journal_head(recording), piece;
    JournalMark mark = journal_mark(recording);
    for (int i = 1; i <= 4 * hash_interval_ticks; ++i) {
        Controls controls = quantize(scenario.start_trim.controls);
        controls.stick = static_cast<std::int16_t>(30 * (i / 50));
        tick(scenario, attempt, controls);
        record(recording, controls, attempt);
        if (i % hash_interval_ticks != 0) continue;
        journal_piece(recording, mark, piece);
        text += separator + piece;
    }
    return {text};
}

}  // namespace slopewise::test
