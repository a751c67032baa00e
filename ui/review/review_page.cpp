// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_page.h"

#include <QComboBox>
#include <QElapsedTimer>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <algorithm>
#include <array>
#include <numeric>

#include "core/document/edits.h"
#include "ui/as_typed.h"
#include "ui/help/next_steps.h"
#include "ui/parts.h"
#include "ui/shown_channel.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

enum Scope { ThisChannel, AllChannels };
enum Page { FindingsPage, NothingPage };

constexpr qint64 slice_ms = 8;        ///< of reviewing between two looks at the user's hands
constexpr std::size_t mostMends = 4;  ///< buttons; no finding has more

}  // namespace

ReviewPage::ReviewPage(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  setObjectName("reviewPage");
  setAccessibleName(tr("Review of the plan"));
  buildTable();
  auto* both = new QSplitter(Qt::Horizontal);
  both->setChildrenCollapsible(false);
  both->addWidget(m_table);
  both->addWidget(details());
  both->setStretchFactor(0, 3);
  both->setStretchFactor(1, 1);
  both->setSizes({3000, 1300});
  m_nothing = plainLabel("reviewNothing");
  m_nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  m_stack = new QStackedWidget;
  m_stack->addWidget(both);
  m_stack->addWidget(m_nothing);
  offerUnder(m_nothing, session, NextSteps::Need::Steps);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->setSpacing(4);
  column->addWidget(head());
  column->addWidget(m_stack, 1);
  m_slices.setSingleShot(true);
  connect(&m_slices, &QTimer::timeout, this, &ReviewPage::refresh);
  connect(&session, &Session::changed, this, [this] {
    if (isVisible()) refresh();
  });
  colour();
}

QWidget* ReviewPage::head() {
  m_counts = plainLabel("reviewCounts");
  embolden(m_counts);
  m_scope = new QComboBox;
  m_scope->setObjectName("reviewScope");
  m_scope->setAccessibleName(tr("Channels to review"));
  m_scope->addItems({tr("This channel"), tr("All channels")});
  connect(m_scope, &QComboBox::currentIndexChanged, this, &ReviewPage::refresh);
  auto* box = new QWidget;
  auto* line = new QHBoxLayout(box);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(m_counts, 1);
  line->addWidget(m_scope);
  return box;
}

void ReviewPage::buildTable() {
  m_table = new SheetView;
  m_table->setObjectName("reviewTable");
  m_table->setAccessibleName(tr("Findings"));
  sortByHeader(*m_table);
  m_table->setModel(&m_model);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setWordWrap(true);
  QHeaderView* header = m_table->horizontalHeader();
  header->setSectionResizeMode(QHeaderView::ResizeToContents);
  header->setSectionResizeMode(ReviewModel::What, QHeaderView::Stretch);
  header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  header->setMaximumSectionSize(2000);
  m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this](const QModelIndex& current) {
            if (!m_following) choose(current.row());
          });
  connect(m_table, &QTableView::activated, this, &ReviewPage::showShunt);
  connect(m_table, &SheetView::refused, this, &ReviewPage::refused);
}

QWidget* ReviewPage::details() {
  m_what = plainLabel("reviewWhat");
  embolden(m_what);
  m_why = plainLabel("reviewWhy");
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(6, 3, 6, 3);
  column->addWidget(m_what);
  column->addWidget(m_why);
  m_buttons = new QVBoxLayout;
  m_buttons->setSpacing(4);
  column->addLayout(m_buttons);
  for (std::size_t k = 0; k < mostMends; ++k) {
    auto* button = new QPushButton;
    button->setObjectName("reviewMend" + QString::number(k));
    button->setSizePolicy(QSizePolicy::Ignored,
                          QSizePolicy::Fixed);  // a long label must not push the rest out
    connect(button, &QPushButton::clicked, this, [this, k] { apply(k); });
    m_buttons->addWidget(button);
  }
  m_show = new QPushButton(tr("Show the shunt"));
  m_show->setObjectName("reviewShowShunt");
  connect(m_show, &QPushButton::clicked, this, &ReviewPage::showShunt);
  column->addWidget(m_show);
  column->addStretch(1);
  m_details = new QScrollArea;
  m_details->setObjectName("reviewDetails");
  m_details->setWidgetResizable(true);
  m_details->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_details->setFrameShape(QFrame::NoFrame);
  m_details->setWidget(box);
  m_details->setMinimumWidth(330);
  return m_details;
}

