// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fields/field_echo.h"

#include <QAccessible>
#include <QApplication>
#include <QEvent>
#include <QLineEdit>
#include <QPainter>
#include <algorithm>

#include "ui/theme.h"

namespace ui {
namespace {

constexpr int echoPadding = 6, echoGap = 3, echoWidth = 380;
constexpr int untilDescribed_ms = 500;  ///< so that a reader does not talk into the typing

/// The sheet itself; in a word or two what kind of words they are shows in its edge.
class EchoSheet : public QLabel {
 public:
  explicit EchoSheet(QWidget* parent) : QLabel(parent) {
    setObjectName("fieldEcho");
    setTextFormat(Qt::PlainText);
    setMargin(echoPadding);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  }

  void setRefused(bool refused) {
    m_refused = refused;
    update();
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    const Colours colours = coloursFor(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(palette().color(QPalette::Base));
    painter.setPen(QPen(m_refused ? colours.fail : colours.quiet, 1));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    painter.end();
    QLabel::paintEvent(event);
  }

 private:
  bool m_refused = false;
};

/// Where the words of other fields of the window stand.
QList<QRect> otherSheets(const QWidget& window, const QWidget* own) {
  QList<QRect> taken;
  for (const auto* other : window.findChildren<QLabel*>("fieldEcho", Qt::FindDirectChildrenOnly))
    if (other != own && other->isVisible()) taken << other->geometry();
  return taken;
}

/// Upper left corners for a sheet of that size, the best first: at the field, else clear of what has the
/// keyboard and of the words of other fields.
QList<QPoint> cornersAround(const QRect& field, const QRect& keyboard, const QList<QRect>& others,
                            QSize size) {
  QList<QPoint> corners{field.bottomLeft() + QPoint(0, echoGap + 1),
                        field.topLeft() - QPoint(0, size.height() + echoGap),
                        field.topRight() + QPoint(echoGap + 1, 0),
                        field.topLeft() - QPoint(size.width() + echoGap, 0),
                        QPoint(field.left(), keyboard.bottom() + echoGap + 1),
                        QPoint(field.left(), keyboard.top() - size.height() - echoGap)};
  for (const QRect& other : others)
    corners << QPoint(field.left(), other.bottom() + echoGap + 1)
            << QPoint(field.left(), other.top() - size.height() - echoGap);
  return corners;
}

}  // namespace

FieldEcho::FieldEcho(QLineEdit* field) : QObject(field), m_field(field) {
  m_pause.setSingleShot(true);
  m_pause.setInterval(untilDescribed_ms);
  connect(&m_pause, &QTimer::timeout, this, &FieldEcho::describe);
  field->installEventFilter(this);
}

FieldEcho::~FieldEcho() { delete m_sheet; }

void FieldEcho::say(const Understood& understood) {
  m_refused = false;
  m_words = understood.words;
  m_words.isEmpty() ? hide() : show();
  m_pause.start();
}

void FieldEcho::refuse(const QString& reason) {
  m_refused = true;
  m_words = reason;
  show();
  m_pause.stop();
  describe();
  if (!isShown()) return;
  QAccessibleEvent alert(m_sheet, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void FieldEcho::clear() {
  m_refused = false;
  m_words.clear();
  hide();
  m_pause.stop();
  describe();
}

/// The field's own description comes back when there is nothing to say.
void FieldEcho::describe() {
  if (m_words.isEmpty() && !m_described) return;
  if (!m_described) m_description = m_field->accessibleDescription();
  m_described = !m_words.isEmpty();
  const QString now = m_words.isEmpty() ? m_description : m_words;
  if (m_field->accessibleDescription() != now) m_field->setAccessibleDescription(now);
}

void FieldEcho::show() {
  QWidget* window = m_field->window();
  if (!m_field->isVisible()) return;
  if (m_sheet && m_sheet->parentWidget() != window) delete m_sheet;
  if (!m_sheet) m_sheet = new EchoSheet(window);
  static_cast<EchoSheet*>(m_sheet.data())->setRefused(m_refused);
  m_sheet->setFont(m_field->font());
  watch(true);
  place();
  m_sheet->show();
  m_sheet->raise();
}

void FieldEcho::hide() {
  watch(false);
  if (m_sheet) m_sheet->hide();
}

/// Follows the field wherever one of its parents takes it.
void FieldEcho::watch(bool on) {
  if (!on) {
    for (const auto& widget : m_watched)
      if (widget) widget->removeEventFilter(this);
    m_watched.clear();
    disconnect(qApp, &QApplication::focusChanged, this, nullptr);
    return;
  }
  if (!m_watched.isEmpty()) return;
  for (QWidget* widget = m_field->parentWidget(); widget; widget = widget->parentWidget()) {
    widget->installEventFilter(this);
    m_watched.append(widget);
    if (widget->isWindow()) break;
  }
  connect(qApp, &QApplication::focusChanged, this, &FieldEcho::place, Qt::QueuedConnection);
}

void FieldEcho::place() {
  if (!m_sheet) return;
  const QWidget* window = m_field->window();
  const QRect room = window->rect().adjusted(echoGap, echoGap, -echoGap, -echoGap);
  const QRect field(m_field->mapTo(window, QPoint()), m_field->size());
  // Away from the field it must tell whose words these are.
  const bool named = m_refused && !m_field->hasFocus() && !m_field->accessibleName().isEmpty();
  m_sheet->setText(named ? tr("%1: %2").arg(m_field->accessibleName(), m_words) : m_words);
  const int wanted = m_sheet->fontMetrics().horizontalAdvance(m_sheet->text()) + 2 * echoPadding + 2;
  const int width = std::min({wanted, echoWidth, room.width()});
  m_sheet->setWordWrap(wanted > width);
  QRect sheet(field.topLeft(),
              QSize(width, wanted > width ? m_sheet->heightForWidth(width) : m_sheet->sizeHint().height()));
  QRect keyboard;
  const QWidget* focus = QApplication::focusWidget();
  if (focus && focus != m_field && focus->window() == window && window->isAncestorOf(focus))
    keyboard = QRect(focus->mapTo(window, QPoint()), focus->size());
  const QList<QRect> others = otherSheets(*window, m_sheet);
  const auto isFree = [&] {
    return room.contains(sheet) && !sheet.intersects(field) && !sheet.intersects(keyboard) &&
           std::none_of(others.begin(), others.end(),
                        [&](const QRect& one) { return one.intersects(sheet); });
  };
  for (const QPoint& corner : cornersAround(field, keyboard, others, sheet.size())) {
    sheet.moveTopLeft(corner);
    sheet.moveLeft(
        std::clamp(sheet.left(), room.left(), std::max(room.left(), room.right() - sheet.width() + 1)));
    if (isFree()) break;
  }
  // Nowhere: below all the same, cut off by the window rather than over the field.
  if (!room.contains(sheet) || sheet.intersects(field)) {
    sheet.moveTop(field.bottom() + echoGap + 1);
    sheet.moveLeft(
        std::clamp(field.left(), room.left(), std::max(room.left(), room.right() - sheet.width() + 1)));
  }
  m_sheet->setGeometry(sheet);
  // A field that is scrolled away takes its words along.
  m_sheet->setVisible(!m_field->visibleRegion().isEmpty());
}

bool FieldEcho::eventFilter(QObject* watched, QEvent* event) {
  // A field that is being destroyed is no longer one, and still sends events.
  if (watched == m_field && !qobject_cast<QLineEdit*>(watched)) return false;
  switch (event->type()) {
    case QEvent::Move:
    case QEvent::Resize:
      if (isShown() || m_refused) place();
      break;
    case QEvent::Hide:
      if (watched == m_field && m_sheet) m_sheet->hide();
      break;
    case QEvent::Show:
      if (watched == m_field && !m_words.isEmpty()) show();
      break;
    case QEvent::FocusOut:
      if (watched == m_field && !m_refused) clear();
      break;
    default:
      break;
  }
  return QObject::eventFilter(watched, event);
}

}  // namespace ui
