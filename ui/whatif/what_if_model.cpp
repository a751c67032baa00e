// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whatif/what_if_model.h"

#include <QStringList>

#include "core/units/shown.h"
#include "ui/as_typed.h"
#include "ui/budget/budget_words.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

const QString unknown = QStringLiteral("–");

/// core::polarityChangeText in the table's language.
QString polarityText(const core::WhatIfStep& step, core::Zeroed zeroed) {
  const auto& with = step.with(zeroed);
  QString text = toQString(core::polarityChangeText(step, zeroed));
  if (with && with->beyondRange) text = WhatIfModel::tr("%1, beyond the range").arg(text);
  return text;
}

}  // namespace

void WhatIfModel::show(std::optional<core::WhatIf> whatIf, core::Zeroed zeroed) {
  const auto rows = [](const std::optional<core::WhatIf>& one) { return one ? one->steps.size() + 1 : 0; };
  const bool same = rows(whatIf) == rows(m_whatIf);
  if (!same) beginResetModel();
  m_whatIf = std::move(whatIf);
  m_zeroed = zeroed;
  if (!same) return endResetModel();
  if (rowCount() == 0) return;
  emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
  emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

void WhatIfModel::setColours(const QPalette& palette) {
  m_palette = palette;
  if (rowCount() > 0) emit dataChanged(index(0, Polarity), index(rowCount() - 1, Polarity));
}

std::optional<std::size_t> WhatIfModel::stepOf(int row) {
  return row > 0 ? std::optional(static_cast<std::size_t>(row - 1)) : std::nullopt;
}

int WhatIfModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_whatIf ? 0 : static_cast<int>(m_whatIf->steps.size()) + 1;
}

int WhatIfModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString WhatIfModel::number(double value) const {
  const double shown = core::withoutRounding(*m_whatIf, value);
  return fixedNumberText(shown, core::placesShowing(shown, core::readingPlaces(*m_whatIf)));
}

QString WhatIfModel::difference(double value) const {
  const core::ShownDifference shown = core::shownDifference(*m_whatIf, value);
  return fixedNumberText(shown.value, shown.places);
}

QString WhatIfModel::closedText(std::size_t step) const {
  QStringList names;
  for (const std::size_t shunt : m_whatIf->before.sequence[step].closed)
    names << toQString(m_whatIf->before.shunts[shunt].name);
  return names.join(", ");
}

QString WhatIfModel::zeroCell(int column) const {
  const auto& without = m_whatIf->zeroWithout;
  const auto& with = m_whatIf->zeroWith;
  const auto shown = [&](core::Output output) {
    return number(core::readingOf(m_whatIf->setup.instrument, output).base());
  };
  switch (column) {
    case Step:
      return tr("bridge, unshunted");
    case Without:
      return without ? shown(*without) : unknown;
    case With:
      return with ? shown(*with) : unknown;
    case Difference:
      return without && with
                 ? difference(core::readingOf(m_whatIf->setup.instrument, *with - *without).base())
                 : unknown;
    case Percent:
      return unknown;
    case Polarity:
      return without && !with ? tr("cannot be read") : QString();
    default:
      return {};
  }
}

QString WhatIfModel::stepCell(const core::WhatIfStep& step, int column) const {
  const auto& with = step.with(m_zeroed);
  switch (column) {
    case Without:
      return step.without ? number(step.without->reading.base()) : unknown;
    case With:
      return with ? number(with->reading.base()) : unknown;
    case Difference:
      return step.without && with ? difference((with->reading - step.without->reading).base()) : unknown;
    case Percent: {
      const auto percent = core::shownGrowth(*m_whatIf, step, m_zeroed);
      return percent ? fixedNumberText(percent->value, percent->places) : unknown;
    }
    default:
      return polarityText(step, m_zeroed);
  }
}

QString WhatIfModel::cell(int row, int column) const {
  const auto step = stepOf(row);
  if (!step) return zeroCell(column);
  if (column == Step) return stepTitle(m_whatIf->before, *step);
  if (column == Closed) return closedText(*step);
  return stepCell(m_whatIf->steps[*step], column);
}

