// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/step_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/circuit/node_words.h"
#include "core/units/notation.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString words(const char* text) { return QCoreApplication::translate("StepWords", text); }

/// "on arm 2" right across an arm, else "from S- to P-".
QString placeWords(const core::Shunt& shunt) {
  for (std::size_t arm = 0; arm < 4; ++arm) {
    const core::Node begin = core::armBegin(arm), end = core::armEnd(arm);
    if ((shunt.a == begin && shunt.b == end) || (shunt.a == end && shunt.b == begin))
      return words("on arm %1").arg(arm + 1);
  }
  return words("from %1 to %2").arg(toQString(core::nodeWords(shunt.a)), toQString(core::nodeWords(shunt.b)));
}

/// A jumper has no direction.
bool sameJumper(const core::Jumper& a, const core::Jumper& b) {
  return a == b || (a.from == b.to && a.to == b.from);
}

struct LaidJumper {
  core::Jumper jumper;
  std::size_t shunt;
};

std::vector<LaidJumper> jumpersAt(const core::Setup& setup, const core::Step* step) {
  std::vector<LaidJumper> laid;
  if (!step) return laid;
  for (const std::size_t shunt : step->closed)
    for (const core::Jumper& jumper : setup.shunts[shunt].jumpers)
      if (std::none_of(laid.begin(), laid.end(),
                       [&](const LaidJumper& other) { return sameJumper(other.jumper, jumper); }))
        laid.push_back({jumper, shunt});
  return laid;
}

/// Those of `these` that are not among `others`.
std::vector<LaidJumper> without(const std::vector<LaidJumper>& these, const std::vector<LaidJumper>& others) {
  std::vector<LaidJumper> left;
  for (const LaidJumper& laid : these)
    if (std::none_of(others.begin(), others.end(),
                     [&](const LaidJumper& other) { return sameJumper(other.jumper, laid.jumper); }))
      left.push_back(laid);
  return left;
}

QString jumperWords(const core::Setup& setup, const LaidJumper& laid) {
  return words("%1 to %2 for %3")
      .arg(toQString(core::pinText(laid.jumper.from)), toQString(core::pinText(laid.jumper.to)),
           shuntWords(setup.shunts[laid.shunt]));
}

/// Switched shunts that are closed at `step` and not at `other`; those with jumpers are left out.
std::vector<std::size_t> switchedOnlyAt(const core::Setup& setup, const core::Step* step,
                                        const core::Step* other) {
  std::vector<std::size_t> only;
  if (!step) return only;
  for (const std::size_t shunt : step->closed) {
    const bool both =
        other && std::find(other->closed.begin(), other->closed.end(), shunt) != other->closed.end();
    if (!both && setup.shunts[shunt].jumpers.empty()) only.push_back(shunt);
  }
  return only;
}

QStringList differences(const core::Setup& setup, const core::Step* from, const core::Step* to) {
  const auto before = jumpersAt(setup, from), after = jumpersAt(setup, to);
  const auto removed = without(before, after), laid = without(after, before);
  const bool wiring = !removed.empty() || !laid.empty();
  QStringList actions;
  for (const std::size_t shunt : switchedOnlyAt(setup, from, to))
    actions << words("Open %1").arg(shuntWords(setup.shunts[shunt]));
  if (wiring) actions << words("Switch the excitation off");
  for (const LaidJumper& jumper : removed)
    actions << words("Remove the jumper %1").arg(jumperWords(setup, jumper));
  for (const LaidJumper& jumper : laid) actions << words("Lay %1").arg(jumperWords(setup, jumper));
  // Gauges that were cold drift until they are warm again.
  if (wiring)
    actions << words("Switch the excitation on again and let the bridge warm up again before the reading");
  for (const std::size_t shunt : switchedOnlyAt(setup, to, from))
    actions << words("Close %1").arg(shuntWords(setup.shunts[shunt]));
  return actions;
}

QString seeThatAllIsOpen(const core::Setup& setup) {
  const bool jumpers = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                   [](const core::Shunt& shunt) { return !shunt.jumpers.empty(); });
  return jumpers ? words("See that all shunts are open and no jumper is laid")
                 : words("See that all shunts are open");
}

}  // namespace

QString shuntWords(const core::Shunt& shunt) {
  QString text = toQString(shunt.name);
  const QString part = toQString(shunt.part.id), place = placeWords(shunt);
  if (!part.isEmpty() && !text.contains(part)) text += " (" + part + ")";
  return text.contains(place) ? text : text + " " + place;
}

QStringList actionsBetween(const core::Setup& setup, const core::Step* from, const core::Step& to) {
  QStringList actions;
  if (!from) actions << seeThatAllIsOpen(setup);
  actions << differences(setup, from, &to);
  if (actions.isEmpty()) actions << words("Change nothing: all stays as it is");
  return actions;
}

QStringList actionsToOpenAll(const core::Setup& setup, const core::Step* closed) {
  return differences(setup, closed, nullptr) << seeThatAllIsOpen(setup);
}

QString stateWords(const core::Setup& setup, const core::Step& step) {
  if (step.closed.empty()) return words("All shunts are open at this step.");
  QStringList closed;
  for (const std::size_t shunt : step.closed) closed << shuntWords(setup.shunts[shunt]);
  return words("Closed at this step, and nothing else: %1.").arg(closed.join(", "));
}

QString excitationWords(const core::Instrument& instrument) {
  if (instrument.current)
    return words("a constant current of %1 mA").arg(numberText(1e3 * instrument.current->supplied.base(), 6));
  return quantityText(instrument.excitation.base(), core::UnitFamily::Voltage, {}, 6);
}

std::vector<std::optional<core::Reading>> limitsOf(const core::Setup& setup,
                                                   const core::SetupPrediction& prediction,
                                                   const core::Budget& budget) {
  // Asked of the same judge that judges the readings: a check that reads just what is expected.
  core::Check expected;
  for (const auto& step : prediction.steps)
    expected.readings.push_back(step ? std::optional(core::Measured{step->reading, {}, {}, {}, {}})
                                     : std::nullopt);
  std::vector<std::optional<core::Reading>> limits;
  for (const core::StepAssessment& step : core::assess(setup, prediction, budget, expected).steps)
    limits.push_back(step.limit);
  return limits;
}

int readingDecimals(const core::SetupPrediction& prediction) {
  double greatest = 0;
  for (const auto& step : prediction.steps)
    if (step) greatest = std::max(greatest, std::abs(step->reading.base()));
  if (!std::isfinite(greatest) || greatest <= 0) return 3;
  return std::clamp(5 - static_cast<int>(std::floor(std::log10(greatest))), 0, 9);
}

QString verdictSign(core::Verdict verdict) {
  switch (verdict) {
    case core::Verdict::Pass:
      return "✓";
    case core::Verdict::Fail:
      return "✗";
    case core::Verdict::CannotTell:
      return "?";
    case core::Verdict::NotJudged:
      break;
  }
  return "–";
}

std::string noteOfRedone(const core::Measured& former, const core::Instrument& instrument,
                         const std::string& note) {
  const std::string redone = "redone; before: " + core::formatNumber(former.mean.base(), 12) + " " +
                             core::readingUnitText(instrument);
  return note.empty() ? redone : note + "; " + redone;
}

std::string remarkWithNote(const std::string& remark, std::size_t step, const std::string& note) {
  return (remark.empty() ? "" : remark + " ") + "Step " + std::to_string(step + 1) + ": " + note;
}

}  // namespace ui
