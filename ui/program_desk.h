// What the sheet about the program remembers.
#pragma once

#include <string>

namespace slopewise {

struct ProgramDesk {
    std::string build_id;  // of what runs; empty where none was stamped
    std::string where;     // things are kept, in words
    bool update_waits = false;
    bool asks_to_erase = false;
    std::string news;
};

}  // namespace slopewise
