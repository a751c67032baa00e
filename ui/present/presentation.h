// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>
#include <array>

#include "ui/session.h"

class QGraphicsOpacityEffect;
class QLabel;
class QPropertyAnimation;
class QStackedWidget;

namespace ui {

class BridgeCanvas;
class OutputBar;

/// One view over the whole screen in large letters, for a room of people. It is bound to the session: the
/// chosen step moves with it, and stays when it ends. Nothing can be edited here.
///
/// Keys: Right, Down, Space, Page Down and a click go to the next step, Left, Up, Page Up back, Home and End
/// to the first and last; 1 to 4 choose the view, + and - the size of the letters, 0 the usual size, D dark
/// or light colours, C how currents are shown; any other key shows the keys again; Escape and F5 end it.
class Presentation : public QWidget {
  Q_OBJECT

 public:
  enum class View { Bridge, Polarity, Sequence, Outcome };

  /// Shown on the screen that the window of `parent` is on.
  Presentation(Session& session, View view, QWidget* parent = nullptr);

  View view() const { return m_view; }
  void showView(View view);
  /// How much larger than in the window the letters are.
  double letters() const { return m_letters; }

 protected:
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool focusNextPrevChild(bool) override { return false; }

 private:
  QWidget* pageOf(View view);
  QWidget* makeBridge();
  QWidget* makePage(View view);
  void buildFrame();
  std::size_t steps() const;
  void goTo(std::size_t step);
  void walk(int by);
  bool walkKey(int key);
  void refresh();
  void refreshBridge();
  void announce();
  void fitLetters();
  void scaleLetters();
  void keepDrawing();
  void turnColours();
  void showKeys();

  Session& m_session;
  View m_view;
  double m_letters = 1;               ///< as shown
  double m_chosen = 1;                ///< times the usual size for this screen
  double m_pagesAt = 1;               ///< what the letters of the pages are scaled by now
  std::array<QWidget*, 4> m_pages{};  ///< made when first shown
  QStackedWidget* m_stack = nullptr;
  QLabel *m_step = nullptr, *m_title = nullptr, *m_channel = nullptr, *m_sentence = nullptr,
         *m_keys = nullptr;
  BridgeCanvas* m_canvas = nullptr;
  OutputBar* m_bar = nullptr;
  QTimer m_keysTime;
  QGraphicsOpacityEffect* m_keysOpacity = nullptr;
  QPropertyAnimation* m_keysFade = nullptr;
};

}  // namespace ui
