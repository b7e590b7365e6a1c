// The journal of a flight in progress: pieces of text, one a second, kept as they come, so that a closed tab
// or a crash costs at most the last second. When the attempt is kept whole its journal is thrown away.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "record/recording.h"

namespace slopewise {

// How far a journal has come.
struct JournalMark {
    std::size_t changes = 0, hashes = 0;
};

// The first piece: the recording as far as it is flown.
std::string journal_head(const Recording& recording);
JournalMark journal_mark(const Recording& recording);

// What came since the mark, which is moved on: the controls, the hashes, how far it is flown. Written over
// `piece`, whose memory is used again. Call it at a whole second, so that the last hash is the state's.
void journal_piece(const Recording& recording, JournalMark& mark, std::string& piece);

// What a piece tells: what came since the one before.
struct JournalPiece {
    std::vector<Recording::Change> changes;  // later ones at later ticks, all before `ticks`
    std::vector<std::uint64_t> hashes;
    std::int64_t ticks = 0;  // flown by then
};

// Nothing when it is damaged or not whole, or tells of controls that cannot be flown.
std::optional<JournalPiece> read_journal_piece(std::string_view piece);

// The recording as far as whole pieces stand, in their order. A piece that is damaged or missing ends it;
// only a bad head is a problem.
Result<Recording> read_journal(const std::vector<std::string>& pieces, const std::string& file);

}  // namespace slopewise
