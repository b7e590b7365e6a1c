#include "data/recording_file.h"

#include <charconv>
#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>

#include "data/circumstances_json.h"
#include "data/fields.h"
#include "data/read_lesson.h"
#include "data/write_lesson.h"

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

constexpr auto most_ticks = static_cast<double>(most_recording_ticks);

std::string hex_text(std::uint64_t hash) {
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return text;
}

bool read_hex(const std::string& text, std::uint64_t& hash) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), hash, 16);
    return error == std::errc() && end == text.data() + text.size() && text.size() == 16;
}

// The columns of a row of controls, and what each may hold.
struct Column {
    const char* name;
    double low, high;
};
constexpr Column columns[] = {{"tick", 0, most_ticks}, {"stick", -32767, 32767}, {"throttle", 0, 65535},
                              {"trim", -32767, 32767}, {"flap", 0, 3},           {"go around", 0, 1}};

// Collects problems of rows, which Fields cannot say: they are lists, not objects.
class RowReader {
public:
    // Rows stand before `end_tick`.
    RowReader(const std::string& file, std::int64_t end_tick, std::vector<Problem>& problems)
        : file_(file), end_tick_(end_tick), problems_(problems) {}

    void read(const JsonNode& list, Recording& recording) {
        for (std::size_t i = 0; i < list.items.size() && problems_.size() < most_problems; ++i) {
            double value[std::size(columns)] = {};
            if (!read_row(list.items[i], i, value)) continue;
            const auto tick = static_cast<std::int64_t>(value[0]);
            if (!recording.changes.empty() && tick <= recording.changes.back().tick) {
                report(list.items[i], i, "is not later than the row before", "");
                continue;
            }
            if (tick >= end_tick_) {
                report(list.items[i], i, "is later than the recording", "a tick before /ticks");
                continue;
            }
            Controls controls;
            controls.stick = static_cast<std::int16_t>(value[1]);
            controls.throttle = static_cast<std::uint16_t>(value[2]);
            controls.trim = static_cast<std::int16_t>(value[3]);
            controls.flap = static_cast<std::uint8_t>(value[4]);
            controls.go_around = value[5] != 0.0;
            recording.changes.push_back({tick, controls});
        }
    }

private:
    static constexpr std::size_t most_problems = 20;  // more of the same help nobody

    bool read_row(const JsonNode& row, std::size_t index, double* value) {
        if (row.kind != JsonNode::Kind::list || row.items.size() != std::size(columns)) {
            report(row, index, "is not a row of controls", "6 numbers");
            return false;
        }
        for (std::size_t i = 0; i < std::size(columns); ++i) {
            const JsonNode& cell = row.items[i];
            const Column& column = columns[i];
            const bool whole = cell.kind == JsonNode::Kind::number && cell.number == std::floor(cell.number);
            if (!whole || cell.number < column.low || cell.number > column.high) {
                report(row, index, std::string("has a bad ") + column.name,
                       "a whole number, " + number_text(column.low) + " to " + number_text(column.high));
                return false;
            }
            value[i] = cell.number;
        }
        return true;
    }

    void report(const JsonNode& row, std::size_t index, std::string what, std::string allowed) {
        problems_.push_back(
            {file_, row.line, "/controls/" + std::to_string(index), std::move(what), std::move(allowed)});
    }

    const std::string& file_;
    std::int64_t end_tick_;
    std::vector<Problem>& problems_;
};

void read_hashes(Fields& fields, Recording& recording) {
    const JsonNode* list = fields.raw("hashes", JsonNode::Kind::list);
    if (list == nullptr) return;
    for (const JsonNode& item : list->items) {
        std::uint64_t hash = 0;
        if (item.kind != JsonNode::Kind::text || !read_hex(item.text, hash))
            return fields.report("hashes", "has an entry that is no hash", "texts of 16 hexadecimal digits");
        recording.hashes.push_back(hash);
    }
    const auto wanted = static_cast<std::size_t>(recording.ticks / hash_interval_ticks);
    if (recording.hashes.size() != wanted)
        fields.report("hashes", "has " + std::to_string(recording.hashes.size()) + " entries",
                      std::to_string(wanted) + ", one for every 120 ticks");
}

}  // namespace

std::string recording_text(const Recording& recording) {
    Json json{{"kind", "recording"}, {"format", recording_format}};
    json["lesson"] = Json::parse(lesson_text(recording.lesson));
    const Json circumstances = Json::parse(circumstances_text(recording.circumstances));
    if (!circumstances.empty()) json["circumstances"] = circumstances;
    json["ticks"] = recording.ticks;
    json["final_hash"] = hex_text(recording.final_hash);
    json["hashes"] = Json::array();
    for (const std::uint64_t hash : recording.hashes) json["hashes"].push_back(hex_text(hash));
    json["controls"] = Json::array();
    for (const Recording::Change& change : recording.changes) {
        const Controls& c = change.controls;
        json["controls"].push_back({change.tick, c.stick, c.throttle, c.trim, c.flap, c.go_around ? 1 : 0});
    }
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Recording> read_recording(std::string_view text, const std::string& file) {
    Result<JsonNode> parsed = parse_json(text, file, most_recording_bytes);
    if (!parsed.ok()) return failure<Recording>(std::move(parsed.problems));
    return read_recording(*parsed.value, file);
}

Result<Recording> read_recording(const JsonNode& node, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(node, file, "", problems);
    constexpr std::string_view kinds[] = {"recording"};
    fields.one_of("kind", kinds);
    fields.integer("format", recording_format, recording_format);
    if (!problems.empty()) return failure<Recording>(std::move(problems));

    Recording recording;
    if (const JsonNode* lesson = fields.raw("lesson", JsonNode::Kind::object)) {
        Result<Lesson> read = read_lesson(*lesson, file);
        for (Problem& problem : read.problems) {
            problem.path = "/lesson" + problem.path;
            problems.push_back(std::move(problem));
        }
        if (read.ok()) recording.lesson = std::move(*read.value);
    }
    if (fields.has("circumstances"))
        recording.circumstances = read_circumstances(fields.object("circumstances"));
    const std::size_t problems_before_ticks = problems.size();
    recording.ticks = static_cast<std::int64_t>(fields.integer("ticks", 0, static_cast<int>(most_ticks)));
    const bool ticks_known = problems.size() == problems_before_ticks;
    if (!read_hex(fields.text("final_hash"), recording.final_hash))
        fields.report("final_hash", "is no hash", "16 hexadecimal digits");
    read_hashes(fields, recording);
    if (const JsonNode* rows = fields.raw("controls", JsonNode::Kind::list))
        RowReader(file, ticks_known ? recording.ticks : most_recording_ticks, problems)
            .read(*rows, recording);
    fields.finish();
    if (!problems.empty()) return failure<Recording>(std::move(problems));
    return success(std::move(recording));
}

}  // namespace slopewise
