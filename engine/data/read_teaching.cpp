#include "data/read_teaching.h"

#include "base/units.h"

namespace slopewise {
namespace {

constexpr std::size_t longest_words = 600;
constexpr std::size_t longest_sentence = 200;

LessonSource read_source(Fields& fields) {
    LessonSource source;
    source.of = fields.text("of", longest_sentence);
    source.certainty = static_cast<Certainty>(fields.one_of("sure", certainty_names));
    if (source.certainty != Certainty::common_practice)
        source.document = fields.text("document", longest_sentence);
    source.section = fields.text_or("section", "", longest_sentence);
    fields.finish();
    return source;
}

}  // namespace

Syllabus read_syllabus(Fields fields) {
    Syllabus syllabus;
    syllabus.group = static_cast<LessonGroup>(fields.one_of("group", lesson_group_names));
    if (syllabus.group != LessonGroup::free_approach)
        syllabus.place = fields.integer("place", 1, most_lessons_in_order);
    syllabus.next = fields.text_or("next", "", 40);
    syllabus.drill = fields.text_or("drill", "", 40);
    fields.finish();
    return syllabus;
}

Teaching read_teaching(Fields fields) {
    Teaching teaching;
    teaching.why = fields.text("why", longest_words);
    teaching.instructor_says = fields.text("instructor_says", longest_words);
    teaching.mistakes = fields.texts("mistakes", 1, most_mistakes, longest_sentence);
    for (Fields& source : fields.list("sources", 1, most_sources))
        teaching.sources.push_back(read_source(source));
    fields.finish();
    return teaching;
}

LessonAids read_aids(Fields fields) {
    LessonAids aids;
    using Lights = LessonAids::Lights;
    aids.lights = static_cast<Lights>(fields.one_of_or("lights", 0, lesson_lights_names));
    if (aids.lights == Lights::hidden_below || aids.lights == Lights::hidden_above)
        aids.lights_height_m = m_from_ft(fields.number("lights_height_ft", {50.0, 5000.0}));
    aids.airspeed_hidden = fields.flag_or("airspeed_hidden", false);
    aids.eyes_outside = fields.flag_or("eyes_outside", false);
    if (fields.has("help_stage")) aids.help_stage = fields.integer("help_stage", 0, most_help_stage);
    fields.finish();
    return aids;
}

}  // namespace slopewise
