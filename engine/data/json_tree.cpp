#include "data/json_tree.h"

#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>

namespace slopewise {
namespace {

constexpr std::size_t most_levels = 32;
constexpr std::size_t most_keys = 300;  // of one object; each is compared with all before it
constexpr std::size_t longest_key = 100;
// 20 minutes of flight with the controls moved in every tick are 1.3 million; each takes about 100 bytes.
constexpr std::size_t most_values = 2'000'000;
constexpr std::size_t mebibyte = std::size_t{1} << 20;

// Walks the text and counts the lines it has passed; the parser reads through it.
class CountingIterator {
public:
    using difference_type = std::ptrdiff_t;
    using value_type = char;
    using pointer = const char*;
    using reference = const char&;
    using iterator_category = std::input_iterator_tag;

    CountingIterator(const char* at, int* line) : at_(at), line_(line) {}

    reference operator*() const { return *at_; }
    CountingIterator& operator++() {
        // The parser looks one character past a number; a line end counts when something follows it.
        if (pending_) ++*line_;
        pending_ = *at_ == '\n';
        ++at_;
        return *this;
    }
    CountingIterator operator++(int) {
        CountingIterator before = *this;
        ++*this;
        return before;
    }
    friend bool operator==(const CountingIterator& a, const CountingIterator& b) { return a.at_ == b.at_; }

private:
    const char* at_;
    int* line_;
    bool pending_ = false;
};

// Builds the tree from the parser's events; returning false stops the parser.
class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
public:
    TreeBuilder(const int& line, std::string file) : line_(line), file_(std::move(file)) {}

    bool null() override { return add(JsonNode{}); }
    bool boolean(bool value) override {
        JsonNode node;
        node.kind = JsonNode::Kind::boolean;
        node.boolean = value;
        return add(std::move(node));
    }
    bool number_integer(number_integer_t value) override { return add_number(static_cast<double>(value)); }
    bool number_unsigned(number_unsigned_t value) override { return add_number(static_cast<double>(value)); }
    bool number_float(number_float_t value, const string_t&) override { return add_number(value); }
    bool string(string_t& value) override {
        JsonNode node;
        node.kind = JsonNode::Kind::text;
        node.text = value;
        return add(std::move(node));
    }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(JsonNode::Kind::object); }
    bool start_array(std::size_t) override { return open(JsonNode::Kind::list); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override {
        if (name.size() > longest_key)
            return fail("has a key of " + std::to_string(name.size()) + " bytes",
                        std::to_string(longest_key));
        if (open_.back().members.size() >= most_keys)
            return fail("has an object of more than " + std::to_string(most_keys) + " keys", "");
        for (const auto& member : open_.back().members) {
            if (member.name == name) return fail("key \"" + name + "\" stands twice", "each key once");
        }
        keys_.back() = name;
        return true;
    }
    bool parse_error(std::size_t, const std::string& token, const nlohmann::json::exception&) override {
        return fail("is not JSON at \"" + token + "\"", "");
    }

    Result<JsonNode> take() {
        if (!problems_.empty()) return failure<JsonNode>(std::move(problems_));
        return success(std::move(root_));
    }

private:
    bool fail(std::string what, std::string allowed) {
        problems_.push_back({file_, line_, "", std::move(what), std::move(allowed)});
        return false;
    }
    bool add_number(double value) {
        JsonNode node;
        node.kind = JsonNode::Kind::number;
        node.number = value;
        return add(std::move(node));
    }
    bool open(JsonNode::Kind kind) {
        if (open_.size() >= most_levels) return fail("is nested too deep", "32 levels");
        JsonNode node;
        node.kind = kind;
        node.line = line_;
        open_.push_back(std::move(node));
        keys_.emplace_back();
        return true;
    }
    bool close() {
        JsonNode node = std::move(open_.back());
        open_.pop_back();
        keys_.pop_back();
        return attach(std::move(node));
    }
    bool add(JsonNode node) {
        node.line = line_;
        return attach(std::move(node));
    }
    bool attach(JsonNode node) {
        if (++values_ > most_values)
            return fail("holds more than " + std::to_string(most_values) + " values", "");
        if (open_.empty()) {
            root_ = std::move(node);
        } else if (open_.back().kind == JsonNode::Kind::object) {
            open_.back().members.push_back({keys_.back(), std::move(node)});
        } else {
            open_.back().items.push_back(std::move(node));
        }
        return true;
    }

    const int& line_;
    std::string file_;
    std::vector<JsonNode> open_;
    std::vector<std::string> keys_;
    JsonNode root_;
    std::size_t values_ = 0;
    std::vector<Problem> problems_;
};

}  // namespace

Result<JsonNode> parse_json(std::string_view text, const std::string& file, std::size_t most_bytes) {
    if (text.size() > most_bytes) {
        const std::string allowed = most_bytes < mebibyte ? std::to_string(most_bytes) + " bytes"
                                                          : std::to_string(most_bytes / mebibyte) + " MiB";
        return failure<JsonNode>(
            {{file, 0, "", "is " + std::to_string(text.size()) + " bytes long", allowed}});
    }
    int line = 1;
    TreeBuilder builder(line, file);
    nlohmann::json::sax_parse(CountingIterator(text.data(), &line),
                              CountingIterator(text.data() + text.size(), &line), &builder);
    return builder.take();
}

std::string_view kind_name(JsonNode::Kind kind) {
    switch (kind) {
    case JsonNode::Kind::null: return "null";
    case JsonNode::Kind::boolean: return "true or false";
    case JsonNode::Kind::number: return "a number";
    case JsonNode::Kind::text: return "a text";
    case JsonNode::Kind::list: return "a list";
    case JsonNode::Kind::object: return "an object";
    }
    return "";
}

std::string json_text(const JsonNode& node) {
    std::string text;
    switch (node.kind) {
    case JsonNode::Kind::null: return "null";
    case JsonNode::Kind::boolean: return node.boolean ? "true" : "false";
    case JsonNode::Kind::number: {
        if (node.number == 0.0) return std::signbit(node.number) ? "-0.0" : "0";  // "-0" is read as a whole 0
        char digits[40];
        std::snprintf(digits, sizeof digits, "%.17g", node.number);
        return digits;
    }
    case JsonNode::Kind::text: return json_string(node.text);
    case JsonNode::Kind::list:
        for (const JsonNode& item : node.items) text += (text.empty() ? "" : ", ") + json_text(item);
        return "[" + text + "]";
    case JsonNode::Kind::object:
        for (const JsonMember& member : node.members)
            text += (text.empty() ? "" : ", ") + json_string(member.name) + ": " + json_text(member.value);
        return "{" + text + "}";
    }
    return text;
}

std::string json_string(std::string_view text) {
    return nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace slopewise
