// The command line asked as its main() asks it, and its answers looked at.
#pragma once

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <initializer_list>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "cli/commands.h"
#include "tests/check.h"

namespace slopewise::test {

inline cli::Outcome slopewise_with(std::initializer_list<std::string_view> words) {
    const std::vector<std::string_view> all(words);
    return cli::run(all);
}

inline bool has(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

// The number after a JSON key, the first time it stands there.
inline double number_after(const std::string& json, const std::string& key) {
    const std::size_t at = json.find("\"" + key + "\": ");
    REQUIRE_MESSAGE(at != std::string::npos, "no key " << key << " in " << json);
    return std::stod(json.substr(at + key.size() + 4));
}

// A folder of this process alone, gone with it: tests run side by side.
inline std::string scratch(const std::string& name = "") {
    struct Folder {
        std::string path = "build/test_cli_" + std::to_string(getpid());
        Folder() { std::filesystem::create_directories(path); }
        ~Folder() { std::filesystem::remove_all(path); }
    };
    static const Folder folder;
    return folder.path + (name.empty() ? "" : "/" + name);
}

// A whole file; empty when there is none.
inline std::string read(const std::string& name) {
    std::stringstream text;
    text << std::ifstream(name).rdbuf();
    return text.str();
}

}  // namespace slopewise::test
