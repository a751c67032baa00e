// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome_view.h"

#include <QApplication>
#include <QButtonGroup>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/plan/overdue.h"
#include "core/report/figures.h"
#include "core/report/tables.h"
#include "ui/as_typed.h"
#include "ui/change/change_export.h"
#include "ui/change/change_panel.h"
#include "ui/diagnosis/diagnosis_panel.h"
#include "ui/help/next_steps.h"
#include "ui/outcome/chart_tools.h"
#include "ui/outcome/elided_lines.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/figures_page.h"
#include "ui/outcome/outcome_charts.h"
#include "ui/outcome/outcome_export.h"
#include "ui/outcome/page_button.h"
#include "ui/outcome/report_table_model.h"
#include "ui/page_stack.h"
#include "ui/parts.h"
#include "ui/state_file.h"
#include "ui/working/working_panel.h"

namespace ui {
namespace {

// At the window's letters; in larger ones there is as much less room.
constexpr int wide_px = 780;
constexpr int leastPage_px = 280;
constexpr int low_px = 430;  ///< below this height what is said elsewhere too gives its room to the charts
constexpr int figuresShare = 7;      ///< the figures in short take at most this part of the height
constexpr int nothingPage = 6;       ///< after the pages
constexpr int lowLines = 2;          ///< of the verdict in a low view; all of it is on the page of figures
constexpr int leastCharts_px = 240;  ///< less than this for charts and hint makes a view low as well

int heightOf(const QString& text, const QFont& font, int width) {
  if (text.isEmpty()) return 0;
  return QFontMetrics(font).boundingRect(0, 0, width, QWIDGETSIZE_MAX, Qt::TextWordWrap, text).height();
}

}  // namespace

OutcomeView::OutcomeView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("outcomeView");
  setAccessibleName(tr("Outcome"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(6, 4, 6, 4);
  column->setSpacing(3);
  buildShareMenu();
  buildHead(column);
  buildPages();
  m_figures = new FigureGrid;
  m_figures->setObjectName("outcomeFigures");
  m_body = new QBoxLayout(QBoxLayout::TopToBottom);
  m_body->addWidget(m_stack, 1);
  m_body->addWidget(m_figures, 0, Qt::AlignTop);
  m_figuresBeside = new QScrollArea;
  m_figuresBeside->setObjectName("outcomeFiguresBeside");
  m_figuresBeside->setAccessibleName(tr("Figures"));
  m_figuresBeside->setFrameShape(QFrame::NoFrame);
  m_figuresBeside->setWidgetResizable(true);
  m_figuresBeside->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_figuresBeside->hide();
  m_body->addWidget(m_figuresBeside);
  column->addLayout(m_body, 1);
  connect(&m_session, &Session::changed, this, &OutcomeView::refresh);
  connect(m_tools, &ChartTools::optionsChanged, this, &OutcomeView::refresh);
  connect(m_pages, &QButtonGroup::idToggled, this, [this](int, bool on) {
    if (on) refresh();
  });
  refresh();
}

void OutcomeView::buildHead(QBoxLayout* column) {
  m_notice = plainLabel("outcomeNotice");
  m_verdict = plainLabel("outcomeVerdict");
  embolden(m_verdict);
  m_each = plainLabel("outcomeEach");
  QFont small = m_each->font();
  small.setPointSizeF(std::max(7.5, 0.9 * small.pointSizeF()));
  m_each->setFont(small);
  m_scope = plainLabel("outcomeScope");
  m_scope->setFont(small);
  m_scope->setText(tr("Covers the electrical chain only, not gauge factor, bond or alignment."));
  m_scope->setToolTip(toQString(core::chainScopeStatement()));
  column->addWidget(pageButtons());
  for (QWidget* label : {m_notice, m_verdict, m_each, m_scope}) column->addWidget(label);
  column->addWidget(new NextSteps(m_session, NextSteps::Need::Check));

  m_tools = new ChartTools;
  m_share = toolButton("outcomeShare", tr("Copy"), tr("Copy or export what is shown"));
  m_share->setPopupMode(QToolButton::InstantPopup);
  m_share->setMenu(m_shareMenu);
  auto* tools = new QHBoxLayout;
  tools->setSpacing(4);
  tools->addWidget(m_tools, 1);
  tools->addStretch(0);
  tools->addWidget(m_share);
  column->addLayout(tools);
}

QWidget* OutcomeView::pageButtons() {
  auto* row = new QWidget;
  row->setObjectName("outcomePages");
  row->setAccessibleName(tr("Pages of the outcome"));
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(0);  // one row of pages, which has to fit into a narrow view
  m_pages = new QButtonGroup(this);
  const auto add = [&](Page page, const char* name, const QString& text, const QString& tip) {
    auto* button = new PageButton(name, text, tip);
    m_pages->addButton(button, static_cast<int>(page));
    line->addWidget(button);
  };
  add(Page::Charts, "outcomeAsCharts", tr("Charts"), tr("Measured against simulated, and what is off"));
  add(Page::Table, "outcomeAsTable", tr("Table"), tr("The same steps as a table"));
  add(Page::Figures, "outcomeAsFigures", tr("Figures"), tr("All figures in words"));
  add(Page::Diagnosis, "outcomeAsDiagnosis", tr("Diagnosis"), tr("What may be wrong"));
  add(Page::Working, "outcomeAsWorking", tr("Working"), tr("How the numbers of the step come about"));
  add(Page::Change, "outcomeAsChange", tr("Change"), tr("What changed from one check to another, and why"));
  m_pages->button(static_cast<int>(Page::Charts))->setChecked(true);
  line->addStretch(1);
  return row;
}

void OutcomeView::buildPages() {
  m_charts = new OutcomeCharts;
  connect(m_charts, &OutcomeCharts::roomChanged, this, &OutcomeView::refresh);
  connect(m_charts, &OutcomeCharts::stepClicked, this,
          [this](std::size_t step) { m_session.selectStep(step); });
  connect(m_charts, &OutcomeCharts::stepWalked, this, &OutcomeView::walk);
  buildTable();
  m_figuresPage = new FiguresPage;
  m_stack = new PageStack;
  auto* diagnosis = new DiagnosisPanel(m_session);
  connect(diagnosis, &DiagnosisPanel::refused, this, &OutcomeView::refused);
  m_change = new ChangePanel(m_session);
  connect(m_change, &ChangePanel::refused, this, &OutcomeView::refused);
  connect(m_change, &ChangePanel::said, this, &OutcomeView::said);
  connect(m_change, &ChangePanel::shownChanged, this, &OutcomeView::shareRoom);
  for (QWidget* page : std::initializer_list<QWidget*>{m_charts, m_table, m_figuresPage, diagnosis,
                                                       new WorkingPanel(m_session), m_change, new QWidget})
    m_stack->addWidget(page);
  m_stack->setMinimumWidth(leastPage_px);  // not that of the widest page, which may be another one
}

void OutcomeView::buildTable() {
  m_model = new ReportTableModel(this);
  m_table = new QTableView;
  m_table->setObjectName("outcomeTable");
  m_table->setAccessibleName(tr("Steps of the check"));
  m_table->setModel(m_model);
  m_table->verticalHeader()->hide();
  m_table->verticalHeader()->setDefaultSectionSize(m_table->fontMetrics().height() + 8);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->setAlternatingRowColors(true);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& row) {
            if (row.isValid()) m_session.selectStep(static_cast<std::size_t>(row.row()));
          });
}

