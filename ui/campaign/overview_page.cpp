// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_page.h"

#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "core/campaign/channel_list.h"
#include "ui/campaign/channel_rows.h"
#include "ui/campaign/copies_dialog.h"
#include "ui/campaign/edit_many_dialog.h"
#include "ui/campaign/import_dialog.h"
#include "ui/campaign/overview_bar.h"
#include "ui/campaign/overview_model.h"
#include "ui/campaign/overview_table.h"
#include "ui/campaign/overview_words.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/safe_file.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

/// RFC 4180, with a byte order mark so that spreadsheets read the letters right.
QByteArray asCsv(const QList<QStringList>& rows) {
  QStringList lines;
  for (QStringList cells : rows) {
    for (QString& cell : cells)
      if (cell.contains(',') || cell.contains('"') || cell.contains('\n') || cell.contains('\r'))
        cell = '"' + cell.replace('"', "\"\"") + '"';
    lines << cells.join(',');
  }
  return "\xEF\xBB\xBF" + (lines.join("\r\n") + "\r\n").toUtf8();
}

}  // namespace

OverviewPage::OverviewPage(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_model(new OverviewModel(session, this)),
      m_bar(new OverviewBar),
      m_table(new OverviewTable(*m_model)),
      m_tally(plainLabel("overviewTally")) {
  setObjectName("overviewPage");
  setAccessibleName(tr("Overview of the channels"));
  setFocusProxy(m_table);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(6, 4, 6, 4);
  column->setSpacing(4);
  column->addWidget(m_bar);
  column->addWidget(tools());
  column->addWidget(new NextSteps(session, NextSteps::Need::Channel));
  column->addWidget(m_table, 1);
  m_table->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(m_table, &QWidget::customContextMenuRequested, this, &OverviewPage::showMenu);
  connect(m_table, &OverviewTable::viewsWanted, this, &OverviewPage::viewsWanted);
  connect(m_table, &OverviewTable::chosen, this, &OverviewPage::takeChoice);
  connect(m_table, &OverviewTable::copied, this,
          [this](int rows) { emit said(tr("Copied %Ln row(s).", nullptr, rows)); });
  connect(&TableTools::of(*m_table), &TableTools::refused, this, &OverviewPage::refused);
  connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &OverviewPage::showTally);
  connect(m_bar, &OverviewBar::changed, this, [this] {
    m_model->setFilter(m_bar->filter());
    m_model->setGrouping(m_bar->grouping());
    showTally();
  });
  connect(m_model, &OverviewModel::rearranged, this, &OverviewPage::restoreChoice);
  connect(m_model, &OverviewModel::refused, this, &OverviewPage::refused);
  connect(&session, &Session::changed, this, &OverviewPage::follow);
  connect(&session.rows(), &ChannelRows::arrived, this, [this] {
    if (isVisible()) draw();
  });
}

QWidget* OverviewPage::tools() {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(4);
  line->addWidget(embolden(m_tally), 1);
  const auto add = [&](const char* name, const QString& text, const QString& tip, auto act) {
    auto* button = toolButton(name, text, tip);
    connect(button, &QToolButton::clicked, this, act);
    line->addWidget(button);
  };
  add("overviewEditMany", tr("Edit chosen…"), tr("Give all chosen channels another value"),
      [this] { editChosen(); });
  add("overviewCopies", tr("Several copies…"), tr("The chosen channel again with the next names"),
      [this] { copyChannel(); });
  add("overviewImport", tr("Import list…"), tr("Channels from a list kept in a spreadsheet"),
      [this] { importChannels(); });
  add("overviewExport", tr("Export…"), tr("These rows as CSV, as sorted and filtered"),
      [this] { exportList(); });
  return row;
}

void OverviewPage::showMenu(const QPoint& at) {
  QMenu menu;
  menu.addAction(tr("Show in the views"), this, &OverviewPage::viewsWanted);
  menu.addSeparator();
  TableTools::of(*m_table).fillMenu(menu);
  menu.addSeparator();
  menu.addAction(tr("Edit chosen channels…"), this, &OverviewPage::editChosen);
  menu.addAction(tr("Several copies…"), this, &OverviewPage::copyChannel);
  menu.exec(m_table->viewport()->mapToGlobal(at));
}

void OverviewPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_channels.clear();
  follow();
}

void OverviewPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) m_table->viewport()->update();
}

