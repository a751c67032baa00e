// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/report_template.h"

#include <algorithm>
#include <array>

#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"
#include "core/units/key_names.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::string_view fileFormat = "shuntwright-report-template";
constexpr std::uint64_t fileVersion = 1;
constexpr std::size_t longestName = 200;  ///< bytes

constexpr KeyNames<ReportPart, reportPartCount> partKeys{
    {"cover", "contents", "summary", "schematic", "setup", "wiring", "plan", "budget", "readings", "chart",
     "merits", "diagnosis", "comparison", "trend", "working", "remarks", "traceability", "history",
     "sign_off"}};
constexpr std::array<std::string_view, reportPartCount> partNames{sayLater("cover"),
                                                                  sayLater("contents"),
                                                                  sayLater("summary"),
                                                                  sayLater("schematics"),
                                                                  sayLater("set-up"),
                                                                  sayLater("wiring"),
                                                                  sayLater("plan"),
                                                                  sayLater("uncertainty budget"),
                                                                  sayLater("readings"),
                                                                  sayLater("charts"),
                                                                  sayLater("figures of merit"),
                                                                  sayLater("diagnosis"),
                                                                  sayLater("comparison of checks"),
                                                                  sayLater("trend over time"),
                                                                  sayLater("working"),
                                                                  sayLater("remarks"),
                                                                  sayLater("traceability"),
                                                                  sayLater("history"),
                                                                  sayLater("sign-off")};

constexpr KeyNames<ReportChannels, reportChannelsCount> channelKeys{{"all", "not_passing", "chosen"}};

struct Ready {
  std::string_view name, purpose;
};
constexpr Ready ready[] = {
    {sayLater("Full record"), sayLater("Everything, for the archive and for whoever signs.")},
    {sayLater("Reviewer's summary"), sayLater("What was found, worst first, without plan and budget.")},
    {sayLater("Bench sheet"), sayLater("Plan and wiring, to be taken to the article before the check.")},
    {sayLater("Pre-test against post-test"),
     sayLater("What moved between the last two checks, and what that means for the data in between.")},
};

std::set<ReportPart> allParts() {
  std::set<ReportPart> parts;
  for (std::size_t k = 0; k < reportPartCount; ++k) parts.insert(static_cast<ReportPart>(k));
  return parts;
}

std::vector<ReportTemplate> madeReady() {
  using enum ReportPart;
  return {
      {std::string(ready[0].name), allParts()},
      {std::string(ready[1].name),
       {Cover, Contents, Summary, Chart, Merits, Diagnosis, Comparison, Trend, Remarks, SignOffBlock}},
      {std::string(ready[2].name), {Cover, Schematic, Setup, Wiring, Plan, Traceability}},
      {std::string(ready[3].name),
       {Cover, Contents, Summary, Readings, Chart, Comparison, Trend, Remarks, Traceability, SignOffBlock}},
  };
}

const Ready* readyOf(const ReportTemplate& chosen) {
  const auto* found = std::find_if(std::begin(ready), std::end(ready),
                                   [&](const Ready& one) { return one.name == chosen.name; });
  return found == std::end(ready) ? nullptr : found;
}

/// Of ASCII letters: the names of the ready ones have no others.
bool sameLetters(std::string_view a, std::string_view b) {
  const auto small = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [&](char x, char y) { return small(x) == small(y); });
}

std::string readName(const JsonPlace& at) {
  const std::string& name = at.text();
  if (name.empty()) at.fail(say("the template has no name"), say("Give it one"));
  if (name.size() > longestName) at.fail(say("the name is longer than 200 bytes"), say("Shorten it"));
  return name;
}

std::set<ReportPart> readParts(const JsonPlace& at) {
  std::set<ReportPart> parts;
  for (std::size_t k = 0; k < at.size() && !at.failed(); ++k) {
    const JsonPlace place = at.element(k);
    const auto part = readWord<ReportPart>(place, "part", reportPartFromKey, reportPartKey, reportPartCount);
    if (!parts.insert(part).second)
      place.fail(say("the part {1} is named twice", {inQuotes(place.text())}), say("Name it once"));
  }
  return parts;
}

