// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown; pointer, keyboard, edits and menus have files of their own.
#include "ui/bridge_view.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QRegularExpression>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/plan/overdue.h"
#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/part_editor.h"
#include "ui/preferences/preferences.h"
#include "ui/shown_channel.h"

namespace ui {
namespace {

constexpr int narrow_px = 640;  ///< below that a sentence takes a line more
constexpr int low_px = 420;     ///< below that the output is told by the bar below the drawing alone

/// A number and its unit stay on one line.
QString unbroken(QString text) {
  static const QRegularExpression unit(QStringLiteral("(\\d) ([µmkMGn]?[VAΩm](?:/(?:V|m))?)(?!\\w)"));
  text.replace(unit, QStringLiteral("\\1\u00a0\\2"));
  for (const char* slashed : {"mV/V", "µm/m"}) {
    const QString whole = QString::fromUtf8(slashed);
    text.replace(whole, QString(whole).replace('/', QStringLiteral("\u2060/\u2060")));
  }
  return text;
}

QLabel* line(const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(name);
  label->setTextFormat(Qt::PlainText);
  label->setAttribute(Qt::WA_TransparentForMouseEvents);
  return label;
}

QLabel* paragraph(const char* name, QWidget* parent) {
  QLabel* label = line(name, parent);
  label->setWordWrap(true);
  label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  return label;
}

}  // namespace

BridgeView::BridgeView(Session& session, QWidget* parent) : BridgeCanvas(parent), m_session(session) {
  setObjectName("bridgeView");
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  buildTexts();
  buildActions();
  setLook(rememberedBridgeLook());
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, [this] {
    BridgeLook look = m_look;  // only what is chosen among the preferences
    look.symbols = rememberedBridgeLook().symbols;
    if (look.symbols != m_look.symbols) setLook(look);
  });
  connect(&m_session, &Session::changed, this, &BridgeView::follow);
  follow();
}

void BridgeView::buildTexts() {
  m_title = line("bridgeTitle", this);
  m_title->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  m_more = new QToolButton(this);
  m_more->setObjectName("bridgeMenuButton");
  m_more->setText(tr("Edit, show, export"));
  m_more->setToolTip(tr("What can be done with the drawing (menu key or Shift+F10)"));
  m_more->setPopupMode(QToolButton::InstantPopup);
  m_more->setAutoRaise(true);
  m_more->setFocusPolicy(Qt::NoFocus);  // the menu key does the same
  m_leaks = paragraph("bridgeLeaks", this);
  m_notice = paragraph("bridgeNotice", this);
  m_outcome = paragraph("bridgeOutcome", this);
  m_sentence = paragraph("bridgeSentence", this);
  QFont strong = m_outcome->font();
  strong.setBold(true);
  m_outcome->setFont(strong);
  m_notice->setFont(strong);
  m_leaks->hide();
  m_notice->hide();
  auto* head = new QHBoxLayout;
  head->setContentsMargins(0, 0, 0, 0);
  head->addWidget(m_title, 1);
  head->addWidget(m_more);
  m_words = new QWidget(this);
  m_words->setAttribute(Qt::WA_TransparentForMouseEvents);
  auto* told = new QVBoxLayout(m_words);
  told->setContentsMargins(0, 0, 0, 0);
  told->setSpacing(0);
  told->addWidget(m_outcome);
  told->addWidget(m_sentence);
  told->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(margin, margin, margin, margin);
  column->setSpacing(2);
  column->addStretch(1);
  column->addLayout(head);
  column->addWidget(m_leaks);
  column->addWidget(m_notice);
  column->addWidget(m_words);
}

/// Whether height is better spent on the drawing than on words that stand elsewhere too.
bool BridgeView::isLow() const { return height() < low_px; }

/// Larger in a large view, which is looked at from further off.
void BridgeView::sizeWords() {
  const double factor = std::clamp(std::min(width() / 900.0, height() / 620.0), 1.0, 1.5);
  QFont text = font();
  if (factor > 1) text.setPixelSize(qRound(QFontInfo(text).pixelSize() * factor));
  m_title->setFont(text);
  m_sentence->setFont(text);
  text.setBold(true);
  m_outcome->setFont(text);
}

/// So that the drawing keeps its place while the text changes. Where it is low, only while something moves.
void BridgeView::keepRoomForWords() {
  if (isLow()) return m_words->setMinimumHeight(m_move ? m_words->height() : 0);
  const int sentence = width() < narrow_px ? 3 : 2;
  m_words->setMinimumHeight(QFontMetrics(m_outcome->font()).lineSpacing() +
                            sentence * QFontMetrics(m_sentence->font()).lineSpacing());
}