void OutcomeView::buildShareMenu() {
  m_shareMenu = new QMenu(this);
  const auto add = [&](const char* name, const QString& text, void (OutcomeView::*act)()) {
    auto* action = m_shareMenu->addAction(text);
    action->setObjectName(name);
    connect(action, &QAction::triggered, this, act);
  };
  add("outcomeCopyPicture", tr("Copy as &picture"), &OutcomeView::copyPicture);
  add("outcomeCopyData", tr("Copy as &data"), &OutcomeView::copyData);
  add("outcomeExport", tr("&Export picture…"), &OutcomeView::exportPicture);
}

void OutcomeView::showPage(Page page) { m_pages->button(static_cast<int>(page))->setChecked(true); }

OutcomeView::Page OutcomeView::page() const { return static_cast<Page>(m_pages->checkedId()); }

void OutcomeView::walk(int direction) {
  if (!m_session.channel() || m_session.channel()->setup.sequence.empty()) return;
  const std::size_t last = m_session.channel()->setup.sequence.size() - 1;
  const auto step = m_session.selection().step;
  if (!step) return m_session.selectStep(direction > 0 ? 0 : last);
  if (direction < 0 ? *step > 0 : *step < last) m_session.selectStep(direction < 0 ? *step - 1 : *step + 1);
}

