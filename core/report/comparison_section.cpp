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

}  // namespace

Section comparisonSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  const auto& [before, after, comparison, cause] = basis.compared.at(index);
  Section section{say("{1}, {2} and {3} compared",
                      {channel.name, channel.checks[before].name, channel.checks[after].name}),
                  2,
                  {}};
  const std::string &nameBefore = channel.checks[before].name, &nameAfter = channel.checks[after].name;
  if (comparison.configuration.empty()) {
    section.blocks.push_back(Paragraph{setupDifferenceSentence(comparison), {}});
  } else {
    section.blocks.push_back(Caution{setupDifferenceSentence(comparison)});
    section.blocks.push_back(configurationTable(comparison, nameBefore, nameAfter));
  }
  section.blocks.push_back(Paragraph{comparison.reason, comparison.verdict});
  if (comparison.steps.empty()) return section;
  section.blocks.push_back(comparisonTable(channel, comparison, before, after));
  std::vector<Entry> compared = comparedFigures(channel, comparison, before);
  std::vector<Entry> figures = figuresOf(channel, evaluation, comparison, before, after);
  figures.erase(figures.begin(), figures.begin() + static_cast<std::ptrdiff_t>(compared.size()));
  section.blocks.push_back(EntryList{say("Figures compared"), std::move(compared)});
  section.blocks.push_back(EntryList{say("Figures of each check"), std::move(figures)});
  addCause(section, setupOf(channel, channel.checks[after]), cause);
  return section;
}

std::optional<Section> trendSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  if (channel.checks.size() < 3) return {};
  const Trend trend = trendOf(channel, basis.evaluations[index]);
  Section section{say("{1}, trend", {channel.name}), 2, {}};
  section.blocks.push_back(trendTable(channel, trend));
  section.blocks.push_back(
      EntryList{say("Control limits"),
                {{say("Gain"), limitsText(trend.gain, 6)}, {say("Zero"), limitsText(trend.zero, 4)}}});
  return section;
}

}  // namespace core
