// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_model.h"

#include <QFont>
#include <algorithm>

#include "core/units/text.h"
#include "ui/as_typed.h"
#include "ui/theme.h"

namespace ui {
namespace {

bool isLike(const ReviewRow& a, const ReviewRow& b) {
  return a.channel == b.channel && a.finding.kind == b.finding.kind && a.finding.step == b.finding.step &&
         a.finding.shunt == b.finding.shunt;
}

bool isSame(const ReviewRow& a, const ReviewRow& b) {
  return isLike(a, b) && a.channelName == b.channelName && a.where == b.where &&
         a.finding.severity == b.finding.severity && a.finding.what == b.finding.what;
}

}  // namespace

QString placeOfFinding(const core::Setup& setup, const core::Finding& finding) {
  if (finding.step) {
    const std::string& label = setup.sequence[*finding.step].label;
    const QString step = ReviewModel::tr("step %1").arg(*finding.step + 1);
    return label.empty() ? step : step + " " + toQString(core::inQuotes(label));
  }
  if (finding.shunt)
    return ReviewModel::tr("shunt %1").arg(toQString(core::inQuotes(setup.shunts[*finding.shunt].name)));
  return ReviewModel::tr("plan");
}

QString severityText(core::Severity severity) {
  switch (severity) {
    case core::Severity::Fault:
      return ReviewModel::tr("◆ fault");
    case core::Severity::Warning:
      return ReviewModel::tr("▲ warning");
    case core::Severity::Note:
      return ReviewModel::tr("● note");
  }
  return {};
}

void ReviewModel::show(std::vector<ReviewRow> rows) {
  const bool same = std::equal(rows.begin(), rows.end(), m_rows.begin(), m_rows.end(), isSame);
  if (same) {
    m_rows = std::move(rows);  // mends are of the channel as it is now
    return;
  }
  beginResetModel();
  m_rows = std::move(rows);
  endResetModel();
}

int ReviewModel::rowLike(const ReviewRow& wanted) const {
  const auto same =
      std::find_if(m_rows.begin(), m_rows.end(), [&](auto& row) { return isSame(row, wanted); });
  const auto like = same != m_rows.end() ? same : std::find_if(m_rows.begin(), m_rows.end(), [&](auto& row) {
    return isLike(row, wanted);
  });
  return like == m_rows.end() ? -1 : static_cast<int>(like - m_rows.begin());
}

void ReviewModel::setColours(const QPalette& palette) {
  const Colours colours = coloursFor(palette);
  m_fault = colours.fail;
  m_warning = colours.cannotTell;
  m_note = colours.quiet;
  if (rowCount() > 0) emit dataChanged(index(0, Severity), index(rowCount() - 1, Severity));
}

int ReviewModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ReviewModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString ReviewModel::text(const ReviewRow& row, int column) const {
  switch (column) {
    case Severity:
      return severityText(row.finding.severity);
    case Channel:
      return row.channelName;
    case Where:
      return row.where;
    default:
      return toQString(row.finding.what);
  }
}

QVariant ReviewModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const ReviewRow& row = at(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return text(row, index.column());
    case Qt::ToolTipRole:
      return asTyped(toQString(row.finding.what) + "\n" + toQString(row.finding.why));
    case Qt::ForegroundRole:
      if (index.column() != Severity) return {};
      return row.finding.severity == core::Severity::Fault     ? m_fault
             : row.finding.severity == core::Severity::Warning ? m_warning
                                                               : m_note;
    default:
      return {};
  }
}

QVariant ReviewModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  static const char* const names[ColumnCount] = {QT_TR_NOOP("Severity"), QT_TR_NOOP("Channel"),
                                                 QT_TR_NOOP("Where"), QT_TR_NOOP("What")};
  static const char* const hints[ColumnCount] = {
      QT_TR_NOOP(
          "Fault: the check cannot succeed, or something can be damaged. Warning: the check is weaker for "
          "it. Note: worth knowing"),
      QT_TR_NOOP("Whose plan it is"), QT_TR_NOOP("The first step or the shunt that it is about"),
      QT_TR_NOOP("What was found, with its numbers")};
  if (role == Qt::ToolTipRole) return tr(hints[section]);
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
  return role == Qt::DisplayRole ? QVariant(tr(names[section])) : QVariant();
}

}  // namespace ui
