// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_dialog.h"

#include <QDate>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "core/document/edits.h"
#include "core/units/day_words.h"
#include "ui/as_typed.h"
#include "ui/parts.h"
#include "ui/recording/findings.h"
#include "ui/recording/found_pane.h"
#include "ui/recording/layout_pane.h"
#include "ui/recording/recording_reference.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr int wholeProgress = 1000;

QString countText(std::size_t count) { return QLocale().toString(static_cast<qulonglong>(count)); }

/// How the last recording of the document was to be read: that of the latest check by date, of the last one
/// in the document among equals.
std::string latestReadAs(const core::Document& document) {
  const core::Check* latest = nullptr;
  for (const auto& channel : document.channels)
    for (const core::Check& check : channel->checks)
      if (check.recording && (!latest || check.date >= latest->date)) latest = &check;
  return latest ? latest->recording->readAs : std::string();
}

core::LayoutChoices rememberedChoices(const core::Document& document) {
  const auto choices = core::choicesFromText(latestReadAs(document));
  return choices ? *choices : core::LayoutChoices{};
}

QPushButton* button(const char* name, const QString& text) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setAutoDefault(false);
  return button;
}

/// A part of the page under its heading.
QWidget* part(const QString& heading, QWidget* content) {
  auto* widget = new QWidget;
  auto* column = new QVBoxLayout(widget);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(4);
  auto* label = embolden(new QLabel(heading));
  column->addWidget(label);
  column->addWidget(content, 1);
  return widget;
}

}  // namespace

RecordingDialog::RecordingDialog(Session& session, const QString& documentPath, QWidget* parent,
                                 RecordingStore* store)
    : QDialog(parent), m_session(session), m_documentPath(documentPath), m_store(store) {
  setObjectName("recordingDialog");
  setWindowTitle(tr("Readings from a recording"));
  resize(1100, 720);
  m_message = plainLabel("recordingMessage");
  m_parts = new QSplitter(Qt::Vertical);
  m_parts->setObjectName("recordingParts");
  m_parts->setChildrenCollapsible(false);
  m_parts->addWidget(readPart());
  m_parts->addWidget(foundPart());
  m_parts->setSizes({200, 400});
  m_parts->setStretchFactor(1, 1);
  auto* column = new QVBoxLayout(this);
  column->addWidget(filePart());
  column->addWidget(m_parts, 1);
  column->addWidget(m_message);
  column->addLayout(bottomRow());
  connectJob();
  connectParts();
  showRunning();
}

RecordingDialog::~RecordingDialog() = default;

QWidget* RecordingDialog::filePart() {
  auto* choose = button("chooseRecording", tr("Choose &file…"));
  connect(choose, &QPushButton::clicked, this, &RecordingDialog::chooseFile);
  m_again = button("readAgain", tr("Read &again"));
  m_again->setToolTip(tr("The file as it is now, with the same choices"));
  connect(m_again, &QPushButton::clicked, this, &RecordingDialog::start);
  m_file = plainLabel("recordingFile");
  m_file->setText(tr("no recording chosen"));
  auto* fileRow = new QHBoxLayout;
  fileRow->addWidget(choose);
  fileRow->addWidget(m_file, 1);
  fileRow->addWidget(m_again);
  auto* content = new QWidget;
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(0, 0, 0, 0);
  column->addLayout(fileRow);
  m_fileError = plainLabel("recordingFileError");
  m_fileError->setVisible(false);
  column->addWidget(m_fileError);
  column->addLayout(checkRow());
  m_nameNote = plainLabel("recordingNameNote");
  m_nameNote->setVisible(false);
  column->addWidget(m_nameNote);
  return part(tr("File and check"), content);
}

QLayout* RecordingDialog::checkRow() {
  auto* row = new QHBoxLayout;
  const auto field = [&](const char* name, const QString& label, const QString& text, int stretch) {
    auto* edit = new QLineEdit(text);
    edit->setObjectName(name);
    edit->setAccessibleName(label);
    auto* words = new QLabel(label);
    words->setBuddy(edit);
    row->addWidget(words);
    row->addWidget(edit, stretch);
    return edit;
  };
  m_name = field("recordingCheckName", tr("Check"), toQString(core::usualCheckName(*m_session.channel())), 2);
  m_date = field("recordingDate", tr("Date"), QDate::currentDate().toString(Qt::ISODate), 1);
  m_person = field("recordingPerson", tr("Person"), {}, 2);
  m_person->setPlaceholderText(tr("who ran it"));
  return row;
}

