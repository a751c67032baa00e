// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/recording/found_pane.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/access/focus_ring.h"
#include "ui/as_typed.h"
#include "ui/parts.h"
#include "ui/recording/choice_cell.h"
#include "ui/recording/column_table.h"
#include "ui/recording/find_table.h"
#include "ui/recording/signal_picture.h"
#include "ui/sheet_view.h"
#include "ui/tables/column_room.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr std::size_t manyChannels = 12;  ///< more than are seen at a glance

/// Numbers at the right edge of their cell, with a little room to the text that comes next.
class NumberDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    option->text += QChar(0x2002);  // an en space
  }
};

}  // namespace

FoundPane::FoundPane(QWidget* parent) : QWidget(parent) {
  setObjectName("foundPane");
  m_channelModel = new ColumnTable(m_findings, this);
  m_levelModel = new FindTable(this);
  m_channels = table("recordingChannels", tr("Channels and their columns"), m_channelModel);
  sortByHeader(*m_channels);
  new ChoiceCellDelegate(m_channels, ColumnTable::ColumnColumn, "columnChoice");
  new ChoiceCellDelegate(m_channels, ColumnTable::Run, "runChoice");
  m_channels->setColumnWidth(ColumnTable::Channel, 150);
  m_channels->setColumnWidth(ColumnTable::ColumnColumn, 220);
  m_channels->setColumnWidth(ColumnTable::Levels, 60);
  m_channels->setColumnWidth(ColumnTable::Run, 80);
  new ColumnRoom(*m_channels);
  auto* parts = new QSplitter(Qt::Vertical);
  parts->setObjectName("foundParts");
  parts->setChildrenCollapsible(false);
  parts->addWidget(m_channels);
  parts->addWidget(detail());
  parts->setStretchFactor(0, 2);
  parts->setStretchFactor(1, 3);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  m_onlyOpen = new QCheckBox(tr("Only channels that are &not ticked"));
  m_onlyOpen->setObjectName("onlyNotTicked");
  m_onlyOpen->hide();
  connect(m_onlyOpen, &QCheckBox::toggled, this, &FoundPane::hideRows);
  column->addWidget(m_onlyOpen);
  column->addWidget(parts);
  connectTables();
  showChosen();
}

SheetView* FoundPane::table(const char* name, const QString& label, QAbstractItemModel* model) {
  auto* view = new SheetView;
  view->setObjectName(name);
  view->setAccessibleName(label);
  view->setModel(model);
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setSelectionMode(QAbstractItemView::SingleSelection);
  view->setEditTriggers(QAbstractItemView::EditKeyPressed);
  view->setTabKeyNavigation(false);
  view->horizontalHeader()->setStretchLastSection(true);
  view->setMinimumHeight(90);
  return view;
}

QWidget* FoundPane::detail() {
  m_title = embolden(plainLabel("foundTitle"));
  m_words = plainLabel("matchWords");
  m_words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_words->setAccessibleName(tr("How the levels match the plan"));
  m_words->setMargin(FocusRing::thickness_px);
  auto* words = new QScrollArea;
  words->setFrameShape(QFrame::NoFrame);
  words->setWidgetResizable(true);
  words->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  words->setWidget(m_words);
  m_readAs = new QComboBox;
  m_readAs->setObjectName("readAs");
  m_readAs->setAccessibleName(tr("Read it as"));
  m_readAs->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_readAs->view()->setTextElideMode(Qt::ElideRight);
  m_readAs->setPlaceholderText(tr("choose"));
  m_readAsLabel = new QLabel(tr("Read &it as"));
  m_readAsLabel->setBuddy(m_readAs);
  m_levels = table("recordingLevels", tr("Levels found"), m_levelModel);
  new ChoiceCellDelegate(m_levels, FindTable::Step, "stepChoice");
  m_levels->setItemDelegateForColumn(FindTable::Samples, new NumberDelegate(m_levels));
  m_levels->setColumnWidth(FindTable::Step, 130);
  for (const int column : {FindTable::From, FindTable::To, FindTable::Samples})
    m_levels->setColumnWidth(column, 80);
  for (const int column : {FindTable::Mean, FindTable::Uncertainty}) m_levels->setColumnWidth(column, 110);
  new ColumnRoom(*m_levels);
  m_picture = new SignalPicture;
  auto* widget = new QWidget;
  auto* grid = new QGridLayout(widget);
  grid->setContentsMargins(0, 2, 0, 0);
  grid->setColumnStretch(1, 1);
  grid->addWidget(m_title, 0, 0, 1, 2);
  grid->addWidget(m_readAsLabel, 1, 0);
  grid->addWidget(m_readAs, 1, 1);
  auto* both = new QSplitter(Qt::Horizontal);
  both->setChildrenCollapsible(false);
  both->addWidget(m_levels);
  both->addWidget(words);
  both->setSizes({830, 240});
  both->setStretchFactor(0, 5);
  both->setStretchFactor(1, 2);
  grid->addWidget(m_picture, 2, 0, 1, 2);
  grid->addWidget(both, 3, 0, 1, 2);
  grid->setRowStretch(3, 1);
  return widget;
}

