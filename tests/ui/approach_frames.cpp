#include "tests/ui/approach_frames.h"

#include <cstdlib>

#include "assets/embedded.h"
#include "tests/memory_count.h"
#include "ui/theme.h"

namespace slopewise::test {
namespace {

Catalog shipped() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files())
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    return *load_catalog(files).value;
}

ImGuiContext* no_window(ImVec2 size) {
    ImGui::SetAllocatorFunctions([](std::size_t bytes, void*) { return counted_memory(bytes); },
                                 [](void* memory, void*) { std::free(memory); });
    ImGuiContext* context = ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = size;
    io.DeltaTime = 1.0f / 60.0f;
    load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    io.Fonts->GetTexDataAsAlpha8(&pixels, &width, &height);
    fit_theme(size.x, size.y);
    return context;
}

}  // namespace

ApproachFrames::ApproachFrames(ImVec2 size, std::string_view runway_id) : context_(no_window(size)) {
    app = make_app(shipped(), host);
    app.settings.display.side_profile = true;
    app.settings.display.screen_width_cm = 34;
    app.settings.display.viewing_distance_cm = 60;
    Lesson lesson = *base_lesson(app.catalog);
    lesson.runway_id = runway_id;
    apply(app, StartFlight{}, host);
    app.flight = begin_session(scenario_of(app.catalog, lesson));
    app.hands.at = app.flight->scenario.start_trim.controls;
}

ApproachFrames::~ApproachFrames() { ImGui::DestroyContext(context_); }

void ApproachFrames::next_frame(double step_s) {
    raw.wall_s += step_s;
    ImGui::NewFrame();
    frame(app, raw, host);
    ImGui::Render();
}

int ApproachFrames::vertices() const { return ImGui::GetDrawData()->TotalVtxCount; }

int ApproachFrames::draw_calls() const {
    int calls = 0;
    for (const ImDrawList* list : ImGui::GetDrawData()->CmdLists) calls += list->CmdBuffer.Size;
    return calls;
}

}  // namespace slopewise::test
