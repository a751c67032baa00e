// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/circuit/bridge_template.h"
#include "core/circuit/effects.h"
#include "core/circuit/self_heating.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

namespace core {

/// The gauges of one bridge; all alike. A resistance change is factor x strain x nominal.
struct Gauge {
  Resistance nominal{350};
  double factor = 2.0;           ///< gauge factor F of the gauge itself, not the instrument's setting
  double poissonRatio = 0.3;     ///< of the structure; used by Poisson templates only
  double factorCoefficient = 0;  ///< relative change of F with temperature, 1/K; linear law
  Temperature factorAt{23};      ///< the temperature that `factor` is stated for
  Temperature installed{23};     ///< the temperature of the gauges during the check
  Grid grid = {};                ///< for the load by self-heating

  friend bool operator==(const Gauge&, const Gauge&) = default;
};

/// Gauge factor at the temperature of the check: F (1 + coefficient x (installed - factorAt)).
double gaugeFactorOf(const Gauge& gauge);

/// What a transducer's certificate says; used by the template `Transducer` only.
struct Rating {
  Output ratedOutput{2e-3};  ///< output at capacity, no leads, V/V
  double capacity = 1;       ///< in `loadUnit`
  std::string loadUnit = "kN";

  friend bool operator==(const Rating&, const Rating&) = default;
};

/// How a bridge is really connected, where that is not as its template says: on purpose, or to see what a
/// mistake would do. What names a lead that the bridge has not got plays no part.
struct Hookup {
  bool signalReversed = false;      ///< the instrument measures S- against S+
  bool excitationReversed = false;  ///< the source's plus side is on P-, and that of the sense pair with it
  bool gaugesReversed = false;      ///< all gauges feel the opposite of what the template says
  std::array<bool, leadRoleCount> broken = {};
  std::vector<LeadPair> exchanged = {};  ///< at the instrument, one pair after the other
  std::vector<LeadPair> touching = {};   ///< joined without resistance at their gauge ends

  friend bool operator==(const Hookup&, const Hookup&) = default;
};

/// The bridge and its wiring, as installed and without load.
struct Bridge {
  BridgeType type = BridgeType::QuarterThreeWire;
  Gauge gauge;
  Rating rating;
  /// Arms 1 to 4 as measured: gauges where the template has them, completion resistors elsewhere.
  std::array<Resistance, 4> arms{Resistance(350), Resistance(350), Resistance(350), Resistance(350)};
  Leads leads{};
  bool sixWire = false;  ///< sense leads measure the excitation at the bridge; where the template offers them
  Warming leadWarming = {};        ///< of all leads above the temperature that their resistance is stated for
  std::array<Leak, 4> leaks = {};  ///< of arms 1 to 4
  Hookup hookup = {};

  friend bool operator==(const Bridge&, const Bridge&) = default;
};

/// What the instrument's readings are in.
enum class ReadingUnit : std::uint8_t {
  MicrometrePerMetre,  ///< strain by 4 v / (F N), F and N as set
  MillivoltPerVolt,    ///< output
  Millivolt,           ///< output times the excitation as set
  Scaled,              ///< output times `unitsPerMillivoltPerVolt`, in `scaledUnit`
};
inline constexpr std::size_t readingUnitCount = 4;

/// The amplifier input and its settings.
struct Instrument {
  ReadingUnit unit = ReadingUnit::MicrometrePerMetre;
  double gaugeFactor = 2.0;   ///< as set
  double bridgeFactor = 1.0;  ///< N as set: 1 quarter, 2 half bending, 4 full bending
  double unitsPerMillivoltPerVolt = 1.0;
  std::string scaledUnit = "kN";
  Voltage excitation{5.0};
  std::optional<Output> range = {};  ///< greatest magnitude of bridge output it takes; none: not known
  std::optional<Resistance> inputResistance = {};  ///< none: so high that it takes no current
  std::optional<CurrentSource> current = {};       ///< none: constant voltage of `excitation`
  bool ratiometric = true;  ///< divides by the excitation it measures, so that its error cancels
  Linearisation linearisation = Linearisation::None;  ///< of readings in strain only
  Balance balance = {};
  Grounding grounding = Grounding::Floating;  ///< of the structure, for leaks to it

  friend bool operator==(const Instrument&, const Instrument&) = default;
};

/// "µm/m", "mV/V", "mV" or the scaled unit.
std::string readingUnitText(const Instrument& instrument);
/// Key in files: "um_per_m", "mV_per_V", "mV", "scaled".
std::string_view readingUnitKey(ReadingUnit unit);
std::optional<ReadingUnit> readingUnitFromKey(std::string_view key);
/// What the instrument shows for a change of output without linearisation.
Reading readingOf(const Instrument& instrument, Output change);
/// The excitation the instrument reckons with: as set, or current x nominal resistance.
Voltage nominalExcitation(const Instrument& instrument);

/// "µm/m", or the load unit of a transducer: the unit of what a shunt simulates.
std::string simulatedUnitText(const Bridge& bridge);
bool isTransducer(const Bridge& bridge);

/// The resistance of a lead during the check, `leadWarming` included.
Resistance leadResistance(const Bridge& bridge, LeadRole role);

bool isBroken(const Bridge& bridge, LeadRole role);
/// Strain of an arm for unit strain of the article, as the template and a reversal of all gauges have it.
StrainShare strainShare(const Bridge& bridge, std::size_t arm);

/// The wires in use, sense leads included when the bridge has them; each from the terminal that it is really
/// at. Broken ones are among them.
std::vector<Wire> wiresOf(const Bridge& bridge);
/// Whether a shunt may be fixed to `node`: false for sense terminals without sense leads.
bool hasNode(const Bridge& bridge, Node node);
/// The first of all names of the electrical point that `node` belongs to through joins without a lead.
Node pointOf(const Bridge& bridge, Node node);
/// "corner S-", "terminal P+", "gauge end of arm 1": where the point is, in the user's words.
std::string pointName(const Bridge& bridge, Node node);

/// Fails with the first thing that makes the bridge unusable: a resistance, gauge factor, rating or
/// instrument setting that is not a positive finite number, or a pair of one lead, naming it.
Result<void> checkBridge(const Bridge& bridge, const Instrument& instrument);

}  // namespace core
