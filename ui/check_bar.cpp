// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/check_bar.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>

#include "core/document/edits.h"
#include "core/units/day_words.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/text_form_dialog.h"
#include "ui/theme.h"

namespace ui {
namespace {

void fill(QComboBox* box, const QStringList& items, int current) {
  const QSignalBlocker quiet(box);
  box->clear();
  box->addItems(items);
  box->setCurrentIndex(current);
}

/// What was typed about the surroundings; nothing where nothing was.
core::Result<core::Ambient> ambientFrom(const std::string& air, const std::string& humidity) {
  core::Ambient ambient;
  if (!air.empty()) {
    const auto value = core::parseQuantity(air, core::UnitFamily::Temperature);
    if (!value) return value.error();
    if (!(*value > -100 && *value < 200))
      return core::Error{"", core::say("that is no temperature of the air"),
                         core::say("Enter it in °C, such as 21")};
    ambient.air = core::Temperature(*value);
  }
  if (!humidity.empty()) {
    const auto value = core::parseQuantity(humidity, core::UnitFamily::Percent);
    if (!value) return value.error();
    if (!(*value >= 0 && *value <= 1))
      return core::Error{"", core::say("a relative humidity is between 0 % and 100 %"),
                         core::say("Enter it such as 45 %")};
    ambient.humidity = *value;
  }
  return ambient;
}

/// The channel with what the dialog's lines, in the order of `editDetails`, say of a check.
core::Result<core::Channel> withDetails(core::Channel channel, std::size_t number,
                                        const TextFormDialog& lines) {
  const std::string name = lines.text(0);
  if (name.empty()) return core::Error{"", core::say("a check needs a name"), core::say("Enter one")};
  for (std::size_t k = 0; k < channel.checks.size(); ++k)
    if (k != number && channel.checks[k].name == name)
      return core::Error{"", core::say("another check of this channel has that name"),
                         core::say("Enter another one")};
  const auto day = core::dayFromWords(lines.text(1));
  if (!day) return day.error();
  const auto ambient = ambientFrom(lines.text(4), lines.text(5));
  if (!ambient) return ambient.error();
  core::Check& check = channel.checks[number];
  check.name = name;
  check.date = *day ? core::dateText(**day) : std::string();
  check.person = lines.text(2);
  check.remark = lines.text(3);
  check.ambient = *ambient;
  return channel;
}

int rowOf(const std::optional<std::size_t>& index) { return index ? static_cast<int>(*index) + 1 : 0; }

std::optional<std::size_t> indexOf(int row) {
  return row > 0 ? std::optional(static_cast<std::size_t>(row - 1)) : std::nullopt;
}

}  // namespace

CheckBar::CheckBar(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 4, 0);
  m_check = new QComboBox;
  m_check->setObjectName("checkBox");
  m_check->setAccessibleName(tr("Check"));
  m_compared = new QComboBox;
  m_compared->setObjectName("comparedBox");
  m_compared->setAccessibleName(tr("Compare with"));
  for (auto* box : {m_check, m_compared}) {
    box->setMinimumContentsLength(14);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumWidth(6 * box->fontMetrics().horizontalAdvance('m'));  // gives way in a narrow window
  }
  line->addWidget(new QLabel(tr("Check")));
  line->addWidget(m_check);
  connect(tool("addCheck", tr("New"), tr("Start a check and type or paste its readings")),
          &QToolButton::clicked, this, &CheckBar::addCheck);
  connect(tool("fromRecording", tr("From recording…"), tr("Find the held levels in a recording")),
          &QToolButton::clicked, this, &CheckBar::recordingWanted);
  m_close = tool("closeCheck", tr("Close check"), tr("Keep the set-up that this check is judged by"));
  connect(m_close, &QToolButton::clicked, this, &CheckBar::closeOrReopen);
  m_comparison = new QWidget;
  auto* comparisonLine = new QHBoxLayout(m_comparison);
  comparisonLine->setContentsMargins(0, 0, 0, 0);
  comparisonLine->addWidget(new QLabel(tr("Compare with")));
  comparisonLine->addWidget(m_compared);
  connect(m_check, &QComboBox::activated, this, [this](int row) { m_session.selectCheck(indexOf(row)); });
  connect(m_compared, &QComboBox::activated, this, [this](int row) { m_session.compareWith(indexOf(row)); });
  connect(&session, &Session::changed, this, &CheckBar::refresh);
  refresh();
}

