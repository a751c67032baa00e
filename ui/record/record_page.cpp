// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record/record_page.h"

#include <QApplication>
#include <QClipboard>
#include <QDateTime>
#include <QGridLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent>

#include "core/document/edits.h"
#include "core/document/file_limits.h"
#include "core/record/fingerprint.h"
#include "core/record/revisions.h"
#include "ui/parts.h"
#include "ui/record/act_dialog.h"
#include "ui/record/saving.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

enum RemarkColumn { Channel, Check, Step, Person, Time, Text, Settled, RemarkColumnCount };
enum HistoryColumn { SavedAt, SavedBy, Changes, Content, HistoryColumnCount };

QString localTime(const std::string& utc) {
  const QDateTime time = QDateTime::fromString(toQString(utc), Qt::ISODate);
  return time.isValid() ? QLocale().toString(time.toLocalTime(), QLocale::ShortFormat) : toQString(utc);
}

QTableWidget* makeTable(const QString& name, const QString& accessible, const QStringList& titles,
                        int stretched) {
  auto* table = new QTableWidget(0, static_cast<int>(titles.size()));
  table->setObjectName(name);
  table->setAccessibleName(accessible);
  sortByHeader(*table);
  table->setHorizontalHeaderLabels(titles);
  table->verticalHeader()->hide();
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setSelectionMode(QAbstractItemView::SingleSelection);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  table->setWordWrap(true);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table->horizontalHeader()->setSectionResizeMode(stretched, QHeaderView::Stretch);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

void putRow(QTableWidget* table, int row, const QStringList& cells) {
  for (int column = 0; column < cells.size(); ++column) {
    auto* item = new QTableWidgetItem(cells[column]);
    item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
    table->setItem(row, column, item);
  }
}

QPushButton* addButton(QLayout* to, const QString& name, const QString& text) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setAutoDefault(false);
  to->addWidget(button);
  return button;
}

/// A sign beside the word, so that colour is not needed.
QString signOf(core::Stage stage, bool changed) {
  if (changed && stage != core::Stage::Draft && stage != core::Stage::Returned) return "⚠ ";
  switch (stage) {
    case core::Stage::Draft:
      return "✎ ";
    case core::Stage::Submitted:
      return "… ";
    case core::Stage::Accepted:
      return "✓ ";
    case core::Stage::Returned:
      break;
  }
  return "↩ ";
}

QString fingerprintText(const core::Document& document) {
  const auto found = core::fingerprintOf(document);
  return found ? toQString(*found) : QString();
}

/// Whether `saved` is not what its last saving left in the file.
bool isAltered(const core::Document& saved) {
  return !saved.history.empty() && fingerprintText(saved) != toQString(saved.history.back().fingerprint);
}

}  // namespace

RecordPage::RecordPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("recordPage");
  auto* splitter = new QSplitter(Qt::Vertical);
  splitter->setChildrenCollapsible(false);
  splitter->addWidget(makeRemarks());
  splitter->addWidget(makeHistory());
  auto* column = new QVBoxLayout(this);
  column->addWidget(makeStanding());
  column->addWidget(splitter, 1);
  connect(&session, &Session::changed, this, &RecordPage::refresh);
  connect(&m_worker, &QFutureWatcher<Prints>::finished, this, &RecordPage::takeFingerprint);
}

RecordPage::~RecordPage() { m_worker.waitForFinished(); }