/// Nothing is worked out or drawn while the page is hidden; what happened meanwhile shows when it comes back.
void OverviewPage::follow() {
  if (!isVisible()) return;
  m_session.rows().wantAll();
  const auto& now = m_session.document().channels;
  if (m_channels != now) {
    // Places mean other channels now: what was chosen stays chosen as far as its name is still there.
    if (m_channels.size() != now.size()) {
      std::set<std::string> names;
      for (const std::size_t k : m_chosen)
        if (k < m_channels.size()) names.insert(m_channels[k]->name);
      m_chosen.clear();
      for (std::size_t k = 0; k < now.size(); ++k)
        if (names.contains(now[k]->name)) m_chosen.push_back(k);
    }
    m_channels = now;
    std::set<QString> groups;
    for (const auto& channel : now)
      if (!channel->group.empty()) groups.insert(toQString(channel->group));
    m_bar->offerGroups(QStringList(groups.begin(), groups.end()));
    draw();
  }
  const auto chosen = m_session.selection().channel;
  const int row = m_table->currentIndex().row();
  if (chosen && (row < 0 || m_model->channelAt(row) != chosen)) {
    const bool elsewhere = row >= 0;  // chosen in another place while the page is seen
    m_chosen = {*chosen};
    restoreChoice();
    if (elsewhere) m_table->scrollTo(m_table->currentIndex());
  }
}

void OverviewPage::draw() {
  m_model->refresh();
  showTally();
}

void OverviewPage::takeChoice() {
  const int row = m_table->currentIndex().row();
  if (row < 0) return;
  if (const auto channel = m_model->channelAt(row)) m_session.selectChannel(*channel);
}

void OverviewPage::restoreChoice() {
  const std::vector<std::size_t> chosen = m_chosen;
  m_table->choose(chosen, m_session.selection().channel);
  m_chosen = chosen;  // those that are filtered out now are chosen again when they come back
}

std::vector<std::size_t> OverviewPage::chosenChannels() const {
  std::vector<std::size_t> channels = isVisible() ? m_table->chosenChannels() : std::vector<std::size_t>{};
  if (channels.empty() && m_session.selection().channel) channels.push_back(*m_session.selection().channel);
  std::sort(channels.begin(), channels.end());
  return channels;
}

/// In words at the top: what is there, what of it is shown and chosen, what is still worked out.
void OverviewPage::showTally() {
  if (!isVisible()) return;
  const std::vector<std::size_t> chosen = m_table->chosenChannels();
  if (!chosen.empty()) m_chosen = chosen;
  const auto number = [](std::size_t count) { return QLocale().toString(static_cast<qulonglong>(count)); };
  const core::OverviewTally tally = m_model->tally();
  if (tally.channels == 0) return m_tally->setText(tr("There is no channel yet: add or import some."));
  QStringList parts{tallyWords(tally)};
  if (m_model->shownChannels() < tally.channels)
    parts << tr("%1 shown").arg(number(m_model->shownChannels()));
  if (chosen.size() > 1) parts << tr("%1 chosen").arg(number(chosen.size()));
  if (const std::size_t waiting = m_session.rows().waiting(); waiting > 0 && m_session.rows().takesLong())
    parts << tr("%1 being worked out").arg(number(waiting));
  m_tally->setText(parts.join("; "));
}

void OverviewPage::copyRows() { m_table->copyRows(); }

void OverviewPage::exportList() {
  const QString rows = tr("These rows (*.csv)"), channels = tr("Channels, to be imported again (*.csv)");
  QString chosen = rows;
  const QString path = QFileDialog::getSaveFileName(this, tr("Export the overview"), "channels.csv",
                                                    rows + ";;" + channels, &chosen);
  if (!path.isEmpty()) chosen == channels ? exportChannelsTo(path) : exportTo(path);
}

bool OverviewPage::exportTo(const QString& path) {
  m_session.rows().wantAll();
  m_session.rows().waitForAll();
  const QList<QStringList> cells = m_model->allCells();
  return write(path, asCsv(cells), cells.size() - 1);
}

bool OverviewPage::exportChannelsTo(const QString& path) {
  return write(path, QByteArray::fromStdString(core::channelListCsv(m_session.document())),
               static_cast<qsizetype>(m_session.document().channels.size()));
}

bool OverviewPage::write(const QString& path, const QByteArray& bytes, qsizetype rows) {
  if (const auto written = saveBytes(path, bytes); !written) {
    emit refused(tr("Not exported: %1").arg(toText(written.error())));
    return false;
  }
  emit said(tr("Wrote %Ln row(s) to %1.", nullptr, int(rows)).arg(path));
  return true;
}

void OverviewPage::importChannels(const QString& path) {
  ImportDialog dialog(m_session, window());
  connect(&dialog, &ImportDialog::said, this, &OverviewPage::said);
  if (!path.isEmpty()) dialog.openFile(path);
  dialog.exec();
}

void OverviewPage::copyChannel() {
  if (!m_session.channel()) return emit refused(tr("There is no channel to copy."));
  CopiesDialog dialog(m_session, window());
  connect(&dialog, &CopiesDialog::said, this, &OverviewPage::said);
  dialog.exec();
}

void OverviewPage::editChosen() {
  if (!m_session.channel()) return emit refused(tr("There is no channel to edit."));
  EditManyDialog dialog(m_session, chosenChannels(), window());
  connect(&dialog, &EditManyDialog::said, this, &OverviewPage::said);
  dialog.exec();
}

}  // namespace ui