QString WhatIfModel::hint(int row, int column) const {
  const auto step = stepOf(row);
  if (!step) {
    if (!m_whatIf->zeroWith) return toText(m_whatIf->zeroWith.error());
    return tr("The bridge with all shunts open, not balanced.");
  }
  const core::WhatIfStep& one = m_whatIf->steps[*step];
  if (column == Without && !one.without) return toText(one.without.error());
  if (column > Without && !one.with(m_zeroed)) return toText(one.with(m_zeroed).error());
  const QString closed = closedText(*step);
  return closed.isEmpty() ? tr("All shunts open.") : tr("Closed: %1").arg(closed);
}

std::optional<core::Polarity> WhatIfModel::polarityOf(int row, int column) const {
  const auto step = stepOf(row);
  if (!step || (column != Without && column != With)) return std::nullopt;
  const core::WhatIfStep& one = m_whatIf->steps[*step];
  const auto& shown = column == Without ? one.without : one.with(m_zeroed);
  if (!shown || shown->polarity == core::Polarity::None) return std::nullopt;
  return shown->polarity;
}

QVariant WhatIfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return cell(index.row(), index.column());
    case Qt::ToolTipRole:
      return asTyped(hint(index.row(), index.column()));
    case Qt::TextAlignmentRole: {
      const bool numeric = index.column() >= Without && index.column() <= Percent;
      return QVariant((numeric ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    case Qt::ForegroundRole:
      if (const auto polarity = polarityOf(index.row(), index.column()))
        return colourOf(coloursFor(m_palette), *polarity);
      return {};
    case Qt::AccessibleTextRole: {
      const QString header = headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString();
      return QString(header).replace('\n', ' ') + ": " + cell(index.row(), index.column());
    }
    default:
      return {};
  }
}

QVariant WhatIfModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  const QString unit =
      m_whatIf ? "\n[" + toQString(core::readingUnitText(m_whatIf->before.instrument)) + "]" : QString();
  const bool before = m_zeroed == core::Zeroed::Before;
  switch (section) {
    case Step:
      return role == Qt::DisplayRole   ? tr("Step")
             : role == Qt::ToolTipRole ? tr("Number and label")
                                       : QVariant();
    case Closed:
      return role == Qt::DisplayRole   ? tr("Closed")
             : role == Qt::ToolTipRole ? tr("Shunts that the step closes")
                                       : QVariant();
    case Without:
      return role == Qt::DisplayRole   ? tr("Without") + unit
             : role == Qt::ToolTipRole ? tr("Expected reading of the plan as it is")
                                       : QVariant();
    case With:
      return role == Qt::DisplayRole   ? tr("With") + unit
             : role == Qt::ToolTipRole ? before
                                             ? tr("Reading with it, of an instrument zeroed before it came")
                                             : tr("Reading with it, of an instrument zeroed after it came")
                                       : QVariant();
    case Difference:
      return role == Qt::DisplayRole   ? tr("Difference") + unit
             : role == Qt::ToolTipRole ? tr("With minus without")
                                       : QVariant();
    case Percent:
      return role == Qt::DisplayRole ? tr("Change\n[%]")
             : role == Qt::ToolTipRole
                 ? tr("Difference over the reading without; −200 % where the sign turns and the size stays")
                 : QVariant();
    default:
      return role == Qt::DisplayRole   ? tr("Polarity")
             : role == Qt::ToolTipRole ? tr("Whether the reading still has its sign, and whether the "
                                            "article's strain goes another way")
                                       : QVariant();
  }
}

QString WhatIfModel::text() const {
  QStringList lines;
  QStringList cells;
  for (int column = 0; column < ColumnCount; ++column)
    cells << headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
  lines << cells.join('\t');
  for (int row = 0; row < rowCount(); ++row) {
    cells.clear();
    for (int column = 0; column < ColumnCount; ++column)
      cells << cell(row, column).replace('\t', ' ').replace('\n', ' ');
    lines << cells.join('\t');
  }
  return lines.join('\n') + '\n';
}

}  // namespace ui
