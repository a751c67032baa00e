// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sequence_pane.h"

#include <QHBoxLayout>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/document/edits.h"
#include "core/plan/pattern.h"
#include "ui/budget_view.h"
#include "ui/check_bar.h"
#include "ui/choice_delegates.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/review/review_page.h"
#include "ui/shown_channel.h"
#include "ui/stock/part_delegate.h"
#include "ui/tables/column_room.h"
#include "ui/tables/row_drag.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

QWidget* page(QLayout* tools, QWidget* table, NextSteps* next) {
  auto* widget = new QWidget;
  auto* layout = new QVBoxLayout(widget);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->setSpacing(4);
  layout->addLayout(tools);
  layout->addWidget(next);
  layout->addWidget(table);
  return widget;
}

/// A column keeps room for a usual value, and for more when it holds more; one takes the rest.
void setWidths(SheetView* view, std::initializer_list<int> characters, int taking) {
  int column = 0;
  for (const int width : characters)
    view->setColumnWidth(column++, view->fontMetrics().horizontalAdvance('0') * width);
  new ColumnRoom(*view, {taking});
}

}  // namespace

SequencePane::SequencePane(Session& session, QWidget* parent)
    : QTabWidget(parent),
      m_session(session),
      m_sequence(session),
      m_shuntModel(session),
      m_uncertaintyModel(session) {
  setObjectName("sequencePane");
  setDocumentMode(true);
  addTab(stepsPage(), tr("Sequence"));
  addTab(shuntsPage(), tr("Shunts"));
  addTab(uncertaintiesPage(), tr("Uncertainties"));
  m_budget = new BudgetView(session);
  addTab(m_budget, tr("Budget"));
  connect(m_budget, &BudgetView::refused, this, &SequencePane::refused);
  connect(m_budget, &BudgetView::inputActivated, this, &SequencePane::showUncertainty);
  m_review = new ReviewPage(session);
  addTab(m_review, tr("Review"));
  connect(m_review, &ReviewPage::refused, this, &SequencePane::refused);
  connect(m_review, &ReviewPage::shuntActivated, this, &SequencePane::showShunt);
  setCornerWidget(m_checks, Qt::TopRightCorner);
  for (const SheetModel* model :
       std::initializer_list<SheetModel*>{&m_sequence, &m_shuntModel, &m_uncertaintyModel})
    connect(model, &SheetModel::refused, this, &SequencePane::refused);
  connect(&session, &Session::changed, this, &SequencePane::followSession);
  followSession();
}

QToolButton* SequencePane::tool(const QString& name, const QString& text, const QString& tip,
                                const std::function<void()>& act) {
  auto* button = toolButton(name, text, tip);
  connect(button, &QToolButton::clicked, this, act);
  return button;
}

QWidget* SequencePane::stepsPage() {
  m_steps = new SheetView;
  m_steps->setObjectName("sequenceTable");
  m_steps->setAccessibleName(tr("Sequence"));
  m_steps->setModel(&m_sequence);
  setWidths(m_steps, {3, 5, 11, 9, 5, 4, 8, 9, 8, 7, 8, 8, 8, 6, 9}, SequenceModel::Closed);
  connect(m_steps, &SheetView::refused, this, &SequencePane::refused);
  connect(m_steps->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& current) {
            if (current.isValid()) m_session.selectStep(static_cast<std::size_t>(current.row()));
          });
  m_steps->setItemDelegate(new TypedDelegate(this));
  auto* drag = new RowDrag(*m_steps, SequenceModel::Number);
  connect(drag, &RowDrag::moved, this, [this](int from, int to) {
    moveStep(static_cast<std::size_t>(from), static_cast<std::size_t>(to));
  });
  m_steps->setItemDelegateForColumn(SequenceModel::Closed, new ClosedShuntsDelegate(m_session, this));
  m_checks = new CheckBar(m_session);
  connect(m_checks, &CheckBar::refused, this, &SequencePane::refused);
  auto* tools = new QHBoxLayout;
  tools->addWidget(
      tool("addStep", tr("Add step"), tr("Add a step below the chosen one"), [this] { addStep(); }));
  tools->addWidget(tool("removeStep", tr("Remove"), tr("Remove the chosen step"), [this] { removeStep(); }));
  tools->addWidget(tool("stepUp", tr("Up"), tr("Move the step up"), [this] { moveStep(-1); }));
  tools->addWidget(tool("stepDown", tr("Down"), tr("Move the step down"), [this] { moveStep(1); }));
  tools->addWidget(tool("twoSided", tr("Two-sided"),
                        tr("Lay out zero, positive shunts rising, zero, negative shunts rising, zero"),
                        [this] { layOutTwoSided(); }));
  tools->addWidget(tool("fromPattern", tr("From pattern…"),
                        tr("Lay out up and down, repeats, random order and other patterns"),
                        [this] { emit patternWanted(); }));
  tools->addWidget(tool("guidedRun", tr("Guided run"),
                        tr("Be led through the check step by step, in large type"),
                        [this] { emit runWanted(); }));
  tools->addStretch();
  tools->addWidget(m_checks->comparison());
  return page(
      tools, m_steps,
      new NextSteps(m_session, NextSteps::Need::Steps,
                    tr("No steps yet. A sequence of steps says which shunts are closed, and how long.")));
}

