#include "drill/shared_controls.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 4> offers{"You have control.", "You have power.", "You have pitch.",
                                                 "I have control."};
constexpr std::array<std::string_view, 4> answers{"I have control.", "I have power.", "I have pitch.",
                                                  "You have control."};

std::string_view words_of(const std::array<std::string_view, 4>& words, ControlShare share) {
    return words[static_cast<std::size_t>(share)];
}

bool has_power(ControlShare share) { return share == ControlShare::both || share == ControlShare::power; }
bool has_pitch(ControlShare share) { return share == ControlShare::both || share == ControlShare::pitch; }

void move_to(SharedControls& shared, ControlShare share) {
    shared.share = share;
    shared.waiting = false;
}

}  // namespace

void offer_controls(SharedControls& shared, ControlShare share, std::int64_t tick) {
    if (share == shared.share) return;
    if (share == ControlShare::none) return take_back_controls(shared, tick);
    shared.offered = share;
    shared.waiting = true;
    shared.calls.push_back({tick, Speaker::partner, words_of(offers, share)});
}

bool accept_controls(SharedControls& shared, std::int64_t tick) {
    if (!shared.waiting) return false;
    shared.calls.push_back({tick, Speaker::student, words_of(answers, shared.offered)});
    shared.calls.push_back({tick, Speaker::partner, words_of(offers, shared.offered)});
    move_to(shared, shared.offered);
    return true;
}

void take_back_controls(SharedControls& shared, std::int64_t tick) {
    if (shared.share == ControlShare::none && !shared.waiting) return;
    shared.calls.push_back({tick, Speaker::partner, "I have control."});
    shared.calls.push_back({tick, Speaker::student, "You have control."});
    move_to(shared, ControlShare::none);
}

void give_up_controls(SharedControls& shared, std::int64_t tick) {
    if (shared.share == ControlShare::none) return;
    shared.calls.push_back({tick, Speaker::student, "You have control."});
    shared.calls.push_back({tick, Speaker::partner, "I have control."});
    move_to(shared, ControlShare::none);
}

Controls merged_controls(ControlShare share, const Controls& student, const Controls& partner) {
    Controls controls;
    const Controls& lever_hand = has_power(share) ? student : partner;
    const Controls& stick_hand = has_pitch(share) ? student : partner;
    controls.throttle = lever_hand.throttle;
    controls.flap = lever_hand.flap;
    controls.stick = stick_hand.stick;
    controls.trim = stick_hand.trim;
    controls.go_around = lever_hand.go_around || stick_hand.go_around;
    return controls;
}

}  // namespace slopewise
