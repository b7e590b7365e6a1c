// The logbook's store in the browser.
#pragma once

#include <memory>

#include "ui/logbook_store.h"

namespace slopewise {

std::unique_ptr<LogbookStore> make_web_store();

}  // namespace slopewise