QWidget* RecordingDialog::readPart() {
  m_layout = new LayoutPane;
  return part(tr("How the file is read"), m_layout);
}

QWidget* RecordingDialog::foundPart() {
  m_found = new FoundPane;
  return part(tr("What was found"), m_found);
}

QLayout* RecordingDialog::bottomRow() {
  m_progress = new QProgressBar;
  m_progress->setObjectName("recordingProgress");
  m_progress->setAccessibleName(tr("Progress of reading"));
  m_progress->setRange(0, wholeProgress);
  m_progress->setTextVisible(false);
  m_cancelReading = button("cancelReading", tr("&Stop reading"));
  connect(m_cancelReading, &QPushButton::clicked, &m_job, &RecordingJob::cancel);
  m_take = button("takeReadings", tr("&Take readings"));
  auto* close = button("closeRecording", tr("Cancel"));
  connect(m_take, &QPushButton::clicked, this, &RecordingDialog::accept);
  connect(close, &QPushButton::clicked, this, &RecordingDialog::reject);
  auto* row = new QHBoxLayout;
  row->addWidget(m_cancelReading);
  row->addWidget(m_progress, 1);
  row->addStretch();
  row->addWidget(m_take);
  row->addWidget(close);
  return row;
}

void RecordingDialog::connectJob() {
  connect(&m_job, &RecordingJob::progressed, m_progress, &QProgressBar::setValue);
  connect(&m_job, &RecordingJob::cancelled, this, &RecordingDialog::showCancelled);
  connect(&m_job, &RecordingJob::wasRead, this, &RecordingDialog::showRead);
  connect(&m_job, &RecordingJob::foundAgain, m_found, &FoundPane::showFind);
  connect(&m_job, &RecordingJob::looked, this, [this](const RecordingJob::Look& look) {
    m_layout->showLook(look);
    if (look) return;
    showFileError(toText(look.error()));
    showRunning();
    emit readingDone();
  });
  connect(&m_job, &RecordingJob::finished, this, [this] {
    m_found->drawSignal();
    if (m_takesWhenFinished) accept();
  });
}

void RecordingDialog::connectParts() {
  connect(m_layout, &LayoutPane::chosen, this, &RecordingDialog::start);
  connect(m_layout, &LayoutPane::opened, this, [this](bool isOpen) {
    const int height = m_parts->height();
    const int above = isOpen ? height * 11 / 20 : height / 3;
    m_parts->setSizes({above, height - above});
  });
  connect(m_found, &FoundPane::columnChosen, this,
          [this](std::size_t channel, std::optional<std::size_t> column) {
            const auto& columns = (*m_job.result()->open)->recording.columns;
            m_columns[channel] = column ? std::optional(columns[*column].name) : std::nullopt;
            if (column) m_job.findAgain({channel, *column});
          });
  connect(m_found, &FoundPane::decided, this, [this] {
    say(summary());
    showTake();
  });
  connect(m_name, &QLineEdit::textEdited, this, &RecordingDialog::showName);
}

void RecordingDialog::chooseFile() {
  const QString folder = QFileInfo(m_path.isEmpty() ? m_documentPath : m_path).path();
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Recording"), folder,
      tr("Recordings (*.csv *.txt *.tsv *.dat *.asc *.wav *.npy *.mat *.h5 *.hdf5 *.uff *.unv);;All files "
         "(*)"));
  if (!path.isEmpty()) readFile(path);
}

void RecordingDialog::readFile(const QString& path) {
  m_path = path;
  m_columns.clear();
  m_file->setText(QDir::toNativeSeparators(path));
  m_layout->begin(rememberedChoices(m_session.document()));
  start();
}

void RecordingDialog::start() {
  m_takesWhenFinished = false;
  showFileError({});
  m_found->clear();
  m_job.start({m_path, m_layout->choices(), m_session.document(), m_columns});
  say(tr("Reading…"));
  showRunning();
}

void RecordingDialog::showCancelled() {
  say(tr("Reading was stopped: nothing is taken from this file. \"Read again\" starts anew."));
  showRunning();
}

void RecordingDialog::showRead() {
  const auto& read = m_job.result();
  if (read->open) {
    m_layout->showRead((*read->open)->recording);
    m_found->showRead(m_job.task().document, read, *m_session.selection().channel);
    showDate();
    say(summary());
  } else {
    showFileError(toText(read->open.error()));
  }
  showRunning();
  emit readingDone();
}

