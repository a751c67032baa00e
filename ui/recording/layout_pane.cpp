// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/layout_pane.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/as_typed.h"
#include "ui/parts.h"
#include "ui/recording/layout_form.h"
#include "ui/recording/layout_words.h"
#include "ui/recording/preview_table.h"
#include "ui/sheet_view.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int mostDoubtsShown = 3;   ///< the others are in the tooltip
constexpr int mostLeftOutShown = 3;  ///< likewise
constexpr int mostFittedColumns = 40;

QString countText(std::size_t count) { return QLocale().toString(static_cast<qulonglong>(count)); }

}  // namespace

LayoutPane::LayoutPane(QWidget* parent) : QWidget(parent) {
  setObjectName("layoutPane");
  m_doubts = plainLabel("layoutDoubts");
  m_form = new LayoutForm;
  m_fields = new QScrollArea;
  m_fields->setObjectName("layoutFields");
  m_fields->setFrameShape(QFrame::NoFrame);
  m_fields->setWidgetResizable(true);
  m_fields->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_fields->setWidget(m_form);
  m_fields->setVisible(false);
  auto* below = new QHBoxLayout;
  below->addWidget(m_fields);
  below->addWidget(tables(), 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(head());
  column->addWidget(m_doubts);
  column->addLayout(below, 1);
  connect(m_form, &LayoutForm::chosen, this, &LayoutPane::take);
  connect(m_preview, &PreviewTable::unitTyped, this, [this](int at, const QString& unit) {
    m_form->setUnit(static_cast<std::size_t>(at), unit.toStdString());
  });
  begin({});
}

QWidget* LayoutPane::head() {
  m_sentence = plainLabel("layoutSentence");
  m_note = plainLabel("layoutNote");
  m_change =
      toolButton("layoutChange", tr("Chan&ge…"), tr("Shows a field for each part of what was guessed"));
  m_change->setCheckable(true);
  m_allAsGuessed = new QPushButton(tr("As guessed instead"));
  m_allAsGuessed->setObjectName("allAsGuessed");
  m_allAsGuessed->setAutoDefault(false);
  connect(m_allAsGuessed, &QPushButton::clicked, this, [this] { take({}); });
  connect(m_change, &QToolButton::toggled, this, [this](bool isOpen) {
    m_fields->setFixedWidth(m_form->sizeHint().width() + m_fields->verticalScrollBar()->sizeHint().width());
    m_fields->setVisible(isOpen);
    emit opened(isOpen);
  });
  auto* widget = new QWidget;
  auto* grid = new QGridLayout(widget);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(0, 1);
  grid->addWidget(m_sentence, 0, 0);
  grid->addWidget(m_change, 0, 1, Qt::AlignRight | Qt::AlignTop);
  grid->addWidget(m_note, 1, 0);
  grid->addWidget(m_allAsGuessed, 1, 1, Qt::AlignRight);
  return widget;
}

QWidget* LayoutPane::tables() {
  m_preview = new PreviewTable(this);
  m_lines = new QTableView;
  m_lines->setObjectName("previewLines");
  m_lines->setAccessibleName(tr("First lines of the file"));
  m_lines->setModel(m_preview);
  m_lines->setWordWrap(false);
  m_lines->setTabKeyNavigation(false);
  m_lines->verticalHeader()->setDefaultSectionSize(m_lines->fontMetrics().height() + 5);
  m_lines->verticalHeader()->setMinimumSectionSize(m_lines->fontMetrics().height() + 5);
  m_lines->horizontalHeader()->setHighlightSections(false);
  m_notRead = new QListWidget;
  m_notRead->setObjectName("notRead");
  m_notRead->setAccessibleName(tr("What was not read"));
  m_tabs = new QTabWidget;
  m_tabs->setObjectName("layoutTabs");
  m_tabs->setDocumentMode(true);
  m_tabs->addTab(m_lines, tr("First lines"));
  m_tabs->addTab(m_notRead, tr("Not read"));
  return m_tabs;
}

void LayoutPane::begin(const core::LayoutChoices& choices) {
  m_choices = m_remembered = choices;
  m_sentence->setText(tr("Choose a recording: how it is read is guessed from the file and said here."));
  setTextColour(m_sentence, coloursFor(palette()).quiet);
  m_doubts->setVisible(false);
  m_preview->setPreview({});
  m_notRead->clear();
  m_tabs->setTabEnabled(1, false);
  m_tabs->setTabText(1, tr("Not read"));
  m_tabs->setCurrentIndex(0);
  m_change->setChecked(false);
  m_change->setEnabled(false);
  showNote();
}

void LayoutPane::take(const core::LayoutChoices& choices) {
  m_choices = choices;
  showNote();
  emit chosen();
}

void LayoutPane::showNote() {
  const bool isChosen = !m_choices.empty();
  const bool isRemembered = isChosen && m_choices == m_remembered;
  m_note->setText(isRemembered ? tr("As for the last recording: %1.").arg(choicesWords(m_choices))
                               : tr("Changed by you: %1.").arg(choicesWords(m_choices)));
  m_note->setVisible(isChosen);
  m_allAsGuessed->setVisible(isChosen);
}

void LayoutPane::showLook(const core::Result<core::Preview>& look) {
  const Colours colours = coloursFor(palette());
  m_change->setEnabled(look || !m_choices.empty());
  setTextColour(m_sentence, look ? palette().color(QPalette::WindowText) : colours.quiet);
  m_notRead->clear();
  m_tabs->setTabEnabled(1, false);
  m_tabs->setTabText(1, tr("Not read"));
  if (!look) {
    // Why not is said under the file's name.
    m_sentence->setText(tr("There is nothing to be read in this file."));
    m_doubts->setVisible(false);
    m_preview->setPreview({});
    return;
  }
  m_sentence->setText(layoutSentence(look->layout));
  m_form->show(look->layout, m_choices);
  // Nothing can be read until the user says where the times come from.
  const core::TimeLayout& time = look->layout.time;
  if (!time.column && !(time.rate_Hz > 0)) m_change->setChecked(true);
  m_fields->setFixedWidth(m_form->sizeHint().width() + m_fields->verticalScrollBar()->sizeHint().width());
  showDoubts(*look);
  showLines(*look);
}

void LayoutPane::showDoubts(const core::Preview& preview) {
  QStringList doubts, leftOut;
  for (const std::string& doubt : preview.doubts) doubts << toQString(doubt);
  for (const std::string& column : preview.leftOut) leftOut << toQString(column);
  const QStringList all = doubts + leftOut;
  QStringList sentences = doubts.mid(0, mostDoubtsShown);
  if (doubts.size() > mostDoubtsShown)
    sentences << tr("And %n more doubt(s).", nullptr, int(doubts.size()) - int(mostDoubtsShown));
  QString columns = leftOut.mid(0, mostLeftOutShown).join("; ");
  if (leftOut.size() > mostLeftOutShown)
    columns = tr("%1; and %n more", nullptr, int(leftOut.size()) - mostLeftOutShown).arg(columns);
  if (!leftOut.isEmpty()) sentences << tr("Columns left out: %1.").arg(columns);
  m_doubts->setToolTip(asTyped(all.join("\n")));
  m_doubts->setText(sentences.join("\n"));
  setTextColour(m_doubts, coloursFor(palette()).cannotTell);
  m_doubts->setVisible(!sentences.isEmpty());
}

void LayoutPane::showLines(const core::Preview& preview) {
  m_lines->clearSpans();
  m_preview->setPreview(preview);
  const int columns = m_preview->columnCount();
  for (int row = 0; row < m_preview->unitRow() && columns > 1; ++row)
    if (m_preview->isWholeLine(row)) m_lines->setSpan(row, 0, 1, columns);
  // What comes before the heading matters less than the heading with the first numbers.
  m_lines->scrollTo(m_preview->index(m_preview->firstUsedRow(), 0), QAbstractItemView::PositionAtTop);
  if (columns > mostFittedColumns) return;
  m_lines->resizeColumnsToContents();
  const int widest = m_lines->fontMetrics().averageCharWidth() * 30;
  for (int column = 0; column < columns; ++column)
    m_lines->setColumnWidth(column, std::clamp(m_lines->columnWidth(column), 70, widest));
}

void LayoutPane::showRead(const core::Recording& recording) {
  m_notRead->clear();
  for (const core::SkippedLine& line : recording.skipped)
    m_notRead->addItem(tr("Line %1: %2").arg(QString::number(line.line), toQString(line.reason)));
  if (recording.linesSkipped > recording.skipped.size())
    m_notRead->addItem(
        tr("and %Ln more line(s)", nullptr, int(recording.linesSkipped - recording.skipped.size())));
  for (const core::MissingCell& cell : recording.missing)
    m_notRead->addItem(tr("Line %1, %2: %3")
                           .arg(QString::number(cell.line), toQString(recording.columns[cell.column].name),
                                toQString(cell.reason)));
  if (recording.cellsMissing > recording.missing.size())
    m_notRead->addItem(
        tr("and %Ln more cell(s)", nullptr, int(recording.cellsMissing - recording.missing.size())));
  const std::size_t count = recording.linesSkipped + recording.cellsMissing;
  m_tabs->setTabEnabled(1, count > 0);
  m_tabs->setTabText(1, count > 0 ? tr("Not read (%1)").arg(countText(count)) : tr("Not read"));
}

}  // namespace ui
