// What the program asks of the outside: kept texts, files handed over, the page around the canvas.
// The browser and the desktop each give one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "ui/view.h"

namespace slopewise {

enum class HostEvent {
    hidden,          // nobody can see the program now: the flight pauses
    storage_failed,  // a kept text could not be written
};

class Host {
public:
    virtual ~Host() = default;

    virtual std::vector<HostEvent> take_events() = 0;

    // A small text kept on this device under a key; empty when there is none.
    virtual std::string load(std::string_view key) = 0;
    virtual void save(std::string_view key, std::string_view text) = 0;

    // The machine asks for less motion on the screen.
    virtual bool prefers_reduced_motion() { return false; }

    // Hands a file to the user: a download, or a file beside the program.
    virtual void offer_file(std::string_view name, std::string_view media_type, std::string_view text) = 0;

    // What is to be heard from now on.
    virtual void play(const SoundView& sound) = 0;

    // The current screen as plain text, for screen readers and tests: what is told when it changes, and
    // the instruments, which are there to be read but never spoken unasked.
    virtual void show_mirror(std::string_view screen, std::string_view instruments) = 0;
};

}  // namespace slopewise
