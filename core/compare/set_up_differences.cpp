// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/set_up_differences.h"

#include <algorithm>
#include <set>

#include "core/budget/inputs.h"
#include "core/circuit/hookup_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace core {
namespace {

std::string noneWord() { return say("none"); }
std::string orNone(const std::string& text) { return text.empty() ? noneWord() : text; }
std::string plain(double value) { return shown(formatNumber(value, 10)); }
std::string percent(double share) { return shown(formatQuantity(share, UnitFamily::Percent)); }
std::string yesNo(bool value) { return value ? say("yes") : say("no"); }

template <class Kind>
std::string quantity(Quantity<Kind> value, UnitFamily family, std::string_view unit = {}) {
  return shown(formatQuantity(value.base(), family, unit));
}
std::string ohms(Resistance value) { return quantity(value, UnitFamily::Resistance); }
std::string seconds(Duration value) { return quantity(value, UnitFamily::Duration); }

/// Quantities that may be absent.
template <class Kind>
std::string quantity(const std::optional<Quantity<Kind>>& value, UnitFamily family) {
  return value ? quantity(*value, family) : noneWord();
}

/// Gathers what differs.
class Differences {
 public:
  Differences(const Setup& before, const Setup& after) : m_before(before), m_after(after) {}

  /// `of(setup)` is the value itself, `words(value)` how it is written.
  template <class Of, class Words>
  void compare(const std::string& what, bool onReadings, const Of& of, const Words& words) {
    const auto first = of(m_before), second = of(m_after);
    if (!(first == second)) add(what, words(first), words(second), onReadings);
  }
  /// Of things whose words are all that matters.
  template <class Words>
  void compareWords(std::string what, bool onReadings, const Words& words) {
    std::string first = words(m_before), second = words(m_after);
    if (first != second) add(std::move(what), orNone(first), orNone(second), onReadings);
  }
  void add(std::string what, std::string before, std::string after, bool onReadings) {
    m_list.push_back({std::move(what), std::move(before), std::move(after), onReadings});
  }

  const Setup& before() const { return m_before; }
  const Setup& after() const { return m_after; }
  std::vector<SetupDifference> list() && { return std::move(m_list); }

 private:
  const Setup& m_before;
  const Setup& m_after;
  std::vector<SetupDifference> m_list;
};

std::string numbered(std::string_view pattern, std::size_t index) {
  return say(pattern, {std::to_string(index + 1)});
}

void compareGauge(Differences& d) {
  const auto celsius = [](Temperature value) { return quantity(value, UnitFamily::Temperature); };
  const auto gauge = [](auto member) { return [member](const Setup& s) { return s.bridge.gauge.*member; }; };
  d.compare(say("gauge resistance"), false, gauge(&Gauge::nominal), ohms);
  d.compare(say("gauge factor"), false, gauge(&Gauge::factor), plain);
  d.compare(say("Poisson's ratio"), false, gauge(&Gauge::poissonRatio), plain);
  d.compare(say("temperature coefficient of the gauge factor"), false, gauge(&Gauge::factorCoefficient),
            plain);
  d.compare(say("temperature that the gauge factor is stated for"), false, gauge(&Gauge::factorAt), celsius);
  d.compare(say("temperature of the gauges"), false, gauge(&Gauge::installed), celsius);
  d.compare(
      say("grid of a gauge"), false, [](const Setup& s) { return s.bridge.gauge.grid.area; },
      [](const std::optional<Area>& area) { return quantity(area, UnitFamily::Area); });
  const auto grid = [](const Setup& s) {
    Grid rest = s.bridge.gauge.grid;
    rest.area = {};
    return rest;
  };
  if (!(grid(d.before()) == grid(d.after())))
    d.add(say("backing and cooling of a gauge"), say("as the earlier set-up has it"),
          say("as the later set-up has it"), false);
  d.compare(
      say("rated output"), true, [](const Setup& s) { return s.bridge.rating.ratedOutput; },
      [](Output value) { return quantity(value, UnitFamily::Output); });
  d.compareWords(say("capacity"), true, [](const Setup& s) {
    return shown(formatQuantity(s.bridge.rating.capacity, UnitFamily::Named, s.bridge.rating.loadUnit));
  });
}

void compareLeaks(Differences& d) {
  const auto ohm = [](const std::optional<Resistance>& value) {
    return quantity(value, UnitFamily::Resistance);
  };
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const auto leak = [arm](auto member) {
      return [arm, member](const Setup& s) { return s.bridge.leaks[arm].*member; };
    };
    d.compare(numbered(sayLater("leak over arm {1}"), arm), true, leak(&Leak::across), ohm);
    d.compare(numbered(sayLater("leak to structure of arm {1}"), arm), true, leak(&Leak::toStructure), ohm);
    d.compare(numbered(sayLater("place of the leak of arm {1}"), arm), true, leak(&Leak::place), percent);
  }
}

