#include "ui/scene/designation.h"

#include <array>
#include <cmath>
#include <span>

namespace slopewise {

namespace {

// Middle lines of the strokes in a unit box: across, then up.
struct Node {
    double across, up;
};
using Path = std::span<const Node>;

constexpr double c = 0.24, k = 0.13;  // how much of a corner is cut, across and up

constexpr Node ring[] = {{c, 0}, {1 - c, 0}, {1, k}, {1, 1 - k}, {1 - c, 1},
                         {c, 1}, {0, 1 - k}, {0, k}, {c, 0}};
constexpr Node one_stem[] = {{0.5, 0}, {0.5, 1}, {0.16, 0.84}};
constexpr Node two[] = {{1, 0}, {0, 0}, {0, 0.15}, {1, 0.60}, {1, 1 - k}, {1 - c, 1}, {c, 1}, {0, 1 - k}};
constexpr Node three_low[] = {{0, k}, {c, 0}, {1 - c, 0}, {1, k}, {1, 0.40}, {0.80, 0.52}, {0.34, 0.52}};
constexpr Node three_high[] = {{0.80, 0.52}, {1, 0.64}, {1, 1 - k}, {1 - c, 1}, {c, 1}, {0, 1 - k}};
constexpr Node four[] = {{1, 0.30}, {0, 0.30}, {0.62, 1}};
constexpr Node four_stem[] = {{0.72, 0}, {0.72, 0.62}};
constexpr Node five[] = {{1, 1}, {0.04, 1},  {0.04, 0.56}, {1 - c, 0.56}, {1, 0.45},
                         {1, k}, {1 - c, 0}, {c, 0},       {0, k}};
constexpr Node six[] = {{1, 1 - k}, {1 - c, 1}, {c, 1},    {0, 1 - k},    {0, k},   {c, 0},
                        {1 - c, 0}, {1, k},     {1, 0.43}, {1 - c, 0.55}, {0, 0.55}};
constexpr Node seven[] = {{0, 1}, {1, 1}, {1, 0.86}, {0.36, 0}};
constexpr Node eight_waist[] = {{0.06, 0.52}, {0.94, 0.52}};
constexpr Node nine[] = {{0, k}, {c, 0},     {1 - c, 0}, {1, k},    {1, 1 - k}, {1 - c, 1},
                         {c, 1}, {0, 1 - k}, {0, 0.57},  {c, 0.45}, {1, 0.45}};
constexpr Node letter_l[] = {{0.1, 1}, {0.1, 0}, {1, 0}};
constexpr Node letter_c[] = {{1, k}, {1 - c, 0}, {c, 0}, {0, k}, {0, 1 - k}, {c, 1}, {1 - c, 1}, {1, 1 - k}};
constexpr Node letter_r[] = {{0, 0}, {0, 1}, {1 - c, 1}, {1, 1 - k}, {1, 0.60}, {1 - c, 0.48}, {0, 0.48}};
constexpr Node letter_r_leg[] = {{0.5, 0.48}, {1, 0}};

constexpr Path zero_paths[] = {ring}, one_paths[] = {one_stem}, two_paths[] = {two},
               three_paths[] = {three_low, three_high}, four_paths[] = {four, four_stem},
               five_paths[] = {five}, six_paths[] = {six}, seven_paths[] = {seven},
               eight_paths[] = {ring, eight_waist}, nine_paths[] = {nine}, l_paths[] = {letter_l},
               c_paths[] = {letter_c}, r_paths[] = {letter_r, letter_r_leg};

std::span<const Path> paths_of(char character) {
    switch (character) {
    case '0': return zero_paths;
    case '1': return one_paths;
    case '2': return two_paths;
    case '3': return three_paths;
    case '4': return four_paths;
    case '5': return five_paths;
    case '6': return six_paths;
    case '7': return seven_paths;
    case '8': return eight_paths;
    case '9': return nine_paths;
    case 'L': return l_paths;
    case 'C': return c_paths;
    case 'R': return r_paths;
    default: return {};
    }
}

constexpr double box_width_m = 6.0, gap_m = 4.2;
// Strokes run deeper along the runway than across it: the eye sees them foreshortened.
constexpr double stroke_across_m = 1.7, stroke_along_m = 3.0;
constexpr double letter_gap_m = 9.0;

bool is_letter(char character) { return character >= 'A'; }

// A path thickened: one piece a segment, joined along the bisector of each bend.
void thicken(Path path, double foot_m, double middle_m, double scale, std::vector<StrokePiece>& out) {
    const double wide_m = (box_width_m - stroke_across_m) * scale,
                 tall_m = designation_height_m - stroke_along_m;
    const double squash =
        stroke_across_m * scale / stroke_along_m;  // makes the stroke equally thick both ways
    struct Flat {
        double x, y;
    };
    const auto flat = [&](const Node& n) {
        return Flat{(stroke_along_m / 2 + n.up * tall_m) * squash, (n.across - 0.5) * wide_m};
    };
    const double half = stroke_across_m * scale / 2;

    const auto offset = [&](std::size_t i) {
        const bool closed = path.size() > 2 && std::abs(path.front().across - path.back().across) < 1e-9 &&
                            std::abs(path.front().up - path.back().up) < 1e-9;
        const std::size_t last = path.size() - 1;
        const Flat here = flat(path[i]);
        const bool has_before = i > 0 || closed, has_after = i < last || closed;
        const Flat before = has_before ? flat(path[i > 0 ? i - 1 : last - 1]) : here;
        const Flat after = has_after ? flat(path[i < last ? i + 1 : 1]) : here;
        const auto normal = [](const Flat& a, const Flat& b) {
            const double length = std::hypot(b.x - a.x, b.y - a.y);
            return Flat{-(b.y - a.y) / length, (b.x - a.x) / length};
        };
        Flat n1 = has_before ? normal(before, here) : normal(here, after);
        const Flat n2 = has_after ? normal(here, after) : n1;
        const double mx = (n1.x + n2.x) / 2, my = (n1.y + n2.y) / 2;
        const double stretch = half / std::max(0.25, mx * mx + my * my);
        return Flat{mx * stretch, my * stretch};
    };
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        const Flat a = flat(path[i]), b = flat(path[i + 1]);
        const Flat oa = offset(i), ob = offset(i + 1);
        const auto world = [&](double x, double y) {
            return WorldPoint{foot_m + x / squash, middle_m + y, 0};
        };
        out.push_back({{world(a.x + oa.x, a.y + oa.y), world(b.x + ob.x, b.y + ob.y),
                        world(b.x - ob.x, b.y - ob.y), world(a.x - oa.x, a.y - oa.y)}});
    }
}

}  // namespace

