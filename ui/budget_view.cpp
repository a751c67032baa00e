// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/budget_view.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabBar>

#include "ui/budget/budget_words.h"
#include "ui/budget/share_delegate.h"
#include "ui/budget/trial_panel.h"
#include "ui/help/next_steps.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/sheet_view.h"
#include "ui/shown_channel.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int wide_px = 1350;  ///< from here on table and trials stand side by side
constexpr int tall_px = 560;   ///< from here on the trials have room below the table

constexpr int greatestColumn_px = 200;  ///< longer texts are in the tooltip as a whole

enum Page { ContentsPage, MessagePage };
enum Part { TablePart, TrialsPart };

void say(QLabel* label, const QString& text) {
  label->setText(withWholeUnits(text));
  label->setAccessibleName(text);
}

}  // namespace

BudgetView::BudgetView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("budgetView");
  setAccessibleName(tr("Budget"));
  buildTable();
  m_trials = new TrialPanel(m_runner);
  m_both = new QSplitter(Qt::Horizontal);
  m_both->setChildrenCollapsible(false);
  m_both->addWidget(m_table);
  m_both->addWidget(m_trials);
  m_both->setStretchFactor(0, 3);
  m_both->setStretchFactor(1, 2);
  shareRoom();
  m_message = plainLabel("budgetMessage");
  m_message->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_stack = new QStackedWidget;
  m_stack->addWidget(m_both);
  m_stack->addWidget(m_message);
  offerUnder(m_message, session, NextSteps::Need::Steps);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->setSpacing(4);
  column->addLayout(choosers());
  column->addLayout(head());
  column->addWidget(m_stack, 1);
  connect(m_trials, &TrialPanel::seedChanged, this, &BudgetView::refresh);
  connect(m_trials, &TrialPanel::stepWalked, this, &BudgetView::walk);
  connect(&m_runner, &TrialRunner::changed, this, [this] {
    if (isVisible() && stepIsShown()) showStep();
  });
  connect(&session, &Session::changed, this, &BudgetView::refresh);
  arrange();
  colour();
  refresh();
}

QLayout* BudgetView::choosers() {
  m_step = new QComboBox;
  m_step->setObjectName("budgetStep");
  m_step->setMinimumContentsLength(14);
  m_step->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_step->setPlaceholderText(tr("choose a step"));
  m_scope = new QComboBox;
  m_scope->setObjectName("budgetScope");
  m_scope->addItems({QString(), QString()});
  m_scopeWords = plainLabel("budgetScopeWords");
  connect(m_step, &QComboBox::activated, this,
          [this](int row) { m_session.selectStep(static_cast<std::size_t>(row)); });
  connect(m_scope, &QComboBox::activated, this,
          [this](int row) { m_session.selectScope(static_cast<core::Scope>(row)); });
  auto* line = new QHBoxLayout;
  const auto add = [&](const QString& name, QComboBox* box) {
    auto* label = new QLabel(name);
    label->setBuddy(box);
    box->setAccessibleName(name);
    line->addWidget(label);
    line->addWidget(box);
  };
  add(tr("Step"), m_step);
  add(tr("Scope"), m_scope);
  line->addWidget(m_scopeWords, 1);
  return line;
}

QLayout* BudgetView::head() {
  m_headline = plainLabel("budgetHeadline");
  embolden(m_headline);
  m_details = plainLabel("budgetDetails");
  m_parts = new QTabBar;
  m_parts->setObjectName("budgetParts");
  m_parts->setAccessibleName(tr("Part of the page"));
  m_parts->addTab(tr("Inputs"));
  m_parts->addTab(tr("Trials"));
  m_parts->setDrawBase(false);
  connect(m_parts, &QTabBar::currentChanged, this, &BudgetView::arrange);
  auto* words = new QVBoxLayout;
  words->setSpacing(2);
  words->addWidget(m_headline);
  words->addWidget(m_details);
  auto* line = new QHBoxLayout;
  line->addLayout(words, 1);
  line->addWidget(m_parts, 0, Qt::AlignBottom);
  return line;
}

void BudgetView::buildTable() {
  m_sorted = new QSortFilterProxyModel(this);
  m_sorted->setSourceModel(&m_model);
  m_sorted->setSortRole(BudgetModel::SortRole);
  m_table = new SheetView;
  m_table->setObjectName("budgetTable");
  m_table->setAccessibleName(tr("Budget of the step"));
  m_table->setModel(m_sorted);
  m_table->setItemDelegateForColumn(BudgetModel::Share, new ShareDelegate(this));
  m_table->setSortingEnabled(true);
  m_table->sortByColumn(BudgetModel::Share, Qt::DescendingOrder);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  m_table->horizontalHeader()->setMaximumSectionSize(greatestColumn_px);
  m_table->horizontalHeader()->setSectionResizeMode(BudgetModel::Share,
                                                    QHeaderView::Stretch);  // room for bars
  connect(m_table, &QTableView::activated, this, &BudgetView::activate);
  connect(m_table, &SheetView::refused, this, &BudgetView::refused);
}

void BudgetView::followTrials() {
  const Selection& chosen = m_session.selection();
  const Place place{chosen.channel, chosen.check, chosen.scope, m_trials->seed()};
  std::optional<TrialRunner::Subject> subject;
  if (m_session.channel() && m_session.shownPrediction().zero && !m_session.shownSetup().sequence.empty())
    subject = TrialRunner::Subject{m_session.shownSetup(), chosen.scope, m_trials->seed()};
  const bool edited = place == m_place;
  m_place = place;
  m_runner.show(std::move(subject), edited);
}

