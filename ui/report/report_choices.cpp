// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_choices.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QGroupBox>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/locale.h"
#include "ui/preferences/appearance.h"
#include "ui/theme.h"

namespace ui {
namespace {

using core::ReportPart;

QString capital(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}

struct PartGroup {
  QString name;
  std::vector<ReportPart> parts;
};

std::vector<PartGroup> partGroups() {
  return {{ReportChoices::tr("At the front"), {ReportPart::Cover, ReportPart::Contents, ReportPart::Summary}},
          {ReportChoices::tr("Of each channel"),
           {ReportPart::Schematic, ReportPart::Setup, ReportPart::Wiring, ReportPart::Plan,
            ReportPart::Budget, ReportPart::Working}},
          {ReportChoices::tr("Of its checks"),
           {ReportPart::Readings, ReportPart::Chart, ReportPart::Merits, ReportPart::Diagnosis,
            ReportPart::Comparison, ReportPart::Trend}},
          {ReportChoices::tr("For the record"),
           {ReportPart::Remarks, ReportPart::Traceability, ReportPart::History, ReportPart::SignOffBlock}}};
}

}  // namespace

ReportChoices::ReportChoices(const core::Document& document, std::size_t channel, QWidget* parent)
    : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(makeParts());
  column->addWidget(makeChannels(document, channel));
  column->addWidget(makeWriting());
  column->addStretch();
}

QWidget* ReportChoices::makeParts() {
  auto* parts = new QWidget;
  auto* grid = new QGridLayout(parts);
  grid->setContentsMargins(0, 0, 0, 0);
  int place = 0;
  for (const PartGroup& group : partGroups()) {
    auto* box = new QGroupBox(group.name);
    auto* boxes = new QVBoxLayout(box);
    boxes->setSpacing(2);
    for (const ReportPart part : group.parts) {
      auto* check = new QCheckBox(capital(toQString(core::reportPartName(part))));
      check->setObjectName("part_" + toQString(core::reportPartKey(part)));
      check->setAccessibleDescription(group.name);
      connect(check, &QCheckBox::toggled, this, &ReportChoices::take);
      boxes->addWidget(check);
      m_parts[part] = check;
    }
    boxes->addStretch();
    // Two columns: front and record are short, channels and checks long.
    constexpr int rows[] = {0, 1, 1, 0}, columns[] = {0, 0, 1, 1};
    grid->addWidget(box, rows[place], columns[place]);
    ++place;
  }
  return parts;
}

QWidget* ReportChoices::makeChannels(const core::Document& document, std::size_t channel) {
  auto* box = new QGroupBox(tr("Channels"));
  auto* column = new QVBoxLayout(box);
  m_which = new QComboBox;
  m_which->setObjectName("reportChannels");
  m_which->setAccessibleName(tr("Which channels"));
  m_which->addItems(
      {tr("All channels"), tr("Those that do not pass or have changed"), tr("Those ticked below")});
  m_list = new QListWidget;
  m_list->setObjectName("reportChannelList");
  m_list->setAccessibleName(tr("Channels of the report"));
  m_list->setMaximumHeight(atTextSize(140));
  for (std::size_t k = 0; k < document.channels.size(); ++k) {
    auto* item = new QListWidgetItem(toQString(document.channels[k]->name), m_list);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(k == channel ? Qt::Checked : Qt::Unchecked);
  }
  m_latest = new QCheckBox(tr("Only the latest check of each channel"));
  m_latest->setObjectName("reportLatestOnly");
  column->addWidget(m_which);
  column->addWidget(m_list);
  column->addWidget(m_latest);
  connect(m_which, &QComboBox::currentIndexChanged, this, &ReportChoices::take);
  connect(m_list, &QListWidget::itemChanged, this, &ReportChoices::take);
  connect(m_latest, &QCheckBox::toggled, this, &ReportChoices::take);
  return box;
}

QWidget* ReportChoices::makeWriting() {
  auto* box = new QGroupBox(tr("Language"));
  auto* grid = new QGridLayout(box);
  m_language = new QComboBox;
  m_language->setObjectName("reportLanguage");
  m_language->setAccessibleName(tr("Language of the report"));
  for (const QString& code : interfaceLanguages()) m_language->addItem(languageName(code), code);
  m_localNumbers = new QCheckBox(tr("Numbers and days as that language writes them"));
  m_localNumbers->setObjectName("reportLocalNumbers");
  m_localNumbers->setToolTip(tr("Else with a decimal point and days as 2026-11-26"));
  grid->addWidget(m_language, 0, 0);
  grid->addWidget(m_localNumbers, 1, 0);
  connect(m_language, &QComboBox::currentIndexChanged, this, &ReportChoices::take);
  connect(m_localNumbers, &QCheckBox::toggled, this, &ReportChoices::take);
  return box;
}

void ReportChoices::show(const core::ReportTemplate& chosen) {
  m_isShowing = true;
  for (const auto& [part, check] : m_parts) check->setChecked(core::hasPart(chosen, part));
  m_which->setCurrentIndex(int(chosen.channels));
  m_latest->setChecked(chosen.latestCheckOnly);
  m_language->setCurrentIndex(std::max(0, m_language->findData(toQString(chosen.language))));
  m_localNumbers->setChecked(chosen.localNumbers);
  m_list->setVisible(chosen.channels == core::ReportChannels::Chosen);
  m_isShowing = false;
  m_content = chosen;
  emit changed();
}

void ReportChoices::take() {
  if (m_isShowing) return;
  m_content.parts.clear();
  for (const auto& [part, check] : m_parts)
    if (check->isChecked()) m_content.parts.insert(part);
  m_content.channels = core::ReportChannels(m_which->currentIndex());
  m_content.latestCheckOnly = m_latest->isChecked();
  m_content.language = m_language->currentData().toString().toStdString();
  m_content.localNumbers = m_localNumbers->isChecked();
  m_list->setVisible(m_content.channels == core::ReportChannels::Chosen);
  emit changed();
}

std::vector<std::size_t> ReportChoices::channels() const {
  std::vector<std::size_t> ticked;
  for (int row = 0; row < m_list->count(); ++row)
    if (m_list->item(row)->checkState() == Qt::Checked) ticked.push_back(std::size_t(row));
  return ticked;
}

}  // namespace ui
