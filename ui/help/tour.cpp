// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/tour.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMainWindow>
#include <QMenuBar>
#include <QPainter>
#include <QPushButton>

#include "ui/help/help_places.h"
#include "ui/parts.h"
#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr auto seenKey = "tourSeen";
constexpr int calloutWidth_em = 24;
constexpr int gap_px = 10;

/// Lies over the window around one part; the mouse goes through it.
class TourFrame : public QWidget {
 public:
  explicit TourFrame(QWidget* parent) : QWidget(parent) {
    setObjectName("tourFrame");
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    const Colours colours = coloursFor(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    // The ground around the line keeps it apart from lines of the part.
    painter.setPen(QPen(colours.background, 7));
    painter.drawRect(QRectF(rect()).adjusted(3.5, 3.5, -3.5, -3.5));
    painter.setPen(QPen(colours.selected, 3));
    painter.drawRect(QRectF(rect()).adjusted(3.5, 3.5, -3.5, -3.5));
  }
};

/// The first place of `size` within `room` that leaves `part` free, else its lower right corner.
QRect placeBeside(const QRect& part, const QSize& size, const QRect& room) {
  const int lowest = std::max(room.top(), room.bottom() - size.height());
  const int rightmost = std::max(room.left(), room.right() - size.width());
  const int top = std::clamp(part.center().y() - size.height() / 2, room.top(), lowest);
  const int left = std::clamp(part.center().x() - size.width() / 2, room.left(), rightmost);
  for (const QPoint& corner :
       {QPoint(part.right() + gap_px, top), QPoint(part.left() - gap_px - size.width(), top),
        QPoint(left, part.bottom() + gap_px), QPoint(left, part.top() - gap_px - size.height())})
    if (const QRect place(corner, size); room.contains(place)) return place;
  return {QPoint(std::max(room.left(), part.right() - gap_px - size.width()),
                 std::max(room.top(), part.bottom() - gap_px - size.height())),
          size};
}

}  // namespace

bool tourWasSeen() { return stateFile().value(seenKey, false).toBool(); }

std::vector<TourStep> usualTour(QMainWindow& window, bool withDemo) {
  std::vector<TourStep> steps;
  const auto add = [&](QWidget* part, const QString& title, const QString& text,
                       const QString& command = {}) {
    if (part && part->isVisible()) steps.push_back({part, title, text, command});
  };
  const auto part = [&](const char* name) { return window.findChild<QWidget*>(name); };
  add(part("channelColumn"), Tour::tr("Channels"),
      withDemo
          ? Tour::tr("One channel is one bridge on one amplifier input. The demo has seven invented ones, "
                     "to be tried out without harm; it replaces an empty document.")
          : Tour::tr("One channel is one bridge on one amplifier input. Add makes one."),
      withDemo ? QStringLiteral("openDemo") : QString());
  add(part("setupForm"), Tour::tr("Channel set-up"),
      Tour::tr(
          "Bridge, leads, instrument, limits and decision rule of the chosen channel. Everything is worked "
          "out anew as soon as a field is left. Fields take 174.65k, 59k9 or 1.5 mV/V."));
  add(part("bridgePane"), Tour::tr("Bridge"),
      Tour::tr("The bridge at the chosen step, with voltages and currents. Drag an end of a shunt to another "
               "node and watch the sign of the output. Every edit can be undone."));
  add(part("sequencePane"), Tour::tr("Sequence"),
      Tour::tr("A row for each step: what it closes, what the instrument should show and how sure that is. "
               "Beside it stand the shunts, the uncertainties, the budget and the review of the plan."));
  add(part("checkBox"), Tour::tr("Checks"),
      Tour::tr(
          "Start a check here, type or paste its readings, take them from a recording, or be led through "
          "it by the guided run. A closed check is not changed by later edits."));
  add(part("outcomeView"), Tour::tr("Outcome"),
      Tour::tr(
          "What the check made of the plan: verdict, charts, figures, what may be wrong, and what changed "
          "since the check before."));
  add(window.menuBar(), Tour::tr("Commands and help"),
      Tour::tr(
          "The menus follow the order of the work. F1 opens the manual at the place that has the keyboard, "
          "Ctrl+Shift+K finds any command, and Help, Tour shows this again."));
  return steps;
}

Tour* Tour::start(QMainWindow& window, std::vector<TourStep> steps) {
  stateFile().setValue(seenKey, true);
  for (Tour* running : window.findChildren<Tour*>()) running->end();
  if (steps.empty()) return nullptr;
  return new Tour(window, std::move(steps));
}

Tour::Tour(QMainWindow& window, std::vector<TourStep> steps)
    : QFrame(&window),
      m_window(window),
      m_steps(std::move(steps)),
      m_frame(new TourFrame(&window)),
      m_focusBefore(QApplication::focusWidget()) {
  setObjectName("tour");
  setProperty(helpPageProperty, "start.md#window");
  setFrameShape(QFrame::Box);
  setAutoFillBackground(true);
  build();
  applyColours();
  window.installEventFilter(this);
  for (const TourStep& step : m_steps)  // a part moves with what holds it, and is told nothing then
    for (QWidget* part = step.part; part && part != &window; part = part->parentWidget())
      part->installEventFilter(this);
  show();
  m_frame->show();
  goTo(0);
  m_next->setFocus();
}

