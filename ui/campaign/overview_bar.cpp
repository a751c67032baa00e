// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/campaign/overview_bar.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/campaign/overview_words.h"
#include "ui/parts.h"

namespace ui {
namespace {

core::Verdict verdictOf(CheckState state) {
  switch (state) {
    case CheckState::Fail:
      return core::Verdict::Fail;
    case CheckState::CannotTell:
      return core::Verdict::CannotTell;
    case CheckState::Pass:
      return core::Verdict::Pass;
    case CheckState::NotJudged:
    case CheckState::NotChecked:
      break;
  }
  return core::Verdict::NotJudged;
}

}  // namespace

OverviewBar::OverviewBar(QWidget* parent) : QWidget(parent) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(4);
  m_text = new QLineEdit;
  m_text->setObjectName("overviewFilter");
  m_text->setAccessibleName(tr("Show channels that hold these words"));
  m_text->setPlaceholderText(tr("Show channels that hold…"));
  m_text->setClearButtonEnabled(true);
  m_text->setMinimumWidth(120);
  connect(m_text, &QLineEdit::textChanged, this, &OverviewBar::changed);
  line->addWidget(m_text, 1);
  m_state = choice("overviewVerdict", tr("Verdict"));
  m_state->addItem(tr("any verdict"));
  for (const CheckState state : {CheckState::Fail, CheckState::CannotTell, CheckState::NotJudged,
                                 CheckState::NotChecked, CheckState::Pass})
    m_state->addItem(stateWord(state), static_cast<int>(state));
  m_change = choice("overviewChange", tr("Change"));
  m_change->addItem(tr("any change"));
  for (const core::Change change : {core::Change::Changed, core::Change::CannotTell, core::Change::Harmless,
                                    core::Change::Unchanged, core::Change::NotCompared})
    m_change->addItem(changeWord(change), static_cast<int>(change));
  m_group = choice("overviewGroup", tr("Group"));
  m_overdue =
      toggle("overviewOverdue", tr("Overdue"), tr("Only with a resistor or instrument past its due date"));
  m_remarks = toggle("overviewRemarks", tr("Remarks"), tr("Only with remarks that are not settled"));
  m_open = toggle("overviewOpen", tr("Open"), tr("Only those whose latest check is not closed"));
  m_clear = toolButton("overviewClear", tr("Show all"), tr("Take all these choices back"));
  connect(m_clear, &QToolButton::clicked, this, &OverviewBar::clear);
  line->addWidget(m_clear);
  line->addSpacing(8);
  m_grouping = choice("overviewGrouping", tr("Rows together by"));
  m_grouping->addItem(tr("not grouped"), static_cast<int>(Grouping::None));
  m_grouping->addItem(tr("by group"), static_cast<int>(Grouping::Group));
  m_grouping->addItem(tr("by bridge"), static_cast<int>(Grouping::Bridge));
  m_grouping->addItem(tr("by verdict"), static_cast<int>(Grouping::Verdict));
  connect(this, &OverviewBar::changed, this, [this] { m_clear->setEnabled(leavesOut(filter())); });
  for (QComboBox* box : {m_state, m_change, m_group, m_grouping}) {
    line->addWidget(box);
    connect(box, &QComboBox::currentIndexChanged, this, &OverviewBar::changed);
  }
  for (int place = 1; QWidget * widget : std::initializer_list<QWidget*>{m_state, m_change, m_group})
    line->insertWidget(place++, widget);
  m_groups << QString();  // not yet the ones that are there
  offerGroups({});
  m_clear->setEnabled(false);
}

QComboBox* OverviewBar::choice(const char* name, const QString& accessibleName) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  box->setAccessibleName(accessibleName);
  box->setToolTip(accessibleName);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(9);
  box->setMinimumWidth(64);  // where words are long, rather than a window that does not fit on its screen
  return box;
}

QToolButton* OverviewBar::toggle(const char* name, const QString& text, const QString& tip) {
  auto* button = toolButton(name, text, tip);
  button->setCheckable(true);
  connect(button, &QToolButton::toggled, this, &OverviewBar::changed);
  layout()->addWidget(button);
  return button;
}

void OverviewBar::offerGroups(const QStringList& groups) {
  if (groups == m_groups) return;
  m_groups = groups;
  const QVariant chosen = m_group->currentData();
  {
    const QSignalBlocker quiet(m_group);
    m_group->clear();
    m_group->addItem(tr("any group"));
    m_group->addItem(tr("without a group"), QString());
    for (const QString& group : groups) m_group->addItem(group, group);
    m_group->setCurrentIndex(chosen.isValid() ? std::max(0, m_group->findData(chosen)) : 0);
  }
  if (chosen != m_group->currentData()) emit changed();
}

core::OverviewFilter OverviewBar::filter() const {
  core::OverviewFilter filter;
  filter.text = m_text->text().toStdString();
  if (m_state->currentData().isValid()) {
    const auto state = static_cast<CheckState>(m_state->currentData().toInt());
    filter.unchecked = state == CheckState::NotChecked;
    if (!filter.unchecked) filter.verdict = verdictOf(state);
  }
  if (m_change->currentData().isValid())
    filter.change = static_cast<core::Change>(m_change->currentData().toInt());
  if (m_group->currentIndex() > 0) filter.group = m_group->currentData().toString().toStdString();
  filter.overdue = m_overdue->isChecked();
  filter.remarks = m_remarks->isChecked();
  filter.open = m_open->isChecked();
  return filter;
}

Grouping OverviewBar::grouping() const { return static_cast<Grouping>(m_grouping->currentData().toInt()); }

void OverviewBar::clear() {
  {
    const QSignalBlocker quiet(this);
    m_text->clear();
    for (QComboBox* box : {m_state, m_change, m_group}) box->setCurrentIndex(0);
    for (QToolButton* button : {m_overdue, m_remarks, m_open}) button->setChecked(false);
  }
  emit changed();
}

}  // namespace ui