QWidget* SequencePane::shuntsPage() {
  m_shunts = new SheetView;
  m_shunts->setObjectName("shuntTable");
  m_shunts->setAccessibleName(tr("Shunts"));
  m_shunts->setModel(&m_shuntModel);
  auto* nodes = new NodeDelegate(m_session, this);
  m_shunts->setItemDelegate(new TypedDelegate(this));
  m_shunts->setItemDelegateForColumn(ShuntModel::From, nodes);
  m_shunts->setItemDelegateForColumn(ShuntModel::To, nodes);
  m_shunts->setItemDelegateForColumn(ShuntModel::Part, new PartDelegate(m_session, this));
  setWidths(m_shunts, {13, 12, 11, 11, 9, 8, 9, 17, 14, 11, 9, 9}, ShuntModel::Place);
  connect(m_shunts, &SheetView::refused, this, &SequencePane::refused);
  sortByHeader(*m_shunts);
  auto* tools = new QHBoxLayout;
  tools->addWidget(
      tool("addShunt", tr("Add shunt"), tr("Add a resistor across arm 2"), [this] { addShunt(); }));
  tools->addWidget(tool("removeShunt", tr("Remove"), tr("Remove the chosen shunt, from the steps too"),
                        [this] { removeShunt(); }));
  tools->addWidget(tool("chooseResistors", tr("Choose resistors…"),
                        tr("Find the resistors that come nearest to the levels wanted"),
                        [this] { emit resistorsWanted(); }));
  tools->addStretch();
  return page(
      tools, m_shunts,
      new NextSteps(m_session, NextSteps::Need::Shunts,
                    tr("No shunts yet. A shunt is a resistor and the place that it is switched to.")));
}

QWidget* SequencePane::uncertaintiesPage() {
  m_uncertainties = new SheetView;
  m_uncertainties->setObjectName("uncertaintyTable");
  m_uncertainties->setAccessibleName(tr("Uncertainties"));
  m_uncertainties->setModel(&m_uncertaintyModel);
  m_uncertainties->setItemDelegate(new TypedDelegate(this));
  const auto words = [this](QStringList list) { return new WordDelegate(m_session, std::move(list), this); };
  m_uncertainties->setItemDelegateForColumn(UncertaintyModel::StatedAs, words(statementWords()));
  m_uncertainties->setItemDelegateForColumn(UncertaintyModel::Distribution, words(distributionWords()));
  m_uncertainties->setItemDelegateForColumn(UncertaintyModel::Group, new GroupDelegate(m_session, this));
  setWidths(m_uncertainties, {22, 12, 12, 10, 11, 5, 9, 9, 9, 30}, UncertaintyModel::Source);
  connect(m_uncertainties, &SheetView::refused, this, &SequencePane::refused);
  sortByHeader(*m_uncertainties);
  auto* tools = new QHBoxLayout;
  tools->addWidget(tool("assumeAgain", tr("Assume again"),
                        tr("Drop what is stated in the chosen rows and take the usual values of their class"),
                        [this] { assumeAgain(); }));
  tools->addStretch();
  return page(tools, m_uncertainties,
              new NextSteps(m_session, NextSteps::Need::Channel,
                            tr("No channel yet. What its readings depend on is listed here.")));
}

SheetView& SequencePane::current() {
  if (currentWidget() == m_budget) return m_budget->table();
  if (currentWidget() == m_review) return m_review->table();
  const std::array<SheetView*, 3> tables = {m_steps, m_shunts, m_uncertainties};
  return *tables[static_cast<std::size_t>(currentIndex())];
}

void SequencePane::showBudget() { setCurrentWidget(m_budget); }

void SequencePane::showReview() { setCurrentWidget(m_review); }

void SequencePane::showShunt(std::size_t shunt) {
  setCurrentIndex(1);
  m_shunts->setCurrentIndex(m_shuntModel.index(static_cast<int>(shunt), ShuntModel::Resistance));
  m_shunts->setFocus();
}

void SequencePane::showUncertainty(core::Input input) {
  const auto row = m_uncertaintyModel.rowOf(input);
  if (!row) return;
  setCurrentIndex(indexOf(m_uncertainties->parentWidget()));
  m_uncertainties->setCurrentIndex(m_uncertaintyModel.index(*row, UncertaintyModel::Amount));
  m_uncertainties->setFocus();
}

bool SequencePane::hasChannel() {
  if (!m_session.channel()) emit refused(tr("There is no channel yet: add a channel first."));
  return m_session.channel();
}