/// "de", "pt_BR": which of them have words is known to the program alone, and a template may come from
/// another.
bool isLanguageCode(std::string_view code) {
  const auto areAll = [](std::string_view letters, char first, char last) {
    return std::all_of(letters.begin(), letters.end(), [&](char c) { return first <= c && c <= last; });
  };
  const std::string_view language = code.substr(0, code.find('_'));
  if (language.size() < 2 || language.size() > 3 || !areAll(language, 'a', 'z')) return false;
  if (language.size() == code.size()) return true;
  const std::string_view country = code.substr(language.size() + 1);
  return country.size() == 2 && areAll(country, 'A', 'Z');
}

void readFormat(const JsonFields& in) {
  if (in.text("format") != fileFormat)
    in.at("format").fail(say("it is not a report template"),
                         say("Choose a file with the format {1}", {inQuotes(fileFormat)}));
  if (in.at("version").count() != fileVersion)
    in.at("version").fail(say("this version of report templates is not known"),
                          say("Save it anew with this program"));
}

ReportTemplate readRoot(const JsonPlace& root) {
  const JsonFields in(root, {"format", "version", "name", "parts", "channels", "latest_check_only",
                             "language", "local_numbers"});
  readFormat(in);
  ReportTemplate chosen;
  chosen.name = readName(in.at("name"));
  chosen.parts = readParts(in.at("parts"));
  chosen.channels = readWord<ReportChannels>(in.at("channels"), say("choice of channels"),
                                             reportChannelsFromKey, reportChannelsKey, reportChannelsCount);
  chosen.latestCheckOnly = in.at("latest_check_only").boolean();
  chosen.language = in.text("language");
  if (!isLanguageCode(chosen.language))
    in.at("language")
        .fail(say("{1} is no code of a language", {inQuotes(chosen.language)}),
              say("Write it as ISO 639 does: \"en\", \"de\""));
  chosen.localNumbers = in.at("local_numbers").boolean();
  return chosen;
}

}  // namespace

std::string_view reportPartKey(ReportPart part) { return partKeys.of(part); }
std::optional<ReportPart> reportPartFromKey(std::string_view key) { return partKeys.find(key); }
std::string reportPartName(ReportPart part) { return say(partNames[static_cast<std::size_t>(part)]); }

std::string_view reportChannelsKey(ReportChannels channels) { return channelKeys.of(channels); }
std::optional<ReportChannels> reportChannelsFromKey(std::string_view key) { return channelKeys.find(key); }

const std::vector<ReportTemplate>& readyTemplates() {
  static const std::vector<ReportTemplate> templates = madeReady();
  return templates;
}

std::string templateName(const ReportTemplate& chosen) {
  return readyOf(chosen) ? say(readyOf(chosen)->name) : chosen.name;
}

std::string templatePurpose(const ReportTemplate& chosen) {
  return readyOf(chosen) ? say(readyOf(chosen)->purpose) : std::string();
}

std::optional<ReportTemplate> readyTemplate(std::string_view name) {
  for (const ReportTemplate& one : readyTemplates())
    if (sameLetters(one.name, name)) return one;
  return std::nullopt;
}

std::string writeTemplate(const ReportTemplate& chosen) {
  using enum JsonEmitter::Layout;
  JsonEmitter out;
  out.object({}, Lines, [&] {
    out.text("format", fileFormat);
    out.count("version", fileVersion);
    out.text("name", chosen.name);
    out.array("parts", Lines, [&] {
      for (const ReportPart part : chosen.parts) out.text({}, reportPartKey(part));
    });
    out.text("channels", reportChannelsKey(chosen.channels));
    out.boolean("latest_check_only", chosen.latestCheckOnly);
    out.text("language", chosen.language);
    out.boolean("local_numbers", chosen.localNumbers);
  });
  const auto text = out.finished();
  assert(text);  // names come from fields and files, which are UTF-8
  return *text;
}

Result<ReportTemplate> readTemplate(std::string_view text) {
  const auto tree = parseJson(text);
  if (!tree) return tree.error();
  FirstError error;
  ReportTemplate chosen = readRoot(JsonPlace(*tree, error));
  if (error) return *error;
  return chosen;
}

}  // namespace core
