// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_record.h"

#include "core/document/file_limits.h"
#include "core/document/json_stock.h"
#include "core/document/sha256.h"
#include "core/units/date.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

std::string readTime(const JsonPlace& at) {
  const std::string& text = at.text();
  if (!isTimeText(text))
    at.fail(say("{1} is not a time", {inQuotes(text)}), say("Write it in UTC, such as 2026-11-25T14:05:00Z"));
  return text;
}

Remark readRemark(const JsonPlace& at) {
  const JsonFields in(at, {"step", "person", "time", "text", "settled"});
  Remark remark{{}, in.text("person"), readTime(in.at("time")), in.text("text"), in.at("settled").boolean()};
  if (!in.has("step")) return remark;
  const std::uint64_t step = in.at("step").count(mostPinnedStep);
  if (step == 0) in.at("step").fail(say("steps are counted from 1"), say("Write 1 for the first step"));
  remark.step = static_cast<std::size_t>(step) - (step > 0 ? 1 : 0);
  return remark;
}

SignOffAct readAct(const JsonPlace& at) {
  const JsonFields in(at, {"stage", "person", "time", "remark", "fingerprint"});
  return {readWord<Stage>(in.at("stage"), "stage", stageFromKey, stageKey, stageCount), in.text("person"),
          readTime(in.at("time")), in.text("remark"), readFingerprint(in.at("fingerprint"))};
}

Revision readRevision(const JsonPlace& at) {
  const JsonFields in(at, {"time", "person", "program", "changes", "more", "fingerprint", "chain"});
  Revision revision{readTime(in.at("time")), in.text("person"), in.text("program"), {}, 0, {}, {}};
  revision.changes = readShortList<std::string>(in.at("changes"), mostChanges, "changes",
                                                [](const JsonPlace& p) { return p.text(); });
  if (in.has("more")) revision.more = static_cast<std::size_t>(in.at("more").count(mostChangesCut));
  revision.fingerprint = readFingerprint(in.at("fingerprint"));
  revision.chain = readFingerprint(in.at("chain"));
  return revision;
}

}  // namespace

void writeIdentity(JsonEmitter& out, std::string_view key, const Identity& identity) {
  if (identity == Identity{}) return;
  out.object(key, OneLine, [&] {
    out.text("name", identity.name);
    out.text("serial", identity.serial);
    out.text("certificate", identity.certificate);
    writeDate(out, "due", identity.due);
  });
}

Identity readIdentity(const JsonPlace& at) {
  const JsonFields in(at, {"name", "serial", "certificate", "due"});
  return {in.text("name"), in.text("serial"), in.text("certificate"), readDate(in, "due")};
}

void writeAmbient(JsonEmitter& out, std::string_view key, const Ambient& ambient) {
  if (ambient == Ambient{}) return;
  out.object(key, OneLine, [&] {
    if (ambient.air) out.number("air_degC", ambient.air->base());
    if (ambient.humidity) out.number("humidity", *ambient.humidity);
  });
}

Ambient readAmbient(const JsonPlace& at) {
  const JsonFields in(at, {"air_degC", "humidity"});
  Ambient ambient;
  if (in.has("air_degC")) ambient.air = Temperature(in.number("air_degC"));
  if (in.has("humidity")) ambient.humidity = in.number("humidity");
  return ambient;
}

void writeRemarks(JsonEmitter& out, std::string_view key, const std::vector<Remark>& remarks) {
  if (remarks.empty()) return;
  out.array(key, Lines, [&] {
    for (const Remark& remark : remarks)
      out.object({}, OneLine, [&] {
        if (remark.step) out.count("step", *remark.step + 1);
        out.text("person", remark.person);
        out.text("time", remark.time);
        out.text("text", remark.text);
        out.boolean("settled", remark.settled);
      });
  });
}

std::vector<Remark> readRemarks(const JsonPlace& at) {
  return readShortList<Remark>(at, mostRemarks, "remarks", readRemark);
}

void writeSignOff(JsonEmitter& out, std::string_view key, const SignOff& signOff) {
  if (signOff.acts.empty()) return;
  out.array(key, Lines, [&] {
    for (const SignOffAct& act : signOff.acts)
      out.object({}, OneLine, [&] {
        out.text("stage", stageKey(act.stage));
        out.text("person", act.person);
        out.text("time", act.time);
        out.text("remark", act.remark);
        out.text("fingerprint", act.fingerprint);
      });
  });
}

SignOff readSignOff(const JsonPlace& at) {
  return {readShortList<SignOffAct>(at, mostActs, say("acts of review"), readAct)};
}

void writeHistory(JsonEmitter& out, std::string_view key, const std::vector<Revision>& history) {
  if (history.empty()) return;
  out.array(key, Lines, [&] {
    for (const Revision& revision : history)
      out.object({}, Lines, [&] {
        out.text("time", revision.time);
        out.text("person", revision.person);
        out.text("program", revision.program);
        out.array("changes", Lines, [&] {
          for (const std::string& change : revision.changes) out.text({}, change);
        });
        if (revision.more > 0) out.count("more", revision.more);
        out.text("fingerprint", revision.fingerprint);
        out.text("chain", revision.chain);
      });
  });
}

std::vector<Revision> readHistory(const JsonPlace& at) {
  return readShortList<Revision>(at, mostRevisions, "revisions", readRevision);
}

std::string readFingerprint(const JsonPlace& at) {
  if (!isSha256Hex(at.text()))
    at.fail(say("it is not a SHA-256 sum"), say("Write 64 digits from 0 to 9 and a to f, or open a backup"));
  return at.text();
}

}  // namespace core
