#include "ui/logbook_choice.h"

#include <algorithm>

namespace slopewise {

std::string neighbour_of(const Logbook& logbook, std::string_view student, std::string_view id) {
    const std::vector<const IndexRow*> rows = rows_of(logbook, student);
    const auto found = std::ranges::find_if(rows, [&](const IndexRow* row) { return row->id == id; });
    if (found == rows.end() || rows.size() < 2) return {};
    return found == rows.begin() ? found[1]->id : found[-1]->id;
}

}  // namespace slopewise
