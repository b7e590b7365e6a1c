#include "debrief/table.h"

#include <cstdio>

#include "review/track_csv.h"

namespace slopewise {

std::string cell_text(double value, int decimals) {
    if (std::isnan(value)) return "";
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    return text;
}

std::string csv_cell(std::string_view text) {
    std::string cell(text);
    if (!cell.empty() && std::string_view("=+-@\t\r").find(cell[0]) != std::string_view::npos)
        cell.insert(0, 1, '\'');
    if (cell.find_first_of(",\"\n\r") == std::string::npos) return cell;
    std::string quoted = "\"";
    for (const char c : cell) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

std::string csv_text(const Table& table) {
    std::string text = std::string("# ") + file_caution + "\n";
    std::string separator;
    const auto add = [&](const std::string& cell) {
        text += separator + cell;
        separator = ",";
    };
    const auto end_row = [&] {
        text += "\n";
        separator.clear();
    };
    if (!table.name_head.empty()) add(std::string(table.name_head));
    for (const Table::Head& head : table.heads) add(std::string(head.name));
    end_row();
    for (const Table::Row& row : table.rows) {
        if (!table.name_head.empty()) add(csv_cell(row.name));
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            add(cell_text(row.cells[i], table.heads[i].decimals));
        end_row();
    }
    return text;
}

std::string dictionary_csv(const std::vector<Table>& tables) {
    std::string text = std::string("# ") + file_caution + "\nfile,column,meaning\n";
    for (const Table& table : tables) {
        const std::string file = std::string(table.title) + ".csv,";
        for (const Table::Head& head : table.heads)
            text += file + std::string(head.name) + "," + csv_cell(head.meaning) + "\n";
    }
    return text;
}

}  // namespace slopewise
