// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QPrintDialog>
#include <QPrinter>
#include <QTimer>
#include <atomic>
#include <cstdio>
#include <ctime>
#include <functional>
#include <string>
#include <vector>

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "tests/reliability/monkey_hands.h"
#include "tests/reliability/monkey_views.h"
#include "ui/main_window.h"

namespace reliability {

/// What a run has shown.
struct MonkeyTally {
  int events = 0;                   ///< done
  int inView = 0;                   ///< of them, aimed at the view or dialog that the run is about
  int checks = 0;                   ///< how often document, undo and redo were looked at
  int dialogs = 0;                  ///< how often another dialog or menu came
  double slowest_ms = 0;            ///< time of the window's thread, so that a busy computer plays no part
  std::string slowest;              ///< the event after which the window was busy for longest
  std::vector<std::string> faults;  ///< promises broken, each in a sentence
};

/// Does one event after the other, at random, at a window: mostly in one view, and goes back there when it
/// has left. Each event posts the next before it acts, so that dialogs that stop the window get theirs.
class Monkey {
 public:
  static constexpr int checkEvery = 50;
  static constexpr int patience = 40;  ///< events in a dialog that came by the way, until it is left

  Monkey(ui::Session& session, ui::MainWindow& window, const MonkeyView& view, QSize size, Dice& dice,
         const QString& folder, MonkeyTally& tally, std::FILE* log)
      : m_session(session),
        m_window(window),
        m_view(view),
        m_size(size),
        m_dice(dice),
        m_hands(dice, folder),
        m_folder(folder),
        m_tally(tally),
        m_log(log) {}

  /// Until `events` are done or the window is closed; false when it was closed.
  bool run(int events) {
    m_until = events;
    QTimer::singleShot(0, &m_context, [this] { step(); });
    return QApplication::exec() == 0;
  }

  /// Events so far, for whoever watches whether it goes on.
  static std::atomic<int>& pulse() {
    static std::atomic<int> beats = 0;
    return beats;
  }

 private:
  void step() {
    if (m_began_ms > 0) noteTime();
    const bool outermost = m_depth == 0;
    if (outermost && isAtRest()) {
      if (!m_window.isVisible()) return QApplication::exit(1);
      if (m_tally.events >= m_until) return QApplication::exit(0);
      if (m_tally.events >= m_nextCheck) check();
    }
    // A worker that was told to stop may need a while.
    const bool isDone = m_tally.events >= m_until;
    QTimer::singleShot(isDone ? 10 : 0, &m_context, [this] { step(); });
    ++pulse();
    ++m_depth;
    m_began_ms = threadTime_ms();
    isDone ? comeToRest() : act();
    --m_depth;
  }

  /// No menu is open and nothing stops the window.
  static bool isAtRest() { return !QApplication::activePopupWidget() && !QApplication::activeModalWidget(); }

  static double threadTime_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e6;
  }
  void noteTime() {
    const double took = threadTime_ms() - m_began_ms;
    if (took <= m_tally.slowest_ms) return;
    m_tally.slowest_ms = took;
    m_tally.slowest = m_did.toStdString();
  }

  void did(const char* what, const QWidget* where) {
    ++m_tally.events;
    m_did = QString("%1 %2 at %3")
                .arg(m_tally.events)
                .arg(what, where ? test::nameForPeople(where) : QString("nothing"));
    if (m_log) std::fprintf(m_log, "%s\n", qPrintable(m_did)), std::fflush(m_log);
  }

  // What is before the user.

  QWidget* top() {
    if (QWidget* popup = QApplication::activePopupWidget()) return popup;
    if (QWidget* modal = QApplication::activeModalWidget()) return modal;
    const QString name = m_view.part;
    for (QWidget* one : QApplication::topLevelWidgets())
      if (one->isVisible() && one->objectName() == name) return one;
    QWidget* active = QApplication::activeWindow();
    return active && active->isVisible() && m_dice.oneIn(3) ? active : &m_window;
  }
  QWidget* viewIn(QWidget& top) const {
    if (top.objectName() == m_view.part) return &top;
    for (auto* part : top.findChildren<QWidget*>(m_view.part))
      if (part->isVisible() && !qobject_cast<QAbstractButton*>(part)) return part;
    return nullptr;
  }

