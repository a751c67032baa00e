// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/apply_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/preferences/appearance.h"
#include "ui/tables/table_tools.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Kind = ApplyChannels::Fate::Kind;

/// One part that can be handed over: where its choice goes, what it is called.
struct PartRow {
  bool core::ChannelParts::*member;
  const char* objectName;
  const char* label;  ///< of the check box
  const char* word;   ///< in the name of the undo step
  const char* about;
};

constexpr std::array<PartRow, 6> partRows{{
    {&core::ChannelParts::plan, "applyPlan", QT_TRANSLATE_NOOP("ui::ApplyDialog", "Plan"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "plan"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog",
                       "Shunts with their parts, jumpers and uncertainties, and the sequence")},
    {&core::ChannelParts::wiring, "applyWiring", QT_TRANSLATE_NOOP("ui::ApplyDialog", "Wiring"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "wiring"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "Pins; jumpers go with the plan")},
    {&core::ChannelParts::instrument, "applyInstrument", QT_TRANSLATE_NOOP("ui::ApplyDialog", "Instrument"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "instrument"),
     QT_TRANSLATE_NOOP(
         "ui::ApplyDialog",
         "Unit, factors, excitation, range, input, balance. A bridge of another template keeps its "
         "bridge factor, a transducer its scale.")},
    {&core::ChannelParts::acquisition, "applyAcquisition",
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "Acquisition"), QT_TRANSLATE_NOOP("ui::ApplyDialog", "acquisition"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "Sample rate, filter, mains")},
    {&core::ChannelParts::limits, "applyLimits", QT_TRANSLATE_NOOP("ui::ApplyDialog", "Limits"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "limits"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "Limits, of figures of merit too, and decision rule")},
    {&core::ChannelParts::uncertainties, "applyUncertainties",
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "Uncertainties"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "uncertainties"),
     QT_TRANSLATE_NOOP("ui::ApplyDialog", "What is stated about everything but shunts")},
}};

QString channelsText(std::size_t count) { return ApplyDialog::tr("%Ln channel(s)", nullptr, int(count)); }

}  // namespace

ApplyDialog::ApplyDialog(Session& session, QWidget* parent)
    : QDialog(parent), m_session(session), m_channels(session) {
  setObjectName("applyDialog");
  setWindowTitle(tr("Apply to channels"));
  resize(1040, 560);
  m_shown.setSourceModel(&m_channels);
  m_shown.setFilterKeyColumn(ApplyChannels::Name);
  m_shown.setFilterCaseSensitivity(Qt::CaseInsensitive);
  auto* layout = new QVBoxLayout(this);
  auto* columns = new QHBoxLayout;
  columns->addWidget(choices());
  columns->addWidget(list(), 1);
  layout->addLayout(columns, 1);
  m_summary = new QLabel;
  m_summary->setObjectName("applySummary");
  m_summary->setTextFormat(Qt::PlainText);
  m_summary->setWordWrap(true);
  layout->addWidget(m_summary);
  layout->addWidget(buttons());
  connect(&m_channels, &ApplyChannels::changed, this, &ApplyDialog::follow);
  m_parts[0]->setChecked(true);
  takeChoice();
}

QWidget* ApplyDialog::choices() {
  auto* group = new QGroupBox(tr("What to apply"));
  group->setFixedWidth(atTextSize(240));
  auto* layout = new QVBoxLayout(group);
  const core::Channel* source = m_session.channel();
  m_handOver = new QRadioButton(tr("Parts of this channel:"));
  m_handOver->setObjectName("applyParts");
  auto* name = new QLabel(source ? toQString(source->name) : QString());
  name->setObjectName("applySource");
  name->setTextFormat(Qt::PlainText);
  name->setWordWrap(true);
  layout->addWidget(m_handOver);
  auto* indented = new QVBoxLayout;
  indented->setContentsMargins(22, 0, 0, 0);
  layout->addLayout(indented);
  indented->addWidget(name);
  for (std::size_t k = 0; k < partCount; ++k) {
    auto* box = new QCheckBox(tr(partRows[k].label));
    box->setObjectName(partRows[k].objectName);
    box->setToolTip(tr(partRows[k].about));
    connect(box, &QCheckBox::toggled, this, &ApplyDialog::takeChoice);
    indented->addWidget(m_parts[k] = box);
  }
  layout->addSpacing(12);
  m_fromStock = new QRadioButton(tr("Resistor values from the stock"));
  m_fromStock->setObjectName("applyStockValues");
  m_fromStock->setToolTip(
      tr("Every shunt whose part is in the stock takes value, due date and uncertainty anew"));
  layout->addWidget(m_fromStock);
  layout->addStretch();
  m_handOver->setChecked(true);
  connect(m_handOver, &QRadioButton::toggled, this, &ApplyDialog::takeChoice);
  return group;
}

QWidget* ApplyDialog::list() {
  auto* group = new QGroupBox(tr("To which channels"));
  auto* layout = new QVBoxLayout(group);
  m_filter = new QLineEdit;
  m_filter->setObjectName("applyFilter");
  m_filter->setAccessibleName(tr("Show channels whose name holds"));
  m_filter->setPlaceholderText(tr("Show channels whose name holds…"));
  m_filter->setClearButtonEnabled(true);
  connect(m_filter, &QLineEdit::textChanged, &m_shown, &QSortFilterProxyModel::setFilterFixedString);
  connect(m_filter, &QLineEdit::textChanged, this, &ApplyDialog::follow);
  layout->addWidget(m_filter);
  m_table = new QTableView;
  m_table->setObjectName("applyChannels");
  m_table->setAccessibleName(tr("Channels"));
  sortByHeader(*m_table);
  m_table->setModel(&m_shown);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setTabKeyNavigation(false);
  m_table->setShowGrid(false);
  m_table->setWordWrap(false);
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->horizontalHeader()->setStretchLastSection(true);
  m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  m_table->setColumnWidth(ApplyChannels::Name, 120);
  m_table->setColumnWidth(ApplyChannels::Bridge, 180);
  m_table->verticalHeader()->setDefaultSectionSize(26);
  m_table->installEventFilter(this);
  layout->addWidget(m_table, 1);
  layout->addWidget(listButtons());
  return group;
}

