// What the sheets of one's own lessons draw: the list of them, the one that is written, and one that came
// from somebody else.
#pragma once

#include <string>
#include <vector>

#include "ui/labelled_value.h"

namespace slopewise {

struct OwnLessonsView {
    struct Row {
        std::string id, title;
        std::string about;  // "Four-seat tourer, Larkmoor 27, by day; 3 NM, on the path, calm"
    };
    std::vector<Row> rows;  // by title
    int chosen = -1;
    std::vector<Row> deleted;  // until the program is left; the last first
    std::string count;         // "3 lessons of at most 100"
    std::string news, trouble;
    int made_edition = -1;  // of the desk; the rows are made again only when it differs
    std::string draft;      // title of the lesson that is being written; empty: none is
    std::string arrived;    // "Gusty final, from a link": came from somebody else and not yet kept or left
};

struct LessonEditorView {
    enum class Kind {
        number,
        on_off,
        choice,  // a few short ones, in a row
        list,    // one below the other
        text
    };
    struct Field {
        Kind kind = Kind::number;
        int number = 0;  // among all fields, shown or not
        std::string label, value, unit;
        std::vector<std::string> choices;
        double amount = 0, least = 0, most = 0, step = 1;  // on_off: 0 or 1; choice and list: an index
        std::size_t most_bytes = 0;                        // text
        std::string problem;                               // of this field alone; empty: it is good
    };
    struct Group {
        std::string title;
        std::vector<Field> fields;
    };
    std::vector<Group> groups;
    std::string standing;                // "It can be flown." or how much is to be put right
    std::vector<std::string> problems;   // that belong to no field shown
    std::vector<LabelledValue> figures;  // power, pitch, sink; empty while it cannot be flown
    std::string also;                    // what it holds that this sheet does not change
    std::string news;
    bool can_fly = false;
};

struct ArrivedLessonView {
    std::string from;   // "From a link", "From the file gusts.json"
    std::string title;  // empty: it cannot be taken in
    std::string aim;
    std::vector<LabelledValue> holds;   // aircraft, runway, start, wind
    std::vector<std::string> problems;  // why it cannot be taken in
    std::string known;                  // "You have kept this lesson already."
    bool can_keep = false;
};

}  // namespace slopewise
