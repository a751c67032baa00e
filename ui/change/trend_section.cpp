// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/trend_section.h"

#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "core/units/language.h"
#include "ui/change/section_parts.h"
#include "ui/change/trend_chart.h"
#include "ui/outcome/figure_grid.h"
#include "ui/parts.h"
#include "ui/quantity_edit.h"
#include "ui/sheet_view.h"
#include "ui/tables/table_tools.h"

namespace ui {
namespace {

constexpr int gainDigits = 6;
constexpr int zeroDigits = 5;

bool isIn(const std::vector<std::size_t>& indices, std::size_t index) {
  return std::find(indices.begin(), indices.end(), index) != indices.end();
}

/// The points that have the figure `value`.
QList<TrendMark> marksOf(const ShownChange& shown, std::optional<double> core::TrendPoint::*value,
                         std::optional<double> core::TrendPoint::*standard,
                         const std::vector<std::size_t>& beyond, int digits) {
  QList<TrendMark> marks;
  for (std::size_t k = 0; k < shown.trend.points.size(); ++k) {
    const core::TrendPoint& point = shown.trend.points[k];
    if (!(point.*value)) continue;
    TrendMark mark;
    mark.check = point.check;
    mark.day = point.day;
    mark.value = *(point.*value);
    mark.standard = point.*standard;
    mark.beyond = isIn(beyond, k);
    mark.compared = point.check == shown.pair.before || point.check == shown.pair.after;
    mark.name = toQString(shown.channel->checks[point.check].name);
    if (point.day) mark.dayText = toQString(core::shown(*point.day));
    mark.text = mark.name + (mark.dayText.isEmpty() ? QString() : ", " + mark.dayText) + ": " +
                numberText(mark.value, digits);
    if (mark.standard) mark.text += " ± " + numberText(2 * *mark.standard, 2);
    mark.text =
        (mark.beyond ? TrendSection::tr("%1, beyond the control limits.") : QString("%1.")).arg(mark.text);
    marks.append(mark);
  }
  return marks;
}

std::string cell(const std::optional<double>& value, int digits) {
  return value ? numberText(*value, digits).toStdString() : std::string();
}

}  // namespace

TrendSection::TrendSection(QWidget* parent) : QWidget(parent) {
  setObjectName("changeTrend");
  setAccessibleName(tr("All checks over time"));
  m_sentence = plainLabel("trendSentence");
  m_gain = new TrendChart("trendGain");
  m_zero = new TrendChart("trendZero");
  m_charts = new QBoxLayout(QBoxLayout::TopToBottom);
  m_charts->setSpacing(6);
  m_charts->addWidget(m_gain, 1);
  m_charts->addWidget(m_zero, 1);
  m_table = sectionTable("trendTable", tr("All checks over time as a table"), &m_model);
  sortByHeader(*m_table);
  m_table->setToolTip(tr("Return or a double click compares the check"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(sectionTitle("trendTitle", tr("All checks over time")));
  column->addWidget(m_sentence);
  column->addLayout(m_charts);
  column->addWidget(m_table);
  for (TrendChart* chart : {m_gain, m_zero})
    connect(chart, &TrendChart::checkClicked, this, &TrendSection::checkChosen);
  connect(m_table, &QAbstractItemView::activated, this, [this](const QModelIndex& index) {
    const auto row = static_cast<std::size_t>(index.row());
    if (row < m_checks.size()) emit checkChosen(m_checks[row]);
  });
}

core::Table TrendSection::tableOf(const ShownChange& shown) const {
  const auto name = [](const QString& text) { return text.toStdString(); };
  const std::string unit = ", " + shown.unit;
  core::Table table;
  table.columns = {{name(tr("Check"))},
                   {name(tr("Day"))},
                   {name(tr("Gain")), true},
                   {name(tr("u of gain")), true},
                   {name(tr("Zero")) + unit, true},
                   {name(tr("u of zero")) + unit, true},
                   {name(tr("In words"))}};
  for (std::size_t k = 0; k < shown.trend.points.size(); ++k) {
    const core::TrendPoint& point = shown.trend.points[k];
    const bool gain = isIn(shown.trend.beyondGain, k), zero = isIn(shown.trend.beyondZero, k);
    const bool judged = shown.trend.gain || shown.trend.zero;
    const QString words = gain && zero ? tr("▲ gain and zero beyond")
                          : gain       ? tr("▲ gain beyond")
                          : zero       ? tr("▲ zero beyond")
                          : judged     ? tr("● within limits")
                                       : tr("no limits yet");
    table.rows.push_back(
        {{shown.channel->checks[point.check].name, point.day ? core::shown(*point.day) : std::string(),
          cell(point.gain, gainDigits), cell(point.gainStandard, 2), cell(point.zero, zeroDigits),
          cell(point.zeroStandard, 2), words.toStdString()},
         {}});
  }
  return table;
}

void TrendSection::showTrend(const ShownChange& shown) {
  const core::Trend& trend = shown.trend;
  setVisible(!trend.points.empty());
  if (trend.points.empty()) return;
  m_sentence->setText(withWholeUnits(toQString(trend.sentence)));
  m_sentence->setVisible(!trend.sentence.empty());
  m_gain->showTrend(
      tr("Gain, measured over expected"),
      marksOf(shown, &core::TrendPoint::gain, &core::TrendPoint::gainStandard, trend.beyondGain, gainDigits),
      trend.gain);
  m_zero->showTrend(
      tr("Zero reading, %1").arg(toQString(shown.unit)),
      marksOf(shown, &core::TrendPoint::zero, &core::TrendPoint::zeroStandard, trend.beyondZero, zeroDigits),
      trend.zero);
  m_gain->setVisible(!m_gain->marks().isEmpty());
  m_zero->setVisible(!m_zero->marks().isEmpty());
  m_checks.clear();
  for (const core::TrendPoint& point : trend.points) m_checks.push_back(point.check);
  m_model.setTable(tableOf(shown));
  fitToRows(m_table);
}

void TrendSection::setWide(bool wide) {
  m_charts->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

}  // namespace ui