QWidget* RecordPage::makeStanding() {
  auto* group = new QGroupBox(tr("Review"));
  m_state = plainLabel("recordState");
  QFont bold = m_state->font();
  bold.setBold(true);
  m_state->setFont(bold);
  m_warning = plainLabel("recordWarning");
  auto* buttons = new QHBoxLayout;
  m_submit = addButton(buttons, "recordSubmitButton", tr("Submit for review…"));
  m_accept = addButton(buttons, "recordAcceptButton", tr("Accept…"));
  m_return = addButton(buttons, "recordReturnButton", tr("Return with a remark…"));
  m_withdraw = addButton(buttons, "recordWithdrawButton", tr("Withdraw…"));
  buttons->addStretch();
  auto* print = new QHBoxLayout;
  auto* title = new QLabel(tr("Fingerprint"));
  m_short = plainLabel("recordFingerprintShort");
  m_short->setWordWrap(false);
  m_full = plainLabel("recordFingerprint");
  m_full->setWordWrap(false);
  m_full->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  m_full->setAccessibleName(tr("Fingerprint in full"));
  // It may be cut at the window's edge rather than make the window wider; the button copies all of it.
  m_full->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  print->addWidget(title);
  print->addWidget(m_short);
  m_copy = addButton(print, "recordCopy", tr("Copy in full"));
  print->addWidget(m_full, 1);
  auto* column = new QVBoxLayout(group);
  column->addWidget(m_state);
  column->addWidget(m_warning);
  column->addLayout(buttons);
  column->addLayout(print);
  connect(m_submit, &QPushButton::clicked, this, &RecordPage::submit);
  connect(m_accept, &QPushButton::clicked, this, &RecordPage::accept);
  connect(m_return, &QPushButton::clicked, this, &RecordPage::giveBack);
  connect(m_withdraw, &QPushButton::clicked, this, &RecordPage::withdraw);
  connect(m_copy, &QPushButton::clicked, this, [this] { QApplication::clipboard()->setText(m_fingerprint); });
  return group;
}

QWidget* RecordPage::makeRemarks() {
  auto* group = new QGroupBox(tr("Remarks"));
  m_remarks = makeTable(
      "recordRemarks", tr("Remarks of reviewers"),
      {tr("Channel"), tr("Check"), tr("Step"), tr("By"), tr("When"), tr("Remark"), tr("State")}, Text);
  m_noRemarks = plainLabel("recordNoRemarks");
  m_noRemarks->setText(tr("No remarks. Choose a step of a check and add one to it."));
  auto* buttons = new QHBoxLayout;
  connect(addButton(buttons, "remarkAdd", tr("Add to the chosen step…")), &QPushButton::clicked, this,
          &RecordPage::addRemark);
  m_settle = addButton(buttons, "remarkSettle", tr("Settle"));
  m_edit = addButton(buttons, "remarkEdit", tr("Edit…"));
  m_delete = addButton(buttons, "remarkDelete", tr("Delete"));
  m_go = addButton(buttons, "remarkGo", tr("Show in the views"));
  buttons->addStretch();
  auto* column = new QVBoxLayout(group);
  column->addWidget(m_noRemarks);
  column->addWidget(m_remarks, 1);
  column->addLayout(buttons);
  connect(m_settle, &QPushButton::clicked, this, &RecordPage::settleRemark);
  connect(m_edit, &QPushButton::clicked, this, &RecordPage::editRemark);
  connect(m_delete, &QPushButton::clicked, this, &RecordPage::deleteRemark);
  connect(m_go, &QPushButton::clicked, this, &RecordPage::goToRemark);
  connect(m_remarks, &QTableWidget::cellDoubleClicked, this, &RecordPage::goToRemark);
  connect(m_remarks, &QTableWidget::itemSelectionChanged, this, &RecordPage::showStanding);
  return group;
}

QWidget* RecordPage::makeHistory() {
  auto* group = new QGroupBox(tr("History"));
  m_history = makeTable("recordHistory", tr("What each saving changed"),
                        {tr("Saved"), tr("By"), tr("Changes"), tr("Fingerprint")}, Changes);
  m_history->setWordWrap(false);
  m_noHistory = plainLabel("recordNoHistory");
  m_details = new QPlainTextEdit;
  m_details->setObjectName("recordDetails");
  m_details->setAccessibleName(tr("All changes of the chosen entry"));
  m_details->setReadOnly(true);
  auto* both = new QSplitter(Qt::Horizontal);
  both->setChildrenCollapsible(false);
  both->addWidget(m_history);
  both->addWidget(m_details);
  both->setStretchFactor(0, 3);
  both->setStretchFactor(1, 2);
  auto* column = new QVBoxLayout(group);
  column->addWidget(m_noHistory);
  column->addWidget(both, 1);
  connect(m_history, &QTableWidget::itemSelectionChanged, this, &RecordPage::showRevision);
  return group;
}

