#include "ui/platform/devices.h"

#include <SDL2/SDL.h>

namespace slopewise {
namespace {

struct Devices {
    SDL_AudioDeviceID audio = 0;
    SDL_Joystick* stick = nullptr;
    SoundState sound;
    SoundView wanted;  // guarded by SDL_LockAudioDevice
};
Devices devices;  // SDL's audio callback needs a place to find it

void fill(void*, Uint8* bytes, int length) {
    const auto samples = static_cast<std::size_t>(length) / sizeof(float);
    synthesise(devices.sound, devices.wanted, {reinterpret_cast<float*>(bytes), samples});
}

void open_sound() {
    if (SDL_InitSubSystem(SDL_INIT_AUDIO) != 0) return;
    SDL_AudioSpec wanted{};
    wanted.freq = sound_rate_hz;
    wanted.format = AUDIO_F32SYS;
    wanted.channels = 1;
    wanted.samples = 1024;
    wanted.callback = fill;
    devices.audio = SDL_OpenAudioDevice(nullptr, 0, &wanted, nullptr, 0);
    if (devices.audio != 0) SDL_PauseAudioDevice(devices.audio, 0);
}

// Controllers come and go; the first one found is the stick.
void follow_controllers() {
    SDL_JoystickUpdate();
    if (devices.stick != nullptr && SDL_JoystickGetAttached(devices.stick) == SDL_FALSE) {
        SDL_JoystickClose(devices.stick);
        devices.stick = nullptr;
    }
    if (devices.stick == nullptr && SDL_NumJoysticks() > 0) devices.stick = SDL_JoystickOpen(0);
}

}  // namespace

void open_devices() {
    SDL_SetHint(SDL_HINT_NO_SIGNAL_HANDLERS, "1");  // Ctrl-C ends the program, as everywhere
    open_sound();
    SDL_InitSubSystem(SDL_INIT_JOYSTICK);
}

void close_devices() {
    if (devices.audio != 0) SDL_CloseAudioDevice(devices.audio);
    if (devices.stick != nullptr) SDL_JoystickClose(devices.stick);
    SDL_Quit();
}

void play(const SoundView& sound) {
    if (devices.audio == 0) return;
    SDL_LockAudioDevice(devices.audio);
    devices.wanted = sound;
    SDL_UnlockAudioDevice(devices.audio);
}

std::optional<double> controller_stick() {
    follow_controllers();
    if (devices.stick == nullptr || SDL_JoystickNumAxes(devices.stick) < 2) return std::nullopt;
    return SDL_JoystickGetAxis(devices.stick, 1) / 32767.0;  // axis 1: fore and aft, back positive
}

}  // namespace slopewise
