// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>

#include "core/circuit/bridge_template.h"
#include "core/compare/comparison_words.h"
#include "core/report/figures.h"
#include "core/units/language.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
  return QCoreApplication::translate("ui::OverviewPage", text, comment, n);
}

constexpr int gainDecimals = 4;

/// "63 %"; above the limit with what it is above in full: "1240 %".
QString percent(double share) {
  if (!std::isfinite(share)) return QStringLiteral("∞");  // a limit of nothing is exceeded
  const double value = 100 * share;
  // 99.6 % within the limit must not read as 100 %, which is the limit itself.
  const bool close = std::abs(value - 100) < 0.5 && value != 100;
  return QLocale().toString(value, 'f', close ? 2 : value < 9.95 ? 1 : 0) + QStringLiteral("\u00a0%");
}

QString worstText(const core::OverviewRow& row) {
  if (!row.worst) return {};
  if (!row.worstStep) return percent(*row.worst);
  return tr("%1, step %2").arg(percent(*row.worst)).arg(*row.worstStep + 1);
}

/// Digits that the scatter of the readings takes away are not shown; a slope that hangs on the weights alone
/// is no gain.
QString gainText(const core::OverviewRow& row) {
  if (!row.gain) return {};
  const core::ChainGain& gain = *row.gain;
  if (!gain.describesReadings) return tr("no line");
  return gain.isWidened ? toQString(core::shown(core::withError(gain.value, gain.standard)))
                        : fixedNumberText(gain.value, gainDecimals);
}

/// What was found of a channel.
QString foundText(const core::OverviewRow& row, OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Verdict:
      return stateWord(checkStateOf(row));
    case OverviewColumn::Worst:
      return worstText(row);
    case OverviewColumn::Gain:
      return gainText(row);
    case OverviewColumn::Change:
      return row.change == core::Change::NotCompared ? QString() : changeWord(row.change);
    case OverviewColumn::GainChange:
      return row.gainChange ? toQString(core::gainText(*row.gainChange)) : QString();
    case OverviewColumn::Latest:
      return row.latest.empty() ? QString()
                                : (row.open ? tr("%1 (open)") : QString("%1")).arg(toQString(row.latest));
    case OverviewColumn::Day:
      return row.day ? toQString(core::shown(*row.day)) : QString();
    case OverviewColumn::Remarks:
      return row.openRemarks > 0 ? QLocale().toString(static_cast<qulonglong>(row.openRemarks)) : QString();
    case OverviewColumn::Overdue:
      return row.overdue ? tr("overdue") : QString();
    case OverviewColumn::Status:
      return toQString(row.status);
    default:
      return {};
  }
}

std::optional<double> numberIn(const core::OverviewRow& row, OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Worst:
      return row.worst;
    case OverviewColumn::Gain:
      return core::gainOf(row);
    case OverviewColumn::GainChange:
      return core::gainChangeOf(row);
    default:
      return {};
  }
}

}  // namespace

QString overviewColumnName(OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Name:
      return tr("Channel");
    case OverviewColumn::Group:
      return tr("Group");
    case OverviewColumn::Verdict:
      return tr("Verdict");
    case OverviewColumn::Worst:
      return tr("Worst step");
    case OverviewColumn::Gain:
      return tr("Gain");
    case OverviewColumn::Change:
      return tr("Change");
    case OverviewColumn::GainChange:
      return tr("Of gain");
    case OverviewColumn::Latest:
      return tr("Latest check");
    case OverviewColumn::Day:
      return tr("Day");
    case OverviewColumn::Remarks:
      return tr("Remarks");
    case OverviewColumn::Overdue:
      return tr("Overdue");
    case OverviewColumn::Bridge:
      return tr("Bridge");
    case OverviewColumn::Steps:
      return tr("Steps");
    case OverviewColumn::Status:
      return tr("Status");
    case OverviewColumn::Note:
      return tr("Note");
  }
  return {};
}