std::string leadText(const Lead& lead) {
  const std::string ohm = shown(formatQuantity(resistanceOf(lead).base(), UnitFamily::Resistance, {}, 5));
  const auto* wire = std::get_if<CopperWire>(&lead);
  if (!wire) return ohm;
  return say("{1} ({2} of {3} copper at {4})",
             {ohm, quantity(wire->length, UnitFamily::Length),
              shown(formatQuantity(wire->section.base(), UnitFamily::Area, {}, 5)),
              quantity(wire->temperature, UnitFamily::Temperature)});
}

void compareBridge(Differences& d) {
  d.compare(
      say("bridge template"), true, [](const Setup& s) { return s.bridge.type; },
      [](BridgeType type) { return std::string(templateOf(type).name); });
  for (const std::size_t arm : {0, 1, 2, 3})
    d.compare(
        numbered("arm {1}", arm), true, [arm](const Setup& s) { return s.bridge.arms[arm]; }, ohms);
  compareGauge(d);
  for (std::size_t role = 0; role < leadRoleCount; ++role)
    d.compare(
        say("lead {1}", {leadWord(static_cast<LeadRole>(role))}),
        hasLead(d.before().bridge, static_cast<LeadRole>(role)) ||
            hasLead(d.after().bridge, static_cast<LeadRole>(role)),
        [role](const Setup& s) { return s.bridge.leads[role]; }, leadText);
  d.compare(
      say("excitation sensed at the bridge"), true, [](const Setup& s) { return s.bridge.sixWire; }, yesNo);
  d.compare(
      say("leads warmer than stated"), true, [](const Setup& s) { return s.bridge.leadWarming; },
      [](Warming value) { return quantity(value, UnitFamily::Named, "K"); });
  compareLeaks(d);
  if (!(hookupInUse(d.before().bridge) == hookupInUse(d.after().bridge)))
    d.compareWords(say("how the bridge is connected"), true, [](const Setup& s) {
      const std::string words = hookupText(s.bridge);
      return words.empty() ? say("as the template says") : words;
    });
}

void compareBalance(Differences& d) {
  const bool inUse = d.before().instrument.balance.kind != BalanceKind::None ||
                     d.after().instrument.balance.kind != BalanceKind::None;
  const auto balance = [](auto member) {
    return [member](const Setup& s) { return s.instrument.balance.*member; };
  };
  d.compare(say("balance network"), true, balance(&Balance::kind),
            [](BalanceKind kind) { return std::string(balanceKindKey(kind)); });
  d.compare(say("balance potentiometer"), inUse, balance(&Balance::potentiometer), ohms);
  d.compare(say("balance resistor"), inUse, balance(&Balance::limiting), ohms);
  d.compare(say("balance wiper"), inUse, balance(&Balance::wiper), percent);
}

