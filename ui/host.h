// What the program asks of the outside: kept texts, files handed over, the page around the canvas.
// The browser and the desktop each give one.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ui/class_channel.h"
#include "ui/logbook_store.h"
#include "ui/view.h"

namespace slopewise {

enum class HostEvent {
    hidden,          // nobody can see the program now: the flight pauses
    storage_failed,  // a kept text could not be written
    update_waits,    // a newer version is loaded and waits to be taken
    picture_lost,    // nothing can be drawn for now
};

// A text that came from outside: the page's own address, a file that was chosen.
struct HostText {
    enum class Kind {
        link,        // name: empty
        file,        // name: the file's
        unread_file  // name: the file's; text: why it cannot be read
    };
    Kind kind = Kind::link;
    std::string name;
    std::string text;
};

// Longer files are not read.
inline constexpr std::size_t most_file_bytes = std::size_t{1} << 20;

class Host {
public:
    virtual ~Host() = default;

    virtual std::vector<HostEvent> take_events() = 0;

    // A small text kept on this device under a key; empty when there is none.
    virtual std::string load(std::string_view key) = 0;
    virtual void save(std::string_view key, std::string_view text) = 0;

    // Where attempts are kept.
    virtual LogbookStore& logbook() = 0;

    // To another window of this machine.
    virtual ClassChannel& class_channel() { return no_class_channel(); }

    // Milliseconds since 1970 in UTC, how many seconds the clock on the wall is ahead of UTC now, and a
    // number drawn at random: for what an attempt is called and when it was flown.
    virtual std::int64_t now_unix_ms() = 0;
    virtual std::int64_t ahead_of_utc_s() { return 0; }
    virtual std::uint32_t random() = 0;

    // The machine asks for less motion on the screen.
    virtual bool prefers_reduced_motion() { return false; }

    // Where there are fingers but no keyboard, a short text is written in a window of the machine's own,
    // which brings up its keys. Empty when the user wants none.
    virtual bool writes_by_finger() { return false; }
    virtual std::optional<std::string> ask_text(std::string_view /*question*/) { return std::nullopt; }

    // The whole screen for the program, or no longer. A browser fills it from within what a hand just did: at
    // once where it lets us, else when the hand next lets go.
    virtual bool can_fill_screen() { return false; }
    virtual void toggle_full_screen() {}

    // Hands a file to the user: a download, or a file beside the program.
    virtual void offer_file(std::string_view name, std::string_view media_type, std::string_view text) = 0;

    // Lets the user choose a file of at most 1 MiB; it comes by `take_texts`.
    virtual void choose_text_file() = 0;
    // Texts that came since the last call, in their order; of the page's address, its part after the '#',
    // when it carries a lesson.
    virtual std::vector<HostText> take_texts() = 0;

    // The page's address without what stands after its '#'; empty where there is no page.
    virtual std::string page_address() { return {}; }
    // Puts words where they can be pasted from; where that is not allowed they are shown to be copied by
    // hand.
    virtual void copy_text(std::string_view words) = 0;

    // Which build of the program this is, in eight letters and figures; empty where none was stamped.
    virtual std::string build_id() { return {}; }
    // Loads the newer version that waits: the program begins anew.
    virtual void take_update() {}
    // Where all of this is kept, in words: "this browser, on this device".
    virtual std::string kept_where() { return "this program's memory"; }
    // Everything kept on this device goes: settings, logbook, own lessons. The program begins anew.
    virtual void erase_all() {}
    // Shows the licences of every part that ships; false where there is nothing to show them in.
    virtual bool open_licences() { return false; }

    // What is to be heard from now on.
    virtual void play(const SoundView& sound) = 0;

    // Words to be spoken once, where the machine has a voice; elsewhere nothing is heard of them.
    virtual void speak(std::string_view) {}

    // The current screen as plain text, for screen readers and tests: what is told when it changes, and
    // the instruments, which are there to be read but never spoken unasked.
    virtual void show_mirror(std::string_view screen, std::string_view instruments) = 0;
};

}  // namespace slopewise