void RecordPage::act(core::Stage stage, const QString& title, const QString& caution, const QString& action) {
  std::optional<core::Document> next;
  const auto objection = [&](const QString& person, const QString& words) {
    auto made =
        core::withStage(m_session.document(), stage, person.toStdString(), timeNow(), words.toStdString());
    if (!made) return toText(made.error());
    next = *std::move(made);
    return QString();
  };
  ActDialog dialog({title, caution, action, {}, stage == core::Stage::Returned, objection}, this);
  if (dialog.exec() != QDialog::Accepted) return;
  rememberPerson(dialog.person());
  m_session.edit(title, *std::move(next));
  emit said(toQString(core::standingOf(m_session.document()).sentence));
}

/// "2 channels fail: TP-02, LC-1. " Empty when none does.
QString RecordPage::failures() const {
  constexpr qsizetype mostNames = 5;
  QStringList names;
  for (std::size_t k = 0; k < m_session.document().channels.size(); ++k)
    if (m_session.evaluation(k).verdict == core::Verdict::Fail)
      names << toQString(m_session.document().channels[k]->name);
  if (names.isEmpty()) return {};
  const auto count = static_cast<std::size_t>(names.size());
  if (names.size() > mostNames) names = names.first(mostNames) << "…";
  return toQString(core::sayCount(count, "{n} channel fails: {1}.", "{n} channels fail: {1}.",
                                  {names.join(", ").toStdString()})) +
         " ";
}

void RecordPage::submit() {
  act(core::Stage::Submitted, tr("Submit for review"),
      tr("You say that the record is complete. Every open check with a reading is closed, so that it keeps "
         "the "
         "set-up it was judged by. Somebody else reviews it."),
      tr("Submit"));
}

void RecordPage::accept() {
  act(core::Stage::Accepted, tr("Accept the record"),
      failures() +
          tr("You stand for this record as it is now; any later change ends that. A passed shunt check says "
             "nothing about gauge bond, gauge factor, alignment or the strength of the article, and this "
             "entry "
             "is "
             "no signature: decisions stay with the responsible person."),
      tr("Accept"));
}

void RecordPage::giveBack() {
  act(core::Stage::Returned, tr("Return the record"),
      tr("Say what has to be changed or found out before it can be accepted."), tr("Return"));
}

void RecordPage::withdraw() {
  act(core::Stage::Draft, tr("Withdraw the record"),
      tr("The record is a draft again, and can be submitted anew. Checks that were closed stay closed."),
      tr("Withdraw"));
}

void RecordPage::addRemark() {
  const core::Check* check = m_session.check();
  if (!check) return emit refused(tr("A remark belongs to a check: choose one first."));
  if (check->remarks.size() >= core::mostRemarks)
    return emit refused(tr("The check has %1 remarks, more cannot be kept.").arg(core::mostRemarks));
  const auto step = m_session.selection().step;
  const QString channel = toQString(m_session.channel()->name), name = toQString(check->name);
  const QString place = step
                            ? tr("To step %1 of %2, check %3.").arg(QString::number(*step + 1), channel, name)
                            : tr("To %1, check %2, as a whole.").arg(channel, name);
  ActDialog dialog({tr("Add remark"), place, tr("Add"), {}, true}, this);
  if (dialog.exec() != QDialog::Accepted) return;
  rememberPerson(dialog.person());
  core::Channel next = *m_session.channel();
  next.checks[*m_session.selection().check].remarks.push_back(
      {step, dialog.person().toStdString(), timeNow(), dialog.words().toStdString(), false});
  m_session.editChannel(tr("Add remark"), std::move(next));
}

void RecordPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void RecordPage::refresh() {
  if (!isVisible()) return;
  askFingerprint();
  showRemarks();
  showHistory();
  showStanding();
}

void RecordPage::askFingerprint() {
  if (m_known == m_session.document() && !m_fingerprint.isEmpty()) return;
  m_fingerprint.clear();
  if (m_worker.isRunning()) return;  // asks again when it is through
  m_asked = m_session.document();
  m_worker.setFuture(QtConcurrent::run([document = m_asked, saved = m_session.saved()] {
    return Prints{fingerprintText(document), isAltered(saved)};
  }));
}

void RecordPage::takeFingerprint() {
  if (!isVisible()) return;
  if (m_asked == m_session.document()) {
    m_known = m_asked;
    m_fingerprint = m_worker.result().fingerprint;
    m_isAltered = m_worker.result().isAltered;
  } else {
    askFingerprint();
  }
  showStanding();
}

