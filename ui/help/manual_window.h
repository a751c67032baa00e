// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QListWidget;
class QStackedWidget;
class QToolButton;
class QTreeWidget;

namespace ui {

class ManualBrowser;

/// The manual in a window of its own, beside the program: contents or hits of a search at the left, the page
/// at the right. It keeps nothing between runs of the program.
///
/// Keys: Ctrl+F search, F3 and Shift+F3 from mark to mark, Alt+Left and Alt+Right back and forward, Alt+Home
/// the first page, Ctrl++ Ctrl+- Ctrl+0 size, Ctrl+C copies what is selected or else the page, Ctrl+P prints;
/// F6 goes from contents to page and back; Escape leaves the search, then the window.
class ManualWindow : public QWidget {
  Q_OBJECT

 public:
  /// In the language of the window's words where the manual has it.
  explicit ManualWindow(QWidget* parent = nullptr);

  /// Goes to `address`; what is not in the manual is refused and nothing changes.
  bool open(const QString& address);
  /// Page and anchor on view.
  QString address() const;
  ManualBrowser& page() { return *m_page; }
  void search(const QString& words);

 public slots:
  void back();
  void forward();
  void print();
  void copy();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* buildLeft();
  QWidget* buildTools();
  void fillContents();
  QAction* addKey(const QString& name, const QString& text, const QList<QKeySequence>& keys,
                  const std::function<void()>& act);
  QToolButton* button(QAction* action, const QString& tip);
  void go(const QString& address);
  void showHere();
  void showHits(const QString& words);
  void follow(const QString& address);

  QString m_language;
  QStringList m_visited;
  qsizetype m_at = -1;
  ManualBrowser* m_page = nullptr;
  QTreeWidget* m_contents = nullptr;
  QListWidget* m_hits = nullptr;
  QLabel* m_found = nullptr;
  QStackedWidget* m_left = nullptr;
  QLineEdit* m_search = nullptr;
  QToolButton* m_zoomed = nullptr;
  QAction* m_back = nullptr;
  QAction* m_forward = nullptr;
};

}  // namespace ui
