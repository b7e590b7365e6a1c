// The Dryden turbulence of MIL-F-8785C at low altitude: lengths, intensities, and what the filters make of
// them.
#include <cmath>
#include <vector>

#include "base/exact_math.h"
#include "base/units.h"
#include "tests/check.h"
#include "world/air_event.h"
#include "world/turbulence.h"

using namespace slopewise;

namespace {

struct Series {
    std::vector<double> along, up;
};

// Gusts met at one height and speed, a sample a step.
Series fly_through(const DrydenScales& scales, double tas_mps, double dt_s, std::size_t samples,
                   std::uint64_t seed) {
    Series series;
    Turbulence turbulence = begin_turbulence(seed);
    for (std::size_t i = 0; i < samples; ++i) {
        advance_turbulence(turbulence, scales, tas_mps, dt_s);
        const Gust gust = gust_of(turbulence, scales);
        series.along.push_back(gust.along_mps);
        series.up.push_back(gust.up_mps);
    }
    return series;
}

double variance_of(const std::vector<double>& values) {
    double sum = 0.0, squares = 0.0;
    for (const double value : values) {
        sum += value;
        squares += value * value;
    }
    const double count = static_cast<double>(values.size()), mean = sum / count;
    return squares / count - mean * mean;
}

// One-sided power at an angular frequency (per s), averaged over segments of so many samples and over the
// bins within 15 % of it.
double power_at(const std::vector<double>& values, double omega_radps, double dt_s, std::size_t segment) {
    double sum = 0.0;
    int count = 0;
    const double bin_radps = 2.0 * pi / (static_cast<double>(segment) * dt_s);
    const int low = static_cast<int>(std::ceil(0.85 * omega_radps / bin_radps));
    const int high = static_cast<int>(std::floor(1.15 * omega_radps / bin_radps));
    for (std::size_t start = 0; start + segment <= values.size(); start += segment) {
        for (int bin = low; bin <= high; ++bin) {
            double real = 0.0, imaginary = 0.0;
            for (std::size_t i = 0; i < segment; ++i) {
                const double phase = bin * bin_radps * dt_s * static_cast<double>(i);
                // A Hann window keeps the strong low frequencies from leaking into the weak high ones.
                const double window =
                    0.5 - 0.5 * std::cos(2.0 * pi * static_cast<double>(i) / static_cast<double>(segment));
                real += window * values[start + i] * std::cos(phase);
                imaginary += window * values[start + i] * std::sin(phase);
            }
            sum += real * real + imaginary * imaginary;
            ++count;
        }
    }
    const double window_power = 0.375 * static_cast<double>(segment);  // of Hann's
    return sum / count * dt_s / (pi * window_power);
}

}  // namespace

TEST_CASE("turbulence: lengths and intensities are those of MIL-F-8785C at 100 to 1,000 ft") {
    // Lw = h, Lu = h/(0.177 + 0.000823 h)^1.2, sigma_u/sigma_w = 1/(0.177 + 0.000823 h)^0.4 (two independent
    // public implementations; one more uses 1.2 in place of 0.4, which is wrong). sigma_w = 0.1 W20.
    const struct {
        double height_ft, length_ft, ratio;
    } rows[] = {{100.0, 505.2, 1.716}, {200.0, 725.8, 1.537}, {500.0, 944.7, 1.236}, {1000.0, 1000.0, 1.000}};
    for (const auto& row : rows) {
        CAPTURE(row.height_ft);
        const DrydenScales scales = dryden_scales(m_from_ft(row.height_ft), mps_from_kt(30.0));
        CHECK_NEAR(ft_from_m(scales.along_length_m), row.length_ft, 0.1);  // as printed
        CHECK_NEAR(ft_from_m(scales.vertical_length_m), row.height_ft, 1e-9);
        CHECK_NEAR(scales.along_sigma_mps / scales.vertical_sigma_mps, row.ratio, 0.0006);
        CHECK_NEAR(kt_from_mps(scales.vertical_sigma_mps), 3.0, 1e-9);
    }
}

TEST_CASE("turbulence: the variance is sigma squared, whatever the step and the speed") {
    // The discretisation is exact, so only chance is left: with N independent lengths the variance of an
    // estimate is about 2/N of its square. 40,000 lengths flown: 0.7 % one standard deviation, 3 % asked for.
    const struct {
        double height_ft, tas_mps, dt_s;
    } rows[] = {{200.0, 33.0, 1.0 / 120.0},
                {200.0, 33.0, 0.5},
                {200.0, 66.0, 0.1},
                {1000.0, 20.0, 1.0},
                {50.0, 45.0, 5.0}};
    for (const auto& row : rows) {
        CAPTURE(row.height_ft);
        CAPTURE(row.tas_mps);
        CAPTURE(row.dt_s);
        const DrydenScales scales = dryden_scales(m_from_ft(row.height_ft), mps_from_kt(30.0));
        const double length_m = scales.along_length_m > scales.vertical_length_m ? scales.along_length_m
                                                                                 : scales.vertical_length_m;
        const auto most = row.dt_s < 0.01 ? 4000000.0 : 40000.0 * length_m / (row.tas_mps * row.dt_s);
        const double flown_lengths = most * row.tas_mps * row.dt_s / length_m;
        const Series series = fly_through(scales, row.tas_mps, row.dt_s, static_cast<std::size_t>(most), 17);
        const double allowed =
            0.03 > 5.0 * std::sqrt(2.0 / flown_lengths) ? 0.03 : 5.0 * std::sqrt(2.0 / flown_lengths);
        CHECK_NEAR(variance_of(series.along) / (scales.along_sigma_mps * scales.along_sigma_mps), 1.0,
                   allowed);
        CHECK_NEAR(variance_of(series.up) / (scales.vertical_sigma_mps * scales.vertical_sigma_mps), 1.0,
                   allowed);
    }
}