void FoundPane::connectTables() {
  connect(m_channels->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          &FoundPane::showChosen);
  connect(m_channelModel, &ColumnTable::ticked, this, [this](int row, bool isTicked) {
    Finding& finding = m_findings[static_cast<std::size_t>(row)];
    finding.isTicked = isTicked;
    if (isTicked) finding.nearName.clear();  // confirmed
    changeRow(row);
  });
  connect(m_channelModel, &ColumnTable::runChosen, this, [this](int row, std::size_t run) {
    chooseRun(m_findings[static_cast<std::size_t>(row)], run);
    changeRow(row);
    if (row == m_channels->currentIndex().row()) showFirstLevel();
  });
  connect(m_channelModel, &ColumnTable::columnChosen, this,
          [this](int row, std::optional<std::size_t> column) {
            Finding& finding = m_findings[static_cast<std::size_t>(row)];
            if (finding.column == column) return;
            finding = Finding{.channel = finding.channel, .column = column};
            changeRow(row);
            emit columnChosen(finding.channel, column);
          });
  connect(m_readAs, &QComboBox::activated, this, [this](int reading) {
    if (reading < 0 || !chosen()) return;
    chooseReading(*chosen(), static_cast<std::size_t>(reading));
    changeRow(m_channels->currentIndex().row());
  });
  connect(m_levels->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& now) {
            m_picture->chooseLevel(now.isValid() ? std::optional(static_cast<std::size_t>(now.row()))
                                                 : std::nullopt);
          });
  connect(m_picture, &SignalPicture::levelClicked, this, [this](std::size_t level) {
    m_levels->setCurrentIndex(m_levelModel->index(static_cast<int>(level), FindTable::From));
  });
  connect(m_levelModel, &FindTable::stepGiven, this,
          [this](std::size_t level, std::optional<std::size_t> step) {
            Finding* finding = chosen();
            if (!finding) return;
            giveLevel(*finding, level, step, m_document.channels[finding->channel]->setup.sequence.size());
            changeRow(m_channels->currentIndex().row());
          });
}

void FoundPane::clear() {
  m_findings.clear();
  m_read.reset();
  m_picture->setRecording(nullptr);
  m_channelModel->reset({}, nullptr);
  m_onlyOpen->hide();
  showChosen();
}

/// A channel without a column is none that waits for a decision: the recording has nothing to do with it.
bool FoundPane::isHidden(std::size_t row) const {
  const Finding& finding = m_findings[row];
  const bool takable = finding.isTicked && requireTakable(finding, *m_document.channels[finding.channel]);
  return m_onlyOpen->isChecked() && (takable || !finding.column);
}

/// A row that is ticked stays on view until the rows are asked for anew, so that it can be taken back.
void FoundPane::hideRows() {
  for (std::size_t row = 0; row < m_findings.size(); ++row)
    m_channels->setRowHidden(static_cast<int>(row), isHidden(row));
}

