// The syllabus: its order and words, what varies from run to run, the chain, who has which control, the
// leader.
#include <algorithm>
#include <set>

#include "base/units.h"
#include "data/write_lesson.h"
#include "lesson/variation.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::vector<Lesson> syllabus() {
    std::vector<Lesson> lessons;
    for (const Lesson& lesson : shipped().lessons)
        if (lesson.syllabus.place > 0) lessons.push_back(lesson);
    return lessons;
}

const Lesson& named(std::string_view id) { return *find_lesson(shipped(), id); }

std::string problems_of(const std::string& text) {
    std::string all;
    for (const Problem& problem : read_entry({"x.json", text}).problems) all += to_text(problem) + "\n";
    return all;
}

std::string changed(const Lesson& lesson, std::string_view piece, std::string_view by) {
    std::string text = lesson_text(lesson);
    const std::size_t at = text.find(piece);
    REQUIRE_MESSAGE(at != std::string::npos, piece);
    return text.replace(at, piece.size(), by);
}

}  // namespace

TEST_CASE("syllabus: the catalog lists 25 lessons in order, after the free approaches that have no place") {
    const std::vector<Lesson> lessons = syllabus();
    REQUIRE(lessons.size() == 25);
    for (std::size_t i = 0; i < lessons.size(); ++i)
        CHECK(lessons[i].syllabus.place == static_cast<int>(i) + 1);
    CHECK(shipped().lessons.front().syllabus.group == LessonGroup::free_approach);
}

TEST_CASE("syllabus: who follows next goes through the core to its end, and then through all later lessons") {
    const std::vector<Lesson> all = syllabus();
    const Lesson* lesson = &all.front();
    std::vector<int> places;
    bool left_core = false;
    while (lesson != nullptr && places.size() < 30) {
        places.push_back(lesson->syllabus.place);
        const bool core = lesson->syllabus.group == LessonGroup::core;
        CHECK_MESSAGE(!(core && left_core), lesson->id);
        left_core = left_core || !core;
        CHECK(core == (lesson->syllabus.place <= 14));
        lesson = lesson->syllabus.next.empty() ? nullptr : find_lesson(shipped(), lesson->syllabus.next);
    }
    REQUIRE(places.size() == 25);
    for (std::size_t i = 0; i < places.size(); ++i) CHECK(places[i] == static_cast<int>(i) + 1);
}

TEST_CASE(
    "syllabus: each lesson says why, what an instructor would say, two or three mistakes, and its sources") {
    for (const Lesson& lesson : syllabus()) {
        CAPTURE(lesson.id);
        CHECK(lesson.teaching.why.size() > 40);
        CHECK(lesson.teaching.instructor_says.size() > 40);
        CHECK(lesson.teaching.mistakes.size() >= 2);
        CHECK(lesson.teaching.mistakes.size() <= 3);
        REQUIRE(!lesson.teaching.sources.empty());
        for (const LessonSource& source : lesson.teaching.sources)
            CHECK_MESSAGE(source.document.empty() == (source.certainty == Certainty::common_practice),
                          source_words(source));
    }
}

TEST_CASE("syllabus: no word of a lesson praises, ranks or says that one is ready to land") {
    for (const Lesson& lesson : syllabus()) {
        const std::string text = lesson_text(lesson);
        for (const char* never : {"ready to land", "well done", "excellent", "perfect", "brilliant", "!"})
            CHECK_MESSAGE(text.find(never) == std::string::npos, lesson.id, ": ", never);
    }
}

TEST_CASE("syllabus: three lessons are drills, and only they ask nothing of a flight") {
    std::vector<std::string> drills;
    for (const Lesson& lesson : syllabus())
        if (!lesson.syllabus.drill.empty()) drills.push_back(lesson.syllabus.drill);
    CHECK(drills == std::vector<std::string>{"read_the_lights", "read_the_picture", "one_control"});
}

TEST_CASE("lesson sources: told with document, section and how sure we are") {
    CHECK(source_words({"light pictures", "FAA AIM", "2-1-2", Certainty::read}) ==
          "light pictures: FAA AIM, 2-1-2 (read)");
    CHECK(source_words({"sink", "geometry", "", Certainty::calculated}) == "sink: geometry (calculated)");
    CHECK(source_words({"limits", "", "", Certainty::common_practice}) ==
          "limits: common practice, no source");
}

