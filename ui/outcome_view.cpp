// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome_view.h"

#include <QComboBox>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <QtCharts/QValueAxis>
#include <algorithm>

#include "core/plan/overdue.h"
#include "core/report/figures.h"
#include "core/report/tables.h"
#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/measured_plot.h"
#include "ui/outcome/report_table_model.h"
#include "ui/parts.h"

namespace ui {
namespace {

constexpr int wide_px = 780;

enum Page { ChartsPage, TablePage, NothingPage };

bool hasReading(const core::Check& check) {
  return std::any_of(check.readings.begin(), check.readings.end(),
                     [](const auto& reading) { return reading.has_value(); });
}

}  // namespace

OutcomeView::OutcomeView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("outcomeView");
  setAccessibleName(tr("Outcome"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(6, 6, 6, 6);
  column->setSpacing(4);
  buildHead(column);
  buildCharts();
  buildTable();
  m_stack = new QStackedWidget;
  m_stack->addWidget(m_charts);
  m_stack->addWidget(m_table);
  m_stack->addWidget(new QWidget);
  m_figures = new FigureGrid;
  m_figures->setObjectName("outcomeFigures");
  m_body = new QBoxLayout(QBoxLayout::TopToBottom);
  m_body->addWidget(m_stack, 1);
  m_body->addWidget(m_figures, 0, Qt::AlignTop);
  column->addLayout(m_body, 1);
  connect(&m_session, &Session::changed, this, &OutcomeView::refresh);
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
  m_scope->setText(tr("Covers the electrical chain only, not gauge factor, bond or alignment."));
  m_scope->setToolTip(QString::fromStdString(std::string(core::chainScopeStatement())));

  m_kind = new QComboBox;
  m_kind->setObjectName("outcomeBarKind");
  m_kind->setAccessibleName(tr("What the bars show"));
  m_asTable = new QToolButton;
  m_asTable->setObjectName("outcomeAsTable");
  m_asTable->setText(tr("Show as table"));
  m_asTable->setCheckable(true);
  connect(m_kind, &QComboBox::currentIndexChanged, this, &OutcomeView::refresh);
  connect(m_asTable, &QToolButton::toggled, this, &OutcomeView::refresh);

  auto* tools = new QHBoxLayout;
  tools->addWidget(m_kind);
  tools->addStretch(1);
  tools->addWidget(m_asTable);
  for (QWidget* label : {m_notice, m_verdict, m_each, m_scope}) column->addWidget(label);
  column->addLayout(tools);
}

void OutcomeView::buildCharts() {
  m_left = new MeasuredPlot;
  m_right = new MeasuredPlot;
  m_bars = new DeviationPlot;
  m_left->setObjectName("outcomeMeasured");
  m_right->setObjectName("outcomeMeasuredAfter");
  m_bars->setObjectName("outcomeBars");
  auto* sides = new QWidget;
  auto* row = new QHBoxLayout(sides);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(2);
  row->addWidget(m_left, 1);
  row->addWidget(m_right, 1);
  m_charts = new QSplitter(Qt::Vertical);
  m_charts->addWidget(sides);
  m_charts->addWidget(m_bars);
  m_charts->setChildrenCollapsible(false);
  m_charts->setStretchFactor(0, 3);
  m_charts->setStretchFactor(1, 2);
  m_charts->setSizes({300, 200});
  m_later.setSingleShot(true);
  m_later.setInterval(0);
  connect(&m_later, &QTimer::timeout, this, &OutcomeView::refresh);
  for (PlotFrame* plot : std::initializer_list<PlotFrame*>{m_left, m_right, m_bars}) {
    connect(plot, &PlotFrame::heightChanged, &m_later, qOverload<>(&QTimer::start));
    connect(plot, &PlotFrame::stepClicked, this, [this](std::size_t step) { m_session.selectStep(step); });
    connect(plot, &PlotFrame::stepWalked, this, &OutcomeView::walk);
  }
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
            if (row.isValid()) selectRow(static_cast<std::size_t>(row.row()));
          });
}

void OutcomeView::showAsTable(bool table) { m_asTable->setChecked(table); }

void OutcomeView::selectRow(std::size_t row) { m_session.selectStep(row); }

void OutcomeView::walk(int direction) {
  if (!m_session.channel() || m_session.channel()->setup.sequence.empty()) return;
  const std::size_t last = m_session.channel()->setup.sequence.size() - 1;
  const auto step = m_session.selection().step;
  if (!step) return m_session.selectStep(direction > 0 ? 0 : last);
  if (direction < 0 ? *step > 0 : *step < last) m_session.selectStep(direction < 0 ? *step - 1 : *step + 1);
}

std::optional<OutcomeView::Pair> OutcomeView::pair() const {
  const Selection& chosen = m_session.selection();
  if (!chosen.check || !chosen.compared) return std::nullopt;
  const auto [before, after] = std::minmax(*chosen.check, *chosen.compared);
  return Pair{before, after, core::compare(*m_session.channel(), *m_session.evaluation(), before, after)};
}

