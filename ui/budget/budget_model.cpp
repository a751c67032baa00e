// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget/budget_model.h"

#include <algorithm>
#include <cmath>

#include "ui/as_typed.h"
#include "ui/budget/budget_words.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int valueDigits = 6;
constexpr int contributionDigits = 3;
constexpr int fullDigits = 17;        // the shortest that is the same number again
constexpr double negligible = 1e-10;  ///< of the combined uncertainty, itself some 1e-4 of the value

QString spreadName(const core::Uncertainty& uncertainty) {
  switch (core::distributionOf(uncertainty)) {
    case core::Distribution::Normal:
      return uncertainty.degreesOfFreedom
                 ? BudgetModel::tr("Student's t, ν = %1").arg(numberText(*uncertainty.degreesOfFreedom, 4))
                 : BudgetModel::tr("normal");
    case core::Distribution::Rectangular:
      return BudgetModel::tr("rectangular");
    case core::Distribution::Triangular:
      return BudgetModel::tr("triangular");
    case core::Distribution::Arcsine:
      return BudgetModel::tr("arcsine");
  }
  return {};
}

/// As a report writes it, without the distribution and its degrees of freedom, which have a column.
QString statedText(const core::Setup& setup, const core::BudgetInput& input) {
  core::Uncertainty plain = input.uncertainty;
  plain.degreesOfFreedom.reset();
  QString text = toQString(core::uncertaintyText(setup, input.input, plain));
  if (input.uncertainty.statement != core::Statement::Tolerance) return text;
  const QString spread = ", " + toQString(core::distributionKey(input.uncertainty.distribution));
  const qsizetype at = text.indexOf(spread);
  return at < 0 ? text : text.remove(at, spread.size());
}

QString sourceHint(const core::Setup& setup, const core::BudgetInput& input) {
  if (!input.assumed) return BudgetModel::tr("Stated for this channel.");
  return BudgetModel::tr("Nothing is stated for this input. Assumed: %1.")
      .arg(toQString(core::assumptionFor(setup, input.input).reason));
}

}  // namespace

BudgetModel::Row BudgetModel::rowOf(const core::Setup& setup, core::Scope scope,
                                    const core::BudgetInput& input, const core::BudgetLine& line,
                                    double combined) {
  const core::InputUnit unit = core::inputUnit(setup, input.input);
  Row row;
  row.input = input.input;
  row.value = input.value;
  row.standard = input.standard;
  // An input that plays no part is left with what rounding makes of a difference of equal numbers.
  const bool none = input.standard > 0 && std::abs(line.contribution) < negligible * combined;
  row.sensitivity = none ? 0 : line.sensitivity;
  row.contribution = none ? 0 : line.contribution;
  row.share = none ? 0 : line.share;
  row.name = toQString(core::inputName(setup, input.input));
  row.valueText = quantityText(input.value, unit.family, toQString(unit.named), valueDigits);
  row.uncertainText = statedText(setup, input);
  row.spreadText = spreadName(input.uncertainty);
  row.sensitivityText = sensitivityText(setup, scope, input.input, row.sensitivity);
  row.hint = row.name + ": " + toQString(core::uncertaintyText(setup, input.input, input.uncertainty)) +
             ". " + sourceHint(setup, input);
  row.assumed = input.assumed;
  return row;
}

void BudgetModel::show(const core::Setup& setup, const core::Budget& budget, core::Scope scope,
                       std::size_t step) {
  std::vector<Row> rows;
  const auto& result = budget.of(scope).steps[step];
  for (const core::BudgetLine& line : core::budgetLines(setup, budget, scope, step))
    rows.push_back(rowOf(setup, scope, budget.inputs[line.input], line, result->standard));
  showRows(std::move(rows), toQString(core::scopeUnitText(setup, scope)));
}

void BudgetModel::showNothing() { showRows({}, m_unit); }

void BudgetModel::showRows(std::vector<Row> rows, const QString& unit) {
  const bool same = rows.size() == m_rows.size();
  if (!same) beginResetModel();
  m_rows = std::move(rows);
  m_unit = unit;
  m_lowest = 0, m_highest = 1;
  for (const Row& row : m_rows) {
    m_lowest = std::min(m_lowest, row.share);
    m_highest = std::max(m_highest, row.share);
  }
  if (!same) endResetModel();
  if (same && !m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
  emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

int BudgetModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int BudgetModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant BudgetModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  static const char* const names[ColumnCount] = {QT_TR_NOOP("Input"),
                                                 QT_TR_NOOP("Value"),
                                                 QT_TR_NOOP("Uncertainty"),
                                                 QT_TR_NOOP("Distribution"),
                                                 QT_TR_NOOP("Sensitivity"),
                                                 QT_TR_NOOP("Contribution\n[%1]"),
                                                 QT_TR_NOOP("Share of\nvariance"),
                                                 QT_TR_NOOP("Source")};
  static const char* const hints[ColumnCount] = {
      QT_TR_NOOP("What the prediction depends on"),
      QT_TR_NOOP("Value of the input"),
      QT_TR_NOOP("How far the input may be from its value, as stated or assumed"),
      QT_TR_NOOP("How its possible values are spread"),
      QT_TR_NOOP("How much the result changes when the input does, all else as it is"),
      QT_TR_NOOP("Sensitivity times standard uncertainty, with its sign"),
      QT_TR_NOOP("Part of the combined variance, 100 % in all; negative where a correlation takes some away"),
      QT_TR_NOOP("Whether the uncertainty is stated for this channel or the usual one of its kind")};
  if (role == Qt::ToolTipRole) return tr(hints[section]);
  if (role != Qt::DisplayRole) return {};
  const QString name = tr(names[section]);
  return section == Contribution ? name.arg(m_unit) : name;
}

QVariant BudgetModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = m_rows[static_cast<std::size_t>(index.row())];
  const int column = index.column();
  switch (role) {
    case Qt::DisplayRole:
      return text(row, column);
    case Qt::EditRole:
      if (column == Contribution) return numberText(row.contribution, fullDigits);
      return column == Share ? numberText(row.share, fullDigits) : text(row, column);
    case Qt::ToolTipRole:
      return asTyped(row.hint);
    case Qt::TextAlignmentRole: {
      const bool number =
          column == Value || column == Sensitivity || column == Contribution || column == Share;
      return QVariant(number ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    }
    case SortRole:
      return sortKey(row, column);
    case ShareRole:
      return row.share;
    case LowestShareRole:
      return m_lowest;
    case HighestShareRole:
      return m_highest;
    default:
      return {};
  }
}

QString BudgetModel::text(const Row& row, int column) const {
  switch (column) {
    case Name:
      return row.name;
    case Value:
      return row.valueText;
    case Uncertain:
      return row.uncertainText;
    case Spread:
      return row.spreadText;
    case Sensitivity:
      return row.sensitivityText;
    case Contribution:
      return numberText(row.contribution, contributionDigits);
    case Share:
      return (row.share == 0 ? QString("0") : fixedNumberText(100 * row.share, 1)) + " %";
    default:
      return row.assumed ? tr("assumed") : tr("stated");
  }
}

QVariant BudgetModel::sortKey(const Row& row, int column) const {
  switch (column) {
    case Value:
      return row.value;
    case Uncertain:
      return row.standard;
    case Sensitivity:
      return row.sensitivity;
    case Contribution:
      return row.contribution;
    case Share:
      return row.share;
    default:
      return text(row, column);
  }
}

}  // namespace ui
