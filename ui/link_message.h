// What the windows of a class say to each other: one struct, written as JSON on one line. All of it comes
// from outside and is read with limits.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "ui/room_shown.h"

namespace slopewise {

struct LinkMessage {
    enum class Kind {
        // the instructor's page to the class window
        run,    // everything anew: settings, recording, hands, room, kept
        frame,  // what has changed since: rows, hands, room, pointer, settings, kept; nothing: it is still
                // there
        ended,  // the class is over, there is nothing to show
        close,  // the window may close
        take,   // hand over what you show: I lead from now on
        mine,   // to another page that wants to lead: this pair is led
        // the class window to the instructor's page
        hello,  // everything, please
        alive,  // to: whom it follows, while that page lives
        wish,   // words: what was pressed there
        state,  // the answer to `take`, of the form of `run`
        // either
        left,  // the page is left or loaded again
        // in the lobby
        who,     // an instructor's page asks for class windows that nobody leads
        orphan,  // the answer of such a one: pair, words
    };

    Kind kind = Kind::frame;
    std::string from;       // name of the page
    std::string to;         // of the page meant; empty: all
    int run = 0;            // counts the flights of the page that leads
    int since = 0;          // of rows: ticks that were told before
    bool frozen = true;     // of run, frame and state
    std::string recording;  // recording_file.h
    std::string rows;       // journal.h
    std::string room;       // room_shown_text.h
    std::string settings;   // settings.h
    std::string kept;       // class_kept.h
    std::string hands;      // shared_flight.h: sharing_text
    std::string words, pair;
    std::optional<InkPoint> pointer;  // when it alone has moved
    bool pointing = false;
};

std::string link_message_text(const LinkMessage& message);

// At most most_channel_bytes. A message of another version of this program is a problem like any other.
Result<LinkMessage> read_link_message(std::string_view text);

}  // namespace slopewise
