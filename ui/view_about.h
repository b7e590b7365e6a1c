// What the sheet about the program itself shows: version, what is kept and where, licences.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

inline constexpr std::string_view update_words = "A newer version is here";

struct AboutView {
    std::string where;  // "this browser, on this device"
    struct Kept {
        std::string what;   // "Logbook"
        std::string about;  // what it holds
        std::string much;   // "31 attempts"
    };
    std::vector<Kept> kept;
    bool update_waits = false;  // a newer version is loaded and waits to be taken
    bool asks_to_erase = false;
    std::string news;
    std::vector<std::string> parts;  // what it is made of, each with its licence
};

}  // namespace slopewise
