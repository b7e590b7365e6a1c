// How two windows of one machine hear each other, with no server between: texts to all pages that have joined
// a pair, and to all that are open at all, in a lobby. The browser gives one; a program with one window has
// none.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace slopewise {

// A longer text is not sent, nor taken.
inline constexpr std::size_t most_channel_bytes = std::size_t{8} << 20;

// 8 to 32 small letters and digits: the name of a pair, or of a page. Anything else is none.
inline bool is_pair_name(std::string_view name) {
    if (name.size() < 8 || name.size() > 32) return false;
    for (const char c : name)
        if (!(c >= 'a' && c <= 'z') && !(c >= '0' && c <= '9')) return false;
    return true;
}

struct ChannelText {
    bool lobby = false;
    std::string text;  // empty: more came than was kept, and all of it was dropped
};

class ClassChannel {
public:
    virtual ~ClassChannel() = default;

    // Whether there can be a second window.
    virtual bool there() const { return false; }

    // The pair that this page's address names: it is a class window. Empty: it is none.
    virtual std::string pair_of_address() const { return {}; }

    // The pair that this page was of before it was loaded again; empty: none. Kept with the page, not the
    // device.
    virtual std::string kept_pair() const { return {}; }
    virtual void keep_pair(std::string_view) {}

    // Hears and speaks to this pair from now on, and to no other.
    virtual void join(std::string_view /*pair*/) {}
    virtual void post(std::string_view /*text*/) {}
    virtual void post_lobby(std::string_view /*text*/) {}
    // Said to the pair when the page is left or loaded again.
    virtual void say_at_leaving(std::string_view /*text*/) {}

    // The next text of others, in the order they came, those that came while the page was hidden too. False:
    // there is none.
    virtual bool take(ChannelText&) { return false; }

    // Opens the class window of this pair, or brings it to the front. False: the browser does not allow it.
    virtual bool open_window(std::string_view /*pair*/) { return false; }
    // Of a class window that was opened by another page.
    virtual void close_this_window() {}
};

// Of a program with one window.
inline ClassChannel& no_class_channel() {
    static ClassChannel none;  // holds nothing
    return none;
}

}  // namespace slopewise
