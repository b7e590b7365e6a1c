# The libraries of others. Those from the system are found here; those that web/toolchain/install keeps in its
# folder are found there. Each is attached only to the folder that may see it.
include_guard(GLOBAL)
include(deps_folder)

# ---- Headers of the system that both builds use -----------------------------------------------------------------
# The WebAssembly compiler must not see /usr/include, so each library gets a folder that holds nothing else.
function(slopewise_header_library name header)
    find_path(${name}_include ${header} PATHS /usr/include NO_CMAKE_FIND_ROOT_PATH REQUIRED)
    get_filename_component(folder ${header} DIRECTORY)
    file(MAKE_DIRECTORY ${CMAKE_BINARY_DIR}/include/${name})
    file(CREATE_LINK ${${name}_include}/${folder} ${CMAKE_BINARY_DIR}/include/${name}/${folder} SYMBOLIC)
    add_library(${name} INTERFACE)
    target_include_directories(${name} SYSTEM INTERFACE ${CMAKE_BINARY_DIR}/include/${name})
endfunction()

slopewise_header_library(nlohmann_json nlohmann/json.hpp)
target_compile_definitions(nlohmann_json INTERFACE JSON_NOEXCEPTION)

# ---- One mathematical library for both builds -------------------------------------------------------------------
# glibc and musl differ in the last bits of sin, exp and their like. Emscripten's own C library is musl; the native
# build compiles the same files, under names of their own, and the engine calls those (engine/base/exact_math.h).
if(NOT EMSCRIPTEN)
    set(musl_dir ${SLOPEWISE_DEPS}/emscripten/root/system/lib/libc/musl)
    set(musl_functions sin cos tan asin acos atan atan2 exp log pow cbrt)
    set(musl_parts
        __sin __cos __tan __rem_pio2 __rem_pio2_large exp_data log_data pow_data
        __math_divzero __math_invalid __math_oflow __math_uflow __math_xflow)
    # What these call besides that is exact in IEEE arithmetic: sqrt, fabs, floor, scalbn. Any C library will do.
    foreach(file IN LISTS musl_functions musl_parts)
        if(NOT EXISTS ${musl_dir}/src/math/${file}.c)
            message(FATAL_ERROR "${musl_dir}/src/math/${file}.c is missing: run web/toolchain/install build")
        endif()
        list(APPEND musl_sources ${musl_dir}/src/math/${file}.c)
    endforeach()
    # <math.h> first, so that the C library's own declarations keep their names; kernels get a second prefix.
    # Each new name is declared with the type of the old: atan2 calls atan, and undeclared it would return an int.
    set(names "#include <math.h>\n#define hidden\n")
    foreach(name IN LISTS musl_functions)
        string(APPEND names "extern __typeof__(${name}) musl_${name};\n#define ${name} musl_${name}\n")
    endforeach()
    foreach(name IN LISTS musl_parts ITEMS __exp_data __log_data __pow_log_data __sinl __cosl __tanl)
        string(APPEND names "#define ${name} musl_part_${name}\n")
    endforeach()
    # atan2 calls atan, which under its new name nobody has declared.
    string(APPEND names "double musl_atan(double);\n")
    file(CONFIGURE OUTPUT ${CMAKE_BINARY_DIR}/musl/musl_names.h CONTENT "${names}")
    # libm.h asks for "fp_arch.h", of which the general one is right for every machine with IEEE doubles.
    file(COPY_FILE ${musl_dir}/arch/generic/fp_arch.h ${CMAKE_BINARY_DIR}/musl/fp_arch.h ONLY_IF_DIFFERENT)

    add_library(slopewise_musl_math STATIC ${musl_sources})
    target_include_directories(slopewise_musl_math PRIVATE ${CMAKE_BINARY_DIR}/musl ${musl_dir}/src/internal)
    target_compile_options(slopewise_musl_math PRIVATE
        -std=c99 -D_GNU_SOURCE -w -Werror=implicit-function-declaration -ffp-contract=off -fno-builtin
        -include musl_names.h)
    target_link_libraries(slopewise_musl_math PUBLIC m)
endif()

if(SLOPEWISE_ENGINE_ONLY)
    return()
endif()

# ---- Dear ImGui -------------------------------------------------------------------------------------------------
set(imgui_dir ${SLOPEWISE_DEPS}/imgui)
add_library(imgui STATIC
    ${imgui_dir}/imgui.cpp ${imgui_dir}/imgui_draw.cpp ${imgui_dir}/imgui_tables.cpp ${imgui_dir}/imgui_widgets.cpp)
target_include_directories(imgui SYSTEM PUBLIC ${imgui_dir})
target_include_directories(imgui PUBLIC ${PROJECT_SOURCE_DIR}) # for the next line
target_compile_definitions(imgui PUBLIC IMGUI_USER_CONFIG="ui/platform/imgui_config.h")
target_compile_options(imgui PRIVATE -fno-exceptions -fno-rtti -w)

# Window, drawing, sound and controllers: seen by ui/platform alone.
add_library(imgui_backends STATIC
    ${imgui_dir}/backends/imgui_impl_glfw.cpp ${imgui_dir}/backends/imgui_impl_opengl3.cpp)
target_include_directories(imgui_backends SYSTEM PUBLIC ${imgui_dir}/backends)
target_compile_options(imgui_backends PRIVATE -fno-exceptions -fno-rtti -w)
target_link_libraries(imgui_backends PUBLIC imgui)

add_library(sound_and_controllers INTERFACE)
if(EMSCRIPTEN)
    target_compile_definitions(imgui_backends PUBLIC IMGUI_IMPL_OPENGL_ES3)
    target_include_directories(sound_and_controllers SYSTEM INTERFACE ${SLOPEWISE_DEPS}/sdl2-wasm/include)
    target_link_libraries(sound_and_controllers INTERFACE ${SLOPEWISE_DEPS}/sdl2-wasm/lib/libSDL2.a)
else()
    find_package(glfw3 3.3 REQUIRED)
    find_package(OpenGL REQUIRED)
    find_package(SDL2 2.26 REQUIRED CONFIG)
    target_link_libraries(imgui_backends PUBLIC glfw OpenGL::GL ${CMAKE_DL_LIBS})
    get_target_property(sdl2_include SDL2::SDL2 INTERFACE_INCLUDE_DIRECTORIES)
    list(FILTER sdl2_include EXCLUDE REGEX "/SDL2$") # <SDL2/SDL.h> in both builds
    target_include_directories(sound_and_controllers SYSTEM INTERFACE ${sdl2_include})
    target_link_libraries(sound_and_controllers INTERFACE $<TARGET_FILE:SDL2::SDL2>)
endif()
