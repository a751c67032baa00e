// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/recording_dialog.h"

#include <QComboBox>
#include <QDate>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <QtConcurrentRun>
#include <algorithm>

#include "core/assess/match_levels.h"
#include "core/document/edits.h"
#include "core/recording/text/delimited_text.h"
#include "ui/quantity_edit.h"
#include "ui/safe_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

struct Wanted {
  std::size_t channel;
  std::size_t column;
};

std::vector<Wanted> columnsByName(const core::Document& document, const core::Recording& recording) {
  std::vector<Wanted> wanted;
  for (std::size_t channel = 0; channel < document.channels.size(); ++channel)
    for (std::size_t column = 0; column < recording.columns.size(); ++column)
      if (recording.columns[column].name == document.channels[channel]->name)
        wanted.push_back({channel, column});
  return wanted;
}

QTableWidgetItem* cell(const QString& text, bool checkable = false) {
  auto* item = new QTableWidgetItem(text);
  item->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled |
                 (checkable ? Qt::ItemIsUserCheckable : Qt::NoItemFlags));
  return item;
}

QTableWidget* table(const QString& name, const QString& accessible, const QStringList& headers) {
  auto* widget = new QTableWidget(0, static_cast<int>(headers.size()));
  widget->setObjectName(name);
  widget->setAccessibleName(accessible);
  widget->setHorizontalHeaderLabels(headers);
  widget->verticalHeader()->setVisible(false);
  widget->verticalHeader()->setDefaultSectionSize(widget->fontMetrics().height() + 9);
  widget->setSelectionBehavior(QAbstractItemView::SelectRows);
  widget->setSelectionMode(QAbstractItemView::SingleSelection);
  widget->horizontalHeader()->setStretchLastSection(true);
  return widget;
}

}  // namespace

RecordingDialog::RecordingDialog(Session& session, const QString& documentPath, QWidget* parent)
    : QDialog(parent), m_session(session), m_documentPath(documentPath) {
  setWindowTitle(tr("Readings from a recording"));
  resize(860, 560);
  m_progress = new QProgressBar;
  m_progress->setRange(0, 100);
  m_progress->setVisible(false);
  m_channels = table("recordingChannels", tr("Channels found"),
                     {tr("Channel"), tr("Column"), tr("Levels"), tr("State")});
  m_levels =
      table("recordingLevels", tr("Levels found"),
            {tr("Step"), tr("From [s]"), tr("To [s]"), tr("Mean"), tr("Std. uncertainty"), tr("Samples")});
  m_message = new QLabel;
  m_message->setObjectName("recordingMessage");
  m_message->setTextFormat(Qt::PlainText);
  m_message->setWordWrap(true);

  auto* layout = new QVBoxLayout(this);
  layout->addLayout(fileForm());
  layout->addWidget(m_progress);
  layout->addWidget(m_channels, 2);
  layout->addWidget(new QLabel(tr("Levels of the chosen row; untick what is no step of the plan")));
  layout->addWidget(m_levels, 3);
  layout->addWidget(m_message);
  layout->addWidget(buttons());
  followTables();
  followReading();
}

QFormLayout* RecordingDialog::fileForm() {
  m_name = new QLineEdit(toQString(core::usualCheckName(*m_session.channel())));
  m_name->setObjectName("recordingCheckName");
  m_date = new QLineEdit(QDate::currentDate().toString(Qt::ISODate));
  m_date->setObjectName("recordingDate");
  auto* choose = new QPushButton(tr("Choose file…"));
  choose->setObjectName("chooseRecording");
  connect(choose, &QPushButton::clicked, this, &RecordingDialog::chooseFile);
  m_file = new QLabel(tr("no recording chosen"));
  m_file->setTextFormat(Qt::PlainText);
  auto* fileRow = new QHBoxLayout;
  fileRow->addWidget(choose);
  fileRow->addWidget(m_file, 1);
  m_column = new QComboBox;
  m_column->setObjectName("recordingColumn");
  m_column->setAccessibleName(tr("Column for the chosen channel"));
  connect(m_column, &QComboBox::activated, this,
          [this](int row) { startReading(static_cast<std::size_t>(row)); });
  auto* columnLabel = new QLabel(tr("Column for %1").arg(toQString(m_session.channel()->name)));
  columnLabel->setTextFormat(Qt::PlainText);

  auto* form = new QFormLayout;
  form->addRow(tr("Check"), m_name);
  form->addRow(tr("Date"), m_date);
  form->addRow(tr("Recording"), fileRow);
  form->addRow(columnLabel, m_column);
  return form;
}

