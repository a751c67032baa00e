// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QDropEvent>
#include <QFileInfo>
#include <QInputMethodEvent>
#include <QMimeData>
#include <QPointer>
#include <QTest>
#include <QUrl>
#include <QWheelEvent>
#include <QWindow>
#include <cstdint>
#include <random>

#include "tests/support/window_walk.h"

namespace reliability {

/// The same numbers from the same seed, with every library.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : m_engine(seed) {}
  int below(int bound) {
    return bound > 0 ? static_cast<int>(m_engine() % static_cast<std::uint64_t>(bound)) : 0;
  }
  bool oneIn(int count) { return below(count) == 0; }
  template <class List>
  auto& of(List& list) {
    return list[static_cast<typename List::size_type>(below(static_cast<int>(list.size())))];
  }

 private:
  std::mt19937_64 m_engine;
};

/// What is typed, pasted and dropped: numbers of all kinds, words, and what is meant to hurt.
inline QString oddText(Dice& dice) {
  static const QStringList texts{"350",
                                 "174.65k",
                                 "59k9",
                                 "1,5",
                                 "-1000",
                                 "0",
                                 "±0.1 %",
                                 "2 mV/V",
                                 "1e308",
                                 "1e-320",
                                 "1e999",
                                 "nan",
                                 "-inf",
                                 "350\t1\t2\n351\t3\t4\n",
                                 "1;2;3\n4;5;6\n7;8;9\n",
                                 "\"a\nb\"\tc\n",
                                 "=1+1",
                                 "TP-01",
                                 "<img src=x onerror=y>",
                                 "%1 %2 %n",
                                 "Größe εΩ−µ",
                                 "مرحبا",
                                 "\U0001F41D",
                                 "2026-02-30",
                                 "26.11.2026",
                                 "&&&",
                                 " "};
  if (dice.oneIn(60)) return QString(5000, QChar('9'));
  return dice.of(texts);
}

/// Mouse, keyboard, clipboard and what is dragged in from outside, as the window system hands them over.
class MonkeyHands {
 public:
  explicit MonkeyHands(Dice& dice, QString folder) : m_dice(dice), m_folder(std::move(folder)) {}

  bool isHolding() const { return m_held != Qt::NoButton; }

  void press(QWindow& window, QPoint at, Qt::MouseButton button) {
    m_held |= button;
    mouse(window, at, button, QEvent::MouseButtonPress);
  }
  void release(QWindow& window, QPoint at, Qt::MouseButton button) {
    m_held &= ~Qt::MouseButtons(button);
    mouse(window, at, button, QEvent::MouseButtonRelease);
  }
  void releaseAll(QWindow& window, QPoint at) {
    for (const Qt::MouseButton button : {Qt::LeftButton, Qt::RightButton, Qt::MiddleButton})
      if (m_held & button) release(window, at, button);
  }
  void move(QWindow& window, QPoint at) { mouse(window, at, Qt::NoButton, QEvent::MouseMove); }

  void wheel(QWindow& window, QPoint at) {
    const QPoint turn(m_dice.oneIn(5) ? 120 : 0, m_dice.oneIn(2) ? 120 : -120);
    QWheelEvent event(at, window.mapToGlobal(at), {}, turn, Qt::NoButton, modifiers(4), Qt::NoScrollPhase,
                      false);
    QCoreApplication::sendEvent(&window, &event);
  }

