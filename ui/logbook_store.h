// Where attempts are kept: the browser's database, a folder on the desktop. It is asked now and answers
// later, by events. What it keeps are texts, made and read by engine/logbook.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct StoreEvent {
    enum class Kind {
        opened,         // texts: of every row its id, a line feed and the row
        refused,        // words: why nothing can be kept; all else works
        kept,           // id
        not_kept,       // id; words: why. What was kept before is as it was
        loaded,         // id; texts: the attempt
        not_loaded,     // id; words: why
        changed,        // id, by another window; texts: its row, or nothing when it is gone
        journal,        // id; texts: the pieces of a flight that was cut off
        import_began,   // words: the file's name
        import_line,    // texts: one line of it, in order
        import_failed,  // words: why it cannot be read on
        import_ended,
        exported,     // words: the file's name
        file_began,   // words: the name of one of the files that were chosen to be looked at
        file_lines,   // texts: its next lines, in order
        file_failed,  // words: why it cannot be read on; the next file follows
        file_ended,
        files_ended,  // words: why there was none to read; empty mostly
    };
    Kind kind = Kind::opened;
    std::string id;
    std::string words;
    std::vector<std::string> texts;
};

class LogbookStore {
public:
    virtual ~LogbookStore() = default;

    // Answers opened or refused, then each journal that no other window is writing.
    virtual void open() = 0;

    // An attempt with its row; its journal goes in the same step. Answers kept or not_kept.
    virtual void keep(const std::string& id, const std::string& row, const std::string& attempt) = 0;
    // The row alone, of an attempt that is kept. Answers kept or not_kept.
    virtual void keep_row(const std::string& id, const std::string& row) = 0;
    // Answers loaded or not_loaded.
    virtual void load(const std::string& id) = 0;
    // For good.
    virtual void erase(const std::string& id) = 0;

    // The journal of a flight in progress: a head, which begins it anew, and a piece each second. While it is
    // written, no other window takes it for cut off. Answers not_kept when it cannot be written.
    virtual void begin_journal(const std::string& id, const std::string& head) = 0;
    virtual void extend_journal(const std::string& id, const std::string& piece) = 0;
    virtual void drop_journal(const std::string& id) = 0;

    // A file for the user: a first line, and the attempts as they are kept, a line each. Answers exported.
    virtual void export_file(const std::string& name, const std::string& head,
                             const std::vector<std::string>& ids) = 0;
    // Lets the user choose a file, and reads it line by line. Answers the import events.
    virtual void choose_import() = 0;
    // The next line is read only when the one before was taken in.
    virtual void next_import_line() = 0;

    // Lets the user choose several files to be looked at, or a folder, of which those are read whose names
    // end in .jsonl, in folders within it too. One file after the other. Answers for each file_began,
    // file_lines, and file_ended or file_failed; then files_ended. Nothing is answered where the user chooses
    // none.
    virtual void choose_files(bool folder) = 0;
    // The next lines are read only when those before were taken in.
    virtual void next_file_lines() = 0;

    // What happened since the last call, written over `events`.
    virtual void take_events(std::vector<StoreEvent>& events) = 0;
};

}  // namespace slopewise
