#include "ui/criteria_fields.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "data/criteria_file.h"
#include "ui/format.h"

namespace slopewise {
namespace {

using Kind = CriteriaView::Kind;

// One limit in pilot units; the ranges are those of the criteria's file (data/criteria_file.cpp).
struct Field {
    const char* label;
    const char* unit;
    double least, most, step;
    int decimals;
    double (*get)(const Criteria&);
    void (*set)(Criteria&, double);
    Kind kind = Kind::number;
};

double same(double value) { return value; }
double percent_from_share(double share) { return 100.0 * share; }
double share_from_percent(double percent) { return percent / 100.0; }

// A number of the criteria themselves, in another unit on the sheet.
template <double Criteria::*member, double (*to)(double), double (*from)(double)>
constexpr Field number(const char* label, const char* unit, double least, double most, double step,
                       int decimals) {
    return {label,
            unit,
            least,
            most,
            step,
            decimals,
            [](const Criteria& c) { return to(c.*member); },
            [](Criteria& c, double value) { c.*member = from(value); }};
}

// A limit of one gate, likewise.
template <GateCriteria Criteria::*gate, double GateCriteria::*limit, double (*to)(double),
          double (*from)(double)>
constexpr Field at_gate(const char* label, const char* unit, double least, double most, double step,
                        int decimals) {
    return {label,
            unit,
            least,
            most,
            step,
            decimals,
            [](const Criteria& c) { return to(c.*gate.*limit); },
            [](Criteria& c, double value) { c.*gate.*limit = from(value); }};
}

template <GateCriteria Criteria::*gate>
constexpr Field gate_fields[] = {
    at_gate<gate, &GateCriteria::path_rad, deg_from_rad, rad_from_deg>("Path within", "\u00b0", 0.1, 2.0,
                                                                       0.05, 2),
    at_gate<gate, &GateCriteria::path_floor_m, ft_from_m, m_from_ft>("or within", "ft", 0.0, 100.0, 5.0, 0),
    at_gate<gate, &GateCriteria::slow_mps, kt_from_mps, mps_from_kt>("Slow by at most", "kt", 1.0, 30.0, 1.0,
                                                                     0),
    at_gate<gate, &GateCriteria::fast_mps, kt_from_mps, mps_from_kt>("Fast by at most", "kt", 1.0, 30.0, 1.0,
                                                                     0),
    at_gate<gate, &GateCriteria::sink_mps, fpm_from_mps, mps_from_fpm>("Sink off by", "ft/min", 50.0, 1000.0,
                                                                       50.0, 0),
    at_gate<gate, &GateCriteria::most_sink_mps, fpm_from_mps, mps_from_fpm>("Sink at most", "ft/min", 300.0,
                                                                            2000.0, 50.0, 0)};

constexpr Field decision_fields[] = {
    number<&Criteria::decision_s, same, same>("Time to decide", "s", 1.0, 30.0, 1.0, 0),
    number<&Criteria::most_pitch_range_rad, deg_from_rad, rad_from_deg>("Pitch range before", "\u00b0", 1.0,
                                                                        20.0, 0.5, 1),
    number<&Criteria::most_lever_step, percent_from_share, share_from_percent>("Lever step before", "%", 1.0,
                                                                               100.0, 5.0, 0)};

constexpr Field settled_fields[] = {
    number<&Criteria::least_power_over_idle, percent_from_share, share_from_percent>("Power over idle", "%",
                                                                                     0.0, 50.0, 1.0, 0),
    {"Landing flap must be set", "", 0.0, 1.0, 1.0, 0,
     [](const Criteria& c) { return double(c.landing_flap); },
     [](Criteria& c, double value) { c.landing_flap = value > 0.5; }, Kind::on_off}};

constexpr Field answer_fields[] = {
    number<&Criteria::answer_rad, deg_from_rad, rad_from_deg>("An error is over", "\u00b0", 0.1, 2.0, 0.05,
                                                              2),
    number<&Criteria::answer_floor_m, ft_from_m, m_from_ft>("and over", "ft", 0.0, 100.0, 5.0, 0),
    {"The path is corrected with", "", 0.0, 2.0, 1.0, 0,
     [](const Criteria& c) { return double(static_cast<int>(c.convention)); },
     [](Criteria& c, double value) { c.convention = static_cast<Convention>(static_cast<int>(value)); },
     Kind::choice}};

struct Group {
    const char* title;
    std::span<const Field> fields;
};
const Group groups[] = {
    {"At 500 ft and above", gate_fields<&Criteria::far>},  {"At 300 ft", gate_fields<&Criteria::decision>},
    {"At 200 ft and below", gate_fields<&Criteria::near>}, {"Deciding at 300 ft", decision_fields},
    {"Settled from 500 ft down", settled_fields},          {"Answering a path error", answer_fields}};

CriteriaView::Field field_view(const Field& field, const Criteria& criteria) {
    const double value = field.get(criteria);
    CriteriaView::Field view{field.kind,  field.label, number_words(value, field.decimals),
                             field.unit,  {},          value,
                             field.least, field.most,  field.step};
    if (field.kind == Kind::choice) view.choices = {"power", "pitch", "either"};
    return view;
}

}  // namespace

CriteriaView criteria_view(const Criteria& criteria) {
    CriteriaView view;
    int first = 0;
    for (const Group& group : groups) {
        view.groups.push_back({group.title, first, {}});
        for (const Field& field : group.fields)
            view.groups.back().fields.push_back(field_view(field, criteria));
        first += static_cast<int>(group.fields.size());
    }
    view.usual = criteria_text(criteria) == criteria_text(Criteria{});
    return view;
}

void set_criterion(Criteria& criteria, int wanted, double value) {
    for (const Group& group : groups) {
        const int count = static_cast<int>(group.fields.size());
        if (wanted >= 0 && wanted < count) {
            const Field& field = group.fields[static_cast<std::size_t>(wanted)];
            const double whole = std::round(value / field.step) * field.step;
            field.set(criteria, std::clamp(whole, field.least, field.most));
            return;
        }
        wanted -= count;
    }
}

}  // namespace slopewise
