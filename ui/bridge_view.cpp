// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge_view.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "core/plan/overdue.h"
#include "ui/bridge/bridge_painter.h"

namespace ui {
namespace {

constexpr int margin = 6;
constexpr double mostZoom = 8;

QLabel* line(const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setAttribute(Qt::WA_TransparentForMouseEvents);
  return label;
}

}  // namespace

BridgeView::BridgeView(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_title(line("bridgeTitle", this)),
      m_leaks(line("bridgeLeaks", this)),
      m_notice(line("bridgeNotice", this)),
      m_outcome(line("bridgeOutcome", this)) {
  setObjectName("bridgeView");
  setAccessibleName(tr("Bridge"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  m_title->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  m_leaks->setWordWrap(true);
  m_leaks->hide();
  m_notice->setWordWrap(true);
  m_notice->hide();
  m_outcome->setWordWrap(true);
  m_outcome->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  QFont strong = m_outcome->font();
  strong.setBold(true);
  m_outcome->setFont(strong);
  m_notice->setFont(strong);
  // Room for a sentence, so that the drawing keeps its place while the text changes.
  m_outcome->setMinimumHeight(2 * QFontMetrics(strong).lineSpacing());
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(margin, margin, margin, margin);
  column->setSpacing(2);
  column->addStretch(1);
  column->addWidget(m_title);
  column->addWidget(m_leaks);
  column->addWidget(m_notice);
  column->addWidget(m_outcome);
  m_colours = coloursFor(palette());
  connect(&m_session, &Session::changed, this, &BridgeView::follow);
  follow();
}

const BridgeState* BridgeView::stateNow() const { return m_picture ? &m_picture->state : nullptr; }

QString BridgeView::description() const {
  if (!m_picture) return tr("No channel in this document.");
  const QString notice = noticeNow(), told = describe(*m_channel, m_picture->state);
  return notice.isEmpty() ? told : notice + ' ' + told;
}

/// The sequence shows a closed check as it was judged; this drawing always shows the plan.
QString BridgeView::noticeNow() const {
  if (!m_channel) return {};
  const QString overdue = toQString(core::overdueSentence(setup(), m_session.today()));
  const core::Check* check = m_session.check();
  if (!check || !check->closedWith || *check->closedWith == setup()) return overdue;
  const QString other = tr("Shows the plan as it is now; the chosen check was judged by another set-up.");
  return overdue.isEmpty() ? other : other + ' ' + overdue;
}

/// Takes over what the session shows now; draws anew only when that is something else.
void BridgeView::follow() {
  const auto chosen = m_session.selection().channel;
  const auto channel = chosen ? m_session.document().channels[*chosen] : nullptr;
  const auto step = m_session.selection().step;
  const bool drawn = (m_picture != nullptr) == (channel != nullptr);
  if (drawn && channel == m_channel && step == m_step) {
    if (m_notice->text() != noticeNow()) showTexts();
    return;
  }
  if (!channel || !m_channel || channel->name != m_channel->name) m_focus.reset();
  m_channel = channel;
  m_step = step;
  m_move.reset();
  m_pressed.reset();
  m_picture.reset();
  if (channel)
    m_picture =
        std::make_unique<BridgePicture>(pictureOf(*channel, m_session.evaluation()->prediction, step));
  if (isShunt(m_focus) && m_focus->part.index >= setup().shunts.size()) m_focus.reset();
  showTexts();
  update();
}

void BridgeView::showTexts() {
  if (!m_picture) return showTexts({}, {}, m_colours.text);
  const BridgeState& state = m_picture->state;
  if (!m_move) {
    const bool signless = state.polarity == core::Polarity::None;
    const QColor plain = state.failed ? m_colours.fail : m_colours.text;
    return showTexts(state.title, state.outcome, signless ? plain : colourOf(m_colours, state.polarity));
  }
  QString title = tr("Moving %1").arg(toQString(setup().shunts[m_move->shunt].name));
  if (m_move->target) title += tr(" to ") + pointText(setup().bridge, *m_move->target);
  const QColor refused = m_move->target ? m_colours.fail : m_colours.quiet;
  showTexts(title, m_move->outcome, m_move->legal ? colourOf(m_colours, m_move->polarity) : refused);
}

void BridgeView::showTexts(const QString& title, const QString& outcome, const QColor& colour) {
  const QString oneLine = title.simplified();
  m_title->setText(m_title->fontMetrics().elidedText(oneLine, Qt::ElideRight, width() - 2 * margin));
  m_title->setAccessibleName(oneLine);
  m_leaks->setText(m_picture ? leakTexts(setup()).join(QStringLiteral(" · ")) : QString());
  m_leaks->setVisible(!m_leaks->text().isEmpty());
  m_notice->setText(noticeNow());
  m_notice->setVisible(!m_notice->text().isEmpty());
  m_outcome->setText(outcome);
  QPalette text = m_outcome->palette();
  text.setColor(QPalette::WindowText, colour);
  m_outcome->setPalette(text);
  QString told = description();
  if (m_move) told = oneLine + ". " + outcome + ' ' + told;
  if (!m_move && m_focus && m_picture) told = tr("At ") + textOf(*m_picture, *m_focus) + ". " + told;
  setAccessibleDescription(told);
  emit stateShown();
}

// ---- where things are ------------------------------------------------------------------------

QRectF BridgeView::canvas() const {
  return QRectF(rect()).adjusted(margin, margin, -margin, -(height() - m_title->y()) - margin);
}

QTransform BridgeView::transform() const {
  if (!m_picture) return {};
  const QRectF room = canvas(), scene = m_picture->lanes.scene;
  const double scale =
      std::max(0.05, std::min(room.width() / scene.width(), room.height() / scene.height())) * m_zoom;
  const QPointF centre = room.center() + m_pan;
  return QTransform::fromTranslate(centre.x(), centre.y())
      .scale(scale, scale)
      .translate(-scene.center().x(), -scene.center().y());
}

void BridgeView::zoomAt(QPointF anchor, double factor) {
  const double zoom = std::clamp(m_zoom * factor, 1.0, mostZoom);
  // The point under the anchor stays there.
  const QPointF offset = anchor - canvas().center();
  m_pan = offset - (offset - m_pan) * (zoom / m_zoom);
  m_zoom = zoom;
  if (m_zoom == 1) m_pan = {};
  update();
}

void BridgeView::fit() { zoomAt(canvas().center(), 0); }
void BridgeView::zoomIn() { zoomAt(canvas().center(), zoomStep); }
void BridgeView::zoomOut() { zoomAt(canvas().center(), 1 / zoomStep); }

// ---- painting --------------------------------------------------------------------------------

void BridgeView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), m_colours.background);
  if (!m_picture) return paintEmpty(painter);
  painter.setClipRect(canvas().adjusted(-margin, -margin, margin, margin));
  painter.setTransform(transform());
  // Under the bridge, so that it covers no text.
  if (m_focus && hasFocus())
    paintRing(painter, ringOf(*m_picture, *m_focus), palette().color(QPalette::Highlight));
  paintBridge(painter, *m_picture, m_colours);
  if (m_move)
    paintMove(painter, *m_picture, *m_move, m_byMouse ? std::optional(m_pointer) : std::nullopt, m_colours);
}

void BridgeView::paintEmpty(QPainter& painter) const {
  painter.setPen(m_colours.quiet);
  painter.drawText(canvas(), Qt::AlignCenter | Qt::TextWordWrap,
                   tr("No channel yet.\nAdd a channel, and its bridge, leads and shunts are drawn here."));
}

void BridgeView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    m_colours = coloursFor(palette());
    showTexts();
    update();
  }
  QWidget::changeEvent(event);
}

void BridgeView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  showTexts();
}

}  // namespace ui