QToolButton* CheckBar::tool(const QString& name, const QString& text, const QString& tip) {
  auto* button = toolButton(name, text, tip);
  layout()->addWidget(button);
  return button;
}

void CheckBar::refresh() {
  QStringList names;
  if (const core::Channel* channel = m_session.channel())
    for (const core::Check& check : channel->checks)
      names << (check.closedWith ? tr("%1 (closed)") : QString("%1")).arg(toQString(check.name));
  const Selection& chosen = m_session.selection();
  fill(m_check, QStringList{tr("plan only")} + names, rowOf(chosen.check));
  m_check->setEnabled(!names.isEmpty());
  fill(m_compared, QStringList{tr("nothing")} + names, rowOf(chosen.compared));
  m_compared->setEnabled(names.size() > 1);
  m_close->setText(m_session.checkIsClosed() ? tr("Reopen check") : tr("Close check"));
  m_close->setEnabled(m_session.check() != nullptr);
}

void CheckBar::addCheck() {
  if (!m_session.channel()) return emit refused(tr("There is no channel yet: add a channel first."));
  core::Check check;
  check.name = core::usualCheckName(*m_session.channel());
  check.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
  m_session.editChannel(tr("Add check"), core::withCheckAdded(*m_session.channel(), std::move(check)));
  m_session.selectCheck(m_session.channel()->checks.size() - 1);
}

void CheckBar::removeCheck() {
  if (!m_session.check()) return emit refused(tr("There is no check to remove."));
  m_session.editChannel(tr("Remove check"),
                        core::withCheckRemoved(*m_session.channel(), *m_session.selection().check));
}

void CheckBar::closeOrReopen() {
  if (!m_session.check()) return;
  const std::size_t check = *m_session.selection().check;
  const core::Channel& channel = *m_session.channel();
  if (m_session.checkIsClosed())
    m_session.editChannel(tr("Reopen check"), core::withCheckReopened(channel, check));
  else
    m_session.editChannel(tr("Close check"), core::withCheckClosed(channel, check));
}

void CheckBar::editDetails() {
  if (!m_session.check()) return;
  const core::Check& check = *m_session.check();
  TextFormDialog dialog(
      tr("Details of the check"),
      {{tr("Name"), toQString(check.name), tr("pre-test")},
       {tr("Date"), toQString(check.date), tr("2026-05-31")},
       {tr("Made by"), toQString(check.person), {}},
       {tr("Remark"), toQString(check.remark), {}},
       {tr("Air temperature"),
        check.ambient.air ? quantityText(check.ambient.air->base(), core::UnitFamily::Temperature)
                          : QString(),
        tr("21 °C; empty: not noted"), CellNumber{core::UnitFamily::Temperature, {}}},
       {tr("Relative humidity"),
        check.ambient.humidity ? quantityText(*check.ambient.humidity, core::UnitFamily::Percent) : QString(),
        tr("45 %; empty: not noted"), CellNumber{core::UnitFamily::Percent, {}}}},
      this);
  const auto changed = [&] {
    return withDetails(*m_session.channel(), *m_session.selection().check, dialog);
  };
  dialog.setObjection([&] {
    const auto channel = changed();
    return channel ? QString() : toText(channel.error());
  });
  if (dialog.exec() != QDialog::Accepted) return;
  if (auto channel = changed()) m_session.editChannel(tr("Change check details"), *std::move(channel));
}

}  // namespace ui
