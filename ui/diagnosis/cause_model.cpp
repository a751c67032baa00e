// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diagnosis/cause_model.h"

#include "core/report/diagnosis_section.h"
#include "ui/as_typed.h"
#include "ui/diagnosis/diagnosis_outcome.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString percentText(double share) { return fixedNumberText(100 * share, 0); }

}  // namespace

QString causeText(const core::Explanation& explanation) {
  const QString title = toQString(explanation.title);
  return explanation.sizeText.empty() ? title : title + "\n" + toQString(explanation.sizeText);
}

void CauseModel::show(std::shared_ptr<const DiagnosisOutcome> outcome) {
  const bool sameCount =
      m_outcome && outcome->diagnosis.explanations.size() == m_outcome->diagnosis.explanations.size();
  if (!sameCount) beginResetModel();
  m_outcome = std::move(outcome);
  if (!sameCount) return endResetModel();
  if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int CauseModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_outcome ? 0 : static_cast<int>(m_outcome->diagnosis.explanations.size());
}

int CauseModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

/// A bracket holds those together that cannot be told apart.
QString CauseModel::rankText(std::size_t row) const {
  const QString rank = QString::number(row + 1);
  if (m_outcome->diagnosis.tied < 2 || row >= m_outcome->diagnosis.tied) return rank;
  return rank + (row == 0 ? " ┐" : row + 1 == m_outcome->diagnosis.tied ? " ┘" : " │");
}

QString CauseModel::text(std::size_t row, int column) const {
  const core::Explanation& cause = m_outcome->diagnosis.explanations[row];
  switch (column) {
    case Rank:
      return rankText(row);
    case Cause:
      return causeText(cause);
    case Explains:
      return percentText(cause.explained);
    case Weight:
      return percentText(cause.weight);
    case Plausible:
      return toQString(core::plausibilityWord(cause.plausibility));
    case Bayesian:
      return fixedNumberText(core::evidenceBehind(m_outcome->diagnosis, cause).bayesian, 1);
    default:
      return fixedNumberText(core::evidenceBehind(m_outcome->diagnosis, cause).akaike, 1);
  }
}

QVariant CauseModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const auto row = static_cast<std::size_t>(index.row());
  const bool words = index.column() == Cause || index.column() == Plausible;
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(row, index.column());
    case Qt::ToolTipRole:
      if (index.column() == Cause) return asTyped(text(row, Cause));
      if (index.column() == Rank && m_outcome->diagnosis.tied > 1 && row < m_outcome->diagnosis.tied)
        return tr("The first %1 cannot be told apart by the readings of this plan")
            .arg(m_outcome->diagnosis.tied);
      return {};
    case Qt::AccessibleTextRole:
      return index.column() == Rank && m_outcome->diagnosis.tied > 1 && row < m_outcome->diagnosis.tied
                 ? tr("%1, tied").arg(row + 1)
                 : text(row, index.column());
    case Qt::TextAlignmentRole:
      return QVariant((words || index.column() == Rank ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    default:
      return {};
  }
}

QVariant CauseModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  static const char* const names[ColumnCount] = {QT_TR_NOOP("#"),
                                                 QT_TR_NOOP("Cause and its size"),
                                                 QT_TR_NOOP("Explains,\n%"),
                                                 QT_TR_NOOP("Weight,\n%"),
                                                 QT_TR_NOOP("Such a\nfault is"),
                                                 QT_TR_NOOP("Behind\n(BIC)"),
                                                 QT_TR_NOOP("Behind\n(AIC)")};
  static const char* const hints[ColumnCount] = {
      QT_TR_NOOP("The likeliest first; a bracket holds those together that cannot be told apart"),
      QT_TR_NOOP(
          "What may be wrong, refitted through the network of the bridge, with its standard uncertainty"),
      QT_TR_NOOP("Percent of the misfit of the healthy channel that this cause takes away"),
      QT_TR_NOOP(
          "How probable the cause is among those that were tried, in percent: how well it explains the "
          "readings, by the Bayesian criterion, times how ordinary such a fault is. All causes sum to "
          "100 % at most, and one that nobody thought of is not among them"),
      QT_TR_NOOP("How ordinary such a fault of such a size is, by common practice"),
      QT_TR_NOOP(
          "How far the evidence falls behind that of the best cause by the Bayesian information criterion "
          "(BIC): chi-square of what is left, and a charge for each fitted size. 0 is the best; below 2 "
          "hardly "
          "a difference, from 6 on a strong one"),
      QT_TR_NOOP("The same by Akaike's information criterion (AIC), which charges less for a fitted size")};
  if (role == Qt::DisplayRole) return tr(names[section]);
  if (role == Qt::ToolTipRole) return tr(hints[section]);
  return {};
}

}  // namespace ui