/// What is behind another page of the window is drawn when it comes to the front.
void OutcomeView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (m_isLate) refresh();
}

void OutcomeView::refresh() {
  m_isLate = !isVisible() && window()->isVisible();
  if (m_isLate) return;
  const ShownOutcome outcome = shownOutcome(m_session);
  const bool ofSteps = page() == Page::Charts || page() == Page::Table || page() == Page::Figures;
  const bool shown = outcome.drawn || (outcome.channel && !ofSteps);
  m_tools->offer(
      outcome.pair.has_value(),
      outcome.channel ? toQString(core::readingUnitText(m_session.shownSetup().instrument)) : QString());
  showWords(outcome, whatIsMissing(m_session));
  m_stack->setCurrentIndex(shown ? m_pages->checkedId() : nothingPage);
  m_tools->setVisible(outcome.drawn && outcome.check && page() == Page::Charts);
  m_share->setVisible(outcome.drawn && ofSteps);
  shareRoom();
  if (!outcome.drawn) return;
  if (page() == Page::Charts) m_charts->showOutcome(outcome, m_tools->options(), accessibleDescription());
  if (page() == Page::Table) showTable(outcome);
  if (page() == Page::Figures) m_figuresPage->showFigures(figureLines(outcome));
}

void OutcomeView::showWords(const ShownOutcome& outcome, const QString& missing) {
  std::vector<core::Entry> figures;
  QString words = missing;
  m_shownVerdict = core::Verdict::NotJudged;
  const bool judged = missing.isEmpty() && outcome.check;
  if (outcome.pair) {
    words = toQString(outcome.pair->comparison.reason);
    m_shownVerdict = outcome.pair->comparison.verdict;
    figures = core::figuresOf(*outcome.channel, *outcome.evaluation, outcome.pair->comparison,
                              outcome.pair->before, outcome.pair->after);
  } else if (judged) {
    const core::CheckAssessment& assessment = outcome.evaluation->checks[*outcome.check].assessment;
    words = toQString(assessment.reason);
    m_shownVerdict = assessment.verdict;
    figures = core::figuresOf(*outcome.channel, *outcome.evaluation, *outcome.check);
  }
  showNotice(outcome);
  m_verdictWords = words;
  m_verdict->setAccessibleName(words);
  const QString each =
      outcome.pair ? sentenceOf(outcome.pair->before) + "\n" + sentenceOf(outcome.pair->after) : QString();
  m_each->setText(withWholeUnits(each));
  m_each->setAccessibleName(each);
  m_verdict->setToolTip(judged || outcome.pair ? "<p>" + words.toHtmlEscaped() + "</p><p>" +
                                                     m_scope->toolTip().toHtmlEscaped() + "</p>"
                                               : QString());
  m_figures->setFigures(figures);
  const Colours colours = coloursFor(palette());
  setTextColour(m_verdict, judged || outcome.pair ? colourOf(colours, m_shownVerdict) : colours.text);
  setTextColour(m_notice, colours.selected);
  setTextColour(m_scope, colours.quiet);
  setAccessibleDescription(words + " " + each + " " + m_figures->accessibleDescription());
}