void compareInstrument(Differences& d) {
  const auto of = [](auto member) { return [member](const Setup& s) { return s.instrument.*member; }; };
  const auto identity = [](auto member) { return [member](const Setup& s) { return s.identity.*member; }; };
  d.compare(say("instrument"), false, identity(&Identity::name), orNone);
  d.compare(say("serial number of the instrument"), false, identity(&Identity::serial), orNone);
  d.compare(say("certificate of the instrument"), false, identity(&Identity::certificate), orNone);
  d.compare(say("calibration of the instrument due"), false, identity(&Identity::due),
            [](const std::optional<Date>& due) { return due ? shown(*due) : noneWord(); });
  d.compare(
      say("unit of readings"), true, [](const Setup& s) { return readingUnitText(s.instrument); },
      [](const std::string& unit) { return unit; });
  const auto reads = [&](ReadingUnit unit) {
    return d.before().instrument.unit == unit || d.after().instrument.unit == unit;
  };
  const bool strain = reads(ReadingUnit::MicrometrePerMetre);
  d.compare(say("gauge factor set on the instrument"), strain, of(&Instrument::gaugeFactor), plain);
  d.compare(say("bridge factor set on the instrument"), strain, of(&Instrument::bridgeFactor), plain);
  d.compare(say("scale"), reads(ReadingUnit::Scaled), of(&Instrument::unitsPerMillivoltPerVolt),
            [](double value) { return say("{1} per mV/V", {plain(value)}); });
  const bool followsExcitation = reads(ReadingUnit::Millivolt) || !d.before().instrument.ratiometric ||
                                 !d.after().instrument.ratiometric;
  d.compare(say("excitation"), followsExcitation, of(&Instrument::excitation),
            [](Voltage value) { return quantity(value, UnitFamily::Voltage); });
  d.compareWords(say("constant current"), true, [](const Setup& s) {
    if (!s.instrument.current) return noneWord();
    return say("{1} into {2}",
               {shown(formatQuantity(1e3 * s.instrument.current->supplied.base(), UnitFamily::Named, "mA")),
                ohms(s.instrument.current->nominal)});
  });
  d.compare(say("range"), false, of(&Instrument::range),
            [](const std::optional<Output>& value) { return quantity(value, UnitFamily::Output); });
  d.compare(say("input resistance"), true, of(&Instrument::inputResistance),
            [](const std::optional<Resistance>& value) { return value ? ohms(*value) : say("infinite"); });
  d.compare(say("divides by the measured excitation"), true, of(&Instrument::ratiometric), yesNo);
  d.compare(say("linearisation"), strain, of(&Instrument::linearisation),
            [](Linearisation value) { return std::string(linearisationKey(value)); });
  d.compare(say("structure connected to"), true, of(&Instrument::grounding),
            [](Grounding value) { return std::string(groundingKey(value)); });
  compareBalance(d);
}

std::string filterText(const Filter& filter) {
  switch (filter.kind) {
    case FilterKind::None:
      return noneWord();
    case FilterKind::Butterworth:
    case FilterKind::Bessel:
      return say(filter.kind == FilterKind::Bessel ? sayLater("Bessel of order {1}, {2}")
                                                   : sayLater("Butterworth of order {1}, {2}"),
                 {std::to_string(filter.order), quantity(filter.cutoff, UnitFamily::Frequency)});
    case FilterKind::MovingAverage:
      return say("moving average over {1}", {seconds(filter.window)});
  }
  return {};
}

void compareAcquisition(Differences& d) {
  const auto of = [](auto member) { return [member](const Setup& s) { return s.acquisition.*member; }; };
  const auto hertz = [](const std::optional<Frequency>& value) {
    return quantity(value, UnitFamily::Frequency);
  };
  d.compare(say("sample rate"), false, of(&Acquisition::sampleRate), hertz);
  d.compare(say("filter"), false, of(&Acquisition::filter), filterText);
  d.compare(say("mains hum averaged out"), false, of(&Acquisition::mains), hertz);
  d.compare(say("settled to"), false, of(&Acquisition::settledTo), percent);
}

const Shunt* shuntNamed(const Setup& setup, const std::string& name) {
  const auto found = std::find_if(setup.shunts.begin(), setup.shunts.end(),
                                  [&](const Shunt& shunt) { return shunt.name == name; });
  return found == setup.shunts.end() ? nullptr : &*found;
}

std::string placeText(const Setup& setup, const Shunt& shunt) {
  return say("{1} to {2}", {pointName(setup.bridge, shunt.a), pointName(setup.bridge, shunt.b)});
}

std::string jumpersText(const Shunt& shunt) {
  std::string text;
  for (const Jumper& jumper : shunt.jumpers)
    text += (text.empty() ? "" : ", ") + pinText(jumper.from) + "–" + pinText(jumper.to);
  return orNone(text);
}

