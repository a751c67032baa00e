// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/step_change_model.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/report/figures.h"
#include "ui/change/change_words.h"
#include "ui/quantity_edit.h"

namespace ui {
namespace {

/// Places that show the smallest uncertainty with two digits, or the readings with six without any.
int placesFor(const core::Comparison& comparison) {
  std::vector<double> readings;
  double least = std::numeric_limits<double>::infinity();
  for (const core::StepComparison& step : comparison.steps) {
    if (step.before) readings.push_back(step.before->base());
    if (step.after) readings.push_back(step.after->base());
    if (step.moved && step.moved->standard && *step.moved->standard > 0)
      least = std::min(least, *step.moved->standard);
  }
  const int byReadings = core::decimalsFor(readings);
  if (!std::isfinite(least)) return byReadings;
  return std::clamp(1 - static_cast<int>(std::floor(std::log10(least))), 0, byReadings);
}

}  // namespace

void StepChangeModel::show(std::shared_ptr<const ShownChange> shown) {
  const int before = rowCount();
  const int after = shown ? static_cast<int>(shown->comparison.steps.size()) : 0;
  const bool same = before == after;
  if (!same) beginResetModel();
  m_shown = std::move(shown);
  m_decimals = m_shown ? placesFor(m_shown->comparison) : 1;
  if (!same) return endResetModel();
  if (after > 0) emit dataChanged(index(0, 0), index(after - 1, ColumnCount - 1));
  emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

int StepChangeModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_shown ? 0 : static_cast<int>(m_shown->comparison.steps.size());
}

int StepChangeModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QString StepChangeModel::ofDifference(const core::Difference& moved, int column) const {
  switch (column) {
    case Words:
      return changeText(moved.change);
    case Moved: {
      const QString shown = fixedNumberText(moved.value, m_decimals);
      return moved.value > 0 ? "+" + shown : shown;
    }
    case Expanded:
      return moved.expanded ? fixedNumberText(*moved.expanded, m_decimals) : QString();
    case Margin:
      return numberText(moved.margin, 4);
    case Different:
      return moved.pDifferent ? probabilityText(*moved.pDifferent) : QString();
    case Beyond:
      return moved.pEquivalent ? probabilityText(*moved.pEquivalent) : QString();
    case EnNumber:
      return moved.en ? fixedNumberText(*moved.en, 2) : QString();
    default:
      return {};
  }
}

QString StepChangeModel::text(std::size_t step, int column) const {
  const core::StepComparison& one = m_shown->comparison.steps[step];
  const auto reading = [&](const std::optional<core::Reading>& value) {
    return value ? fixedNumberText(value->base(), m_decimals) : QString();
  };
  switch (column) {
    case Step:
      return stepName(m_shown->setupBefore(), step);
    case Before:
      return reading(one.before);
    case After:
      return reading(one.after);
    default:
      break;
  }
  if (one.moved) return ofDifference(*one.moved, column);
  return column == Words ? changeText(core::Change::NotCompared) : QString();
}

QVariant StepChangeModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const auto step = static_cast<std::size_t>(index.row());
  const bool words = index.column() == Step || index.column() == Words;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(step, index.column());
    case Qt::ToolTipRole:
      return "<span>" + stepSentence(*m_shown, step).toHtmlEscaped() + "</span>";
    case Qt::AccessibleTextRole: {
      if (index.column() != Words) return text(step, index.column());
      const auto& moved = m_shown->comparison.steps[step].moved;
      return changeWord(moved ? moved->change : core::Change::NotCompared);
    }
    case Qt::TextAlignmentRole:
      return QVariant((words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    default:
      return {};
  }
}

QVariant StepChangeModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) return {};
  static const char* const names[ColumnCount] = {
      QT_TR_NOOP("Step"),     QT_TR_NOOP("In words"),       QT_TR_NOOP("Before"),
      QT_TR_NOOP("After"),    QT_TR_NOOP("Change"),         QT_TR_NOOP("U"),
      QT_TR_NOOP("Margin ±"), QT_TR_NOOP("p\n(different)"), QT_TR_NOOP("p\n(beyond margin)"),
      QT_TR_NOOP("En")};
  static const char* const hints[ColumnCount] = {
      QT_TR_NOOP("Steps of the earlier check"),
      QT_TR_NOOP("What both tests together say"),
      QT_TR_NOOP("Reading of the earlier check, from its own zero"),
      QT_TR_NOOP("Reading of the later check, from its own zero"),
      QT_TR_NOOP("Later less earlier, of the deviations from what each set-up makes one expect: what differs "
                 "on purpose drops out"),
      QT_TR_NOOP("Expanded uncertainty of the change at the coverage of the decision rule; what both checks "
                 "share is taken out"),
      QT_TR_NOOP("Fixed beforehand: a change that is shown to be smaller counts as unchanged"),
      QT_TR_NOOP("How probable so large a change would be if nothing had changed; below 0.05 it differs"),
      QT_TR_NOOP(
          "How probable so small a change would be if it were at the margin; below 0.05 it is shown to "
          "lie within"),
      QT_TR_NOOP("Change over its expanded uncertainty; beyond 1 either way it is more than uncertainty "
                 "explains")};
  if (role == Qt::ToolTipRole) return "<span>" + tr(hints[section]).toHtmlEscaped() + "</span>";
  if (role != Qt::DisplayRole) return {};
  const bool inUnit = section >= Before && section <= Margin && m_shown;
  return inUnit ? tr(names[section]) + ",\n" + toQString(m_shown->unit) : tr(names[section]);
}

}  // namespace ui
