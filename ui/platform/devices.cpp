#include "ui/platform/devices.h"

#include <SDL2/SDL.h>

#include "ui/platform/controllers.h"

namespace slopewise {
namespace {

struct Devices {
    bool sound_tried = false;
    SDL_AudioDeviceID audio = 0;
    bool audio_runs = false;
    SoundState sound;  // guarded by SDL_LockAudioDevice
};
Devices devices;  // SDL's audio callback needs a place to find it

void fill(void*, Uint8* bytes, int length) {
    const auto samples = static_cast<std::size_t>(length) / sizeof(float);
    synthesise(devices.sound, {reinterpret_cast<float*>(bytes), samples});
}

// Only when there is something to be heard: a browser lets a page sound only once somebody has pressed
// something in it, and no flight begins before that; who wants no sound has no device opened.
void open_sound() {
    devices.sound_tried = true;
    if (SDL_InitSubSystem(SDL_INIT_AUDIO) != 0) return;
    SDL_AudioSpec wanted{};
    wanted.freq = sound_rate_hz;
    wanted.format = AUDIO_F32SYS;
    wanted.channels = 1;
    wanted.samples = 1024;
    wanted.callback = fill;
    devices.audio = SDL_OpenAudioDevice(nullptr, 0, &wanted, nullptr, 0);
}

void run_sound(bool runs) {
    if (devices.audio_runs == runs) return;
    devices.audio_runs = runs;
    SDL_PauseAudioDevice(devices.audio, runs ? 0 : 1);
}

}  // namespace

void open_devices() {
    SDL_SetHint(SDL_HINT_NO_SIGNAL_HANDLERS, "1");  // Ctrl-C ends the program, as everywhere
    open_controllers();
}

void close_devices() {
    if (devices.audio != 0) SDL_CloseAudioDevice(devices.audio);
    close_controllers();
    SDL_Quit();
}

void play(const SoundView& sound) {
    const bool heard = sound.audible && sound.volume > 0.0 && sound.rpm > 0.0;
    if (heard && !devices.sound_tried) open_sound();
    if (devices.audio == 0) return;
    SDL_LockAudioDevice(devices.audio);
    tell(devices.sound, sound);
    const bool faded = silent(devices.sound);
    SDL_UnlockAudioDevice(devices.audio);
    if (heard) run_sound(true);
    else if (faded) run_sound(false);
}

}  // namespace slopewise