void Tour::build() {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(14, 12, 14, 12);
  m_title = embolden(plainLabel("tourTitle"));
  m_text = plainLabel("tourText");
  m_count = plainLabel("tourCount");
  m_offer = new QPushButton;
  m_offer->setObjectName("tourOffer");
  auto* skip = new QPushButton(tr("Sk&ip the tour"));
  skip->setObjectName("tourSkip");
  m_back = new QPushButton(tr("B&ack"));
  m_back->setObjectName("tourBack");
  m_next = new QPushButton;
  m_next->setObjectName("tourNext");
  m_next->setDefault(true);
  grid->addWidget(m_title, 0, 0, 1, 2);
  grid->addWidget(m_count, 0, 2, Qt::AlignRight);
  grid->addWidget(m_text, 1, 0, 1, 3);
  grid->addWidget(m_offer, 2, 0, 1, 3, Qt::AlignLeft);
  grid->addWidget(skip, 3, 0, Qt::AlignLeft);
  grid->addWidget(m_back, 3, 1, Qt::AlignRight);
  grid->addWidget(m_next, 3, 2);
  grid->setColumnStretch(0, 1);
  connect(skip, &QPushButton::clicked, this, &Tour::end);
  connect(m_back, &QPushButton::clicked, this, [this] { goTo(m_at - 1); });
  connect(m_next, &QPushButton::clicked, this,
          [this] { m_at + 1 < m_steps.size() ? goTo(m_at + 1) : end(); });
  connect(m_offer, &QPushButton::clicked, this, [this] {
    if (auto* command = m_window.findChild<QAction*>(m_steps[m_at].command)) command->trigger();
    if (m_at + 1 < m_steps.size()) goTo(m_at + 1);
    m_next->setFocus();
  });
}

void Tour::goTo(std::size_t step) {
  if (step >= m_steps.size()) return;
  m_at = step;
  const TourStep& shown = m_steps[m_at];
  m_title->setText(shown.title);
  m_text->setText(shown.text);
  m_count->setText(tr("%1 of %2").arg(QString::number(m_at + 1), QString::number(m_steps.size())));
  const auto* offered = shown.command.isEmpty() ? nullptr : m_window.findChild<QAction*>(shown.command);
  m_offer->setVisible(offered && offered->isEnabled());
  if (offered) m_offer->setText(offered->text());
  m_back->setEnabled(m_at > 0);
  m_next->setText(m_at + 1 < m_steps.size() ? tr("&Next") : tr("D&one"));
  if (!m_back->isEnabled() && m_back->hasFocus()) m_next->setFocus();
  place();
  announce();
}

void Tour::place() {
  const TourStep& shown = m_steps[m_at];
  const QRect room = m_window.rect().adjusted(gap_px, gap_px, -gap_px, -gap_px);
  QRect part = room;
  const bool there = shown.part && shown.part->isVisible();
  if (there)
    part = QRect(shown.part->mapTo(&m_window, QPoint()), shown.part->size()).intersected(m_window.rect());
  const int wanted =
      std::max(calloutWidth_em * fontMetrics().horizontalAdvance('m'), minimumSizeHint().width());
  const int width = std::min(wanted, room.width());
  const QSize size(width, std::min(room.height(), layout()->totalHeightForWidth(width) > 0
                                                      ? layout()->totalHeightForWidth(width)
                                                      : sizeHint().height()));
  setGeometry(placeBeside(part, size, room));
  m_frame->setVisible(there);
  // Around the part, so that it covers nothing of it.
  m_frame->setGeometry(part.adjusted(-6, -6, 6, 6).intersected(m_window.rect()));
  m_frame->raise();
  raise();
}

/// Screen readers say what a new callout says.
void Tour::announce() {
  setAccessibleName(m_title->text());
  setAccessibleDescription(m_text->text());
  m_next->setAccessibleDescription(m_title->text() + ". " + m_text->text());
  QAccessibleEvent alert(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

/// A style sheet of its own tells the callout that its palette changed.
void Tour::applyColours() {
  const Colours colours = coloursFor(m_window.palette());
  const QString sheet = QString("#tour { border: 2px solid %1; background: %2; }")
                            .arg(colours.selected.name(), colours.background.name());
  if (sheet != styleSheet()) setStyleSheet(sheet);
}

void Tour::end() {
  if (m_frame) m_frame->deleteLater();
  m_window.removeEventFilter(this);
  const bool hadKeyboard = isAncestorOf(QApplication::focusWidget());
  hide();
  if (hadKeyboard)
    (m_focusBefore && m_focusBefore->isVisible() ? m_focusBefore.data() : &m_window)->setFocus();
  deleteLater();
}

bool Tour::eventFilter(QObject* watched, QEvent* event) {
  const auto type = event->type();
  if (type == QEvent::Resize || type == QEvent::Move || type == QEvent::Show || type == QEvent::Hide)
    if (isVisible()) place();
  // What no part of the window had a use for.
  if (watched == &m_window && type == QEvent::KeyPress && isVisible() &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    end();
    return true;
  }
  return QFrame::eventFilter(watched, event);
}

void Tour::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange && m_title) applyColours();
  QFrame::changeEvent(event);
}

void Tour::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Escape:
      return end();
    case Qt::Key_Right:
      return m_next->click();
    case Qt::Key_Left:
      return m_back->click();
    default:
      QFrame::keyPressEvent(event);
  }
}

}  // namespace ui
