#include "debrief/sheet_facts.h"

#include "debrief/estimate.h"
#include "debrief/html_text.h"

namespace slopewise {
namespace {

// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& names) {
    std::string words;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) words += i + 1 == names.size() ? " and " : ", ";
        words += names[i];
    }
    return words;
}

}  // namespace

std::string aids_sentence(const RecordedAids& aids) {
    std::vector<std::string> helped;
    if (aids.guide_s > 0.0 || aids.guide_calls > 0)
        helped.push_back(
            format_html("the path guide (%.0f s, called %d times)", aids.guide_s, aids.guide_calls));
    else if (aids.guide_ready) helped.push_back("the path guide (ready, not shown)");
    if (aids.call_outs >= 0) helped.push_back(format_html("call-outs (%d)", aids.call_outs));
    if (aids.magnifier) helped.push_back("the magnifier");
    if (aids.lamp_letters) helped.push_back("letters in the lights");
    if (aids.lamp_shapes) helped.push_back("shapes in the lights");
    if (aids.side_profile) helped.push_back("the side profile");
    std::string words = "Aids: " + (helped.empty() ? "none" : listed(helped)) + ".";
    if (aids.partner_s > 0.0)
        words += format_html(" The other pilot flew the student's part for %.0f s.", aids.partner_s);
    if (aids.lost_s >= 1.0)
        words += format_html(" The machine was too slow: %.0f s of the clock were not flown.", aids.lost_s);
    if (aids.lights_hidden) words += " The lights were hidden.";
    std::vector<std::string> covered = aids.covered;
    if (aids.airspeed_hidden && aids.covered.empty() && aids.failed.empty()) covered.push_back("airspeed");
    if (!covered.empty()) words += " Covered: " + listed(covered) + ".";
    if (!aids.failed.empty()) words += " Failed: " + listed(aids.failed) + ".";
    if (aids.panel_share < 0.0) return words;
    words += " Eyes outside";
    if (aids.peeks >= 0) words += "; peeks: " + std::to_string(aids.peeks);
    words += format_html("; inside %.0f %% of the time", 100.0 * aids.panel_share);
    if (aids.longest_peek_s >= 0.0) words += format_html(", at most %.1f s at once", aids.longest_peek_s);
    return words + ".";
}

SheetFacts sheet_facts(const Circumstances& circumstances, const ReviewedFlight& flight) {
    SheetFacts facts;
    facts.student = circumstances.student;
    facts.date = date_text(circumstances.started_unix_s);
    facts.aids = aids_sentence(circumstances.aids);
    facts.device = circumstances.device;
    facts.version = circumstances.version.empty() ? "Slopewise" : circumstances.version;
    if (circumstances.estimate) facts.estimate = estimate_sentence(*circumstances.estimate, flight);
    return facts;
}

std::string date_text(std::int64_t unix_s) {
    if (unix_s == 0) return "";
    constexpr std::int64_t day_s = 86400, era_days = 146097;  // 400 Gregorian years
    // Counted from 1 March of the year 0, so that the leap day ends the year.
    const std::int64_t days = (unix_s >= 0 ? unix_s / day_s : (unix_s - day_s + 1) / day_s) + 719468;
    const std::int64_t era = (days >= 0 ? days : days - era_days + 1) / era_days;
    const std::int64_t day_of_era = days - era * era_days;
    const std::int64_t year_of_era =
        (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
    const std::int64_t day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    const std::int64_t month_from_march = (5 * day_of_year + 2) / 153;
    const std::int64_t day = day_of_year - (153 * month_from_march + 2) / 5 + 1;
    const std::int64_t month = month_from_march < 10 ? month_from_march + 3 : month_from_march - 9;
    const std::int64_t year = year_of_era + era * 400 + (month <= 2 ? 1 : 0);
    return format_html("%04lld-%02lld-%02lld", static_cast<long long>(year), static_cast<long long>(month),
                       static_cast<long long>(day));
}

}  // namespace slopewise
