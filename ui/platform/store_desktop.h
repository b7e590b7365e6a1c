// The logbook's store on the desktop: a folder of files.
#pragma once

#include <filesystem>
#include <memory>

#include "ui/logbook_store.h"

namespace slopewise {

// In `folder`, which is made when something is kept first. Files handed over are written into `hand_over`;
// files to be taken in are looked for in "take-in" inside `folder`.
std::unique_ptr<LogbookStore> make_desktop_store(std::filesystem::path folder,
                                                 std::filesystem::path hand_over);

// Writes a file whole or not at all: beside it first, then over it.
bool write_whole(const std::filesystem::path& path, std::string_view text);

}  // namespace slopewise
