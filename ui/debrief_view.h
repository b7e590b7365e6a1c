// What is seen after an attempt besides its picture and its gates: the student's own estimate, the judgement,
// the other measures, what it was held to, and what can be taken along.
#pragma once

#include <string>
#include <vector>

#include "ui/labelled_value.h"

namespace slopewise {

// Asked before the sheet opens.
struct EstimateView {
    struct Question {
        std::string words;                 // "The path was mostly"
        std::vector<std::string> answers;  // "high", "on", "low"
        int chosen = -1;
    };
    bool blank = false;  // nothing is asked yet
    std::vector<Question> questions;
    int asking = 0;  // the question that the keys 1 to 3 answer
};

// At the decision gate: what it asked for and what was done.
struct DecisionView {
    std::string gate;                        // "300 ft"
    bool known = false;                      // the gate was reached
    bool stable = false, continued = false;  // which cell of the table is this run's
    std::string words;                       // "Stable and continued: right."
};

// The one thing to work on; without a title nothing stands out.
struct FaultView {
    std::string title, symptom, cause, could_lead_to, correction;
    std::string none;                // said where there is no fault to tell of, and no title
    std::string others;              // "Also seen: Ballooning with flap."; may be empty
    std::vector<double> moments_nm;  // where it was seen, to the aim point
};

// Numbers in rows and columns; the first column holds names.
struct TextTable {
    std::string title;
    std::vector<std::string> heads, units;
    std::vector<std::vector<std::string>> rows;
};

// Everything else that was measured.
struct MeasuresView {
    struct Group {
        std::string title;
        std::vector<LabelledValue> rows;
        std::string note;  // may be empty
    };
    std::vector<Group> groups;
    TextTable bands, short_bands;      // the short ones: of path and speed, bias and scatter alone
    std::vector<std::string> held_to;  // the criteria, a sentence each
};

// How much the sheet tells at once.
enum class SheetDetail { full, brief, last_three };

// Of this attempt and the ones before it.
struct LastRunsView {
    TextTable table;
    std::string most_often;  // "Most often: Low and slow, in 2 of 3."
};

// What counts as stable, as fields with their ranges; in groups.
struct CriteriaView {
    enum class Kind { number, on_off, choice };
    struct Field {
        Kind kind = Kind::number;
        std::string label, value, unit;
        std::vector<std::string> choices;
        double number = 0, least = 0, most = 0, step = 1;  // on_off: 0 or 1; choice: an index
    };
    struct Group {
        std::string title;
        int first = 0;  // number of its first field among all
        std::vector<Field> fields;
    };
    std::vector<Group> groups;
    bool usual = true;  // nothing differs from the usual
};

// What the school sets besides its limits.
struct SchoolView {
    struct Row {
        std::string label;
        std::vector<std::string> choices;
        int chosen = -1;  // -1: what its file says is none of these
    };
    std::vector<Row> rows;
    std::vector<std::string> facts;  // its name, aircraft and flap, as its file has them
    std::vector<std::string> news;   // what became of a file taken in; of a bad one, every problem
};

// What can be handed over as files.
struct TakeAwayView {
    struct Offer {
        std::string name, about;
    };
    std::vector<Offer> offers;
    std::string handed_over;  // "Handed over: slopewise-final_calm-gates.csv"; empty at first
};

}  // namespace slopewise
