#include "data/recording_file.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"
#include "ui/class_channel.h"
#include "ui/link_message.h"

namespace slopewise::test {

void meet_link_message(std::string_view text) {
    const Result<LinkMessage> read = read_link_message(text);
    if (!demand_answer(read)) return;
    demand(is_pair_name(read.value->from), "who speaks has a name");
    const std::string written = link_message_text(*read.value);
    const Result<LinkMessage> again = read_link_message(written);
    demand(again.ok(), "a message is heard by the other window: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(link_message_text(*again.value) == written, "a message is said the same again");
}

std::vector<std::string> seeds_of_link_message() {
    LinkMessage message;
    message.kind = LinkMessage::Kind::run;
    message.from = "abcdefgh12";
    message.run = 3;
    message.recording = recording_text(short_recording());
    message.room = seeds_of_room_shown().back();
    message.settings = seeds_of_settings().front();
    message.kept = "{\"panel\":\"ask away\"}";
    message.hands = "both";
    std::vector<std::string> seeds{link_message_text(message)};
    LinkMessage moved;
    moved.from = "abcdefgh12";
    moved.to = "hgfedcba21";
    moved.since = 120;
    moved.frozen = false;
    moved.rows = "c 0 1 2 3 0 0\nh 0f\nt 120\n";
    moved.pointer = InkPoint{0.1f, 0.9f};
    moved.pointing = true;
    seeds.push_back(link_message_text(moved));
    moved.kind = LinkMessage::Kind::orphan;
    moved.words = "Final from 3 NM";
    moved.pair = "pairpair12";
    seeds.push_back(link_message_text(moved));
    return seeds;
}

}  // namespace slopewise::test