/// What the words below rest on: set-ups that differ, resistors that were overdue on the day of the check.
void OutcomeView::showNotice(const ShownOutcome& outcome) {
  QStringList sentences;
  if (outcome.pair && !outcome.pair->comparison.configuration.empty())
    sentences << toQString(core::setupDifferenceSentence(outcome.pair->comparison));
  if (outcome.channel) {
    const core::Check* check = m_session.check();
    const auto day = check ? core::dateFromText(check->date) : std::nullopt;
    const std::string overdue =
        core::overdueSentence(m_session.shownSetup(), day.value_or(m_session.today()));
    if (!overdue.empty()) sentences << toQString(overdue);
  }
  m_noticeWords = sentences.join(' ');
  m_notice->setAccessibleName(m_noticeWords);
  m_notice->setToolTip(asTyped(m_noticeWords));
  m_notice->setVisible(!sentences.isEmpty());
}

QString OutcomeView::sentenceOf(std::size_t check) const {
  return toQString(m_session.channel()->checks[check].name) + ": " +
         toQString(m_session.evaluation()->checks[check].assessment.reason);
}

void OutcomeView::showTable(const ShownOutcome& outcome) {
  const core::Channel& channel = *outcome.channel;
  const core::ChannelEvaluation& evaluation = *outcome.evaluation;
  if (outcome.pair && !outcome.pair->comparison.steps.empty())
    m_model->setTable(
        core::comparisonTable(channel, outcome.pair->comparison, outcome.pair->before, outcome.pair->after));
  else if (outcome.check)
    m_model->setTable(core::checkTable(channel, evaluation, *outcome.check));
  else
    m_model->setTable(core::planTable(channel.setup, evaluation.prediction, evaluation.budget));
  const QSignalBlocker quiet(m_table->selectionModel());
  if (outcome.step && static_cast<int>(*outcome.step) < m_model->rowCount())
    m_table->selectRow(static_cast<int>(*outcome.step));
  else
    m_table->clearSelection();
  m_table->viewport()->update();
}

/// In a low view the charts come first: the rest of the verdict, what either check says, and the figures are
/// on the page of figures, which does without the verdict above it.
void OutcomeView::shareRoom() {
  const double letters = font().pointSizeF() / QApplication::font().pointSizeF();
  const bool wide = !m_isBelow && width() >= wide_px * letters;
  const bool low = height() < low_px * letters || roomBesideWords(wide) < leastCharts_px * letters;
  const bool beside = page() == Page::Charts || page() == Page::Table;
  const bool judged = m_session.check() && whatIsMissing(m_session).isEmpty();
  m_each->setVisible(!m_each->text().isEmpty() && !low && beside);
  // The page of changes says its own verdict, of its own pair.
  const bool change = page() == Page::Change && m_session.channel();
  if (change) m_share->setVisible(m_change->shown() != nullptr);
  m_scope->setVisible(judged && !(change && low));
  m_verdict->setVisible(!change && !(judged && page() == Page::Figures && !m_session.selection().compared));
  fitVerdict(low);
  const bool figures = beside && !m_figures->accessibleDescription().isEmpty();
  placeFigures(wide);
  m_figures->setVisible(figures && (wide || !low));
  m_figuresBeside->setVisible(figures && wide);
}

/// The height that all words in full and the figures in short would leave.
int OutcomeView::roomBesideWords(bool wide) const {
  const int width = textWidth();
  int words = heightOf(withWholeUnits(m_verdictWords), m_verdict->font(), width);
  for (const QLabel* label : {m_each, m_scope}) words += heightOf(label->text(), label->font(), width);
  words += heightOf(m_noticeWords, m_notice->font(), width);
  const int buttons = 2 * m_share->sizeHint().height();
  return height() - words - buttons - (wide ? 0 : height() / figuresShare);
}

