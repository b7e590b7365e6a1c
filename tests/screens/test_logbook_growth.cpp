// How the logbook's sheet grows: from rows to the end of its first frame.
#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>
#include <string>

#include "tests/screens/stage.h"
#include "tests/ui/logbook_rows.h"
#include "tests/ui/test_host.h"
#include "ui/logbook_mirror.h"
#include "ui/logbook_views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Of the processor, so that what else the machine does does not count.
double ms_since(std::clock_t start) {
    return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

struct Cost {
    double list_ms = 1e9, progress_ms = 1e9, next_frame_ms = 1e9;
};

// The least of several openings: what else the machine does only adds.
Cost cost_of(Stage& stage, const Catalog& catalog, int attempts) {
    const Logbook logbook = invented_logbook(attempts);
    const std::string student = "Kestrel 7";
    Cost cost;
    for (int round = 0; round < 5; ++round) {
        stage.view.logbook = {};
        stage.view.progress = {};
        std::clock_t start = std::clock();
        logbook_view(logbook, catalog, student, {}, stage.view.logbook);
        const std::string told = logbook_text(stage.view.logbook);
        stage.draw(Screen::logbook);
        cost.list_ms = std::min(cost.list_ms, ms_since(start));
        start = std::clock();
        logbook_view(logbook, catalog, student, {}, stage.view.logbook);
        stage.draw(Screen::logbook);
        cost.next_frame_ms = std::min(cost.next_frame_ms, ms_since(start));
        start = std::clock();
        progress_view(logbook, catalog, student, {}, stage.view.progress);
        stage.draw(Screen::progress);
        cost.progress_ms = std::min(cost.progress_ms, ms_since(start));
        CHECK(told.size() > 1000);
    }
    return cost;
}

}  // namespace

// The aim is 100 ms for 10,000 attempts, which is what seems to be at once (common practice, no source). It
// is held to that as it stands; the bound leaves room for a machine several times slower than the one it was
// written on.
TEST_CASE("logbook: the list of 10,000 attempts opens within a tenth of a second") {
    Stage stage({1280, 720});
    const Catalog catalog = shipped();
    for (const int attempts : {100, 1000, 10000}) {
        const Cost cost = cost_of(stage, catalog, attempts);
        MESSAGE("logbook of ", attempts, " attempts: list and first frame ", cost.list_ms, " ms, next frame ",
                cost.next_frame_ms, " ms, progress and first frame ", cost.progress_ms, " ms");
#ifdef SLOPEWISE_WHOLE_APPROACH  // not where a sanitizer watches
        CHECK(cost.list_ms < 100);
        CHECK(cost.progress_ms < 100);
#endif
    }
}
