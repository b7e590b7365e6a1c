// The question that is asked once: which way of the hand lowers the nose.
#pragma once

#include <string>

#include "ui/view.h"

namespace slopewise {

// Of a thumb where the flight has pads for it, else of a key.
StickQuestionView stick_question_view(bool by_thumb);

// For who cannot see the picture.
std::string stick_question_text(const StickQuestionView& question);

}  // namespace slopewise
