#include "ui/stick_question.h"

namespace slopewise {

StickQuestionView stick_question_view(bool by_thumb) {
    if (!by_thumb) return {};
    return {"Which way of the thumb should lower the nose?", "Thumb up", "Thumb down", true};
}

std::string stick_question_text(const StickQuestionView& question) {
    if (!question.by_thumb) return question.asks + " Press it: the up key or the down key.";
    return question.asks + " Press: " + question.up + " or " + question.down + ".";
}

}  // namespace slopewise
