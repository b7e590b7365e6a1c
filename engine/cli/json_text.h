// JSON out of the program: keys in the order they are written, each with its unit in its name.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

namespace slopewise::cli {

using Json = nlohmann::ordered_json;

// Bytes that are not UTF-8 (they can only come from a file's name) are replaced, never thrown over.
inline std::string json_text(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise::cli
