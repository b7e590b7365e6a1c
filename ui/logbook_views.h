// The views of the logbook's two sheets. Both are written over what they held, and what takes long is made
// again only when the logbook, the student or a choice has changed.
#pragma once

#include "data/catalog.h"
#include "progress/evidence_list.h"
#include "ui/logbook_choice.h"
#include "ui/view_logbook.h"

namespace slopewise {

void logbook_view(const Logbook& logbook, const Catalog& catalog, const std::string& student,
                  const LogbookChoice& choice, LogbookView& view);

// What the drills of the student say, and which edition of it.
struct DrillEvidence {
    DrillResults results;
    int edition = 0;
};

void progress_view(const Logbook& logbook, const Catalog& catalog, const std::string& student,
                   const LogbookChoice& choice, ProgressView& view, const DrillEvidence& drills = {});

// What the progress sheet hands over: a row an attempt, with the caution at its head.
std::string progress_csv(const Logbook& logbook, const std::string& student, const LogbookChoice& choice);

// "Final down a wind gradient"; the id of a lesson that is not known here.
std::string lesson_title(const Catalog& catalog, const std::string& id);

}  // namespace slopewise
