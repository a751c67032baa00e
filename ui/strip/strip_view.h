// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFutureWatcher>
#include <QWidget>

#include "ui/recording/recording_store.h"
#include "ui/session.h"
#include "ui/strip/strip_chart.h"

class QAction;
class QLabel;
class QMenu;
class QProgressBar;
class QPushButton;
class QStackedLayout;
class QToolBar;
class QToolButton;

namespace ui {

class SpanEditor;

/// One line of text that is cut where the room ends; the whole of it is the tooltip.
class LineLabel : public QWidget {
 public:
  explicit LineLabel(const QString& name, QWidget* parent = nullptr);
  void setText(const QString& text);
  const QString& text() const { return m_text; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString m_text;
};

/// The recording of the chosen check over time, with the spans its readings are taken from: under the
/// Sequence view, one lane a channel that has this recording. Choosing a span chooses its step, and back.
class StripView : public QWidget {
  Q_OBJECT

 public:
  StripView(Session& session, RecordingStore& store, QWidget* parent = nullptr);

  StripChart& chart() { return *m_chart; }
  /// Takes the recording of the chosen check from another file, in all checks that refer to it.
  void useFile(const QString& path);

 public slots:
  /// A sheet of what keys and mouse do, closed by a click beside it or Escape.
  void showKeys();

 signals:
  void refused(const QString& reason);

 protected:
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  // strip_view.cpp
  void refresh();
  void refreshState();
  void refreshWarning();
  void readAgain();
  void showRecording(std::shared_ptr<const OpenRecording> open);
  void followStep();
  void choose(std::size_t lane, std::optional<core::SpanPlace> place);
  bool chosenStepHasSpan() const;
  void findFile();
  void refreshLine();
  void describeChosen();
  QString wordsOf(const StripSpan& span) const;
  // strip_view_tools.cpp
  void buildTools();
  void makeViewActions();
  void makeSpanActions();
  void fillToolRow();
  QWidget* buildMessage();
  void readAnyway();
  QAction* tool(const QString& name, const QString& text, const QString& key, const QString& tip,
                const std::function<void()>& act);
  void enableTools();
  void enable(QAction* action, bool enabled, bool isClosed);
  void fillStepMenu(QMenu* menu);
  void showMenu(const QPoint& globalPosition);
  void onChosen(void (SpanEditor::*act)(core::SpanPlace));

  Session& m_session;
  RecordingStore& m_store;
  SpanEditor* m_editor;
  StripChart* m_chart;
  QToolBar* m_tools;
  QToolButton* m_steps = nullptr;
  LineLabel* m_line;
  QLabel* m_warning;
  QStackedLayout* m_stack;
  QLabel* m_message = nullptr;
  QProgressBar* m_progress = nullptr;
  QPushButton *m_cancel = nullptr, *m_find = nullptr, *m_readIt = nullptr, *m_readAgain = nullptr;
  QAction *m_showAll = nullptr, *m_showSpan = nullptr, *m_add = nullptr, *m_split = nullptr,
          *m_join = nullptr, *m_delete = nullptr, *m_match = nullptr, *m_begin = nullptr, *m_end = nullptr,
          *m_free = nullptr, *m_give = nullptr, *m_scale = nullptr, *m_all = nullptr, *m_keys = nullptr;
  bool m_isChoosing = false;               ///< several choices are one for what is shown
  std::optional<std::size_t> m_shownStep;  ///< the last that was brought into view
  QString m_said;                          ///< what an edit said, until something else is chosen
  std::shared_ptr<const OpenRecording> m_open;

  /// The levels of the chosen lane's spans as last described, and what they were described of.
  struct Described {
    std::shared_ptr<const OpenRecording> open;
    std::size_t column = 0;
    std::vector<core::SampleSpan> spans;
    std::vector<core::Level> levels;
  };
  Described m_described;
  QFutureWatcher<Described> m_describing;
};

}  // namespace ui
