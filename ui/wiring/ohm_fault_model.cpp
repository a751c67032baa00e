// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/ohm_fault_model.h"

#include <algorithm>

#include "ui/as_typed.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {

void OhmFaultModel::show(std::vector<core::OhmFault> faults) {
  beginResetModel();
  m_faults = std::move(faults);
  endResetModel();
}

int OhmFaultModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_faults.size());
}

int OhmFaultModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant OhmFaultModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == Misfit)
    return tr("Mean square of the deviations, each as a share of its tolerance");
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Rank:
      return tr("Rank");
    case Fault:
      return tr("Fault");
    case Explains:
      return tr("Explains every reading");
    default:
      return tr("Misfit");
  }
}

QVariant OhmFaultModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const core::OhmFault& fault = m_faults[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return text(index.row(), index.column());
    case Qt::ToolTipRole:  // the whole of what may be cut off
      return index.column() == Fault ? QVariant(asTyped(text(index.row(), Fault))) : QVariant();
    case Qt::ForegroundRole:
      if (index.column() != Explains) return {};
      return fault.explains ? coloursFor(QPalette()).pass : coloursFor(QPalette()).quiet;
    case Qt::TextAlignmentRole: {
      const bool number = index.column() == Rank || index.column() == Misfit;
      return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    default:
      return {};
  }
}

QString OhmFaultModel::text(int row, int column) const {
  const core::OhmFault& fault = m_faults[static_cast<std::size_t>(row)];
  switch (column) {
    case Rank:
      return QString::number(row + 1);
    case Fault:
      return toQString(core::ohmFaultText(fault));
    case Explains:
      return fault.explains ? tr("yes") : tr("no");
    default:
      return fixedNumberText(fault.misfit, 2);
  }
}

QString diagnosisText(const std::vector<core::OhmFault>& faults, std::size_t readings) {
  const QString count = OhmFaultModel::tr("%n reading(s)", nullptr, int(readings));
  if (faults.empty()) return count;
  const auto explaining =
      std::count_if(faults.begin(), faults.end(), [](const core::OhmFault& fault) { return fault.explains; });
  const QString first = toQString(core::ohmFaultText(faults.front()));
  if (explaining == 0) {
    const QString none = OhmFaultModel::tr("%1. No single fault explains them all").arg(count);
    return faults.front().kind == core::OhmFaultKind::None
               ? OhmFaultModel::tr("%1: measure again, and look for two faults.").arg(none)
               : OhmFaultModel::tr("%1; nearest comes: %2.").arg(none, first);
  }
  const QString best = OhmFaultModel::tr("%1. Fits best: %2.").arg(count, first);
  if (faults.front().kind == core::OhmFaultKind::None) return best;
  if (explaining > 1)
    return best + " " +
           OhmFaultModel::tr("%n faults explain every reading: more readings tell them apart.", nullptr,
                             int(explaining));
  return best;
}

}  // namespace ui
