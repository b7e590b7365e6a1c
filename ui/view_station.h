// The instructor's station: where the approach is put, in what air and light, what fails, who flies.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct StationView {
    // One thing that can be set, each choice with one press.
    struct Row {
        std::string label;                 // "Distance"
        std::vector<std::string> choices;  // "3 NM", "2 NM", "1 NM"
        int chosen = -1;                   // -1: none of them
    };
    struct Group {
        std::string title;  // "Put it there"
        std::vector<Row> rows;
    };

    std::vector<Group> groups;
    std::string who;      // "The pilot at the keys has power; the model pilot has pitch"
    std::string calm;     // what the same hands do in calm air; empty: not shown
    std::string trouble;  // why the last change was not made; empty mostly
    int flight = -1;      // which of the class's flights the words of the rows were made for
};

}  // namespace slopewise
