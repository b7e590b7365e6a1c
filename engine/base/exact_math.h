// The transcendental functions of the engine: one library (musl's) in every build, so that the same
// inputs give the same bits natively and in WebAssembly. glibc's differ from musl's in the last bits,
// and a compiler may fold a call with its own library, hence the separate translation unit.
#pragma once

namespace slopewise::exact {

double sin(double rad);
double cos(double rad);
double tan(double rad);
double atan(double x);
double atan2(double y, double x);  // radians in [-pi, pi]
double exp(double x);
double log(double x);
double pow(double base, double exponent);

}  // namespace slopewise::exact