TEST_CASE("lesson files: what is wrong in the new fields is told with what is allowed") {
    const Lesson& wind = named("wind_on_final");
    const Lesson& chain = named("path_by_power");
    const Lesson& steep = named("steeper_path");
    struct Row {
        std::string text;
        const char* says;
    };
    const Row rows[] = {
        {changed(wind, "\"stable_to_50_ft\"", "\"stabel\""),
         "/success/requirements/0/what is \"stabel\"; allowed: "},
        {changed(wind, "\"height_ft\": 300.0", "\"height_ft\": 320"),
         "/success/requirements/0/height_ft is 320; allowed: a gate: 1000, 500, 300, 200, 50"},
        {changed(wind, "\"least_percent\": 90.0", "\"least_percent\": 190"), "is 190; allowed: 1 to 100"},
        {changed(wind, "\"least_percent\": 90.0", "\"least_kt\": 90"), "least_percent is missing"},
        {changed(wind, "\"passes\": 3", "\"passes\": 9"),
         "/success/passes is 9; allowed: at most /of_last_runs"},
        {changed(steep, "\"least_fpm\": -150.0", "\"least_fpm\": 200"),
         "/success/requirements/0/least_fpm is above /most_fpm"},
        {changed(wind, "\"group\": \"core\"", "\"group\": \"main\""),
         "/syllabus/group is \"main\"; allowed: \"free_approach\", \"core\", \"later\", \"ground_school\""},
        {changed(wind, "\"place\": 10", "\"place\": 26"), "/syllabus/place is 26; allowed: 1 to 25"},
        {changed(wind, "\"sure\": \"read\"", "\"sure\": \"certain\""),
         "/sure is \"certain\"; allowed: \"read\""},
        {changed(chain, "\"power_only\"", "\"feet\""),
         "/hands is \"feet\"; allowed: \"both\", \"power_only\", \"pitch_only\", \"watch\""},
        {changed(chain, "1.0,\n      2.0", "2.0,\n      1.0"),
         "/practice/chain_nm has 1 after a start further out"},
        {changed(chain, "1.0,\n      2.0", "\"near\",\n      99"),
         "/practice/chain_nm/0 is a text; allowed: a number"},
    };
    for (const Row& row : rows) {
        const std::string said = problems_of(row.text);
        CHECK_MESSAGE(said.find(row.says) != std::string::npos, row.says, " -> ", said);
    }
}

TEST_CASE("lesson files: teaching, practice, aids, traffic and success are read again as they were written") {
    for (const Lesson& lesson : syllabus()) {
        CAPTURE(lesson.id);
        const std::string text = lesson_text(lesson);
        const Result<DataEntry> again = read_entry({"again.json", text});
        for (const Problem& problem : again.problems) MESSAGE(to_text(problem));
        REQUIRE(again.ok());
        const Lesson& read = std::get<Lesson>(*again.value);
        CHECK(lesson_text(read) == text);
        CHECK(read.teaching == lesson.teaching);
        CHECK(read.syllabus == lesson.syllabus);
        CHECK(read.success == lesson.success);
        CHECK(read.traffic == lesson.traffic);
        CHECK(read.aids == lesson.aids);
        CHECK(read.practice.chain_m == lesson.practice.chain_m);
        CHECK(read.practice.set_ups.size() == lesson.practice.set_ups.size());
    }
}

// Rule R8: variable practice is learned faster (Huet and others 2011, J Exp Psychol HPP 37, abstract read);
// the numbers are common practice, no source.
TEST_CASE(
    "variation: the first three runs are the lesson, from the fourth each offset and wind comes once in "
    "three") {
    const Lesson& lesson = named("one_and_two_miles");
    for (const std::uint64_t seed : {1u, 2u, 77u}) {
        for (int run = 1; run <= blocked_runs; ++run)
            CHECK(lesson_text(varied(lesson, run, seed)) == lesson_text(lesson));
        for (int first = blocked_runs + 1; first <= blocked_runs + 7; first += 3) {
            std::set<double> offsets, winds;
            for (int run = first; run < first + 3; ++run) {
                const Lesson flown = varied(lesson, run, seed);
                offsets.insert(flown.start.offset_rad);
                winds.insert(flown.wind.headwind_mps);
                CHECK(check_lesson(shipped(), flown, "varied").empty());
            }
            CHECK(offsets == std::set<double>{rad_from_deg(-0.7), 0.0, rad_from_deg(0.7)});
            CHECK(winds == std::set<double>{0.0, mps_from_kt(8.0), mps_from_kt(15.0)});
        }
    }
}