QWidget* RecordingDialog::buttons() {
  auto* box = new QDialogButtonBox(QDialogButtonBox::Cancel);
  m_take = box->addButton(tr("Take readings"), QDialogButtonBox::AcceptRole);
  m_take->setObjectName("takeReadings");
  m_take->setEnabled(false);
  connect(box, &QDialogButtonBox::accepted, this, &RecordingDialog::accept);
  connect(box, &QDialogButtonBox::rejected, this, &RecordingDialog::reject);
  return box;
}

void RecordingDialog::followTables() {
  connect(m_channels, &QTableWidget::itemSelectionChanged, this, &RecordingDialog::showLevels);
  connect(m_channels, &QTableWidget::itemChanged, this, [this](QTableWidgetItem* item) {
    const std::size_t channel = m_contents.channels[static_cast<std::size_t>(item->row())].channel;
    if (item->checkState() == Qt::Checked)
      m_leftOut.erase(channel);
    else
      m_leftOut.insert(channel);
  });
  connect(m_levels, &QTableWidget::itemChanged, this, [this](QTableWidgetItem* item) {
    const int row = m_channels->currentRow();
    if (row < 0 || item->column() != 0) return;
    m_kept[static_cast<std::size_t>(row)][static_cast<std::size_t>(item->row())] =
        item->checkState() == Qt::Checked;
    // Later, because showing the levels anew deletes the item that is telling us.
    QTimer::singleShot(0, this, [this] {
      showChannels();
      showLevels();
    });
  });
}

void RecordingDialog::followReading() {
  using Watcher = QFutureWatcher<RecordingContents>;
  connect(&m_watcher, &Watcher::progressValueChanged, m_progress, &QProgressBar::setValue);
  connect(&m_watcher, &Watcher::finished, this, [this] {
    m_progress->setVisible(false);
    if (m_stop.stop_requested()) return;
    m_contents = m_watcher.result();
    showContents();
    emit readingDone();
  });
}

RecordingDialog::~RecordingDialog() {
  m_stop.request_stop();
  m_watcher.waitForFinished();
}

void RecordingDialog::chooseFile() {
  const QString folder = QFileInfo(m_documentPath).path();
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Recording"), folder, tr("Delimited text (*.csv *.txt *.tsv *.dat);;All files (*)"));
  if (!path.isEmpty()) readFile(path);
}

void RecordingDialog::readFile(const QString& path) {
  m_path = path;
  m_leftOut.clear();
  if (const QFileInfo file(path); file.exists())
    m_date->setText(file.lastModified().date().toString(Qt::ISODate));
  m_file->setText(QDir::toNativeSeparators(path));
  startReading({});
}

