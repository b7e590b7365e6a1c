#include "data/fields.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace slopewise {
namespace {

const JsonNode empty_object{JsonNode::Kind::object, 0, false, 0.0, {}, {}, {}};

std::string quoted(std::string_view text) { return "\"" + std::string(text) + "\""; }

std::string range_text(Range range) { return number_text(range.low) + " to " + number_text(range.high); }

// Single-character edits between two words (Levenshtein).
std::size_t edits_between(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replaced = diagonal + (a[i - 1] == b[j - 1] ? 0u : 1u);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, replaced});
        }
    }
    return row[b.size()];
}

}  // namespace

std::string number_text(double value) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.10g", value + 0.0);  // never "-0", which is read as 0
    return buffer;
}

Fields::Fields(const JsonNode& node, std::string file, std::string path, std::vector<Problem>& problems)
    : node_(&node), file_(std::move(file)), path_(std::move(path)), problems_(&problems) {
    if (node.kind != JsonNode::Kind::object) {
        problems.push_back({file_, node.line, path_.empty() ? "/" : path_,
                            "is " + std::string(kind_name(node.kind)), "an object"});
        node_ = &empty_object;
        silent_ = true;
    }
}

const JsonNode* Fields::find(std::string_view key, bool required) {
    known_.emplace_back(key);
    for (const auto& [name, value] : node_->members) {
        if (name == key) return &value;
    }
    if (required && !silent_)
        problems_->push_back({file_, node_->line, path_ + "/" + std::string(key), "is missing", ""});
    return nullptr;
}

const JsonNode* Fields::find(std::string_view key, bool required, JsonNode::Kind kind) {
    const JsonNode* found = find(key, required);
    if (found == nullptr || found->kind == kind) return found;
    report(key, "is " + std::string(kind_name(found->kind)), std::string(kind_name(kind)));
    return nullptr;
}

bool Fields::has(std::string_view key) {
    known_.emplace_back(key);
    return stands(key);
}

bool Fields::stands(std::string_view key) const {
    return std::any_of(node_->members.begin(), node_->members.end(),
                       [&](const auto& m) { return m.name == key; });
}

void Fields::report(std::string_view key, std::string what, std::string allowed) {
    int line = node_->line;
    for (const auto& [name, value] : node_->members) {
        if (name == key) line = value.line;
    }
    problems_->push_back({file_, line, path_ + "/" + std::string(key), std::move(what), std::move(allowed)});
}

template <class T, class Read>
T Fields::good_or(std::string_view key, T otherwise, Read read) {
    if (!has(key)) return otherwise;
    const std::size_t before = problems_->size();
    T value = read();
    return problems_->size() == before ? value : otherwise;
}

double Fields::number(std::string_view key, Range allowed) {
    const JsonNode* found = find(key, true, JsonNode::Kind::number);
    if (found == nullptr) return allowed.low;
    if (found->number >= allowed.low && found->number <= allowed.high) return found->number;
    report(key, "is " + number_text(found->number), range_text(allowed));
    return allowed.low;
}

double Fields::number_or(std::string_view key, double otherwise, Range allowed) {
    return good_or(key, otherwise, [&] { return number(key, allowed); });
}

int Fields::integer(std::string_view key, int low, int high) {
    const double value = number(key, {static_cast<double>(low), static_cast<double>(high)});
    if (value != std::floor(value)) {
        report(key, "is " + number_text(value), "a whole number, " + range_text({double(low), double(high)}));
        return low;
    }
    return static_cast<int>(value);
}

std::string Fields::text(std::string_view key, std::size_t longest) {
    const JsonNode* found = find(key, true, JsonNode::Kind::text);
    if (found == nullptr) return {};
    if (found->text.empty() || found->text.size() > longest) {
        report(key, "is " + std::to_string(found->text.size()) + " bytes long",
               "1 to " + std::to_string(longest));
        return {};
    }
    return found->text;
}

std::string Fields::text_or(std::string_view key, std::string otherwise, std::size_t longest) {
    return good_or(key, std::move(otherwise), [&] { return text(key, longest); });
}

bool Fields::flag_or(std::string_view key, bool otherwise) {
    if (!has(key)) return otherwise;
    const JsonNode* found = find(key, true, JsonNode::Kind::boolean);
    return found != nullptr ? found->boolean : otherwise;
}

