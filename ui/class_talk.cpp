#include "ui/class_talk.h"

#include <cstdio>
#include <utility>

#include "ui/app.h"

namespace slopewise {
namespace {

std::string signed_by(const App& app, LinkMessage message) {
    message.from = app.room.link.me;
    return link_message_text(message);
}

}  // namespace

std::string drawn_name(Host& host) {
    char name[20];
    const std::uint32_t first = host.random();
    std::snprintf(name, sizeof name, "%08x%08x", static_cast<unsigned>(first),
                  static_cast<unsigned>(host.random()));
    return name;
}

void join_pair(App& app, const std::string& pair, Host& host) {
    app.room.link.pair = pair;
    host.class_channel().join(pair);
    host.class_channel().say_at_leaving(signed_by(app, message_of(LinkMessage::Kind::left)));
}

void say(const App& app, LinkMessage message, Host& host) {
    host.class_channel().post(signed_by(app, std::move(message)));
}

void say_in_lobby(const App& app, LinkMessage message, Host& host) {
    host.class_channel().post_lobby(signed_by(app, std::move(message)));
}

LinkMessage message_of(LinkMessage::Kind kind) {
    LinkMessage message;
    message.kind = kind;
    return message;
}

}  // namespace slopewise