const BridgeState* BridgeView::stateNow() const {
  if (m_move && m_move->legal) return &m_move->state;
  return picture() ? &picture()->state : nullptr;
}

const BridgePicture& BridgeView::shownPicture() const {
  return m_move && m_movePicture ? *m_movePicture : *picture();
}

/// What is moved has another name where it is drawn now.
BridgeSpot BridgeView::asShown(BridgeSpot spot) const {
  if (m_move && m_movePicture && spot.part == m_move->grip.part) spot.part = partAfter(*m_move);
  return spot;
}

QString BridgeView::description() const {
  if (!picture()) return tr("No channel in this document.");
  const QString notice = noticeNow(), told = describe(*m_channel, picture()->state);
  return notice.isEmpty() ? told : notice + ' ' + told;
}

/// As in the sequence, what fell due after a closed check takes nothing from it.
QString BridgeView::noticeNow() const {
  if (!m_channel) return {};
  const auto day = m_isClosed ? core::dateFromText(m_session.check()->date) : m_session.today();
  const QString overdue = day ? toQString(core::overdueSentence(setup(), *day)) : QString();
  if (setup() == m_session.channel()->setup) return overdue;
  const QString other = tr("Shows the set-up that the closed check was judged by; the plan is another now.");
  return overdue.isEmpty() ? other : other + ' ' + overdue;
}

/// Takes over what the session shows now; draws anew only when that is something else.
void BridgeView::follow() {
  const auto channel = shownChannel(m_session);
  const auto step = channel ? shownStep(m_session) : std::nullopt;
  const bool isClosed = m_session.checkIsClosed();
  const bool isDrawn = (picture() != nullptr) == (channel != nullptr);
  const bool isSame = channel == m_channel || (channel && m_channel && *channel == *m_channel);
  if (isDrawn && isSame && step == m_step && isClosed == m_isClosed) {
    if (m_notice->text() != noticeNow()) showTexts();
    return;
  }
  if (!channel || !m_channel || channel->name != m_channel->name) {
    m_focus.reset();
    m_selected.clear();
  }
  closeEditor();
  m_channel = channel;
  m_step = step;
  m_isClosed = isClosed;
  m_move.reset();
  m_movePicture.reset();
  m_pressed.reset();
  m_pressedAt.reset();
  m_band.reset();
  if (channel)
    showChannel(channel, m_session.shownPrediction(), step);
  else
    showNothing();
  forgetWhatIsGone();
  showTexts();
}

/// Parts that the edit has taken away are neither selected nor under the keyboard any more.
void BridgeView::forgetWhatIsGone() {
  const std::vector<BridgePart> parts = picture() ? partsOf(*picture()) : std::vector<BridgePart>();
  const auto isGone = [&](const BridgePart& part) {
    return std::find(parts.begin(), parts.end(), part) == parts.end();
  };
  std::erase_if(m_selected, isGone);
  if (m_focus && isGone(m_focus->part)) m_focus.reset();
}

std::vector<BridgePart> BridgeView::selected() const {
  if (!m_selected.empty()) return m_selected;
  return m_focus ? std::vector<BridgePart>{m_focus->part} : std::vector<BridgePart>();
}

// ---- words -----------------------------------------------------------------------------------

void BridgeView::showTexts() {
  if (!picture()) return showTexts({}, {}, colours().text);
  if (!m_move) {
    const BridgeState& state = picture()->state;
    const bool signless = state.polarity == core::Polarity::None;
    const QColor plain = state.failed ? colours().fail : colours().text;
    return showTexts(state.title, state.outcome, signless ? plain : colourOf(colours(), state.polarity),
                     state.movement.has_value());
  }
  const QColor refusal = m_move->target ? colours().fail : colours().quiet;
  showTexts(m_move->title, m_move->outcome,
            m_move->legal ? colourOf(colours(), m_move->state.polarity) : refusal,
            m_move->legal && m_move->state.movement);
}

