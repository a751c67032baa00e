// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/comparison_section.h"

#include "core/compare/trend.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/tables.h"

namespace core {
namespace {

/// What changed physically, and the data that were taken in between.
void addCause(Section& section, const Setup& setup, const ChangeCause& cause) {
  if (!cause.diagnosis.sentence.empty()) {
    section.blocks.push_back(Paragraph{say("What changed: {1}", {cause.diagnosis.sentence}), {}});
    if (cause.diagnosis.tied > 1) section.blocks.push_back(causeTable(cause.diagnosis, cause.diagnosis.tied));
    if (!cause.diagnosis.explanations.empty()) {
      section.blocks.push_back(Paragraph{suspicionStatement(), {}});
      EntryList entries = causeEntries(setup, cause.diagnosis.explanations.front(), cause.diagnosis.tied > 1);
      if (!entries.entries.empty()) section.blocks.push_back(std::move(entries));
    }
  }
  if (cause.data && !cause.data->sentence.empty())
    section.blocks.push_back(Caution{say("Data taken in between: {1}", {cause.data->sentence})});
}

std::string limitsText(const std::optional<ControlLimits>& limits, int decimals) {
  if (!limits) return say("none: fewer than three checks with a line");
  return say("{1}, from {2} to {3}",
             {shown(shownNumber(limits->centre, decimals)), shown(shownNumber(limits->lower, decimals)),
              shown(shownNumber(limits->upper, decimals))});
}

Table trendTable(const Channel& channel, const Trend& trend, const std::string& unit) {
  Table table{say("Gain and zero of every check"),
              {{say("Check")},
               {say("Date")},
               {say("Gain"), true},
               {say("u of gain"), true},
               {say("Zero, {1}", {unit}), true},
               {say("u of zero, {1}", {unit}), true}},
              {}};
  std::vector<double> zeros;
  for (const TrendPoint& point : trend.points)
    if (point.zero) zeros.push_back(*point.zero);
  for (const TrendPoint& point : trend.points)
    table.rows.push_back({{channel.checks[point.check].name, point.day ? shown(*point.day) : say("not given"),
                           shownNumber(point.gain, 6), shownUncertainty(point.gainStandard),
                           shownNumber(point.zero, decimalsFor(zeros)), shownUncertainty(point.zeroStandard)},
                          {}});
  return table;
}

}  // namespace

Section comparisonSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  const auto& [before, after, comparison, cause] = basis.compared.at(index);
  Section section{say("{1}, {2} and {3} compared",
                      {channel.name, channel.checks[before].name, channel.checks[after].name}),
                  2,
                  {}};
  const std::string sentence = setupDifferenceSentence(comparison);
  if (!comparison.configuration.empty()) section.blocks.push_back(Caution{sentence});
  section.blocks.push_back(Paragraph{comparison.reason, comparison.verdict});
  if (comparison.configuration.empty()) section.blocks.push_back(Paragraph{sentence, {}});
  if (comparison.steps.empty()) return section;
  section.blocks.push_back(comparisonTable(channel, comparison, before, after));
  std::vector<Entry> figures = figuresOf(channel, evaluation, comparison, before, after);
  const auto own = static_cast<std::ptrdiff_t>(comparedFigures(channel, comparison, before).size());
  const auto each = figures.begin() + own;  // behind them those of either check
  section.blocks.push_back(EntryList{say("Figures compared"), {figures.begin(), each}});
  section.blocks.push_back(EntryList{say("Figures of each check"), {each, figures.end()}});
  addCause(section, setupOf(channel, channel.checks[after]), cause);
  return section;
}

std::optional<Section> trendSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  if (channel.checks.size() < 3) return {};
  const Trend trend = trendOf(channel, basis.evaluations[index]);
  Section section{say("{1}, trend", {channel.name}), 2, {}};
  if (!trend.sentence.empty()) section.blocks.push_back(Paragraph{trend.sentence, {}});
  if (trend.points.empty()) return section.blocks.empty() ? std::nullopt : std::optional(section);
  section.blocks.push_back(trendTable(channel, trend, readingUnitText(channel.setup.instrument)));
  section.blocks.push_back(
      EntryList{say("Control limits"),
                {{say("Gain"), limitsText(trend.gain, 6)}, {say("Zero"), limitsText(trend.zero, 4)}}});
  return section;
}

}  // namespace core
