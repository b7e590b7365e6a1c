#include "ui/room_shown_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "data/fields.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 4> stage_names{"none", "asked", "discussed", "revealed"};
constexpr std::array<std::string_view, 3> board_names{"flight", "stills", "explain"};

// ---- written ----

class Writer {
public:
    void flag(std::string_view key, bool value) { member(key) += value ? "true" : "false"; }
    void integer(std::string_view key, int value) { member(key) += std::to_string(value); }
    // An empty text is not written, which reads as empty.
    void words(std::string_view key, std::string_view value) {
        if (!value.empty()) member(key) += json_string(cut(value));
    }
    template <class Items, class Write>
    void list(std::string_view key, const Items& items, std::size_t most, Write write) {
        if (items.empty()) return;
        open(key, '[');
        for (std::size_t i = 0; i < std::min(items.size(), most); ++i) {
            separate();
            write(items[i]);
        }
        close(']');
    }
    void point(const InkPoint& at) {
        coordinate(at.x);
        coordinate(at.y);
    }
    void coordinate(float share) {
        std::array<char, 32> digits;
        const float in = std::isnan(share) ? 0 : std::clamp(share, RoomLimits::nearest, RoomLimits::farthest);
        const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), in);
        separate();
        text.append(digits.data(), end);
    }
    void open(std::string_view key, char bracket) {
        member(key) += bracket;
        first_ = true;
    }
    void begin(char bracket) {
        text += bracket;
        first_ = true;
    }
    void close(char bracket) {
        text += bracket;
        first_ = false;
    }

    // To so many bytes, never within a letter.
    static std::string_view cut(std::string_view value) {
        if (value.size() <= RoomLimits::words) return value;
        std::size_t end = RoomLimits::words;
        while (end > 0 && (static_cast<unsigned char>(value[end]) & 0xC0u) == 0x80u) --end;
        return value.substr(0, end);
    }

    std::string text;

private:
    std::string& member(std::string_view key) {
        separate();
        return text.append("\"").append(key).append("\":");
    }
    void separate() {
        if (!first_) text += ',';
        first_ = false;
    }

    bool first_ = true;
};

void write_ask(Writer& out, const AskShown& ask) {
    if (ask == AskShown{}) return;
    const int choices = static_cast<int>(std::min(ask.choices.size(), RoomLimits::choices));
    out.open("ask", '{');
    out.words("stage", stage_names[static_cast<std::size_t>(ask.stage)]);
    out.words("place", ask.place);
    out.words("question", ask.question);
    // A choice without words keeps its place.
    out.list("choices", ask.choices, RoomLimits::choices, [&](const std::string& choice) {
        out.text += json_string(choice.empty() ? " " : Writer::cut(choice));
    });
    const auto hands = [&](std::string_view key, const std::vector<int>& counted) {
        if (counted.size() != ask.choices.size()) return;  // there are none yet
        out.list(key, counted, RoomLimits::choices,
                 [&](int count) { out.text += std::to_string(std::clamp(count, 0, RoomLimits::hands)); });
    };
    hands("first", ask.first);
    hands("second", ask.second);
    out.flag("counts_shown", ask.counts_shown);
    out.integer("right", std::clamp(ask.right, -1, choices - 1));
    out.words("reveal", ask.reveal);
    out.close('}');
}

// Each line as its points' x and y in turn.
void write_ink(Writer& out, const std::vector<InkLine>& ink) {
    std::size_t room = RoomLimits::ink_points;
    out.list("ink", ink, RoomLimits::ink_lines, [&](const InkLine& line) {
        const std::size_t points = std::min({line.points.size(), RoomLimits::line_points, room});
        room -= points;
        out.begin('[');
        for (std::size_t i = 0; i < points; ++i) out.point(line.points[i]);
        out.close(']');
    });
}

// ---- read ----

float share_of(double number) { return static_cast<float>(number); }

std::vector<int> read_hands(Fields& fields, std::string_view key, std::size_t choices) {
    std::vector<int> hands;
    if (!fields.has(key)) return hands;
    for (const double number : fields.numbers(key, choices, choices, {0.0, double{RoomLimits::hands}})) {
        if (number != std::floor(number)) fields.report(key, "has a part of a hand", "whole numbers");
        hands.push_back(static_cast<int>(number));
    }
    // A bad entry is left out; what is drawn counts on one a choice.
    if (hands.size() != choices) hands.clear();
    return hands;
}

AskShown read_ask(Fields fields) {
    AskShown ask;
    ask.stage = static_cast<AskShown::Stage>(fields.one_of("stage", stage_names));
    ask.place = fields.text_or("place", "", RoomLimits::words);
    ask.question = fields.text_or("question", "", RoomLimits::words);
    if (fields.has("choices"))
        ask.choices = fields.texts("choices", 1, RoomLimits::choices, RoomLimits::words);
    ask.first = read_hands(fields, "first", ask.choices.size());
    ask.second = read_hands(fields, "second", ask.choices.size());
    ask.counts_shown = fields.flag_or("counts_shown", false);
    ask.right = fields.integer("right", -1, static_cast<int>(ask.choices.size()) - 1);
    ask.reveal = fields.text_or("reveal", "", RoomLimits::words);
    fields.finish();
    return ask;
}

