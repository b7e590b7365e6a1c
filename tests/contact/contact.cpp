// Draws the view from the approach at every airfield, in every light and from several distances, as PPM
// files:
//
//   contact_sheet FOLDER [AIRFIELD [LIGHT [DISTANCE]]] [--width=PIXELS]
//
// tests/contact/sheet makes one picture of them all.
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "base/units.h"
#include "tests/contact/rasterise.h"
#include "tests/contact/stills.h"

using namespace slopewise;

int main(int count, char** words) {
    std::vector<std::string_view> wanted;
    int width = 960;
    for (int i = 1; i < count; ++i) {
        const std::string_view word = words[i];
        if (word.starts_with("--width=")) {
            width = std::atoi(words[i] + 8);
        } else {
            wanted.push_back(word);
        }
    }
    if (wanted.empty() || width < 64 || width > 8192) {
        std::fputs("usage: contact_sheet FOLDER [AIRFIELD [LIGHT [DISTANCE]]] [--width=PIXELS]\n", stderr);
        return 2;
    }
    const auto asked = [&wanted](std::size_t place, std::string_view name) {
        return wanted.size() <= place || wanted[place] == name || wanted[place] == "all";
    };
    const Darkroom darkroom(width, width * 547 / 1280);  // what the shelf leaves of a 16:9 window
    for (const Runway& runway : darkroom.runways()) {
        for (const Weathering& weather : weatherings()) {
            for (const Station& station : stations()) {
                if (!asked(1, runway.id) || !asked(2, weather.name) || !asked(3, station.name)) continue;
                const SceneView scene = still(runway, weather.outlook, station);
                const std::string path = std::string(wanted[0]) + "/" + runway.id + "-" + weather.name + "-" +
                                         station.name + ".ppm";
                if (!write_ppm(darkroom.draw(scene), path)) {
                    std::fprintf(stderr, "cannot write %s\n", path.c_str());
                    return 1;
                }
            }
        }
    }
    return 0;
}
