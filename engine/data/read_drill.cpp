#include "data/read_drill.h"

#include "data/fields.h"
#include "data/read_drill_settings.h"

namespace slopewise {
namespace {

Source read_source(Fields& fields) {
    Source source;
    source.text = fields.text_or("source", "");
    source.sure = static_cast<Certainty>(fields.one_of("sure", certainty_words));
    const bool common = source.sure == Certainty::common_practice;
    if (common && !source.text.empty())
        fields.report("source", "stands there", "none: it is common practice");
    if (!common && source.text.empty()) fields.report("source", "is missing", "");
    return source;
}

// One of the relations, with its limit.
void read_limit(Fields& fields, DrillCriterion& criterion) {
    int found = 0;
    for (std::size_t i = 0; i < relation_names.size(); ++i) {
        if (!fields.has(relation_names[i])) continue;
        ++found;
        criterion.relation = static_cast<DrillCriterion::Relation>(i);
        criterion.limit = fields.number(relation_names[i], {0.0, 10000.0});
    }
    if (found != 1)
        fields.report("measure", "has " + std::to_string(found) + " limits",
                      "one of at_least, at_most, below, within");
}

DrillCriterion read_criterion(Fields fields) {
    DrillCriterion criterion;
    const std::string id = fields.text("measure", 40);
    if (const std::optional<Measure> measure = measure_of(id)) criterion.measure = *measure;
    else if (!id.empty()) fields.report("measure", "is \"" + id + "\", which is no measure", "");
    read_limit(fields, criterion);
    criterion.source = read_source(fields);
    fields.finish();
    return criterion;
}

}  // namespace

Result<Drill> read_drill(const JsonNode& root, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(root, file, "", problems);
    Drill drill;
    fields.text("kind");
    drill.id = fields.text("id", 40);
    const auto kind = static_cast<DrillKind>(fields.one_of("drill", drill_kind_names));
    drill.place = fields.integer("place", 1, 99);
    drill.title = fields.text("title", 80);
    drill.aim = fields.text("aim");
    drill.why = fields.text("why", 300);
    drill.how = fields.text("how", 300);
    drill.mistakes = fields.text("mistakes", 300);
    drill.source = read_source(fields);
    drill.items = kind >= DrillKind::speed_by_attitude ? 1 : fields.integer("items", 1, 200);
    if (fields.has("judged_over")) drill.judged_over = fields.integer("judged_over", 1, drill.items);
    drill.settings = read_drill_settings(kind, fields.object("settings"));
    for (const Fields& criterion : fields.list("criteria", 1, 10))
        drill.criteria.push_back(read_criterion(criterion));
    fields.finish();
    if (!problems.empty()) return failure<Drill>(std::move(problems));
    return success(std::move(drill));
}

}  // namespace slopewise
