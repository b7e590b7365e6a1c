# How all of our own code is compiled: the language, the warnings, and what keeps a flight the same everywhere.
include_guard(GLOBAL)

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_VERIFY_INTERFACE_HEADER_SETS ON) # each header must compile alone: all_verify_interface_header_sets
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR})

# The optimiser's level is set here once; assertions stay on in every build but the one that is served. The page is
# built for size, but for what runs in every tick (engine/CMakeLists.txt): 4 kB more (brotli), and a tick takes 1.5 times
# what it takes natively, not 1.7.
if(NOT SLOPEWISE_SANITIZE)
    set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O2 -g1") # lines for a stack's trace; all that a debugger wants takes a third longer
    set(CMAKE_C_FLAGS_RELWITHDEBINFO "-O2 -g1")
endif()
set(CMAKE_CXX_FLAGS_RELEASE "-Oz -DNDEBUG")
set(CMAKE_C_FLAGS_RELEASE "-Oz -DNDEBUG")
if(EMSCRIPTEN) # linked at -Oz, Emscripten would take other, smaller pow and log, whose last bits differ
    # The usual stack of 64 kB is too small for whole values (App, View) in one frame of main, and is not guarded.
    set(CMAKE_EXE_LINKER_FLAGS_RELEASE "-Os -sSTACK_SIZE=1048576")
endif()

find_program(CCACHE ccache)
if(CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    # Depend mode asks the compiler once, not twice, on a miss (Emscripten takes long to start). With a base folder
    # and without the working folder in the key, a second clone finds what the first has compiled. With what it may
    # overlook, it keeps files that take precompiled headers too; none of ours asks for the date.
    set(CMAKE_C_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env
        CCACHE_DEPEND=1 CCACHE_BASEDIR=${PROJECT_SOURCE_DIR} CCACHE_NOHASHDIR=1
        CCACHE_SLOPPINESS=pch_defines,time_macros ${CCACHE})
    set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_C_COMPILER_LAUNCHER})
endif()

# The same inputs must give the same bits natively and in WebAssembly. A fused multiply-add rounds once where two
# operations round twice, so the compiler may not contract; nor may it reorder (-ffast-math) or use what only this
# machine has (-march=native).
set(slopewise_float_flags -ffp-contract=off)

option(SLOPEWISE_SANITIZE "Stop at the first memory error or undefined behaviour" OFF)
if(SLOPEWISE_SANITIZE)
    add_compile_options(-fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
    add_link_options(-fsanitize=address,undefined)
endif()

# Everything is told to libFuzzer, so that it sees which bytes lead somewhere new. A number that fits no integer is
# undefined too, though clang does not count it among the rest.
option(SLOPEWISE_FUZZ "Build for libFuzzer, stopping at the first memory error or undefined behaviour" OFF)
if(SLOPEWISE_FUZZ)
    set(fuzz_checks address,undefined,float-cast-overflow)
    add_compile_options(-O1 -gline-tables-only -fno-omit-frame-pointer -fsanitize=fuzzer-no-link,${fuzz_checks}
        -fno-sanitize-recover=all)
    add_link_options(-fsanitize=${fuzz_checks} -fuse-ld=lld)
endif()

option(SLOPEWISE_COVERAGE "Count which lines and branches are run" OFF)

# slopewise_compile_flags(TARGET): for our own code; libraries of others are left as they come.
function(slopewise_compile_flags target)
    target_compile_options(${target} PRIVATE
        -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Werror
        ${slopewise_float_flags}
        $<$<COMPILE_LANGUAGE:CXX>:-fno-exceptions -fno-rtti>)
    if(SLOPEWISE_COVERAGE)
        target_compile_options(${target} PRIVATE -O0 --coverage)
        target_link_options(${target} PUBLIC --coverage)
    endif()
endfunction()

# slopewise_sees_version(TARGET): for the few that show it to the user.
function(slopewise_sees_version target)
    target_compile_definitions(${target} PRIVATE SLOPEWISE_VERSION="${PROJECT_VERSION}")
endfunction()