std::vector<std::size_t> ReviewPage::wantedChannels() const {
  std::vector<std::size_t> channels;
  if (m_scope->currentIndex() == AllChannels) {
    channels.resize(m_session.document().channels.size());
    std::iota(channels.begin(), channels.end(), 0);
  } else if (const auto channel = m_session.selection().channel) {
    channels.push_back(*channel);
  }
  return channels;
}

void ReviewPage::forgetOld() {
  const core::Document& document = m_session.document();
  if (m_stock != document.stock || m_today != m_session.today()) {
    m_reviewed.clear();
    m_shown.clear();
  }
  m_stock = document.stock;
  m_today = m_session.today();
  if (m_reviewed.size() <= 2 * document.channels.size() + 8) return;
  std::unordered_map<const core::Channel*, Reviewed> kept;
  for (const auto& channel : document.channels)
    if (const auto found = m_reviewed.find(channel.get()); found != m_reviewed.end())
      kept.insert(m_reviewed.extract(found));
  m_reviewed = std::move(kept);
}

bool ReviewPage::workOn(const std::vector<std::size_t>& channels) {
  QElapsedTimer clock;
  clock.start();
  for (const std::size_t index : channels) {
    const auto& channel = m_session.document().channels[index];
    if (m_reviewed.contains(channel.get())) continue;
    if (clock.elapsed() > slice_ms) return false;
    m_reviewed[channel.get()] = {channel,
                                 core::review(*channel, m_session.evaluation(index), *m_stock, m_today)};
  }
  return true;
}

void ReviewPage::refresh() {
  if (!isVisible()) return;
  forgetOld();
  const auto channels = wantedChannels();
  const bool complete = workOn(channels);
  if (!complete) m_slices.start(0);
  showCounts(complete, channels.size());
  // Rows wait until all are there: they would jump about under the user's hands.
  if (complete && !isShown(channels)) showRows(channels);
}

/// Whether the rows are of these channels already, as after choosing a step; else they are from now on.
bool ReviewPage::isShown(const std::vector<std::size_t>& channels) {
  std::vector<std::shared_ptr<const core::Channel>> wanted;
  for (const std::size_t index : channels) wanted.push_back(m_session.document().channels[index]);
  const bool same = !wanted.empty() && wanted == m_shown;
  m_shown = std::move(wanted);
  return same && m_table->isColumnHidden(ReviewModel::Channel) == (m_scope->currentIndex() == ThisChannel);
}

void ReviewPage::showRows(const std::vector<std::size_t>& channels) {
  const auto before = chosen();
  const int row = m_table->currentIndex().row();
  std::vector<ReviewRow> rows;
  for (const std::size_t index : channels) {
    const core::Channel& channel = *m_session.document().channels[index];
    for (const core::Finding& finding : m_reviewed.at(&channel).findings)
      rows.push_back({index, toQString(channel.name), placeOfFinding(channel.setup, finding), finding});
  }
  std::stable_sort(rows.begin(), rows.end(), [](const ReviewRow& a, const ReviewRow& b) {
    return a.finding.severity > b.finding.severity;
  });
  m_following = true;
  m_model.show(std::move(rows));
  m_table->setColumnHidden(ReviewModel::Channel, m_scope->currentIndex() == ThisChannel);
  restoreChoice(before, row);
  m_following = false;
  m_stack->setCurrentIndex(m_model.rowCount() > 0 ? FindingsPage : NothingPage);
  showDetails();
}

