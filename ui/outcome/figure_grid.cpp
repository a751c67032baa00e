// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/figure_grid.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int columnWidth_px = 150;
constexpr int wideColumn_px = 220;  ///< of a single column beside the charts

QLabel* plainLabel(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setTextFormat(Qt::PlainText);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  label->setWordWrap(true);
  label->setMinimumWidth(60);
  return label;
}

}  // namespace

QString withWholeUnits(QString text) {
  static const QString joined = QString("/").prepend(QChar(0x2060)).append(QChar(0x2060));  // word joiners
  for (const char* unit : {"µm/m", "mV/V"})
    text.replace(QString::fromUtf8(unit), QString::fromUtf8(unit).replace("/", joined));
  return text;
}

FigureGrid::FigureGrid(QWidget* parent) : QWidget(parent), m_layout(new QGridLayout(this)) {
  m_layout->setContentsMargins(0, 0, 0, 0);
  m_layout->setHorizontalSpacing(12);
  m_layout->setVerticalSpacing(0);
  setAccessibleName(tr("Figures"));
}

void FigureGrid::setFigures(const std::vector<core::Entry>& figures) {
  const bool sameCount = figures.size() == m_count;
  m_count = figures.size();
  while (m_labels.size() < m_count) m_labels.emplace_back(plainLabel(this), plainLabel(this));
  QString words;
  for (std::size_t k = 0; k < m_count; ++k) {
    const QString name = toQString(figures[k].name), value = toQString(figures[k].value);
    if (m_labels[k].first->text() != name || m_labels[k].second->text() != withWholeUnits(value))
      m_fitted = {};
    m_labels[k].first->setText(name);
    m_labels[k].second->setText(withWholeUnits(value));
    m_labels[k].second->setAccessibleName(name + ": " + value);
    words += name + ": " + value + ". ";
  }
  setAccessibleDescription(words);
  if (sameCount) return hideWhatDoesNotFit();
  m_columns = 0;
  place();
  colour();
}

QSize FigureGrid::sizeHint() const { return {wideColumn_px, QWidget::sizeHint().height()}; }

/// Where rows may be left out, those of a wide view must not keep it from getting low.
QSize FigureGrid::minimumSizeHint() const {
  return {columnWidth_px, m_room == QWIDGETSIZE_MAX ? QWidget::minimumSizeHint().height() : 0};
}

void FigureGrid::place() {
  const int columns = std::clamp(width() / columnWidth_px, 1, 6);
  if (columns == m_columns) return;
  m_columns = columns;
  for (int column = 0; column < 6; ++column) m_layout->setColumnStretch(column, column < columns ? 1 : 0);
  for (std::size_t k = 0; k < m_labels.size(); ++k) {
    const auto [name, value] = m_labels[k];
    const int row = static_cast<int>(k) / columns, column = static_cast<int>(k) % columns;
    name->setContentsMargins(0, row == 0 ? 0 : 4, 0, 0);
    m_layout->addWidget(name, 2 * row, column, Qt::AlignTop);
    m_layout->addWidget(value, 2 * row + 1, column, Qt::AlignTop);
    name->setVisible(k < m_count);
    value->setVisible(k < m_count);
  }
  m_fitted = {};
  hideWhatDoesNotFit();
}

void FigureGrid::setRoom(int height) {
  m_room = height;
  hideWhatDoesNotFit();
}

/// Rows are as high as their highest cell is at the width of a column.
void FigureGrid::hideWhatDoesNotFit() {
  // To break all texts into lines is most of what an edit would cost here.
  const std::array<int, 3> fitted{width(), m_columns, m_room};
  if (m_columns == 0 || fitted == m_fitted) return;
  m_fitted = fitted;
  const int cell = std::max(60, width() / m_columns - m_layout->horizontalSpacing());
  const auto columns = static_cast<std::size_t>(m_columns);
  int height = 0;
  for (std::size_t row = 0; row * columns < m_count; ++row) {
    const std::size_t begin = row * columns, end = std::min(begin + columns, m_count);
    int names = 0, values = 0;
    for (std::size_t k = begin; k < end; ++k) {
      names = std::max(names, m_labels[k].first->heightForWidth(cell));
      values = std::max(values, m_labels[k].second->heightForWidth(cell));
    }
    height += names + values;
    for (std::size_t k = begin; k < end; ++k)
      for (QLabel* label : {m_labels[k].first, m_labels[k].second}) label->setVisible(height <= m_room);
  }
}

void FigureGrid::colour() {
  const Colours colours = coloursFor(palette());
  QFont small = font();
  small.setPointSizeF(std::max(7.5, 0.88 * small.pointSizeF()));
  for (const auto& [name, value] : m_labels) {
    QPalette quiet = name->palette();
    quiet.setColor(QPalette::WindowText, colours.quiet);
    name->setPalette(quiet);
    name->setFont(small);
  }
  m_fitted = {};
}

void FigureGrid::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
  hideWhatDoesNotFit();
}

void FigureGrid::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

}  // namespace ui