/// The day that the recording says it began, else the day of the file; one that was typed stays.
void RecordingDialog::showDate() {
  if (m_date->isModified()) return;
  const std::string& started = (*m_job.result()->open)->recording.startedAt;
  const QString day = toQString(started).left(10);
  if (QDate::fromString(day, Qt::ISODate).isValid())
    m_date->setText(day);
  else if (const QDateTime& changed = m_job.result()->stamp.changed; changed.isValid())
    m_date->setText(changed.date().toString(Qt::ISODate));
}

QString RecordingDialog::summary() const {
  const core::Recording& recording = (*m_job.result()->open)->recording;
  QStringList sentences;
  sentences << tr("Samples: %1 in %2 columns. Lines read: %3, skipped: %4; cells without a number: %5.")
                   .arg(countText(recording.time.size()), countText(recording.columns.size()),
                        countText(recording.linesRead), countText(recording.linesSkipped),
                        countText(recording.cellsMissing));
  std::size_t withColumn = 0, toDecide = 0;
  for (const Finding& finding : m_found->findings()) {
    withColumn += finding.column ? 1 : 0;
    toDecide += finding.column && finding.find && !finding.isTicked ? 1 : 0;
  }
  const std::size_t ticked = m_found->toTake().size();
  if (withColumn == 0)
    sentences << tr("No column is named like a channel: choose a channel's column in the table.");
  else
    sentences << tr("Channels with a column: %1, ticked: %2.").arg(withColumn).arg(ticked);
  if (toDecide > 0) sentences << tr("Where a channel is not ticked, its row says why.");
  return sentences.join(" ");
}

void RecordingDialog::showRunning() {
  const bool isReading = m_job.isReading();
  m_progress->setVisible(isReading);
  m_cancelReading->setVisible(isReading);
  m_again->setEnabled(!m_path.isEmpty());
  if (isReading) m_progress->setValue(0);
  showTake();
}

void RecordingDialog::showTake() {
  const QString reason = whyNothingToTake();
  m_take->setEnabled(reason.isEmpty() && !m_takesWhenFinished);
  m_take->setToolTip(asTyped(reason));
  showName();
}

/// Empty when there is something to take.
QString RecordingDialog::whyNothingToTake() const {
  if (m_path.isEmpty()) return tr("Choose a recording first.");
  if (m_job.isReading()) return tr("The recording is being read.");
  if (!m_found->toTake().empty()) return {};
  const core::Document& document = m_job.task().document;
  for (const Finding& finding : m_found->findings())
    if (requireTakable(finding, *document.channels[finding.channel]))
      return tr("Tick at least one channel whose levels match its plan.");
  return tr("No channel has levels that can be taken.");
}

QStringList RecordingDialog::channelsLeftOut() const {
  const auto list = m_found->toTake();
  const std::set<const Finding*> taken(list.begin(), list.end());
  QStringList names;
  for (const Finding& finding : m_found->findings())
    if (finding.column && !taken.contains(&finding))
      names << toQString(m_job.task().document.channels[finding.channel]->name);
  return names;
}

/// Whether one of the channels to be taken has a check of this name; which do.
bool RecordingDialog::isCheckTaken(const std::string& name, QStringList* channels) const {
  bool some = false;
  const auto& now = m_session.document().channels;
  for (const Finding* finding : m_found->toTake()) {
    if (finding->channel >= now.size()) continue;
    const core::Channel& channel = *now[finding->channel];
    if (std::none_of(channel.checks.begin(), channel.checks.end(),
                     [&](const core::Check& check) { return check.name == name; }))
      continue;
    some = true;
    if (channels) *channels << toQString(channel.name);
  }
  return some;
}

/// One name for all channels, since the checks of one recording belong together.
std::string RecordingDialog::freeCheckName(const std::string& wanted) const {
  std::string name = wanted;
  for (int number = 2; isCheckTaken(name); ++number) name = wanted + " (" + std::to_string(number) + ")";
  return name;
}

/// The usual name of one of the channels that is free in all; with none, that of the chosen channel.
QString RecordingDialog::usualName() const {
  const auto& channels = m_session.document().channels;
  const std::string usual = core::usualCheckName(*m_session.channel());
  if (!isCheckTaken(usual)) return toQString(usual);
  for (const Finding* finding : m_found->toTake()) {
    if (finding->channel >= channels.size()) continue;
    const std::string name = core::usualCheckName(*channels[finding->channel]);
    if (!isCheckTaken(name)) return toQString(name);
  }
  return toQString(freeCheckName(usual));
}

