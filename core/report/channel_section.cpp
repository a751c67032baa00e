// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/channel_section.h"

#include "core/circuit/hookup_words.h"
#include "core/plan/heating.h"
#include "core/plan/overdue.h"
#include "core/report/check_section.h"
#include "core/report/comparison_section.h"
#include "core/report/figures.h"
#include "core/report/record_words.h"
#include "core/report/setup_entries.h"
#include "core/report/tables.h"
#include "core/report/uncertainty_section.h"
#include "core/report/wiring_section.h"
#include "core/report/working_section.h"

namespace core {
namespace {

void addPlan(Section& section, const Setup& setup, const ChannelEvaluation& evaluation) {
  const SetupPrediction& prediction = evaluation.prediction;
  if (setup.shunts.empty())
    section.blocks.push_back(Paragraph{say("The channel has no shunts."), {}});
  else
    section.blocks.push_back(shuntTable(setup));
  if (!prediction.zero)
    section.blocks.push_back(Caution{say("Cannot be predicted: {1}", {prediction.zero.error().text()})});
  if (setup.sequence.empty()) {
    section.blocks.push_back(Paragraph{say("The channel has no steps."), {}});
    return;
  }
  section.blocks.push_back(planTable(setup, prediction, evaluation.budget));
  if (!prediction.zero) return;
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (!prediction.steps[step])
      section.blocks.push_back(
          Caution{say("Step {1} cannot be predicted: {2}",
                      {std::to_string(step + 1), prediction.steps[step].error().text()})});
}

/// Self-heating, when the grid of the gauges is known.
void addHeat(Section& section, const Setup& setup) {
  const auto advice = heatAdvice(setup);
  if (!advice) return;
  std::string text = say("Self-heating: {1}", {advice->text});
  if (advice->verdict == HeatVerdict::Above)
    section.blocks.push_back(Caution{std::move(text)});
  else
    section.blocks.push_back(Paragraph{std::move(text), {}});
}

void addSetup(Section& section, const Channel& channel, const ChannelEvaluation& evaluation) {
  const Setup& setup = channel.setup;
  section.blocks.push_back(bridgeEntries(setup.bridge, evaluation.prediction.zero));
  section.blocks.push_back(instrumentEntries(setup.instrument));
  if (EntryList acquisition = acquisitionEntries(setup.acquisition); !acquisition.entries.empty())
    section.blocks.push_back(std::move(acquisition));
  section.blocks.push_back(limitEntries(setup));
  section.blocks.push_back(Paragraph{say("Decision rule: {1}.", {decisionText(setup.decision)}), {}});
  section.blocks.push_back(Paragraph{say("Instrument: {1}.", {identityText(setup.identity)}), {}});
  if (EntryList effects = effectEntries(setup); !effects.entries.empty())
    section.blocks.push_back(std::move(effects));
  addHeat(section, setup);
  section.blocks.push_back(leadTable(setup.bridge));
}

Section headSection(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  Section section{say("Channel {1}", {channel.name}), 1, {}};
  section.blocks.push_back(
      Paragraph{say("Status: {1}.", {basis.overview.at(index).status}), evaluation.verdict});
  if (const std::string connection = hookupText(channel.setup.bridge); !connection.empty())
    section.blocks.push_back(
        Caution{say("Not connected as the template says, and predicted and judged so: {1}", {connection})});
  if (basis.has(ReportPart::Schematic))
    section.blocks.push_back(
        Picture{Picture::Kind::Bridge, index, 0,
                say("Bridge of channel {1} with its leads and shunts, all shunts open", {channel.name})});
  const BridgeTemplate& shape = templateOf(channel.setup.bridge.type);
  section.blocks.push_back(Paragraph{std::string(shape.name) + ". " + std::string(shape.about), {}});
  if (!channel.note.empty()) section.blocks.push_back(Paragraph{channel.note, {}});
  if (basis.has(ReportPart::Setup)) addSetup(section, channel, evaluation);
  if (basis.order.printed)
    if (std::string overdue = overdueSentence(channel.setup, *basis.order.printed); !overdue.empty())
      section.blocks.push_back(Caution{std::move(overdue)});
  if (basis.has(ReportPart::Plan)) addPlan(section, channel.setup, evaluation);
  if (channel.checks.empty())
    section.blocks.push_back(Paragraph{say("The channel has not been checked."), Verdict::NotJudged});
  return section;
}

/// Whether the template wants anything of single checks.
bool hasChecks(const ReportBasis& basis) {
  using enum ReportPart;
  for (const ReportPart part : {Readings, Chart, Merits, Diagnosis, Remarks})
    if (basis.has(part)) return true;
  return false;
}

}  // namespace

std::vector<Section> channelSections(const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  std::vector<Section> sections{headSection(basis, index)};
  const auto add = [&](std::optional<Section> section) {
    if (section) sections.push_back(*std::move(section));
  };
  if (basis.has(ReportPart::Wiring)) add(wiringSection(basis, index));
  if (basis.has(ReportPart::Budget)) add(uncertaintySection(channel, evaluation));
  std::set<std::string> defined;
  if (hasChecks(basis))
    for (const std::size_t check : reportedChecks(channel, basis.order.content))
      add(checkSection(basis, index, check, defined));
  if (basis.has(ReportPart::Comparison) && basis.compared.contains(index))
    add(comparisonSection(basis, index));
  if (basis.has(ReportPart::Trend)) add(trendSection(basis, index));
  if (basis.has(ReportPart::Working)) add(workingSection(basis, index));
  return sections;
}

}  // namespace core