void compareShunt(Differences& d, const Shunt& before, const Shunt& after) {
  const std::string& name = before.name;
  const auto differ = [&](std::string_view pattern, bool onReadings, const auto& first, const auto& second,
                          const auto& words) {
    if (!(first == second)) d.add(say(pattern, {name}), words(first), words(second), onReadings);
  };
  const auto due = [](const std::optional<Date>& day) { return day ? shown(*day) : noneWord(); };
  differ("shunt {1}", true, before.resistance, after.resistance, ohms);
  differ(sayLater("resistor of shunt {1}"), false, before.part.id, after.part.id, orNone);
  differ(sayLater("certificate of the resistor of shunt {1}"), false, before.part.certificate,
         after.part.certificate, orNone);
  differ(sayLater("calibration of the resistor of shunt {1} due"), false, before.part.due, after.part.due,
         due);
  differ(sayLater("greatest power of the resistor of shunt {1}"), false, before.part.rating,
         after.part.rating,
         [](const std::optional<Power>& power) { return quantity(power, UnitFamily::Power); });
  differ(sayLater("wires of shunt {1}"), true, before.wires, after.wires, ohms);
  differ(sayLater("contact of shunt {1}"), true, before.contact, after.contact, ohms);
  if (before.a != after.a || before.b != after.b)
    d.add(say("place of shunt {1}", {name}), placeText(d.before(), before), placeText(d.after(), after),
          true);
  if (before.jumpers != after.jumpers)
    d.add(say("jumpers of shunt {1}", {name}), jumpersText(before), jumpersText(after), false);
}

/// Shunts by their names: one name is one shunt, and by name the user knows it. Names that are there twice
/// are told apart by their place in the list.
void compareShunts(Differences& d) {
  const auto& before = d.before().shunts;
  const auto& after = d.after().shunts;
  if (before == after) return;
  const bool sameNames = std::equal(before.begin(), before.end(), after.begin(), after.end(),
                                    [](const Shunt& a, const Shunt& b) { return a.name == b.name; });
  for (std::size_t k = 0; k < before.size(); ++k) {
    const Shunt* other = sameNames ? &after[k] : shuntNamed(d.after(), before[k].name);
    if (other) compareShunt(d, before[k], *other);
    if (!other) d.add(say("shunt {1}", {before[k].name}), ohms(before[k].resistance), noneWord(), true);
  }
  for (const Shunt& shunt : after)
    if (!sameNames && !shuntNamed(d.before(), shunt.name))
      d.add(say("shunt {1}", {shunt.name}), noneWord(), ohms(shunt.resistance), true);
}

std::string closedText(const Setup& setup, const Step& step) {
  std::string text;
  for (const std::size_t k : step.closed) text += (text.empty() ? "" : " + ") + setup.shunts[k].name;
  return text.empty() ? say("all open") : text;
}

void compareStep(Differences& d, std::size_t k) {
  const Step& before = d.before().sequence[k];
  const Step& after = d.after().sequence[k];
  const std::string first = closedText(d.before(), before), second = closedText(d.after(), after);
  if (first != second) d.add(numbered(sayLater("shunts closed at step {1}"), k), first, second, true);
  if (before.label != after.label)
    d.add(numbered(sayLater("label of step {1}"), k), orNone(before.label), orNone(after.label), false);
  if (before.hold != after.hold)
    d.add(numbered(sayLater("hold of step {1}"), k), seconds(before.hold), seconds(after.hold), false);
  if (before.settle != after.settle)
    d.add(numbered(sayLater("settling of step {1}"), k), seconds(before.settle), seconds(after.settle),
          false);
}

void compareSequence(Differences& d) {
  const auto& before = d.before().sequence;
  const auto& after = d.after().sequence;
  d.compare(
      say("steps"), false, [](const Setup& s) { return s.sequence.size(); },
      [](std::size_t count) { return std::to_string(count); });
  for (std::size_t k = 0; k < std::min(before.size(), after.size()); ++k) compareStep(d, k);
}

void compareWiring(Differences& d) {
  if (d.before().wiring == d.after().wiring) return;
  const auto use = [](const Setup& s, const PinName& name) -> std::string {
    for (const Pin& pin : s.wiring.pins) {
      if (pin.name != name) continue;
      if (const auto* node = std::get_if<Node>(&pin.use)) return pointName(s.bridge, *node);
      if (const auto* end = std::get_if<ResistorEnd>(&pin.use))
        return say("end {1} of resistor {2}", {std::to_string(end->end), end->resistor});
      return say("nothing");
    }
    return noneWord();
  };
  std::set<PinName> names;
  for (const Setup* s : {&d.before(), &d.after()})
    for (const Pin& pin : s->wiring.pins) names.insert(pin.name);
  bool some = false;
  for (const PinName& name : names) {
    const std::string first = use(d.before(), name), second = use(d.after(), name);
    if (first == second) continue;
    d.add(say("pin {1}", {pinText(name)}), first, second, false);
    some = true;
  }
  if (!some) d.add(say("pins"), say("in another order"), say("in another order"), false);
}

