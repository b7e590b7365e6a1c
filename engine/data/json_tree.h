// A parsed JSON document that remembers the line of every value, so that a message can say where.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace slopewise {

struct JsonMember;

struct JsonNode {
    enum class Kind { null, boolean, number, text, list, object };

    Kind kind = Kind::null;
    int line = 0;
    bool boolean = false;
    double number = 0.0;
    std::string text;
    std::vector<JsonNode> items;      // list
    std::vector<JsonMember> members;  // object, in the file's order
};

struct JsonMember {
    std::string name;
    JsonNode value;
};

// Parses UTF-8 JSON (RFC 8259) of at most so many bytes, 32 levels, 300 keys of 100 bytes an object and two
// million values, so that no text of that size takes long or much memory. A syntax error, a repeated key or a
// size beyond these is a problem with its line.
Result<JsonNode> parse_json(std::string_view text, const std::string& file,
                            std::size_t most_bytes = std::size_t{1} << 20);

// A text as a JSON string, with its quotes. Bytes that are not UTF-8 are replaced.
std::string json_string(std::string_view text);

// The node as JSON on one line, for what is handed on as it came; numbers read back the same.
std::string json_text(const JsonNode& node);

// "a number", "an object": for messages.
std::string_view kind_name(JsonNode::Kind kind);

}  // namespace slopewise
