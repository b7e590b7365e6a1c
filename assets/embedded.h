// The data files and fonts that are compiled into the program, so that it needs no file system.
#pragma once

#include <span>
#include <string_view>

namespace slopewise {

struct EmbeddedFile {
    std::string_view name;   // as in the source tree: "assets/lessons/final_calm.json"; fonts:
                             // "fonts/regular", "fonts/bold"
    std::string_view bytes;  // for the program's whole life
};

// All of them, in the order of their names.
std::span<const EmbeddedFile> embedded_files();

// The bytes of one; empty when there is none of that name.
std::string_view embedded_file(std::string_view name);

}  // namespace slopewise
