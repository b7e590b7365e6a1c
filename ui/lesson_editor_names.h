// What one's own lessons are called where a name must hold: their identity, their files.
#pragma once

#include <cstdint>
#include <string>

#include "data/catalog.h"

namespace slopewise {

// "gusty-final".
std::string slug_of(const std::string& title);

// "own-gusty-final-3f2a9c01", at most 40 letters: an attempt is listed under it where its lesson is not kept.
std::string own_id(const std::string& title, std::uint32_t number);

// The same number with another title; an identity that is not one of these stays.
std::string renamed_own_id(const std::string& id, const std::string& title);

// The same lesson has the same identity wherever it arrives, and never that of a shipped one which it is not:
// or its attempts would count as those of the other.
void give_honest_id(Lesson& lesson, const Catalog& catalog);

}  // namespace slopewise
