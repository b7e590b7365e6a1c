// What both windows of a class do alike to speak.
#pragma once

#include <string>

#include "ui/link_message.h"

namespace slopewise {

struct App;
class Host;

// A name that no other page has: 64 bits drawn at random.
std::string drawn_name(Host& host);

// Hears and speaks to this pair from now on.
void join_pair(App& app, const std::string& pair, Host& host);

void say(const App& app, LinkMessage message, Host& host);
void say_in_lobby(const App& app, LinkMessage message, Host& host);

// A message of this kind that says no more.
LinkMessage message_of(LinkMessage::Kind kind);

}  // namespace slopewise
