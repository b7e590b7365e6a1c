#include "sources/sources.h"

#include <algorithm>

#include "sources/entries.h"

namespace slopewise {

const std::vector<TaughtNumber>& taught_numbers() {
    static const std::vector<TaughtNumber> all = [] {
        std::vector<TaughtNumber> entries;
        for (const auto some :
             {light_entries(), path_and_runway_entries(), speed_and_sink_entries(), gate_entries(),
              measure_entries(), help_entries(), learning_entries(), caution_entries()})
            entries.insert(entries.end(), some.begin(), some.end());
        return entries;
    }();
    return all;
}

const TaughtNumber* find_taught_number(std::string_view id) {
    const auto found = std::ranges::find(taught_numbers(), id, &TaughtNumber::id);
    return found == taught_numbers().end() ? nullptr : &*found;
}

}  // namespace slopewise
