// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/student_deviates.h"

#include <array>

#include "core/uncertainty/portable.h"
#include "core/uncertainty/random.h"

namespace core {
namespace {

// With t = sqrt(nu) sinh(s), the density (1 + t^2/nu)^(-(nu + 1)/2) dt becomes sqrt(nu) cosh(s)^-nu ds, which
// is tame for any nu. Its integral from s to infinity over twice that from 0 is the probability above t. It
// is summed from the far end inwards, so that small probabilities keep all their digits.

/// e to this is 3e-20, below the probability above the last node.
constexpr double farExponent = 45;
constexpr std::size_t steps = 1024;

double cosh(double s) { return 0.5 * (portable::exp(s) + portable::exp(-s)); }
double sinh(double s) { return 0.5 * (portable::exp(s) - portable::exp(-s)); }

/// s against the standard normal deviate z of the same probability, with its slope.
struct Point {
  double z, s, slope;
};

class Curve {
 public:
  explicit Curve(double dof) : m_dof(dof) {
    const double c = portable::exp(farExponent / dof);
    m_step = portable::log(c + std::sqrt((c - 1) * (c + 1))) / steps;
    const double far = m_step * steps;
    m_above[steps] = density(far) * cosh(far) / (sinh(far) * dof);
    for (std::size_t k = steps; k-- > 0;) m_above[k] = m_above[k + 1] + cellIntegral(static_cast<double>(k));
  }

  Point at(std::size_t k) const {
    const double s = m_step * static_cast<double>(k);
    const double z = -normalQuantile(0.5 * m_above[k] / m_above[0]);
    return {z, s, slopeAt(z, s)};
  }

  /// ds/dz: the normal density over that of s.
  double slopeAt(double z, double s) const {
    constexpr double rootTwoPi = 2.5066282746310005024;
    return portable::exp(-0.5 * z * z) / rootTwoPi * 2 * m_above[0] / density(s);
  }

 private:
  double density(double s) const { return portable::exp(-m_dof * portable::log(cosh(s))); }

  /// Gauss and Legendre with three points.
  double cellIntegral(double cell) const {
    constexpr double offset = 0.38729833462074168852;  // sqrt(3/5) / 2
    const double middle = cell + 0.5;
    return m_step / 18 *
           (5 * density(m_step * (middle - offset)) + 8 * density(m_step * middle) +
            5 * density(m_step * (middle + offset)));
  }

  double m_dof;
  double m_step = 0;
  std::array<double, steps + 1> m_above{};
};

double interpolated(const Point& a, const Point& b, double z) {
  const double width = b.z - a.z, x = (z - a.z) / width, y = 1 - x;
  return y * y * (a.s * (1 + 2 * x) + a.slope * width * x) +
         x * x * (b.s * (1 + 2 * y) - b.slope * width * y);
}

}  // namespace

StudentDeviates::StudentDeviates(double degreesOfFreedom) {
  const double dof = std::clamp(degreesOfFreedom, 1.0, 1e6), root = std::sqrt(dof);
  const Curve curve(dof);
  m_nodes.reserve(cells + 1);
  std::size_t next = 1;
  Point before = curve.at(0), after = curve.at(1);
  for (std::size_t node = 0; node <= cells; ++node) {
    const double z = static_cast<double>(node) / cellsPerUnit;
    for (; after.z < z; after = curve.at(++next)) before = after;
    const double s = interpolated(before, after, z);
    m_nodes.push_back({root * sinh(s), root * cosh(s) * curve.slopeAt(z, s) / cellsPerUnit});
  }
}

}  // namespace core