bool OutcomeView::canBeDrawn() const {
  return m_session.channel() && m_session.shownPrediction().zero && !m_session.shownSetup().sequence.empty();
}

QString OutcomeView::whatIsMissing() const {
  if (!m_session.channel()) return tr("No channel yet. Add a channel to see its outcome here.");
  if (const auto& zero = m_session.shownPrediction().zero; !zero)
    return tr("Cannot be predicted. ") + toText(zero.error());
  if (m_session.shownSetup().sequence.empty())
    return tr("The channel has no steps yet. Add steps to its sequence.");
  const core::Check* check = m_session.check();
  if (!check && !m_session.channel()->checks.empty())
    return tr("Plan only: choose a check to see its outcome.");
  if (!check) return tr("No check yet. Add a check and enter its readings; the plan is drawn meanwhile.");
  if (!hasReading(*check)) return tr("The check has no readings yet; the plan is drawn meanwhile.");
  return {};
}

void OutcomeView::refresh() {
  const std::optional<Pair> compared = pair();
  const bool drawn = canBeDrawn();
  offerKinds(compared.has_value());
  showWords(compared, whatIsMissing());
  const Page page = !drawn ? NothingPage : m_asTable->isChecked() ? TablePage : ChartsPage;
  m_stack->setCurrentIndex(page);
  m_kind->setVisible(page == ChartsPage);
  m_asTable->setVisible(drawn);
  if (page == ChartsPage) showCharts(compared);
  if (page == TablePage) showTable(compared);
}

void OutcomeView::offerKinds(bool pair) {
  if (m_kind->count() > 0 && pair == m_hadPair) return;
  const QSignalBlocker quiet(m_kind);
  if (m_kind->count() == 0) {
    m_kind->addItem(tr("Deviation from expected"), QVariant::fromValue(int(BarKind::Deviation)));
    m_kind->addItem(tr("Residual from the line"), QVariant::fromValue(int(BarKind::Residual)));
  }
  if (pair) {
    m_kind->addItem(tr("Difference of the checks"), QVariant::fromValue(int(BarKind::Difference)));
    m_kind->setCurrentIndex(2);
  } else if (m_kind->count() == 3) {
    m_kind->removeItem(2);
    m_kind->setCurrentIndex(0);
  }
  m_hadPair = pair;
}

void OutcomeView::showWords(const std::optional<Pair>& compared, const QString& missing) {
  const core::Channel* channel = m_session.channel();
  const auto check = m_session.selection().check;
  std::vector<core::Entry> figures;
  QString words = missing;
  m_shownVerdict = core::Verdict::NotJudged;
  const bool judged = missing.isEmpty() && channel && check;
  if (compared) {
    words = toQString(compared->comparison.reason);
    m_shownVerdict = compared->comparison.verdict;
    figures = core::figuresOf(*channel, *m_session.evaluation(), compared->comparison, compared->before,
                              compared->after);
  } else if (judged) {
    const core::CheckAssessment& assessment = m_session.evaluation()->checks[*check].assessment;
    words = toQString(assessment.reason);
    m_shownVerdict = assessment.verdict;
    figures = core::figuresOf(*channel, *m_session.evaluation(), *check);
  }
  showNotice(compared);
  m_verdict->setText(withWholeUnits(words));
  m_verdict->setAccessibleName(words);
  m_each->setVisible(compared.has_value());
  const QString each =
      compared ? sentenceOf(compared->before) + "\n" + sentenceOf(compared->after) : QString();
  m_each->setText(withWholeUnits(each));
  m_each->setAccessibleName(each);
  m_scope->setVisible(judged || compared);
  m_figures->setVisible(!figures.empty());
  m_figures->setFigures(figures);
  const Colours colours = coloursFor(palette());
  setTextColour(m_verdict, judged || compared ? colourOf(colours, m_shownVerdict) : colours.text);
  setTextColour(m_notice, colours.selected);
  setTextColour(m_scope, colours.quiet);
  setAccessibleDescription(words + " " + each + " " + m_figures->accessibleDescription());
}

/// What the words below rest on: set-ups that differ, resistors that were overdue on the day of the check.
void OutcomeView::showNotice(const std::optional<Pair>& compared) {
  QStringList sentences;
  if (compared && !compared->comparison.setupDifferences.empty())
    sentences << toQString(core::setupDifferenceSentence(compared->comparison));
  if (m_session.channel()) {
    const core::Check* check = m_session.check();
    const auto day = check ? core::dateFromText(check->date) : std::nullopt;
    const std::string overdue =
        core::overdueSentence(m_session.shownSetup(), day.value_or(m_session.today()));
    if (!overdue.empty()) sentences << toQString(overdue);
  }
  m_notice->setText(sentences.join(' '));
  m_notice->setVisible(!sentences.isEmpty());
}

QString OutcomeView::sentenceOf(std::size_t check) const {
  return toQString(m_session.channel()->checks[check].name) + ": " +
         toQString(m_session.evaluation()->checks[check].assessment.reason);
}

