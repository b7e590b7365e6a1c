// The boards, and their lines.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

// How many sets of stills or explanations there are; of the flight none.
int board_pages(BoardShown::Kind kind);

void boards_view(const App& app, ClassPictureView& view);
void boards_text(const ClassPictureView& view, std::string& text);

}  // namespace slopewise
