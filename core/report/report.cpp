// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report.h"

#include <iterator>

#include "core/record/fingerprint.h"
#include "core/report/channel_section.h"
#include "core/report/cover_section.h"
#include "core/report/record_sections.h"
#include "core/report/share_out.h"
#include "core/report/summary_section.h"
#include "core/report/traceability_section.h"

namespace core {
namespace {

constexpr double worked = 0.9;  ///< share of the work until all is known and needs only be put into words

/// Cells of numbers are canonical until here, whoever put them together.
void putNumbersInLanguage(Report& report) {
  for (Section& section : report.sections)
    for (Block& block : section.blocks)
      if (auto* table = std::get_if<Table>(&block))
        for (TableRow& row : table->rows)
          for (std::size_t k = 0; k < row.cells.size(); ++k)
            if (table->columns[k].numeric) row.cells[k] = shown(std::move(row.cells[k]));
}

/// Those of every channel of the report, channel after channel.
std::vector<Section> allChannelSections(const ReportBasis& basis, const Progress& progress,
                                        const std::stop_token& stop) {
  std::vector<std::vector<Section>> each(basis.channels.size());
  shareOut(
      each.size(), [&](std::size_t k) { each[k] = channelSections(basis, basis.channels[k]); },
      [&](double share) {
        if (progress) progress(worked + (1 - worked) * share);
      },
      stop);
  std::vector<Section> sections;
  for (auto& own : each) std::move(own.begin(), own.end(), std::back_inserter(sections));
  return sections;
}

/// All sections but the list of them, which stands behind the first.
std::vector<Section> sectionsOf(const ReportBasis& basis, const std::string& fingerprint,
                                const Progress& progress, const std::stop_token& stop) {
  std::vector<Section> sections{coverSection(basis, fingerprint), cautionSection(basis)};
  if (basis.has(ReportPart::Summary)) sections.push_back(summarySection(basis));
  std::vector<Section> channels = allChannelSections(basis, progress, stop);
  std::move(channels.begin(), channels.end(), std::back_inserter(sections));
  if (basis.has(ReportPart::Traceability)) sections.push_back(traceabilitySection(basis));
  if (basis.has(ReportPart::History)) sections.push_back(historySection(basis.document, fingerprint));
  if (basis.has(ReportPart::SignOffBlock)) sections.push_back(signOffSection(basis.document, fingerprint));
  return sections;
}

void addContents(std::vector<Section>& sections) {
  sections.insert(sections.begin() + 1, Section{});
  Section contents = contentsSection(sections);
  sections[1] = std::move(contents);
}

}  // namespace

std::string chainScopeStatement() {
  return say(
      "Verdicts cover the electrical chain only: leads, arms, excitation, amplifier and scaling. They say "
      "nothing about gauge factor, gauge bond or alignment.");
}

std::string assumedUncertaintyStatement() {
  return say(
      "Uncertainties marked as assumed are usual tolerances of such parts, not those of your own. State the "
      "figures of your certificates and data sheets before you rely on an uncertainty.");
}

std::vector<std::string> cautions() {
  return {
      say("Switch the excitation off before wiring a shunt or measuring with an ohmmeter."),
      say("A switched shunt moves the reading of a live channel. Take control and safety channels out of "
          "service first."),
      say("A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of "
          "the "
          "article."),
      say("Use a calibrated load or a traceable calibration where a standard, a contract or local rules ask "
          "for "
          "it."),
      say("Decisions stay with the responsible licensed or authorised person."),
  };
}

Report reportOf(const Document& document, const ReportOrder& order, const Progress& progress,
                const std::stop_token& stop) {
  const LanguageScope scope(languageOf(order));
  Report report{document.title.empty() ? say("Shunt calibration report") : document.title,
                {},
                language().code,
                {},
                currentLanguage()};
  const ReportBasis basis = reportBasis(
      document, order,
      [&](double share) {
        if (progress) progress(worked * share);
      },
      stop);
  if (stop.stop_requested()) return report;
  if (const auto fingerprint = fingerprintOf(document)) report.fingerprint = *fingerprint;
  report.sections = sectionsOf(basis, report.fingerprint, progress, stop);
  if (basis.has(ReportPart::Contents)) addContents(report.sections);
  putNumbersInLanguage(report);
  return report;
}

Report reportOf(const Document& document, std::optional<Date> printed, const Progress& progress,
                const std::stop_token& stop) {
  ReportOrder order;
  order.printed = printed;
  return reportOf(document, order, progress, stop);
}

}  // namespace core
