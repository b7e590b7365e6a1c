#include "ui/settings.h"

#include <array>

#include "data/criteria_file.h"
#include "data/fields.h"
#include "data/read_outlook.h"
#include "data/school_file.h"
#include "ui/student_name.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 3> senses{"ask", "up_key_pushes", "up_key_pulls"};

constexpr std::array<std::string_view, 2> switches{"off", "on"};

std::size_t sense_index(const Settings& settings) {
    if (!settings.up_key_pushes) return 0;
    return *settings.up_key_pushes ? 1 : 2;
}

constexpr std::array<std::string_view, 3> looks{"standard", "high_contrast", "night"};

// Every switch of the display under its key.
template <class AnyDisplay, class Use>
void each_switch(AnyDisplay& display, Use use) {
    use("projector_text", display.projector_text);
    use("reduced_motion", display.reduced_motion);
    use("eyes_outside", display.eyes_outside);
    use("side_profile", display.side_profile);
    use("help_by_itself", display.help_by_itself);
    use("call_outs", display.call_outs);
    use("magnifier", display.magnifier);
    use("lamp_letters", display.lamp_letters);
    use("lamp_shapes", display.lamp_shapes);
    for (const InstrumentName& one : instrument_names)
        use("covered_" + std::string(one.key), display.covered.*one.which);
    for (const InstrumentName& one : instrument_names)
        use("failed_" + std::string(one.key), display.failed.*one.which);
}

std::string field(std::string_view key, std::string_view value) {
    return ", \"" + std::string(key) + "\": " + std::string(value);
}

std::string quoted_field(std::string_view key, std::string_view name) {
    return field(key, "\"" + std::string(name) + "\"");
}

std::string_view truth(bool value) { return value ? "true" : "false"; }

std::string display_text(const Display& display) {
    std::string text = quoted_field("look", looks[static_cast<std::size_t>(display.look)]);
    each_switch(display,
                [&](std::string_view key, bool on) { text += quoted_field(key, switches[on ? 1 : 0]); });
    return text + field("screen_width_cm", number_text(display.screen_width_cm)) +
           field("viewing_distance_cm", number_text(display.viewing_distance_cm));
}

bool read_switch(Fields& fields, std::string_view key, bool otherwise) {
    return fields.one_of_or(key, otherwise ? 1 : 0, switches) == 1;
}

std::string student_text(const std::string& student) {
    return student.empty() ? "" : field("student", json_string(student));
}

Display read_display(Fields& fields, bool prefers_reduced_motion) {
    Display display;
    display.reduced_motion = prefers_reduced_motion;
    display.look = static_cast<Look>(fields.one_of_or("look", 0, looks));
    each_switch(display, [&](std::string_view key, bool& on) { on = read_switch(fields, key, on); });
    display.screen_width_cm = fields.number_or("screen_width_cm", 0, {0, most_screen_width_cm});
    display.viewing_distance_cm = fields.number_or("viewing_distance_cm", 0, {0, most_viewing_distance_cm});
    return display;
}

std::string where_and_when_text(const WhereAndWhen& kept) {
    const Outlook& outlook = kept.outlook;
    return field("aircraft", json_string(kept.aircraft_id)) + field("runway", json_string(kept.runway_id)) +
           ", \"outlook\": {\"light\": \"" +
           std::string(daylight_names[static_cast<std::size_t>(outlook.light)]) + "\"" +
           field("ground_lights", truth(outlook.ground_lights)) +
           field("visibility_km", number_text(outlook.visibility_m / 1000.0)) +
           field("overcast", truth(outlook.overcast)) + field("rain", truth(outlook.rain)) + "}";
}

WhereAndWhen read_where_and_when(Fields& fields) {
    WhereAndWhen kept;
    kept.aircraft_id = fields.text_or("aircraft", kept.aircraft_id, 40);
    kept.runway_id = fields.text_or("runway", kept.runway_id, 40);
    if (fields.has("outlook")) kept.outlook = read_outlook(fields.object("outlook"));
    return kept;
}

}  // namespace

std::string settings_text(const Settings& settings) {
    return "{\"kind\": \"settings\", \"stick_sense\": \"" + std::string(senses[sense_index(settings)]) +
           "\", \"sound\": \"" + std::string(switches[settings.sound ? 1 : 0]) + "\"" +
           field("volume", number_text(settings.volume)) + student_text(settings.student) +
           display_text(settings.display) + where_and_when_text(settings.where_and_when) +
           field("school", school_text(settings.school)) + field("keys", key_bindings_text(settings.keys)) +
           field("controllers", controllers_json(settings.controllers)) + "}\n";
}

KeptSettings parse_settings(std::string_view text, bool prefers_reduced_motion) {
    KeptSettings kept;
    Settings& settings = kept.settings;
    settings.display.reduced_motion = prefers_reduced_motion;
    if (text.empty()) return kept;
    const std::string name = "kept settings";
    Result<JsonNode> parsed = parse_json(text, name);
    if (!parsed.ok()) {
        kept.problems = std::move(parsed.problems);
        return kept;
    }
    Fields fields(*parsed.value, name, "", kept.problems);
    fields.text("kind");
    const std::size_t sense = fields.one_of("stick_sense", senses);
    if (sense != 0) settings.up_key_pushes = sense == 1;
    settings.sound = read_switch(fields, "sound", settings.sound);
    settings.volume = fields.number_or("volume", settings.volume, {0, 1});
    if (fields.has("student")) settings.student = tidy_student(fields.text("student", most_student_bytes));
    settings.display = read_display(fields, prefers_reduced_motion);
    settings.where_and_when = read_where_and_when(fields);
    if (fields.has("school")) settings.school = read_school(fields.object("school"), name, kept.problems);
    if (fields.has("criteria"))  // as they were kept before there were schools
        settings.school.criteria = read_criteria(fields.object("criteria"));
    if (fields.has("keys")) settings.keys = read_key_bindings(fields.object("keys"));
    if (fields.has("controllers")) settings.controllers = read_controllers(fields);
    fields.finish();
    return kept;
}

}  // namespace slopewise
