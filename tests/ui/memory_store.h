// A logbook's store that lives in memory, can be full, damaged, or refuse to open; for the tests of the
// program.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "ui/logbook_store.h"

namespace slopewise::test {

struct MemoryStore : LogbookStore {
    using Kind = StoreEvent::Kind;

    std::map<std::string, std::string> rows, attempts;
    std::map<std::string, std::vector<std::string>> journals;
    std::vector<StoreEvent> events;
    std::vector<std::string> import_lines;                                      // what the user's file holds
    std::vector<std::pair<std::string, std::vector<std::string>>> class_files;  // names, and their lines
    bool folder_asked = false;
    std::string exported;
    std::string refusal;  // why it does not open
    bool full = false;

    void open() override {
        if (!refusal.empty()) return events.push_back({Kind::refused, "", refusal, {}});
        StoreEvent opened{Kind::opened, "", "", {}};
        for (const auto& [id, row] : rows) opened.texts.push_back(id + "\n" + row);
        events.push_back(std::move(opened));
        for (const auto& [id, pieces] : journals) events.push_back({Kind::journal, id, "", pieces});
    }
    void keep(const std::string& id, const std::string& row, const std::string& attempt) override {
        if (full) return events.push_back({Kind::not_kept, id, "This device has no more room.", {}});
        attempts[id] = attempt;
        journals.erase(id);
        keep_row(id, row);
    }
    void keep_row(const std::string& id, const std::string& row) override {
        if (full) return events.push_back({Kind::not_kept, id, "This device has no more room.", {}});
        rows[id] = row;
        events.push_back({Kind::kept, id, "", {}});
    }
    void load(const std::string& id) override {
        if (attempts.count(id) != 0) events.push_back({Kind::loaded, id, "", {attempts[id]}});
        else events.push_back({Kind::not_loaded, id, "It is no longer on this device.", {}});
    }
    void erase(const std::string& id) override {
        rows.erase(id);
        attempts.erase(id);
    }
    void begin_journal(const std::string& id, const std::string& head) override { journals[id] = {head}; }
    void extend_journal(const std::string& id, const std::string& piece) override {
        journals[id].push_back(piece);
    }
    void drop_journal(const std::string& id) override { journals.erase(id); }
    void export_file(const std::string& name, const std::string& head,
                     const std::vector<std::string>& ids) override {
        exported = head;
        for (const std::string& id : ids) exported += attempts[id] + "\n";
        events.push_back({Kind::exported, "", name, {}});
    }
    void choose_import() override {
        next_line_ = 0;
        events.push_back({Kind::import_began, "", "chosen.jsonl", {}});
        next_import_line();
    }
    void next_import_line() override {
        if (next_line_ >= import_lines.size()) return events.push_back({Kind::import_ended, "", "", {}});
        events.push_back({Kind::import_line, "", "", {import_lines[next_line_++]}});
    }
    void choose_files(bool folder) override {
        folder_asked = folder;
        next_file_ = 0;
        next_file();
    }
    // Two lines at a time.
    void next_file_lines() override {
        const std::vector<std::string>& lines = class_files[next_file_ - 1].second;
        StoreEvent event{Kind::file_lines, "", "", {}};
        for (int i = 0; i < 2 && next_file_line_ < lines.size(); ++i)
            event.texts.push_back(lines[next_file_line_++]);
        if (!event.texts.empty()) return events.push_back(std::move(event));
        events.push_back({Kind::file_ended, "", "", {}});
        next_file();
    }
    void take_events(std::vector<StoreEvent>& taken) override {
        taken.clear();
        taken.swap(events);
    }

private:
    void next_file() {
        if (next_file_ >= class_files.size()) return events.push_back({Kind::files_ended, "", "", {}});
        events.push_back({Kind::file_began, "", class_files[next_file_++].first, {}});
        next_file_line_ = 0;
        next_file_lines();
    }

    std::size_t next_line_ = 0, next_file_ = 0, next_file_line_ = 0;
};

}  // namespace slopewise::test
