// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/circuit/bridge_template.h"

// The formulas of the textbooks: equal arms, no leads, constant voltage, nothing that loads the bridge. What
// a prediction is held against; no prediction is made by them. Strains in m/m, outputs in V/V, resistances in
// ohm. A shunt over arm 1 or 3 pulls `down`, over arm 2 or 4 `up`.

namespace core::textbook {

enum class Pull : std::int8_t { Down = -1, Up = 1 };

/// ± R/(F N (R + Rs)), for small strain. M. J. Bower, Modern Strain Gage Technology, eq. 29.4.
double shuntStrain(Pull pull, double r, double rs, double f, double n);

/// Strain of gauge 1 that gives the same output as the shunt; R is that of the shunted arm.
/// Micro-Measurements TN-514 has it for the quarter bridge, the half Poisson bridge and the column; the
/// others follow from the output of each bridge. None for transducers and for `FullPoissonBendingMixed`,
/// where it is no simple formula.
std::optional<double> equalArmStrain(BridgeType type, double poisson, Pull pull, double r, double rs,
                                     double f);
/// How that is written: "ε = -R / (F (R + 2 Rs))"; empty where there is none.
std::string_view equalArmStrainFormula(BridgeType type, Pull pull);

/// ± R/(4 Rs + 2 R), TN-514.
double shuntOutput(Pull pull, double r, double rs);

/// F N ε/4, for small strain. Bower, eq. 27.4 to 27.11.
double smallStrainOutput(double f, double n, double strain);

/// 4 v/(F N): what an instrument shows that does not correct for the bridge's nonlinearity.
double linearIndication(double v, double f, double n);

/// Strain from the change of output of an equal-arm bridge that was balanced before. Quarter bridge:
/// 4 v/(F (1 - 2 v)), the correction of TN-507, ε = 2 εi/(2 - F εi); the others derived alike. None for
/// bridges that are linear (or as good as) and for transducers.
std::optional<double> correctedStrain(BridgeType type, double poisson, double v, double f);
std::string_view correctedStrainFormula(BridgeType type);

/// By which factor leads make a real strain read too small: (R + wires)/R with the wires that carry the
/// gauge's current. Micro-Measurements on leadwire resistance; one wire of a three-wire connection, two of a
/// two-wire one, both excitation wires of a full bridge.
double leadFactor(double r, double wires);

/// Load that a shunt simulates in a transducer: ± R/(4 Rs + 2 R) x capacity / rated output. Common practice.
double shuntLoad(Pull pull, double r, double rs, double ratedOutput, double capacity);

}  // namespace core::textbook
