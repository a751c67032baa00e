// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/check_section.h"

#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "core/plan/overdue.h"
#include "core/report/diagnosis_section.h"
#include "core/report/figures.h"
#include "core/report/record_words.h"
#include "core/report/step_row.h"
#include "core/report/tables.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

std::string setupSentence(const Channel& channel, const Check& check) {
  if (!check.closedWith) return say("open: the set-up of the channel as it is now");
  return *check.closedWith == channel.setup
             ? say("closed: kept with the check, the same as that of the channel now")
             : say("closed: kept with the check; that of the channel was changed since");
}

std::string ambientText(const Ambient& ambient) {
  if (!ambient.air && !ambient.humidity) return say("not given");
  std::string text;
  if (ambient.air) text = shown(formatQuantity(ambient.air->base(), UnitFamily::Temperature));
  if (!ambient.humidity) return text;
  const std::string humidity = shown(formatQuantity(*ambient.humidity, UnitFamily::Percent, {}, 4));
  return (text.empty() ? "" : text + ", ") + say("{1} relative humidity", {humidity});
}

void addRecording(EntryList& list, const Check& check) {
  if (const auto& recording = check.recording) {
    list.entries.push_back(
        {say("Recording"), say("{1}, column {2}, {3} bytes",
                               {recording->path, recording->column, std::to_string(recording->size_bytes)})});
    list.entries.push_back({say("Recording SHA-256"), recording->sha256, true});
  } else {
    list.entries.push_back({say("Recording"), say("none: readings typed or pasted")});
  }
}

EntryList checkEntries(const Channel& channel, const Check& check) {
  const Setup& setup = setupOf(channel, check);
  EntryList list{"",
                 {{say("Date"), shownDay(check.date)},
                  {say("Run by"), givenText(check.person)},
                  {say("Ambient"), ambientText(check.ambient)},
                  {say("Instrument"), identityText(setup.identity)}}};
  if (!check.remark.empty()) list.entries.push_back({say("Remark"), check.remark});
  list.entries.push_back({say("Judged by"), setupSentence(channel, check)});
  list.entries.push_back({say("Decision rule"), decisionText(setup.decision)});
  if (const std::string connection = hookupText(setup.bridge); !connection.empty())
    list.entries.push_back({say("Not connected as the template says"), connection});
  addRecording(list, check);
  return list;
}

std::string reasonText(const StepRow& row) {
  const std::string step = std::to_string(row.step + 1);
  if (row.verdict == Verdict::Fail) return say("Step {1} fails. {2}", {step, row.reason});
  if (row.verdict == Verdict::CannotTell) return say("Step {1} cannot be decided. {2}", {step, row.reason});
  return say("Step {1}. {2}", {step, row.reason});
}

/// Why each step that does not pass does not. Not emphasised: the table and the verdict are.
void addReasons(Section& section, const std::vector<StepRow>& rows) {
  for (const StepRow& row : rows)
    if (row.verdict != Verdict::Pass) section.blocks.push_back(Paragraph{reasonText(row), {}});
}

/// What was noted while readings were taken: earlier readings of a step that was redone are among it.
void addNotes(Section& section, const Check& check) {
  for (std::size_t step = 0; step < check.readings.size(); ++step)
    if (const auto& reading = check.readings[step]; reading && !reading->note.empty())
      section.blocks.push_back(
          Paragraph{say("Step {1}, note: {2}", {std::to_string(step + 1), reading->note}), {}});
}

/// The figures of the check without those that have a row in the table of merits. Zero return stays: beside
/// the picture it is what a reviewer looks for.
std::vector<Entry> otherFigures(const Channel& channel, const ChannelEvaluation& evaluation,
                                std::size_t number) {
  std::vector<Entry> figures = figuresOf(channel, evaluation, number);
  for (const Merit& merit : evaluation.checks[number].assessment.merits) {
    if (merit.kind == MeritKind::ZeroReturn) continue;
    const std::string name = meritHeading(merit.kind);
    std::erase_if(figures, [&](const Entry& entry) { return entry.name == name; });
  }
  return figures;
}

