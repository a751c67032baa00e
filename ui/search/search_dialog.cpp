// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/fields/count_edit.h"
#include "ui/outcome/figure_grid.h"
#include "ui/outcome/report_table_model.h"
#include "ui/parts.h"
#include "ui/search/search_fields.h"
#include "ui/search/search_tables.h"
#include "ui/search/use_set.h"
#include "ui/sheet_view.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {

SearchDialog::SearchDialog(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
  setObjectName("searchDialog");
  setWindowTitle(tr("Choose resistors"));
  resize(1180, 720);
  if (session.channel()) m_channel = session.document().channels[*session.selection().channel];
  auto* row = new QHBoxLayout(this);
  if (m_channel) row->addWidget(askings());
  row->addWidget(results(), 1);
  connect(&m_runner, &SearchRunner::progressed, m_progress, &QProgressBar::setValue);
  connect(&m_runner, &SearchRunner::done, this, &SearchDialog::showDone);
  if (m_channel)
    say(tr("For %1: say what is wanted and press Search. Every set of resistors is looked at, or ruled out.")
            .arg(toQString(m_channel->name)));
  else
    say(tr("There is no channel yet: add a channel first."), true);
  showControls();
}

QWidget* SearchDialog::askings() {
  auto* inner = new QWidget;
  auto* column = new QVBoxLayout(inner);
  column->setContentsMargins(4, 4, 4, 4);  // beyond the ring around what has the keyboard
  column->addWidget(m_levels = new LevelsGroup(m_channel->setup.bridge));
  column->addWidget(m_places = new PlacesGroup(m_channel->setup.bridge));
  column->addWidget(m_resistors = new ResistorsGroup(m_channel->setup, *m_session.document().stock));
  column->addWidget(criterion());
  column->addStretch();
  watchForm(inner);
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(inner);
  scroll->setFixedWidth(inner->sizeHint().width() + scroll->verticalScrollBar()->sizeHint().width() + 8);
  return scroll;
}

QWidget* SearchDialog::criterion() {
  auto* group = new QGroupBox(tr("What counts"));
  auto* form = new QFormLayout(group);
  m_miss = new QComboBox;
  m_miss->setObjectName("missUnit");
  m_miss->setAccessibleName(tr("Greatest miss"));
  m_miss->addItems({tr("as share of the level"), tr("as share of the limit")});
  m_atTolerance = new QCheckBox(tr("with each resistor at the end of its tolerance"));
  m_atTolerance->setObjectName("atTolerance");
  form->addRow(tr("Greatest miss"), m_miss);
  form->addRow(QString(), m_atTolerance);
  return group;
}

SheetView* SearchDialog::table(const char* name, const QString& label, ReportTableModel* model) {
  auto* view = new SheetView;
  view->setObjectName(name);
  view->setAccessibleName(label);
  sortByHeader(*view);
  view->setModel(model);
  view->verticalHeader()->hide();
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setAlternatingRowColors(true);
  view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return view;
}

QWidget* SearchDialog::results() {
  auto* widget = new QWidget;
  auto* column = new QVBoxLayout(widget);
  column->setContentsMargins(0, 0, 0, 0);
  column->addLayout(searchRow());
  m_sentence = plainLabel("searchSentence");
  column->addWidget(m_sentence);
  m_setModel = new ReportTableModel(this);
  m_levelModel = new ReportTableModel(this);
  m_sets = table("setsTable", tr("Best sets of resistors"), m_setModel);
  // Long sets wrap: they are what one chooses by.
  m_sets->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_levelTable = table("levelsTable", tr("Levels of the chosen set"), m_levelModel);
  m_levelTable->horizontalHeader()->setStretchLastSection(true);
  auto* tables = new QSplitter(Qt::Vertical);
  tables->addWidget(m_sets);
  tables->addWidget(m_levelTable);
  tables->setChildrenCollapsible(false);
  column->addWidget(tables, 1);
  m_caution = plainLabel("useCaution");
  m_caution->setWordWrap(true);
  column->addWidget(m_caution);
  column->addLayout(useRow());
  connect(m_sets->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &SearchDialog::showSet);
  return widget;
}

