// The view of where the taught numbers come from.
#pragma once

#include "data/catalog.h"
#include "ui/screens/screens.h"
#include "ui/view_sources.h"

namespace slopewise {

// `opened_from`: its topics come first. `topic`: 0 for all, else one more than a SourceTopic; the last is
// what the lessons and the drills say of theirs.
SourcesView sources_view(Screen opened_from, int topic, const Catalog& catalog);

// Whether a sheet shows numbers whose sources can be asked for.
bool has_sources(Screen screen);

// The same as plain text, for the page around the canvas.
std::string sources_text(const SourcesView& sheet);

}  // namespace slopewise
