// The browser's way between two windows.
#pragma once

#include <memory>

#include "ui/class_channel.h"

namespace slopewise {

std::unique_ptr<ClassChannel> make_web_class_channel();

}  // namespace slopewise
