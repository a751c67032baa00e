// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fields/count_edit.h"

#include <QAction>
#include <QApplication>
#include <QEvent>
#include <QHash>
#include <QPainter>
#include <QPointer>
#include <algorithm>
#include <utility>

#include "core/units/notation.h"
#include "core/units/text.h"
#include "ui/fields/digit_keys.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int signSize = 16;

/// A minus or plus of the text's colour, sharp on screens of any density.
QIcon drawnSign(const QColor& colour, bool plus) {
  constexpr int scale = 3;
  QPixmap picture(signSize * scale, signSize * scale);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  painter.scale(scale, scale);
  painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(QPointF(4, 8), QPointF(12, 8));
  if (plus) painter.drawLine(QPointF(8, 4), QPointF(8, 12));
  painter.end();
  return QIcon(picture);
}

struct Signs : QObject {
  using QObject::QObject;
  QHash<std::pair<QRgb, bool>, QIcon> icons;
};

/// One for all fields: what Qt makes of an icon to show it, it never forgets the name of.
QIcon signIcon(const QColor& colour, bool plus) {
  static QPointer<Signs> signs;
  if (!signs) signs = new Signs(qApp);  // pictures may not outlive the program
  QIcon& icon = signs->icons[{colour.rgba(), plus}];
  if (icon.isNull()) icon = drawnSign(colour, plus);
  return icon;
}

}  // namespace

CountEdit::CountEdit(QWidget* parent) : NumberEdit(parent) {
  m_more = addAction(QIcon(), QLineEdit::TrailingPosition);  // the first one stands outermost
  m_fewer = addAction(QIcon(), QLineEdit::TrailingPosition);
  m_fewer->setText(tr("One fewer"));
  m_more->setText(tr("One more"));
  m_fewer->setObjectName("countFewer");
  m_more->setObjectName("countMore");
  connect(m_fewer, &QAction::triggered, this, [this] { stepByMouse(false); });
  connect(m_more, &QAction::triggered, this, [this] { stepByMouse(true); });
  connect(this, &QLineEdit::textChanged, this, [this](const QString& text) {
    if (const auto count = parsed(text); count && !m_waits) tell(*count);
  });
  setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
  drawSigns();
  showValue();
}

void CountEdit::setRange(quint64 least, quint64 greatest) {
  m_least = least;
  m_greatest = std::max(least, greatest);
  setValue(m_count);
  updateGeometry();
}

void CountEdit::setLeastWord(const QString& word) {
  m_leastWord = word;
  setPlaceholderText(word);
  showValue();
  updateGeometry();
}

void CountEdit::setUnit(const QString& unit) {
  m_unit = unit;
  showValue();
  updateGeometry();
}

void CountEdit::setValue(quint64 value) {
  const quint64 kept = std::clamp(value, m_least, m_greatest);
  // Neither half-typed nor refused text is lost because something else was changed.
  if (kept == m_count && (isRefused() || (hasFocus() && isModified()))) return;
  const bool another = kept != m_count;
  m_count = m_before = kept;
  showValue();
  if (another) emit valueChanged(m_count);
}

core::Result<std::uint64_t> CountEdit::parsed(const QString& text) const {
  QString typed = text.trimmed();
  if (!m_unit.isEmpty() && typed.endsWith(m_unit)) typed = typed.chopped(m_unit.size()).trimmed();
  if (!m_leastWord.isEmpty() && (typed.isEmpty() || typed.compare(m_leastWord, Qt::CaseInsensitive) == 0))
    return std::uint64_t(m_least);
  auto count = core::parseCount(typed.toStdString());
  if (!count || (*count >= m_least && *count <= m_greatest)) return count;
  return core::Error{
      "", tr("%1 is not from %2 to %3").arg(typed).arg(m_least).arg(m_greatest).toStdString(), {}};
}

Understood CountEdit::understood(const QString& text) const {
  const auto count = parsed(text);
  if (!count) return {false, toText(count.error())};
  const QString plain = QString::number(*count);
  const bool asTyped = text.trimmed() == plain || text.trimmed() == textOf(*count);
  return {true, asTyped ? QString() : QString("= %1").arg(textOf(*count))};
}

void CountEdit::tell(quint64 value) {
  if (value == m_count) return;
  m_count = value;
  emit valueChanged(value);
}

void CountEdit::take(const QString& text) {
  const auto count = parsed(text);
  if (!count) return;
  tell(*count);
  m_before = m_count;
  showValue();
}

QString CountEdit::textOf(quint64 count) const {
  if (count == m_least && !m_leastWord.isEmpty()) return m_leastWord;
  const QString digits = QString::number(count);
  return m_unit.isEmpty() ? digits : digits + ' ' + m_unit;
}

QString CountEdit::shownText() const { return textOf(m_count); }

void CountEdit::giveBack() {
  tell(m_before);
  showValue();
}

void CountEdit::focusInEvent(QFocusEvent* event) {
  if (!isModified()) m_before = m_count;
  NumberEdit::focusInEvent(event);
}

void CountEdit::stepByMouse(bool up) {
  if (!isEnabled() || isReadOnly()) return;
  if (isModified()) commit();
  if (isRefused()) return;
  const quint64 room = up ? m_greatest - m_count : m_count - m_least;
  const quint64 step = std::min(room, m_mouseStep);
  setValue(up ? m_count + step : m_count - step);
}

void CountEdit::changeEvent(QEvent* event) {
  NumberEdit::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::EnabledChange) drawSigns();
}

void CountEdit::drawSigns() {
  if (!m_fewer) return;
  const QColor colour = palette().color(QPalette::Text);
  m_fewer->setIcon(signIcon(colour, false));
  m_more->setIcon(signIcon(colour, true));
}

QSize CountEdit::sizeHint() const {
  const int digits = std::min<int>(static_cast<int>(QString::number(m_greatest).size()), 12);
  const int text = std::max(fontMetrics().horizontalAdvance(QString(std::max(3, digits), '0') + ' ' + m_unit),
                            fontMetrics().horizontalAdvance(m_leastWord));
  const int buttons = 2 * (signSize + 8);
  return {text + buttons + 3 * fontMetrics().horizontalAdvance('0'), NumberEdit::sizeHint().height()};
}

QSize CountEdit::minimumSizeHint() const { return sizeHint(); }

}  // namespace ui
