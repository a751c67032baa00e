// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/workbook.h"

#include <algorithm>

#include "core/record/fingerprint.h"
#include "core/report/cover_section.h"
#include "core/report/record_sections.h"
#include "core/report/record_words.h"
#include "core/report/summary_section.h"
#include "core/report/traceability_section.h"
#include "core/report/workbook_channel.h"

namespace core {
namespace {

constexpr std::size_t mostChannelSheets = 100;  ///< more tabs nobody finds his way among
constexpr double shareOfWorking = 0.8;          ///< share of the work until all is known

/// Which channels stand on one sheet, and what that is called.
struct ChannelSheet {
  std::string name;
  std::vector<std::size_t> channels;
};

std::vector<ChannelSheet> channelSheets(WorkbookFile& file, const ReportBasis& basis) {
  const std::size_t count = basis.channels.size();
  const std::size_t each = std::max<std::size_t>(1, (count + mostChannelSheets - 1) / mostChannelSheets);
  std::vector<ChannelSheet> sheets;
  for (std::size_t first = 0; first < count; first += each) {
    const std::size_t end = std::min(count, first + each);
    ChannelSheet sheet;
    for (std::size_t k = first; k < end; ++k) sheet.channels.push_back(basis.channels[k]);
    const std::string& name = basis.channel(sheet.channels.front()).name;
    sheet.name = file.sheetNameFor(each == 1 ? name : say("{1} and on", {name}));
    sheets.push_back(std::move(sheet));
  }
  return sheets;
}

/// By channel, the name of its sheet.
std::map<std::size_t, std::string> sheetsOfChannels(const std::vector<ChannelSheet>& sheets) {
  std::map<std::size_t, std::string> names;
  for (const ChannelSheet& sheet : sheets)
    for (const std::size_t index : sheet.channels) names[index] = sheet.name;
  return names;
}

void putSummaryRow(WorkbookSheet& sheet, std::uint32_t row, const ReportBasis& basis, std::size_t index,
                   const std::string& itsSheet) {
  const Channel& channel = basis.channel(index);
  const OverviewRow& overview = basis.overview.at(index);
  sheet.link(row, 0, channel.name, itsSheet);
  sheet.text(row, 1, channel.group);
  sheet.text(row, 2, std::string(templateOf(channel.setup.bridge.type).name));
  sheet.number(row, 3, static_cast<double>(channel.setup.sequence.size()), 0);
  sheet.number(row, 4, static_cast<double>(channel.checks.size()), 0);
  if (overview.check) {
    const Check& check = channel.checks[*overview.check];
    sheet.text(row, 5, check.name);
    sheet.day(row, 6, overview.day);
    sheet.text(row, 7, check.person);
  }
  sheet.text(row, 8, std::string(verdictWord(basis.evaluations[index].verdict)),
             styleOf(basis.evaluations[index].verdict));
  sheet.number(row, 9, overview.worst, 3);
  sheet.number(row, 10, overview.worstStep ? std::optional(double(*overview.worstStep + 1)) : std::nullopt,
               0);
  sheet.number(row, 11, gainOf(overview), 6);
  sheet.number(row, 12, gainChangeOf(overview), 6);
  sheet.text(row, 13, overview.status);
}

void putSummary(WorkbookSheet sheet, const ReportBasis& basis,
                const std::map<std::size_t, std::string>& sheetOf) {
  sheet.texts(0,
              {say("Channel"), say("Group"), say("Bridge"), say("Steps"), say("Checks"), say("Check"),
               say("Date"), say("Run by"), say("Verdict"), say("Worst deviation, share of limit"),
               say("At step"), say("Gain"), say("Change of gain, share"), say("Status")},
              CellStyle::Head);
  std::uint32_t row = 1;
  for (const std::size_t index : worstFirst(basis))
    putSummaryRow(sheet, row++, basis, index, sheetOf.at(index));
  sheet.freeze(1, 1);
  sheet.widths({16, 14, 24, 7, 7, 14, 12, 16, 12, 12, 8, 10, 12, 60});
}

/// What blocks of a section say, a line each.
std::uint32_t putWords(WorkbookSheet& sheet, std::uint32_t row, const Section& section) {
  sheet.text(row++, 0, section.heading, CellStyle::Title);
  for (const Block& block : section.blocks) {
    if (const auto* paragraph = std::get_if<Paragraph>(&block)) sheet.text(row++, 0, paragraph->text);
    if (const auto* caution = std::get_if<Caution>(&block))
      sheet.text(row++, 0, say("Caution.") + " " + caution->text);
    if (const auto* list = std::get_if<EntryList>(&block))
      for (const Entry& entry : list->entries) {
        sheet.text(row, 0, entry.name);
        sheet.text(row++, 1, entry.value);
      }
    if (const auto* table = std::get_if<Table>(&block)) {
      std::vector<std::string> heads;
      for (const TableColumn& column : table->columns) heads.push_back(column.name);
      sheet.texts(row++, heads, CellStyle::Head);
      for (const TableRow& line : table->rows) sheet.texts(row++, line.cells, CellStyle::Plain);
    }
  }
  return row + 1;
}

void putAbout(WorkbookSheet sheet, const ReportBasis& basis, const std::string& fingerprint) {
  sheet.text(0, 0, basis.document.title.empty() ? say("Shunt calibration report") : basis.document.title,
             CellStyle::Title);
  std::uint32_t row = putWords(sheet, 2, coverSection(basis, fingerprint));
  row = putWords(sheet, row, cautionSection(basis));
  if (basis.has(ReportPart::SignOffBlock)) putWords(sheet, row, signOffSection(basis.document, fingerprint));
  sheet.widths({28, 70});
}

void putTraced(WorkbookSheet& sheet, std::uint32_t& row, const std::vector<Traced>& all, bool resistors) {
  sheet.texts(
      row++,
      {resistors ? say("Resistor") : say("Instrument"), resistors ? say("Resistance, Ω") : say("Serial"),
       say("Certificate"), say("Calibration due"), say("Used by"), say("Overdue")},
      CellStyle::Head);
  const auto joined = [](const std::vector<std::string>& texts) {
    std::string all_;
    for (const std::string& text : texts) all_ += (all_.empty() ? "" : "; ") + text;
    return all_;
  };
  for (const Traced& one : all) {
    sheet.text(row, 0, givenText(one.id));
    if (one.resistance)
      sheet.number(row, 1, one.resistance->base());
    else
      sheet.text(row, 1, one.serial);
    sheet.text(row, 2, one.certificate);
    sheet.day(row, 3, one.due);
    sheet.text(row, 4, joined(one.uses));
    sheet.text(row++, 5, joined(one.overdue));
  }
  ++row;
}

void putRest(WorkbookFile& file, const ReportBasis& basis, const std::string& fingerprint) {
  if (basis.has(ReportPart::Traceability)) {
    WorkbookSheet sheet = file.addSheet(file.sheetNameFor(say("Traceability")));
    std::uint32_t row = 0;
    putTraced(sheet, row, tracedResistors(basis), true);
    putTraced(sheet, row, tracedInstruments(basis), false);
    sheet.widths({16, 16, 18, 14, 50, 40});
  }
  if (!basis.has(ReportPart::History)) return;
  WorkbookSheet sheet = file.addSheet(file.sheetNameFor(say("Changes")));
  putWords(sheet, 0, historySection(basis.document, fingerprint));
  sheet.widths({20, 20, 14, 70, 22});
}

}  // namespace

Result<std::string> reportWorkbook(const Document& document, const ReportOrder& order,
                                   const Progress& progress, const std::stop_token& stop) {
  const LanguageScope scope(languageOf(order));
  const auto tell = [&](double share) {
    if (progress) progress(share);
  };
  const ReportBasis basis = reportBasis(
      document, order, [&](double share) { tell(shareOfWorking * share); }, stop);
  if (stop.stop_requested()) return cancelled();
  const auto found = fingerprintOf(document);
  const std::string fingerprint = found ? *found : std::string();
  WorkbookFile file(
      {document.title, document.person, document.article, fingerprint, order.printed, language().dayPattern});
  if (!file.isOpen()) return file.bytes();
  // The summary stands before the channels' sheets, to which it links: their names first.
  const std::string summary = file.sheetNameFor(say("Summary")), about = file.sheetNameFor(say("About"));
  const std::vector<ChannelSheet> sheets = channelSheets(file, basis);
  putSummary(file.addSheet(summary), basis, sheetsOfChannels(sheets));
  putAbout(file.addSheet(about), basis, fingerprint);
  for (std::size_t k = 0; k < sheets.size(); ++k) {
    if (stop.stop_requested()) return cancelled();
    WorkbookSheet sheet = file.addSheet(sheets[k].name);
    std::uint32_t row = 0;
    for (const std::size_t index : sheets[k].channels) row = putChannel(sheet, row, basis, index);
    sheet.widths({11, 16, 20, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 10, 13, 60});
    tell(shareOfWorking + (1 - shareOfWorking) * double(k + 1) / double(sheets.size()));
  }
  putRest(file, basis, fingerprint);
  return file.bytes();
}

}  // namespace core
