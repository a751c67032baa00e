// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/bridge_template.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"

namespace core {
namespace {

using enum Node;

constexpr StrainShare none{};
constexpr StrainShare plus{1, 0};
constexpr StrainShare minus{-1, 0};
constexpr StrainShare plusPoisson{0, 1};
constexpr StrainShare minusPoisson{0, -1};

constexpr std::array<bool, 4> gauge1{true, false, false, false};
constexpr std::array<bool, 4> gauges12{true, true, false, false};
constexpr std::array<bool, 4> gauges13{true, false, true, false};
constexpr std::array<bool, 4> allArms{true, true, true, true};

// Completion resistors sit on the instrument's terminals.
const std::vector<Join> arms34Inside = {
    {Arm3Begin, PMinus}, {Arm3End, SPlus}, {Arm4Begin, SPlus}, {Arm4End, PPlus}};

std::vector<Join> with(std::vector<Join> joins, std::initializer_list<Join> more) {
  joins.insert(joins.end(), more);
  return joins;
}

const std::vector<Wire> gauge1TwoWires = {{LeadRole::ExcitationPlus, PPlus, Arm1Begin},
                                          {LeadRole::SignalMinus, SMinus, Arm1End}};
const std::vector<Wire> gauge1ThreeWires = {{LeadRole::ExcitationPlus, PPlus, Arm1Begin},
                                            {LeadRole::SignalMinus, SMinus, Arm1End},
                                            {LeadRole::Return, Arm2Begin, Arm1End}};
const std::vector<Wire> halfWires = {{LeadRole::ExcitationPlus, PPlus, Arm1Begin},
                                     {LeadRole::SignalMinus, SMinus, Arm1End},
                                     {LeadRole::ExcitationMinus, PMinus, Arm2End}};
const std::vector<Wire> diagonalWires = {{LeadRole::ExcitationPlus, PPlus, Arm1Begin},
                                         {LeadRole::SignalMinus, SMinus, Arm1End},
                                         {LeadRole::ExcitationMinus, PMinus, Arm3Begin},
                                         {LeadRole::SignalPlus, SPlus, Arm3End}};
const std::vector<Wire> fullWires = {{LeadRole::ExcitationPlus, PPlus, Arm1Begin},
                                     {LeadRole::ExcitationMinus, PMinus, Arm2End},
                                     {LeadRole::SignalPlus, SPlus, Arm3End},
                                     {LeadRole::SignalMinus, SMinus, Arm1End}};

const std::vector<Join> quarterTwoJoins = with(arms34Inside, {{Arm2Begin, SMinus}, {Arm2End, PMinus}});
const std::vector<Join> quarterThreeJoins = with(arms34Inside, {{Arm2End, PMinus}});
const std::vector<Join> halfJoins = with(arms34Inside, {{Arm1End, Arm2Begin}});
const std::vector<Join> diagonalJoins = {
    {Arm2Begin, SMinus}, {Arm2End, PMinus}, {Arm4Begin, SPlus}, {Arm4End, PPlus}};
const std::vector<Join> fullJoins = {
    {Arm4End, Arm1Begin}, {Arm1End, Arm2Begin}, {Arm2End, Arm3Begin}, {Arm3End, Arm4Begin}};

// In the order of BridgeType.
const std::array<BridgeTemplate, bridgeTypeCount> templates = {{
    {BridgeType::QuarterTwoWire,
     "quarter_two_wire",
     sayLater("Quarter bridge, two-wire"),
     sayLater("One gauge in arm 1 on two wires; both wires lie in its arm."),
     {plus, none, none, none},
     gauge1,
     gauge1TwoWires,
     quarterTwoJoins,
     false},
    {BridgeType::QuarterThreeWire,
     "quarter_three_wire",
     sayLater("Quarter bridge, three-wire"),
     sayLater("One gauge in arm 1 on three wires; one current-carrying wire each in arms 1 and 2."),
     {plus, none, none, none},
     gauge1,
     gauge1ThreeWires,
     quarterThreeJoins,
     false},
    {BridgeType::HalfBending,
     "half_bending",
     sayLater("Half bridge, bending"),
     sayLater("Gauges of equal and opposite strain in the adjacent arms 1 and 2."),
     {plus, minus, none, none},
     gauges12,
     halfWires,
     halfJoins,
     false},
    {BridgeType::HalfPoisson,
     "half_poisson",
     sayLater("Half bridge, Poisson gauge"),
     sayLater("Gauge along the strain in arm 1, gauge across it in arm 2."),
     {plus, minusPoisson, none, none},
     gauges12,
     halfWires,
     halfJoins,
     false},
    {BridgeType::HalfDiagonal,
     "half_diagonal",
     sayLater("Half bridge, diagonal"),
     sayLater("Gauges of equal strain in the opposite arms 1 and 3; bending cancels."),
     {plus, none, plus, none},
     gauges13,
     diagonalWires,
     diagonalJoins,
     false},
    {BridgeType::FullBending,
     "full_bending",
     sayLater("Full bridge, bending"),
     sayLater("Four gauges of equal strain, arms 2 and 4 opposite in sign."),
     {plus, minus, plus, minus},
     allArms,
     fullWires,
     fullJoins,
     true},
    {BridgeType::FullPoissonColumn,
     "full_poisson_column",
     sayLater("Full bridge, Poisson, column"),
     sayLater("Arms 1 and 3 along the axial strain, arms 2 and 4 across it."),
     {plus, minusPoisson, plus, minusPoisson},
     allArms,
     fullWires,
     fullJoins,
     true},
    {BridgeType::FullPoissonBendingSplit,
     "full_poisson_bending_split",
     sayLater("Full bridge, Poisson, bending, along and across apart"),
     sayLater("Arms 1 and 2 along the strain on opposite faces, arms 3 and 4 across it; exactly linear."),
     {plus, minus, plusPoisson, minusPoisson},
     allArms,
     fullWires,
     fullJoins,
     true},
    {BridgeType::FullPoissonBendingMixed,
     "full_poisson_bending_mixed",
     sayLater("Full bridge, Poisson, bending, along and across paired"),
     sayLater("Arms 1 and 2 along and across on one face, arms 4 and 3 on the other."),
     {plus, minusPoisson, plusPoisson, minus},
     allArms,
     fullWires,
     fullJoins,
     true},
    {BridgeType::FullTorsion,
     "full_torsion",
     sayLater("Full bridge, torsion"),
     sayLater("Gauges at plus and minus 45 degrees; the shear strain is twice the strain of gauge 1."),
     {plus, minus, plus, minus},
     allArms,
     fullWires,
     fullJoins,
     true},
    {BridgeType::Transducer,
     "transducer",
     sayLater("Four-arm transducer"),
     sayLater("A full bridge known by its rated output and capacity, such as a load cell."),
     {plus, minus, plus, minus},
     allArms,
     fullWires,
     fullJoins,
     true},
}};

}  // namespace

double BridgeTemplate::bridgeFactor(double poissonRatio) const {
  double factor = 0;
  for (const std::size_t arm : {0, 1, 2, 3}) factor += (arm % 2 == 0 ? 1 : -1) * shares[arm].at(poissonRatio);
  return factor;
}

const BridgeTemplate& templateOf(BridgeType type) { return templates[static_cast<std::size_t>(type)]; }

std::span<const BridgeTemplate> allTemplates() { return templates; }

std::optional<BridgeType> bridgeTypeFromKey(std::string_view key) {
  const auto found =
      std::find_if(templates.begin(), templates.end(), [&](const auto& t) { return t.key == key; });
  if (found == templates.end()) return std::nullopt;
  return found->type;
}

}  // namespace core
