// Reads the fields of one JSON object: required or with a default, each with its range, and reports
// every problem, unknown keys included (with the nearest known one).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "data/json_tree.h"

namespace slopewise {

// The numbers allowed, ends included.
struct Range {
    double low;
    double high;
};

class Fields {
public:
    // `path` is the object's own JSON path, "" for the root. Problems are appended to `problems`, which
    // with `node` must outlive this object.
    Fields(const JsonNode& node, std::string file, std::string path, std::vector<Problem>& problems);

    // Each returns the field's value; a missing or bad one is reported and a harmless value returned. Those
    // that end in `_or` return `otherwise` for a missing one, which is no problem, and for a bad one, which
    // is.
    double number(std::string_view key, Range allowed);
    double number_or(std::string_view key, double otherwise, Range allowed);
    int integer(std::string_view key, int low, int high);
    std::string text(std::string_view key, std::size_t longest = 200);
    std::string text_or(std::string_view key, std::string otherwise, std::size_t longest = 200);
    bool flag_or(std::string_view key, bool otherwise);
    // Index of the text among the names allowed.
    std::size_t one_of(std::string_view key, std::span<const std::string_view> names);
    std::size_t one_of_or(std::string_view key, std::size_t otherwise,
                          std::span<const std::string_view> names);

    // A nested object; a missing one is reported and reads as empty without further reports.
    Fields object(std::string_view key);
    std::vector<Fields> list(std::string_view key, std::size_t least, std::size_t most);
    // A list of texts, or of numbers. A bad entry is reported and left out.
    std::vector<std::string> texts(std::string_view key, std::size_t least, std::size_t most,
                                   std::size_t longest = 200);
    std::vector<double> numbers(std::string_view key, std::size_t least, std::size_t most, Range allowed);
    // Whether an optional field stands there; it then counts as known.
    bool has(std::string_view key);

    // The node itself, for what is no object; null when it is missing or of another kind, which is reported.
    const JsonNode* raw(std::string_view key, JsonNode::Kind kind) { return find(key, true, kind); }

    // A problem with a field, found by the caller.
    void report(std::string_view key, std::string what, std::string allowed);

    // Call last: reports the keys that nothing asked for.
    void finish();

private:
    // What `read` finds when it finds no problem.
    template <class T, class Read>
    T good_or(std::string_view key, T otherwise, Read read);

    // The entries of a list; none when it is missing, no list, or of another length, which is reported.
    std::span<const JsonNode> entries(std::string_view key, std::size_t least, std::size_t most);
    void report_entry(std::string_view key, std::size_t i, const JsonNode& entry, std::string what,
                      std::string allowed);
    std::string entry_path(std::string_view key, std::size_t i) const;

    const JsonNode* find(std::string_view key, bool required);
    const JsonNode* find(std::string_view key, bool required, JsonNode::Kind kind);
    bool stands(std::string_view key) const;

    const JsonNode* node_;
    std::string file_;
    std::string path_;
    std::vector<Problem>* problems_;
    std::vector<std::string> known_;
    bool silent_ = false;
};

// The shortest text that reads as this number: "600", "0.5".
std::string number_text(double value);

}  // namespace slopewise