/// The figures of merit, and why each that does not keep its limit does not.
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

void addDiagnosis(Section& section, const ReportBasis& basis, std::size_t index, std::size_t number) {
  const auto found = basis.diagnoses.find({index, number});
  if (found == basis.diagnoses.end()) return;
  const Channel& channel = basis.channel(index);
  const bool allPass = allStepsPass(basis.evaluations[index].checks[number].assessment);
  for (Block& block : diagnosisBlocks(setupOf(channel, channel.checks[number]), found->second, allPass))
    section.blocks.push_back(std::move(block));
}

void addRemarks(Section& section, const Check& check) {
  if (check.remarks.empty()) return;
  Table table{say("Remarks on {1}", {check.name}),
              {{say("Step"), true, 8},
               {say("Person"), false, 18},
               {say("Time"), false, 20},
               {say("Remark"), false, 42},
               {say("State"), false, 12}},
              {}};
  for (const Remark& remark : check.remarks)
    table.rows.push_back(
        {{remark.step ? std::to_string(*remark.step + 1) : say("whole"), remark.person,
          shownTime(remark.time), remark.text, remark.settled ? say("settled") : say("open")},
         {}});
  section.blocks.push_back(std::move(table));
}

/// What is only there when something was read.
void addFindings(Section& section, const ReportBasis& basis, std::size_t index, std::size_t number,
                 std::set<std::string>& defined) {
  const Channel& channel = basis.channel(index);
  const Check& check = channel.checks[number];
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  if (basis.has(ReportPart::Readings)) {
    addReasons(section, stepRows(channel, evaluation, number));
    addNotes(section, check);
  }
  if (basis.has(ReportPart::Chart))
    section.blocks.push_back(
        Picture{Picture::Kind::Outcome, index, number,
                say("Measured change against simulated value, and deviation from expected "
                    "with the limits as a band, check {1}",
                    {check.name})});
  if (basis.has(ReportPart::Merits)) {
    section.blocks.push_back(
        EntryList{say("Figures of the line and zero"), otherFigures(channel, evaluation, number)});
    addMerits(section, channel, evaluation, number, defined);
  }
  addDiagnosis(section, basis, index, number);
}

/// What was overdue for calibration on the day of the check; that it cannot be told. Empty when nothing was.
std::string dayCaution(const Channel& channel, const Check& check) {
  const Setup& setup = setupOf(channel, check);
  if (const auto day = dateFromText(check.date)) return overdueSentence(setup, *day);
  const bool isDue = std::any_of(setup.shunts.begin(), setup.shunts.end(),
                                 [](const Shunt& shunt) { return shunt.part.due.has_value(); });
  if (check.date.empty() || !isDue) return {};
  return say("The date {1} is no day: what was overdue for calibration then cannot be told.",
             {inQuotes(check.date)});
}

}  // namespace

Section checkSection(const ReportBasis& basis, std::size_t index, std::size_t number,
                     std::set<std::string>& defined) {
  const Channel& channel = basis.channel(index);
  const Check& check = channel.checks[number];
  const CheckEvaluation& judged = basis.evaluations[index].checks[number];
  Section section{say("{1}, check {2}", {channel.name, check.name}), 2, {}};
  section.blocks.push_back(Paragraph{judged.assessment.reason, judged.assessment.verdict});
  section.blocks.push_back(checkEntries(channel, check));
  if (std::string caution = dayCaution(channel, check); !caution.empty())
    section.blocks.push_back(Caution{std::move(caution)});
  if (!judged.assessment.steps.empty()) {
    if (basis.has(ReportPart::Readings))
      section.blocks.push_back(checkTable(channel, basis.evaluations[index], number));
    if (const auto& zero = judged.prediction.zero; !zero)
      section.blocks.push_back(Caution{say("Cannot be predicted: {1}", {zero.error().text()})});
    else if (hasReading(check))
      addFindings(section, basis, index, number, defined);
  }
  if (basis.has(ReportPart::Remarks)) addRemarks(section, check);
  return section;
}

}  // namespace core
