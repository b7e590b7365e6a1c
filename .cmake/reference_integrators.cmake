# Integrators of others (SUNDIALS CVODE, Boost.Odeint), which the tests and the benchmark hold ours against.
# Exceptions are allowed here alone: Odeint throws them. Who only builds the program need not have them.
include_guard(GLOBAL)

find_path(cvode_include cvode/cvode.h)
find_library(cvode_library sundials_cvode)
find_library(sundials_core sundials_core) # from version 7 on (Debian 13) the context is in a library of its own
find_package(Boost 1.74)
if(NOT cvode_include OR NOT cvode_library OR NOT Boost_FOUND)
    message(STATUS "No reference_tests: SUNDIALS or Boost is missing (web/toolchain/install tests)")
    return()
endif()

add_library(reference_integrators STATIC
    ${PROJECT_SOURCE_DIR}/tests/reference/integrators.h
    ${PROJECT_SOURCE_DIR}/tests/reference/state_vector.cpp
    ${PROJECT_SOURCE_DIR}/tests/reference/cvode.cpp
    ${PROJECT_SOURCE_DIR}/tests/reference/odeint.cpp)
slopewise_compile_flags(reference_integrators)
target_compile_options(reference_integrators PRIVATE -fexceptions -frtti)
target_include_directories(reference_integrators PRIVATE ${PROJECT_SOURCE_DIR})
target_include_directories(reference_integrators SYSTEM PRIVATE ${cvode_include} ${Boost_INCLUDE_DIRS})
target_link_libraries(reference_integrators PUBLIC slopewise_flight ${cvode_library})
if(sundials_core)
    find_package(MPI REQUIRED COMPONENTS C) # its headers ask for MPI's
    target_link_libraries(reference_integrators PUBLIC ${sundials_core} MPI::MPI_C)
endif()