/// What is shown is the plan, not what a closed check was judged by.
bool SequencePane::planIsOpen() {
  if (!hasChannel()) return false;
  const QString reason = whyNotEdited(m_session);
  if (!reason.isEmpty()) emit refused(reason);
  return reason.isEmpty();
}

void SequencePane::addStep() {
  if (!planIsOpen()) return;
  const core::Channel& channel = *m_session.channel();
  const std::size_t steps = channel.setup.sequence.size();
  const std::size_t at = m_session.selection().step ? *m_session.selection().step + 1 : steps;
  const core::Duration hold =
      steps > 0 ? channel.setup.sequence[at > 0 ? at - 1 : 0].hold : core::Duration(2);
  m_session.editChannel(tr("Add step"),
                        core::withStepInserted(channel, at, {.label = "zero", .closed = {}, .hold = hold}));
  m_session.selectStep(at);
}

void SequencePane::removeStep() {
  if (!planIsOpen()) return;
  if (!m_session.selection().step) return emit refused(tr("Choose the step to remove."));
  m_session.editChannel(tr("Remove step"),
                        core::withStepRemoved(*m_session.channel(), *m_session.selection().step));
}

void SequencePane::moveStep(int by) {
  if (!m_session.selection().step) return;
  const std::size_t from = *m_session.selection().step;
  const std::size_t steps = m_session.channel()->setup.sequence.size();
  if ((by < 0 && from == 0) || (by > 0 && from + 1 >= steps)) return;
  moveStep(from, by < 0 ? from - 1 : from + 1);
}

void SequencePane::moveStep(std::size_t from, std::size_t to) {
  if (!planIsOpen()) return;
  m_session.editChannel(tr("Move step"), core::withStepMoved(*m_session.channel(), from, to));
  m_session.selectStep(to);
}

void SequencePane::addShunt() {
  if (!planIsOpen()) return;
  const core::Channel& channel = *m_session.channel();
  // A usual first value: the resistor that simulates about 1000 µm/m on this gauge.
  const core::Resistance arm = channel.setup.bridge.arms[1];
  const core::Resistance about =
      arm / (core::isTransducer(channel.setup.bridge) ? 2e-3 : channel.setup.bridge.gauge.factor * 1e-3);
  m_session.editChannel(
      tr("Add shunt"),
      core::withShuntAdded(channel, {.name = "R" + std::to_string(channel.setup.shunts.size() + 1),
                                     .resistance = about,
                                     .a = core::Node::Arm2Begin,
                                     .b = core::Node::Arm2End,
                                     .wires = core::Resistance(0)}));
  m_shunts->setCurrentIndex(m_shuntModel.index(m_shuntModel.rowCount() - 1, ShuntModel::Resistance));
}

void SequencePane::removeShunt() {
  if (!planIsOpen()) return;
  const QModelIndex chosen = m_shunts->currentIndex();
  if (!chosen.isValid()) return emit refused(tr("Choose the shunt to remove."));
  m_session.editChannel(tr("Remove shunt"),
                        core::withShuntRemoved(*m_session.channel(), static_cast<std::size_t>(chosen.row())));
}

void SequencePane::layOutTwoSided() {
  if (!planIsOpen()) return;
  const core::Channel& channel = *m_session.channel();
  if (channel.setup.shunts.empty()) return emit refused(tr("There is no shunt to close: add shunts first."));
  const auto [settle, hold] = core::timesOf(channel.setup);
  const std::vector<core::Step> steps =
      core::layOut(core::usualPatterns().front(), core::levelsOfShunts(channel.setup), settle, hold);
  const bool drops = core::dropsReadings(channel, steps);
  m_session.editChannel(tr("Lay out two-sided sequence"), core::withSequence(channel, steps));
  if (drops)
    emit refused(tr(
        "Readings of open checks were dropped, since other shunts are closed now. Undo brings them back."));
}

void SequencePane::assumeAgain() {
  if (!planIsOpen()) return;
  std::vector<int> rows;
  for (const QModelIndex& cell : chosenCells(*m_uncertainties))
    if (m_uncertaintyModel.isStated(cell.row())) rows.push_back(cell.row());
  if (rows.empty()) return emit refused(tr("Choose rows whose uncertainty is stated."));
  m_session.editChannel(tr("Assume uncertainty again"),
                        m_uncertaintyModel.withAssumed(*m_session.channel(), rows));
}

void SequencePane::followSession() {
  const auto step = m_session.selection().step;
  const QModelIndex current = m_steps->currentIndex();
  if (!step) {
    if (current.isValid()) m_steps->selectionModel()->clear();
    return;
  }
  const int row = static_cast<int>(*step);
  if (current.isValid() && current.row() == row) return;
  m_steps->setCurrentIndex(
      m_sequence.index(row, current.isValid() ? current.column() : SequenceModel::Label));
}

}  // namespace ui
