// Bytes as letters that an address may hold as they are: base64url without padding (RFC 4648, section 5;
// read).
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace slopewise {

std::string base64url(std::string_view bytes);

// Nothing when it cannot have come from `base64url`: another letter, a length that no bytes give, or bits
// left over that are not zero.
std::optional<std::string> bytes_of_base64url(std::string_view letters);

}  // namespace slopewise
