// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// What a report can hold. Cautions, scope of the verdicts and fingerprint are in every one.
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
std::string_view reportPartKey(ReportPart part);
/// For people.
std::string_view reportPartName(ReportPart part);

/// Which channels a report is about.
enum class ReportChannels : std::uint8_t { All, NotPassing, Chosen };

/// A choice of what a report says and in which language.
struct ReportTemplate {
  std::string name;
  std::set<ReportPart> parts;
  ReportChannels channels = ReportChannels::All;
  bool latestCheckOnly = false;  ///< of each channel instead of all
  std::string language = "en";   ///< of its sentences: "en", "de"
  bool localNumbers = false;     ///< numbers and days as that language writes them, instead of canonical ones

  friend bool operator==(const ReportTemplate&, const ReportTemplate&) = default;
};

/// The ready ones, the first of which is the full record.
const std::vector<ReportTemplate>& readyTemplates();

/// A template as file text (JSON with "format": "shuntwright-report-template") and back. Strict, as documents
/// are: an unknown key or part is refused with its place.
std::string writeTemplate(const ReportTemplate& chosen);
Result<ReportTemplate> readTemplate(std::string_view text);

}  // namespace core
