#include "data/read_outlook.h"

namespace slopewise {

Outlook read_outlook(Fields fields) {
    Outlook outlook;
    if (fields.has("light")) outlook.light = static_cast<Daylight>(fields.one_of("light", daylight_names));
    outlook.ground_lights = fields.flag_or("ground_lights", outlook.ground_lights);
    outlook.visibility_m =
        1000.0 * fields.number_or("visibility_km", outlook.visibility_m / 1000.0, {1.0, 50.0});
    outlook.overcast = fields.flag_or("overcast", outlook.overcast);
    outlook.rain = fields.flag_or("rain", outlook.rain);
    fields.finish();
    return outlook;
}

}  // namespace slopewise