double designation_length_m(std::string_view designator) {
    const bool lettered = !designator.empty() && is_letter(designator.back());
    return designation_height_m + (lettered ? designation_height_m + letter_gap_m : 0.0);
}

std::vector<StrokePiece> designation_strokes(std::string_view designator, double scale) {
    std::vector<StrokePiece> out;
    const bool lettered = !designator.empty() && is_letter(designator.back());
    double foot_m = 0;
    if (lettered) {
        for (const Path& path : paths_of(designator.back())) thicken(path, 0.0, 0.0, scale, out);
        designator.remove_suffix(1);
        foot_m = designation_height_m + letter_gap_m;
    }
    const double pitch_m = (box_width_m + gap_m) * scale;
    double middle_m = -pitch_m * (static_cast<double>(designator.size()) - 1) / 2;
    for (const char character : designator) {
        for (const Path& path : paths_of(character)) thicken(path, foot_m, middle_m, scale, out);
        middle_m += pitch_m;
    }
    return out;
}

std::string opposite_designator(std::string_view designator) {
    int number = 0, digits = 0;
    while (static_cast<std::size_t>(digits) < designator.size() &&
           designator[static_cast<std::size_t>(digits)] >= '0' &&
           designator[static_cast<std::size_t>(digits)] <= '9') {
        number = number * 10 + (designator[static_cast<std::size_t>(digits++)] - '0');
    }
    if (digits == 0) return {};
    const int other = number > 18 ? number - 18 : number + 18;
    std::string out{static_cast<char>('0' + other / 10), static_cast<char>('0' + other % 10)};
    const char letter = static_cast<std::size_t>(digits) < designator.size()
                            ? designator[static_cast<std::size_t>(digits)]
                            : ' ';
    if (letter == 'L') out += 'R';
    if (letter == 'R') out += 'L';
    if (letter == 'C') out += 'C';
    return out;
}

}  // namespace slopewise
