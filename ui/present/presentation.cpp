// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/present/presentation.h"

#include <QAccessible>
#include <QAction>
#include <QGraphicsOpacityEffect>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPropertyAnimation>
#include <QScreen>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/bridge/bridge_canvas.h"
#include "ui/bridge/output_bar.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome_view.h"
#include "ui/parts.h"
#include "ui/polarity/polarity_panel.h"
#include "ui/preferences/preferences.h"
#include "ui/present/sequence_board.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int keysFor_ms = 6000, fade_ms = 800;
constexpr double letterStep = 1.12, fewestLetters = 0.6, mostLetters = 2.2;  ///< of the usual size
constexpr int headGap = 24;
constexpr double drawingShare = 0.73;  ///< of the screen's height, for the drawing of the bridge
constexpr const char* plainSize = "presentationPlainSize";

/// The usual size grows with the screen: 1.6 times at 1280 x 800, more in a larger hall.
double usualLetters(QSize screen) {
  return std::clamp(std::min(screen.width() / 780.0, screen.height() / 480.0), 1.2, 4.0);
}

/// Nothing in a view takes the keyboard or acts on it: it is there to be looked at.
void makeQuiet(QWidget* view) {
  view->setFocusPolicy(Qt::NoFocus);
  for (QWidget* widget : view->findChildren<QWidget*>()) widget->setFocusPolicy(Qt::NoFocus);
  for (QShortcut* shortcut : view->findChildren<QShortcut*>()) shortcut->setEnabled(false);
  for (QAction* action : view->findChildren<QAction*>()) action->setShortcuts({});
}

/// Takes the room from what only hands would use. Hidden, the view would show it again.
void hideTools(QWidget* view, std::initializer_list<const char*> names) {
  for (const char* name : names)
    for (QWidget* tool : view->findChildren<QWidget*>(name)) tool->setFixedSize(0, 0);
}

/// The whole screen has the colour of paper. Not by another background role: labels would then take
/// their letters' colour from another role too.
QPalette onPaper(QPalette palette) {
  palette.setColor(QPalette::Window, palette.color(QPalette::Base));
  return palette;
}

/// Sets widgets of a size of their own `times` larger than they were made; those without follow their parent.
/// `before` is what the last call made of it: widgets that are new since then were made at that size.
void scaleOwnSizes(QWidget* view, double times, double before) {
  for (QWidget* widget : view->findChildren<QWidget*>()) {
    const bool own =
        widget->testAttribute(Qt::WA_SetFont) && (widget->font().resolveMask() & QFont::SizeResolved) != 0;
    if (!own || widget->font().pointSizeF() <= 0) continue;
    if (!widget->property(plainSize).isValid())
      widget->setProperty(plainSize, widget->font().pointSizeF() / before);
    QFont font = widget->font();
    font.setPointSizeF(widget->property(plainSize).toDouble() * times);
    widget->setFont(font);
  }
}

}  // namespace

