// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QPointer>
#include <vector>

class QLabel;
class QMainWindow;
class QPushButton;

namespace ui {

/// What a step of the tour points at and says.
struct TourStep {
  QPointer<QWidget> part;
  QString title;
  QString text;
  QString command = {};  ///< object name of a command of the window that the step offers; empty: none
};

/// The usual tour of the main window; of parts that are on view when it is started. `withDemo`: the first
/// step offers to open the demo.
std::vector<TourStep> usualTour(QMainWindow& window, bool withDemo);

/// Whether the tour has been started once for this user.
bool tourWasSeen();

/// A callout beside one part of the window after the other, and a frame around the part. The window stays in
/// use meanwhile. Nothing moves by itself. Keys in it: Right and Left, Return, Escape; Escape anywhere in the
/// window that has no other use for it ends the tour too.
class Tour : public QFrame {
  Q_OBJECT

 public:
  /// Ends one that is under way. From now on the tour counts as seen. Deletes itself at its end; null when no
  /// part of `steps` is on view.
  static Tour* start(QMainWindow& window, std::vector<TourStep> steps);

  std::size_t step() const { return m_at; }
  std::size_t count() const { return m_steps.size(); }
  void goTo(std::size_t step);
  void end();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Tour(QMainWindow& window, std::vector<TourStep> steps);
  void build();
  void place();
  void announce();
  void applyColours();

  QMainWindow& m_window;
  std::vector<TourStep> m_steps;
  std::size_t m_at = 0;
  QPointer<QWidget> m_frame;  ///< around the part
  QPointer<QWidget> m_focusBefore;
  QLabel* m_title = nullptr;
  QLabel* m_text = nullptr;
  QLabel* m_count = nullptr;
  QPushButton* m_offer = nullptr;
  QPushButton* m_back = nullptr;
  QPushButton* m_next = nullptr;
};

}  // namespace ui
