// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/json.h"

#include <algorithm>

#include "core/circuit/hookup_words.h"
#include "core/record/fingerprint.h"
#include "core/record/review_state.h"
#include "core/report/json_parts.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writeTexts(JsonEmitter& out, std::string_view key, const std::vector<std::string>& texts) {
  out.array(key, OneLine, [&] {
    for (const std::string& text : texts) out.text({}, text);
  });
}

void writeTemplateUsed(JsonEmitter& out, const ReportTemplate& content) {
  out.object("template", Lines, [&] {
    out.text("name", content.name);
    out.array("parts", OneLine, [&] {
      for (const ReportPart part : content.parts) out.text({}, reportPartKey(part));
    });
    out.text("channels", reportChannelsKey(content.channels));
    out.boolean("latest_check_only", content.latestCheckOnly);
  });
}

void writeHead(JsonEmitter& out, const ReportBasis& basis, const std::string& fingerprint) {
  const Document& document = basis.document;
  out.text("format", "shuntwright-report");
  out.count("version", 1);
  writeText(out, "program", basis.order.program);
  writeDay(out, "printed", basis.order.printed);
  out.text("title", document.title);
  out.text("article", document.article);
  out.text("site", document.site);
  out.text("person", document.person);
  out.text("note", document.note);
  writeText(out, "fingerprint", fingerprint);
  writeTemplateUsed(out, basis.order.content);
  out.text("scope", chainScopeStatement());
  writeTexts(out, "cautions", cautions());
  std::vector<std::string> leftOut;
  for (std::size_t index = 0; index < document.channels.size(); ++index)
    if (!std::binary_search(basis.channels.begin(), basis.channels.end(), index))
      leftOut.push_back(basis.channel(index).name);
  writeTexts(out, "channels_left_out", leftOut);
}

void writeShunts(JsonEmitter& out, const Setup& setup) {
  out.array("shunts", Lines, [&] {
    for (const Shunt& shunt : setup.shunts)
      out.object({}, OneLine, [&] {
        out.text("name", shunt.name);
        out.number("resistance_ohm", shunt.resistance.base());
        out.text("from", pointName(setup.bridge, shunt.a));
        out.text("to", pointName(setup.bridge, shunt.b));
        writeText(out, "resistor", shunt.part.id);
        writeText(out, "certificate", shunt.part.certificate);
        writeDay(out, "calibration_due", shunt.part.due);
      });
  });
}

void writeChannelReport(JsonEmitter& out, const ReportBasis& basis, std::size_t index) {
  const Channel& channel = basis.channel(index);
  const ChannelEvaluation& evaluation = basis.evaluations[index];
  const OverviewRow& row = basis.overview.at(index);
  out.object({}, Lines, [&] {
    out.text("name", channel.name);
    writeText(out, "group", channel.group);
    out.text("note", channel.note);
    out.text("bridge", templateOf(channel.setup.bridge.type).key);
    writeTexts(out, "connection", hookupSentences(channel.setup.bridge));
    out.text("status", row.status);
    out.text("verdict", verdictWord(evaluation.verdict));
    writeUnits(out, channel.setup);
    writeIdentity(out, channel.setup.identity);
    writeShunts(out, channel.setup);
    writeSteps(out, plannedRows(channel.setup, evaluation.prediction, evaluation.budget));
    out.array("checks", Lines, [&] {
      for (const std::size_t number : reportedChecks(channel, basis.order.content))
        writeCheckReport(out, basis, index, number);
    });
    writeComparison(out, basis, index);
    writeTrend(out, basis, index);
  });
}

void writeTraced(JsonEmitter& out, std::string_view key, const std::vector<Traced>& all, bool resistors) {
  out.array(key, Lines, [&] {
    for (const Traced& one : all)
      out.object({}, OneLine, [&] {
        writeText(out, resistors ? "id" : "name", one.id);
        if (resistors)
          writeNumber(out, "resistance_ohm",
                      one.resistance ? std::optional(one.resistance->base()) : std::nullopt);
        else
          writeText(out, "serial", one.serial);
        writeText(out, "certificate", one.certificate);
        writeDay(out, "calibration_due", one.due);
        writeTexts(out, "used_by", one.uses);
        writeTexts(out, "overdue", one.overdue);
      });
  });
}

void writeStanding(JsonEmitter& out, const Document& document, const std::string& fingerprint) {
  const Standing standing = fingerprint.empty() ? standingOf(document) : standingOf(document, fingerprint);
  out.object("standing", OneLine, [&] {
    out.text("stage", stageKey(standing.stage));
    out.boolean("changed_since", standing.changedSince);
    out.text("sentence", standing.sentence);
  });
}

void writeRecord(JsonEmitter& out, const Document& document) {
  out.array("history", Lines, [&] {
    for (const Revision& revision : document.history)
      out.object({}, Lines, [&] {
        out.text("time", revision.time);
        out.text("person", revision.person);
        out.text("program", revision.program);
        writeTexts(out, "changes", revision.changes);
        out.count("more", revision.more);
        out.text("fingerprint", revision.fingerprint);
        out.text("chain", revision.chain);
      });
  });
  out.array("sign_off", Lines, [&] {
    for (const SignOffAct& act : document.signOff.acts)
      out.object({}, Lines, [&] {
        out.text("stage", stageKey(act.stage));
        out.text("person", act.person);
        out.text("time", act.time);
        out.text("remark", act.remark);
        out.text("fingerprint", act.fingerprint);
      });
  });
}

}  // namespace

Result<std::string> reportJson(const Document& document, const ReportOrder& order, const Progress& progress,
                               const std::stop_token& stop) {
  const LanguageScope scope(english());  // programs read it
  const ReportBasis basis = reportBasis(document, order, progress, stop);
  if (stop.stop_requested()) return cancelled();
  const auto found = fingerprintOf(document);
  const std::string fingerprint = found ? *found : std::string();
  JsonEmitter out;
  out.object({}, Lines, [&] {
    writeHead(out, basis, fingerprint);
    writeStanding(out, document, fingerprint);
    out.array("channels", Lines, [&] {
      for (const std::size_t index : basis.channels) writeChannelReport(out, basis, index);
    });
    out.object("traceability", Lines, [&] {
      writeTraced(out, "resistors", tracedResistors(basis), true);
      writeTraced(out, "instruments", tracedInstruments(basis), false);
    });
    writeRecord(out, document);
  });
  return out.finished();
}

}  // namespace core
