#include "ui/settings.h"

#include <array>

#include "data/fields.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 3> senses{"ask", "up_key_pushes", "up_key_pulls"};

constexpr std::array<std::string_view, 2> switches{"off", "on"};

std::size_t sense_index(const Settings& settings) {
    if (!settings.up_key_pushes) return 0;
    return *settings.up_key_pushes ? 1 : 2;
}

}  // namespace

std::string settings_text(const Settings& settings) {
    return "{\"kind\": \"settings\", \"stick_sense\": \"" + std::string(senses[sense_index(settings)]) +
           "\", \"sound\": \"" + std::string(switches[settings.sound ? 1 : 0]) + "\"}\n";
}

Result<Settings> parse_settings(std::string_view text) {
    if (text.empty()) return success(Settings{});
    const std::string name = "kept settings";
    Result<JsonNode> parsed = parse_json(text, name);
    if (!parsed.ok()) return failure<Settings>(std::move(parsed.problems));
    std::vector<Problem> problems;
    Fields fields(*parsed.value, name, "", problems);
    fields.text("kind");
    const std::size_t sense = fields.one_of("stick_sense", senses);
    const bool sound = fields.one_of("sound", switches) == 1;
    fields.finish();
    if (!problems.empty()) return failure<Settings>(std::move(problems));
    Settings settings;
    settings.sound = sound;
    if (sense != 0) settings.up_key_pushes = sense == 1;
    return success(settings);
}

}  // namespace slopewise
