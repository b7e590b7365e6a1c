#include "handout/lesson_plan.h"

#include "base/units.h"
#include "debrief/html_text.h"
#include "handout/handout_numbers.h"
#include "handout/page.h"

namespace slopewise {
namespace {

std::string press(const char* button) { return "<b class=\"press\">" + html_text(button) + "</b>"; }
std::string key(const char* name) { return "<kbd>" + html_text(name) + "</kbd>"; }

std::string header(const Scenario& base, const School& school) {
    return "<header><div><h1>Lesson plan: judging a final approach</h1><p>Ground school, twenty minutes, one "
           "screen for all. Aim: each student can say from the picture and the lights whether the approach "
           "is "
           "high or low, fast or slow, and what to move first.</p></div><p>" +
           (school.name.empty() ? std::string("School: ____________") : html_text(school.name)) + "<br>" +
           html_text(base.aircraft.name) + ", " + html_text(base.surroundings.runway.name) +
           "</p></header><p class=\"who\"><span>Instructor</span><span>Class</span><span>Date</span>"
           "<span>Students present</span></p>";
}

std::string before() {
    return "<p><b>Before they come:</b> print one handout each. On the first page press " +
           press("Teach a class") + ", then " + press("Show") + " and " + press("Open a class window") +
           "; put that window on the projector, full screen. In the panel " + press("Ask") +
           " choose a set of questions. A clicker works: " + key("PageDown") + " goes on, " + key("PageUp") +
           " goes back, " + key("B") + " makes the picture black. In one window only: " + key("Z") +
           " puts the panel away.</p>";
}

// The figures that the class is asked for are worked out on the handout as well.
std::string headwind_words(const HandoutNumbers& numbers) {
    const HandoutWind &calm = numbers.winds.front(), &windy = numbers.winds.back();
    if (!calm.flyable || !windy.flyable) return "Read the two rows of the handout.";
    return format_html(
        "At %.0f kt through the air: %.0f ft/min in calm air, %.0f in %.0f kt of headwind; power %.0f "
        "and %.0f %%.",
        kt_from_mps(numbers.target_mps), fpm_from_mps(calm.sink_mps), fpm_from_mps(windy.sink_mps),
        kt_from_mps(windy.headwind_mps), 100.0 * calm.power, 100.0 * windy.power);
}

std::vector<HtmlRow> minutes(const HandoutNumbers& numbers, const School& school) {
    const std::string gate = format_html("%.0f ft", school.criteria.decision_gate_ft);
    const std::string next = key("PageDown");
    return {
        {"0\u20132", "Aim and cautions",
         "Picture black: " + key("B") + ". Say the aim. Then " + key("B") + ", " + press("Run") + " " +
             key("P") + " for ten seconds, " + press("Freeze") + " " + key("P") + ".",
         "A study aid on the ground: no time to log, and nothing here says that anyone is ready to land. The "
         "flight manual comes first."},
        {"2\u20135", "Freeze and ask",
         press("Ask") + ", set <i>energy states</i>: " + next +
             " asks: it runs for some seconds and freezes by itself. Everybody decides alone; count the "
             "hands with the numbers of the answers. Where they differ, " +
             next + " lets them talk for a minute and counts again; " + next + " reveals, " + next +
             " runs on. The button beside it says what comes next.",
         "High or low? Fast or slow? No hints, no looking at the others."},
        {"5\u20138", "Reposition, read the lights",
         press("Station") + ": put it at 1 NM, high, on it, low. " + press("Show") +
             ": <i>Slope lights</i> hidden; they judge by the picture; then shown. Set <i>read the "
             "lights</i>, two "
             "questions.",
         "What do the lights say, and by how many feet? (" +
             format_html("At 1 NM half a degree is %.0f ft.)", ft_from_m(numbers.heights[2].half_degree_m))},
        {"8\u201310", "Three stills",
         press("Show") +
             ": <i>Stills</i>, one set: paths, widths or slopes. The names stay hidden until you press "
             "<i>Reveal</i>. Draw on the picture where it misleads.",
         "Which one is on the path? Which one would draw you down low?"},
        {"10\u201312", "Headwind",
         press("Station") + ": headwind 0, then 20 kt. " + press("Show") +
             ": <i>Path from the side</i> and <i>Calm "
             "air beside it</i> shown. " +
             press("Run") + ".",
         "Why more power? " + headwind_words(numbers)},
        {"12\u201315", "A volunteer flies",
         press("Station") + ": 2 NM, low; say who has which control. " + press("Run") + " " + key("P") +
             ". The class calls high, low, fast or slow; " + press("Freeze") + " once and ask. " + key("G") +
             " goes around.",
         "What do you see? What do you move? Thank whoever goes around."},
        {"15\u201318", "Questions",
         press("Ask") +
             ", <i>All sets</i>: a question of <i>where would we hit</i>, <i>stable or not</i> or <i>what do "
             "you do first</i>, as many as time allows. Ask, count, reveal.",
         "Stable at " + gate + "? If not: power, attitude, flap in stages."},
        {"18\u201320", "What to take home",
         "Picture black: " + key("B") +
             ". Each says one sentence to a neighbour. Hand out the numbers. The "
             "answers: <i>Take away (CSV)</i>. " +
             press("Leave") + " " + key("Bksp") + ".",
         "What will you look at first on your next final?"},
    };
}

std::string plan_table(const std::vector<HtmlRow>& rows) {
    return "<div class=\"plan\">" + html_table({"min", "", "you do", "you say or ask"}, rows) + "</div>";
}

}  // namespace

std::string lesson_plan_html(const Scenario& base, const School& school) {
    const HandoutNumbers numbers = handout_numbers(base, school);
    std::string body = header(base, school) + before() + plan_table(minutes(numbers, school));
    body +=
        "<div class=\"two\"><div><h2>How the counts came out</h2><div class=\"box "
        "notes\"></div></div><div><h2>Notes: "
        "what to take up again, with whom</h2><div class=\"box notes\"></div></div></div>"
        "<p class=\"ticks\"><span>\u2610 taught</span><span>\u2610 repeat</span><span>Initials "
        "________</span>"
        "<span>Date ____________</span></p>";
    return html_page(
        "Lesson plan: judging a final approach", body,
        "Deciding alone, talking it over and deciding again, and the minutes are common practice, no "
        "source. Sink, power and feet are of the aircraft above, as on the handout.");
}

}  // namespace slopewise
