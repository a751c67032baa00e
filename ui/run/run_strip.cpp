// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_strip.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/run/step_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int shownRows = 2;
constexpr int gap = 3;

}  // namespace

RunStrip::RunStrip(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Steps of the run"));
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void RunStrip::showSteps(std::vector<Field> fields, std::optional<std::size_t> current) {
  m_fields = std::move(fields);
  m_current = current;
  QStringList words;
  for (std::size_t step = 0; step < m_fields.size(); ++step) words << wordsOf(step);
  setAccessibleDescription(words.join("; "));
  updateGeometry();
  update();
}

QString RunStrip::wordsOf(std::size_t step) const {
  const Field& field = m_fields[step];
  const QString name = field.name.isEmpty() ? QString() : ", " + field.name;
  const QString word =
      field.read ? tr(std::string(core::verdictWord(field.verdict)).c_str()) : tr("no reading");
  return tr("Step %1%2: %3").arg(QString::number(step + 1), name, word);
}

RunStrip::Grid RunStrip::grid() const {
  const int count = std::max(1, static_cast<int>(m_fields.size()));
  const int least = fontMetrics().horizontalAdvance("88 ✗") + 12, most = 6 * least;
  Grid grid;
  grid.width = std::clamp(width() / count, least, most);
  grid.columns = std::max(1, width() / grid.width);
  grid.height = fontMetrics().height() + 12;
  const int rows = (count + grid.columns - 1) / grid.columns;
  grid.rows = std::min(rows, shownRows);
  const int currentRow = m_current ? static_cast<int>(*m_current) / grid.columns : 0;
  grid.firstRow = std::clamp(currentRow, 0, rows - grid.rows);
  return grid;
}

QRect RunStrip::fieldOf(std::size_t step) const {
  const Grid g = grid();
  const int row = static_cast<int>(step) / g.columns - g.firstRow;
  if (row < 0 || row >= g.rows) return {};
  return QRect(static_cast<int>(step) % g.columns * g.width, row * g.height, g.width - gap, g.height - gap);
}

std::optional<std::size_t> RunStrip::stepAt(const QPoint& position) const {
  for (std::size_t step = 0; step < m_fields.size(); ++step)
    if (fieldOf(step).contains(position)) return step;
  return std::nullopt;
}

QSize RunStrip::sizeHint() const { return {400, grid().rows * grid().height}; }
QSize RunStrip::minimumSizeHint() const { return {120, grid().rows * grid().height}; }

bool RunStrip::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const auto step = stepAt(help->pos());
  QToolTip::showText(help->globalPos(), step ? asTyped(wordsOf(*step)) : QString(), this);
  return true;
}

void RunStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Colours colours = coloursFor(palette());
  for (std::size_t step = 0; step < m_fields.size(); ++step) {
    const QRectF field = QRectF(fieldOf(step)).adjusted(1, 1, -1, -1);
    if (field.isEmpty()) continue;
    const bool current = m_current == step;
    painter.setPen(QPen(current ? colours.selected : colours.grid, current ? 2.5 : 1));
    painter.setBrush(colours.background);
    painter.drawRoundedRect(field, 4, 4);
    const bool read = m_fields[step].read;
    painter.setPen(read ? colourOf(colours, m_fields[step].verdict) : colours.text);
    const QString sign = read ? " " + verdictSign(m_fields[step].verdict) : QString();
    painter.drawText(field, Qt::AlignCenter, QString::number(step + 1) + sign);
  }
}

void RunStrip::mousePressEvent(QMouseEvent* event) {
  if (const auto step = stepAt(event->position().toPoint()); step && event->button() == Qt::LeftButton)
    emit stepChosen(*step);
}

/// Another width may take another number of rows.
void RunStrip::resizeEvent(QResizeEvent*) { updateGeometry(); }

TwinTable RunStrip::twin() const {
  TwinTable table{{tr("Steps of the run")}, {}};
  for (std::size_t step = 0; step < m_fields.size(); ++step) table.rows << QStringList{wordsOf(step)};
  return table;
}

}  // namespace ui