void OutcomeView::keepFiguresBelow() {
  m_isBelow = true;
  shareRoom();
}

void OutcomeView::fitVerdict(bool low) {
  const QString words = withWholeUnits(m_verdictWords);
  m_verdict->setText(low ? elidedToLines(words, m_verdict->font(), textWidth(), lowLines) : words);
  m_notice->setText(low ? elidedToLines(m_noticeWords, m_notice->font(), textWidth(), lowLines)
                        : m_noticeWords);
}

void OutcomeView::placeFigures(bool wide) {
  m_body->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  if (wide && m_figuresBeside->widget() != m_figures) {
    m_figuresBeside->setWidget(m_figures);
  } else if (!wide && m_figuresBeside->widget() == m_figures) {
    m_figuresBeside->takeWidget();
    m_body->insertWidget(1, m_figures, 0, Qt::AlignTop);
  }
  // No least width: a view that becomes narrow again must not be held by what it shows while wide.
  m_figuresBeside->setMaximumWidth(m_figures->sizeHint().width() +
                                   m_figuresBeside->verticalScrollBar()->sizeHint().width());
  m_figures->setRoom(wide ? QWIDGETSIZE_MAX : height() / figuresShare);
}

bool OutcomeView::canShare() {
  if (page() == Page::Change) {
    if (m_change->shown()) return true;
    emit refused(tr("There is nothing to copy or export: no two checks are compared."));
    return false;
  }
  if (shownOutcome(m_session).drawn) return true;
  emit refused(tr("There is nothing to copy or export: %1").arg(whatIsMissing(m_session)));
  return false;
}

PictureDrawing OutcomeView::drawing() const {
  return page() == Page::Change ? changeDrawing(m_change->shown(), toQString(m_session.document().title))
                                : outcomeDrawing(m_session, m_tools->options());
}

void OutcomeView::copyPicture() {
  if (!canShare()) return;
  QApplication::clipboard()->setImage(pictureImage(drawing()));
  emit said(tr("Copied the outcome as a picture."));
}

void OutcomeView::copyData() {
  if (!canShare()) return;
  const QList<QStringList> rows =
      page() == Page::Change ? changeData(*m_change->shown()) : outcomeData(shownOutcome(m_session));
  auto* data = new QMimeData;
  data->setText(asTabbedText(rows));
  data->setHtml(asHtmlTable(rows));
  QApplication::clipboard()->setMimeData(data);
  emit said(tr("Copied %Ln row(s) of data.", nullptr, int(rows.size()) - 1));
}

void OutcomeView::exportPicture() {
  if (!canShare()) return;
  const QString path = askForPicture(this, tr("Export the outcome"), "outcome",
                                     page() == Page::Change ? suggestedChangeName(*m_change->shown())
                                                            : suggestedName(shownOutcome(m_session)));
  if (!path.isEmpty() && exportTo(path)) rememberPictureFolder("outcome", path);
}

bool OutcomeView::exportTo(const QString& path) {
  if (!canShare()) return false;
  const core::Result<void> written = writePicture(path, drawing());
  if (!written) {
    emit refused(tr("Not exported: %1").arg(toText(written.error())));
    return false;
  }
  emit said(tr("Wrote %1.").arg(path));
  return true;
}

void OutcomeView::contextMenuEvent(QContextMenuEvent* event) {
  if (!m_share->isVisible()) return QWidget::contextMenuEvent(event);
  m_shareMenu->popup(event->globalPos());
}

void OutcomeView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  shareRoom();
}

void OutcomeView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
  if (event->type() == QEvent::FontChange && isVisible()) shareRoom();
}

}  // namespace ui
