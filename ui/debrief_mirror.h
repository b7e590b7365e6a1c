// What is seen after an attempt, as plain text for the page around the canvas.
#pragma once

#include <string>

#include "ui/view.h"

namespace slopewise {

std::string figure_sentence(const LabelledValue& value);  // "Scatter: 0.21 deg (about that bias)\n"

std::string estimate_text(const EstimateView& sheet);
std::string judgement_text(const SummaryView& summary);  // of the summary: estimate, decision, fault
std::string measures_text(const MeasuresView& measures);
std::string criteria_sheet_text(const CriteriaView& sheet);
std::string take_away_text(const TakeAwayView& sheet);

}  // namespace slopewise
