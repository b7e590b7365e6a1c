# Files compiled into the program.
include_guard(GLOBAL)

# embed_files(NAME file...): a library that holds the files and answers as assets/embedded.h says. A file is a path
# from the top folder, which is then its name in the program, or name=path.
function(embed_files name)
    foreach(file IN LISTS ARGN)
        string(REGEX REPLACE "^.*=" "" path ${file})
        cmake_path(ABSOLUTE_PATH path BASE_DIRECTORY ${PROJECT_SOURCE_DIR})
        list(APPEND paths ${path})
    endforeach()
    set(generated ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    add_custom_command(
        OUTPUT ${generated}
        COMMAND Python3::Interpreter ${PROJECT_SOURCE_DIR}/.cmake/embed_files.py ${generated} ${ARGN}
        WORKING_DIRECTORY ${PROJECT_SOURCE_DIR}
        DEPENDS ${PROJECT_SOURCE_DIR}/.cmake/embed_files.py ${paths}
        COMMENT "Embedding data and fonts"
        VERBATIM)
    slopewise_library_of(${name} ${PROJECT_SOURCE_DIR} SOURCES ${generated} HEADERS embedded.h)
endfunction()

# subset_font(FROM TO): only the characters that the screens can use, without hinting (ImGui reads none).
# Basic Latin, Latin-1, general punctuation, arrows, mathematical signs: as far as the font has them.
function(subset_font from to)
    add_custom_command(
        OUTPUT ${to}
        COMMAND ${CMAKE_COMMAND} -E env PYTHONPATH=${SLOPEWISE_DEPS}/fonttools SOURCE_DATE_EPOCH=0
            ${Python3_EXECUTABLE} -m fontTools.subset ${from} --output-file=${to}
            --unicodes=U+0020-007E,U+00A0-00FF,U+2010-2027,U+2030-203A,U+2190-2199,U+2200-22FF
            --layout-features=kern,mark,mkmk,ccmp --no-hinting --desubroutinize --no-recalc-timestamp
        DEPENDS ${from}
        COMMENT "Subsetting ${from}"
        VERBATIM)
endfunction()
