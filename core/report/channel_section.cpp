// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/channel_section.h"

#include <set>

#include "core/circuit/hookup_words.h"
#include "core/plan/heating.h"
#include "core/plan/overdue.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/setup_entries.h"
#include "core/report/step_row.h"
#include "core/report/tables.h"
#include "core/report/uncertainty_section.h"

namespace core {
namespace {

void addPlan(Section& section, const Setup& setup, const ChannelEvaluation& evaluation) {
  const SetupPrediction& prediction = evaluation.prediction;
  if (setup.shunts.empty())
    section.blocks.push_back(Paragraph{"The channel has no shunts.", {}});
  else
    section.blocks.push_back(shuntTable(setup));
  if (!prediction.zero)
    section.blocks.push_back(Caution{"Cannot be predicted: " + prediction.zero.error().text()});
  if (setup.sequence.empty()) {
    section.blocks.push_back(Paragraph{"The channel has no steps.", {}});
    return;
  }
  section.blocks.push_back(planTable(setup, prediction, evaluation.budget));
  if (!prediction.zero) return;
  for (std::size_t step = 0; step < prediction.steps.size(); ++step)
    if (!prediction.steps[step])
      section.blocks.push_back(Caution{"Step " + std::to_string(step + 1) +
                                       " cannot be predicted: " + prediction.steps[step].error().text()});
}

/// Self-heating, when the grid of the gauges is known.
void addHeat(Section& section, const Setup& setup) {
  const auto advice = heatAdvice(setup);
  if (!advice) return;
  if (advice->verdict == HeatVerdict::Above)
    section.blocks.push_back(Caution{"Self-heating: " + advice->text});
  else
    section.blocks.push_back(Paragraph{"Self-heating: " + advice->text, {}});
}

void addOverdue(Section& section, const Setup& setup, Date day) {
  const std::string overdue = overdueSentence(setup, day);
  if (!overdue.empty()) section.blocks.push_back(Caution{overdue});
}

Section setupSection(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                     std::optional<Date> printed) {
  const Channel& channel = *document.channels[index];
  Section section{"Channel " + channel.name, 1, {}};
  section.blocks.push_back(Paragraph{"Status: " + evaluation.status + ".", evaluation.verdict});
  if (const std::string connection = hookupText(channel.setup.bridge); !connection.empty())
    section.blocks.push_back(
        Caution{"Not connected as the template says, and predicted and judged so: " + connection});
  section.blocks.push_back(
      Picture{Picture::Kind::Bridge, index, 0,
              "Bridge of channel " + channel.name + " with its leads and shunts, all shunts open"});
  const BridgeTemplate& shape = templateOf(channel.setup.bridge.type);
  section.blocks.push_back(Paragraph{std::string(shape.name) + ". " + std::string(shape.about), {}});
  if (!channel.note.empty()) section.blocks.push_back(Paragraph{channel.note, {}});
  section.blocks.push_back(bridgeEntries(channel.setup.bridge, evaluation.prediction.zero));
  section.blocks.push_back(instrumentEntries(channel.setup.instrument));
  if (EntryList acquisition = acquisitionEntries(channel.setup.acquisition); !acquisition.entries.empty())
    section.blocks.push_back(std::move(acquisition));
  section.blocks.push_back(limitEntries(channel.setup));
  section.blocks.push_back(Paragraph{"Decision rule: " + decisionText(channel.setup.decision) + ".", {}});
  if (EntryList effects = effectEntries(channel.setup); !effects.entries.empty())
    section.blocks.push_back(std::move(effects));
  addHeat(section, channel.setup);
  section.blocks.push_back(leadTable(channel.setup.bridge));
  if (printed) addOverdue(section, channel.setup, *printed);
  addPlan(section, channel.setup, evaluation);
  return section;
}

std::string setupSentence(const Channel& channel, const Check& check) {
  if (!check.closedWith) return "open: the set-up of the channel as printed above";
  return *check.closedWith == channel.setup
             ? "closed: kept with the check, the same as printed above"
             : "closed: kept with the check; the channel as printed above was changed since";
}

EntryList checkEntries(const Channel& channel, const Check& check) {
  EntryList list{"", {}};
  list.entries.push_back({"Date", check.date.empty() ? "not given" : check.date});
  list.entries.push_back({"Run by", check.person.empty() ? "not given" : check.person});
  if (!check.remark.empty()) list.entries.push_back({"Remark", check.remark});
  list.entries.push_back({"Judged by", setupSentence(channel, check)});
  list.entries.push_back({"Decision rule", decisionText(setupOf(channel, check).decision)});
  if (const std::string connection = hookupText(setupOf(channel, check).bridge); !connection.empty())
    list.entries.push_back({"Not connected as the template says", connection});
  if (const auto& recording = check.recording) {
    list.entries.push_back({"Recording", recording->path + ", column " + recording->column + ", " +
                                             std::to_string(recording->size_bytes) + " bytes"});
    list.entries.push_back({"Recording SHA-256", recording->sha256, true});
  } else {
    list.entries.push_back({"Recording", "none: readings typed or pasted"});
  }
  return list;
}

bool hasReading(const Check& check) {
  for (const auto& reading : check.readings)
    if (reading) return true;
  return false;
}

std::string_view verbOf(Verdict verdict) {
  if (verdict == Verdict::Fail) return " fails. ";
  return verdict == Verdict::CannotTell ? " cannot be decided. " : ". ";
}

/// Why each step that does not pass does not. Not emphasised: the table and the verdict are.
void addReasons(Section& section, const std::vector<StepRow>& rows) {
  for (const StepRow& row : rows) {
    if (row.verdict == Verdict::Pass) continue;
    const std::string step = "Step " + std::to_string(row.step + 1);
    section.blocks.push_back(Paragraph{step + std::string(verbOf(row.verdict)) + row.reason, {}});
  }
}

/// What was noted while readings were taken: earlier readings of a step that was redone are among it.
void addNotes(Section& section, const Check& check) {
  for (std::size_t step = 0; step < check.readings.size(); ++step)
    if (const auto& reading = check.readings[step]; reading && !reading->note.empty())
      section.blocks.push_back(
          Paragraph{"Step " + std::to_string(step + 1) + ", note: " + reading->note, {}});
}

/// The figures of the check without those that have a row in the table of merits. Zero return stays: beside
/// the picture it is what a reviewer looks for.
std::vector<Entry> otherFigures(const Channel& channel, const ChannelEvaluation& evaluation,
                                std::size_t number) {
  std::vector<Entry> figures = figuresOf(channel, evaluation, number);
  for (const Merit& merit : evaluation.checks[number].assessment.merits) {
    if (merit.kind == MeritKind::ZeroReturn) continue;
    const std::string_view name = meritKindName(merit.kind).substr(1);  // in the list it has a capital letter
    std::erase_if(figures, [&](const Entry& entry) {
      return !entry.name.empty() && std::string_view(entry.name).substr(1) == name;
    });
  }
  return figures;
}

/// The figures of merit, and why each that does not keep its limit does not. Definitions that are not among
/// `defined`, those told above, stand in the note and are added to them.
void addMerits(Section& section, const Channel& channel, const ChannelEvaluation& evaluation,
               std::size_t number, std::set<std::string>& defined) {
  const std::vector<Merit>& merits = evaluation.checks[number].assessment.merits;
  if (merits.empty()) return;
  Table table = meritTable(channel, evaluation, number);
  for (const std::string& definition : meritDefinitions(merits))
    if (defined.insert(definition).second) table.note += (table.note.empty() ? "" : " ") + definition;
  section.blocks.push_back(std::move(table));
  for (const Merit& merit : merits)
    if (merit.limit && merit.verdict != Verdict::Pass) section.blocks.push_back(Paragraph{merit.reason, {}});
}

Section checkSection(const Document& document, std::size_t index, const ChannelEvaluation& evaluation,
                     std::size_t number, const CheckDiagnoses& diagnoses, std::set<std::string>& defined) {
  const Channel& channel = *document.channels[index];
  const Check& check = channel.checks[number];
  const CheckEvaluation& judged = evaluation.checks[number];
  Section section{channel.name + ", check " + check.name, 2, {}};
  section.blocks.push_back(Paragraph{judged.assessment.reason, judged.assessment.verdict});
  section.blocks.push_back(checkEntries(channel, check));
  if (const auto day = dateFromText(check.date)) addOverdue(section, setupOf(channel, check), *day);
  if (judged.assessment.steps.empty()) return section;
  section.blocks.push_back(checkTable(channel, evaluation, number));
  if (const auto& zero = judged.prediction.zero; !zero) {
    section.blocks.push_back(Caution{"Cannot be predicted: " + zero.error().text()});
    return section;
  }
  if (!hasReading(check)) return section;
  addReasons(section, stepRows(channel, evaluation, number));
  addNotes(section, check);
  section.blocks.push_back(
      Picture{Picture::Kind::Outcome, index, number,
              "Measured change against simulated value, and deviation from expected with "
              "the limits as a band, check " +
                  check.name});
  section.blocks.push_back(
      EntryList{"Figures of the line and zero", otherFigures(channel, evaluation, number)});
  addMerits(section, channel, evaluation, number, defined);
  if (const auto found = diagnoses.find({index, number}); found != diagnoses.end())
    for (Block& block :
         diagnosisBlocks(setupOf(channel, check), found->second, allStepsPass(judged.assessment)))
      section.blocks.push_back(std::move(block));
  return section;
}

Section comparisonSection(const Channel& channel, const ChannelEvaluation& evaluation) {
  const std::size_t after = channel.checks.size() - 1, before = after - 1;
  const Comparison comparison = compare(channel, evaluation, before, after);
  Section section{
      channel.name + ", " + channel.checks[before].name + " and " + channel.checks[after].name + " compared",
      2,
      {}};
  const std::string sentence = setupDifferenceSentence(comparison);
  if (!comparison.setupDifferences.empty()) section.blocks.push_back(Caution{sentence});
  section.blocks.push_back(Paragraph{comparison.reason, comparison.verdict});
  if (comparison.setupDifferences.empty()) section.blocks.push_back(Paragraph{sentence, {}});
  if (comparison.steps.empty()) return section;
  section.blocks.push_back(comparisonTable(channel, comparison, before, after));
  std::vector<Entry> figures = figuresOf(channel, evaluation, comparison, before, after);
  const auto each = figures.begin() + 2;  // of the comparison; behind them those of either check
  section.blocks.push_back(EntryList{"Figures compared", {figures.begin(), each}});
  section.blocks.push_back(EntryList{"Figures of each check", {each, figures.end()}});
  return section;
}

}  // namespace

std::vector<Section> channelSections(const Document& document, std::size_t index,
                                     const ChannelEvaluation& evaluation, const CheckDiagnoses& diagnoses,
                                     std::optional<Date> printed) {
  const Channel& channel = *document.channels[index];
  std::vector<Section> sections{setupSection(document, index, evaluation, printed)};
  if (channel.checks.empty())
    sections.front().blocks.push_back(Paragraph{"The channel has not been checked.", Verdict::NotJudged});
  if (auto uncertainty = uncertaintySection(channel, evaluation)) sections.push_back(*std::move(uncertainty));
  std::set<std::string> defined;
  for (std::size_t check = 0; check < channel.checks.size(); ++check)
    sections.push_back(checkSection(document, index, evaluation, check, diagnoses, defined));
  if (channel.checks.size() >= 2) sections.push_back(comparisonSection(channel, evaluation));
  return sections;
}

}  // namespace core
