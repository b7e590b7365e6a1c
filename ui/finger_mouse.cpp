#include "ui/finger_mouse.h"

namespace slopewise {
namespace {

Finger* find(Fingers& fingers, int id) {
    for (int i = 0; i < fingers.count; ++i) {
        Finger& finger = fingers.at[static_cast<std::size_t>(i)];
        if (finger.id == id) return &finger;
    }
    return nullptr;
}

// Its own, or one that is free; null: it is one finger too many.
FingerShift* shift_of(FingerMouse& hand, int id) {
    for (FingerShift& shift : hand.shifts)
        if (shift.id == id) return &shift;
    for (FingerShift& shift : hand.shifts)
        if (find(hand.fingers, shift.id) == nullptr) return &(shift = {id});
    return nullptr;
}

void move(FingerMouse& hand, Finger& finger, double x, double y) {
    FingerShift* shift = shift_of(hand, finger.id);
    if (shift != nullptr && shift->turned) *shift = {finger.id, false, finger.x - x, finger.y - y};
    finger.x = x + (shift != nullptr ? shift->x : 0.0);
    finger.y = y + (shift != nullptr ? shift->y : 0.0);
}

void forget(Fingers& fingers, int id) {
    int kept = 0;
    for (int i = 0; i < fingers.count; ++i) {
        const Finger finger = fingers.at[static_cast<std::size_t>(i)];
        if (finger.id != id) fingers.at[static_cast<std::size_t>(kept++)] = finger;
    }
    fingers.count = kept;
}

MouseEvent come(FingerMouse& hand, int id, double x, double y) {
    Fingers& fingers = hand.fingers;
    fingers.ever = true;
    forget(fingers, id);  // its end was never told
    if (fingers.count == most_fingers) return MouseEvent::none;
    if (FingerShift* shift = shift_of(hand, id)) *shift = {id};
    fingers.at[static_cast<std::size_t>(fingers.count++)] = {id, true, x, y, x, y};
    if (hand.mouse != -1 || hand.areas.hold(x, y)) return MouseEvent::none;
    hand.mouse = id;
    return MouseEvent::press;
}

}  // namespace

MouseEvent take(FingerMouse& hand, FingerEvent event, int id, double x, double y) {
    if (event == FingerEvent::down) return come(hand, id, x, y);
    const bool is_mouse = hand.mouse == id;
    if (event == FingerEvent::move) {
        Finger* finger = find(hand.fingers, id);
        if (finger == nullptr) return MouseEvent::none;
        move(hand, *finger, x, y);
        return is_mouse ? MouseEvent::move : MouseEvent::none;
    }
    forget(hand.fingers, id);
    if (!is_mouse) return MouseEvent::none;
    hand.mouse = -1;
    return MouseEvent::release;
}

void turn_page(FingerMouse& hand) {
    for (int i = 0; i < hand.fingers.count; ++i)
        if (FingerShift* shift = shift_of(hand, hand.fingers.at[static_cast<std::size_t>(i)].id))
            shift->turned = true;
}

Fingers fingers_now(FingerMouse& hand) {
    const Fingers now = hand.fingers;
    for (Finger& finger : hand.fingers.at) finger.came = false;
    return now;
}

}  // namespace slopewise