void FoundPane::showRead(const core::Document& document, std::shared_ptr<const RecordingRead> read,
                         std::size_t channel) {
  m_document = document;
  m_read = std::move(read);
  m_findings.clear();
  for (std::size_t k = 0; k < document.channels.size(); ++k) m_findings.push_back({.channel = k});
  for (const core::ChannelFind& find : m_read->finds)
    // The find stays part of what was read.
    m_findings[find.use.channel] = findingOf(std::shared_ptr<const core::ChannelFind>(m_read, &find));
  for (const core::ColumnUse& use : m_read->nearlyNamed) {
    Finding& finding = m_findings[use.channel];
    finding.nearName = (*m_read->open)->recording.columns[use.column].name;
    finding.isTicked = false;
  }
  tellThoseApart(m_findings, document);
  m_channelModel->reset(document, &(*m_read->open)->recording);
  m_onlyOpen->setVisible(m_findings.size() > manyChannels);
  m_onlyOpen->setChecked(false);
  std::size_t row = channel < m_findings.size() ? channel : 0;
  for (std::size_t k = 0; k < m_findings.size() && !m_findings[row].column; ++k)
    if (m_findings[k].column) row = k;
  m_channels->setCurrentIndex(m_channelModel->index(static_cast<int>(row), ColumnTable::ColumnColumn));
  showChosen();
}

void FoundPane::drawSignal() { m_picture->setRecording(*m_read->open); }

/// Brings the first level of the chosen run to the top.
void FoundPane::showFirstLevel() {
  std::optional<std::size_t> first;
  for (const auto& level : levelOfSteps(*chosen()))
    if (level) first = std::min(first.value_or(*level), *level);
  if (!first) return;
  const QModelIndex cell = m_levelModel->index(static_cast<int>(*first), FindTable::From);
  m_levels->setCurrentIndex(cell);
  m_levels->scrollTo(cell, QAbstractItemView::PositionAtTop);
}

void FoundPane::showFind(const std::shared_ptr<const core::ChannelFind>& find) {
  for (std::size_t row = 0; row < m_findings.size(); ++row) {
    const Finding& finding = m_findings[row];
    // The user may have gone on to another column meanwhile.
    if (finding.channel != find->use.channel || finding.column != find->use.column) continue;
    m_findings[row] = findingOf(find);
    changeRow(static_cast<int>(row));
  }
}

std::vector<const Finding*> FoundPane::toTake() const {
  std::vector<const Finding*> list;
  for (const Finding& finding : m_findings)
    if (finding.isTicked && requireTakable(finding, *m_document.channels[finding.channel]))
      list.push_back(&finding);
  return list;
}

Finding* FoundPane::chosen() {
  const int row = m_channels->currentIndex().row();
  return row >= 0 && row < static_cast<int>(m_findings.size()) ? &m_findings[static_cast<std::size_t>(row)]
                                                               : nullptr;
}

void FoundPane::changeRow(int row) {
  m_channelModel->showRow(row);
  if (row == m_channels->currentIndex().row()) showChosen();
  emit decided();
}

void FoundPane::showChosen() {
  const Finding* finding = chosen();
  const auto channel = finding ? m_document.channels[finding->channel] : nullptr;
  m_levelModel->show(finding, channel);
  m_picture->showFinding(finding);
  const QModelIndex level = m_levels->currentIndex();
  m_picture->chooseLevel(level.isValid() ? std::optional(static_cast<std::size_t>(level.row()))
                                         : std::nullopt);
  m_title->setText(
      finding ? tr("Levels for %1; the step of a level can be changed by hand").arg(toQString(channel->name))
              : tr("Levels"));
  QString words;
  if (finding && finding->column) words = matchSentences(*finding, *channel).join("\n");
  if (finding && !finding->column) words = tr("Choose the column of this channel in the table above.");
  m_words->setText(words);
  showReadings(finding);
}

void FoundPane::showReadings(const Finding* finding) {
  const core::FoundRun* run = finding ? runOf(*finding) : nullptr;
  const bool isAmbiguous = run && run->isAmbiguous();
  m_readAsLabel->setVisible(isAmbiguous);
  m_readAs->setVisible(isAmbiguous);
  m_readAs->clear();
  if (!isAmbiguous) return;
  const core::Channel& channel = *m_document.channels[finding->channel];
  m_readAs->addItems(readingWords(*finding, channel));
  const QStringList sentences = readingSentences(*finding, channel);
  for (int k = 0; k < sentences.size(); ++k) m_readAs->setItemData(k, asTyped(sentences[k]), Qt::ToolTipRole);
  m_readAs->setCurrentIndex(finding->reading ? static_cast<int>(*finding->reading) : -1);
}

}  // namespace ui
