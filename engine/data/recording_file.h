// A recording as a file: the lesson whole, the controls exactly, and the hashes that tell whether it still
// flies the same.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "data/json_tree.h"
#include "record/recording.h"

namespace slopewise {

// JSON, UTF-8. Controls stand as rows [from tick, stick, throttle, trim, flap, go around (0 or 1)] in the
// integers that were flown; hashes as 16 hexadecimal digits each.
std::string recording_text(const Recording& recording);

// At most 16 MiB. Every problem is returned: of the lesson inside, of rows out of order or out of range, of
// hashes that are too few.
Result<Recording> read_recording(std::string_view text, const std::string& file);

// The same of what is parsed already; paths are told from there.
Result<Recording> read_recording(const JsonNode& node, const std::string& file);

// 20 minutes, longer than any attempt.
inline constexpr std::int64_t most_recording_ticks = std::int64_t{20} * 60 * 120;

inline constexpr std::size_t most_recording_bytes = std::size_t{16} << 20;

// A newer program may write another format; ours is this one.
inline constexpr int recording_format = 1;

}  // namespace slopewise
