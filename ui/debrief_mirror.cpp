#include "ui/debrief_mirror.h"

namespace slopewise {
namespace {

std::string line(const std::string& words) { return words.empty() ? "" : words + "\n"; }

std::string table_text(const TextTable& table) {
    std::string text = table.title + "\n";
    for (const auto& row : table.rows) {
        text += row[0] + ":";
        for (std::size_t i = 1; i < row.size(); ++i)
            text += (i == 1 ? " " : "; ") + table.heads[i] + " " + row[i] +
                    (table.units[i].empty() ? "" : " " + table.units[i]);
        text += "\n";
    }
    return text;
}

std::string fault_text(const FaultView& fault) {
    if (fault.title.empty()) return line(fault.none);
    return "To work on: " + fault.title + "\nSeen: " + fault.symptom + "\nWhy: " + fault.cause +
           "\nCould lead to: " + fault.could_lead_to + "\nNext time: " + fault.correction + "\n" +
           line(fault.others);
}

std::string field_text(const CriteriaView::Field& field) {
    switch (field.kind) {
    case CriteriaView::Kind::on_off: return field.label + ": " + (field.number > 0.5 ? "on" : "off") + "\n";
    case CriteriaView::Kind::choice:
        return field.label + ": " + field.choices[static_cast<std::size_t>(field.number)] + "\n";
    case CriteriaView::Kind::number: break;
    }
    return field.label + ": " + field.value + " " + field.unit + "\n";
}

}  // namespace

std::string figure_sentence(const LabelledValue& value) {
    return value.label + ": " + value.value + (value.unit.empty() ? "" : " " + value.unit) +
           (value.note.empty() ? "" : " (" + value.note + ")") + "\n";
}

std::string estimate_text(const EstimateView& sheet) {
    std::string text = "Before the sheet opens: how was it?\n";
    if (sheet.blank) text += "Think back. The questions come in a moment.\n";
    for (std::size_t i = 0; i < sheet.questions.size() && !sheet.blank; ++i) {
        const EstimateView::Question& question = sheet.questions[i];
        text += static_cast<int>(i) == sheet.asking ? "Now: " : "";
        text += question.words + ":";
        for (std::size_t k = 0; k < question.answers.size(); ++k)
            text += " " + std::to_string(k + 1) + " " + question.answers[k] +
                    (static_cast<int>(k) == question.chosen ? " (chosen)" : "");
        text += "\n";
    }
    return text + "Escape: open the sheet without.\n";
}

std::string judgement_text(const SummaryView& summary) {
    std::string text = line(summary.estimate) + line(summary.strongest);
    text += "Decision at " + summary.decision.gate + ": " + summary.decision.words + "\n";
    text += fault_text(summary.fault);
    if (summary.detail == SheetDetail::last_three)
        text += table_text(summary.last_runs.table) + line(summary.last_runs.most_often);
    if (summary.detail != SheetDetail::full) text += "D: show the detail.\n";
    return text;
}

std::string measures_text(const MeasuresView& measures) {
    std::string text = table_text(measures.bands);
    for (const MeasuresView::Group& group : measures.groups) {
        text += group.title + "\n";
        for (const LabelledValue& value : group.rows) text += figure_sentence(value);
        text += line(group.note);
    }
    text += "Held to:\n";
    for (const std::string& words : measures.held_to) text += line(words);
    return text;
}

std::string criteria_sheet_text(const CriteriaView& sheet) {
    std::string text = "What counts as stable.\n";
    for (const CriteriaView::Group& group : sheet.groups) {
        text += group.title + "\n";
        for (const CriteriaView::Field& field : group.fields) text += field_text(field);
    }
    return text + (sheet.usual ? "These are the usual limits.\n" : "");
}

std::string take_away_text(const TakeAwayView& sheet) {
    std::string text = "Take it with you.\n";
    for (const TakeAwayView::Offer& offer : sheet.offers) text += offer.name + ": " + offer.about + "\n";
    return text + line(sheet.handed_over);
}

}  // namespace slopewise