void OutcomeView::showCharts(const std::optional<Pair>& compared) {
  const core::Channel& channel = *m_session.channel();
  const core::ChannelEvaluation& evaluation = *m_session.evaluation();
  const Selection& chosen = m_session.selection();
  const auto plotOf = [&](std::size_t check) { return checkPlot(channel, evaluation, check); };
  const CheckPlot first = compared       ? plotOf(compared->before)
                          : chosen.check ? plotOf(*chosen.check)
                                         : plannedPlot(channel, evaluation);
  Extent x, y;
  addExtent(first, x, y);
  const CheckPlot second = compared ? plotOf(compared->after) : CheckPlot();
  if (compared) addExtent(second, x, y);
  const AxisTicks yTicks = niceTicks(y, m_left->uprightIntervals());
  const AxisTicks half = niceTicks(x, 4), whole = niceTicks(x, 6);
  const auto role = [&](std::size_t check) {
    return check == chosen.check ? MeasuredPlot::Role::Chosen : MeasuredPlot::Role::Compared;
  };
  m_left->showPlot(first, compared ? role(compared->before) : MeasuredPlot::Role::Chosen,
                   compared.has_value(), compared ? half : whole, yTicks, chosen.step);
  if (compared) m_right->showPlot(second, role(compared->after), true, half, yTicks, chosen.step);
  m_right->setVisible(compared.has_value());
  showBars(compared, first, x);
  m_left->setAccessibleName(first.check.isEmpty() ? first.yTitle : first.check + ", " + first.yTitle);
  m_left->setAccessibleDescription(marksInWords(first.points) + accessibleDescription());
  m_right->setAccessibleName(second.check + ", " + second.yTitle);
  m_right->setAccessibleDescription(marksInWords(second.points) + accessibleDescription());
  alignPlots();
}

void OutcomeView::showBars(const std::optional<Pair>& compared, const CheckPlot& plot, const Extent& x) {
  const core::Channel& channel = *m_session.channel();
  const core::ChannelEvaluation& evaluation = *m_session.evaluation();
  const Selection& chosen = m_session.selection();
  const auto kind = static_cast<BarKind>(m_kind->currentData().toInt());
  QList<PlotBar> bars;
  if (kind == BarKind::Difference && compared) {
    bars = differenceBars(channel, evaluation, compared->comparison, compared->before);
  } else if (chosen.check) {
    bars = checkBars(channel, evaluation, *chosen.check, kind, false);
    if (compared) bars += checkBars(channel, evaluation, *chosen.compared, kind, true);
  }
  m_bars->showBars(bars, plot.xTitle, barTitle(plot.unit), niceTicks(x, 6), chosen.step);
  m_bars->setVisible(!bars.isEmpty());
  m_bars->setAccessibleName(m_kind->currentText());
  m_bars->setAccessibleDescription(marksInWords(bars) + accessibleDescription());
}

QString OutcomeView::barTitle(const QString& unit) const {
  switch (static_cast<BarKind>(m_kind->currentData().toInt())) {
    case BarKind::Deviation:
      return tr("Deviation") + ", " + unit;
    case BarKind::Residual:
      return tr("Residual") + ", " + unit;
    case BarKind::Difference:
      return tr("Difference") + ", " + unit;
  }
  return {};
}

void OutcomeView::showTable(const std::optional<Pair>& compared) {
  const core::Channel& channel = *m_session.channel();
  const core::ChannelEvaluation& evaluation = *m_session.evaluation();
  const Selection& chosen = m_session.selection();
  if (compared && !compared->comparison.steps.empty())
    m_model->setTable(
        core::comparisonTable(channel, compared->comparison, compared->before, compared->after));
  else if (chosen.check)
    m_model->setTable(core::checkTable(channel, evaluation, *chosen.check));
  else
    m_model->setTable(core::planTable(channel.setup, evaluation.prediction, evaluation.budget));
  const QSignalBlocker quiet(m_table->selectionModel());
  if (chosen.step && static_cast<int>(*chosen.step) < m_model->rowCount())
    m_table->selectRow(static_cast<int>(*chosen.step));
  else
    m_table->clearSelection();
  m_table->viewport()->update();
}

/// Zero lies at the same place in plots below one another.
void OutcomeView::alignPlots() {
  const bool below = m_left->isVisible() && m_bars->isVisible() && !m_right->isVisibleTo(this);
  const int left = below ? std::max(m_left->neededLeft(), m_bars->neededLeft()) : 0;
  m_left->setLeft(left);
  m_bars->setLeft(left);
}

void OutcomeView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const bool wide = width() >= wide_px;
  m_body->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  m_figures->setMaximumWidth(wide ? m_figures->sizeHint().width() : QWIDGETSIZE_MAX);
}

/// What is not shown cannot be aligned.
void OutcomeView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_later.start();
}

void OutcomeView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) refresh();
}

}  // namespace ui
