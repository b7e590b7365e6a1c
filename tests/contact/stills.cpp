#include "tests/contact/stills.h"

#include <cmath>

#include "assets/embedded.h"
#include "base/units.h"
#include "data/catalog.h"
#include "ui/scene/scene.h"
#include "ui/sky_view.h"
#include "ui/theme.h"
#include "world/lights.h"

namespace slopewise {

namespace {

constexpr double hundred_ft_m = 100 * 0.3048;
const double path_tangent = std::tan(rad_from_deg(3.0));

const Station station_list[] = {{"3nm", 3 * 1852.0},
                                {"2nm", 2 * 1852.0},
                                {"1nm", 1852.0},
                                {"half", 926.0},
                                {"100ft", hundred_ft_m / path_tangent},
                                {"50ft", 0.5 * hundred_ft_m / path_tangent}};

const Weathering weathering_list[] = {{"day", {}},
                                      {"low_sun", {Daylight::low_sun, true, 30000, false, false}},
                                      {"haze", {Daylight::day, true, 4000, false, false}},
                                      {"overcast", {Daylight::day, true, 20000, true, false}},
                                      {"rain", {Daylight::day, true, 8000, true, true}},
                                      {"dusk", {Daylight::dusk, true, 30000, false, false}},
                                      {"night", {Daylight::night, true, 30000, false, false}},
                                      {"black_hole", {Daylight::night, false, 30000, false, false}}};

RunwayView runway_view(const Runway& runway) {
    const AimingPointMarking mark = aiming_point_marking(runway.length_m);
    return {runway.length_m,
            runway.width_m,
            runway.slope,
            runway.aim_distance_m,
            mark.length_m,
            mark.width_m,
            mark.inner_gap_m,
            runway.designator,
            runway.edge_lights,
            runway.approach_lights,
            countryside_view(runway.countryside)};
}

}  // namespace

std::span<const Station> stations() { return station_list; }
std::span<const Weathering> weatherings() { return weathering_list; }

SceneView still(const Runway& runway, const Outlook& outlook, const Station& station) {
    Scenario scenario;
    scenario.lesson.outlook = outlook;
    scenario.surroundings.wind.headwind_mps = 4.0;
    const Point3 aim = aim_point(runway);
    const Point3 eye{aim.x_m - station.to_aim_m, 0, aim.z_m + station.to_aim_m * path_tangent};
    SceneView scene;
    scene.runway = runway_view(runway);
    scene.camera = {eye.x_m, eye.y_m, eye.z_m, rad_from_deg(-4.0), rad_from_deg(40.0)};
    scene.body_pitch_rad = rad_from_deg(-3.0);
    scene.look_over_rad = rad_from_deg(5.5);
    scene.sky = sky_view(scenario, 12.0);
    const LightSystem lights = make_lights(runway);
    scene.lamp_count = lights.count;
    for (int i = 0; i < lights.count; ++i) {
        const Point3& lens = lights.units[static_cast<std::size_t>(i)].lens;
        scene.lamps[static_cast<std::size_t>(i)] = {lens.x_m,
                                                    lens.y_m,
                                                    lens.z_m,
                                                    unit_white_fraction(lights, i, eye),
                                                    unit_shows(lights, i, eye),
                                                    lamp_brightness(outlook, lens, eye)};
    }
    return scene;
}

Darkroom::Darkroom(int width, int height) : width_(width), height_(height) {
    context_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    io.DeltaTime = 1.0f / 60.0f;
    load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
    fit_theme(io.DisplaySize.x, io.DisplaySize.y);
    unsigned char* pixels = nullptr;
    int wide = 0, tall = 0;
    io.Fonts->GetTexDataAsAlpha8(&pixels, &wide, &tall);
    ImGui::NewFrame();
    for (const EmbeddedFile& file : embedded_files()) {
        if (!file.name.starts_with("assets/runways/")) continue;
        const Result<DataEntry> entry = read_entry({std::string(file.name), file.bytes});
        if (entry.ok()) runways_.push_back(std::get<Runway>(*entry.value));
    }
}

Darkroom::~Darkroom() {
    ImGui::EndFrame();
    ImGui::DestroyContext(context_);
}

Bitmap Darkroom::draw(const SceneView& scene) const {
    ImDrawList list(ImGui::GetDrawListSharedData());
    list._ResetForNewFrame();
    list.PushClipRectFullScreen();
    draw_scene(&list, {0, 0}, {static_cast<float>(width_), static_cast<float>(height_)}, scene);
    Bitmap picture(width_, height_);
    rasterise(picture, list);
    return picture;
}

}  // namespace slopewise
