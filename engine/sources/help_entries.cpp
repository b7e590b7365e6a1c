#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic help = SourceTopic::help;

constexpr TaughtNumber entries[] = {
    {"feedback_fades", help, "Feedback after every run helps the practice and harms what stays of it.",
     "Salmoni, Schmidt and Walter, Psychological Bulletin (1984)", "not seen", memory},
    {"feedback_runs", help,
     "The sheet tells all after the first 6 runs of a lesson; then every 3 runs it sums up.", "", "",
     common_practice},
};

}  // namespace

std::span<const TaughtNumber> help_entries() { return entries; }

}  // namespace slopewise
