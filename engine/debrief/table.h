// Tables of figures: one list of columns makes the CSV, the JSON and the dictionary, so that they agree.
#pragma once

#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

// A figure that there is none of: an empty cell, a null.
inline constexpr double unknown = std::numeric_limits<double>::quiet_NaN();
inline double known_if(bool known, double value) { return known ? value : unknown; }

// One column: its name with its unit in it, its digits, what it means, and its value in a row's source.
template <class Source>
struct Column {
    std::string_view name;
    int decimals = 0;
    std::string_view meaning;
    double (*value)(const Source&) = nullptr;
};

// A table made of columns: cells are numbers (unknown: none), the first may be a name.
struct Table {
    struct Head {
        std::string_view name;
        int decimals = 0;
        std::string_view meaning;
    };
    struct Row {
        std::string name;
        std::vector<double> cells;
    };
    std::string_view title;      // "gates": of the file
    std::string_view name_head;  // of the rows' names; empty: they have none
    std::vector<Head> heads;
    std::vector<Row> rows;
};

template <class Source, std::size_t count>
void set_heads(Table& table, const Column<Source> (&columns)[count]) {
    for (const Column<Source>& column : columns)
        table.heads.push_back({column.name, column.decimals, column.meaning});
}

template <class Source, std::size_t count>
void add_row(Table& table, const Column<Source> (&columns)[count], std::string name, const Source& source) {
    Table::Row row{std::move(name), {}};
    for (const Column<Source>& column : columns) row.cells.push_back(column.value(source));
    table.rows.push_back(std::move(row));
}

// "-0.25"; empty where it is unknown.
std::string cell_text(double value, int decimals);

// With the caution as a first line that begins with "#", then the header. Comma, decimal point, LF, UTF-8.
std::string csv_text(const Table& table);

// What every column of the tables means: file, column, meaning.
std::string dictionary_csv(const std::vector<Table>& tables);

// A text as one CSV cell (RFC 4180). One that a spreadsheet might take for a formula gets a leading quote.
std::string csv_cell(std::string_view text);

}  // namespace slopewise
