// The picture through the windscreen, in metres and radians: the only geometry a screen sees.
#pragma once

#include <array>
#include <cstdint>
#include <string>

namespace slopewise {

// The eye, in the runway frame: x along the landing direction from the threshold (negative on final),
// y to the right, z up from the threshold elevation.
struct CameraView {
    double x_m = 0, y_m = 0, z_m = 0;
    double pitch_rad = 0;           // direction of the view axis above the horizon
    double horizontal_fov_rad = 0;  // full angle between the left and right edges
};

// The kind of country around a runway and the seed by which it is laid out.
struct CountrysideView {
    enum class Kind { farmland, woodland, coast };

    Kind kind = Kind::farmland;
    std::uint64_t seed = 1;

    friend bool operator==(const CountrysideView&, const CountrysideView&) = default;
};

struct RunwayView {
    double length_m = 0, width_m = 0;
    double slope = 0;           // tangent, positive up in the landing direction
    double aim_distance_m = 0;  // threshold to the beginning of the aiming-point marking
    double aim_mark_length_m = 0, aim_mark_width_m = 0, aim_mark_gap_m = 0;  // gap between inner sides
    std::string designator;                                                  // "27"
    bool edge_lights = false, approach_lights = false;
    CountrysideView countryside{};

    friend bool operator==(const RunwayView&, const RunwayView&) = default;
};

// The light of the hour, the air and the weather, in finished figures.
struct SkyView {
    enum class Light { day, low_sun, dusk, night };

    Light light = Light::day;
    bool ground_lights = true;  // houses, roads and villages lit at dusk and night
    bool overcast = false, rain = false;
    double visibility_m = 30000;  // meteorological
    double threshold_lux = 1e-4;  // least illuminance at the eye that is noticed as a light
    double lights_setting = 1;    // share of full intensity at which runway lights are run
    double headwind_mps = 0;      // at the windsock
    double time_s = 0;            // since the start, for what moves outside
};

// One lamp unit of the visual-approach lights as the eye sees it now.
struct LampView {
    double x_m = 0, y_m = 0, z_m = 0;
    double white_fraction = 0;  // 0 red ... 1 white
    bool shows = false;         // false: out, or seen from behind
    // Decades of illuminance at the eye above the least that is noticed (Allard's law): 0 or less, unseen.
    double brightness = 3;
};

// The path help: a bar beside the runway, where the aim point belongs.
struct PathHelpView {
    double opacity = 0;       // 0: not shown
    double over_aim_rad = 0;  // how far it stands over the aim point as seen; below it, negative
};

// A larger aircraft ahead on the same final, in the frame of the camera.
struct LeaderView {
    bool there = false;
    double x_m = 0, z_m = 0;                      // of its main wheels
    double pitch_rad = 0;                         // of its body above the horizon
    double span_m = 34;                           // of its wings; all else is in proportion
    double since_touchdown_s = -1;                // for the puff of its tyres; negative: still flying
    double touchdown_x_m = 0, touchdown_z_m = 0;  // where it lands, on the runway
    double path_rad = 0;                          // of the line that its wheels come down on, positive
    bool path_shown = false;                      // only on reveal
};

struct SceneView {
    CameraView camera;
    RunwayView runway;
    std::array<LampView, 8> lamps{};
    int lamp_count = 0;
    double look_over_rad = 0;   // angle below the body axis down to the nose line, positive
    double body_pitch_rad = 0;  // the nose line sits at body_pitch_rad - look_over_rad above the horizon
    LeaderView leader;
    SkyView sky;
    bool reduced_motion = false;  // nothing outside moves by itself, no rain on the screen
    bool magnifier = true;        // the lights' inset, where they are too close together to be told apart
    bool lamp_letters = false;    // R and W beside the lamps of the magnifier
    bool lamp_shapes = false;     // red as rings, white as discs, in the magnifier
    PathHelpView path_help;
};

}  // namespace slopewise
