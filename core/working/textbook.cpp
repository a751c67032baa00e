// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/working/textbook.h"

namespace core::textbook {
namespace {

double signOf(Pull pull) { return static_cast<double>(static_cast<int>(pull)); }

}  // namespace

double shuntStrain(Pull pull, double r, double rs, double f, double n) {
  return signOf(pull) * r / (f * n * (r + rs));
}

// Each is the strain at which the output of the bridge is that of the shunt, ± R/(4 Rs + 2 R); for the
// quarter bridge x/(4 + 2 x) = -R/(4 Rs + 2 R) gives x = -R/(R + Rs), and +R/(4 Rs + 2 R) gives x = R/Rs.
std::optional<double> equalArmStrain(BridgeType type, double nu, Pull pull, double r, double rs, double f) {
  const bool up = pull == Pull::Up;
  const double sign = signOf(pull);
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return up ? r / (f * rs) : -r / (f * (r + rs));
    case BridgeType::HalfBending:
      return sign * r / (f * (r + 2 * rs));
    case BridgeType::HalfDiagonal:
      return up ? 2 * r / (f * (4 * rs + r)) : -2 * r / (f * (4 * rs + 3 * r));
    case BridgeType::HalfPoisson:
      return up ? r / (f * ((1 + nu) * rs + nu * r)) : -r / (f * ((1 + nu) * rs + r));
    case BridgeType::FullBending:
    case BridgeType::FullTorsion:
      return sign * r / (f * (4 * rs + 2 * r));
    case BridgeType::FullPoissonColumn:
      return up ? 2 * r / (f * (4 * (1 + nu) * rs + (1 + 3 * nu) * r))
                : -2 * r / (f * (4 * (1 + nu) * rs + (3 + nu) * r));
    case BridgeType::FullPoissonBendingSplit:
      return sign * r / (f * (1 + nu) * (2 * rs + r));
    case BridgeType::FullPoissonBendingMixed:
    case BridgeType::Transducer:
      return std::nullopt;
  }
  return std::nullopt;
}

std::string_view equalArmStrainFormula(BridgeType type, Pull pull) {
  const bool up = pull == Pull::Up;
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return up ? "ε = R / (F Rs)" : "ε = −R / (F (R + Rs))";
    case BridgeType::HalfBending:
      return up ? "ε = R / (F (R + 2 Rs))" : "ε = −R / (F (R + 2 Rs))";
    case BridgeType::HalfDiagonal:
      return up ? "ε = 2 R / (F (4 Rs + R))" : "ε = −2 R / (F (4 Rs + 3 R))";
    case BridgeType::HalfPoisson:
      return up ? "ε = R / (F ((1 + ν) Rs + ν R))" : "ε = −R / (F ((1 + ν) Rs + R))";
    case BridgeType::FullBending:
    case BridgeType::FullTorsion:
      return up ? "ε = R / (F (4 Rs + 2 R))" : "ε = −R / (F (4 Rs + 2 R))";
    case BridgeType::FullPoissonColumn:
      return up ? "ε = 2 R / (F (4 (1 + ν) Rs + (1 + 3 ν) R))" : "ε = −2 R / (F (4 (1 + ν) Rs + (3 + ν) R))";
    case BridgeType::FullPoissonBendingSplit:
      return up ? "ε = R / (F (1 + ν) (2 Rs + R))" : "ε = −R / (F (1 + ν) (2 Rs + R))";
    case BridgeType::FullPoissonBendingMixed:
    case BridgeType::Transducer:
      return {};
  }
  return {};
}

double shuntOutput(Pull pull, double r, double rs) { return signOf(pull) * r / (4 * rs + 2 * r); }

double smallStrainOutput(double f, double n, double strain) { return f * n * strain / 4; }

double linearIndication(double v, double f, double n) { return 4 * v / (f * n); }

// From v(x), x = F ε: quarter x/(4 + 2 x), diagonal x/(2 + x), half Poisson x (1 + ν)/(4 + 2 x (1 - ν)),
// column x (1 + ν)/(2 + x (1 - ν)).
std::optional<double> correctedStrain(BridgeType type, double nu, double v, double f) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return 4 * v / (f * (1 - 2 * v));
    case BridgeType::HalfDiagonal:
      return 2 * v / (f * (1 - v));
    case BridgeType::HalfPoisson:
      return 4 * v / (f * (1 + nu - 2 * v * (1 - nu)));
    case BridgeType::FullPoissonColumn:
      return 2 * v / (f * (1 + nu - v * (1 - nu)));
    default:
      return std::nullopt;
  }
}

std::string_view correctedStrainFormula(BridgeType type) {
  switch (type) {
    case BridgeType::QuarterTwoWire:
    case BridgeType::QuarterThreeWire:
      return "ε = 4 Δv / (F (1 − 2 Δv))";
    case BridgeType::HalfDiagonal:
      return "ε = 2 Δv / (F (1 − Δv))";
    case BridgeType::HalfPoisson:
      return "ε = 4 Δv / (F (1 + ν − 2 Δv (1 − ν)))";
    case BridgeType::FullPoissonColumn:
      return "ε = 2 Δv / (F (1 + ν − Δv (1 − ν)))";
    default:
      return {};
  }
}

double leadFactor(double r, double wires) { return (r + wires) / r; }

double shuntLoad(Pull pull, double r, double rs, double ratedOutput, double capacity) {
  return shuntOutput(pull, r, rs) * capacity / ratedOutput;
}

}  // namespace core::textbook