QLayout* SearchDialog::searchRow() {
  m_search = new QPushButton(tr("&Search"));
  m_search->setObjectName("search");
  m_search->setDefault(true);
  m_cancel = new QPushButton(tr("&Cancel search"));
  m_cancel->setObjectName("cancelSearch");
  m_progress = new QProgressBar;
  m_progress->setObjectName("searchProgress");
  m_progress->setAccessibleName(tr("Progress of the search"));
  m_progress->setRange(0, 1000);
  m_progress->setTextVisible(false);
  connect(m_search, &QPushButton::clicked, this, &SearchDialog::search);
  connect(m_cancel, &QPushButton::clicked, &m_runner, &SearchRunner::cancel);
  auto* row = new QHBoxLayout;
  row->addWidget(m_search);
  row->addWidget(m_cancel);
  row->addWidget(m_progress, 1);
  return row;
}

QLayout* SearchDialog::useRow() {
  m_how = new QComboBox;
  m_how->setObjectName("useHow");
  m_how->setAccessibleName(tr("What happens to the present shunts"));
  m_how->addItems(
      {tr("instead of the present shunts and steps"), tr("added to the present shunts and steps")});
  m_how->setToolTip(
      tr("Instead of them: readings of open checks go too, since they were taken with other shunts. "
         "Undo brings all of it back."));
  m_use = new QPushButton(tr("&Use this set"));
  m_use->setObjectName("useSet");
  auto* close = new QPushButton(tr("Close"));
  close->setObjectName("closeSearch");
  for (QPushButton* button : {m_use, close}) button->setAutoDefault(false);
  connect(m_use, &QPushButton::clicked, this, &SearchDialog::use);
  connect(m_how, &QComboBox::currentIndexChanged, this, &SearchDialog::showCaution);
  connect(&m_session, &Session::changed, this, &SearchDialog::showCaution);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  auto* row = new QHBoxLayout;
  row->addWidget(m_use);
  row->addWidget(m_how);
  row->addStretch();
  row->addWidget(close);
  return row;
}

/// Only what the user does: fields write what they hold in their own way when they are left.
void SearchDialog::watchForm(QWidget* form) {
  const auto changed = [this] { formChanged(); };
  for (auto* field : form->findChildren<QLineEdit*>()) connect(field, &QLineEdit::textEdited, this, changed);
  for (auto* field : form->findChildren<QComboBox*>())
    connect(field, &QComboBox::currentIndexChanged, this, changed);
  // By the mouse no text is typed.
  for (auto* field : form->findChildren<CountEdit*>())
    connect(field, &CountEdit::valueChanged, this, changed);
  for (auto* field : form->findChildren<QCheckBox*>()) connect(field, &QCheckBox::toggled, this, changed);
  for (auto* list : form->findChildren<QListWidget*>())
    connect(list, &QListWidget::itemChanged, this, changed);
}

void SearchDialog::formChanged() {
  m_changed = true;
  if (!m_runner.isRunning()) sayOutcome();
  showControls();
}

/// In quiet colour once the form asks for something else.
void SearchDialog::sayOutcome() {
  if (m_outcome.best.empty()) return;
  const QString sentence = outcomeSentence(m_outcome, m_job.search.missUnit);
  if (!m_changed) return say(sentence);
  say(tr("These results are for what was asked before: search again to use a set.") + "\n" + sentence);
  QPalette palette = this->palette();
  palette.setColor(QPalette::WindowText, coloursFor(palette).quiet);
  m_sentence->setPalette(palette);
}

void SearchDialog::showCaution() {
  const bool drops = m_use->isEnabled() && m_how->currentIndex() == 0 && replacingDropsReadings(*m_channel);
  m_caution->setVisible(drops);
  // The words of the pattern dialog.
  m_caution->setText(
      tr("This closes other shunts than the present sequence, or in another order: readings of open checks "
         "will be dropped. Close those checks first to keep them."));
  setTextColour(m_caution, coloursFor(palette()).fail);
}

void SearchDialog::say(const QString& sentence, bool wrong) {
  m_sentence->setText(withWholeUnits(sentence));
  QPalette palette = this->palette();
  if (wrong) palette.setColor(QPalette::WindowText, coloursFor(palette).fail);
  m_sentence->setPalette(palette);
}

