// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>

#include "core/plan/settling.h"
#include "ui/setup/folded_group.h"
#include "ui/setup/setup_groups.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::Channel;
using core::FilterKind;
using core::UnitFamily;

bool hasPoles(const Channel& channel) {
  const FilterKind kind = channel.setup.acquisition.filter.kind;
  return kind == FilterKind::Butterworth || kind == FilterKind::Bessel;
}

bool averages(const Channel& channel) {
  return channel.setup.acquisition.filter.kind == FilterKind::MovingAverage;
}

/// Whole numbers from 1 on, so the first choice is order 1.
ChannelChoice orderChoice() {
  return {[](const Channel& c) { return static_cast<int>(c.setup.acquisition.filter.order) - 1; },
          [](Channel& c, int row) { c.setup.acquisition.filter.order = static_cast<unsigned>(row) + 1; }};
}

QStringList orders() {
  QStringList list;
  for (unsigned order = 1; order <= core::greatestFilterOrder; ++order) list << QString::number(order);
  return list;
}

void addFilterRows(SetupRows& rows, QGridLayout* form) {
  const QString edit = SetupRows::tr("Change filter");
  rows.addChoice(form, {"filterKind", {}, edit, SetupRows::tr("Filter before the readings")},
                 {SetupRows::tr("No filter"), SetupRows::tr("Butterworth low-pass"),
                  SetupRows::tr("Bessel low-pass"), SetupRows::tr("Moving average")},
                 choiceAt([](auto& c) -> auto& { return c.setup.acquisition.filter.kind; }));
  rows.addChoice(form, {"filterOrder", SetupRows::tr("Order"), edit, SetupRows::tr("Order of the filter")},
                 orders(), orderChoice(), hasPoles);
  rows.addQuantity(form,
                   {"filterCutoff", SetupRows::tr("Cutoff (-3 dB)"), edit,
                    SetupRows::tr("Cutoff frequency of the filter")},
                   UnitFamily::Frequency,
                   valueAt([](auto& c) -> auto& { return c.setup.acquisition.filter.cutoff; }), hasPoles)
      ->setLeast(0, false);
  rows.addQuantity(
          form,
          {"filterWindow", SetupRows::tr("Window"), edit, SetupRows::tr("Window of the moving average")},
          UnitFamily::Duration, valueAt([](auto& c) -> auto& { return c.setup.acquisition.filter.window; }),
          averages)
      ->setLeast(0, false);
}

/// Short, so that the heading of the closed group has room for it.
QString summaryOf(const Channel& channel) {
  const auto times = core::leastTimes(channel.setup.acquisition);
  if (!times) return SetupRows::tr("cannot settle");
  return SetupRows::tr("settle %1 s, hold %2 s")
      .arg(fixedNumberText(times->settle.base(), 2), fixedNumberText(times->hold.base(), 2));
}

QString usualTimesNote(const Channel& channel) {
  const QString words = usualTimesText(channel.setup.acquisition);
  return words.left(1).toUpper() + words.mid(1);
}

}  // namespace

QString usualTimesText(const core::Acquisition& acquisition) {
  const auto times = core::leastTimes(acquisition);
  if (!times) return toText(times.error());
  return SetupRows::tr("settles in %1 s, hold at least %2 s")
      .arg(fixedNumberText(times->settle.base(), 2), fixedNumberText(times->hold.base(), 2));
}

void addAcquisitionGroup(SetupRows& rows) {
  FoldedGroup* group = rows.addFoldedGroup(SetupRows::tr("Acquisition"), "acquisitionGroup");
  QGridLayout* form = group->form();
  QuantityEdit* rate = rows.addQuantity(
      form, {"sampleRate", SetupRows::tr("Sample rate"), SetupRows::tr("Change sample rate")},
      UnitFamily::Frequency, optionalAt([](auto& c) -> auto& { return c.setup.acquisition.sampleRate; }));
  rate->setLeast(0, false);
  rate->setOptional(SetupRows::tr("not known"));
  addFilterRows(rows, form);
  QuantityEdit* mains = rows.addQuantity(
      form,
      {"mains", SetupRows::tr("Mains"), SetupRows::tr("Change mains"), SetupRows::tr("Mains frequency")},
      UnitFamily::Frequency, optionalAt([](auto& c) -> auto& { return c.setup.acquisition.mains; }));
  mains->setLeast(0, false);
  mains->setOptional(SetupRows::tr("none near"));
  QuantityEdit* settledTo = rows.addQuantity(
      form,
      {"settledTo", SetupRows::tr("Settled to"), SetupRows::tr("Change settling"),
       SetupRows::tr("Share of a step that may be missing when a level counts as settled")},
      UnitFamily::Percent, valueAt([](auto& c) -> auto& { return c.setup.acquisition.settledTo; }));
  settledTo->setLeast(core::leastSettledTo, true);
  settledTo->setGreatest(core::greatestSettledTo);
  rows.addNote(form, "usualTimes", usualTimesNote)
      ->setToolTip(SetupRows::tr("Settling follows from the filter and one sample interval, rounded up to "
                                 "10 ms. A hold lasts one second at least, a whole number of mains periods, "
                                 "and 20 samples."));
  rows.onRefresh([group](const Channel& channel) {
    group->setSummary(summaryOf(channel));
    group->setHolds(channel.setup.acquisition != core::Acquisition{});
  });
}

}  // namespace ui