void compareLimits(Differences& d) {
  const auto of = [](auto member) { return [member](const Setup& s) { return s.limits.*member; }; };
  d.compare(say("limit of a deviation"), false, of(&Limits::relative), percent);
  d.compareWords(say("least limit"), false, [](const Setup& s) {
    return quantity(s.limits.least, UnitFamily::Named, readingUnitText(s.instrument));
  });
  d.compare(say("limit of zero return"), false, of(&Limits::zeroReturn), percent);
  d.compare(say("margin of a change"), false, of(&Limits::change), percent);
  d.compare(say("margin of a change of zero"), false, of(&Limits::zeroChange), percent);
  for (std::size_t k = 0; k < meritKindCount; ++k) {
    const auto kind = static_cast<MeritKind>(k);
    d.compare(
        say("limit of {1}", {meritKindName(kind)}), false,
        [kind](const Setup& s) {
          const auto found = s.limits.merits.find(kind);
          return found == s.limits.merits.end() ? std::optional<double>() : found->second;
        },
        [](const std::optional<double>& share) { return share ? percent(*share) : noneWord(); });
  }
  d.compare(say("nonlinearity measured from"), false, of(&Limits::linearityFrom),
            [](ReferenceLine line) { return std::string(referenceLineName(line)); });
}

void compareDecision(Differences& d) {
  const auto of = [](auto member) { return [member](const Setup& s) { return s.decision.*member; }; };
  d.compare(say("decision rule"), false, of(&Decision::rule),
            [](DecisionRule rule) { return std::string(decisionRuleName(rule)); });
  d.compare(say("coverage"), false, of(&Decision::coverage), percent);
  d.compare(say("guard band in units of U"), false, of(&Decision::guardFactor), plain);
  d.compare(say("probability of conformity"), false, of(&Decision::conformity), percent);
  d.compare(say("greatest share of U in the limit"), false, of(&Decision::greatestShare), percent);
}

void compareUncertainties(Differences& d) {
  const Uncertainties& before = d.before().uncertainties;
  const Uncertainties& after = d.after().uncertainties;
  if (before == after) return;
  std::set<Input> inputs;
  for (const Uncertainties* of : {&before, &after})
    for (const auto& [input, stated] : of->stated) inputs.insert(input);
  const auto words = [](const Setup& s, Input input) {
    const auto found = s.uncertainties.stated.find(input);
    return found == s.uncertainties.stated.end() ? say("not stated")
                                                 : shown(uncertaintyText(s, input, found->second));
  };
  const auto ofShunt = [](InputKind kind) {
    return kind == InputKind::Shunt || kind == InputKind::ShuntWires || kind == InputKind::ShuntContact;
  };
  for (const Input input : inputs) {
    const auto has = [&](const Setup& s) { return !ofShunt(input.kind) || input.index < s.shunts.size(); };
    const Setup& named = has(d.before()) ? d.before() : d.after();
    if (!has(named)) continue;
    const std::string first = has(d.before()) ? words(d.before(), input) : noneWord();
    const std::string second = has(d.after()) ? words(d.after(), input) : noneWord();
    if (first != second) d.add(say("uncertainty of {1}", {inputName(named, input)}), first, second, false);
  }
  std::set<std::string> groups;
  for (const Uncertainties* of : {&before, &after})
    for (const auto& [name, coefficient] : of->groups) groups.insert(name);
  for (const std::string& name : groups)
    d.compare(
        say("correlation of group {1}", {name}), false,
        [&](const Setup& s) {
          const auto found = s.uncertainties.groups.find(name);
          return found == s.uncertainties.groups.end() ? 1.0 : found->second;
        },
        plain);
}

}  // namespace

std::vector<SetupDifference> setUpDifferences(const Setup& before, const Setup& after) {
  if (&before == &after || before == after) return {};
  Differences differences(before, after);
  if (!(before.bridge == after.bridge)) compareBridge(differences);
  if (!(before.instrument == after.instrument && before.identity == after.identity))
    compareInstrument(differences);
  compareShunts(differences);
  if (before.sequence != after.sequence || before.shunts != after.shunts) compareSequence(differences);
  if (before.acquisition != after.acquisition) compareAcquisition(differences);
  compareWiring(differences);
  if (!(before.limits == after.limits)) compareLimits(differences);
  if (!(before.decision == after.decision)) compareDecision(differences);
  compareUncertainties(differences);
  return std::move(differences).list();
}

}  // namespace core
