// The host of this build: the browser's in web/host_web.cpp, the desktop's beside this file.
#pragma once

#include <memory>
#include <string>

#include "ui/host.h"

namespace slopewise {

// `lesson_link`: what the command line gave; a page has its own address instead.
std::unique_ptr<Host> make_host(std::string lesson_link = {});

}  // namespace slopewise