  void act() {
    QWidget* at = top();
    if (auto* files = qobject_cast<QFileDialog*>(at->window())) return chooseFile(*files);
    if (auto* printing = qobject_cast<QPrintDialog*>(at->window())) return print(*printing);
    QWidget* view = viewIn(*at);
    const bool isMenu = QApplication::activePopupWidget() != nullptr;
    const bool isOther = !view && at != &m_window;
    if (isOther && at != m_other) ++m_tally.dialogs, m_other = at, m_inOther = 0;
    if (isOther && (++m_inOther > patience || (isMenu && m_inOther > 15) || m_depth > 12)) return leave(*at);
    if (!isOther && !view && (m_dice.oneIn(4) || m_view.isDialog)) return openView();
    if (view) ++m_tally.inView, m_vain = 0;
    if (at == &m_window && m_dice.oneIn(150)) return disturb();
    QWidget* place = view && !m_dice.oneIn(8) ? view : at;
    m_dice.oneIn(3) ? useKeyboard(*at, *place) : useMouse(*at, *place);
  }

  void openView() {
    auto* action = m_window.findChild<QAction*>(m_view.command);
    if (!action || !action->isEnabled()) return loadDocument();
    // A closed check may refuse it.
    if (++m_vain % 4 == 0) return did("choose", &m_window), chooseOtherwise();
    did("open the view", &m_window);
    action->trigger();
  }

  /// A window without channels gives little to do.
  void loadDocument() {
    did("open a document", &m_window);
    m_session.history().setClean();
    m_window.openFile(m_folder + "/demo.bridgecal");
  }

  // Ways out.

  void comeToRest() {
    constexpr int most = 6000;  // a minute
    if (isAtRest()) return;
    if (++m_rests > most) {
      std::fprintf(stderr, "stuck in %s\n", qPrintable(m_did));
      std::abort();
    }
    leave(*top());
  }

  void leave(QWidget& from) {
    did("leave", &from);
    if (from.windowHandle() && m_ways++ % 4 != 3)
      return m_hands.press(*from.windowHandle(), Qt::Key_Escape, Qt::NoModifier);
    const auto buttons = from.findChildren<QAbstractButton*>();
    if (auto* dialog = qobject_cast<QDialog*>(&from); dialog && m_ways % 8 != 7)
      dialog->reject();
    else if (!buttons.isEmpty() && !qobject_cast<QMenu*>(&from))
      m_dice.of(buttons)->click();
    else
      from.close();
  }

  /// Qt's own dialog could reach everywhere: only files of the folder are chosen.
  void chooseFile(QFileDialog& dialog) {
    did("choose a file", &dialog);
    if (m_dice.oneIn(3)) return dialog.reject();
    if (dialog.fileMode() == QFileDialog::Directory)
      dialog.setDirectory(m_folder);
    else if (dialog.acceptMode() == QFileDialog::AcceptSave && m_dice.oneIn(2))
      dialog.selectFile(m_folder + QString("/written%1").arg(m_dice.below(5)));
    else
      dialog.selectFile(m_hands.someFile());
    const QPointer<QFileDialog> still(&dialog);
    QMetaObject::invokeMethod(&dialog, "accept");
    if (still && m_dice.oneIn(2)) still->reject();
  }

  void print(QPrintDialog& dialog) {
    did("print", &dialog);
    dialog.printer()->setOutputFileName(m_folder + "/printed.pdf");
    m_dice.oneIn(2) ? dialog.accept() : dialog.reject();
  }

  // What is done.

  QPoint placeIn(QWidget& top, QWidget& place) {
    const auto parts = test::interactiveIn(place);
    QWidget* part = parts.empty() || m_dice.oneIn(3) ? &place : m_dice.of(parts);
    const QRect seen = part->visibleRegion().boundingRect();
    const QRect room = seen.isEmpty() ? part->rect() : seen;
    const QPoint within = room.topLeft() + QPoint(m_dice.below(room.width()), m_dice.below(room.height()));
    m_aim = part;
    return part->mapTo(&top, within);
  }

  void useMouse(QWidget& top, QWidget& place) {
    QWindow* window = top.window()->windowHandle();
    if (!window) return did("nothing", &top);
    const QPoint at = top.mapTo(top.window(), placeIn(top, place));
    if (m_hands.isHolding()) {
      if (m_dice.oneIn(3)) return did("release", m_aim), m_hands.releaseAll(*window, at);
      return did("drag", m_aim), m_hands.move(*window, at);
    }
    const int kind = m_dice.below(20);
    if (kind < 3) return did("move", m_aim), m_hands.move(*window, at);
    if (kind < 5) return did("wheel", m_aim), m_hands.wheel(*window, at);
    if (kind < 6) return did("drop", m_aim), m_hands.drop(*window, at);
    if (kind < 8) return did("press", m_aim), m_hands.press(*window, at, Qt::LeftButton);
    const Qt::MouseButton button = kind < 10    ? Qt::RightButton
                                   : kind == 10 ? Qt::MiddleButton
                                                : Qt::LeftButton;
    did(button == Qt::RightButton ? "right click" : "click", m_aim);
    const QPointer<QWindow> still(window);
    m_hands.press(*window, at, button);
    if (still && m_hands.isHolding()) m_hands.releaseAll(*still, at);
    if (still && button == Qt::LeftButton && m_dice.oneIn(5)) {
      m_hands.press(*still, at, button);
      if (still) m_hands.releaseAll(*still, at);
    }
  }