void ReviewPage::showCounts(bool complete, std::size_t channels) {
  std::array<int, core::severityCount> counts{};
  std::size_t steps = 0, done = 0;
  for (const std::size_t index : wantedChannels()) {
    const auto& channel = m_session.document().channels[index];
    const auto found = m_reviewed.find(channel.get());
    if (found == m_reviewed.end()) continue;
    ++done;
    steps += channel->setup.sequence.size();
    for (const core::Finding& finding : found->second.findings)
      ++counts[static_cast<std::size_t>(finding.severity)];
  }
  QStringList words;
  const auto count = [&](core::Severity severity) { return counts[static_cast<std::size_t>(severity)]; };
  words << tr("%n fault(s)", nullptr, count(core::Severity::Fault));
  words << tr("%n warning(s)", nullptr, count(core::Severity::Warning));
  words << tr("%n note(s)", nullptr, count(core::Severity::Note));
  QString text = words.join(" · ");
  if (!complete)
    text = tr("Reviewed %1 of %2 channels: %3").arg(QString::number(done), QString::number(channels), text);
  m_counts->setText(text);
  m_counts->setVisible(channels > 0);
  if (channels == 0)
    return m_nothing->setText(tr("No channel yet. Add a channel to have its plan reviewed."));
  if (steps == 0) return m_nothing->setText(tr("There are no steps yet. Add steps to a sequence."));
  m_nothing->setText(
      tr("Nothing found: range, uncertainty, zeros, levels, times, heat, polarity, leads and "
         "resistors of %1 look as they should. What nobody entered (a range, a grid's area, a rating) "
         "is not looked at.")
          .arg(channels == 1 ? tr("this plan") : tr("all %n plans", nullptr, int(channels))));
}

std::optional<ReviewRow> ReviewPage::chosen() const {
  const QModelIndex current = m_table->currentIndex();
  if (!current.isValid()) return std::nullopt;
  return m_model.at(current.row());
}

/// The same finding as before; when it is gone the one that came after it.
void ReviewPage::restoreChoice(const std::optional<ReviewRow>& before, int row) {
  if (m_model.rowCount() == 0) return;
  const int same = before ? m_model.rowLike(*before) : -1;
  const int wanted = same >= 0 ? same : std::clamp(row, 0, m_model.rowCount() - 1);
  if (m_table->currentIndex().row() != wanted)
    m_table->setCurrentIndex(m_model.index(wanted, ReviewModel::What));
}

void ReviewPage::choose(int row) {
  if (row < 0) return showDetails();
  const ReviewRow chosenRow = m_model.at(row);  // a copy: the rows may be replaced on the way
  if (m_session.selection().channel != chosenRow.channel) m_session.selectChannel(chosenRow.channel);
  const auto& step = chosenRow.finding.step;
  if (step && *step < m_session.shownSetup().sequence.size()) m_session.selectStep(*step);
  showDetails();
}

void ReviewPage::showDetails() {
  const auto row = chosen();
  m_what->setText(row ? row->where + ": " + toQString(row->finding.what) : QString());
  m_why->setText(row ? toQString(row->finding.why) : QString());
  const std::size_t mends = row ? row->finding.mends.size() : 0;
  for (std::size_t k = 0; k < mostMends; ++k) {
    auto* button = static_cast<QPushButton*>(m_buttons->itemAt(static_cast<int>(k))->widget());
    button->setVisible(k < mends);
    if (k >= mends) continue;
    const QString label = toQString(row->finding.mends[k].label);
    button->setText(QString(label).replace("&", "&&"));
    button->setToolTip(asTyped(label));
    button->setAccessibleName(label);
  }
  m_show->setVisible(row && row->finding.shunt);
}

void ReviewPage::apply(std::size_t mend) {
  const auto row = chosen();
  if (!row || mend >= row->finding.mends.size()) return;
  const bool isShown = m_session.selection().channel == row->channel;
  if (const QString reason = whyNotEdited(m_session); isShown && !reason.isEmpty())
    return emit refused(reason);
  const core::Mend chosenMend = row->finding.mends[mend];
  // The buttons are those of the next finding afterwards: a second press must not mend that one unread.
  m_table->setFocus();
  const core::Document& document = m_session.document();
  m_session.edit(
      toQString(chosenMend.label),
      core::withChannel(document, row->channel, chosenMend.apply(*document.channels[row->channel])));
}

void ReviewPage::showShunt() {
  const auto row = chosen();
  if (!row) return;
  if (m_session.selection().channel != row->channel) m_session.selectChannel(row->channel);
  if (row->finding.shunt && *row->finding.shunt < m_session.shownSetup().shunts.size())
    emit shuntActivated(*row->finding.shunt);
}

void ReviewPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void ReviewPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

void ReviewPage::colour() {
  m_model.setColours(palette());
  QPalette quiet = palette();
  quiet.setColor(QPalette::WindowText, coloursFor(palette()).quiet);
  m_why->setPalette(quiet);
}

}  // namespace ui
