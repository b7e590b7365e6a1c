#include "ui/format.h"
#include "ui/views.h"

namespace slopewise {

ChoiceView choice_view(const ApproachChoice& choice, const Scenario& scenario) {
    ChoiceView view;
    view.distances_nm.assign(choice_distances_nm.begin(), choice_distances_nm.end());
    view.distance_nm = choice.distance_nm;
    view.positions = {"Above", "On", "Below"};
    view.position = static_cast<int>(choice.side);
    view.headwind_kt = choice.headwind_kt;
    view.max_headwind_kt = most_headwind_kt;
    view.sentence = setup_words(scenario);
    view.place = place_words(scenario);
    if (!scenario.start_trim.flyable)
        view.problem = "This cannot be flown: " + scenario.start_trim.reason + ".";
    return view;
}

}  // namespace slopewise
