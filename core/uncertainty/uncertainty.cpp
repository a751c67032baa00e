// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/uncertainty/uncertainty.h"

#include <cmath>

#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr KeyNames<Distribution, distributionCount> distributionKeys = {
    {"normal", "rectangular", "triangular", "arcsine"}};
constexpr KeyNames<Statement, statementCount> statementKeys = {{"standard", "expanded", "tolerance"}};

bool isAboveZero(double number) { return std::isfinite(number) && number > 0; }

/// What the stated amount is divided by to give the standard uncertainty.
double divisorOf(const Uncertainty& uncertainty) {
  if (uncertainty.statement == Statement::Standard) return 1;
  switch (distributionOf(uncertainty)) {
    case Distribution::Normal:
      return uncertainty.coverageFactor;
    case Distribution::Rectangular:
      return std::sqrt(3.0);
    case Distribution::Triangular:
      return std::sqrt(6.0);
    case Distribution::Arcsine:
      return std::sqrt(2.0);
  }
  return 1;
}

}  // namespace

std::string_view distributionKey(Distribution distribution) { return distributionKeys.of(distribution); }

std::optional<Distribution> distributionFromKey(std::string_view key) { return distributionKeys.find(key); }

std::string_view statementKey(Statement statement) { return statementKeys.of(statement); }

std::optional<Statement> statementFromKey(std::string_view key) { return statementKeys.find(key); }

Result<void> checkUncertainty(const Uncertainty& uncertainty, const std::string& where) {
  if (!std::isfinite(uncertainty.amount) || uncertainty.amount < 0) {
    return Error{where, say("its uncertainty must be a finite number that is not negative"),
                 say("Enter 0 when its value is exact")};
  }
  if (!isAboveZero(uncertainty.coverageFactor)) {
    return Error{where, say("the coverage factor k of its uncertainty must be a number above zero"),
                 say("Enter the k that the certificate states, usually 2")};
  }
  if (uncertainty.degreesOfFreedom && !isAboveZero(*uncertainty.degreesOfFreedom)) {
    return Error{where, say("the degrees of freedom of its uncertainty must be a number above zero"),
                 say("Leave them empty when the uncertainty is known for certain")};
  }
  return {};
}

Distribution distributionOf(const Uncertainty& uncertainty) {
  return uncertainty.statement == Statement::Tolerance ? uncertainty.distribution : Distribution::Normal;
}

double standardUncertainty(const Uncertainty& uncertainty, double value) {
  const double amount = uncertainty.relative ? uncertainty.amount * std::abs(value) : uncertainty.amount;
  return amount / divisorOf(uncertainty);
}

}  // namespace core