QString overviewColumnTip(OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Verdict:
      return tr("Of the latest check; sorted by it the worst come first");
    case OverviewColumn::Worst:
      return tr("Largest deviation as a share of its limit; above 100 % something is off");
    case OverviewColumn::Gain:
      return tr(
          "Measured over expected, of the latest check, with its standard uncertainty where readings scatter "
          "more than stated; \"no line\" when they lie along none");
    case OverviewColumn::Change:
      return tr("Of the latest check against the one before it");
    case OverviewColumn::GainChange:
      return tr("By how much the gain changed since the check before");
    case OverviewColumn::Remarks:
      return tr("Remarks that are not settled, of all checks");
    case OverviewColumn::Overdue:
      return tr("A resistor or the instrument is past its due date today");
    default:
      return {};
  }
}

QString stateWord(CheckState state) {
  switch (state) {
    case CheckState::Fail:
      return tr("fail");
    case CheckState::CannotTell:
      return tr("cannot tell");
    case CheckState::NotJudged:
      return tr("not judged");
    case CheckState::NotChecked:
      return tr("not checked");
    case CheckState::Pass:
      return tr("pass");
  }
  return {};
}

QString overviewText(const OverviewItem& item, OverviewColumn column) {
  switch (column) {
    case OverviewColumn::Name:
      return toQString(item.channel->name);
    case OverviewColumn::Group:
      return toQString(item.channel->group);
    case OverviewColumn::Bridge:
      return toQString(core::say(core::templateOf(item.channel->setup.bridge.type).name));
    case OverviewColumn::Steps:
      return QLocale().toString(static_cast<qulonglong>(item.channel->setup.sequence.size()));
    case OverviewColumn::Note:
      return toQString(item.channel->note).simplified();
    default:
      return item.row ? foundText(*item.row, column) : QString();
  }
}

QString safeCell(const QString& text) {
  static const QRegularExpression signedNumber("^[+-][0-9]+([.,][0-9]+)?$");
  const QString trimmed = text.trimmed();
  const bool formula =
      !trimmed.isEmpty() && QString("=+-@").contains(trimmed[0]) && !signedNumber.match(trimmed).hasMatch();
  return formula ? "'" + text : text;
}

QString overviewCell(const OverviewItem& item, OverviewColumn column) {
  if (column == OverviewColumn::Worst || column == OverviewColumn::Gain ||
      column == OverviewColumn::GainChange) {
    const std::optional<double> number = item.row ? numberIn(*item.row, column) : std::nullopt;
    QLocale plain;
    plain.setNumberOptions(plain.numberOptions() | QLocale::OmitGroupSeparator);
    return number ? plain.toString(*number, 'g', 9) : QString();
  }
  if (column == OverviewColumn::Steps) return QString::number(item.channel->setup.sequence.size());
  return safeCell(overviewText(item, column));
}

QString tallyWords(const core::OverviewTally& tally) {
  QStringList parts;
  if (tally.fail > 0) parts << tr("%Ln fail", nullptr, int(tally.fail));
  if (tally.cannotTell > 0) parts << tr("%Ln cannot tell", nullptr, int(tally.cannotTell));
  if (tally.notJudged > 0) parts << tr("%Ln not judged", nullptr, int(tally.notJudged));
  if (tally.notChecked > 0) parts << tr("%Ln not checked", nullptr, int(tally.notChecked));
  if (tally.pass > 0) parts << tr("%Ln pass", nullptr, int(tally.pass));
  if (tally.changed > 0) parts << tr("%Ln changed beyond the margin", nullptr, int(tally.changed));
  if (tally.remarks > 0) parts << tr("%Ln with open remarks", nullptr, int(tally.remarks));
  const QString channels = tr("%Ln channel(s)", nullptr, int(tally.channels));
  return parts.isEmpty() ? channels : tr("%1: %2").arg(channels, parts.join(", "));
}

}  // namespace ui
