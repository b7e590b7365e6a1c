#include "ui/import_attempts.h"

#include "data/recording_file.h"
#include "logbook/attempt_id.h"
#include "logbook/student_file.h"
#include "ui/logbook_events.h"

namespace slopewise {
namespace {

constexpr std::size_t most_problems = 20;  // a file with more is not worth reading on

struct Importing {
    App& app;
    Host& host;
    Logbook::Import& import = *app.logbook.import;

    void next() { host.logbook().next_import_line(); }

    void line(std::string_view text) {
        ++import.line;
        if (text.empty()) return next();
        if (import.line == 1 && looks_like_student_file(text)) return head(text);
        if (import.line == 2 && looks_like_student_rows(text)) return next();  // rows are made anew
        if (looks_like_kept_attempt(text)) return attempt(read_kept_attempt(text, import.file));
        if (import.line == 1 && text.starts_with("{\"kind\":\"recording\""))
            return recording(read_recording(text, import.file));
        refuse({{import.file, import.line, "", "is no attempt of Slopewise", ""}});
    }

    void head(std::string_view text) {
        Result<std::string> student = read_student_file_head(text, import.file);
        if (!student.ok()) return stop(std::move(student.problems));
        import.student = std::move(*student.value);
        next();
    }

    void recording(Result<Recording> read) {
        if (!read.ok()) return refuse(std::move(read.problems));
        // The same recording has the same identity whenever it is taken in.
        const std::string id = attempt_id(1000 * read.value->circumstances.started_unix_s,
                                          static_cast<std::uint32_t>(read.value->final_hash));
        std::vector<Problem> problems = check_lesson(app.catalog, read.value->lesson, import.file);
        if (!problems.empty()) return refuse(std::move(problems));
        const Scenario scenario = scenario_of(app.catalog, read.value->lesson);
        take(kept_from(id, std::move(*read.value), scenario), scenario);
    }

    void attempt(Result<KeptAttempt> read) {
        if (!read.ok()) return refuse(std::move(read.problems));
        std::vector<Problem> problems = check_lesson(app.catalog, read.value->recording.lesson, import.file);
        if (!problems.empty()) return refuse(std::move(problems));
        take(*read.value, scenario_of(app.catalog, read.value->recording.lesson));
    }

    void take(const KeptAttempt& kept, const Scenario& scenario) {
        if (find_row(app.logbook, kept.id) != nullptr) {
            ++import.known;
            return next();
        }
        import.waiting_for = kept.id;
        keep_whole(app, kept, review_kept(kept, scenario, app.settings.school.criteria), host);
        if (app.logbook.standing == Logbook::Standing::refused) import_kept(app, host);
    }

    // This line is lost, the others are read on.
    void refuse(std::vector<Problem> problems) {
        for (Problem& problem : problems) {
            problem.line = import.line;
            import.problems.push_back(std::move(problem));
        }
        ++app.logbook.edition;
        const bool nothing_of_ours = import.line == 1 || import.problems.size() >= most_problems;
        if (nothing_of_ours) end_import(app);
        else next();
    }

    void stop(std::vector<Problem> problems) {
        import.problems = std::move(problems);
        end_import(app);
    }
};

std::string count_words(int count, const char* one, const char* more) {
    return std::to_string(count) + (count == 1 ? one : more);
}

}  // namespace

void begin_import(App& app, const std::string& file, Host&) {
    app.logbook.import = Logbook::Import{};
    app.logbook.import->file = file;
    app.logbook.import->running = true;
    app.logbook.news.clear();
    ++app.logbook.edition;
}

void import_line(App& app, std::string_view line, Host& host) {
    if (app.logbook.import && app.logbook.import->running) Importing{app, host}.line(line);
}

void import_kept(App& app, Host& host) {
    app.logbook.import->waiting_for.clear();
    ++app.logbook.import->added;
    ++app.logbook.edition;
    host.logbook().next_import_line();
}

void fail_import(App& app, const std::string& words) {
    if (!app.logbook.import) return;
    Logbook::Import& import = *app.logbook.import;
    import.problems.push_back({import.file, 0, "", words, ""});
    end_import(app);
}

void end_import(App& app) {
    if (!app.logbook.import || !app.logbook.import->running) return;
    Logbook::Import& import = *app.logbook.import;
    import.running = false;
    import.waiting_for.clear();
    app.logbook.news =
        import.file + ": " + count_words(import.added, " attempt taken in", " attempts taken in");
    if (import.known > 0) app.logbook.news += ", " + std::to_string(import.known) + " already here";
    if (!import.problems.empty())
        app.logbook.news +=
            ", " + count_words(static_cast<int>(import.problems.size()), " problem", " problems");
    app.logbook.news += ".";
    ++app.logbook.edition;
}

}  // namespace slopewise
