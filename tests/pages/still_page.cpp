// The program's own flight screen, standing still where a test puts the eye:
//
//     still_page RUNWAY NAUTICAL-MILES DEGREES-FROM-THE-PATH
//
// The miles are those along the ground from the eye to the aim point; the degrees are counted about the aim
// point, positive high. Everything after that is the program: a lesson starts there, its frame makes the view
// and draws it, its window and renderer show it. The clock alone stands. Prints the pitch of the view axis,
// which is the trimmed aeroplane's, in degrees.
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "assets/embedded.h"
#include "base/units.h"
#include "ui/app.h"
#include "ui/platform/make_host.h"
#include "ui/platform/window.h"

namespace {

using namespace slopewise;

std::vector<DataFile> shipped_data() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files())
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    return files;
}

Lesson lesson_from(const Catalog& catalog, const char* runway, const char* miles, const char* degrees) {
    Lesson lesson = *base_lesson(catalog);
    lesson.runway_id = runway;
    lesson.start.distance_m = m_from_nm(std::atof(miles));
    lesson.start.offset_rad = rad_from_deg(std::atof(degrees));
    return lesson;
}

}  // namespace

int main(int argc, char** argv) {
    Result<Catalog> catalog = load_catalog(shipped_data());
    if (!catalog.ok() || argc != 4) return 1;
    if (const std::string problem = open_window("Still", 1280, 720); !problem.empty()) {
        std::fprintf(stderr, "%s\n", problem.c_str());
        return 1;
    }
    static const std::unique_ptr<Host> host = make_host();
    static App app = make_app(std::move(*catalog.value), *host);
    const Lesson lesson = lesson_from(app.catalog, argv[1], argv[2], argv[3]);
    apply(app, StartFlight{}, *host);
    app.flight = begin_session(scenario_of(app.catalog, lesson));
    run_frames([](RawInput raw) {
        static bool told = false;
        raw.wall_s = 0;
        frame(app, raw, *host);
        if (!told) std::printf("pitch %.6f\n", deg_from_rad(app.view.flight.scene.camera.pitch_rad));
        told = true;
        return FingerAreas{};
    });
    return 0;
}
