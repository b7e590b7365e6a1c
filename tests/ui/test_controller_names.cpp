// What controllers are called, where they are listed and on a sheet.
#include <doctest/doctest.h>

#include <string>

#include "ui/devices_used.h"

using namespace slopewise;

TEST_CASE("controllers: the devices used are told in words that a recording takes, whatever their names") {
    DevicesUsed used;
    CHECK(devices_words(used) == "no hand");
    mark(used, Device::keyboard);
    mark(used, Device::mouse);
    mark(used, Device::thumb_pads);
    CHECK(devices_words(used) == "keyboard, mouse, thumb pads");
    mark_controller(used, controller_name(std::string(500, 'a')));
    mark_controller(used, controller_name(std::string(500, 'a')));
    mark_controller(used, controller_name(std::string(500, 'b')));
    mark_controller(used, controller_name("c"));
    CHECK(devices_words(used).size() <= 200);
    CHECK(devices_words(used).ends_with(", more"));
}

TEST_CASE("controllers: of a name only whole letters that can be seen are taken") {
    CHECK(words_of(controller_name("Stick")) == "Stick");
    CHECK(words_of(controller_name("")) == "Controller");
    CHECK(words_of(controller_name("\x01\x02\xFF")) == "Controller");
    CHECK(words_of(controller_name("  A\tB  \n")) == "A B");
    CHECK(words_of(controller_name("h\xC3\xB6"
                                   "he\xC3")) == "h\xC3\xB6he");
    CHECK(words_of(controller_name("a\xED\xA0\x80z")) == "a z");  // half of a surrogate pair (RFC 3629)
    const ControllerName cut = controller_name(std::string(62, 'x') + "\xC3\xB6");
    CHECK(words_of(cut) == std::string(62, 'x'));  // no half letter at the end
}
