// The host of this build: the browser's in web/host_web.cpp, the desktop's beside this file.
#pragma once

#include <memory>

#include "ui/host.h"

namespace slopewise {

std::unique_ptr<Host> make_host();

}  // namespace slopewise
