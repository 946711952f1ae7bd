// Intervals that are sure to hold the exact result: Boost.Interval, with a rounding policy of our own. Each operation
// is rounded to nearest, which is off by half a unit in the last place at most, and then moved one unit outward. That
// gives up a bit of width and needs no change of the processor's rounding mode, which compilers move operations across.
#pragma once
#include <boost/numeric/interval.hpp>
#include <cmath>
#include <limits>

namespace prover::motion {

struct Outward {
  using unprotected_rounding = Outward;
  void init() {}
  static double down(double v) { return std::nextafter(v, -std::numeric_limits<double>::infinity()); }
  static double up(double v) { return std::nextafter(v, std::numeric_limits<double>::infinity()); }
  template <class T>
  double conv_down(const T& v) const { return down(static_cast<double>(v)); }
  template <class T>
  double conv_up(const T& v) const { return up(static_cast<double>(v)); }
  double conv_down(double v) const { return v; }
  double conv_up(double v) const { return v; }
  double add_down(double x, double y) const { return down(x + y); }
  double add_up(double x, double y) const { return up(x + y); }
  double sub_down(double x, double y) const { return down(x - y); }
  double sub_up(double x, double y) const { return up(x - y); }
  double mul_down(double x, double y) const { return down(x * y); }
  double mul_up(double x, double y) const { return up(x * y); }
  double div_down(double x, double y) const { return down(x / y); }
  double div_up(double x, double y) const { return up(x / y); }
  double sqrt_down(double x) const { return x <= 0 ? 0 : std::max(0.0, down(std::sqrt(x))); }
  double sqrt_up(double x) const { return up(std::sqrt(x)); }
  double median(double x, double y) const { return x + (y - x) / 2; }
  double int_down(double x) const { return std::floor(x); }
  double int_up(double x) const { return std::ceil(x); }
};

using Interval =
    boost::numeric::interval<double, boost::numeric::interval_lib::policies<
                                         Outward, boost::numeric::interval_lib::checking_base<double>>>;

}  // namespace prover::motion
