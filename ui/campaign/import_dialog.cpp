// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/import_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrent>

#include "core/units/language.h"
#include "ui/parts.h"
#include "ui/safe_file.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr qint64 mostBytes = 16 << 20;
constexpr int previewRows = 100;  ///< enough to see what a column holds
constexpr int toldRows = 500;

QTableWidget* quietTable(const char* name, const QString& accessibleName) {
  auto* table = new QTableWidget;
  table->setObjectName(name);
  table->setAccessibleName(accessibleName);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setTabKeyNavigation(false);
  table->setWordWrap(false);
  table->setAlternatingRowColors(true);
  table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 9);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  return table;
}

QString rowsText(std::size_t count) { return QLocale().toString(static_cast<qulonglong>(count)); }

}  // namespace

ImportDialog::ImportDialog(Session& session, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_like(new QComboBox),
      m_from(plainLabel("importFrom")),
      m_preview(quietTable("importPreview", tr("The list, and what each of its columns is"))),
      m_summary(plainLabel("importSummary")),
      m_told(quietTable("importRefused", tr("Rows that are refused, and what else is to be known"))) {
  setObjectName("importDialog");
  setWindowTitle(tr("Import a channel list"));
  resize(960, 640);
  auto* column = new QVBoxLayout(this);
  column->addWidget(sourceRow());
  column->addWidget(m_preview, 3);
  column->addWidget(embolden(m_summary));
  m_told->setColumnCount(3);
  sortByHeader(*m_told);
  m_told->setHorizontalHeaderLabels({tr("Where"), tr("What"), tr("What mends it")});
  m_told->horizontalHeader()->setStretchLastSection(true);
  m_told->verticalHeader()->hide();
  m_told->setColumnWidth(0, 180);
  m_told->setColumnWidth(1, 420);
  column->addWidget(m_told, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  m_ok = buttons->button(QDialogButtonBox::Ok);
  m_ok->setObjectName("importOk");
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
  connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
    m_outcome = m_watcher.result();
    m_time.done(tr("The channel list is read."));
    showOutcome();
  });
  refuse(tr("Open a list as CSV, or copy its cells in the spreadsheet and paste them here."));
}

ImportDialog::~ImportDialog() { m_watcher.waitForFinished(); }

QWidget* ImportDialog::sourceRow() {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](const char* name, const QString& text, auto act) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    line->addWidget(button);
  };
  add("importOpen", tr("&Open…"), [this] { askForFile(); });
  add("importPaste", tr("&Paste"), [this] { paste(); });
  line->addWidget(m_from, 1);
  auto* label = new QLabel(tr("Each row is a channel &like"));
  label->setBuddy(m_like);
  m_like->setObjectName("importLike");
  m_like->setAccessibleName(tr("Channel that each row is a copy of"));
  m_like->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_like->setMinimumContentsLength(16);
  m_like->addItem(tr("a new channel"));
  for (const auto& channel : m_session.document().channels) m_like->addItem(toQString(channel->name));
  if (const auto chosen = m_session.selection().channel)
    m_like->setCurrentIndex(static_cast<int>(*chosen) + 1);
  connect(m_like, &QComboBox::currentIndexChanged, this, &ImportDialog::workOut);
  line->addWidget(label);
  line->addWidget(m_like);
  return row;
}

void ImportDialog::askForFile() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Open a channel list"), {},
                                                    tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
  if (!path.isEmpty()) openFile(path);
}

void ImportDialog::openFile(const QString& path) {
  const core::Result<QByteArray> bytes = loadBytes(path, mostBytes);
  if (!bytes) return refuse(toText(bytes.error()));
  showText(*bytes, QFileInfo(path).fileName());
}

void ImportDialog::paste() {
  const QString text = QApplication::clipboard()->text();
  if (text.trimmed().isEmpty()) return refuse(tr("The clipboard holds no text."));
  showText(text.toUtf8(), tr("from the clipboard"));
}

void ImportDialog::showText(const QByteArray& text, const QString& from) {
  m_from->setText(from);
  core::Result<core::ListTable> table =
      core::readListTable({text.constData(), static_cast<std::size_t>(text.size())});
  if (!table) return refuse(toText(table.error()));
  m_table = std::move(*table);
  showTable();
  workOut();
}

/// What is not understood leaves nothing to accept.
void ImportDialog::refuse(const QString& reason) {
  m_table.reset();
  m_outcome.reset();
  m_preview->clear();
  m_preview->setRowCount(0);
  m_preview->setColumnCount(0);
  m_told->setRowCount(0);
  m_told->hide();
  m_summary->setText(reason);
  m_ok->setEnabled(false);
}

