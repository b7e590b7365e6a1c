# One static library a folder.
include_guard(GLOBAL)

# slopewise_library(NAME INCLUDE_ROOT [DEPENDS...] [EXCLUDE files...])
#
# All *.cpp and *.h of the current folder, so that adding a file needs no change here. Its headers are seen by
# dependants as INCLUDE_ROOT/..., which is engine/ for the engine and the top folder for everything else.
# A folder that holds only headers becomes an interface library.
function(slopewise_library name include_root)
    cmake_parse_arguments(PARSE_ARGV 2 arg "" "" "DEPENDS;EXCLUDE")
    file(GLOB sources CONFIGURE_DEPENDS *.cpp)
    file(GLOB headers CONFIGURE_DEPENDS *.h)
    foreach(file IN LISTS arg_EXCLUDE)
        list(REMOVE_ITEM sources ${CMAKE_CURRENT_SOURCE_DIR}/${file})
        list(REMOVE_ITEM headers ${CMAKE_CURRENT_SOURCE_DIR}/${file})
    endforeach()
    slopewise_library_of(${name} ${include_root} SOURCES ${sources} HEADERS ${headers} DEPENDS ${arg_DEPENDS})
endfunction()

# The same with the files named, for a folder that holds more than one library.
function(slopewise_library_of name include_root)
    cmake_parse_arguments(PARSE_ARGV 2 arg "" "" "SOURCES;HEADERS;DEPENDS")
    if(arg_SOURCES)
        add_library(${name} STATIC ${arg_SOURCES})
        set(scope PUBLIC)
        slopewise_compile_flags(${name})
    else()
        add_library(${name} INTERFACE)
        set(scope INTERFACE)
    endif()
    target_sources(${name} ${scope} FILE_SET HEADERS BASE_DIRS ${include_root} FILES ${arg_HEADERS})
    target_link_libraries(${name} ${scope} ${arg_DEPENDS})
endfunction()