void BudgetView::refresh() {
  followTrials();
  if (!isVisible()) return;
  fillChoosers();
  const QString missing = whatIsMissing();
  m_stack->setCurrentIndex(missing.isEmpty() ? ContentsPage : MessagePage);
  say(m_message, missing);
  m_headline->setVisible(missing.isEmpty());
  m_details->setVisible(missing.isEmpty());
  arrange();
  if (missing.isEmpty()) return showStep();
  m_model.showNothing();
  m_trials->showNothing();
}

void BudgetView::fillChoosers() {
  const bool some = m_session.channel();
  QStringList titles;
  if (some)
    for (std::size_t step = 0; step < m_session.shownSetup().sequence.size(); ++step)
      titles << stepTitle(m_session.shownSetup(), step);
  const QSignalBlocker quietStep(m_step), quietScope(m_scope);
  if (titles != m_stepTitles) {
    m_step->clear();
    m_step->addItems(titles);
    m_stepTitles = titles;
  }
  const auto step = m_session.selection().step;
  m_step->setCurrentIndex(step && *step < static_cast<std::size_t>(titles.size()) ? static_cast<int>(*step)
                                                                                  : -1);
  m_step->setEnabled(!titles.isEmpty());
  m_scope->setEnabled(some);
  if (!some) return say(m_scopeWords, {});
  const core::Setup& setup = m_session.shownSetup();
  for (const core::Scope scope : {core::Scope::Chain, core::Scope::Strain})
    m_scope->setItemText(static_cast<int>(scope), toQString(core::scopeName(setup, scope)));
  m_scope->setCurrentIndex(static_cast<int>(m_session.selection().scope));
  say(m_scopeWords, scopeSentence(setup, m_session.selection().scope));
}

QString BudgetView::whatIsMissing() const {
  if (!m_session.channel()) return tr("No channel yet. Add a channel to see its budget here.");
  if (const auto& zero = m_session.shownPrediction().zero; !zero)
    return tr("Cannot be predicted. %1").arg(toText(zero.error()));
  const core::Setup& setup = m_session.shownSetup();
  if (setup.sequence.empty()) return tr("The channel has no steps yet. Add steps to its sequence.");
  const auto step = m_session.selection().step;
  if (!step || *step >= setup.sequence.size()) return tr("Choose a step, above or in the sequence.");
  const auto& uncertainty = m_session.shownBudget().of(m_session.selection().scope).steps[*step];
  if (!uncertainty)
    return tr("Step %1 has no uncertainty. %2").arg(stepTitle(setup, *step), toText(uncertainty.error()));
  return {};
}

bool BudgetView::stepIsShown() const { return whatIsMissing().isEmpty(); }

void BudgetView::showStep() {
  const core::Setup& setup = m_session.shownSetup();
  const core::Scope scope = m_session.selection().scope;
  const std::size_t step = *m_session.selection().step;
  const core::Budget& budget = m_session.shownBudget();
  const core::StepUncertainty& uncertainty = *budget.of(scope).steps[step];
  say(m_headline, budgetHeadline(setup, scope, step, uncertainty));
  say(m_details, tr("Combined standard uncertainty u = %1 %2; %3.")
                     .arg(twoDigitsText(uncertainty.standard), toQString(core::scopeUnitText(setup, scope)),
                          degreesOfFreedomText(uncertainty)));
  m_model.show(setup, budget, scope, step);
  m_trials->show({setup, scope, step, uncertainty});
}

void BudgetView::activate(const QModelIndex& shown) {
  if (!shown.isValid()) return;
  if (const QString reason = whyNotEdited(m_session); !reason.isEmpty()) return emit refused(reason);
  emit inputActivated(m_model.inputAt(m_sorted->mapToSource(shown).row()));
}

void BudgetView::walk(int direction) {
  const int row = m_step->currentIndex() + direction;
  if (row >= 0 && row < m_step->count()) m_session.selectStep(static_cast<std::size_t>(row));
}

/// Side by side, below one another, or one at a time, by the room there is.
void BudgetView::arrange() {
  const bool wide = width() >= wide_px, both = wide || height() >= tall_px;
  const auto direction = wide ? Qt::Horizontal : Qt::Vertical;
  if (m_both->orientation() != direction) {
    m_both->setOrientation(direction);
    shareRoom();
  }
  m_parts->setVisible(!both && m_stack->currentIndex() == ContentsPage);
  m_table->setVisible(both || m_parts->currentIndex() == TablePart);
  m_trials->setVisible(both || m_parts->currentIndex() == TrialsPart);
}

void BudgetView::shareRoom() {
  // Proportions: a splitter stretches its sizes to the room it has.
  m_both->setSizes(m_both->orientation() == Qt::Horizontal ? QList<int>{3300, 2000} : QList<int>{1000, 1000});
}

void BudgetView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void BudgetView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_runner.setWatched(true);
  refresh();
}

void BudgetView::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_runner.setWatched(false);
}

void BudgetView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

void BudgetView::colour() {
  QPalette quiet = palette();
  quiet.setColor(QPalette::WindowText, coloursFor(palette()).quiet);
  for (QLabel* label : {m_scopeWords, m_details}) label->setPalette(quiet);
}

}  // namespace ui