// Rule R8: Huet and others 2011, as above; shuffled by a seed, so that a class has the same variety.
TEST_CASE("variation: the same seed and run give the same flight, another seed another order") {
    const Lesson& lesson = named("one_and_two_miles");
    int differing = 0;
    for (int run = 4; run <= 15; ++run) {
        CHECK(lesson_text(varied(lesson, run, 5)) == lesson_text(varied(lesson, run, 5)));
        differing += lesson_text(varied(lesson, run, 5)) != lesson_text(varied(lesson, run, 6));
    }
    CHECK(differing >= 6);
}

TEST_CASE("variation: a start too near to mend keeps its place") {
    Lesson near = at_chain_step(named("one_and_two_miles"), 0);
    REQUIRE(near.start.distance_m == m_from_nm(1.0));
    for (int run = 4; run <= 12; ++run) CHECK(varied(near, run, 3).start.offset_rad == 0.0);
}

TEST_CASE("variation: each set-up comes once before any comes again, from the first run on") {
    for (const Lesson& lesson : syllabus()) {
        const int count = static_cast<int>(lesson.practice.set_ups.size());
        if (count == 0) continue;
        CAPTURE(lesson.id);
        for (const int first : {1, count + 1}) {
            std::set<int> drawn;
            for (int run = first; run < first + count; ++run) drawn.insert(set_up_of_run(lesson, run, 9));
            CHECK(static_cast<int>(drawn.size()) == count);
        }
    }
    const auto unstable = [](const Lesson& lesson) {
        return std::ranges::count_if(lesson.practice.set_ups, &SetUp::unstable);
    };
    CHECK(unstable(named("go_around_at_the_gate")) == 4);  // half of them
    CHECK(unstable(named("check_flight")) == 2);           // of five
}

TEST_CASE("variation: told in words") {
    const Lesson& lesson = named("one_and_two_miles");
    Lesson flown = lesson;
    CHECK(variation_words(lesson, flown) == "as the lesson has it");
    flown.start.offset_rad = rad_from_deg(-0.7);
    flown.wind.headwind_mps = mps_from_kt(15.0);
    flown.runway_id = "sandholm";
    CHECK(variation_words(lesson, flown) == "start 0.7\u00b0 low, headwind 15 kt, at sandholm");
}

// Rule R9: Wightman and Sistrunk 1987, Human Factors 29 (abstract read): final approaches learned from their
// end transferred better than as many whole ones; two passes are common practice, no source.
TEST_CASE("backward chaining: from the nearest start outwards, a step after two passes in succession") {
    const Lesson& lesson = named("one_and_two_miles");
    REQUIRE(lesson.practice.chain_m.size() == 2);
    CHECK(chain_step(lesson, {}) == 0);
    CHECK(chain_step(lesson, {true, false, true}) == 0);
    CHECK(chain_step(lesson, {true, false, true, true}) == 1);
    CHECK(chain_step(lesson, {true, true, true, true, true, true}) == 1);
    CHECK(at_chain_step(lesson, 0).start.distance_m == m_from_nm(1.0));
    CHECK(at_chain_step(lesson, 1).start.distance_m == m_from_nm(2.0));
    CHECK(at_chain_step(lesson, 9).start.distance_m == m_from_nm(2.0));
    CHECK(at_chain_step(named("final_calm"), 3).start.distance_m == m_from_nm(3.0));
}

TEST_CASE("hands: the aeroplane is given each control by whoever has it, and a go-around by either") {
    Controls student{100, 2000, 30, 1, false}, instructor{-7, 9, -5, 2, false};
    CHECK(shared(Hands::both, student, instructor) == student);
    CHECK(shared(Hands::watch, student, instructor) == instructor);
    CHECK(shared(Hands::power_only, student, instructor) == Controls{-7, 2000, -5, 2, false});
    CHECK(shared(Hands::pitch_only, student, instructor) == Controls{100, 9, 30, 1, false});
    student.go_around = true;
    CHECK(shared(Hands::power_only, student, instructor) == student);
    CHECK(shared(Hands::watch, student, instructor) == instructor);
    std::swap(student.go_around, instructor.go_around);
    CHECK(shared(Hands::pitch_only, student, instructor) == instructor);
    CHECK(shared(Hands::both, student, instructor) == student);  // who has nothing gives up nothing
}

