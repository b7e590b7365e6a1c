// WebAssembly: Emscripten's C library is musl's own, so its functions are the ones we want.
#include "base/exact_math.h"

#include <math.h>

namespace slopewise::exact {

double sin(double rad) { return ::sin(rad); }
double cos(double rad) { return ::cos(rad); }
double tan(double rad) { return ::tan(rad); }
double atan(double x) { return ::atan(x); }
double atan2(double y, double x) { return ::atan2(y, x); }
double exp(double x) { return ::exp(x); }
double log(double x) { return ::log(x); }
double pow(double base, double exponent) { return ::pow(base, exponent); }

}  // namespace slopewise::exact