  /// A key that does something by itself.
  void key(QWindow& window) {
    static const QList<int> keys{
        Qt::Key_Up,        Qt::Key_Down,    Qt::Key_Left,   Qt::Key_Right,  Qt::Key_Tab,      Qt::Key_Tab,
        Qt::Key_Tab,       Qt::Key_Backtab, Qt::Key_Return, Qt::Key_Enter,  Qt::Key_Space,    Qt::Key_Delete,
        Qt::Key_Backspace, Qt::Key_Home,    Qt::Key_End,    Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_Escape,
        Qt::Key_F2,        Qt::Key_F4,      Qt::Key_F6,     Qt::Key_F10,    Qt::Key_Menu,     Qt::Key_Insert};
    press(window, m_dice.of(keys), modifiers(3));
  }
  /// One of the combinations that the window knows.
  void shortcut(QWindow& window, const QWidget& of) {
    QList<QKeySequence> known{QKeySequence("Ctrl+A"), QKeySequence("Ctrl+C"), QKeySequence("Ctrl+X"),
                              QKeySequence("Ctrl+V"), QKeySequence("Ctrl+Z"), QKeySequence("Ctrl+Y")};
    for (const QAction* action : of.findChildren<QAction*>()) known << action->shortcuts();
    const QKeySequence chosen = m_dice.of(known);
    if (!chosen.isEmpty()) press(window, chosen[0].key(), chosen[0].keyboardModifiers());
  }
  void press(QWindow& window, int code, Qt::KeyboardModifiers with, const QString& text = {}) {
    const QPointer<QWindow> still(&window);
    qt_handleKeyEvent(&window, QEvent::KeyPress, code, with, text);
    if (still) qt_handleKeyEvent(still, QEvent::KeyRelease, code, with, text);
  }
  void type(QWindow& window, const QString& text) {
    const QPointer<QWindow> still(&window);
    for (const QChar& letter : text.left(40))
      if (still) press(window, letter.isLetterOrNumber() ? 0 : int(letter.unicode()), Qt::NoModifier, letter);
  }
  /// As an input method does for letters that no key has.
  void compose(const QString& text) {
    QWidget* field = QApplication::focusWidget();
    if (!field) return;
    QInputMethodEvent event;
    event.setCommitString(text);
    QCoreApplication::sendEvent(field, &event);
  }

  void fillClipboard() { QApplication::clipboard()->setMimeData(oddData()); }
  /// Something from another program is carried over the window and let go, or carried away again.
  void drop(QWindow& window, QPoint at) {
    const std::unique_ptr<QMimeData> data(oddData());
    const auto actions = Qt::CopyAction | Qt::MoveAction;
    const QPointer<QWindow> still(&window);
    QDragEnterEvent enter(at, actions, data.get(), Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &enter);
    QDragMoveEvent over(at, actions, data.get(), Qt::LeftButton, Qt::NoModifier);
    if (still) QCoreApplication::sendEvent(still, &over);
    if (!still) return;
    if (!over.isAccepted() || m_dice.oneIn(4)) {
      QDragLeaveEvent leave;
      QCoreApplication::sendEvent(still, &leave);
      return;
    }
    QDropEvent drop(at, actions, data.get(), Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(still, &drop);
  }

  /// A file of the folder that is there for this.
  QString someFile() {
    QStringList names = QDir(m_folder).entryList(QDir::Files);
    return names.isEmpty() ? m_folder + "/none" : m_folder + "/" + m_dice.of(names);
  }

 private:
  Qt::KeyboardModifiers modifiers(int seldom) {
    Qt::KeyboardModifiers with;
    if (m_dice.oneIn(seldom)) with |= Qt::ShiftModifier;
    if (m_dice.oneIn(2 * seldom)) with |= Qt::ControlModifier;
    if (m_dice.oneIn(4 * seldom)) with |= Qt::AltModifier;
    return with;
  }
  void mouse(QWindow& window, QPoint at, Qt::MouseButton button, QEvent::Type type) {
    qt_handleMouseEvent(&window, at, window.mapToGlobal(at), m_held, button, type, modifiers(12),
                        m_clock += m_dice.oneIn(2) ? 1 : 700);
  }
  QMimeData* oddData() {
    auto* data = new QMimeData;
    const int kind = m_dice.below(5);
    if (kind <= 1) data->setText(oddText(m_dice));
    if (kind == 2) data->setHtml("<table><tr><td>" + oddText(m_dice) + "</td></tr></table>");
    if (kind >= 3) data->setUrls({QUrl::fromLocalFile(someFile())});
    return data;
  }

  Dice& m_dice;
  QString m_folder;
  Qt::MouseButtons m_held;
  int m_clock = 1000;
};

}  // namespace reliability