core::Result<SearchRunner::Job> SearchDialog::job() {
  for (SearchGroup* group : std::initializer_list<SearchGroup*>{m_levels, m_places, m_resistors})
    if (auto ok = group->commit(); !ok) return ok.error();
  auto levels = m_levels->levels();
  if (!levels) return levels.error();
  auto fitted = m_resistors->fitted();
  if (!fitted) return fitted.error();
  auto from = m_resistors->from();
  if (!from) return from.error();
  SearchRunner::Job job{
      m_channel->setup, {}, *std::move(from), m_session.today(), m_resistors->withOverdue()};
  const auto any = [&](auto wanted) { return std::any_of(levels->begin(), levels->end(), wanted); };
  if (any([](double level) { return level > 0; })) job.search.positive = m_places->place(true);
  if (any([](double level) { return level < 0; })) job.search.negative = m_places->place(false);
  job.search.levels = *std::move(levels);
  job.search.positions = m_resistors->positions();
  job.search.fitted = *std::move(fitted);
  job.search.together = m_resistors->together();
  job.search.missUnit = m_miss->currentIndex() == 0 ? core::MissUnit::OfLevel : core::MissUnit::OfLimit;
  job.search.atTolerance = m_atTolerance->isChecked();
  return job;
}

void SearchDialog::search() {
  if (!m_channel || m_runner.isRunning()) return;
  auto next = job();
  if (!next) return say(toText(next.error()), true);
  m_asked = *std::move(next);
  m_changed = false;
  m_runner.run(m_asked);
  say(tr("Searching…"));
  showControls();
  m_cancel->setFocus();
}

void SearchDialog::showDone(const std::shared_ptr<const SearchRunner::Outcome>& outcome) {
  const bool keyboard = m_cancel->hasFocus();
  if (!*outcome) {
    // What was found before stays, for what was asked then.
    m_changed = true;
    say(toText(outcome->error()), true);
    showControls();
    if (keyboard) m_search->setFocus();
    return;
  }
  m_job = m_asked;
  m_outcome = **outcome;
  m_changed ? sayOutcome() : say(outcomeSentence(m_outcome, m_job.search.missUnit));
  m_setModel->setTable(setsTable(m_outcome, m_job.search.missUnit));
  m_sets->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  if (!m_outcome.best.empty()) m_sets->selectRow(0);
  showSet();
  if (keyboard) m_outcome.best.empty() ? m_search->setFocus() : m_sets->setFocus();
}

std::optional<std::size_t> SearchDialog::chosenSet() const {
  const int row = m_sets->currentIndex().row();
  if (row < 0 || static_cast<std::size_t>(row) >= m_outcome.best.size()) return std::nullopt;
  return static_cast<std::size_t>(row);
}

void SearchDialog::showSet() {
  const auto set = chosenSet();
  m_levelModel->setTable(set ? levelsTable(m_job.setup.bridge, m_outcome.best[*set], m_job.search.missUnit)
                             : core::Table{});
  showControls();
}

void SearchDialog::showControls() {
  const bool running = m_runner.isRunning();
  m_search->setEnabled(m_channel && !running);
  m_cancel->setEnabled(running);
  m_use->setEnabled(!running && !m_changed && chosenSet());
  showCaution();
  if (!running) m_progress->setValue(0);
}

void SearchDialog::use() {
  const auto set = chosenSet();
  if (!set || m_changed) return;
  if (!m_session.channel() || m_session.document().channels[*m_session.selection().channel] != m_channel)
    return say(tr("The channel was changed since the dialog was opened: search again from there."), true);
  m_session.editChannel(tr("Use chosen resistors"),
                        withSet(*m_channel, *m_session.document().stock, m_job.search, m_outcome.best[*set],
                                m_how->currentIndex() == 0));
  accept();
}

/// Escape ends the search first and the dialog then.
void SearchDialog::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && m_runner.isRunning()) return m_runner.cancel();
  QDialog::keyPressEvent(event);
}

}  // namespace ui