void RecordPage::showStanding() {
  const bool known = !m_fingerprint.isEmpty();
  m_short->setText(known ? toQString(core::shortFingerprint(m_fingerprint.toStdString()))
                         : tr("being worked out"));
  m_full->setText(m_fingerprint);
  m_copy->setEnabled(known);
  const core::Document& document = m_session.document();
  if (known || document.signOff.acts.empty()) {
    const core::Standing standing = core::standingOf(document, m_fingerprint.toStdString());
    const bool stood = standing.stage == core::Stage::Submitted || standing.stage == core::Stage::Accepted;
    m_state->setText(signOf(standing.stage, standing.changedSince) + toQString(standing.sentence));
    showWarnings(stood && standing.changedSince);
    m_submit->setEnabled(!stood || standing.changedSince);
    m_accept->setEnabled(standing.stage == core::Stage::Submitted && !standing.changedSince);
    m_return->setEnabled(stood);
    m_withdraw->setEnabled(standing.stage == core::Stage::Submitted);
  }
  const RemarkPlace* place = chosenRemark();
  for (QPushButton* button : {m_settle, m_edit, m_delete, m_go}) button->setEnabled(place);
  m_settle->setText(place && remarkAt(*place).settled ? tr("Open again") : tr("Settle"));
}

void RecordPage::showWarnings(bool hasChanged) {
  QStringList warnings;
  if (hasChanged)
    warnings << tr(
        "The content is no longer what it was then. What was printed then has another fingerprint.");
  if (m_isAltered)
    warnings << tr(
        "⚠ The file was altered outside of the program since its last saving: its content is not what the "
        "newest "
        "entry of the history says, and nothing tells what was changed.");
  for (const std::size_t entry : core::revisionsAfterAlteration(m_session.document().history))
    warnings << tr("⚠ Before entry %1 of the history, counted from the oldest, the file was altered outside "
                   "of the "
                   "program, and nothing tells what was changed.")
                    .arg(entry + 1);
  m_warning->setVisible(!warnings.isEmpty());
  m_warning->setText(warnings.join('\n'));
}

void RecordPage::showRemarks() {
  const int chosen = m_remarks->currentRow();
  m_places.clear();
  const auto& channels = m_session.document().channels;
  for (std::size_t c = 0; c < channels.size(); ++c)
    for (std::size_t k = 0; k < channels[c]->checks.size(); ++k)
      for (std::size_t r = 0; r < channels[c]->checks[k].remarks.size(); ++r) m_places.push_back({c, k, r});
  m_remarks->setRowCount(static_cast<int>(m_places.size()));
  for (std::size_t row = 0; row < m_places.size(); ++row) {
    const RemarkPlace& place = m_places[row];
    const core::Remark& remark = remarkAt(place);
    putRow(m_remarks, static_cast<int>(row),
           {toQString(channels[place.channel]->name),
            toQString(channels[place.channel]->checks[place.check].name),
            remark.step ? QString::number(*remark.step + 1) : tr("all"), toQString(remark.person),
            localTime(remark.time), toQString(remark.text), remark.settled ? tr("✓ settled") : tr("○ open")});
  }
  m_noRemarks->setVisible(m_places.empty());
  if (chosen >= 0 && chosen < m_remarks->rowCount()) m_remarks->selectRow(chosen);
}

void RecordPage::showHistory() {
  const auto& history = m_session.document().history;
  m_history->setRowCount(static_cast<int>(history.size()));
  for (std::size_t k = 0; k < history.size(); ++k) {
    const core::Revision& revision = history[history.size() - 1 - k];  // newest first
    const std::size_t others = revision.changes.size() + revision.more;
    QString changes = revision.changes.empty() ? QString() : toQString(revision.changes.front());
    if (others > 1) changes = tr("%1 and %n more", nullptr, static_cast<int>(others - 1)).arg(changes);
    putRow(m_history, static_cast<int>(k),
           {localTime(revision.time), toQString(revision.person), changes,
            toQString(core::shortFingerprint(revision.fingerprint)).left(9)});
  }
  const auto broken = core::brokenRevision(history);
  m_noHistory->setVisible(history.empty() || broken);
  m_noHistory->setText(
      broken ? tr("⚠ The history does not hold together: entry %1 from the beginning was altered, or one "
                  "before it was altered, removed or put in.")
                   .arg(*broken + 1)
             : tr("No history yet: it begins with the next saving."));
  showRevision();
}