TEST_CASE("turbulence: where nothing flies, nothing changes") {
    Turbulence state = begin_turbulence(3);
    const double along = state.along, second = state.vertical_second;
    advance_turbulence(state, dryden_scales(m_from_ft(200.0), mps_from_kt(30.0)), 0.0, 1.0 / 120.0);
    CHECK(state.along == along);
    CHECK(state.vertical_second == second);
}

TEST_CASE("turbulence: the spectra are Dryden's, from waves longer than the scale to much shorter ones") {
    // Along: sigma^2 (2 L/(pi V)) / (1 + (L w/V)^2); vertical: sigma^2 (L/(pi V)) (1 + 3 (L w/V)^2)/(1 + (L
    // w/V)^2)^2, one-sided in angular frequency w (MIL-F-8785C by way of the Modelica Standard Library's
    // documentation). An estimate averages over at least 250 independent bins, 6 % by chance; 15 % is
    // two and a half of that.
    const DrydenScales scales = dryden_scales(m_from_ft(300.0), mps_from_kt(30.0));
    const double tas_mps = 40.0, dt_s = 0.05;
    const Series series = fly_through(scales, tas_mps, dt_s, std::size_t{1} << 18, 5);
    for (const double reduced : {0.7, 1.5, 4.0, 10.0}) {
        CAPTURE(reduced);
        const double along_radps = reduced * tas_mps / scales.along_length_m;
        const double along = scales.along_sigma_mps * scales.along_sigma_mps * 2.0 * scales.along_length_m /
                             (pi * tas_mps) / (1.0 + reduced * reduced);
        CHECK_NEAR(power_at(series.along, along_radps, dt_s, 8192) / along, 1.0, 0.15);
        const double up_radps = reduced * tas_mps / scales.vertical_length_m;
        const double up = scales.vertical_sigma_mps * scales.vertical_sigma_mps * scales.vertical_length_m /
                          (pi * tas_mps) * (1.0 + 3.0 * reduced * reduced) /
                          ((1.0 + reduced * reduced) * (1.0 + reduced * reduced));
        CHECK_NEAR(power_at(series.up, up_radps, dt_s, 8192) / up, 1.0, 0.15);
    }
}

TEST_CASE("turbulence: one seed is one air, another seed another") {
    const DrydenScales scales = dryden_scales(m_from_ft(300.0), mps_from_kt(15.0));
    CHECK(fly_through(scales, 33.0, 0.1, 50, 3).up == fly_through(scales, 33.0, 0.1, 50, 3).up);
    CHECK(fly_through(scales, 33.0, 0.1, 50, 3).up != fly_through(scales, 33.0, 0.1, 50, 4).up);
}

TEST_CASE("gust: it rises by the 1-cosine shape to its peak and is gone after twice the distance") {
    // 14 CFR 25.341(a): U/2 (1 - cos(pi s/H)), H from 30 to 350 ft (the shape from memory: it is a picture
    // there).
    AirEvent gust{AirEvent::Kind::gust};
    gust.up_mps = 4.0;
    gust.length_m = m_from_ft(350.0);
    CHECK(air_event_gust(gust, 0.0).up_mps == 0.0);
    CHECK_NEAR(air_event_gust(gust, gust.length_m / 2.0).up_mps, 2.0, 1e-12);
    CHECK_NEAR(air_event_gust(gust, gust.length_m).up_mps, 4.0, 1e-12);
    CHECK(air_event_gust(gust, 2.0 * gust.length_m).up_mps == 0.0);
    CHECK_NEAR(gust.length_m / mps_from_kt(65.0), 3.19, 0.005);  // s to the peak at 65 kt
}

TEST_CASE("f-factor: a knot a second of shear costs 0.0525, 500 ft/min of downdraught at 65 kt 0.0760") {
    // Bowles 1990 by secondary sources: rate of change of tailwind over g, less updraught over airspeed.
    CHECK_NEAR(f_factor(mps_from_kt(1.0), 0.0, mps_from_kt(65.0)), 0.0525, 5e-5);
    CHECK_NEAR(f_factor(0.0, -mps_from_fpm(500.0), mps_from_kt(65.0)), 0.0760, 5e-5);
    // A shear by half a cosine is steepest in its middle: pi/2 times its mean rate.
    AirEvent shear{AirEvent::Kind::shear};
    shear.along_mps = -mps_from_kt(10.0);
    shear.length_m = 300.0;
    const double tas_mps = mps_from_kt(65.0), mean_rate = mps_from_kt(10.0) / (300.0 / tas_mps);
    CHECK_NEAR(largest_f_factor(shear, tas_mps), pi / 2.0 * mean_rate / gravity_mps2, 1e-4);
    AirEvent sink{AirEvent::Kind::sink_patch};
    sink.up_mps = -mps_from_fpm(500.0);
    sink.length_m = 400.0;
    CHECK_NEAR(largest_f_factor(sink, tas_mps), 0.0760, 1e-4);

    // A gust goes the whole way up and down: the steepest part of 1 - cos is the same going down.
    AirEvent gust{.kind = AirEvent::Kind::gust, .along_mps = shear.along_mps, .length_m = shear.length_m};
    CHECK_NEAR(largest_f_factor(gust, tas_mps), pi / 2.0 * mean_rate / gravity_mps2, 1e-4);
}
