// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_writer.h"

#include "core/document/content.h"
#include "core/document/json_emitter.h"
#include "core/document/json_reader.h"
#include "core/document/json_record.h"
#include "core/document/json_setup_writer.h"
#include "core/document/json_stock.h"
#include "core/document/json_wiring.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

void writeRecording(JsonEmitter& out, const RecordingReference& recording) {
  out.object("recording", Lines, [&] {
    out.text("path", recording.path);
    out.count("size_bytes", recording.size_bytes);
    out.text("sha256", recording.sha256);
    out.text("column", recording.column);
    if (!recording.readAs.empty()) out.text("read_as", recording.readAs);
  });
}

void writeReading(JsonEmitter& out, const std::optional<Measured>& reading) {
  if (!reading) return out.null({});
  out.object({}, OneLine, [&] {
    out.number("mean", reading->mean.base());
    if (reading->uncertainty) out.number("uncertainty", reading->uncertainty->base());
    if (reading->begin) out.number("begin_s", reading->begin->base());
    if (reading->end) out.number("end_s", reading->end->base());
    if (!reading->note.empty()) out.text("note", reading->note);
  });
}

enum class Remarks : std::uint8_t { Written, LeftOut };

void writeCheck(JsonEmitter& out, const Check& check, Remarks remarks) {
  out.object({}, Lines, [&] {
    out.text("name", check.name);
    out.text("date", check.date);
    out.text("person", check.person);
    out.text("remark", check.remark);
    writeAmbient(out, "ambient", check.ambient);
    if (check.recording) writeRecording(out, *check.recording);
    out.array("readings", Lines, [&] {
      for (const auto& reading : check.readings) writeReading(out, reading);
    });
    if (!check.otherLevels.empty())
      out.array("other_levels", Lines, [&] {
        for (const Measured& level : check.otherLevels) writeReading(out, level);
      });
    if (check.closedWith) writeSetup(out, "closed_with", *check.closedWith);
    if (remarks == Remarks::Written) writeRemarks(out, "remarks", check.remarks);
  });
}

void writeChannel(JsonEmitter& out, const Channel& channel, Remarks remarks) {
  out.object({}, Lines, [&] {
    out.text("name", channel.name);
    out.text("note", channel.note);
    if (!channel.group.empty()) out.text("group", channel.group);
    writeSetup(out, "setup", channel.setup);
    out.array("checks", Lines, [&] {
      for (const Check& check : channel.checks) writeCheck(out, check, remarks);
    });
    writeOhmReadings(out, "ohm_readings", channel.ohmReadings);
    if (!channel.recordingColumn.empty()) out.text("recording_column", channel.recordingColumn);
  });
}

/// What every file says before its channels; `writeChannels` writes them.
template <class WriteChannels>
void writeContent(JsonEmitter& out, const Document& document, const WriteChannels& writeChannels) {
  out.text("title", document.title);
  out.text("site", document.site);
  out.text("article", document.article);
  out.text("person", document.person);
  out.text("note", document.note);
  writeStock(out, *document.stock);
  out.array("channels", Lines, writeChannels);
}

}  // namespace

Result<std::string> writeDocument(const Document& document) {
  JsonEmitter out;
  out.object({}, Lines, [&] {
    out.text("format", "shuntwright");
    out.count("version", fileVersion);
    writeContent(out, document, [&] {
      for (const auto& channel : document.channels) writeChannel(out, *channel, Remarks::Written);
    });
    writeSignOff(out, "sign_off", document.signOff);
    writeHistory(out, "history", document.history);
    // Where it fails, the text has failed before, and names the whole way to what is wrong.
    if (const auto fingerprint = fingerprintOf(document)) out.text("fingerprint", *fingerprint);
  });
  Result<std::string> text = out.finished();
  if (!text) return text;
  // Two channels of one name, say, would be saved well and never opened again.
  if (const auto back = readDocument(*text); !back) return back.error();
  return text;
}

Result<std::string> contentOf(const Channel& channel) {
  JsonEmitter out(JsonEmitter::Form::Canonical);
  writeChannel(out, channel, Remarks::LeftOut);
  return out.finished();
}

Result<std::string> contentOf(const Document& document, const std::vector<std::string>& channels) {
  JsonEmitter out(JsonEmitter::Form::Canonical);
  out.object({}, Lines, [&] {
    out.text("format", "shuntwright");
    writeContent(out, document, [&] {
      for (const std::string& fingerprint : channels) out.text({}, fingerprint);
    });
  });
  return out.finished();
}

}  // namespace core
