#include "ui/scene/runway_markings.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/interpolate.h"
#include "base/random.h"
#include "base/units.h"
#include "ui/scene/designation.h"

namespace slopewise {

namespace {

// Threshold stripes: AIM 2-3-3 h for their number; Horonjeff's text for their size.
struct StripeRow {
    double width_ft;
    int stripes;
};
constexpr StripeRow stripe_table[] = {{60, 4}, {75, 6}, {100, 8}, {150, 12}, {200, 16}};
constexpr double stripe_length_m = m_from_ft(150), stripe_width_m = m_from_ft(5.75),
                 stripe_start_m = m_from_ft(20);
constexpr double stripe_middle_gap_m = m_from_ft(11.5);

constexpr double number_gap_m = m_from_ft(40);  // before and after the designation
constexpr double dash_m = m_from_ft(120), dash_gap_m = m_from_ft(80), dash_width_m = 0.6;  // centreline
constexpr double edge_line_m = 0.6;

constexpr Rgb asphalt = rgb_from_bytes(96, 98, 101);
constexpr Rgb paint = rgb_from_bytes(226, 225, 217);
constexpr Rgb dark_wear = rgb_from_bytes(58, 59, 62);
constexpr Rgb pale_wear = rgb_from_bytes(122, 123, 122);
constexpr Rgb verge = rgb_from_bytes(150, 150, 118);

class Draughtsman {
public:
    explicit Draughtsman(const RunwayView& runway) : runway_(runway) {}

    RunwayPicture draw() {
        const double length_m = runway_.length_m, half_m = runway_.width_m / 2;
        rectangle(RunwayMark::Kind::shoulder, -4, length_m + 4, -half_m - 2.2, half_m + 2.2, verge, 0.75);
        rectangle(RunwayMark::Kind::asphalt, 0, length_m, -half_m, half_m, asphalt, 1);
        wear();
        patches();
        for (const double side : {-1.0, 1.0}) {
            const double outer_m = side * (half_m - 0.3), inner_m = outer_m - side * edge_line_m;
            rectangle(RunwayMark::Kind::edge_line, 0, length_m, std::min(outer_m, inner_m),
                      std::max(outer_m, inner_m), paint, 0.85);
        }
        // The far end first; everything there is turned about.
        const double far_clear_m = end_markings(opposite_designator(runway_.designator), true);
        const double near_clear_m = clear_of_number_m(runway_.designator);
        centreline(near_clear_m, length_m - far_clear_m);
        aiming_point(true);
        aiming_point(false);
        end_markings(runway_.designator, false);
        return std::move(picture_);
    }

private:
    double height_m(double x_m) const { return runway_.slope * std::clamp(x_m, 0.0, runway_.length_m); }

    void polygon(RunwayMark::Kind kind, std::span<const WorldPoint> shape, const Rgb& colour, double alpha) {
        RunwayMark mark{kind, static_cast<std::uint32_t>(picture_.corners.size()),
                        static_cast<std::uint32_t>(shape.size()), colour, alpha};
        for (WorldPoint p : shape) {
            p.z_m = height_m(p.x_m);
            picture_.corners.push_back(p);
        }
        picture_.marks.push_back(mark);
    }

    void rectangle(RunwayMark::Kind kind, double from_m, double to_m, double left_m, double right_m,
                   const Rgb& colour, double alpha) {
        const WorldPoint shape[] = {
            {from_m, left_m, 0}, {from_m, right_m, 0}, {to_m, right_m, 0}, {to_m, left_m, 0}};
        polygon(kind, shape, colour, alpha);
    }

    // Tyre marks where aeroplanes touch down, and the paler strips between the wheel tracks.
    void wear() {
        const double length_m = runway_.length_m, half_m = runway_.width_m / 2;
        for (const double side : {-1.0, 1.0}) {
            rectangle(RunwayMark::Kind::wear, 0, length_m, std::min(side * half_m * 0.55, side * half_m),
                      std::max(side * half_m * 0.55, side * half_m), pale_wear, 0.25);
        }
        const double aim_m = runway_.aim_distance_m;
        const auto lozenge = [this](double from_m, double to_m, double middle_m, double half_width_m,
                                    double alpha) {
            if (to_m > runway_.length_m) return;
            const double reach_m = to_m - from_m;
            const WorldPoint shape[] = {{from_m, middle_m - half_width_m * 0.2, 0},
                                        {from_m, middle_m + half_width_m * 0.2, 0},
                                        {from_m + reach_m * 0.3, middle_m + half_width_m, 0},
                                        {from_m + reach_m * 0.6, middle_m + half_width_m, 0},
                                        {to_m, middle_m + half_width_m * 0.2, 0},
                                        {to_m, middle_m - half_width_m * 0.2, 0},
                                        {from_m + reach_m * 0.6, middle_m - half_width_m, 0},
                                        {from_m + reach_m * 0.3, middle_m - half_width_m, 0}};
            polygon(RunwayMark::Kind::wear, shape, dark_wear, alpha);
        };
        // Many faint streaks, each begun and ended elsewhere: the edge of the dark is not a line.
        struct Streak {
            double from_m, to_m, middle_m, half_width_m;
        };
        constexpr Streak streaks[] = {{-150, 330, 2.1, 0.5}, {-95, 420, 2.9, 0.7}, {-60, 260, 3.7, 0.6},
                                      {-120, 200, 1.3, 0.4}, {-30, 480, 2.5, 0.9}, {10, 300, 3.2, 1.1},
                                      {-70, 380, 0.4, 0.5}};
        for (const double side : {-1.0, 1.0}) {
            for (const Streak& s : streaks)
                lozenge(aim_m + s.from_m + side * 13.0, aim_m + s.to_m - side * 21.0, side * s.middle_m,
                        s.half_width_m, 0.17);
        }
        for (double x = 90; x < length_m - 60; x += 145)
            rectangle(RunwayMark::Kind::wear, x, x + 0.8, -half_m, half_m, dark_wear, 0.45);  // joints
    }

