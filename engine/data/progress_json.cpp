#include "data/progress_json.h"

#include <nlohmann/json.hpp>

#include "data/review_json.h"
#include "review/track_csv.h"

namespace slopewise {

std::string progress_json(const Progress& progress) {
    using Json = nlohmann::ordered_json;
    const CusumParameters& p = progress.parameters;
    Json json{{"caution", file_caution}};
    json["learning_curve"] = {{"inadequate_failure_rate", p.inadequate_failure_rate},
                              {"adequate_failure_rate", p.adequate_failure_rate},
                              {"limit", p.limit},
                              {"pass_score", pass_score(p)},
                              {"failure_score", failure_score(p)}};
    const auto attempt = [](int index) { return index < 0 ? Json(nullptr) : Json(index + 1); };
    json["learning_curve"]["signal_at_attempt"] = attempt(progress.signal_at);
    json["learning_curve"]["relapse_at_attempt"] = attempt(progress.relapse_at);
    for (std::size_t i = 0; i < decision_names.size(); ++i)
        json["decisions"][std::string(decision_names[i])] = progress.decisions[i];
    json["hint"] = stop_hint_words[static_cast<std::size_t>(progress.stop)];
    json["evidence_words"] = evidence_words(progress.evidence);
    json["evidence"] = Json::array();
    for (const EvidenceItem& item : progress.evidence)
        json["evidence"].push_back({{"what", item.what}, {"complete", item.complete}, {"found", item.found}});
    json["attempts"] = Json::parse(table_json(progress_table(progress)));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise
