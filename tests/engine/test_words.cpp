// The summary's sentences, for every way an approach can end.
#include "base/units.h"
#include "review/words.h"
#include "tests/check.h"

using namespace slopewise;

TEST_CASE("words: every way an approach can end has its own sentence, with where it was") {
    Summary summary;
    summary.last.wheel_height_m = m_from_ft(50.0);
    summary.last.distance_m = m_from_nm(0.25);
    const auto said = [&](End end) {
        summary.end = end;
        return end_sentence(summary);
    };
    CHECK(said(End::reached_floor) == "Scoring ended at 50 ft wheel height, 0.25 NM from the aim point.");
    CHECK(said(End::went_around) ==
          "Scoring ended with the go-around at 50 ft wheel height, 0.25 NM from the aim point.");
    CHECK(said(End::ground_short) ==
          "The wheels met the ground short of the runway, 0.25 NM before the aim point.");
    CHECK(said(End::overflew) == "Scoring ended past the far end of the runway, never down to 50 ft.");
    CHECK(said(End::none) == "The approach is not finished.");
}

TEST_CASE("words: a VASI's bars are told from the far one down, and other lights by their count") {
    CHECK(light_words(0, 2, LightSite::Kind::vasi) == "red over red");
    CHECK(light_words(1, 2, LightSite::Kind::vasi) == "red over white");
    CHECK(light_words(2, 2, LightSite::Kind::vasi) == "white over white");
    CHECK(light_words(1, 1, LightSite::Kind::vasi) == "1 white");  // one bar out: nothing to stand over
    CHECK(light_words(1, 2, LightSite::Kind::apapi) == "1 white 1 red");
    CHECK(light_words(-1) == "no lights in view");
    CHECK(light_words(0, 0) == "no lights in view");
}
