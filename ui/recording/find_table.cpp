// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/find_table.h"

#include <QLocale>
#include <QPalette>
#include <algorithm>
#include <cmath>

#include "ui/as_typed.h"
#include "ui/quantity_edit.h"
#include "ui/recording/choice_cell.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// Decimals that show two digits of the least uncertainty.
int decimalsFor(const std::vector<core::Level>& levels) {
  double least = 0;
  for (const core::Level& level : levels)
    if (level.stdUncertainty > 0 && (least == 0 || level.stdUncertainty < least))
      least = level.stdUncertainty;
  if (!(least > 0) || !std::isfinite(least)) return 3;
  return std::clamp(1 - static_cast<int>(std::floor(std::log10(least))), 0, 9);
}

QVariant alignmentOf(int column) {
  const bool isNumber = column >= FindTable::From && column <= FindTable::Samples;
  return QVariant((isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
}

QString qualityOf(core::LevelQuality quality) {
  switch (quality) {
    case core::LevelQuality::Good:
      return FindTable::tr("good");
    case core::LevelQuality::Fair:
      return FindTable::tr("fair");
    case core::LevelQuality::Poor:
      return FindTable::tr("poor");
  }
  return {};
}

}  // namespace

void FindTable::show(const Finding* finding, std::shared_ptr<const core::Channel> channel) {
  const bool hasLevels = finding && finding->find && finding->find->levels;
  const int rows = hasLevels ? static_cast<int>(finding->find->levels->size()) : 0;
  const bool isAnother = rows != m_rows || !finding || finding->find != m_finding.find;
  if (isAnother) beginResetModel();
  m_finding = finding ? *finding : Finding{};
  m_channel = std::move(channel);
  m_rows = rows;
  m_stepsOfLevel.assign(static_cast<std::size_t>(rows), {});
  m_choices.clear();
  if (hasLevels) {
    m_decimals = decimalsFor(*finding->find->levels);
    const auto levels = levelOfSteps(*finding);
    for (std::size_t step = 0; step < levels.size(); ++step)
      if (levels[step]) m_stepsOfLevel[*levels[step]].push_back(step);
    m_choices << tr("no step");
    for (std::size_t step = 0; step < m_channel->setup.sequence.size(); ++step) m_choices << stepText(step);
  }
  if (isAnother)
    endResetModel();
  else if (rows > 0)
    emit dataChanged(index(0, 0), index(rows - 1, ColumnCount - 1));
}

int FindTable::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : m_rows; }
int FindTable::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

const core::Level& FindTable::level(int row) const {
  return (*m_finding.find->levels)[static_cast<std::size_t>(row)];
}

/// "4: +1000", the step's number and label.
QString FindTable::stepText(std::size_t step) const {
  const std::string& label = m_channel->setup.sequence[step].label;
  const QString number = QString::number(step + 1);
  return label.empty() ? number : number + ": " + toQString(label);
}

QString FindTable::stepsText(const std::vector<std::size_t>& steps) const {
  QStringList texts;
  for (const std::size_t step : steps) texts << stepText(step);
  return texts.isEmpty() ? tr("no step") : texts.join(", ");
}

QString FindTable::qualityText(const core::Level& level) const {
  const QString word = qualityOf(level.quality);
  return level.reason.empty() ? word : word + ": " + toQString(level.reason);
}

QString FindTable::text(int row, int column) const {
  const core::Level& shown = level(row);
  switch (column) {
    case Step:
      return stepsText(m_stepsOfLevel[static_cast<std::size_t>(row)]);
    case From:
      return numberText(shown.begin_s, 7);
    case To:
      return numberText(shown.end_s, 7);
    case Mean:
      return fixedNumberText(shown.mean, m_decimals);
    case Uncertainty:
      return fixedNumberText(shown.stdUncertainty, m_decimals);
    case Samples:
      return QLocale().toString(static_cast<qulonglong>(shown.samples));
    default:
      return qualityText(shown);
  }
}

QVariant FindTable::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= m_rows) return {};
  const int row = index.row(), column = index.column();
  const std::vector<std::size_t>& steps = m_stepsOfLevel[static_cast<std::size_t>(row)];
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(row, column);
    case Qt::ToolTipRole:
      return asTyped(text(row, column));
    case Qt::TextAlignmentRole:
      return alignmentOf(column);
    case Qt::ForegroundRole:
      if (column == Quality && level(row).quality == core::LevelQuality::Poor)
        return coloursFor(QPalette()).fail;
      return steps.empty() ? QVariant(coloursFor(QPalette()).quiet) : QVariant();
    case choicesRole:
      return column == Step ? m_choices : QStringList();
    case choiceRole:
      return steps.empty() ? 0 : static_cast<int>(steps.front()) + 1;
    default:
      return {};
  }
}

QVariant FindTable::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return alignmentOf(section);
  if (role != Qt::DisplayRole) return {};
  const QString unit =
      m_channel ? " [" + toQString(core::readingUnitText(m_channel->setup.instrument)) + "]" : QString();
  switch (section) {
    case Step:
      return tr("Step");
    case From:
      return tr("From [s]");
    case To:
      return tr("To [s]");
    case Mean:
      return tr("Mean") + unit;
    case Uncertainty:
      return tr("Std. uncertainty");
    case Samples:
      return tr("Samples") + QChar(0x2002);  // an en space: the next heading begins here
    default:
      return tr("Quality");
  }
}

Qt::ItemFlags FindTable::flags(const QModelIndex& index) const {
  // What cannot be compared with the plan cannot be given to a step either.
  const bool isOpen = index.column() == Step && m_finding.find && m_finding.find->match;
  return Qt::ItemIsSelectable | Qt::ItemIsEnabled | (isOpen ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

bool FindTable::setData(const QModelIndex& index, const QVariant& value, int role) {
  const int chosen = value.toInt();
  if (role != choiceRole || !(flags(index) & Qt::ItemIsEditable)) return false;
  if (chosen < 0 || chosen >= m_choices.size()) return false;
  emit stepGiven(static_cast<std::size_t>(index.row()),
                 chosen == 0 ? std::nullopt : std::optional(static_cast<std::size_t>(chosen - 1)));
  return true;
}

}  // namespace ui
