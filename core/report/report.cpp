// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report.h"

#include "core/circuit/hookup_words.h"
#include "core/report/channel_section.h"
#include "core/report/figures.h"
#include "core/report/uncertainty_tables.h"

namespace core {
namespace {

std::string given(const std::string& text) { return text.empty() ? "not given" : text; }

/// All channels and all checks.
struct Overview {
  Table channels{"Channels", {{"Channel"}, {"Bridge"}, {"Steps", true}, {"Checks", true}, {"Status"}}, {}};
  Table checks{"Checks", {{"Channel"}, {"Check"}, {"Date"}, {"Run by"}, {"Decision rule"}, {"Verdict"}}, {}};
  bool assumed = false;  ///< whether some channel or check rests on assumed uncertainties

  void add(const Channel& channel, const ChannelEvaluation& evaluation) {
    assumed = assumed || restsOnAssumptions(evaluation.budget);
    channels.rows.push_back({{channel.name, std::string(templateOf(channel.setup.bridge.type).name),
                              std::to_string(channel.setup.sequence.size()),
                              std::to_string(channel.checks.size()), evaluation.status},
                             evaluation.verdict});
    for (std::size_t k = 0; k < channel.checks.size(); ++k) {
      const Check& check = channel.checks[k];
      const Verdict verdict = evaluation.checks[k].assessment.verdict;
      checks.rows.push_back(
          {{channel.name, check.name, given(check.date), given(check.person),
            decisionText(setupOf(channel, check).decision), std::string(verdictWord(verdict))},
           verdict});
      assumed = assumed || restsOnAssumptions(evaluation.checks[k].budget);
    }
  }
};

/// The cautions come before the verdicts, so that nobody reads these without those.
Section summarySection(const Document& document, const std::vector<ChannelEvaluation>& evaluations) {
  Section section{"Summary", 1, {}};
  section.blocks.push_back(EntryList{"",
                                     {{"Article", given(document.article)},
                                      {"Site", given(document.site)},
                                      {"Prepared by", given(document.person)}}});
  if (!document.note.empty()) section.blocks.push_back(Paragraph{document.note, {}});
  section.blocks.push_back(Caution{std::string(chainScopeStatement())});
  for (std::string& caution : cautions()) section.blocks.push_back(Caution{std::move(caution)});
  Overview overview;
  for (std::size_t k = 0; k < evaluations.size(); ++k) overview.add(*document.channels[k], evaluations[k]);
  for (const auto& channel : document.channels)
    if (const std::string connection = hookupText(channel->setup.bridge); !connection.empty())
      section.blocks.push_back(
          Caution{"Channel " + channel->name + " is not connected as its template says. " + connection});
  if (overview.assumed) section.blocks.push_back(Caution{std::string(assumedUncertaintyStatement())});
  if (document.channels.empty()) {
    section.blocks.push_back(Paragraph{"The document has no channels.", Verdict::NotJudged});
    return section;
  }
  section.blocks.push_back(std::move(overview.channels));
  if (overview.checks.rows.empty()) {
    section.blocks.push_back(Paragraph{"No channel has been checked.", Verdict::NotJudged});
    return section;
  }
  section.blocks.push_back(std::move(overview.checks));
  section.blocks.push_back(Paragraph{std::string(diagnosedChecksStatement()), {}});
  return section;
}

Section signatureSection(const Document& document) {
  Table table{"", {{"Role"}, {"Name"}, {"Signature"}, {"Date"}}, {}, true};
  table.rows.push_back({{"Prepared", document.person, "", ""}, {}});
  table.rows.push_back({{"Reviewed", "", "", ""}, {}});
  return {"Signatures", 1, {Caution{std::string(chainScopeStatement())}, std::move(table)}};
}

}  // namespace

std::string_view chainScopeStatement() {
  return "Verdicts cover the electrical chain only: leads, arms, excitation, amplifier and scaling. They say "
         "nothing about gauge factor, gauge bond or alignment.";
}

std::string_view assumedUncertaintyStatement() {
  return "Uncertainties marked as assumed are usual tolerances of such parts, not those of your own. State "
         "the "
         "figures of your certificates and data sheets before you rely on an uncertainty.";
}

std::vector<std::string> cautions() {
  return {
      "Switch the excitation off before wiring a shunt or measuring with an ohmmeter.",
      "A switched shunt moves the reading of a live channel. Take control and safety channels out of service "
      "first.",
      "A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the "
      "article.",
      "Use a calibrated load or a traceable calibration where a standard, a contract or local rules ask for "
      "it.",
      "Decisions stay with the responsible licensed or authorised person.",
  };
}

Report reportOf(const Document& document, std::optional<Date> printed, const Progress& progress,
                const std::stop_token& stop) {
  std::vector<ChannelEvaluation> evaluations;
  evaluations.reserve(document.channels.size());
  for (const auto& channel : document.channels) evaluations.push_back(evaluate(*channel));
  const CheckDiagnoses diagnoses = diagnosesOf(document, evaluations, progress, stop);
  Report report{document.title.empty() ? "Shunt calibration report" : document.title, {}};
  report.sections.push_back(summarySection(document, evaluations));
  for (std::size_t index = 0; index < document.channels.size(); ++index)
    for (Section& section : channelSections(document, index, evaluations[index], diagnoses, printed))
      report.sections.push_back(std::move(section));
  report.sections.push_back(signatureSection(document));
  return report;
}

}  // namespace core
