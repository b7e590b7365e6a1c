#include "ui/scene/rain.h"
#include "ui/scene/round_shapes.h"

#include <cmath>

#include "base/interpolate.h"
#include "base/random.h"

namespace slopewise {

namespace {

constexpr int drops = 42;
constexpr double life_s = 5.0;

struct Drop {
    double x_share, y_share, radius, run, age;  // age 0 ... 1 of its life
};

// Drop number `index` at a time: every life it lands elsewhere.
Drop drop_at(int index, double time_s) {
    const double lives = time_s / life_s + index * (1.0 / drops);
    const double life = std::floor(lives);
    Random random{static_cast<std::uint64_t>(index) * 7919u + static_cast<std::uint64_t>(life) * 104729u};
    Drop drop;
    drop.x_share = next_uniform(random);
    drop.y_share = next_uniform(random);
    drop.radius = 2.2 + 4.2 * square(next_uniform(random));
    drop.run = next_uniform(random) < 0.45 ? 12.0 + 40.0 * next_uniform(random) : 0.0;
    drop.age = lives - life;
    return drop;
}

}  // namespace

void draw_rain(const Painter& painter, double time_s) {
    const PixelRectangle& frame = painter.visible;
    const Rgb pale = mix(painter.light.sky[1].colour, {1, 1, 1}, 0.35);
    const Rgb dark = scaled(painter.light.haze.colour, 0.55);
    const double unit = painter.grain_px;
    for (int i = 0; i < drops; ++i) {
        const Drop drop = drop_at(i, time_s);
        const double seen = smooth_step(drop.age, 0.0, 0.08) * (1.0 - smooth_step(drop.age, 0.7, 1.0));
        // The airflow carries a running drop upwards.
        const double run_px = drop.run * unit * smooth_step(drop.age, 0.35, 0.95);
        const ScreenPoint place{lerp(frame.left_px, frame.right_px, drop.x_share),
                                lerp(frame.top_px, frame.bottom_px, drop.y_share) - run_px};
        const double radius_px = drop.radius * unit;
        if (run_px > 1.0)
            thin_line(painter, place, {place.x_px, place.y_px + run_px}, radius_px * 0.5, radius_px * 0.15,
                      pale, 0.30 * seen);
        soft_patch(painter, {place.x_px, place.y_px - radius_px * 0.3}, radius_px * 1.5, radius_px * 1.6,
                   dark, 0.50 * seen);
        soft_patch(painter, {place.x_px, place.y_px + radius_px * 0.35}, radius_px, radius_px * 0.9, pale,
                   0.75 * seen);
    }
}

}  // namespace slopewise