/// The first row says what the columns are, the others are those of the list.
void ImportDialog::showTable() {
  const int columns = static_cast<int>(m_table->header.size());
  const int rows = static_cast<int>(std::min<std::size_t>(m_table->rows.size(), previewRows));
  m_preview->clear();
  m_preview->setColumnCount(columns);
  m_preview->setRowCount(rows + 1);
  QStringList header, lines{tr("is")};
  for (const std::string& name : m_table->header) header << toQString(name).simplified();
  for (int row = 0; row < rows; ++row) lines << rowsText(m_table->lines[static_cast<std::size_t>(row)]);
  m_preview->setHorizontalHeaderLabels(header);
  m_preview->setVerticalHeaderLabels(lines);
  const std::vector<core::ListField> guessed = core::guessedFields(*m_table);
  for (int column = 0; column < columns; ++column) {
    QComboBox* chooser = fieldChooser(column);
    const QSignalBlocker quiet(chooser);
    chooser->setCurrentIndex(static_cast<int>(guessed[static_cast<std::size_t>(column)]));
    for (int row = 0; row < rows; ++row)
      m_preview->setItem(
          row + 1, column,
          new QTableWidgetItem(
              toQString(m_table->rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)])
                  .simplified()));
  }
  m_preview->setRowHeight(0, m_preview->cellWidget(0, 0)->sizeHint().height() + 2);
  m_preview->resizeColumnsToContents();
  for (int column = 0; column < columns; ++column)
    m_preview->setColumnWidth(column, std::clamp(m_preview->columnWidth(column), 130, 240));
}

QComboBox* ImportDialog::fieldChooser(int column) {
  auto* chooser = new QComboBox;
  chooser->setObjectName(QString("importField%1").arg(column + 1));
  chooser->setAccessibleName(
      tr("What column %1 is").arg(toQString(m_table->header[static_cast<std::size_t>(column)])));
  for (std::size_t field = 0; field < core::listFieldCount; ++field)
    chooser->addItem(toQString(core::listFieldName(static_cast<core::ListField>(field))));
  connect(chooser, &QComboBox::currentIndexChanged, this, &ImportDialog::workOut);
  m_preview->setCellWidget(0, column, chooser);
  return chooser;
}

std::vector<core::ListField> ImportDialog::fields() const {
  std::vector<core::ListField> fields;
  for (int column = 0; column < m_preview->columnCount(); ++column)
    fields.push_back(static_cast<core::ListField>(
        static_cast<const QComboBox*>(m_preview->cellWidget(0, column))->currentIndex()));
  return fields;
}

core::Channel ImportDialog::likeChannel() const {
  const int index = m_like->currentIndex();
  return index <= 0 ? core::Channel() : *m_session.document().channels[static_cast<std::size_t>(index) - 1];
}

/// Thousands of rows take longer than a frame. What was asked before is of no interest any more.
void ImportDialog::workOut() {
  if (!m_table) return;
  m_outcome.reset();
  m_ok->setEnabled(false);
  m_time.begin();
  m_watcher.setFuture(QtConcurrent::run([document = m_session.document(), table = *m_table, fields = fields(),
                                         like = likeChannel(), language = core::currentLanguage()] {
    const core::LanguageScope scope(language);
    return std::make_shared<const Outcome>(core::withChannelList(document, table, fields, like));
  }));
}

void ImportDialog::showOutcome() {
  if (!m_outcome || !m_table) return;
  m_told->setRowCount(0);
  if (!*m_outcome) {
    m_told->hide();
    m_summary->setText(toText(m_outcome->error()));
    m_ok->setEnabled(false);
    return;
  }
  const core::ListImport& done = **m_outcome;
  QString words = tr("%Ln channel(s) are added.", nullptr, int(done.added));
  if (!done.refused.empty()) words += " " + tr("%Ln row(s) are refused.", nullptr, int(done.refused.size()));
  m_summary->setText(words);
  m_ok->setEnabled(done.added > 0);
  m_ok->setText(tr("Add %Ln channel(s)", nullptr, int(done.added)));
  showTold(done);
}

/// Refused rows first; what was done otherwise than written stands below.
void ImportDialog::showTold(const core::ListImport& done) {
  const Colours colours = coloursFor(palette());
  const auto add = [&](const QString& where, const QString& what, const QString& mend, bool refused) {
    if (m_told->rowCount() >= toldRows) return;
    const int row = m_told->rowCount();
    m_told->insertRow(row);
    for (int column = 0; const QString& text : {where, what, mend}) {
      auto* item = new QTableWidgetItem(text);
      item->setToolTip("<span>" + text.toHtmlEscaped() + "</span>");
      if (refused) item->setForeground(colours.fail);
      m_told->setItem(row, column++, item);
    }
  };
  for (const core::Error& error : done.refused)
    add(toQString(error.where), tr("refused: %1").arg(toQString(error.what)), toQString(error.mend), true);
  for (const std::string& told : done.told) add({}, toQString(told), {}, false);
  m_told->setVisible(m_told->rowCount() > 0);
}

void ImportDialog::accept() {
  m_watcher.waitForFinished();
  if (!m_outcome || !*m_outcome || (*m_outcome)->added == 0) return;
  const core::ListImport& done = **m_outcome;
  const std::size_t first = m_session.document().channels.size();
  m_session.edit(tr("Import %Ln channel(s)", nullptr, int(done.added)), done.document);
  m_session.selectChannel(first);
  const QString added = tr("Added %Ln channel(s).", nullptr, int(done.added));
  emit said(done.refused.empty()
                ? added
                : added + " " + tr("%Ln row(s) were refused.", nullptr, int(done.refused.size())));
  QDialog::accept();
}

}  // namespace ui