void RecordingDialog::startReading(std::optional<std::size_t> columnForChosen) {
  m_stop.request_stop();
  m_watcher.waitForFinished();
  m_stop = std::stop_source();
  m_take->setEnabled(false);
  m_progress->setValue(0);
  m_progress->setVisible(true);
  const core::Document document = m_session.document();
  const std::size_t chosen = *m_session.selection().channel;
  m_watcher.setFuture(QtConcurrent::run([document, chosen, columnForChosen, path = m_path,
                                         stop = m_stop.get_token()](QPromise<RecordingContents>& promise) {
    promise.setProgressRange(0, 100);
    RecordingContents contents;
    contents.recording = core::readDelimitedFile(path.toStdString(), stop, [&](double share) {
      promise.setProgressValue(static_cast<int>(80 * share));
    });
    if (contents.recording) {
      const core::Recording& recording = *contents.recording;
      auto wanted = columnsByName(document, recording);
      if (columnForChosen) {
        std::erase_if(wanted, [&](const Wanted& w) { return w.channel == chosen; });
        wanted.insert(wanted.begin(), {chosen, *columnForChosen});
      }
      for (const Wanted& w : wanted)
        contents.channels.push_back(
            {w.channel, w.column,
             core::findLevels(recording.time, recording.columns[w.column].values, {}, stop)});
      contents.sha256 = sha256OfFile(path);
    }
    promise.setProgressValue(100);
    promise.addResult(std::move(contents));
  }));
}

void RecordingDialog::showContents() {
  const QSignalBlocker quiet(m_column);
  m_column->clear();
  m_kept.clear();
  if (!m_contents.recording) {
    m_contents.channels.clear();
    say(toText(m_contents.recording.error()));
  } else {
    for (const core::Column& column : m_contents.recording->columns)
      m_column->addItem(toQString(column.name) +
                        (column.unit.empty() ? "" : " [" + toQString(column.unit) + "]"));
    m_column->setCurrentIndex(-1);
    for (const ChannelLevels& found : m_contents.channels) {
      m_kept.push_back(std::vector<bool>(found.levels ? found.levels->size() : 0, true));
      if (found.channel == m_session.selection().channel)
        m_column->setCurrentIndex(static_cast<int>(found.column));
    }
    const core::Recording& recording = *m_contents.recording;
    QString text = tr("%1 lines read, %2 skipped.")
                       .arg(QString::number(recording.linesRead), QString::number(recording.linesSkipped));
    if (!recording.skipped.empty())
      text += " " + tr("First skipped: line %1, %2.")
                        .arg(QString::number(recording.skipped.front().line),
                             toQString(recording.skipped.front().reason));
    if (m_contents.channels.empty())
      text += " " + tr("No column is named like a channel: choose the column for the chosen channel above.");
    say(text);
  }
  showChannels();
  if (m_channels->rowCount() > 0) m_channels->selectRow(0);
  showLevels();
}

std::vector<core::Level> RecordingDialog::keptLevels(std::size_t row) const {
  std::vector<core::Level> kept;
  const auto& levels = m_contents.channels[row].levels;
  if (!levels) return kept;
  for (std::size_t k = 0; k < levels->size(); ++k)
    if (m_kept[row][k]) kept.push_back((*levels)[k]);
  return kept;
}

void RecordingDialog::showChannels() {
  const QSignalBlocker quiet(m_channels);
  const int current = m_channels->currentRow();
  bool some = false;
  m_channels->setRowCount(static_cast<int>(m_contents.channels.size()));
  for (std::size_t row = 0; row < m_contents.channels.size(); ++row) {
    const ChannelLevels& found = m_contents.channels[row];
    const core::Channel& channel = *m_session.document().channels[found.channel];
    const auto next = withReadings(found);
    auto* name = cell(toQString(channel.name), true);
    name->setCheckState(next && !m_leftOut.contains(found.channel) ? Qt::Checked : Qt::Unchecked);
    if (!next) name->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
    some = some || next;
    const int r = static_cast<int>(row);
    m_channels->setItem(r, 0, name);
    m_channels->setItem(r, 1, cell(toQString(m_contents.recording->columns[found.column].name)));
    m_channels->setItem(r, 2, cell(QString::number(keptLevels(row).size())));
    m_channels->setItem(r, 3, cell(next ? tr("matches the plan") : toText(next.error())));
  }
  m_channels->resizeColumnsToContents();
  m_channels->setCurrentCell(current, 0);
  m_take->setEnabled(some);
}