  void useKeyboard(QWidget& top, QWidget& place) {
    QWindow* window = top.window()->windowHandle();
    if (!window) return did("nothing", &top);
    const QWidget* focus = QApplication::focusWidget();
    switch (m_dice.below(10)) {
      case 0:
      case 1:
      case 2:
        return did("type", focus), m_hands.type(*window, oddText(m_dice));
      case 3:
        return did("compose", focus), m_hands.compose(oddText(m_dice));
      case 4:
        return did("shortcut", focus), m_hands.shortcut(*window, m_window);
      case 5:
        did("paste", focus);
        m_hands.fillClipboard();
        return m_hands.press(*window, Qt::Key_V, Qt::ControlModifier);
      case 6: {
        const auto parts = test::interactiveIn(place);
        QWidget* part = parts.empty() ? &place : m_dice.of(parts);
        return did("focus", part),
               part->setFocus(m_dice.oneIn(2) ? Qt::TabFocusReason : Qt::MouseFocusReason);
      }
      default:
        return did("key", focus), m_hands.key(*window);
    }
  }

  /// What comes from beyond the view: sizes, other commands, another choice in another view, another
  /// document.
  void disturb() {
    switch (m_dice.below(8)) {
      case 0:
        return did("resize", &m_window), m_window.resize(400 + m_dice.below(1600), 300 + m_dice.below(900));
      case 1:
        return did("resize back", &m_window), m_window.resize(m_size);
      case 2:
        return did("undo", &m_window), m_session.history().undo();
      case 3:
        return did("choose", &m_window), chooseOtherwise();
      case 4:
        return loadDocument();
      case 5:
        did("deactivate", &m_window);
        QApplication::setActiveWindow(nullptr);
        return QApplication::setActiveWindow(&m_window);
      default:
        return command();
    }
  }
  void chooseOtherwise() {
    const auto channels = static_cast<int>(m_session.document().channels.size());
    if (channels == 0) return;
    m_session.selectChannel(static_cast<std::size_t>(m_dice.below(channels)));
    const auto checks = static_cast<int>(m_session.channel()->checks.size());
    const int check = m_dice.below(checks + 1);  // the last is none: the plan alone
    m_session.selectCheck(check < checks ? std::optional(std::size_t(check)) : std::nullopt);
    m_session.selectStep(static_cast<std::size_t>(m_dice.below(12)));
  }
  void command() {
    std::vector<QAction*> all;
    test::collectActions(m_window.menuBar()->actions(), all);
    QAction* action = m_dice.of(all);
    did(qPrintable("command " + action->objectName()), &m_window);
    action->trigger();
  }

  // What must hold at any time.

  void check() {
    m_nextCheck = m_tally.events + checkEvery;
    ++m_tally.checks;
    const auto fault = [&](const char* what) {
      m_tally.faults.push_back("after " + m_did.toStdString() + ": " + what);
    };
    const auto text = core::writeDocument(m_session.document());
    if (!text) return fault(("cannot be written: " + text.error().what).c_str());
    const auto read = core::readDocument(*text);
    if (!read) return fault(("cannot be read back: " + read.error().what).c_str());
    if (const auto again = core::writeDocument(*read); !again || *again != *text)
      fault("reads back otherwise");
    QUndoStack& history = m_session.history();
    if (!history.canUndo()) return;
    const bool atClean = history.isClean();
    history.undo();
    history.redo();
    if (const auto redone = core::writeDocument(m_session.document()); !redone || *redone != *text)
      fault("undo and redo do not lead back");
    if (history.isClean() != atClean) fault("undo and redo lose whether it is saved");
  }

  ui::Session& m_session;
  ui::MainWindow& m_window;
  const MonkeyView& m_view;
  QSize m_size;
  Dice& m_dice;
  MonkeyHands m_hands;
  QString m_folder;
  MonkeyTally& m_tally;
  std::FILE* m_log;
  QObject m_context;
  double m_began_ms = 0;
  QString m_did = "start";
  QPointer<QWidget> m_other, m_aim;
  int m_inOther = 0, m_ways = 0, m_rests = 0, m_depth = 0, m_until = 0, m_nextCheck = checkEvery;
  int m_vain = 0;  ///< openings of the view after which it was not there
};

}  // namespace reliability
