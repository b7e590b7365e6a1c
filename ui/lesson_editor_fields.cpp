#include "ui/lesson_editor_fields.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "ui/format.h"
#include "ui/lesson_editor_table.h"

namespace slopewise {
namespace {

// "This is 0 bytes long; allowed: 1 to 80".
std::string problem_words(const char* of, const Problem& problem) {
    return of + (" " + problem.what) + (problem.allowed.empty() ? "" : "; allowed: " + problem.allowed) + ".";
}

LessonEditorView::Field field_view(const LessonField& field, int number, const Lesson& lesson,
                                   const Catalog& catalog) {
    LessonEditorView::Field view;
    view.kind = field.kind;
    view.number = number;
    view.label = field.label;
    view.unit = field.unit;
    view.least = field.least;
    view.most = field.most;
    view.step = field.step;
    view.most_bytes = field.most_bytes;
    if (field.choices != nullptr) view.choices = field.choices(lesson, catalog);
    if (field.amount != nullptr) view.amount = field.amount(lesson, catalog);
    view.value = field.words != nullptr ? field.words(lesson) : number_words(view.amount, field.decimals);
    return view;
}

// A whole number of steps, written with no more decimals than the field has: a file says 0.3, not
// 0.30000000000000004.
double in_steps(double amount, const LessonField& field) {
    const double scale = field.decimals == 2 ? 100.0 : (field.decimals == 1 ? 10.0 : 1.0);
    return std::round(std::round(amount / field.step) * field.step * scale) / scale;
}

// Whether a problem is of a field: of its path, or of one under it.
bool is_of(std::string_view problem, std::string_view field) {
    return problem.starts_with(field) && (problem.size() == field.size() || problem[field.size()] == '/');
}

}  // namespace

void lesson_fields(const Lesson& lesson, const std::vector<Problem>& problems, const Catalog& catalog,
                   LessonEditorView& view) {
    std::vector<const Problem*> homeless;
    for (const Problem& problem : problems) homeless.push_back(&problem);
    int number = 0;
    for (const LessonFieldGroup& group : lesson_field_groups()) {
        view.groups.push_back({group.title, {}});
        for (const LessonField& field : group.fields) {
            const int own_number = number++;
            if (!field.offered(lesson)) continue;
            LessonEditorView::Field shown = field_view(field, own_number, lesson, catalog);
            std::erase_if(homeless, [&](const Problem* problem) {
                if (!is_of(problem->path, field.path)) return false;
                shown.problem += (shown.problem.empty() ? "" : " ") + problem_words("This", *problem);
                return true;
            });
            view.groups.back().fields.push_back(std::move(shown));
        }
    }
    for (const Problem* problem : homeless) view.problems.push_back(problem_words("The lesson", *problem));
}

void set_lesson_field(Lesson& lesson, int wanted, double amount, const std::string& words,
                      const Catalog& catalog) {
    for (const LessonFieldGroup& group : lesson_field_groups()) {
        const int count = static_cast<int>(group.fields.size());
        if (wanted >= 0 && wanted < count) {
            const LessonField& field = group.fields[static_cast<std::size_t>(wanted)];
            if (!field.offered(lesson)) return;
            if (field.set_words != nullptr) return field.set_words(lesson, words);
            double most = field.most;
            if (field.choices != nullptr)
                most = static_cast<double>(field.choices(lesson, catalog).size()) - 1.0;
            return field.set_amount(lesson, std::clamp(in_steps(amount, field), field.least, most), catalog);
        }
        wanted -= count;
    }
}

}  // namespace slopewise