Presentation::Presentation(Session& session, View view, QWidget* parent)
    : QWidget(parent, Qt::Window), m_session(session), m_view(view) {
  setObjectName("presentation");
  setWindowTitle(tr("Presentation"));
  setAccessibleName(tr("Presentation"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAutoFillBackground(true);
  setPalette(onPaper(parent ? parent->palette() : palette()));
  if (parent) {
    setScreen(parent->window()->screen());
    setGeometry(screen()->geometry());
  }
  buildFrame();
  connect(&session, &Session::changed, this, &Presentation::refresh);
  showView(view);
  showKeys();
}

void Presentation::buildFrame() {
  m_step = embolden(plainLabel("presentationStep"));
  m_title = plainLabel("presentationTitle");
  m_channel = plainLabel("presentationChannel");
  m_sentence = plainLabel("presentationSentence");
  m_keys = plainLabel("presentationKeys");
  for (QLabel* label : {m_step, m_title, m_channel, m_sentence, m_keys})
    label->setTextInteractionFlags(Qt::NoTextInteraction);
  m_step->setWordWrap(false);
  m_channel->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  m_keys->setAlignment(Qt::AlignCenter);
  m_keys->setText(
      tr("→ ← step · Home End · 1 bridge  2 polarity  3 sequence  4 outcome · + − letters · D dark, light · "
         "C currents · Esc ends"));
  m_stack = new QStackedWidget;
  auto* head = new QHBoxLayout;
  head->setSpacing(headGap);
  head->addWidget(m_step);
  head->addWidget(m_title, 3);
  head->addWidget(m_channel, 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(20, 10, 20, 6);
  column->setSpacing(6);
  column->addLayout(head);
  column->setSizeConstraint(QLayout::SetNoConstraint);  // as large as the screen, never larger
  column->addWidget(m_stack, 1);
  column->addWidget(m_sentence);
  column->addWidget(m_keys);
  // A click anywhere goes on, and nothing under it is edited.
  for (QWidget* part :
       std::initializer_list<QWidget*>{m_step, m_title, m_channel, m_stack, m_sentence, m_keys})
    part->setAttribute(Qt::WA_TransparentForMouseEvents);
  m_keysOpacity = new QGraphicsOpacityEffect(m_keys);
  m_keys->setGraphicsEffect(m_keysOpacity);
  m_keysFade = new QPropertyAnimation(m_keysOpacity, "opacity", this);
  m_keysFade->setDuration(fade_ms);
  m_keysFade->setEndValue(0.0);
  m_keysTime.setSingleShot(true);
  m_keysTime.setInterval(keysFor_ms);
  connect(&m_keysTime, &QTimer::timeout, m_keysFade, [this] {
    m_keysFade->setDuration(preferences().lessMotion ? 0 : fade_ms);
    m_keysFade->start();
  });
}

QWidget* Presentation::makeBridge() {
  auto* page = new QWidget;
  m_canvas = new BridgeCanvas;
  m_canvas->setObjectName("presentationBridge");
  m_canvas->setFlowStyle(FlowStyle::Width);
  m_bar = new OutputBar;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(m_canvas, 1);
  column->addWidget(m_bar);
  return page;
}

QWidget* Presentation::makePage(View view) {
  if (view == View::Bridge) return makeBridge();
  if (view == View::Polarity) {
    auto* polarity = new PolarityPanel(m_session);
    polarity->setOnlyShown();
    return polarity;
  }
  if (view == View::Sequence) return new SequenceBoard(m_session);
  auto* outcome = new OutcomeView(m_session);
  outcome->keepFiguresBelow();
  hideTools(outcome, {"outcomePages", "outcomeBarKind", "outcomeBarUnit", "outcomeShow", "outcomeShare"});
  return outcome;
}

QWidget* Presentation::pageOf(View view) {
  QWidget*& page = m_pages[static_cast<std::size_t>(view)];
  if (!page) {
    page = makePage(view);
    makeQuiet(page);
    scaleOwnSizes(page, m_letters, 1);
    m_stack->addWidget(page);
  }
  return page;
}

void Presentation::showView(View view) {
  m_view = view;
  m_stack->setCurrentWidget(pageOf(view));
  refresh();
  scaleLetters();
}

std::size_t Presentation::steps() const {
  return m_session.channel() ? m_session.channel()->setup.sequence.size() : 0;
}

void Presentation::goTo(std::size_t step) {
  if (step >= steps() || m_session.selection().step == step) return;
  m_session.selectStep(step);
  announce();
}

void Presentation::walk(int by) {
  const auto step = m_session.selection().step;
  if (!step) return goTo(by > 0 ? 0 : steps() - 1);
  if (by > 0) return goTo(*step + 1);
  if (*step > 0) goTo(*step - 1);
}

void Presentation::refresh() {
  const core::Channel* channel = m_session.channel();
  m_channel->setText(channel ? toQString(channel->name) : QString());
  if (!channel) {
    m_step->setText(tr("There is no channel."));
    for (QLabel* label : {m_title, m_sentence}) label->clear();
    if (m_canvas) m_canvas->showNothing();
    return;
  }
  const auto step = m_session.selection().step;
  const BridgeState state = stateAt(*channel, m_session.evaluation()->prediction, step);
  m_step->setText(step ? tr("Step %1 of %2").arg(*step + 1).arg(steps()) : tr("No step"));
  QString title = tr("all shunts open");
  if (step) {
    const core::Step& chosen = channel->setup.sequence[*step];
    const QString closed = closedShuntsText(channel->setup, chosen), label = toQString(chosen.label);
    if (!chosen.closed.empty()) title = tr("%1 closed").arg(closed);
    if (!label.isEmpty() && label != closed) title = label + " · " + title;
  }
  m_title->setText(title);
  m_sentence->setText(withWholeUnits(state.sentence.isEmpty() ? state.outcome : state.sentence));
  setTextColour(m_step, colourOf(coloursFor(palette()), state.polarity));
  if (m_view == View::Bridge) refreshBridge();
  if (m_view == View::Bridge && isVisible()) scaleLetters();
  makeQuiet(pageOf(m_view));  // views make parts of themselves anew
}

void Presentation::refreshBridge() {
  const core::SetupPrediction& prediction = m_session.evaluation()->prediction;
  const auto step = m_session.selection().step;
  m_canvas->showSetup(m_session.channel()->setup, step);
  const BridgeState& state = m_canvas->picture()->state;
  m_bar->show(state.output, state.polarity, largestOutput(prediction));
}

void Presentation::announce() {
  setAccessibleDescription(m_step->text() + ". " + m_title->text() + ". " + m_sentence->text());
  QAccessibleEvent alert(m_sentence, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void Presentation::fitLetters() {
  m_letters = usualLetters(size()) * m_chosen;
  scaleLetters();
}

void Presentation::scaleLetters() {
  const double plain = font().pointSizeF() / m_pagesAt;
  for (QWidget* page : m_pages)
    if (page) scaleOwnSizes(page, m_letters, m_pagesAt);
  QFont letters = font();
  letters.setPointSizeF(plain * m_letters);
  m_pagesAt = m_letters;
  setFont(letters);
  const auto size = [&](QLabel* label, double times) {
    QFont font = letters;
    font.setPointSizeF(letters.pointSizeF() * times);
    font.setBold(label == m_step);
    label->setFont(font);
  };
  size(m_step, 1.35);
  size(m_title, 1.2);
  size(m_channel, 0.85);
  size(m_sentence, 1.0);
  size(m_keys, 0.6);
  if (m_bar) m_bar->setFont(letters);
  keepDrawing();
  setTextColour(m_channel, coloursFor(palette()).quiet);
  setTextColour(m_keys, coloursFor(palette()).quiet);
}

/// The drawing keeps its share of the screen, whatever the size of the letters around it: they grow as far as
/// their own share takes them. Smaller letters leave the drawing more.
void Presentation::keepDrawing() {
  if (!m_canvas) return;
  const int drawing = static_cast<int>(drawingShare * height());
  m_canvas->setMinimumHeight(drawing);
  m_canvas->setMaximumHeight(m_chosen < 1 ? QWIDGETSIZE_MAX : drawing);
  if (m_view != View::Bridge) return;
  const auto shrink = [](QWidget* label) {
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * 0.96);
    label->setFont(font);
  };
  const QMargins around = layout()->contentsMargins();
  const int width = this->width() - around.left() - around.right();
  const auto needed = [&] {
    const int title = (width - m_step->sizeHint().width()) * 3 / 4 - 2 * headGap;
    const int head = std::max(m_step->sizeHint().height(), m_title->heightForWidth(title));
    const int sentence = m_sentence->heightForWidth(width), keys = m_keys->heightForWidth(width);
    const int gaps = 4 * layout()->spacing() + around.top() + around.bottom();
    return head + sentence + keys + m_bar->sizeHint().height() + gaps;
  };
  constexpr int mostTimes = 40;
  for (int times = 0; times < mostTimes && needed() > height() - drawing; ++times)
    for (QWidget* part : std::initializer_list<QWidget*>{m_step, m_title, m_sentence, m_keys, m_bar})
      shrink(part);
}

void Presentation::turnColours() { setPalette(onPaper(isDark(palette()) ? lightPalette() : darkPalette())); }

void Presentation::showKeys() {
  m_keysFade->stop();
  m_keysOpacity->setOpacity(1);
  m_keysTime.start();
}

bool Presentation::walkKey(int key) {
  switch (key) {
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
    case Qt::Key_PageDown:
      walk(1);
      return true;
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_PageUp:
      walk(-1);
      return true;
    case Qt::Key_Home:
      goTo(0);
      return true;
    case Qt::Key_End:
      goTo(steps() - 1);
      return true;
    default:
      return false;
  }
}

void Presentation::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Escape || key == Qt::Key_F5) {
    close();
    return;
  }
  if (walkKey(key)) return;
  if (key >= Qt::Key_1 && key <= Qt::Key_4) return showView(static_cast<View>(key - Qt::Key_1));
  if (key == Qt::Key_Plus || key == Qt::Key_Equal || key == Qt::Key_Minus || key == Qt::Key_0) {
    const double factor = key == Qt::Key_Minus ? 1 / letterStep : letterStep;
    m_chosen = key == Qt::Key_0 ? 1 : std::clamp(m_chosen * factor, fewestLetters, mostLetters);
    return fitLetters();
  }
  if (key == Qt::Key_D) return turnColours();
  if (key == Qt::Key_C && m_canvas)
    return m_canvas->setFlowStyle(static_cast<FlowStyle>((static_cast<int>(m_canvas->flowStyle()) + 1) % 3));
  showKeys();
}

void Presentation::mouseMoveEvent(QMouseEvent*) { showKeys(); }

void Presentation::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) walk(1);
}

void Presentation::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitLetters();
}

void Presentation::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange || !m_keys) return;
  setTextColour(m_channel, coloursFor(palette()).quiet);
  setTextColour(m_keys, coloursFor(palette()).quiet);
  refresh();
}

}  // namespace ui
