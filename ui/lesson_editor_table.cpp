#include "ui/lesson_editor_table.h"

#include "base/units.h"
#include "ui/lesson_editor_parts.h"

namespace slopewise {
namespace {

using Field = LessonField;
using Kind = LessonEditorView::Kind;

double down_deg_from_rad(double rad) { return -deg_from_rad(rad); }
double rad_from_down_deg(double deg) { return -rad_from_deg(deg); }
double km_from_m(double m) { return m / 1000.0; }
double m_from_km(double km) { return 1000.0 * km; }

// A number of a lesson, or of a part of it, which is kept in another unit.
template <double Lesson::*member, double (*to)(double), double (*from)(double)>
constexpr Field number(Field words) {
    words.amount = [](const Lesson& lesson, const Catalog&) { return to(lesson.*member); };
    words.set_amount = [](Lesson& lesson, double value, const Catalog&) { lesson.*member = from(value); };
    return words;
}
template <auto part, auto member, double (*to)(double), double (*from)(double)>
constexpr Field number_in(Field words) {
    words.amount = [](const Lesson& lesson, const Catalog&) { return to(lesson.*part.*member); };
    words.set_amount = [](Lesson& lesson, double value, const Catalog&) {
        lesson.*part.*member = from(value);
    };
    return words;
}
template <std::size_t row, double Wind::Point::*member, double (*to)(double), double (*from)(double)>
constexpr Field wind_row(Field words) {
    words.offered = has_wind_table;
    words.amount = [](const Lesson& lesson, const Catalog&) { return to(lesson.wind.table[row].*member); };
    words.set_amount = [](Lesson& lesson, double value, const Catalog&) {
        lesson.wind.table[row].*member = from(value);
    };
    return words;
}

template <bool Outlook::*member>
constexpr Field weather(Field words) {
    words.kind = Kind::on_off;
    words.most = 1;
    words.amount = [](const Lesson& lesson, const Catalog&) { return lesson.outlook.*member ? 1.0 : 0.0; };
    words.set_amount = [](Lesson& lesson, double on, const Catalog&) { lesson.outlook.*member = on > 0.5; };
    return words;
}

template <std::string Lesson::*member>
constexpr Field text(Field words) {
    words.kind = Kind::text;
    words.words = [](const Lesson& lesson) { return lesson.*member; };
    words.set_words = [](Lesson& lesson, const std::string& written) { lesson.*member = written; };
    return words;
}

constexpr double most_choices = 100;  // where the catalog says how many there are

constexpr Field about_fields[] = {
    text<&Lesson::title>({.label = "Title", .path = "/title", .most_bytes = 80}),
    text<&Lesson::aim>({.label = "Aim, in one sentence", .path = "/aim", .most_bytes = 200})};

constexpr Field aircraft_fields[] = {
    {.kind = Kind::list,
     .path = "/aircraft",
     .most = most_choices,
     .amount = [](const Lesson& lesson, const Catalog& all) { return double(aircraft_index(lesson, all)); },
     .set_amount = [](Lesson& lesson, double index,
                      const Catalog& all) { set_aircraft(lesson, int(index), all); },
     .choices =
         [](const Lesson&, const Catalog& all) {
             std::vector<std::string> names;
             for (const Aircraft& aircraft : all.aircraft) names.push_back(aircraft.name);
             return names;
         }}};

constexpr Field runway_fields[] = {
    {.kind = Kind::list,
     .path = "/runway",
     .most = most_choices,
     .amount = [](const Lesson& lesson, const Catalog& all) { return double(runway_index(lesson, all)); },
     .set_amount = [](Lesson& lesson, double index,
                      const Catalog& all) { set_runway(lesson, int(index), all); },
     .choices =
         [](const Lesson&, const Catalog& all) {
             std::vector<std::string> names;
             for (const Runway& runway : all.runways) names.push_back(runway.name);
             return names;
         }}};

constexpr Field outlook_fields[] = {
    {.kind = Kind::choice,
     .label = "Light",
     .path = "/outlook/light",
     .most = 3,
     .amount = [](const Lesson& lesson,
                  const Catalog&) { return double(static_cast<int>(lesson.outlook.light)); },
     .set_amount = [](Lesson& lesson, double index,
                      const Catalog&) { lesson.outlook.light = static_cast<Daylight>(int(index)); },
     .choices =
         [](const Lesson&, const Catalog&) {
             return std::vector<std::string>{"Day", "Low sun", "Dusk", "Night"};
         }},
    weather<&Outlook::ground_lights>(
        {.label = "Lights on the ground",
         .path = "/outlook/ground_lights",
         .offered =
             [](const Lesson& lesson) { return background_of(lesson.outlook.light) != Background::day; }}),
    number_in<&Lesson::outlook, &Outlook::visibility_m, km_from_m, m_from_km>(
        {.label = "Visibility", .unit = "km", .path = "/outlook/visibility_km", .least = 1, .most = 50}),
    weather<&Outlook::overcast>({.label = "Overcast", .path = "/outlook/overcast"}),
    weather<&Outlook::rain>({.label = "Rain", .path = "/outlook/rain"})};

constexpr Field start_fields[] = {
    number_in<&Lesson::start, &Start::distance_m, nm_from_m, m_from_nm>({.label = "To the aim point",
                                                                         .unit = "NM",
                                                                         .path = "/start/distance_nm",
                                                                         .least = 0.25,
                                                                         .most = 10,
                                                                         .step = 0.25,
                                                                         .decimals = 2}),
    number_in<&Lesson::start, &Start::offset_rad, deg_from_rad, rad_from_deg>(
        {.label = "Off the path, + high",
         .unit = "\u00b0",
         .path = "/start/offset_deg",
         .least = -2,
         .most = 3,
         .step = 0.1,
         .decimals = 1}),
    number_in<&Lesson::start, &Start::path_rad, down_deg_from_rad, rad_from_down_deg>(
        {.label = "Descending at",
         .unit = "\u00b0",
         .path = "/start/descent_deg",
         .least = 0,
         .most = 8,
         .step = 0.1,
         .decimals = 1}),
    number_in<&Lesson::start, &Start::cas_mps, kt_from_mps, mps_from_kt>(
        {.label = "Speed", .unit = "kt", .path = "/start/speed_kt", .least = 35, .most = 200}),
    {.kind = Kind::choice,
     .label = "Flap",
     .path = "/start/flap",
     .most = 3,
     .amount = [](const Lesson& lesson, const Catalog&) { return double(lesson.start.flap); },
     .set_amount = [](Lesson& lesson, double flap, const Catalog&) { lesson.start.flap = int(flap); },
     .choices = flap_choices},
    number<&Lesson::target_cas_mps, kt_from_mps, mps_from_kt>(
        {.label = "Target on final", .unit = "kt", .path = "/target_speed_kt", .least = 35, .most = 150})};

template <std::size_t row>
constexpr Field wind_height(const char* label, const char* path) {
    return wind_row<row, &Wind::Point::height_m, ft_from_m, m_from_ft>(
        {.label = label, .unit = "ft", .path = path, .most = 5000, .step = 50});
}
template <std::size_t row>
constexpr Field wind_there(const char* path) {
    return wind_row<row, &Wind::Point::headwind_mps, kt_from_mps, mps_from_kt>(
        {.label = "Headwind there", .unit = "kt", .path = path, .least = -15, .most = 40});
}

constexpr Field wind_fields[] = {
    {.kind = Kind::choice,
     .path = "/wind/terrain",
     .most = 2,
     .amount = [](const Lesson& lesson,
                  const Catalog&) { return double(static_cast<int>(lesson.wind.kind)); },
     .set_amount = [](Lesson& lesson, double kind,
                      const Catalog&) { set_wind_kind(lesson, static_cast<Wind::Kind>(int(kind))); },
     .choices =
         [](const Lesson&, const Catalog&) {
             return std::vector<std::string>{"Even", "Gradient", "2 heights"};
         }},
    number_in<&Lesson::wind, &Wind::headwind_mps, kt_from_mps, mps_from_kt>({.label = "Headwind",
                                                                             .unit = "kt",
                                                                             .path = "/wind/headwind_kt",
                                                                             .least = -15,
                                                                             .most = 40,
                                                                             .offered = has_one_headwind}),
    wind_height<0>("The lower height", "/wind/table/0/height_ft"),
    wind_there<0>("/wind/table/0/headwind_kt"),
    wind_height<1>("The upper height", "/wind/table/1/height_ft"),
    wind_there<1>("/wind/table/1/headwind_kt")};

constexpr Field air_fields[] = {
    number<&Lesson::turbulence_w20_mps, kt_from_mps, mps_from_kt>({.label = "Rough as in wind of",
                                                                   .unit = "kt",
                                                                   .path = "/air/turbulence_w20_kt",
                                                                   .most = 45,
                                                                   .step = 5}),
    {.label = "Variant of the air",
     .path = "/air/seed",
     .most = 1000,
     .amount = [](const Lesson& lesson, const Catalog&) { return static_cast<double>(lesson.seed); },
     .set_amount = [](Lesson& lesson, double seed,
                      const Catalog&) { lesson.seed = static_cast<std::uint64_t>(seed); },
     .offered = [](const Lesson& lesson) { return lesson.turbulence_w20_mps > 0.0; }},
    {.label = "Gust, + headwind",
     .unit = "kt",
     .path = "/air/events",
     .least = -40,
     .most = 40,
     .step = 5,
     .amount =
         [](const Lesson& lesson, const Catalog&) {
             const AirEvent* gust = first_gust(lesson);
             return gust != nullptr ? kt_from_mps(gust->along_mps) : 0.0;
         },
     .set_amount = [](Lesson& lesson, double kt, const Catalog&) { set_gust(lesson, mps_from_kt(kt)); }},
    {.label = "at",
     .unit = "NM",
     .path = "/air/events",
     .most = 10,
     .step = 0.25,
     .decimals = 2,
     .amount = [](const Lesson& lesson,
                  const Catalog&) { return nm_from_m(first_gust(lesson)->at_distance_m); },
     .set_amount = [](Lesson& lesson, double nm, const Catalog&) { set_gust_place(lesson, m_from_nm(nm)); },
     .offered = [](const Lesson& lesson) { return first_gust(lesson) != nullptr; }}};

constexpr Field tolerance_fields[] = {
    number_in<&Lesson::tolerances, &Tolerances::path_rad, deg_from_rad, rad_from_deg>(
        {.label = "Path within",
         .unit = "\u00b0",
         .path = "/tolerances/path_deg",
         .least = 0.1,
         .most = 2,
         .step = 0.05,
         .decimals = 2}),
    number_in<&Lesson::tolerances, &Tolerances::path_floor_m, ft_from_m, m_from_ft>(
        {.label = "or within", .unit = "ft", .path = "/tolerances/path_floor_ft", .most = 100, .step = 5}),
    number_in<&Lesson::tolerances, &Tolerances::slow_mps, kt_from_mps, mps_from_kt>(
        {.label = "Slow by at most", .unit = "kt", .path = "/tolerances/slow_kt", .least = 1, .most = 30}),
    number_in<&Lesson::tolerances, &Tolerances::fast_mps, kt_from_mps, mps_from_kt>(
        {.label = "Fast by at most", .unit = "kt", .path = "/tolerances/fast_kt", .least = 1, .most = 30}),
    number_in<&Lesson::tolerances, &Tolerances::sink_mps, fpm_from_mps, mps_from_fpm>(
        {.label = "Sink off by",
         .unit = "ft/min",
         .path = "/tolerances/sink_fpm",
         .least = 50,
         .most = 1000,
         .step = 50})};

const LessonFieldGroup groups[] = {{"What it is", about_fields},  {"The start, and the speed", start_fields},
                                   {"Wind", wind_fields},         {"Rough air", air_fields},
                                   {"Held to", tolerance_fields}, {"Aircraft", aircraft_fields},
                                   {"Runway", runway_fields},     {"Light and weather", outlook_fields}};

}  // namespace

std::span<const LessonFieldGroup> lesson_field_groups() { return groups; }

}  // namespace slopewise
