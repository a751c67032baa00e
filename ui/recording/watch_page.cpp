// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/watch_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

#include "ui/parts.h"
#include "ui/preferences/appearance.h"
#include "ui/quantity_edit.h"
#include "ui/tables/table_tools.h"

namespace ui {
namespace {

enum ListColumn { When, File, StateWord, Found };

QString stateWord(Arrival::State state) {
  switch (state) {
    case Arrival::State::BeingWritten:
      return WatchPage::tr("being written");
    case Arrival::State::Waiting:
      return WatchPage::tr("waits its turn");
    case Arrival::State::Reading:
      return WatchPage::tr("is read");
    case Arrival::State::Taken:
      return WatchPage::tr("taken up");
    case Arrival::State::NeedsYou:
      return WatchPage::tr("waits for you");
    case Arrival::State::Failed:
      return WatchPage::tr("not read");
    case Arrival::State::Gone:
      return WatchPage::tr("gone");
  }
  return {};
}

QTableWidgetItem* cell(const QString& text) {
  auto* item = new QTableWidgetItem(text);
  item->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
  item->setToolTip("<span>" + text.toHtmlEscaped() + "</span>");
  return item;
}

QTableWidget* arrivalTable() {
  auto* table = new QTableWidget(0, 4);
  table->setObjectName("watchList");
  table->setAccessibleName(WatchPage::tr("Recordings that arrived"));
  sortByHeader(*table);
  table->setHorizontalHeaderLabels({WatchPage::tr("At"), WatchPage::tr("Recording"), WatchPage::tr("State"),
                                    WatchPage::tr("What was found")});
  table->verticalHeader()->setVisible(false);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setWordWrap(true);
  const int digit = table->fontMetrics().horizontalAdvance('0');
  table->setColumnWidth(When, 12 * digit);
  table->setColumnWidth(File, 34 * digit);
  table->setColumnWidth(StateWord, 18 * digit);
  table->horizontalHeader()->setSectionResizeMode(Found, QHeaderView::Stretch);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

}  // namespace

WatchPage::WatchPage(Session& session, RecordingStore& store, QWidget* parent)
    : QWidget(parent), m_arrivals(session, store) {
  setObjectName("watchPage");
  setAccessibleName(tr("Watched recordings"));
  auto* explanation = plainLabel("watchExplanation");
  explanation->setText(tr(
      "A recording that is complete is read as it arrives. It becomes a check of each channel that it has a "
      "column for, when each of them has a level for every step; a recording that leaves a choice waits in "
      "the "
      "list. Taking up can be undone."));
  m_state = embolden(plainLabel("watchState"));
  m_list = arrivalTable();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 4, 8, 8);
  layout->setSpacing(8);
  layout->addWidget(explanation);
  layout->addLayout(targetRow());
  layout->addLayout(ruleRow());
  layout->addLayout(checkRow());
  layout->addWidget(m_state);
  layout->addWidget(m_list, 1);
  layout->addLayout(listRow());
  connect(m_list, &QTableWidget::itemSelectionChanged, this, &WatchPage::showState);
  connect(m_list, &QTableWidget::cellActivated, this, [this] { decide(); });
  connect(&m_arrivals, &Arrivals::changed, this, &WatchPage::showList);
  connect(&m_arrivals, &Arrivals::taken, this, [this](const QString& path, const QString& words) {
    emit said(tr("Took up %1: %2.").arg(QFileInfo(path).fileName(), words));
  });
  followWatch();
  showState();
  setFocusProxy(m_pattern);
}

QToolButton* WatchPage::tool(const char* name, const QString& text, const QString& tip,
                             void (WatchPage::*act)()) {
  auto* button = toolButton(name, text, tip);
  connect(button, &QToolButton::clicked, this, act);
  return button;
}

QLayout* WatchPage::targetRow() {
  auto* row = new QHBoxLayout;
  row->addWidget(tool("watchFolder", tr("Watch a folder…"), tr("Recordings that are put there from now on"),
                      &WatchPage::chooseFolder));
  row->addWidget(tool("watchFile", tr("Watch a recording…"), tr("One file that a logger is adding to"),
                      &WatchPage::chooseFile));
  m_pause = tool("watchPause", tr("Pause"), tr("Leave recordings alone until watching goes on"),
                 &WatchPage::pauseOrGoOn);
  m_stop =
      tool("watchStop", tr("Stop watching"), tr("Forget what is watched; the list stays"), &WatchPage::stop);
  row->addWidget(m_pause);
  row->addWidget(m_stop);
  m_target = plainLabel("watchTarget");
  row->addWidget(m_target, 1);
  return row;
}

QLayout* WatchPage::ruleRow() {
  m_pattern = new QLineEdit("*");
  m_pattern->setObjectName("watchPattern");
  m_pattern->setMaximumWidth(atTextSize(220));
  m_pattern->setToolTip(tr("Only files whose name fits, such as *.csv; several separated by blanks"));
  connect(m_pattern, &QLineEdit::editingFinished, this, [this] { m_folder.setPattern(m_pattern->text()); });
  m_rest = new QuantityEdit(core::UnitFamily::Duration);
  m_rest->setObjectName("watchRest");
  m_rest->setAccessibleName(tr("Complete after no change for"));
  m_rest->setLeast(1, true);
  m_rest->setGreatest(3600);
  m_rest->setValue(2);
  m_rest->setMaximumWidth(90);
  connect(m_rest, &QuantityEdit::refused, this, &WatchPage::refused);
  connect(m_rest, &QuantityEdit::valueEdited, this, [this](double seconds) {
    m_folder.setRest(std::chrono::milliseconds(std::llround(1000 * seconds)));
  });
  auto* names = new QLabel(tr("File names"));
  names->setBuddy(m_pattern);
  auto* rests = new QLabel(tr("Complete after no change for"));
  rests->setBuddy(m_rest);
  auto* row = new QHBoxLayout;
  for (QWidget* widget : std::initializer_list<QWidget*>{names, m_pattern, rests, m_rest})
    row->addWidget(widget);
  row->addStretch();
  return row;
}

QLayout* WatchPage::checkRow() {
  m_takesUp = new QCheckBox(tr("Take up without asking what leaves no choice"));
  m_takesUp->setObjectName("watchTakesUp");
  m_takesUp->setChecked(true);
  connect(m_takesUp, &QCheckBox::toggled, this, [this](bool on) { m_arrivals.setTakesUp(on); });
  m_names = new QComboBox;
  m_names->setObjectName("watchNames");
  m_names->addItems({tr("after the file"), tr("pre-test, post-test and so on")});
  connect(m_names, &QComboBox::currentIndexChanged, this,
          [this](int index) { m_arrivals.setNamesAfterFile(index == 0); });
  m_person = new QLineEdit;
  m_person->setObjectName("watchPerson");
  m_person->setPlaceholderText(tr("who runs the checks"));
  m_person->setMaximumWidth(atTextSize(220));
  connect(m_person, &QLineEdit::textChanged, &m_arrivals, &Arrivals::setPerson);
  auto* called = new QLabel(tr("Checks are called"));
  called->setBuddy(m_names);
  auto* person = new QLabel(tr("Person"));
  person->setBuddy(m_person);
  auto* row = new QHBoxLayout;
  for (QWidget* widget : std::initializer_list<QWidget*>{called, m_names, person, m_person})
    row->addWidget(widget);
  row->addStretch();
  // Below each other: side by side they would keep the whole window wide.
  auto* rows = new QVBoxLayout;
  rows->addWidget(m_takesUp);
  rows->addLayout(row);
  return rows;
}

QLayout* WatchPage::listRow() {
  m_decide = tool("watchDecide", tr("Decide…"),
                  tr("Open the chosen recording where every guess can be changed"), &WatchPage::decide);
  m_again =
      tool("watchAgain", tr("Read again"), tr("Read the chosen recording once more"), &WatchPage::tryAgain);
  auto* row = new QHBoxLayout;
  row->addWidget(m_decide);
  row->addWidget(m_again);
  row->addStretch();
  row->addWidget(
      tool("watchClear", tr("Clear the list"), tr("Forget what is done with"), &WatchPage::clearList));
  return row;
}

void WatchPage::followWatch() {
  connect(&m_folder, &FolderWatch::arrived, this, [this](const QString& path) { m_arrivals.add(path); });
  connect(&m_folder, &FolderWatch::growing, this,
          [this](const QString& path, qint64 size) { m_arrivals.addGrowing(path, size); });
  connect(&m_folder, &FolderWatch::gone, this, [this](const QString& path) { m_arrivals.markGone(path); });
  connect(&m_folder, &FolderWatch::failed, this, &WatchPage::refused);
}

void WatchPage::setDocumentPath(const QString& path) {
  m_documentPath = path;
  m_arrivals.setDocumentPath(path);
}

void WatchPage::watch(const QString& path) {
  const QString before = m_folder.path();
  m_folder.setPaused(false);
  m_folder.watch(path);
  if (!before.isEmpty() && before != m_folder.path())
    emit said(tr("%1 is watched now, and %2 no longer.").arg(m_folder.path(), before));
  showState();
}

void WatchPage::chooseFolder() {
  const QString path =
      QFileDialog::getExistingDirectory(this, tr("Folder to watch"), QFileInfo(m_documentPath).path());
  if (!path.isEmpty()) watch(path);
}

void WatchPage::chooseFile() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Recording to watch"), QFileInfo(m_documentPath).path());
  if (!path.isEmpty()) watch(path);
}

