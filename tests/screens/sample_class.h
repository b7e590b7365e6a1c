// An invented class, for drawing its screens without the engine.
#pragma once

#include "ui/view_class.h"

namespace slopewise {

ClassRoomView sample_class_room();
ClassPictureView sample_class_picture();
AskView sample_questions();
StationView sample_station();
ClassTableView sample_class_table();

}  // namespace slopewise
