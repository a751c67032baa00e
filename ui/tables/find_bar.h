// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPersistentModelIndex>
#include <QPointer>
#include <QTextCursor>
#include <QTimer>
#include <QWidget>
#include <functional>

#include "ui/tables/document_search.h"

class QLabel;
class QLineEdit;
class QTableView;
class QTextEdit;

namespace ui {

/// Finds words in what the window shows: its tables, the one worked in first, and texts; then in the rest of
/// the document where the window has one. Each match once, round and round.
class FindBar : public QWidget {
  Q_OBJECT

 public:
  using Search = std::function<QList<DocumentMatch>(const QString& words)>;
  using Show = std::function<void(const DocumentPlace& place)>;

  explicit FindBar(QWidget* parent = nullptr);

  /// What else can be found, and how it is shown.
  void setBeyond(Search search, Show show);

  void open();
  void next() { go(1); }
  void previous() { go(-1); }
  void close();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  /// One of a cell, a place in a text, a label or a place of the document.
  struct Match {
    QPointer<QTableView> table = {};
    QPersistentModelIndex cell = {};
    QPointer<QTextEdit> text = {};
    QTextCursor cursor = {};
    QPointer<QLabel> label = {};
    QString where = {};
    DocumentPlace place = {};

    bool isOfDocument() const { return !where.isEmpty(); }
    bool isThere() const;
  };

  void search();
  void searchTables();
  void searchTable(QTableView& view);
  void searchTexts();
  void go(int by);
  void show(const Match& match);
  void markMoreTables();
  void markLabel(QLabel* label);
  void unmark();
  void tell();
  template <class Widget>
  QList<Widget*> shown() const;

  QLineEdit* m_words;
  QLabel* m_count;
  QTimer m_later;
  Search m_search;
  Show m_show;
  QPointer<QWidget> m_workedIn;
  QList<Match> m_matches;
  int m_at = -1;
  bool m_more = false;  ///< there were more than are listed
  QString m_searched;
  QList<QPointer<QTextEdit>> m_markedTexts;
  QList<QPointer<QTableView>> m_markedTables;
  QPointer<QWidget> m_frame;  ///< around a label
};

}  // namespace ui
