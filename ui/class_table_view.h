// The class in a table, and its lines.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

void class_table_view(const App& app, ClassTableView& view);
void class_table_text(const ClassTableView& view, std::string& text);

}  // namespace slopewise
