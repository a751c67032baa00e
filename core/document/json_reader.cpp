// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_reader.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

#include "core/document/file_limits.h"
#include "core/document/json_fields.h"
#include "core/document/json_record.h"
#include "core/document/json_setup_reader.h"
#include "core/document/json_stock.h"
#include "core/document/json_upgrade.h"
#include "core/document/json_wiring.h"
#include "core/document/sha256.h"
#include "core/recording/layout.h"
#include "core/units/language.h"

namespace core {
namespace {

std::string readReadAs(const JsonPlace& at) {
  const std::string& text = at.text();
  if (const auto choices = choicesFromText(text); !choices) {
    const Error& error = choices.error();
    at.fail(error.where + ": " + error.what, error.mend);
  }
  return text;
}

RecordingReference readRecording(const JsonPlace& at) {
  const JsonFields in(at, {"path", "size_bytes", "sha256", "column", "read_as"});
  const JsonPlace hashAt = in.at("sha256");
  const std::string& hash = hashAt.text();
  if (!isSha256Hex(hash))
    hashAt.fail(say("it is not a SHA-256 sum"), say("Write 64 digits from 0 to 9 and a to f"));
  return {in.text("path"), in.at("size_bytes").count(), hash, in.text("column"),
          in.has("read_as") ? readReadAs(in.at("read_as")) : ""};
}

std::optional<Measured> readMeasured(const JsonPlace& at) {
  if (at.isNull()) return std::nullopt;
  const JsonFields in(at, {"mean", "uncertainty", "begin_s", "end_s", "note"});
  Measured measured{Reading(in.number("mean")), {}, {}, {}};
  if (in.has("uncertainty")) measured.uncertainty = Reading(in.number("uncertainty"));
  if (in.has("begin_s")) measured.begin = Duration(in.number("begin_s"));
  if (in.has("end_s")) measured.end = Duration(in.number("end_s"));
  if (in.has("note")) measured.note = in.text("note");
  return measured;
}

/// A level that is no reading: it has its place in the recording, behind `earlier` ones.
Measured readOtherLevel(const JsonPlace& at, double& latest_s) {
  const Measured level = readMeasured(at).value_or(Measured{});
  if (!level.begin || !level.end) {
    at.fail(say("it does not say where it lies in the recording"), say("Give it a begin_s and an end_s"));
  } else if (level.begin->base() < latest_s || *level.end < *level.begin) {
    at.fail(say("it does not lie behind the level above, or ends before it begins"),
            say("Sort the levels by time"));
  } else {
    latest_s = level.begin->base();
  }
  return level;
}

Check readCheck(const JsonPlace& at, const Setup& channelSetup, JsonNames& names) {
  const JsonFields in(at, {"name", "date", "person", "remark", "ambient", "recording", "readings",
                           "other_levels", "closed_with", "remarks"});
  names.add(in.at("name"), "check");
  Check check;
  check.name = in.text("name");
  check.date = in.text("date");
  check.person = in.text("person");
  check.remark = in.text("remark");
  if (in.has("ambient")) check.ambient = readAmbient(in.at("ambient"));
  if (in.has("recording")) check.recording = readRecording(in.at("recording"));
  check.readings =
      readShortList<std::optional<Measured>>(in.at("readings"), mostSteps, say("readings"), readMeasured);
  double latest_s = -std::numeric_limits<double>::infinity();
  if (in.has("other_levels"))
    check.otherLevels =
        readShortList<Measured>(in.at("other_levels"), mostOtherLevels, say("levels"),
                                [&](const JsonPlace& p) { return readOtherLevel(p, latest_s); });
  if (in.has("closed_with"))
    check.closedWith = std::make_shared<const Setup>(readSetup(in.at("closed_with")));
  if (in.has("remarks")) check.remarks = readRemarks(in.at("remarks"));
  const std::size_t steps = (check.closedWith ? *check.closedWith : channelSetup).sequence.size();
  if (check.readings.size() > steps)
    in.at("readings")
        .fail(say("there are {1} readings for {2} steps",
                  {std::to_string(check.readings.size()), std::to_string(steps)}),
              say("Keep one reading a step, null where there is none"));
  return check;
}

std::shared_ptr<const Channel> readChannel(const JsonPlace& at, JsonNames& names) {
  const JsonFields in(at, {"name", "note", "group", "setup", "checks", "ohm_readings", "recording_column"});
  names.add(in.at("name"), "channel");
  Channel channel{in.text("name"), in.text("note"), readSetup(in.at("setup")), {}};
  JsonNames checkNames;
  channel.checks = readShortList<Check>(in.at("checks"), mostChecks, say("checks"), [&](const JsonPlace& p) {
    return readCheck(p, channel.setup, checkNames);
  });
  if (in.has("group")) channel.group = in.text("group");
  channel.ohmReadings = readOhmReadings(in.at("ohm_readings"));
  if (in.has("recording_column")) channel.recordingColumn = in.text("recording_column");
  return std::make_shared<const Channel>(std::move(channel));
}

/// From each version to the next, the first one from version 1.
constexpr std::array upgrades = {upgradeFrom1, upgradeFrom2, upgradeFrom3,
                                 upgradeFrom4, upgradeFrom5, upgradeFrom6};
static_assert(upgrades.size() == fileVersion - 1);

/// The version of a document; of anything else an error is noted. Looked at before anything else, since
/// other versions have other keys.
std::uint64_t versionOf(const JsonPlace& root, const JsonValue::Object& members) {
  const auto find = [&](std::string_view key) {
    return std::find_if(members.begin(), members.end(), [&](const auto& m) { return m.key == key; });
  };
  const auto format = find("format");
  const auto* name = format == members.end() ? nullptr : std::get_if<std::string>(&format->value.data);
  if (!name || *name != "shuntwright") {
    root.fail(say("it is not a Shuntwright document"), say("Open a file that ends in .bridgecal"));
    return 0;
  }
  const auto version = find("version");
  const auto* number = version == members.end() ? nullptr : std::get_if<std::uint64_t>(&version->value.data);
  if (!number || *number == 0) {
    root.fail(say("the file does not say which version it has"), say("Open a backup of this document"));
    return 0;
  }
  if (*number > fileVersion)
    root.fail(
        say("it was saved by a newer Shuntwright as file version {1}, and this one reads up to version {2}",
            {std::to_string(*number), std::to_string(fileVersion)}),
        say("Open it with a Shuntwright that reads file version {1}", {std::to_string(*number)}));
  return *number;
}

Document readRoot(const JsonPlace& root) {
  const JsonFields in(root, {"format", "version", "title", "site", "article", "person", "note", "stock",
                             "channels", "sign_off", "history", "fingerprint"});
  Document document{in.text("title"),  in.text("site"), in.text("article"),
                    in.text("person"), in.text("note"), {}};
  if (Stock stock = readStock(in.at("stock")); stock != Stock{})
    document.stock = std::make_shared<const Stock>(std::move(stock));
  JsonNames names;
  document.channels = readShortList<std::shared_ptr<const Channel>>(
      in.at("channels"), mostChannels, say("channels"),
      [&](const JsonPlace& p) { return readChannel(p, names); });
  if (in.has("sign_off")) document.signOff = readSignOff(in.at("sign_off"));
  if (in.has("history")) document.history = readHistory(in.at("history"));
  if (in.has("fingerprint")) readFingerprint(in.at("fingerprint"));  // its form; whether it is right is no
  return document;                                                   // matter of opening
}

}  // namespace

Result<Document> readDocument(std::string_view text) {
  auto tree = parseJson(text);
  if (!tree) return tree.error();
  const auto* members = std::get_if<JsonValue::Object>(&tree->data);
  if (!members)
    return Error{say("the file"), say("it is not a Shuntwright document"),
                 say("Open a file that ends in .bridgecal")};
  FirstError error;
  const JsonPlace root(*tree, error);
  const std::uint64_t version = versionOf(root, *members);
  if (error) return *error;
  for (std::uint64_t from = version; from < fileVersion; ++from) {
    upgrades[from - 1](*tree, error);
    if (error) return *error;
  }
  Document document = readRoot(root);
  if (error) return *error;
  return document;
}

}  // namespace core