void RecordingDialog::showLevels() {
  const QSignalBlocker quiet(m_levels);
  const int row = m_channels->currentRow();
  m_levels->setRowCount(0);
  if (row < 0 || row >= static_cast<int>(m_contents.channels.size())) return;
  const ChannelLevels& found = m_contents.channels[static_cast<std::size_t>(row)];
  if (!found.levels) return;
  m_levels->setRowCount(static_cast<int>(found.levels->size()));
  int step = 0;
  for (int k = 0; k < m_levels->rowCount(); ++k) {
    const core::Level& level = (*found.levels)[static_cast<std::size_t>(k)];
    const bool kept = m_kept[static_cast<std::size_t>(row)][static_cast<std::size_t>(k)];
    auto* first = cell(kept ? QString::number(++step) : tr("left out"), true);
    first->setCheckState(kept ? Qt::Checked : Qt::Unchecked);
    m_levels->setItem(k, 0, first);
    m_levels->setItem(k, 1, cell(numberText(level.begin_s, 7)));
    m_levels->setItem(k, 2, cell(numberText(level.end_s, 7)));
    m_levels->setItem(k, 3, cell(numberText(level.mean, 7)));
    m_levels->setItem(k, 4, cell(numberText(level.stdUncertainty, 3)));
    m_levels->setItem(k, 5, cell(QString::number(level.samples)));
  }
}

core::RecordingReference RecordingDialog::reference(std::size_t column) const {
  const QDir folder = m_documentPath.isEmpty() ? QDir::current() : QFileInfo(m_documentPath).dir();
  return {.path = folder.relativeFilePath(m_path).toStdString(),
          .size_bytes = static_cast<std::uint64_t>(QFileInfo(m_path).size()),
          .sha256 = m_contents.sha256 ? m_contents.sha256->toStdString() : std::string(),
          .column = m_contents.recording->columns[column].name};
}

/// The channel with a check of these readings added, or why they do not fit the plan.
core::Result<core::Channel> RecordingDialog::withReadings(const ChannelLevels& found) const {
  if (!found.levels) return found.levels.error();
  if (!m_contents.sha256) return m_contents.sha256.error();
  const auto row = static_cast<std::size_t>(&found - m_contents.channels.data());
  const core::Channel& channel = *m_session.document().channels[found.channel];
  const auto readings = core::readingsFromLevels(channel.setup, keptLevels(row));
  if (!readings) return readings.error();
  const core::Column& column = m_contents.recording->columns[found.column];
  if (const auto unit = core::requireReadingUnit(channel.setup.instrument, column.unit); !unit)
    return unit.error();
  core::Check check;
  check.name = m_name->text().trimmed().toStdString();
  check.date = m_date->text().trimmed().toStdString();
  check.recording = reference(found.column);
  check.readings = *readings;
  return core::withCheckAdded(channel, std::move(check));
}

void RecordingDialog::accept() {
  core::Document next = m_session.document();
  m_taken = 0;
  for (std::size_t row = 0; row < m_contents.channels.size(); ++row) {
    if (m_channels->item(static_cast<int>(row), 0)->checkState() != Qt::Checked) continue;
    const ChannelLevels& found = m_contents.channels[row];
    auto channel = withReadings(found);
    if (!channel) return say(toText(channel.error()));
    next = core::withChannel(std::move(next), found.channel, *std::move(channel));
    ++m_taken;
  }
  if (m_taken == 0) return say(tr("Tick at least one channel whose levels match its plan."));
  m_session.edit(tr("Take readings from recording"), std::move(next));
  if (m_session.channel() && !m_session.channel()->checks.empty())
    m_session.selectCheck(m_session.channel()->checks.size() - 1);
  QDialog::accept();
}

void RecordingDialog::reject() {
  m_stop.request_stop();
  QDialog::reject();
}

void RecordingDialog::say(const QString& sentence) { m_message->setText(sentence); }

}  // namespace ui
