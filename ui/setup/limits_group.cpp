// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>

#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::DecisionRule;
using core::UnitFamily;

SetupRows::Shown decidesBy(DecisionRule rule) {
  return [rule](const Channel& c) { return c.setup.decision.rule == rule; };
}

QStringList ruleNames() {
  QStringList names;
  for (std::size_t k = 0; k < core::decisionRuleCount; ++k) {
    const QString name = toQString(core::decisionRuleName(static_cast<DecisionRule>(k)));
    names << name.left(1).toUpper() + name.mid(1);
  }
  return names;
}

/// What passes, what fails, and when it cannot be told. U is the expanded uncertainty of a deviation.
QString ruleInWords(const Channel& channel) {
  switch (channel.setup.decision.rule) {
    case DecisionRule::Simple:
      return SetupRows::tr("Within the limit passes, beyond it fails. The uncertainty U is shown, not used.");
    case DecisionRule::SharedRisk:
      return SetupRows::tr(
          "Within the limit passes, beyond it fails; where U is larger than the share below, it cannot "
          "tell.");
    case DecisionRule::Guarded:
      return SetupRows::tr(
          "Passes up to limit less guard band, fails beyond limit plus guard band, cannot tell between.");
    case DecisionRule::Conformity:
      return SetupRows::tr(
          "Passes when the true deviation is within the limit with at least this probability, fails when it "
          "is beyond with at least this probability, else cannot tell.");
    case DecisionRule::EnNumber:
      return SetupRows::tr(
          "A deviation up to its own U passes, a larger one fails. The limit plays no part.");
  }
  return {};
}

void addLimitRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change limit");
  rows.addQuantity(form, {"limitRelative", SetupRows::tr("Of expected reading"), edit}, UnitFamily::Percent,
                   valueAt([](auto& c) -> auto& { return c.setup.limits.relative; }))
      ->setLeast(0, true);
  QuantityEdit* least =
      rows.addQuantity(form, {"limitLeast", SetupRows::tr("Never narrower than"), edit}, UnitFamily::Named,
                       valueAt([](auto& c) -> auto& { return c.setup.limits.least; }));
  least->setLeast(0, true);
  rows.onRefresh(
      [least](const Channel& c) { least->setUnit(toQString(core::readingUnitText(c.setup.instrument))); });
  rows.addQuantity(form, {"limitZeroReturn", SetupRows::tr("Zero return, of greatest"), edit},
                   UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.limits.zeroReturn; }))
      ->setLeast(0, true);
  rows.addQuantity(
          form,
          {"limitChange", SetupRows::tr("Change between checks"), edit,
           SetupRows::tr("Greatest change between two checks, of the expected reading"),
           SetupRows::tr("What counts as unchanged from one check to another; to be fixed before the test")},
          UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.limits.change; }))
      ->setLeast(0, true);
  rows.addQuantity(
          form,
          {"limitZeroChange", SetupRows::tr("Change of zero, of greatest"), edit,
           SetupRows::tr("Greatest change of the zero reading between two checks, of the greatest expected")},
          UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.limits.zeroChange; }))
      ->setLeast(0, true);
}

void addDecisionRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change decision rule");
  rows.addRow(form, {}, new QLabel(SetupRows::tr("Decided by")));
  rows.addChoice(form, {"decisionRule", {}, edit, SetupRows::tr("Decision rule")}, ruleNames(),
                 choiceAt([](auto& c) -> auto& { return c.setup.decision.rule; }));
  rows.addNote(form, "decisionNote", ruleInWords);
  QuantityEdit* share = rows.addQuantity(
      form,
      {"greatestShare", SetupRows::tr("U at most, of limit"), edit,
       SetupRows::tr("Greatest share of U in the limit")},
      UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.decision.greatestShare; }),
      decidesBy(DecisionRule::SharedRisk));
  share->setLeast(0, false);
  share->setGreatest(1);
  share->setShownDigits(6);
  rows.addQuantity(form,
                   {"guardFactor", SetupRows::tr("Guard band, times U"), edit,
                    SetupRows::tr("Guard band as a multiple of U")},
                   UnitFamily::Plain, valueAt([](auto& c) -> auto& { return c.setup.decision.guardFactor; }),
                   decidesBy(DecisionRule::Guarded))
      ->setLeast(0, true);
  QuantityEdit* conformity = rows.addQuantity(
      form,
      {"conformity", SetupRows::tr("Least probability"), edit,
       SetupRows::tr("Least probability of conformity")},
      UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.decision.conformity; }),
      decidesBy(DecisionRule::Conformity));
  conformity->setLeast(0.5, false);
  conformity->setGreatest(1, false);
  QuantityEdit* coverage = rows.addQuantity(
      form,
      {"coverage", SetupRows::tr("Coverage of all U"), edit,
       SetupRows::tr("Coverage probability of expanded uncertainties")},
      UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.decision.coverage; }));
  coverage->setLeast(0, false);
  coverage->setGreatest(1, false);
}

}  // namespace

void addLimitsGroup(SetupRows& rows) {
  QGridLayout* form = rows.addGroup(SetupRows::tr("Limits (electrical chain)"), "limitsGroup");
  addLimitRows(rows, form);
  addDecisionRows(rows, form);
}

}  // namespace ui
