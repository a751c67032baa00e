// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QGridLayout>

#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::MeritKind;
using core::ReferenceLine;

struct Figure {
  MeritKind kind;
  const char* object;
  const char* label;
  const char* hint;  ///< what it is, of which denominator: core/assess/merits.h
};

constexpr Figure figures[] = {
    {MeritKind::Nonlinearity, "limitNonlinearity", QT_TRANSLATE_NOOP("ui::SetupRows", "Nonlinearity"),
     QT_TRANSLATE_NOOP("ui::SetupRows",
                       "Greatest deviation of the mean readings, rising and falling averaged, from the line "
                       "below, as a share of the measured span.")},
    {MeritKind::Hysteresis, "limitHysteresis", QT_TRANSLATE_NOOP("ui::SetupRows", "Hysteresis"),
     QT_TRANSLATE_NOOP(
         "ui::SetupRows",
         "Greatest difference of the falling and the rising reading of one level, as a share of "
         "the measured span.")},
    {MeritKind::Repeatability, "limitRepeatability", QT_TRANSLATE_NOOP("ui::SetupRows", "Repeatability"),
     QT_TRANSLATE_NOOP(
         "ui::SetupRows",
         "Greatest spread of the readings of one level reached from the same side, as a share of "
         "the measured span.")},
    {MeritKind::ZeroShift, "limitZeroShift", QT_TRANSLATE_NOOP("ui::SetupRows", "Zero shift"),
     QT_TRANSLATE_NOOP("ui::SetupRows",
                       "Zero reading farthest from the first one, less the first, as a share of the greatest "
                       "expected reading.")},
    {MeritKind::Symmetry, "limitSymmetry", QT_TRANSLATE_NOOP("ui::SetupRows", "Symmetry"),
     QT_TRANSLATE_NOOP(
         "ui::SetupRows",
         "Slope of the positive half less that of the negative half, as a share of the expected "
         "slope.")},
    {MeritKind::CombinedError, "limitCombinedError", QT_TRANSLATE_NOOP("ui::SetupRows", "Combined error"),
     QT_TRANSLATE_NOOP("ui::SetupRows",
                       "Greatest deviation of any reading from the line below, as a share of the measured "
                       "span.")},
    {MeritKind::SpanRatio, "limitSpanRatio", QT_TRANSLATE_NOOP("ui::SetupRows", "Span error"),
     QT_TRANSLATE_NOOP("ui::SetupRows",
                       "Measured span less the expected one, as a share of the expected span.")},
};
// Zero return has its limit among those of the steps.
static_assert(std::size(figures) == core::meritKindCount - 1);

ChannelValue limitOf(MeritKind kind) {
  return {[kind](const Channel& c) -> std::optional<double> {
            const auto found = c.setup.limits.merits.find(kind);
            return found == c.setup.limits.merits.end() ? std::nullopt : std::optional(found->second);
          },
          [kind](Channel& c, double share) { c.setup.limits.merits.insert_or_assign(kind, share); },
          [kind](Channel& c) { c.setup.limits.merits.erase(kind); }};
}

QStringList lineNames() {
  QStringList names;
  for (std::size_t k = 0; k < core::referenceLineCount; ++k) {
    const QString name = toQString(core::referenceLineName(static_cast<ReferenceLine>(k)));
    names << name.left(1).toUpper() + name.mid(1);
  }
  return names;
}

QString summaryOf(const Channel& channel) {
  const std::size_t judged = channel.setup.limits.merits.size();
  return judged == 0 ? SetupRows::tr("not judged")
                     : SetupRows::tr("%1 of %2 judged").arg(judged).arg(std::size(figures));
}

}  // namespace

void addMeritsGroup(SetupRows& rows) {
  FoldedGroup* group = rows.addFoldedGroup(SetupRows::tr("Figures of merit"), "meritsGroup");
  for (const Figure& figure : figures) {
    const QString label = SetupRows::tr(figure.label);
    QuantityEdit* limit =
        rows.addQuantity(group->form(),
                         {figure.object, label, SetupRows::tr("Change limit"),
                          SetupRows::tr("Limit of %1").arg(toQString(core::meritKindName(figure.kind))),
                          SetupRows::tr(figure.hint)},
                         core::UnitFamily::Percent, limitOf(figure.kind));
    limit->setLeast(0, true);
    limit->setOptional(SetupRows::tr("not judged"));
  }
  rows.addChoice(
      group->form(),
      {"linearityFrom", SetupRows::tr("Line"), SetupRows::tr("Change reference line"),
       SetupRows::tr("Line that nonlinearity and combined error are measured from"),
       SetupRows::tr("The line, drawn through the mean readings against the expected ones, that nonlinearity "
                     "and combined error are measured from.")},
      lineNames(), choiceAt([](auto& c) -> auto& { return c.setup.limits.linearityFrom; }));
  rows.onRefresh([group](const Channel& channel) {
    const core::Limits& limits = channel.setup.limits;
    group->setSummary(summaryOf(channel));
    group->setHolds(!limits.merits.empty() || limits.linearityFrom != ReferenceLine::LeastSquares);
  });
}

}  // namespace ui
