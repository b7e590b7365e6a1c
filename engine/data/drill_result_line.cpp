#include "data/drill_result_line.h"

#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

#include "data/fields.h"

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t most_items = 200;

double rounded(double value) { return std::round(value * 1e6) / 1e6; }

// A seed is 64 bits wide, wider than a JSON number holds exactly: it is written as text.
std::uint64_t read_seed(Fields& fields) {
    const std::string text = fields.text("seed", 20);
    std::uint64_t seed = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
    if (error != std::errc{} || end != text.data() + text.size())
        fields.report("seed", "is \"" + text + "\"", "a whole number as text");
    return seed;
}

std::vector<double> read_reactions(Fields& fields) {
    std::vector<double> reactions_s;
    const JsonNode* list = fields.raw("reactions_s", JsonNode::Kind::list);
    if (list == nullptr) return reactions_s;
    for (const JsonNode& item : list->items) {
        const bool good = item.kind == JsonNode::Kind::number && item.number >= 0.0;
        if (!good || reactions_s.size() >= most_items) {
            fields.report("reactions_s", "holds something else", "at most 200 numbers, none negative");
            break;
        }
        reactions_s.push_back(item.number);
    }
    return reactions_s;
}

Figure read_figure(Fields fields) {
    const std::string id = fields.text("measure", 40);
    const std::optional<Measure> measure = measure_of(id);
    if (!measure && !id.empty()) fields.report("measure", "is \"" + id + "\", which is no measure", "");
    const Figure figure{measure.value_or(Measure::right_percent), fields.number("value", {-1e6, 1e6})};
    fields.finish();
    return figure;
}

JudgedCriterion read_judged(Fields fields) {
    JudgedCriterion judged{fields.text("asked", 200), fields.text("found", 60), fields.flag_or("met", false)};
    fields.finish();
    return judged;
}

}  // namespace

std::string drill_result_line(const DrillResult& result) {
    Json json{{"kind", "drill_result"},
              {"drill", result.drill_id},
              {"of", drill_kind_names[static_cast<std::size_t>(result.kind)]},
              {"seed", std::to_string(result.seed)},
              {"finished", result.finished},
              {"items", result.items},
              {"right", result.right}};
    json["reactions_s"] = Json::array();
    for (const double reaction_s : result.reactions_s) json["reactions_s"].push_back(rounded(reaction_s));
    json["figures"] = Json::array();
    for (const Figure& figure : result.figures)
        json["figures"].push_back(
            {{"measure", words_of(figure.measure).id}, {"value", rounded(figure.value)}});
    json["criteria"] = Json::array();
    for (const JudgedCriterion& one : result.criteria)
        json["criteria"].push_back({{"asked", one.asked}, {"found", one.found}, {"met", one.met}});
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<DrillResult> read_drill_result(std::string_view line, const std::string& file) {
    Result<JsonNode> parsed = parse_json(line, file, std::size_t{1} << 16);
    if (!parsed.ok()) return failure<DrillResult>(std::move(parsed.problems));
    std::vector<Problem> problems;
    Fields fields(*parsed.value, file, "", problems);
    constexpr std::string_view kinds[] = {"drill_result"};
    fields.one_of("kind", kinds);
    DrillResult result;
    result.drill_id = fields.text("drill", 40);
    result.kind = static_cast<DrillKind>(fields.one_of("of", drill_kind_names));
    result.seed = read_seed(fields);
    result.finished = fields.flag_or("finished", false);
    result.items = fields.integer("items", 0, most_items);
    result.right = fields.integer("right", 0, result.items);
    result.reactions_s = read_reactions(fields);
    for (const Fields& figure : fields.list("figures", 0, measure_words.size()))
        result.figures.push_back(read_figure(figure));
    for (const Fields& one : fields.list("criteria", 0, 10)) result.criteria.push_back(read_judged(one));
    fields.finish();
    if (!problems.empty()) return failure<DrillResult>(std::move(problems));
    return success(std::move(result));
}

}  // namespace slopewise
