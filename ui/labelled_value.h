// A figure in finished words.
#pragma once

#include <string>

namespace slopewise {

struct LabelledValue {
    std::string label;  // "Target speed"
    std::string value;  // "65"
    std::string unit;   // "kt"
    std::string note;   // small print beside it; may be empty
};

}  // namespace slopewise
