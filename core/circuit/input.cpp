// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/input.h"

#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<InputKind, inputKindCount> kinds{{"arm",
                                                     "lead",
                                                     "lead_temperature",
                                                     "shunt",
                                                     "shunt_wires",
                                                     "shunt_contact",
                                                     "leak_across",
                                                     "leak_to_structure",
                                                     "balance_potentiometer",
                                                     "balance_limiting",
                                                     "balance_wiper",
                                                     "input_resistance",
                                                     "gauge_factor",
                                                     "factor_coefficient",
                                                     "gauge_temperature",
                                                     "poisson_ratio",
                                                     "rated_output",
                                                     "gain",
                                                     "excitation",
                                                     "zero_drift",
                                                     "rounding"}};

}  // namespace

std::string_view inputKindKey(InputKind kind) { return kinds.of(kind); }
std::optional<InputKind> inputKindFromKey(std::string_view key) { return kinds.find(key); }

}  // namespace core