void WatchPage::pauseOrGoOn() {
  m_folder.setPaused(!m_folder.isPaused());
  showState();
}

void WatchPage::stop() {
  m_folder.stop();
  showState();
}

QString WatchPage::chosenPath() const {
  const int row = m_list->currentRow();
  return row < 0 ? QString() : m_list->item(row, File)->data(Qt::UserRole).toString();
}

void WatchPage::decide() {
  if (const QString path = chosenPath(); !path.isEmpty()) emit importWanted(path);
}

void WatchPage::tryAgain() {
  if (const QString path = chosenPath(); !path.isEmpty()) m_arrivals.tryAgain(path);
}

void WatchPage::clearList() { m_arrivals.clear(); }

void WatchPage::showState() {
  const bool watching = m_folder.isWatching();
  m_target->setText(m_folder.path());
  m_state->setText(!watching             ? tr("Nothing is watched.")
                   : m_folder.isPaused() ? tr("Paused: what arrives now is taken up when watching goes on.")
                                         : tr("Watching."));
  m_pause->setEnabled(watching);
  m_pause->setText(m_folder.isPaused() ? tr("Go on") : tr("Pause"));
  m_stop->setEnabled(watching);
  const bool chosen = m_list->currentRow() >= 0;
  m_decide->setEnabled(chosen);
  m_again->setEnabled(chosen);
}

/// The latest first.
void WatchPage::showList() {
  const QString chosen = chosenPath();
  const auto& arrivals = m_arrivals.list();
  m_list->setRowCount(static_cast<int>(arrivals.size()));
  for (int row = 0; row < m_list->rowCount(); ++row) {
    const Arrival& arrival = arrivals[arrivals.size() - 1 - static_cast<std::size_t>(row)];
    m_list->setItem(row, When, cell(QLocale().toString(arrival.when.time(), "HH:mm:ss")));
    auto* file = cell(QFileInfo(arrival.path).fileName());
    file->setData(Qt::UserRole, arrival.path);
    m_list->setItem(row, File, file);
    m_list->setItem(row, StateWord, cell(stateWord(arrival.state)));
    m_list->setItem(row, Found, cell(arrival.words));
    if (arrival.path == chosen) m_list->setCurrentCell(row, 0);
  }
  showState();
}

}  // namespace ui
