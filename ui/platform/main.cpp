// The only main of the program with a window: data in, window open, frames until it closes.
#include <cstdio>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "assets/embedded.h"
#include "ui/app.h"
#include "ui/platform/devices.h"
#include "ui/platform/make_host.h"
#include "ui/platform/window.h"

namespace {

using namespace slopewise;

std::vector<DataFile> shipped_data() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    }
    return files;
}

// The value of `--lesson-link TEXT`; empty without it.
std::string lesson_link_of(std::span<char* const> arguments) {
    for (std::size_t i = 1; i + 1 < arguments.size(); ++i)
        if (std::string_view(arguments[i]) == "--lesson-link") return arguments[i + 1];
    return {};
}

}  // namespace

int main(int argc, char** argv) {
    Result<Catalog> catalog = load_catalog(shipped_data());
    for (const Problem& problem : catalog.problems) std::fprintf(stderr, "%s\n", to_text(problem).c_str());
    if (!catalog.ok()) return 1;
    if (const std::string problem = open_window("Slopewise", 1280, 720); !problem.empty()) {
        std::fprintf(stderr, "Slopewise cannot start: %s\n", problem.c_str());
        return 1;
    }
    open_devices();
    // Both live as long as the program: in a browser main returns while the frames go on.
    static const std::unique_ptr<Host> host =
        make_host(lesson_link_of({argv, static_cast<std::size_t>(argc)}));
    static App app = make_app(std::move(*catalog.value), *host);
    run_frames([](const RawInput& raw) {
        frame(app, raw, *host);
        keep_page(app.screen == Screen::flight || app.room.open || app.screen == Screen::class_window);
        return app.ui.pads.areas;
    });
#ifndef __EMSCRIPTEN__
    close_devices();
    close_window();
#endif
    return 0;
}
