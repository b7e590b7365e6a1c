#include "ui/link_message.h"

#include <array>
#include <charconv>
#include <limits>

#include "data/fields.h"
#include "data/recording_file.h"
#include "ui/class_channel.h"
#include "ui/room_shown_text.h"

namespace slopewise {
namespace {

constexpr int link_version = 1;

constexpr std::array<std::string_view, 13> kinds{"run",   "frame", "ended", "close", "take", "mine",  "hello",
                                                 "alive", "wish",  "state", "left",  "who",  "orphan"};

// The texts that a message may carry.
struct Part {
    std::string_view key;
    std::string LinkMessage::*text;
    std::size_t most_bytes;
};
constexpr std::array<Part, 8> parts{{{"recording", &LinkMessage::recording, most_channel_bytes},
                                     {"rows", &LinkMessage::rows, most_channel_bytes},
                                     {"room", &LinkMessage::room, RoomLimits::bytes},
                                     {"settings", &LinkMessage::settings, std::size_t{1} << 20},
                                     {"kept", &LinkMessage::kept, std::size_t{1} << 20},
                                     {"hands", &LinkMessage::hands, 40},
                                     {"words", &LinkMessage::words, 400},
                                     {"pair", &LinkMessage::pair, 32}}};

void add_share(std::string& text, float share) {
    std::array<char, 32> digits;
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), share);
    text.append(digits.data(), end);
}

std::string name_of(Fields& fields, std::string_view key, bool needed) {
    std::string name = needed ? fields.text(key, 32) : fields.text_or(key, "", 32);
    if (!name.empty() && !is_pair_name(name)) fields.report(key, "is no name", "8 to 32 letters and digits");
    return name;
}

}  // namespace

std::string link_message_text(const LinkMessage& message) {
    std::string text = "{\"class_link\":" + std::to_string(link_version) + ",\"kind\":\"";
    text.append(kinds[static_cast<std::size_t>(message.kind)]).append("\",\"from\":\"").append(message.from);
    text += "\"";
    if (!message.to.empty()) text.append(",\"to\":\"").append(message.to).append("\"");
    text += ",\"run\":" + std::to_string(message.run);
    if (message.since != 0) text += ",\"since\":" + std::to_string(message.since);
    text += message.frozen ? ",\"frozen\":true" : ",\"frozen\":false";
    for (const Part& part : parts) {
        const std::string& words = message.*part.text;
        if (words.empty()) continue;
        text.append(",\"").append(part.key).append("\":").append(json_string(words));
    }
    if (message.pointer) {
        text += ",\"pointer\":[";
        add_share(text, message.pointer->x);
        text += ',';
        add_share(text, message.pointer->y);
        text += message.pointing ? "],\"pointing\":true" : "],\"pointing\":false";
    }
    return text + "}";
}

Result<LinkMessage> read_link_message(std::string_view text) {
    const std::string file = "The other window";
    const Result<JsonNode> parsed = parse_json(text, file, most_channel_bytes);
    if (!parsed.ok()) return failure<LinkMessage>(parsed.problems);
    std::vector<Problem> problems;
    Fields fields(*parsed.value, file, "", problems);
    fields.integer("class_link", link_version, link_version);
    LinkMessage message;
    message.kind = static_cast<LinkMessage::Kind>(fields.one_of("kind", kinds));
    message.from = name_of(fields, "from", true);
    message.to = name_of(fields, "to", false);
    message.run = fields.integer("run", 0, std::numeric_limits<int>::max());
    if (fields.has("since"))
        message.since = fields.integer("since", 0, static_cast<int>(most_recording_ticks));
    message.frozen = fields.flag_or("frozen", true);
    for (const Part& part : parts) message.*part.text = fields.text_or(part.key, "", part.most_bytes);
    if (!message.pair.empty() && !is_pair_name(message.pair))
        fields.report("pair", "is no name", "8 to 32 letters and digits");
    if (fields.has("pointer")) {
        constexpr Range places{double{RoomLimits::nearest}, double{RoomLimits::farthest}};
        const std::vector<double> at = fields.numbers("pointer", 2, 2, places);
        if (at.size() == 2) message.pointer = InkPoint{static_cast<float>(at[0]), static_cast<float>(at[1])};
        message.pointing = fields.flag_or("pointing", false);
    }
    fields.finish();
    if (!problems.empty()) return failure<LinkMessage>(std::move(problems));
    return success(std::move(message));
}

}  // namespace slopewise