QWidget* ApplyDialog::listButtons() {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](const char* name, const QString& text, auto act) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, act);
    layout->addWidget(button);
  };
  add("applyAll", tr("All shown"), [this] { chooseShown(false); });
  add("applySameTemplate", tr("Same template"), [this] { chooseShown(true); });
  add("applyNone", tr("None"), [this] { m_channels.chooseOnly({}); });
  layout->addStretch();
  return row;
}

QWidget* ApplyDialog::buttons() {
  auto* box = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  m_ok = box->button(QDialogButtonBox::Ok);
  m_ok->setObjectName("applyOk");
  connect(box, &QDialogButtonBox::accepted, this, &ApplyDialog::apply);
  connect(box, &QDialogButtonBox::rejected, this, &QDialog::reject);
  return box;
}

/// Space ticks the boxes of all selected rows, not of the current one alone.
bool ApplyDialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_table && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space) {
    toggleSelected();
    return true;
  }
  return QDialog::eventFilter(watched, event);
}

void ApplyDialog::toggleSelected() {
  const QModelIndexList rows = m_table->selectionModel()->selectedRows();
  if (rows.isEmpty()) return;
  const auto channelOf = [&](const QModelIndex& row) {
    return static_cast<std::size_t>(m_shown.mapToSource(row).row());
  };
  const bool chosen = !m_channels.isChosen(channelOf(rows.front()));
  for (const QModelIndex& row : rows) m_channels.choose(channelOf(row), chosen);
}

std::vector<std::size_t> ApplyDialog::shownChannels() const {
  std::vector<std::size_t> channels;
  for (int row = 0; row < m_shown.rowCount(); ++row)
    channels.push_back(static_cast<std::size_t>(m_shown.mapToSource(m_shown.index(row, 0)).row()));
  return channels;
}

void ApplyDialog::chooseShown(bool sameTemplate) {
  std::vector<std::size_t> channels = shownChannels();
  const core::Channel* source = m_session.channel();
  if (sameTemplate && source)
    std::erase_if(channels, [&](std::size_t channel) {
      return m_session.document().channels[channel]->setup.bridge.type != source->setup.bridge.type;
    });
  m_channels.chooseOnly(channels);
}

core::ChannelParts ApplyDialog::parts() const {
  core::ChannelParts parts;
  for (std::size_t k = 0; k < partCount; ++k) parts.*partRows[k].member = m_parts[k]->isChecked();
  return parts;
}

QString ApplyDialog::partWords() const {
  QStringList words;
  for (std::size_t k = 0; k < partCount; ++k)
    if (m_parts[k]->isChecked()) words.push_back(tr(partRows[k].word));
  if (words.size() < 2) return words.join(QString());
  const QString last = words.takeLast();
  return tr("%1 and %2").arg(words.join(", "), last);
}

void ApplyDialog::takeChoice() {
  const bool handOver = m_handOver->isChecked();
  for (QCheckBox* box : m_parts) box->setEnabled(handOver);
  if (handOver)
    m_channels.handOver(parts());
  else
    m_channels.takeStockValues();
}

ApplyDialog::Tally ApplyDialog::tally() const {
  Tally tally;
  for (const std::size_t channel : m_channels.chosen()) {
    const ApplyChannels::Fate& fate = m_channels.fate(channel);
    tally.changes += fate.kind == Kind::Changes;
    tally.same += fate.kind == Kind::Same;
    tally.dropped += fate.dropped;
    if (fate.kind != Kind::Refused) continue;
    if (tally.refusals++ == 0)
      tally.firstRefusal = toQString(m_session.document().channels[channel]->name) + ": " + fate.words;
  }
  return tally;
}

/// What will happen, in words.
QString ApplyDialog::summary(const Tally& tally) const {
  if (m_session.document().channels.empty()) return tr("There is no channel yet: add channels first.");
  if (m_handOver->isChecked() && partWords().isEmpty()) return tr("Choose at least one part.");
  if (tally.changes + tally.same + tally.refusals == 0) return tr("Choose channels.");
  QStringList words{tr("%Ln channel(s) change.", nullptr, int(tally.changes))};
  if (tally.same > 0) words += tr("%Ln stay as they are.", nullptr, int(tally.same));
  if (tally.dropped > 0)
    words += tr("%Ln reading(s) of open checks are dropped.", nullptr, int(tally.dropped));
  if (tally.refusals > 0)
    words += tr("%Ln are left alone.", nullptr, int(tally.refusals)) + " " + tally.firstRefusal + ".";
  return words.join(" ");
}

void ApplyDialog::follow() {
  const Tally now = tally();
  m_ok->setEnabled(now.changes > 0);
  m_summary->setText(summary(now));
}

QString ApplyDialog::undoLabel(std::size_t channels) const {
  if (m_fromStock->isChecked()) return tr("Take stock values in %1").arg(channelsText(channels));
  return tr("Apply %1 to %2").arg(partWords(), channelsText(channels));
}

void ApplyDialog::apply() {
  const Tally done = tally();
  if (done.changes == 0) return;
  const QString label = undoLabel(done.changes);
  accept();
  m_session.edit(label, m_channels.result());
  if (done.refusals > 0)
    emit refused(tr("%1 left alone. %2.").arg(channelsText(done.refusals), done.firstRefusal));
}

}  // namespace ui
