#include "logbook/journal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

#include "data/recording_file.h"

namespace slopewise {
namespace {

// A piece: "c TICK STICK THROTTLE TRIM FLAP GO_AROUND" a change of controls, "h HASH" a second flown, and as
// its last line "t TICKS", without which it is not whole.
template <class Number>
void add(std::string& piece, Number value, int base = 10) {
    std::array<char, 24> digits;
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value, base);
    piece += ' ';
    piece.append(digits.data(), end);
}

class Words {
public:
    explicit Words(std::string_view line) : rest_(line) {}

    template <class Number>
    Number number(int base = 10) {
        if (rest_.starts_with(' ')) rest_.remove_prefix(1);
        else good_ = false;
        Number value{};
        const auto [end, error] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value, base);
        good_ = good_ && error == std::errc();
        rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
        return value;
    }
    bool done() const { return good_ && rest_.empty(); }

private:
    std::string_view rest_;
    bool good_ = true;
};

// As a recording may hold them: a flap setting indexes a table.
bool can_be_flown(const Controls& controls) {
    return controls.stick >= -32767 && controls.trim >= -32767 && controls.flap <= 3;
}

std::optional<Recording::Change> read_change(std::string_view words) {
    Words in(words);
    Recording::Change change{};
    change.tick = in.number<std::int64_t>();
    change.controls.stick = in.number<std::int16_t>();
    change.controls.throttle = in.number<std::uint16_t>();
    change.controls.trim = in.number<std::int16_t>();
    change.controls.flap = in.number<std::uint8_t>();
    change.controls.go_around = in.number<int>() != 0;
    if (!in.done() || !can_be_flown(change.controls)) return std::nullopt;
    return change;
}

// Adds a piece that goes on from the recording; false, with the recording as it was, when it is none.
bool add_piece(Recording& recording, std::string_view text) {
    const std::optional<JournalPiece> piece = read_journal_piece(text);
    if (!piece || piece->ticks < recording.ticks || piece->ticks > most_recording_ticks) return false;
    const auto seconds = static_cast<std::size_t>(piece->ticks / hash_interval_ticks);
    if (recording.hashes.size() + piece->hashes.size() != seconds || seconds == 0) return false;
    if (!piece->changes.empty() && piece->changes.front().tick < recording.ticks) return false;
    recording.changes.insert(recording.changes.end(), piece->changes.begin(), piece->changes.end());
    recording.hashes.insert(recording.hashes.end(), piece->hashes.begin(), piece->hashes.end());
    recording.ticks = piece->ticks;
    recording.final_hash = recording.hashes.back();
    return true;
}

}  // namespace

std::optional<JournalPiece> read_journal_piece(std::string_view text) {
    JournalPiece piece;
    bool whole = false;
    while (!text.empty() && !whole) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.empty()) return std::nullopt;
        Words rest(line.substr(1));
        if (line.front() == 'c') {
            const std::optional<Recording::Change> change = read_change(line.substr(1));
            if (!change || change->tick < 0) return std::nullopt;
            if (!piece.changes.empty() && change->tick <= piece.changes.back().tick) return std::nullopt;
            piece.changes.push_back(*change);
        } else if (line.front() == 'h') {
            piece.hashes.push_back(rest.number<std::uint64_t>(16));
            if (!rest.done()) return std::nullopt;
        } else if (line.front() == 't') {
            piece.ticks = rest.number<std::int64_t>();
            whole = rest.done();
        } else {
            return std::nullopt;
        }
    }
    if (!whole || piece.ticks < 0) return std::nullopt;
    if (!piece.changes.empty() && piece.changes.back().tick >= piece.ticks) return std::nullopt;
    return piece;
}

std::string journal_head(const Recording& recording) { return recording_text(recording); }

JournalMark journal_mark(const Recording& recording) {
    return {recording.changes.size(), recording.hashes.size()};
}

void journal_piece(const Recording& recording, JournalMark& mark, std::string& piece) {
    piece.clear();
    for (; mark.changes < recording.changes.size(); ++mark.changes) {
        const Recording::Change& change = recording.changes[mark.changes];
        piece += 'c';
        add(piece, change.tick);
        add(piece, change.controls.stick);
        add(piece, change.controls.throttle);
        add(piece, change.controls.trim);
        add(piece, int{change.controls.flap});
        add(piece, change.controls.go_around ? 1 : 0);
        piece += '\n';
    }
    for (; mark.hashes < recording.hashes.size(); ++mark.hashes) {
        piece += 'h';
        add(piece, recording.hashes[mark.hashes], 16);
        piece += '\n';
    }
    piece += 't';
    add(piece, recording.ticks);
    piece += '\n';
}

Result<Recording> read_journal(const std::vector<std::string>& pieces, const std::string& file) {
    if (pieces.empty()) return failure<Recording>({{file, 0, "", "is empty", "a journal's head"}});
    Result<Recording> recording = read_recording(pieces.front(), file);
    if (!recording.ok()) return recording;
    for (std::size_t i = 1; i < pieces.size(); ++i)
        if (!add_piece(*recording.value, pieces[i])) break;
    return recording;
}

}  // namespace slopewise
