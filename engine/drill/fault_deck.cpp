#include "drill/fault_deck.h"

#include <algorithm>

#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "lesson/demonstrate.h"

namespace slopewise {
namespace {

constexpr std::size_t choices_offered = 4;

// The right title and some of the others that were not found, shuffled; `right` is its place.
std::vector<std::string> choices_of(const FaultCards& settings, const Diagnosis& diagnosis, Random& random,
                                    int& right) {
    std::vector<const Fault*> offered{diagnosis.priority()->fault};
    std::vector<std::string> others = settings.others;
    shuffle(random, others);
    for (const std::string& id : others) {
        const Fault* fault = find_fault(id);
        if (offered.size() < choices_offered && fault != nullptr && !diagnosis.finds(id))
            offered.push_back(fault);
    }
    shuffle(random, offered);
    std::vector<std::string> choices;
    for (const Fault* fault : offered) {
        if (fault == diagnosis.priority()->fault) right = static_cast<int>(choices.size());
        choices.emplace_back(fault->title);
    }
    return choices;
}

std::vector<double> moments_of(const FaultFlight& flight) {
    std::vector<double> times_s;
    for (const std::size_t moment : flight.diagnosis.priority()->evidence.moments)
        times_s.push_back(flight.track.points[moment].time_s);
    return times_s;
}

std::string when_words(const Card& card) {
    if (card.throughout) return "It showed throughout.";
    std::string words = "It showed";
    for (std::size_t i = 0; i < card.moments_s.size() && i < 3; ++i)
        words += drill_format("%s %.0f s", i == 0 ? " at" : ",", card.moments_s[i]);
    return words + ".";
}

Card card_of(const FaultCards& settings, const FaultFlight& flight, Random& random) {
    const Fault& fault = *flight.diagnosis.priority()->fault;
    const TrackPoint& first = flight.track.points.front();
    Card card;
    card.kind = AnswerKind::moment_and_choice;
    card.picture =
        still_at(flight.scenario, eye_position(flight.scenario.aircraft, flight.scenario.start_state));
    card.picture.lights_shown = true;
    card.picture.airspeed_shown = true;
    card.question = "Mark the moment the fault shows, and say which it is.";
    card.facts = {"From " + distance_phrase(first.distance_m) + ", " +
                  path_phrase(first.path_error_rad, first.distance_m)};
    card.spoken = card.facts.front() + ".";
    card.choices = choices_of(settings, flight.diagnosis, random, card.right);
    card.truth_rad = first.path_error_rad;
    card.distance_m = first.distance_m;
    card.moments_s = moments_of(flight);
    card.throughout = std::ranges::find(settings.throughout, fault.id) != settings.throughout.end();
    card.reveal = std::string(fault.title) + ". " + std::string(fault.symptom) + " " + when_words(card) +
                  " Correction: " + std::string(fault.correction);
    return card;
}

}  // namespace

std::shared_ptr<const FaultFlight> fly_fault(const FaultCards::Flight& flight, const Scenario& base,
                                             const Criteria& criteria, std::uint64_t seed) {
    const std::optional<PilotSkill> skill = pilot_skill(flight.pilot);
    auto flown = std::make_shared<FaultFlight>();
    flown->scenario = scenario_from(flight.start, base);
    if (!skill || !flown->scenario.start_trim.flyable) return nullptr;
    const Scenario& scenario = flown->scenario;
    ModelPilot pilot = pilot_for(scenario, *skill, seed);
    Attempt attempt = begin_attempt(scenario);
    flown->recording = begin_recording(scenario.lesson);
    flown->track = begin_track(scenario, attempt);
    demonstrate(scenario, attempt, pilot, [&](const Controls& controls, const Events& events) {
        record(flown->recording, controls, attempt);
        extend(flown->track, scenario, attempt, events);
    });
    const Review review = review_of(scenario, criteria, flown->track, attempt.end);
    flown->diagnosis = diagnose(approach_of(scenario, criteria, flown->track, review));
    return flown;
}

FaultDeck fault_deck(const FaultCards& settings, int items, const Scenario& base, const Criteria& criteria,
                     std::uint64_t seed) {
    Random random{seed};
    FaultDeck deck;
    const auto wanted = static_cast<std::size_t>(items);
    for (const std::size_t i : draw_rounds(random, settings.flights.size(), 4 * wanted)) {
        if (deck.cards.size() == wanted) break;
        auto flight = fly_fault(settings.flights[i], base, criteria, next_bits(random));
        if (flight == nullptr || flight->diagnosis.priority() == nullptr) continue;
        deck.cards.push_back(card_of(settings, *flight, random));
        deck.cards.back().flight = static_cast<int>(deck.flights.size());
        deck.flights.push_back(std::move(flight));
    }
    return deck;
}

bool mark_is_in_time(const FaultCards& settings, const Card& card, double mark_s) {
    if (mark_s < 0.0) return false;
    if (card.throughout) return true;
    return std::ranges::any_of(card.moments_s, [&](double moment_s) {
        return mark_s >= moment_s - settings.before_s && mark_s <= moment_s + settings.after_s;
    });
}

}  // namespace slopewise
