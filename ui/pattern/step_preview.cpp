// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/step_preview.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "ui/as_typed.h"
#include "ui/quantity_edit.h"
#include "ui/sequence_model.h"
#include "ui/theme.h"

namespace ui {

/// Repeats close the same shunts again: each state is predicted once.
void StepPreview::show(core::Setup setup, std::vector<core::Step> steps) {
  beginResetModel();
  m_setup = std::move(setup);
  m_setup.sequence.clear();
  m_steps = std::move(steps);
  m_state.clear();
  std::map<std::vector<std::size_t>, std::size_t> known;
  for (const core::Step& step : m_steps) {
    const auto [state, isNew] = known.emplace(step.closed, m_setup.sequence.size());
    if (isNew) m_setup.sequence.push_back(step);
    m_state.push_back(state->second);
  }
  m_prediction = core::predict(m_setup);
  double greatest = 0;
  for (const auto& predicted : m_prediction.steps)
    if (predicted) greatest = std::max(greatest, std::abs(predicted->reading.base()));
  m_decimals = decimalsFor(greatest);
  endResetModel();
}

int StepPreview::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_steps.size());
}

int StepPreview::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

const core::Result<core::Prediction>& StepPreview::prediction(int row) const {
  return m_prediction.steps[m_state[static_cast<std::size_t>(row)]];
}

QVariant StepPreview::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case Number:
      return tr("No.");
    case Label:
      return tr("Step");
    case Closed:
      return tr("Shunts closed");
    case PolarityColumn:
      return tr("Polarity");
    case Settle:
      return tr("Settle\n[s]");
    case Hold:
      return tr("Hold\n[s]");
    default:
      return tr("Expected\n[%1]").arg(toQString(core::readingUnitText(m_setup.instrument)));
  }
}

QVariant StepPreview::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const auto& predicted = prediction(index.row());
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(index.row(), index.column());
    case Qt::ToolTipRole:
      return predicted ? QString() : asTyped(toText(predicted.error()));
    case Qt::ForegroundRole:
      if (index.column() != PolarityColumn) return {};
      return predicted ? colourOf(coloursFor(QPalette()), predicted->polarity) : coloursFor(QPalette()).fail;
    case Qt::TextAlignmentRole: {
      const bool number = index.column() == Number || index.column() >= Settle;
      return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    default:
      return {};
  }
}

QString StepPreview::text(int row, int column) const {
  const core::Step& step = m_steps[static_cast<std::size_t>(row)];
  const auto& predicted = prediction(row);
  switch (column) {
    case Number:
      return QString::number(row + 1);
    case Label:
      return toQString(step.label);
    case Closed:
      return closedShuntsText(m_setup, step);
    case PolarityColumn:
      return predicted ? polarityText(predicted->polarity) : tr("error");
    case Settle:
      return numberText(step.settle.base(), 6);
    case Hold:
      return numberText(step.hold.base(), 6);
    default:
      return predicted ? fixedNumberText(predicted->reading.base(), m_decimals) : QString("–");
  }
}

}  // namespace ui