// Places as x and y in turn; empty, and reported, when they are not.
std::vector<InkPoint> read_points(Fields& fields, const JsonNode& list) {
    std::vector<InkPoint> points;
    const bool pairs = list.kind == JsonNode::Kind::list && list.items.size() % 2 == 0 &&
                       list.items.size() <= 2 * RoomLimits::line_points;
    const auto is_place = [](const JsonNode& node) {
        return node.kind == JsonNode::Kind::number && node.number >= double{RoomLimits::nearest} &&
               node.number <= double{RoomLimits::farthest};
    };
    if (!pairs || !std::ranges::all_of(list.items, is_place)) {
        fields.report("ink", "has a line that is none", "lists of x and y in turn, each -1 to 2");
        return points;
    }
    points.reserve(list.items.size() / 2);
    for (std::size_t i = 0; i < list.items.size(); i += 2)
        points.push_back({share_of(list.items[i].number), share_of(list.items[i + 1].number)});
    return points;
}

void read_ink(Fields& fields, std::vector<InkLine>& ink) {
    const JsonNode* lines = fields.raw("ink", JsonNode::Kind::list);
    if (lines == nullptr) return;
    if (lines->items.size() > RoomLimits::ink_lines)
        return fields.report("ink", "has " + std::to_string(lines->items.size()) + " lines", "at most 200");
    std::size_t points = 0;
    for (const JsonNode& line : lines->items) {
        ink.push_back({read_points(fields, line)});
        points += ink.back().points.size();
    }
    if (points > RoomLimits::ink_points)
        fields.report("ink", "has " + std::to_string(points) + " points", "at most 20000");
}

void read_covered(Fields& fields, InstrumentSet& covered) {
    if (!fields.has("covered")) return;
    for (const std::string& key : fields.texts("covered", 0, instrument_names.size())) {
        const auto found = std::ranges::find(instrument_names, key, &InstrumentName::key);
        if (found != instrument_names.end()) covered.*found->which = true;
        else fields.report("covered", "names \"" + key + "\"", "the instruments");
    }
}

}  // namespace

std::string room_shown_text(const RoomShown& shown) {
    Writer out;
    out.begin('{');
    out.flag("black", shown.black);
    out.flag("lights", shown.lights);
    out.flag("dials", shown.dials);
    out.flag("side_profile", shown.side_profile);
    out.flag("ghost", shown.ghost);
    out.flag("names", shown.names);
    std::vector<std::string_view> covered;
    for (const InstrumentName& one : instrument_names)
        if (shown.covered.*one.which) covered.push_back(one.key);
    out.list("covered", covered, covered.size(), [&](std::string_view key) { out.text += json_string(key); });
    out.open("board", '{');
    out.words("kind", board_names[static_cast<std::size_t>(shown.board.kind)]);
    out.integer("page", std::clamp(shown.board.page, 0, RoomLimits::page));
    out.flag("labels", shown.board.labels);
    out.close('}');
    write_ask(out, shown.ask);
    write_ink(out, shown.ink);
    out.open("pointer", '[');
    out.point(shown.pointer);
    out.close(']');
    out.flag("pointing", shown.pointing);
    out.close('}');
    return out.text;
}

Result<RoomShown> read_room_shown(std::string_view text, const std::string& from) {
    const Result<JsonNode> parsed = parse_json(text, from, RoomLimits::bytes);
    if (!parsed.ok()) return failure<RoomShown>(parsed.problems);
    std::vector<Problem> problems;
    Fields fields(*parsed.value, from, "", problems);
    RoomShown shown;
    shown.black = fields.flag_or("black", shown.black);
    shown.lights = fields.flag_or("lights", shown.lights);
    shown.dials = fields.flag_or("dials", shown.dials);
    shown.side_profile = fields.flag_or("side_profile", shown.side_profile);
    shown.ghost = fields.flag_or("ghost", shown.ghost);
    shown.names = fields.flag_or("names", shown.names);
    read_covered(fields, shown.covered);
    if (fields.has("board")) {
        Fields board = fields.object("board");
        shown.board.kind = static_cast<BoardShown::Kind>(board.one_of("kind", board_names));
        shown.board.page = board.integer("page", 0, RoomLimits::page);
        shown.board.labels = board.flag_or("labels", false);
        board.finish();
    }
    if (fields.has("ask")) shown.ask = read_ask(fields.object("ask"));
    if (fields.has("ink")) read_ink(fields, shown.ink);
    if (fields.has("pointer")) {
        constexpr Range places{double{RoomLimits::nearest}, double{RoomLimits::farthest}};
        const std::vector<double> at = fields.numbers("pointer", 2, 2, places);
        if (at.size() == 2) shown.pointer = {share_of(at[0]), share_of(at[1])};
    }
    shown.pointing = fields.flag_or("pointing", false);
    fields.finish();
    if (!problems.empty()) return failure<RoomShown>(std::move(problems));
    return success(std::move(shown));
}

}  // namespace slopewise
