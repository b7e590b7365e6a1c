// A page of Dear ImGui with nothing in it, opened and drawn as the program's page is: what a frame costs
// before we draw anything.
#include <cstdio>

#include "ui/platform/window.h"

int main() {
    using namespace slopewise;
    if (const std::string problem = open_window("Nothing", 1280, 720); !problem.empty()) {
        std::fprintf(stderr, "%s\n", problem.c_str());
        return 1;
    }
    run_frames([](const RawInput&) { return FingerAreas{}; });
    return 0;
}