void RecordPage::showRevision() {
  const auto& history = m_session.document().history;
  const int row = m_history->currentRow();
  if (row < 0 || static_cast<std::size_t>(row) >= history.size()) {
    m_details->setPlainText(history.empty() ? QString() : tr("Choose an entry to see all its changes."));
    return;
  }
  const core::Revision& revision = history[history.size() - 1 - static_cast<std::size_t>(row)];
  QStringList lines;
  for (const std::string& change : revision.changes) lines << "• " + toQString(change);
  if (revision.more > 0)
    lines << tr("and %n more that are not told", nullptr, static_cast<int>(revision.more));
  lines << QString() << tr("Program %1").arg(toQString(revision.program))
        << tr("Fingerprint %1").arg(toQString(revision.fingerprint));
  m_details->setPlainText(lines.join('\n'));
}

const RecordPage::RemarkPlace* RecordPage::chosenRemark() const {
  const int row = m_remarks->selectionModel()->hasSelection() ? m_remarks->currentRow() : -1;
  return row >= 0 && static_cast<std::size_t>(row) < m_places.size()
             ? &m_places[static_cast<std::size_t>(row)]
             : nullptr;
}

void RecordPage::showRemark(std::size_t channel, std::size_t check, std::size_t remark) {
  for (std::size_t row = 0; row < m_places.size(); ++row)
    if (const RemarkPlace& place = m_places[row];
        place.channel == channel && place.check == check && place.remark == remark)
      m_remarks->setCurrentCell(static_cast<int>(row), 0);
}

const core::Remark& RecordPage::remarkAt(const RemarkPlace& place) const {
  return m_session.document().channels[place.channel]->checks[place.check].remarks[place.remark];
}

void RecordPage::changeRemark(const QString& label, const RemarkPlace& place,
                              const std::function<void(std::vector<core::Remark>&, std::size_t)>& change) {
  core::Channel next = *m_session.document().channels[place.channel];
  change(next.checks[place.check].remarks, place.remark);
  m_session.edit(label, core::withChannel(m_session.document(), place.channel, std::move(next)));
}

void RecordPage::settleRemark() {
  const RemarkPlace* place = chosenRemark();
  if (!place) return;
  const bool settled = !remarkAt(*place).settled;
  changeRemark(settled ? tr("Settle remark") : tr("Open remark again"), RemarkPlace(*place),
               [settled](auto& remarks, std::size_t k) { remarks[k].settled = settled; });
}

void RecordPage::editRemark() {
  const RemarkPlace* place = chosenRemark();
  if (!place) return;
  const core::Remark& remark = remarkAt(*place);
  if (toQString(remark.person) != personName())
    return emit refused(
        tr("%1 wrote that remark: add one of your own instead.").arg(toQString(remark.person)));
  ActDialog dialog(
      {tr("Edit remark"), tr("The time of the remark stays."), tr("Change"), toQString(remark.text), true},
      this);
  if (dialog.exec() != QDialog::Accepted) return;
  const std::string words = dialog.words().toStdString();
  changeRemark(tr("Edit remark"), RemarkPlace(*place),
               [words](auto& remarks, std::size_t k) { remarks[k].text = words; });
}

void RecordPage::deleteRemark() {
  const RemarkPlace* place = chosenRemark();
  if (!place) return;
  if (const QString person = toQString(remarkAt(*place).person); person != personName())
    return emit refused(tr("%1 wrote that remark: settle it instead.").arg(person));
  changeRemark(tr("Delete remark"), RemarkPlace(*place), [](auto& remarks, std::size_t k) {
    remarks.erase(remarks.begin() + static_cast<std::ptrdiff_t>(k));
  });
}

void RecordPage::goToRemark() {
  const RemarkPlace* chosen = chosenRemark();
  if (!chosen) return;
  const RemarkPlace place = *chosen;
  const auto step = remarkAt(place).step;
  m_session.selectChannel(place.channel);
  m_session.selectCheck(place.check);
  if (step) m_session.selectStep(*step);
  emit viewsWanted();
}

}  // namespace ui
