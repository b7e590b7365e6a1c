#include "data/review_json.h"

#include <cstdlib>
#include <nlohmann/json.hpp>

#include "review/diagnosis/correction.h"
#include "review/track_csv.h"
#include "review/words.h"

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

Json rows_json(const Table& table) {
    Json rows = Json::array();
    for (const Table::Row& row : table.rows) {
        Json object = Json::object();
        if (!table.name_head.empty()) object[std::string(table.name_head)] = row.name;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const std::string text = cell_text(row.cells[i], table.heads[i].decimals);
            object[std::string(table.heads[i].name)] =
                text.empty() ? Json(nullptr) : Json(std::strtod(text.c_str(), nullptr));
        }
        rows.push_back(std::move(object));
    }
    return rows;
}

Json fault_json(const ReviewedFlight& flight, const Finding& finding) {
    const Fault& fault = *finding.fault;
    Json json{{"id", fault.id},
              {"title", fault.title},
              {"symptom", fault.symptom},
              {"cause", fault.cause},
              {"could_lead_to", fault.could_lead_to},
              {"correction", correction_of(fault, flight.criteria.convention)},
              {"safety_weight", fault.safety_weight},
              {"strength", finding.evidence.strength}};
    json["evidence"] = Json::array();
    for (const std::size_t point : finding.evidence.moments) {
        const TrackPoint& p = flight.track.points[point];
        json["evidence"].push_back({{"time_s", p.time_s},
                                    {"distance_to_aim_nm", nm_from_m(p.distance_m)},
                                    {"wheel_height_ft", ft_from_m(p.wheel_height_m)}});
    }
    return json;
}

std::string dump(const Json& json) { return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

}  // namespace

std::string table_json(const Table& table) { return dump(rows_json(table)); }

std::string review_json(const ReviewedFlight& flight) {
    const Review& review = flight.review;
    Json json{{"caution", file_caution},
              {"lesson", flight.scenario.lesson.id},
              {"title", flight.scenario.lesson.title}};
    json["flown_again_the_same"] = flight.first_diverged_tick < 0;
    json["ended"] = end_sentence(review.summary);
    json["worst"] = worst_sentence(review.summary, flight.track);
    json["decision"] = decision_names[static_cast<std::size_t>(review.decision)];
    json["stability"] = Json::array();
    for (std::size_t i = 0; i < review.stability.size(); ++i)
        if (review.summary.gates[i].reached)
            json["stability"].push_back({{"wheel_height_ft", review.summary.gates[i].height_ft},
                                         {"words", stability_words(review.stability[i])}});
    const Finding* priority = flight.diagnosis.priority();
    json["priority_fault"] = priority == nullptr ? Json(nullptr) : fault_json(flight, *priority);
    json["other_faults"] = Json::array();
    for (std::size_t i = 1; i < flight.diagnosis.findings.size(); ++i)
        json["other_faults"].push_back(flight.diagnosis.findings[i].fault->title);
    for (const Table& table : flight_tables(flight)) json[std::string(table.title)] = rows_json(table);
    return dump(json);
}

}  // namespace slopewise
