#include "ui/shared_flight.h"

#include <algorithm>

#include "drill/partner.h"
#include "ui/flight_session.h"

namespace slopewise {
namespace {

constexpr std::size_t roomy_calls = 64;
constexpr auto call_lasts_ticks = static_cast<std::int64_t>(4.0 / tick_s + 0.5);  // read with one look

// The other pilot takes the controls as they stand, and the attitude as it is.
void seat_partner(FlightSession& session) {
    SharedFlight& sharing = session.sharing;
    const Attempt& attempt = session.attempt;
    sharing.partner = make_partner(session.scenario, session.scenario.lesson.seed);
    sharing.partner->next_look_s = time_s(attempt);
    if (attempt.tick == 0) return;
    sharing.partner->hands = positions_of(attempt.controls);
    sharing.partner->wanted_pitch_rad = attempt.flight.pitch_rad;
}

void say_again(SharedFlight& sharing) {
    sharing.calls_shown = sharing.control.calls.size();
    sharing.call_ticks = call_lasts_ticks;
}

}  // namespace

ControlShare share_of(Hands hands) {
    switch (hands) {
    case Hands::both: return ControlShare::both;
    case Hands::power_only: return ControlShare::power;
    case Hands::pitch_only: return ControlShare::pitch;
    case Hands::watch: return ControlShare::none;
    }
    return ControlShare::both;
}

Hands hands_of(ControlShare share) {
    switch (share) {
    case ControlShare::both: return Hands::both;
    case ControlShare::power: return Hands::power_only;
    case ControlShare::pitch: return Hands::pitch_only;
    case ControlShare::none: return Hands::watch;
    }
    return Hands::both;
}

void begin_sharing(FlightSession& session) {
    SharedFlight& sharing = session.sharing;
    sharing.control.calls.reserve(roomy_calls);
    sharing.due = share_of(session.scenario.lesson.hands);
    if (sharing.due == ControlShare::both) return;
    seat_partner(session);
    sharing.control.share = ControlShare::none;
    if (sharing.due == ControlShare::none) return;
    offer_controls(sharing.control, sharing.due, session.attempt.tick);
}

std::string sharing_text(const FlightSession& session) {
    const auto name = [](ControlShare share) { return control_share_names[static_cast<std::size_t>(share)]; };
    const SharedFlight& sharing = session.sharing;
    std::string text(name(sharing.control.share));
    text.append(" ").append(name(sharing.due));
    return sharing.control.waiting ? text + " waiting" : text;
}

void set_sharing(FlightSession& session, std::string_view text) {
    SharedFlight& sharing = session.sharing;
    const auto take = [&](ControlShare& share) {
        const std::string_view word = text.substr(0, text.find(' '));
        for (std::size_t i = 0; i < control_share_names.size(); ++i)
            if (control_share_names[i] == word) share = static_cast<ControlShare>(i);
        text.remove_prefix(std::min(text.size(), word.size() + 1));
    };
    take(sharing.control.share);
    take(sharing.due);
    sharing.control.waiting = text == "waiting" && !sharing.control.calls.empty();
    if (sharing.control.share != ControlShare::both || sharing.due != ControlShare::both)
        seat_partner(session);
}

bool waits_for_answer(const FlightSession& session) { return session.sharing.control.waiting; }

void exchange_controls(FlightSession& session) {
    SharedFlight& sharing = session.sharing;
    if (sharing.due == ControlShare::none) return;  // to be watched
    const std::int64_t tick = session.attempt.tick;
    const bool gives_up = !sharing.control.waiting && sharing.control.share != ControlShare::none;
    if (gives_up) {
        seat_partner(session);
        give_up_controls(sharing.control, tick);
    } else {
        if (!sharing.control.waiting) offer_controls(sharing.control, sharing.due, tick);
        accept_controls(sharing.control, tick);
    }
    say_again(sharing);
}

void take_all_controls(FlightSession& session) {
    SharedFlight& sharing = session.sharing;
    if (!sharing.partner || sharing.control.share == ControlShare::both) return;
    sharing.due = ControlShare::both;
    offer_controls(sharing.control, ControlShare::both, session.attempt.tick);
    accept_controls(sharing.control, session.attempt.tick);
    say_again(sharing);
}

Controls shared_controls(FlightSession& session, const Controls& student) {
    SharedFlight& sharing = session.sharing;
    sharing.call_ticks = std::max<std::int64_t>(sharing.call_ticks - 1, 0);
    const ControlShare share = sharing.control.share;
    if (!sharing.partner || share == ControlShare::both) return student;
    const Controls partner = partner_controls(*sharing.partner, share, session.scenario, session.attempt);
    if (share != sharing.due && session.attempt.end == End::none) ++sharing.partner_ticks;
    return shared(hands_of(share), student, partner);
}

void follow_partner(const FlightSession& session, ControlPositions& hands) {
    const SharedFlight& sharing = session.sharing;
    if (!sharing.partner || session.attempt.tick == 0) return;
    const Hands has = hands_of(sharing.control.share);
    const ControlPositions flown = positions_of(session.attempt.controls);
    if (!student_has_power(has)) hands.throttle = flown.throttle;
    if (student_has_pitch(has)) return;
    hands.stick = 0.0;
    hands.trim = flown.trim;
    hands.flap = flown.flap;
}

std::string_view sharing_words(const FlightSession& session) {
    const SharedFlight& sharing = session.sharing;
    if (!sharing.partner) return {};
    switch (sharing.control.share) {
    case ControlShare::both: return "You have power and pitch";
    case ControlShare::power: return "You have power, I have pitch";
    case ControlShare::pitch: return "You have pitch, I have power";
    case ControlShare::none: return "I have power and pitch";
    }
    return {};
}

void exchange_caption(const FlightSession& session, std::string_view exchange_key, std::string& words) {
    const SharedFlight& sharing = session.sharing;
    if (sharing.control.waiting) {
        words.append(sharing.control.calls.back().words);
        words.append(" Answer with ").append(exchange_key);
        words.append(sharing.due == ControlShare::power ? ": I have power." : ": I have pitch.");
        return;
    }
    if (sharing.call_ticks == 0 || sharing.calls_shown == 0) return;
    const ControlCall& last = sharing.control.calls[sharing.calls_shown - 1];
    const ControlCall& before =
        sharing.control.calls[sharing.calls_shown - std::min<std::size_t>(2, sharing.calls_shown)];
    words.append(before.speaker == Speaker::student ? "You: " : "The other pilot: ").append(before.words);
    words.append(last.speaker == Speaker::student ? " You: " : " The other pilot: ").append(last.words);
}

}  // namespace slopewise
