# How all of our own code is compiled: the language, the warnings, and what keeps a flight the same everywhere.
include_guard(GLOBAL)

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
set(CMAKE_VERIFY_INTERFACE_HEADER_SETS ON) # each header must compile alone: all_verify_interface_header_sets
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR})

# The optimiser's level is set here once; assertions stay on in every build but the one that is served. The page is
# built for size: all of it is 304 kB compressed (brotli, `node web/measure.mjs`) where -O2 is 351 and -O3 345. The golden
# flights take node 0.37-0.44 s on a quiet 2-core cloud machine; -O2 took 0.44-0.48 and -O3 0.52-0.53 on a busy one.
if(NOT SLOPEWISE_SANITIZE)
    set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O2 -g")
    set(CMAKE_C_FLAGS_RELWITHDEBINFO "-O2 -g")
endif()
set(CMAKE_CXX_FLAGS_RELEASE "-Oz -DNDEBUG")
set(CMAKE_C_FLAGS_RELEASE "-Oz -DNDEBUG")
if(EMSCRIPTEN) # linked at -Oz, Emscripten would take other, smaller pow and log, whose last bits differ
    set(CMAKE_EXE_LINKER_FLAGS_RELEASE "-Os")
endif()

find_program(CCACHE ccache)
if(CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    # Depend mode asks the compiler once, not twice, on a miss (Emscripten takes long to start). With a base folder
    # and without the working folder in the key, a second clone finds what the first has compiled.
    set(CMAKE_C_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env
        CCACHE_DEPEND=1 CCACHE_BASEDIR=${PROJECT_SOURCE_DIR} CCACHE_NOHASHDIR=1 ${CCACHE})
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

# slopewise_compile_flags(TARGET): for our own code; libraries of others are left as they come.
function(slopewise_compile_flags target)
    target_compile_options(${target} PRIVATE
        -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Werror
        ${slopewise_float_flags}
        $<$<COMPILE_LANGUAGE:CXX>:-fno-exceptions -fno-rtti>)
endfunction()

# slopewise_sees_version(TARGET): for the few that show it to the user.
function(slopewise_sees_version target)
    target_compile_definitions(${target} PRIVATE SLOPEWISE_VERSION="${PROJECT_VERSION}")
endfunction()
