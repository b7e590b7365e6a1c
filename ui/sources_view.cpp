#include "ui/sources_view.h"

#include <algorithm>
#include <iterator>

#include "sources/sources.h"

namespace slopewise {
namespace {

// Short names for the row of choices, in the order of SourceTopic.
constexpr std::array<const char*, source_topic_names.size()> short_names{
    "Lights", "Path", "Runway", "Speed", "Wind", "Gates", "Measures", "Help", "Learning", "Cautions"};

// A sheet with numbers: how the way back to it is called, and the topics that it shows most of.
struct Opener {
    Screen screen;
    const char* back;
    std::vector<SourceTopic> topics;
};
const std::vector<Opener>& openers() {
    using enum SourceTopic;
    static const std::vector<Opener> all{
        {Screen::choices, "Back to choices", {path, sink_and_wind, cautions}},
        {Screen::welcome, "Back to the first page", {path, lights, cautions}},
        {Screen::lesson_card, "Back to the lesson", {path, lights, speed, sink_and_wind, gates}},
        {Screen::drill_result, "Back to the drill", {lights, path, learning}},
        {Screen::briefing, "Back to the briefing", {path, lights, speed, sink_and_wind}},
        {Screen::summary, "Back to the summary", {gates, measures, speed, path}},
        {Screen::criteria, "Back to the limits", {gates, speed}},
        {Screen::progress, "Back to progress", {learning, help}},
        {Screen::screen_and_help, "Back to screen and help", {path, help, cautions}}};
    return all;
}

const Opener* opener(Screen screen) {
    const auto found = std::ranges::find(openers(), screen, &Opener::screen);
    return found == openers().end() ? nullptr : &*found;
}

// All topics, those of the sheet first.
std::vector<SourceTopic> topics_from(const Opener* opened_from) {
    std::vector<SourceTopic> topics;
    if (opened_from != nullptr) topics = opened_from->topics;
    for (std::size_t i = 0; i < source_topic_names.size(); ++i) {
        const auto topic = static_cast<SourceTopic>(i);
        if (std::ranges::find(topics, topic) == topics.end()) topics.push_back(topic);
    }
    return topics;
}

SourcesView::Trust trust_in(Sureness sureness) {
    if (sureness == Sureness::read) return SourcesView::Trust::read;
    return sureness == Sureness::memory ? SourcesView::Trust::unconfirmed : SourcesView::Trust::between;
}

SourcesView::Entry entry_view(const TaughtNumber& number) {
    std::string place(number.document);
    if (!number.section.empty()) place += ": " + std::string(number.section);
    return {std::string(number.says), std::move(place), std::string(words_of(number.sureness)),
            trust_in(number.sureness)};
}

SourcesView::Trust trust_in(Certainty certainty) {
    if (certainty == Certainty::read) return SourcesView::Trust::read;
    return certainty == Certainty::recalled ? SourcesView::Trust::unconfirmed : SourcesView::Trust::between;
}

std::string words_of(Certainty certainty) {
    return std::string(certainty_words[static_cast<std::size_t>(certainty)]);
}

// What the lessons and the drills say of their own sources.
std::vector<SourcesView::Group> taught_groups(const Catalog& catalog) {
    SourcesView::Group lessons{"Lessons", {}}, drills{"Drills", {}};
    for (const Lesson& lesson : catalog.lessons) {
        for (const LessonSource& source : lesson.teaching.sources) {
            const std::string between = source.section.empty() ? "" : ": ";
            lessons.entries.push_back({lesson.title + ": " + source.of,
                                       source.document + between + source.section, words_of(source.certainty),
                                       trust_in(source.certainty)});
        }
    }
    for (const Drill& drill : catalog.drills)
        drills.entries.push_back(
            {drill.title, drill.source.text, words_of(drill.source.sure), trust_in(drill.source.sure)});
    return {std::move(lessons), std::move(drills)};
}

SourcesView::Group group_view(SourceTopic topic) {
    SourcesView::Group group{std::string(source_topic_names[static_cast<std::size_t>(topic)]), {}};
    for (const TaughtNumber& number : taught_numbers())
        if (number.topic == topic) group.entries.push_back(entry_view(number));
    return group;
}

// "96 in all: 20 read in the document, 15 read in a secondary place, ..."
std::string count_words() {
    std::string words = std::to_string(taught_numbers().size()) + " in all";
    for (std::size_t i = 0; i < sureness_words.size(); ++i) {
        const auto count =
            std::ranges::count(taught_numbers(), static_cast<Sureness>(i), &TaughtNumber::sureness);
        words += (i == 0 ? ": " : "; ") + std::to_string(count) + " " + std::string(sureness_words[i]);
    }
    return words + ".";
}

}  // namespace

bool has_sources(Screen screen) { return opener(screen) != nullptr; }

SourcesView sources_view(Screen opened_from, int topic, const Catalog& catalog) {
    const Opener* from = opener(opened_from);
    SourcesView view;
    view.topics.emplace_back("All");
    view.topics.insert(view.topics.end(), short_names.begin(), short_names.end());
    view.topics.emplace_back("Lessons");
    const int last = static_cast<int>(short_names.size()) + 1;
    view.topic = std::clamp(topic, 0, last);
    if (view.topic == last) view.groups = taught_groups(catalog);
    else if (view.topic > 0) view.groups.push_back(group_view(static_cast<SourceTopic>(view.topic - 1)));
    else
        for (const SourceTopic one : topics_from(from)) view.groups.push_back(group_view(one));
    if (view.topic == 0) std::ranges::move(taught_groups(catalog), std::back_inserter(view.groups));
    view.count = count_words();
    view.back = from != nullptr ? from->back : "Back";
    return view;
}

std::string sources_text(const SourcesView& sheet) {
    std::string text = "Where the numbers come from. " + sheet.count + "\n";
    for (const SourcesView::Group& group : sheet.groups) {
        text += group.title + "\n";
        for (const SourcesView::Entry& entry : group.entries)
            text +=
                entry.says + " (" + entry.place + (entry.place.empty() ? "" : "; ") + entry.how_sure + ")\n";
    }
    return text;
}

}  // namespace slopewise
