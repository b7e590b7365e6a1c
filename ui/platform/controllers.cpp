#include "ui/platform/controllers.h"

#include <algorithm>
#include <array>
#include <limits>
#include <string_view>

#include <SDL2/SDL.h>

namespace slopewise {
namespace {

struct Opened {
    SDL_Joystick* joystick = nullptr;
    SDL_GameController* gamepad = nullptr;  // where SDL2 knows which of its parts is which
    ControllerReading reading;
};

struct Controllers {
    int count = 0;
    std::array<Opened, most_controllers> at{};
};
Controllers controllers;  // SDL2's devices are global too

// In the order of the W3C's standard gamepad; a trigger is a button there.
constexpr std::array<SDL_GameControllerButton, 17> gamepad_buttons{SDL_CONTROLLER_BUTTON_A,
                                                                   SDL_CONTROLLER_BUTTON_B,
                                                                   SDL_CONTROLLER_BUTTON_X,
                                                                   SDL_CONTROLLER_BUTTON_Y,
                                                                   SDL_CONTROLLER_BUTTON_LEFTSHOULDER,
                                                                   SDL_CONTROLLER_BUTTON_RIGHTSHOULDER,
                                                                   SDL_CONTROLLER_BUTTON_INVALID,
                                                                   SDL_CONTROLLER_BUTTON_INVALID,
                                                                   SDL_CONTROLLER_BUTTON_BACK,
                                                                   SDL_CONTROLLER_BUTTON_START,
                                                                   SDL_CONTROLLER_BUTTON_LEFTSTICK,
                                                                   SDL_CONTROLLER_BUTTON_RIGHTSTICK,
                                                                   SDL_CONTROLLER_BUTTON_DPAD_UP,
                                                                   SDL_CONTROLLER_BUTTON_DPAD_DOWN,
                                                                   SDL_CONTROLLER_BUTTON_DPAD_LEFT,
                                                                   SDL_CONTROLLER_BUTTON_DPAD_RIGHT,
                                                                   SDL_CONTROLLER_BUTTON_GUIDE};
constexpr std::array<SDL_GameControllerAxis, 4> gamepad_axes{
    SDL_CONTROLLER_AXIS_LEFTX, SDL_CONTROLLER_AXIS_LEFTY, SDL_CONTROLLER_AXIS_RIGHTX,
    SDL_CONTROLLER_AXIS_RIGHTY};

constexpr double full = 32767.0;
constexpr Sint16 trigger_down = 16384;

double share(Sint16 value) { return std::max(value / full, -1.0); }

// A browser gives axes and buttons in the standard order itself, or tells nothing of what they are; SDL2
// there takes everything for a gamepad.
bool is_browser() { return std::string_view(SDL_GetPlatform()) == "Emscripten"; }

bool is_open(SDL_JoystickID instance) {
    for (int i = 0; i < controllers.count; ++i)
        if (controllers.at[static_cast<std::size_t>(i)].reading.instance == instance) return true;
    return false;
}

void describe(Opened& one) {
    ControllerReading& reading = one.reading;
    SDL_Joystick* joystick = one.joystick;
    reading = {};
    reading.instance = SDL_JoystickInstanceID(joystick);
    const char* name = SDL_JoystickName(joystick);
    reading.name = controller_name(name != nullptr ? name : "");
    SDL_JoystickGetGUIDString(SDL_JoystickGetGUID(joystick), reading.id.data(),
                              static_cast<int>(reading.id.size()));
    const int own = SDL_JoystickNumAxes(joystick), buttons = SDL_JoystickNumButtons(joystick);
    if (one.gamepad != nullptr) {
        reading.axis_count = static_cast<int>(gamepad_axes.size());
        reading.button_count = static_cast<int>(gamepad_buttons.size());
    } else {
        reading.axis_count = std::min(own, most_axes);
        const int hats = std::min(SDL_JoystickNumHats(joystick), (most_axes - reading.axis_count) / 2);
        reading.hat_axes = 2 * std::max(hats, 0);
        reading.axis_count += reading.hat_axes;
        reading.button_count = std::min(buttons, most_buttons);
    }
    reading.gamepad =
        one.gamepad != nullptr || (is_browser() && own == 4 && (buttons == 16 || buttons == 17));
}

void open_new() {
    const int there = SDL_NumJoysticks();
    for (int i = 0; i < there && controllers.count < most_controllers; ++i) {
        if (is_open(SDL_JoystickGetDeviceInstanceID(i))) continue;
        Opened one;
        if (!is_browser() && SDL_IsGameController(i) == SDL_TRUE) one.gamepad = SDL_GameControllerOpen(i);
        one.joystick =
            one.gamepad != nullptr ? SDL_GameControllerGetJoystick(one.gamepad) : SDL_JoystickOpen(i);
        if (one.joystick == nullptr) continue;
        describe(one);
        controllers.at[static_cast<std::size_t>(controllers.count++)] = one;
    }
}

void close(Opened& one) {
    if (one.gamepad != nullptr) SDL_GameControllerClose(one.gamepad);
    else if (one.joystick != nullptr) SDL_JoystickClose(one.joystick);
    one = {};
}

void close_gone() {
    int kept = 0;
    for (int i = 0; i < controllers.count; ++i) {
        Opened& one = controllers.at[static_cast<std::size_t>(i)];
        if (SDL_JoystickGetAttached(one.joystick) == SDL_FALSE) {
            close(one);
            continue;
        }
        if (kept != i) controllers.at[static_cast<std::size_t>(kept)] = one;
        ++kept;
    }
    controllers.count = kept;
}

void read_gamepad(const Opened& one, ControllerReading& reading, std::uint32_t& down) {
    for (std::size_t i = 0; i < gamepad_axes.size(); ++i)
        reading.axes[i] = share(SDL_GameControllerGetAxis(one.gamepad, gamepad_axes[i]));
    for (std::size_t i = 0; i < gamepad_buttons.size(); ++i)
        if (gamepad_buttons[i] != SDL_CONTROLLER_BUTTON_INVALID &&
            SDL_GameControllerGetButton(one.gamepad, gamepad_buttons[i]) != 0)
            down |= std::uint32_t{1} << i;
    if (SDL_GameControllerGetAxis(one.gamepad, SDL_CONTROLLER_AXIS_TRIGGERLEFT) > trigger_down)
        down |= 1u << 6;
    if (SDL_GameControllerGetAxis(one.gamepad, SDL_CONTROLLER_AXIS_TRIGGERRIGHT) > trigger_down)
        down |= 1u << 7;
}

// Until an axis is told of it reads 0, where a lever never need be.
double axis_now(SDL_Joystick* joystick, int axis) {
    Sint16 first = 0;
    if (SDL_JoystickGetAxisInitialState(joystick, axis, &first) == SDL_FALSE)
        return std::numeric_limits<double>::quiet_NaN();
    return share(SDL_JoystickGetAxis(joystick, axis));
}

void read_joystick(const Opened& one, ControllerReading& reading, std::uint32_t& down) {
    const int own = reading.axis_count - reading.hat_axes;
    for (int i = 0; i < own; ++i) reading.axes[static_cast<std::size_t>(i)] = axis_now(one.joystick, i);
    for (int i = 0; i < reading.hat_axes / 2; ++i) {
        const Uint8 hat = SDL_JoystickGetHat(one.joystick, i);
        const auto at = static_cast<std::size_t>(own + 2 * i);
        reading.axes[at] = ((hat & SDL_HAT_RIGHT) != 0 ? 1.0 : 0.0) - ((hat & SDL_HAT_LEFT) != 0 ? 1.0 : 0.0);
        reading.axes[at + 1] =
            ((hat & SDL_HAT_DOWN) != 0 ? 1.0 : 0.0) - ((hat & SDL_HAT_UP) != 0 ? 1.0 : 0.0);
    }
    for (int i = 0; i < reading.button_count; ++i)
        if (SDL_JoystickGetButton(one.joystick, i) != 0) down |= std::uint32_t{1} << i;
}

}  // namespace

void open_controllers() {
    SDL_InitSubSystem(SDL_INIT_JOYSTICK | SDL_INIT_GAMECONTROLLER);
    // Nobody takes SDL2's events out of its queue: they would only fill it.
    SDL_JoystickEventState(SDL_IGNORE);
    SDL_GameControllerEventState(SDL_IGNORE);
}

void close_controllers() {
    for (int i = 0; i < controllers.count; ++i) close(controllers.at[static_cast<std::size_t>(i)]);
    controllers.count = 0;
}

ControllerReadings read_controllers_now() {
    SDL_JoystickUpdate();
    close_gone();
    open_new();
    ControllerReadings readings;
    readings.count = controllers.count;
    for (int i = 0; i < controllers.count; ++i) {
        Opened& one = controllers.at[static_cast<std::size_t>(i)];
        std::uint32_t down = 0;
        if (one.gamepad != nullptr) read_gamepad(one, one.reading, down);
        else read_joystick(one, one.reading, down);
        one.reading.pressed = down & ~one.reading.buttons;
        one.reading.buttons = down;
        readings.at[static_cast<std::size_t>(i)] = one.reading;
    }
    return readings;
}

}  // namespace slopewise
