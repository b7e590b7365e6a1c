// Writes what a class of thirty invented students would hand over, a file each:
//
//   class_files FOLDER
//
// For the browser's tests, and to try the table of a class by hand.
#include <cstdio>
#include <fstream>
#include <string>

#include "tests/fixtures.h"
#include "tests/students/class_students.h"

int main(int count, char** words) {
    if (count != 2) {
        std::fputs("class_files FOLDER\n", stderr);
        return 2;
    }
    for (int number = 0; number < 30; ++number) {
        const auto student = slopewise::test::class_student(number, slopewise::test::shipped());
        std::ofstream file(std::string(words[1]) + "/" + student.file);
        for (const std::string& line : student.lines()) file << line << "\n";
        if (!file) {
            std::fprintf(stderr, "%s/%s cannot be written\n", words[1], student.file.c_str());
            return 1;
        }
    }
    return 0;
}
