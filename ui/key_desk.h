// What the sheet about keys remembers.
#pragma once

#include <string>

namespace slopewise {

struct KeyDesk {
    int asked = -1;  // the command that the next key pressed is taken for; negative: none
    std::string news;
};

}  // namespace slopewise
