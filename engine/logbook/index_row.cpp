#include "logbook/index_row.h"

#include <bit>
#include <charconv>
#include <cmath>
#include <cstdio>

#include "logbook/attempt_id.h"

namespace slopewise {
namespace {

// Another number whenever what stands in a row, or how it is measured, changes.
constexpr std::string_view version = "3";

class Writer {
public:
    void text(std::string_view words) {
        line_ += '\t';
        for (const char c : words) line_ += c == '\t' || c == '\n' || c == '\r' ? ' ' : c;
    }
    void whole(std::int64_t value) { text(std::to_string(value)); }
    void real(double value) {
        char digits[20];
        std::snprintf(digits, sizeof digits, "%016llx",
                      static_cast<unsigned long long>(std::bit_cast<std::uint64_t>(value)));
        text(digits);
    }
    std::string done() && { return std::move(line_); }

private:
    std::string line_{version};
};

class Reader {
public:
    explicit Reader(std::string_view line) : rest_(line) { good_ = cell() == version; }

    std::string text() { return std::string(cell()); }
    std::int64_t whole() { return number<std::int64_t>(10); }
    bool flag() { return whole() != 0; }
    double real() {
        const auto value = std::bit_cast<double>(number<std::uint64_t>(16));
        good_ = good_ && std::isfinite(value);
        return value;
    }
    template <class Choice>
    Choice one_of(std::size_t count) {
        const std::int64_t value = whole();
        good_ = good_ && value >= 0 && value < static_cast<std::int64_t>(count);
        return static_cast<Choice>(good_ ? value : 0);
    }
    bool done() const { return good_ && ended_; }

private:
    std::string_view cell() {
        good_ = good_ && !ended_;
        const std::size_t tab = rest_.find('\t');
        const std::string_view found = rest_.substr(0, tab);
        ended_ = tab == std::string_view::npos;
        rest_ = ended_ ? std::string_view{} : rest_.substr(tab + 1);
        return found;
    }
    template <class Number>
    Number number(int base) {
        const std::string_view digits = cell();
        Number value{};
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value, base);
        good_ = good_ && error == std::errc() && end == digits.data() + digits.size();
        return value;
    }

    std::string_view rest_;
    bool good_ = true, ended_ = false;
};

}  // namespace

IndexRow index_row(const KeptAttempt& attempt, const ReviewedFlight& flight) {
    return {attempt.id, attempt.recording.circumstances.student, attempt.cut_off, 0,
            attempt_row(flight, attempt.recording.circumstances)};
}

std::string index_row_text(const IndexRow& row) {
    const AttemptRow& r = row.row;
    Writer line;
    line.text(row.id);
    line.text(row.student);
    line.whole(row.cut_off);
    line.whole(row.deleted_unix_s);
    line.text(r.lesson);
    line.whole(r.started_unix_s);
    line.whole(r.unaided);
    line.real(r.duration_s);
    line.real(r.start_offset_rad);
    line.real(r.headwind_mps);
    line.whole(r.lights_hidden);
    line.whole(r.airspeed_hidden);
    for (const Spread* spread : {&r.path_rad, &r.speed_mps}) {
        line.real(spread->bias);
        line.real(spread->scatter);
        line.real(spread->rms);
    }
    line.whole(r.gate_reached);
    line.whole(r.stable_at_gate);
    line.whole(r.set_up_unstable);
    line.whole(r.went_around);
    line.whole(static_cast<int>(r.decision));
    line.text(r.priority_fault);
    line.real(r.path_share);
    line.whole(r.criterion_met);
    return std::move(line).done();
}

std::optional<IndexRow> read_index_row(std::string_view text) {
    Reader line(text);
    IndexRow row;
    AttemptRow& r = row.row;
    row.id = line.text();
    row.student = line.text();
    row.cut_off = line.flag();
    row.deleted_unix_s = line.whole();
    r.lesson = line.text();
    r.started_unix_s = line.whole();
    r.unaided = line.flag();
    r.duration_s = line.real();
    r.start_offset_rad = line.real();
    r.headwind_mps = line.real();
    r.lights_hidden = line.flag();
    r.airspeed_hidden = line.flag();
    for (Spread* spread : {&r.path_rad, &r.speed_mps}) {
        spread->bias = line.real();
        spread->scatter = line.real();
        spread->rms = line.real();
    }
    r.gate_reached = line.flag();
    r.stable_at_gate = line.flag();
    r.set_up_unstable = line.flag();
    r.went_around = line.flag();
    r.decision = line.one_of<Decision>(decision_names.size());
    r.priority_fault = line.text();
    r.path_share = line.real();
    r.criterion_met = line.flag();
    if (!line.done() || !is_attempt_id(row.id)) return std::nullopt;
    return row;
}

}  // namespace slopewise