std::size_t Fields::one_of(std::string_view key, std::span<const std::string_view> names) {
    const JsonNode* found = find(key, true, JsonNode::Kind::text);
    if (found == nullptr) return 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (found->text == names[i]) return i;
    }
    std::string allowed;
    for (const std::string_view name : names) allowed += (allowed.empty() ? "" : ", ") + quoted(name);
    report(key, "is " + quoted(found->text), allowed);
    return 0;
}

std::size_t Fields::one_of_or(std::string_view key, std::size_t otherwise,
                              std::span<const std::string_view> names) {
    return good_or(key, otherwise, [&] { return one_of(key, names); });
}

Fields Fields::object(std::string_view key) {
    const JsonNode* found = find(key, true, JsonNode::Kind::object);
    Fields inner(found != nullptr ? *found : empty_object, file_, path_ + "/" + std::string(key), *problems_);
    inner.silent_ = found == nullptr;
    return inner;
}

std::span<const JsonNode> Fields::entries(std::string_view key, std::size_t least, std::size_t most) {
    const JsonNode* found = find(key, true, JsonNode::Kind::list);
    if (found == nullptr) return {};
    if (found->items.size() >= least && found->items.size() <= most) return found->items;
    report(key, "has " + std::to_string(found->items.size()) + " entries",
           std::to_string(least) + " to " + std::to_string(most));
    return {};
}

std::string Fields::entry_path(std::string_view key, std::size_t i) const {
    return path_ + "/" + std::string(key) + "/" + std::to_string(i);
}

void Fields::report_entry(std::string_view key, std::size_t i, const JsonNode& entry, std::string what,
                          std::string allowed) {
    problems_->push_back({file_, entry.line, entry_path(key, i), std::move(what), std::move(allowed)});
}

std::vector<Fields> Fields::list(std::string_view key, std::size_t least, std::size_t most) {
    std::vector<Fields> items;
    const std::span<const JsonNode> found = entries(key, least, most);
    for (std::size_t i = 0; i < found.size(); ++i)
        items.emplace_back(found[i], file_, entry_path(key, i), *problems_);
    return items;
}

std::vector<std::string> Fields::texts(std::string_view key, std::size_t least, std::size_t most,
                                       std::size_t longest) {
    std::vector<std::string> good;
    const std::span<const JsonNode> found = entries(key, least, most);
    for (std::size_t i = 0; i < found.size(); ++i) {
        const JsonNode& entry = found[i];
        if (entry.kind != JsonNode::Kind::text) {
            report_entry(key, i, entry, "is " + std::string(kind_name(entry.kind)), "a text");
        } else if (entry.text.empty() || entry.text.size() > longest) {
            report_entry(key, i, entry, "is " + std::to_string(entry.text.size()) + " bytes long",
                         "1 to " + std::to_string(longest));
        } else {
            good.push_back(entry.text);
        }
    }
    return good;
}

std::vector<double> Fields::numbers(std::string_view key, std::size_t least, std::size_t most,
                                    Range allowed) {
    std::vector<double> good;
    const std::span<const JsonNode> found = entries(key, least, most);
    for (std::size_t i = 0; i < found.size(); ++i) {
        const JsonNode& entry = found[i];
        if (entry.kind != JsonNode::Kind::number) {
            report_entry(key, i, entry, "is " + std::string(kind_name(entry.kind)), "a number");
        } else if (!(entry.number >= allowed.low && entry.number <= allowed.high)) {
            report_entry(key, i, entry, "is " + number_text(entry.number), range_text(allowed));
        } else {
            good.push_back(entry.number);
        }
    }
    return good;
}

void Fields::finish() {
    for (const auto& [name, value] : node_->members) {
        if (std::find(known_.begin(), known_.end(), name) != known_.end()) continue;
        std::string what = "is not a known key";
        std::size_t fewest = name.size() / 3 + 2;  // more letters wrong: another word, not a slip
        std::string nearest;
        for (const std::string& key : known_) {
            const std::size_t edits = edits_between(name, key);
            if (edits >= fewest || stands(key)) continue;
            fewest = edits;
            nearest = key;
        }
        if (!nearest.empty()) what += "; nearest: " + quoted(nearest);
        problems_->push_back({file_, value.line, path_ + "/" + name, what, ""});
    }
}

}  // namespace slopewise