/// `known`: the outcome is an output, which the bar below the drawing shows. Then only what is simulated is
/// told, beside the title, where height is scarce.
void BridgeView::showTexts(const QString& title, const QString& outcome, const QColor& colour, bool known) {
  const bool isShort = known && isLow();
  QString oneLine = title.simplified();
  const qsizetype simulated = outcome.indexOf(QStringLiteral(" · "));
  if (isShort && simulated >= 0) oneLine += outcome.mid(simulated);
  m_outcome->setVisible(!isShort && !outcome.isEmpty());
  keepRoomForWords();
  const int space =
      width() - 2 * margin - m_more->sizeHint().width() - m_title->fontMetrics().averageCharWidth();
  m_title->setText(m_title->fontMetrics().elidedText(oneLine, Qt::ElideRight, space));
  m_title->setAccessibleName(oneLine);
  m_leaks->setText(structureWords());
  m_leaks->setVisible(!m_leaks->text().isEmpty());
  m_notice->setText(noticeNow());
  m_notice->setVisible(!m_notice->text().isEmpty());
  m_outcome->setText(outcome);
  QPalette text = m_outcome->palette();
  text.setColor(QPalette::WindowText, colour);
  m_outcome->setPalette(text);
  showSentence();
  QString told = description();
  if (m_move) told = oneLine + ". " + outcome + ' ' + m_move->state.sentence + ' ' + told;
  if (!m_move && m_focus && picture())
    told = tr("At %1.").arg(textOf(*picture(), *m_focus)) + ' ' + keysText(*m_focus) + ' ' + told;
  setAccessibleDescription(told);
  emit stateShown();
}

/// What the drawing does not show: whether leaks to a structure that is connected to nothing lead anywhere.
QString BridgeView::structureWords() const {
  if (!picture() || setup().instrument.grounding != core::Grounding::Floating) return {};
  core::Setup structureOnly;
  for (const std::size_t arm : {0, 1, 2, 3})
    structureOnly.bridge.leaks[arm].toStructure = setup().bridge.leaks[arm].toStructure;
  return leakTexts(structureOnly).join(QStringLiteral(" · "));
}

void BridgeView::showSentence() {
  const bool refusedMove = m_move && !m_move->legal;
  const BridgeState* state = refusedMove ? nullptr : stateNow();
  m_sentence->setText(state ? unbroken(state->sentence) : QString());
  m_sentence->setVisible(!m_sentence->text().isEmpty());
}

void BridgeView::refuse(const QString& what, const QString& reason) {
  if (picture()) showTexts(what, reason, colours().fail);
  emit refused(reason);
}

// ---- painting --------------------------------------------------------------------------------

QRectF BridgeView::room() const {
  const int textTop = std::min(m_title->y(), m_more->y());
  return QRectF(rect()).adjusted(margin, margin, -margin, -(height() - textTop) - margin);
}

void BridgeView::paintEvent(QPaintEvent* event) {
  BridgeCanvas::paintEvent(event);
  if (picture()) return;
  QPainter painter(this);
  painter.setPen(colours().quiet);
  painter.drawText(room(), Qt::AlignCenter | Qt::TextWordWrap,
                   tr("No channel yet.\nAdd a channel, and its bridge, leads and shunts are drawn here."));
}

/// Rings lie under the bridge, so that they cover no text.
void BridgeView::paintUnder(QPainter& painter) {
  const QColor ring = palette().color(QPalette::Highlight);
  for (const BridgePart& part : m_selected)
    if (!m_focus || m_focus->part != part || !hasFocus())
      paintRing(painter, ringOf(shownPicture(), asShown({part, {}})), ring);
  if (!m_focus || !hasFocus()) return;
  const BridgeSpot focus = asShown(*m_focus);
  paintRing(painter, ringOf(shownPicture(), focus), ring);
  // What has the keyboard and is selected among others shows both.
  const bool among = std::find(m_selected.begin(), m_selected.end(), m_focus->part) != m_selected.end();
  if (among || (m_focus->end && m_selected.empty()))
    paintRing(painter, ringOf(shownPicture(), {focus.part, {}}), ring);
}

void BridgeView::paintOver(QPainter& painter) {
  if (m_move)
    paintMove(painter, shownPicture(), *m_move, m_byMouse ? std::optional(m_pointer) : std::nullopt,
              colours());
  if (!m_band) return;
  QColor inside = palette().color(QPalette::Highlight);
  painter.setPen(QPen(inside, 1.2, Qt::DashLine));
  inside.setAlphaF(0.15F);
  painter.setBrush(inside);
  painter.drawRect(*m_band);
}

void BridgeView::changeEvent(QEvent* event) {
  BridgeCanvas::changeEvent(event);
  if (event->type() == QEvent::FontChange && m_words) sizeWords();
  if (event->type() == QEvent::PaletteChange && m_words) showTexts();
}

void BridgeView::resizeEvent(QResizeEvent* event) {
  BridgeCanvas::resizeEvent(event);
  sizeWords();
  showTexts();
}

}  // namespace ui
