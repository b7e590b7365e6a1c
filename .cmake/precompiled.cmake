# Headers of the standard library that nearly every file takes, read once a target instead of once a file.
include_guard(GLOBAL)

# slopewise_precompile(TARGET): for the targets of many files. Only for g++, whose builds are the longest; the page and
# the builds by clang read each file as it is written, so that an include nobody wrote is missed there.
function(slopewise_precompile target)
    if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
        target_precompile_headers(${target} PRIVATE <algorithm> <array> <cmath> <cstdint> <cstdio> <functional> <map>
            <memory> <optional> <span> <string> <string_view> <utility> <variant> <vector>)
        # The first lets ccache see what is precompiled. The rest is what g++ 12 then wrongly says of its own strings.
        target_compile_options(${target} PRIVATE -fpch-preprocess
            -Wno-array-bounds -Wno-restrict -Wno-stringop-overflow -Wno-stringop-overread)
    endif()
endfunction()