TEST_CASE("aids: the slope lights show by height or by the first input, as the lesson says") {
    LessonAids aids;
    aids.lights_height_m = m_from_ft(200.0);
    const double high_m = m_from_ft(300.0), low_m = m_from_ft(100.0);
    using Lights = LessonAids::Lights;
    struct Row {
        Lights lights;
        bool high, low, high_before_input;
    };
    for (const Row& row :
         {Row{Lights::shown, true, true, true}, Row{Lights::hidden, false, false, false},
          Row{Lights::hidden_below, true, false, true}, Row{Lights::hidden_above, false, true, false},
          Row{Lights::after_first_input, true, true, false}}) {
        aids.lights = row.lights;
        CHECK(lights_shown(aids, high_m, true) == row.high);
        CHECK(lights_shown(aids, low_m, true) == row.low);
        CHECK(lights_shown(aids, high_m, false) == row.high_before_input);
    }
}

TEST_CASE("traffic: the leader comes straight down its path, touches where it should, rolls out and stops") {
    const Lesson& lesson = named("behind_a_larger_aircraft");
    const Runway& runway = *find_runway(shipped(), lesson.runway_id);
    const Traffic& leader = lesson.traffic;
    REQUIRE(leader.there());
    const double start_m = lesson.start.distance_m;
    const LeaderPlace begin = leader_at(leader, runway, start_m, 0.0);
    // two nautical miles nearer than our start, 3 NM from our aim point
    CHECK_NEAR(runway.aim_distance_m - begin.x_m, m_from_nm(1.0), 1e-6);
    CHECK_NEAR(begin.z_m, (leader.touchdown_m - begin.x_m) * 0.0524077793, 1e-3);  // tan 3 degrees
    const double down_s = (leader.touchdown_m - begin.x_m) / leader.ground_speed_mps;
    CHECK_FALSE(leader_at(leader, runway, start_m, down_s - 0.01).on_ground);
    const LeaderPlace down = leader_at(leader, runway, start_m, down_s + 0.01);
    CHECK(down.on_ground);
    CHECK_NEAR(down.since_touchdown_s, 0.01, 1e-9);
    CHECK_NEAR(down.x_m, leader.touchdown_m, 0.01 * leader.ground_speed_mps + 1e-6);
    CHECK(down.z_m == 0.0);
    const LeaderPlace stopped = leader_at(leader, runway, start_m, down_s + 600.0);
    // v^2 / 2a of the roll
    CHECK_NEAR(stopped.x_m - leader.touchdown_m,
               leader.ground_speed_mps * leader.ground_speed_mps / (2.0 * leader_braking_mps2), 1e-6);
    CHECK(stopped.x_m < runway.length_m);
}

TEST_CASE(
    "flap: a lesson's own setting to land with is briefed and held to; without one it is the aircraft's") {
    const Scenario flapless = shipped_scenario("flapless_final");
    CHECK(briefed_flap(flapless) == 0);
    CHECK(briefed_flap(shipped_scenario("final_calm")) == 2);
    CHECK(reference_trim(flapless, 100.0).pitch_rad >
          reference_trim(shipped_scenario("final_calm"), 100.0).pitch_rad);
}

TEST_CASE("catalog: a lesson whose next is not there is told") {
    Lesson lost = named("wind_on_final");
    lost.syllabus.next = "nowhere";
    const std::vector<Problem> problems = check_lesson(shipped(), lost, "lost.json");
    REQUIRE(problems.size() == 1);
    CHECK(to_text(problems.front())
              .starts_with("lost.json: /syllabus/next is \"nowhere\", which is not known"));
}

TEST_CASE(
    "catalog: a set-up and a practice runway that cannot be flown are told with their place in the file") {
    Lesson lesson = named("one_and_two_miles");
    lesson.practice.runways.front() = "nowhere";
    SetUp slow;
    slow.name = "too slow";
    slow.start = lesson.start;
    slow.start.cas_mps = mps_from_kt(40.0);
    SetUp elsewhere;
    elsewhere.name = "elsewhere";
    elsewhere.start = lesson.start;
    elsewhere.runway_id = "nowhere";
    lesson.practice.set_ups = {slow, elsewhere};
    std::string said;
    for (const Problem& problem : check_lesson(shipped(), lesson, "x.json")) said += to_text(problem) + "\n";
    CHECK(said.find("/practice/runways/0 is \"nowhere\", which is not known") != std::string::npos);
    CHECK(said.find("/practice/set_ups/0/start cannot be flown: the speed is below the stall") !=
          std::string::npos);
    CHECK(said.find("/practice/set_ups/1/runway is \"nowhere\", which is not known") != std::string::npos);
}