    // Sealed cracks, repairs and stains: seen only from near, they stream by in the flare.
    void patches() {
        Random random{static_cast<std::uint64_t>(runway_.length_m) + 31u};
        const double half_m = runway_.width_m / 2 - 1.2;
        for (double x = 12; x < runway_.length_m - 12; x += 5.0 + 9.0 * next_uniform(random)) {
            const double long_m = 0.8 + 4.0 * square(next_uniform(random)),
                         wide_m = 0.3 + 1.6 * next_uniform(random);
            const double y = (2.0 * next_uniform(random) - 1.0) * (half_m - wide_m);
            const Rgb colour = next_uniform(random) < 0.6 ? dark_wear : pale_wear;
            rectangle(RunwayMark::Kind::wear, x, x + long_m, y, y + wide_m, colour, 0.42);
            picture_.marks.back().seen_within_m = 520.0;
        }
    }

    // From the threshold to where the designation, and the gap after it, end.
    static double clear_of_number_m(std::string_view designator) {
        return stripe_start_m + stripe_length_m + number_gap_m + designation_length_m(designator) +
               number_gap_m;
    }

    // Threshold stripes and designation of one end, on top of the rest.
    double end_markings(std::string_view designator, bool far_end) {
        // Measured from the end in question; the far end is the near end turned half about.
        const auto place = [&](double from_end_m, double right_m) {
            return far_end ? WorldPoint{runway_.length_m - from_end_m, -right_m, 0}
                           : WorldPoint{from_end_m, right_m, 0};
        };
        const int count = threshold_stripe_count(runway_.width_m);
        for (int i = 0; i < count / 2; ++i) {
            const double inner_m = stripe_middle_gap_m / 2 + i * 2 * stripe_width_m,
                         outer_m = inner_m + stripe_width_m;
            for (const double side : {-1.0, 1.0}) {
                const WorldPoint shape[] = {place(stripe_start_m, side * inner_m),
                                            place(stripe_start_m, side * outer_m),
                                            place(stripe_start_m + stripe_length_m, side * outer_m),
                                            place(stripe_start_m + stripe_length_m, side * inner_m)};
                polygon(RunwayMark::Kind::threshold_stripe, shape, paint, 0.94);
            }
        }
        const double foot_m = stripe_start_m + stripe_length_m + number_gap_m;
        const double scale = std::min(1.0, runway_.width_m / 21.0);
        for (const StrokePiece& piece : designation_strokes(designator, scale)) {
            WorldPoint shape[4];
            for (std::size_t i = 0; i < 4; ++i)
                shape[i] = place(foot_m + piece.corner[i].x_m, piece.corner[i].y_m);
            polygon(RunwayMark::Kind::digit, shape, paint, 0.94);
        }
        return clear_of_number_m(designator);
    }

    void centreline(double from_m, double to_m) {
        for (double x = from_m; x + dash_m <= to_m; x += dash_m + dash_gap_m) {
            rectangle(RunwayMark::Kind::centreline, x, x + dash_m, -dash_width_m / 2, dash_width_m / 2, paint,
                      0.85);
        }
    }

    void aiming_point(bool far_end) {
        const double from_end_m =
            far_end ? runway_.length_m - runway_.aim_distance_m : runway_.aim_distance_m;
        if (far_end && runway_.length_m < 4 * runway_.aim_distance_m)
            return;  // too short to be marked at both ends
        const double reach_m = far_end ? -runway_.aim_mark_length_m : runway_.aim_mark_length_m;
        const double from_m = std::min(from_end_m, from_end_m + reach_m),
                     to_m = std::max(from_end_m, from_end_m + reach_m);
        const double inner_m = runway_.aim_mark_gap_m / 2, outer_m = inner_m + runway_.aim_mark_width_m;
        rectangle(RunwayMark::Kind::aiming_point, from_m, to_m, -outer_m, -inner_m, paint, 0.97);
        rectangle(RunwayMark::Kind::aiming_point, from_m, to_m, inner_m, outer_m, paint, 0.97);
    }

    const RunwayView& runway_;
    RunwayPicture picture_;
};

}  // namespace

int threshold_stripe_count(double width_m) {
    // Metric widths stand a little under the foot widths of the table (30 m for 100 ft): 2 % is allowed.
    int count = stripe_table[0].stripes;
    for (const StripeRow& row : stripe_table) {
        if (ft_from_m(width_m) * 1.02 >= row.width_ft) count = row.stripes;
    }
    return count;
}

RunwayPicture make_runway_picture(const RunwayView& runway) { return Draughtsman(runway).draw(); }

void draw_runway(const Painter& painter, const RunwayPicture& picture) {
    for (const RunwayMark& mark : picture.marks) {
        const std::span<const WorldPoint> shape = picture.at(mark);
        const double away_m = shape.front().x_m - painter.projection.eye_x_m;
        if (away_m > mark.seen_within_m) continue;
        const double fade = smooth_step(mark.seen_within_m - away_m, 0.0, 0.4 * mark.seen_within_m);
        fill(painter, shape, mark.colour, Edge::coverage, mark.alpha * fade);
    }
}

}  // namespace slopewise
