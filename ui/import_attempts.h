// Taking in a file of attempts, a line at a time: a student's file, one attempt, or a recording of the
// command line.
#pragma once

#include "ui/app.h"

namespace slopewise {

void begin_import(App& app, const std::string& file, Host& host);
void import_line(App& app, std::string_view line, Host& host);
void import_kept(App& app, Host& host);  // what the last line brought is kept: on to the next
void fail_import(App& app, const std::string& words);
void end_import(App& app);

}  // namespace slopewise
