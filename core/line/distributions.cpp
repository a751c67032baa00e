// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/line/distributions.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numbers>

namespace core {
namespace {

namespace policies = boost::math::policies;

using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>, policies::underflow_error<policies::ignore_error>,
    policies::denorm_error<policies::ignore_error>, policies::evaluation_error<policies::ignore_error>,
    policies::rounding_error<policies::ignore_error>,
    policies::indeterminate_result_error<policies::ignore_error>, policies::promote_double<false>>;

}  // namespace

double chiSquareExceeded(double chiSquare, int dof) {
  return cdf(complement(boost::math::chi_squared_distribution<double, Quiet>(dof), chiSquare));
}

double chiSquareQuantile(double probability, double dof) {
  return quantile(boost::math::chi_squared_distribution<double, Quiet>(dof), probability);
}

double fisherQuantile(double probability, double dof1, double dof2) {
  return quantile(boost::math::fisher_f_distribution<double, Quiet>(dof1, dof2), probability);
}

double studentExceeded(double t, const std::optional<double>& dof) {
  if (!dof) return 0.5 * std::erfc(t / std::numbers::sqrt2);
  return cdf(complement(boost::math::students_t_distribution<double, Quiet>(*dof), t));
}

double studentQuantile(double probability, const std::optional<double>& dof) {
  if (!dof) return quantile(boost::math::normal_distribution<double, Quiet>(), probability);
  return quantile(boost::math::students_t_distribution<double, Quiet>(*dof), probability);
}

double fisherExceeded(double f, double dof1, double dof2) {
  return cdf(complement(boost::math::fisher_f_distribution<double, Quiet>(dof1, dof2), f));
}

}  // namespace core
