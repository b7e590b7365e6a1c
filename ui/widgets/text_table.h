// Numbers in rows and columns on paper.
#pragma once

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// Names at the left, numbers right-aligned under their heads and units. Where the column is too narrow for
// that, each row becomes its name with a sentence of its figures.
void draw_text_table(Column& column, const TextTable& table);

}  // namespace slopewise
