// Native builds: musl's functions, compiled from its source package under a prefix of their own.
#include "base/exact_math.h"

extern "C" {
double musl_sin(double);
double musl_cos(double);
double musl_tan(double);
double musl_atan(double);
double musl_atan2(double, double);
double musl_exp(double);
double musl_log(double);
double musl_pow(double, double);
}

namespace slopewise::exact {

double sin(double rad) { return musl_sin(rad); }
double cos(double rad) { return musl_cos(rad); }
double tan(double rad) { return musl_tan(rad); }
double atan(double x) { return musl_atan(x); }
double atan2(double y, double x) { return musl_atan2(y, x); }
double exp(double x) { return musl_exp(x); }
double log(double x) { return musl_log(x); }
double pow(double base, double exponent) { return musl_pow(base, exponent); }

}  // namespace slopewise::exact
