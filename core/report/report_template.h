// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// What a report can hold. Cautions, scope of the verdicts, fingerprint and what was left out are in every
/// one.
enum class ReportPart : std::uint8_t {
  Cover,
  Contents,
  Summary,    ///< all channels and checks, worst first
  Schematic,  ///< per channel from here on
  Setup,      ///< bridge, leads, instrument, limits
  Wiring,     ///< pins and jumpers
  Plan,
  Budget,    ///< uncertainty of every step
  Readings,  ///< of each check
  Chart,
  Merits,  ///< figures of the line and of merit
  Diagnosis,
  Comparison,    ///< of the last two checks, with cause
  Trend,         ///< of more than two
  Working,       ///< formulas with numbers of the largest step
  Remarks,       ///< of reviewers
  Traceability,  ///< resistors and instruments with certificates
  History,
  SignOffBlock,
};
inline constexpr std::size_t reportPartCount = 19;
/// In files: "cover", "budget", "sign_off", ...
std::string_view reportPartKey(ReportPart part);
std::optional<ReportPart> reportPartFromKey(std::string_view key);
/// For people, in the present language: "uncertainty budget".
std::string reportPartName(ReportPart part);

/// Which channels a report is about.
enum class ReportChannels : std::uint8_t {
  All,
  NotPassing,  ///< those whose latest verdict is no pass, or which changed since the check before
  Chosen,      ///< by the reader, each time anew
};
inline constexpr std::size_t reportChannelsCount = 3;
/// In files: "all", "not_passing", "chosen".
std::string_view reportChannelsKey(ReportChannels channels);
std::optional<ReportChannels> reportChannelsFromKey(std::string_view key);

/// A choice of what a report says and in which language.
struct ReportTemplate {
  std::string name;
  std::set<ReportPart> parts;
  ReportChannels channels = ReportChannels::All;
  bool latestCheckOnly = false;  ///< of each channel instead of all
  std::string language = "en";   ///< of its sentences, ISO 639: "en", "de"
  bool localNumbers = false;     ///< numbers and days as that language writes them, instead of canonical ones

  friend bool operator==(const ReportTemplate&, const ReportTemplate&) = default;
};

inline bool hasPart(const ReportTemplate& chosen, ReportPart part) { return chosen.parts.contains(part); }

/// The ready ones, the first of which is the full record. Their names are English, and looked up so whatever
/// the language; `templateName` is for people.
const std::vector<ReportTemplate>& readyTemplates();
/// Its name, that of a ready one in the present language.
std::string templateName(const ReportTemplate& chosen);
/// What a ready one is for, in a sentence in the present language; empty for others.
std::string templatePurpose(const ReportTemplate& chosen);
/// The ready one of that name, capital and small letters alike.
std::optional<ReportTemplate> readyTemplate(std::string_view name);

/// A template as file text (JSON with "format": "shuntwright-report-template") and back. Strict, as documents
/// are: an unknown or missing key, a part that is unknown or named twice, a name that is empty or longer than
/// 200 bytes, and a language that is no code of ISO 639 are refused with line and field.
std::string writeTemplate(const ReportTemplate& chosen);
Result<ReportTemplate> readTemplate(std::string_view text);

}  // namespace core
