// Samples of the sheets about keys, controllers and the program.
#pragma once

#include "ui/view.h"

namespace slopewise {

KeysView sample_keys();
ControllersView sample_controllers();
AboutView sample_about();

}  // namespace slopewise
