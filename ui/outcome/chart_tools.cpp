// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/chart_tools.h"

#include <QActionGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QMenu>
#include <QSignalBlocker>
#include <QToolButton>

#include "ui/outcome/check_bars.h"
#include "ui/parts.h"
#include "ui/preferences/appearance.h"

namespace ui {
namespace {

QComboBox* combo(const char* name, const QString& meaning, int letters) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  box->setAccessibleName(meaning);
  box->setToolTip(meaning);
  // Units may be named by the user, at any length.
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(letters);
  return box;
}

}  // namespace

ChartTools::ChartTools(QWidget* parent)
    : QWidget(parent),
      m_kind(combo("outcomeBarKind", tr("What the bars show"), 8)),
      m_unit(combo("outcomeBarUnit", tr("Unit of the bars"), 5)),
      m_options(rememberedChartOptions()) {
  auto* show = toolButton("outcomeShow", tr("Show"), tr("What is drawn besides points and bars"));
  show->setPopupMode(QToolButton::InstantPopup);
  show->setMenu(whatIsShown());
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  row->addWidget(m_kind, 30);
  row->addWidget(m_unit, 20);
  row->addWidget(show);
  row->addStretch(1);
  m_kind->setMaximumWidth(atTextSize(220));
  m_unit->setMaximumWidth(atTextSize(170));
  offer(false, {});
  connect(m_kind, &QComboBox::currentIndexChanged, this, &ChartTools::take);
  connect(m_unit, &QComboBox::currentIndexChanged, this, &ChartTools::take);
}

QMenu* ChartTools::whatIsShown() {
  auto* menu = new QMenu(this);
  menu->setObjectName("outcomeShowMenu");
  const auto add = [&](const char* name, const QString& text, bool checked) {
    auto* action = menu->addAction(text);
    action->setObjectName(name);
    action->setCheckable(true);
    action->setChecked(checked);
    connect(action, &QAction::toggled, this, &ChartTools::take);
    return action;
  };
  m_line = add("outcomeLine", tr("Fitted &line"), m_options.line);
  m_confidence = add("outcomeConfidence", tr("95 % &confidence band of the line"), m_options.confidence);
  m_prediction = add("outcomePrediction", tr("95 % &prediction band of a new reading"), m_options.prediction);
  m_errorBars = add("outcomeErrorBars", tr("&Uncertainty of each point"), m_options.errorBars);
  m_branches = add("outcomeBranches", tr("&Rising and falling readings"), m_options.branches);
  menu->addSeparator();
  m_fitBars = add("outcomeFitBars", tr("Fit axis to &bars"), m_options.fit == BarFit::Bars);
  m_fitLimits = add("outcomeFitLimits", tr("Fit axis to li&mits"), m_options.fit == BarFit::Limits);
  auto* fits = new QActionGroup(menu);
  fits->addAction(m_fitBars);
  fits->addAction(m_fitLimits);
  return menu;
}

void ChartTools::offer(bool pair, const QString& unit) {
  offerKinds(pair);
  offerUnits(unit);
}

void ChartTools::offerKinds(bool pair) {
  if (m_kind->count() > 0 && pair == m_hadPair) return;
  m_hadPair = pair;
  const QSignalBlocker quiet(m_kind);
  m_kind->clear();
  m_kind->addItem(tr("Deviation from expected"), int(BarKind::Deviation));
  m_kind->addItem(tr("Residual from the line"), int(BarKind::Residual));
  if (pair) m_kind->addItem(tr("Difference of the checks"), int(BarKind::Difference));
  m_kind->setCurrentIndex(pair ? 2 : 0);
  m_options.kind = static_cast<BarKind>(m_kind->currentData().toInt());
}

void ChartTools::offerUnits(const QString& unit) {
  const QSignalBlocker quiet(m_unit);
  const QVariant chosen = m_unit->currentData();
  m_unit->clear();
  for (const BarUnit kind :
       {BarUnit::Reading, BarUnit::PercentOfReading, BarUnit::PercentOfSpan, BarUnit::Standardised})
    // What two checks have in common is not known, and so is the uncertainty of their difference.
    if (kind != BarUnit::Standardised || m_options.kind != BarKind::Difference)
      m_unit->addItem(barUnitText(kind, unit), int(kind));
  m_unit->setCurrentIndex(std::max(0, m_unit->findData(chosen)));
  m_options.unit = static_cast<BarUnit>(m_unit->currentData().toInt());
}

void ChartTools::take() {
  const ChartOptions before = m_options;
  m_options.kind = static_cast<BarKind>(m_kind->currentData().toInt());
  m_options.unit = static_cast<BarUnit>(m_unit->currentData().toInt());
  m_options.line = m_line->isChecked();
  m_options.confidence = m_confidence->isChecked();
  m_options.prediction = m_prediction->isChecked();
  m_options.errorBars = m_errorBars->isChecked();
  m_options.branches = m_branches->isChecked();
  m_options.fit = m_fitLimits->isChecked() ? BarFit::Limits : BarFit::Bars;
  if (m_options == before) return;
  rememberChartOptions(m_options);
  emit optionsChanged();
}

}  // namespace ui
