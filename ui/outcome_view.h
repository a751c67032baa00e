// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

#include "ui/outcome/chart_options.h"
#include "ui/outcome/shown_outcome.h"
#include "ui/picture_file.h"
#include "ui/session.h"

class QAction;
class QBoxLayout;
class QButtonGroup;
class QLabel;
class QMenu;
class QScrollArea;
class QStackedWidget;
class QTableView;
class QToolButton;

namespace ui {

class ChangePanel;
class ChartTools;
class FigureGrid;
class FiguresPage;
class OutcomeCharts;
class ReportTableModel;

/// What the chosen check shows: measured against simulated, what is off with its limits, the verdict and the
/// figures in words, in pages: charts, the same as a table, all figures, causes, working. With a second check
/// chosen both stand side by side in the same axes, and what differs between them lies below. What is shown
/// can be copied as picture and as data, and exported as a picture.
class OutcomeView : public QWidget {
  Q_OBJECT

 public:
  enum class Page { Charts, Table, Figures, Diagnosis, Working, Change };

  explicit OutcomeView(Session& session, QWidget* parent = nullptr);

  // A view in a splitter: it gets its size, and is not asked for the height that suits a width at each edit.
  QSize sizeHint() const override { return {640, 480}; }
  bool hasHeightForWidth() const override { return false; }

  void showPage(Page page);
  Page page() const;
  /// Exchanges the charts for the table of the same steps, and back.
  void showAsTable(bool table) { showPage(table ? Page::Table : Page::Charts); }

  /// For a screen before which nobody scrolls: below they are as few as there is room for.
  void keepFiguresBelow();

  void copyPicture();
  void copyData();
  /// Asks for a name first.
  void exportPicture();
  /// As SVG, PNG or PDF by the ending of `path`. False when not written.
  bool exportTo(const QString& path);

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  void buildHead(QBoxLayout* column);
  QWidget* pageButtons();
  void buildPages();
  void buildTable();
  void buildShareMenu();
  void refresh();
  void showWords(const ShownOutcome& outcome, const QString& missing);
  void showNotice(const ShownOutcome& outcome);
  /// "pre-test: Fail: 1 of 4 ..."
  QString sentenceOf(std::size_t check) const;
  void showTable(const ShownOutcome& outcome);
  /// Says why when there is nothing to copy or export.
  bool canShare();
  PictureDrawing drawing() const;
  void shareRoom();
  int textWidth() const { return width() - 12; }
  int roomBesideWords(bool wide) const;
  void fitVerdict(bool low);
  void placeFigures(bool wide);
  void walk(int direction);

  Session& m_session;
  QLabel* m_notice;   ///< what the reader must know before the verdict
  QLabel* m_verdict;  ///< the verdict in words, or what is missing
  QLabel* m_each;     ///< what either of two compared checks says by itself
  QLabel* m_scope;
  QButtonGroup* m_pages;
  ChartTools* m_tools;
  QToolButton* m_share;
  QMenu* m_shareMenu;
  QStackedWidget* m_stack;  ///< the pages, and nothing
  OutcomeCharts* m_charts;
  QTableView* m_table;
  ReportTableModel* m_model;
  FiguresPage* m_figuresPage;
  ChangePanel* m_change;
  FigureGrid* m_figures;         ///< in short, below charts and table, or beside them in `m_figuresBeside`
  QScrollArea* m_figuresBeside;  ///< scrolls, so that none is ever out of reach
  QBoxLayout* m_body;            ///< stack and figures, below or beside one another
  QString m_noticeWords;         ///< the notice in full
  QString m_verdictWords;        ///< the verdict in full
  core::Verdict m_shownVerdict = core::Verdict::NotJudged;
  bool m_isBelow = false;  ///< figures are never beside
  bool m_isLate = false;   ///< something changed while it was not seen
};

}  // namespace ui