/// Proposes a name until one is typed, and says when the typed one is taken.
void RecordingDialog::showName() {
  if (!m_name->isModified() && m_session.channel()) m_name->setText(usualName());
  const std::string name = m_name->text().trimmed().toStdString();
  QStringList having;
  const bool isTaken = isCheckTaken(name, &having);
  const QString who =
      having.size() > 3 ? tr("%n channel(s)", nullptr, int(having.size())) : having.join(", ");
  if (isTaken)
    m_nameNote->setText((having.size() == 1
                             ? tr("%1 already has a check called %2: the checks will be called %3.")
                             : tr("%1 already have a check called %2: the checks will be called %3."))
                            .arg(who, toQString(name), toQString(freeCheckName(name))));
  setTextColour(m_nameNote, coloursFor(palette()).cannotTell);
  m_nameNote->setVisible(isTaken);
}

/// Under the file's name; empty: there is none.
void RecordingDialog::showFileError(const QString& sentence) {
  m_fileError->setText(sentence);
  setTextColour(m_fileError, coloursFor(palette()).fail);
  m_fileError->setVisible(!sentence.isEmpty());
  if (!sentence.isEmpty()) say({});
}

/// The channel as it is now with a check of these readings.
core::Result<core::Channel> RecordingDialog::channelWith(const Finding& finding,
                                                         const std::string& checkName) const {
  const core::Channel& then = *m_job.task().document.channels[finding.channel];
  const auto& channels = m_session.document().channels;
  // Checks may have come meanwhile; another plan would take the readings for other steps.
  if (finding.channel >= channels.size() || channels[finding.channel]->name != then.name ||
      channels[finding.channel]->setup != then.setup)
    return core::Error{then.name, core::say("the channel was changed since the recording was read"),
                       core::say("Read it again")};
  core::Check check;
  check.name = checkName;
  const auto day = core::dayFromWords(m_date->text().toStdString());
  if (!day) return day.error();
  check.date = *day ? core::dateText(**day) : std::string();
  check.person = m_person->text().trimmed().toStdString();
  check.recording = referenceTo(**m_job.result()->open, *m_job.sha256(), m_documentPath);
  const bool isByHand = !finding.byHand.empty();
  return core::withCheckTaken(*channels[finding.channel], decided(finding),
                              {finding.run, isByHand ? 0 : *finding.reading},
                              (*m_job.result()->open)->recording, std::move(check));
}

core::Result<core::Document> RecordingDialog::withTaken() const {
  core::Document next = m_session.document();
  const std::string name = freeCheckName(m_name->text().trimmed().toStdString());
  for (const Finding* finding : m_found->toTake()) {
    auto channel = channelWith(*finding, name);
    if (!channel) return channel.error();
    next = core::withChannel(std::move(next), finding->channel, *std::move(channel));
  }
  return next;
}

void RecordingDialog::accept() {
  m_takesWhenFinished = false;
  if (!m_take->isEnabled() && !m_job.isFinished()) return;
  if (m_found->toTake().empty())
    return say(tr("Tick at least one channel whose levels match its plan."), true);
  if (const auto day = core::dayFromWords(m_date->text().toStdString()); !day) {
    m_date->setFocus();
    return say(toText(day.error()), true);
  }
  if (!m_job.isFinished()) {
    m_takesWhenFinished = true;
    say(tr("Working out the hash by which the file is known again; then the readings are taken."));
    return showTake();
  }
  showTake();
  if (!m_job.sha256()) return say(toText(m_job.sha256().error()), true);
  auto next = withTaken();
  if (!next) return say(toText(next.error()), true);
  m_taken = m_found->toTake().size();
  m_leftOut = channelsLeftOut();
  if (m_store) m_store->put(*m_job.result()->open);
  m_session.edit(tr("Take readings from recording"), *std::move(next));
  if (m_session.channel() && !m_session.channel()->checks.empty())
    m_session.selectCheck(m_session.channel()->checks.size() - 1);
  QDialog::accept();
}

void RecordingDialog::reject() {
  m_takesWhenFinished = false;
  m_job.cancel();
  QDialog::reject();
}

/// Escape ends the reading first and the dialog then.
void RecordingDialog::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && m_job.isReading()) return m_job.cancel();
  QDialog::keyPressEvent(event);
}

void RecordingDialog::say(const QString& sentence, bool isWrong) {
  m_message->setText(sentence);
  setTextColour(m_message, isWrong ? coloursFor(palette()).fail : palette().color(QPalette::WindowText));
}

}  // namespace ui
