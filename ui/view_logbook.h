// What the logbook's two sheets draw: the attempts of one student, and how they come on.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace slopewise {

// One attempt of the list, in finished words; a dash where there is nothing to say.
struct LogbookRowView {
    std::string id;
    std::string when;                       // "26 Nov 2026, 14:05"
    std::string lesson;                     // its title
    std::string marks;                      // "aided", "cut off", "not kept"; empty mostly
    std::string path_bias, path_scatter;    // "+0.12°", "±0.30°"; high is positive
    std::string speed_bias, speed_scatter;  // "-2 kt", "±3 kt"; fast is positive
    std::string stability;                  // at the decision gate: "stable", "not stable"
    std::string decision;                   // "right", "miss", "cautious"
    std::string fault;                      // the priority's title, "none found"
    bool unstable = false, missed = false;
};

struct LogbookView {
    struct Student {
        std::string name;   // as it is kept; empty: none was given
        std::string words;  // "No name"
    };
    struct Deleted {
        std::string id, words;
    };

    Student student;
    std::vector<Student> students;  // on this device, by name
    std::string standing;           // why there is no list yet, or can be none; empty: it is open
    std::string trouble, news;
    std::string importing;              // what the file taken in last has brought so far
    std::vector<std::string> problems;  // of that file: at most five, and how many more there are
    bool import_runs = false;
    std::string gate;                  // "At 300 ft"
    std::string count;                 // "40 attempts"
    std::vector<LogbookRowView> rows;  // newest first
    std::vector<Deleted> deleted;      // newest first
    int chosen = -1;                   // index of the row; -1: there are none
    std::string earlier;               // id of the attempt flown last before the chosen one; empty: none
    bool writes_by_finger = false;     // a name is written in the machine's own window
    bool is_loading = false;           // an attempt is on its way out of the store

    // What the rows were made from; they are made again only when it differs.
    int made_edition = -1;
    std::string made_student;
    std::int64_t made_ahead_of_utc_s = 0;
};

// One attempt in the plots. What there is none of is negative.
struct TrendPoint {
    float bias_deg = 0, scatter_deg = 0;  // how far off, either way; about that
    float median_bias_deg = -1, median_scatter_deg = -1;
    float learning_sum = -1;
    bool unaided = true;
    bool begins_session = false;
    bool after_long_gap = false;  // lines are not joined across it
};

struct ProgressView {
    struct LessonCount {
        std::string id;  // empty: all lessons
        std::string title, count, unaided, aided;
    };
    struct Evidence {
        std::string what, found;
        bool complete = false;
    };

    std::string student;
    std::string nothing;               // what to do when there is nothing to show; empty mostly
    std::vector<LessonCount> lessons;  // all of them first
    int lesson = 0;
    std::vector<TrendPoint> points;  // in the order flown
    double limit = 0, strict_limit = 0;
    int signal_at = -1, relapse_at = -1;  // index of a point; -1: not
    std::string learning;                 // what the sum says, in one sentence
    std::vector<std::string> parameters;  // the curve's, in words
    std::string decisions;
    std::vector<std::string> hints;  // stop for today, a refresher is due; empty mostly
    std::string evidence_words;
    std::vector<Evidence> evidence;

    int made_edition = -1, made_drill_edition = -1;
    std::string made_student, made_lesson;
    std::int64_t made_at_unix_s = -1;
};

}  // namespace slopewise
