// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <vector>

#include "core/campaign/overview.h"
#include "core/compare/change_cause.h"
#include "core/compare/comparison.h"
#include "core/report/diagnoses.h"
#include "core/report/report.h"

namespace core {

/// The last two checks of a channel.
struct ComparedChecks {
  std::size_t before = 0, after = 0;  ///< indices in the channel
  Comparison comparison;
  ChangeCause cause;  ///< empty where it was not asked for
};

/// What every form of a report is made of: worked out once, on all threads. Document and order must outlive
/// it.
struct ReportBasis {
  const Document& document;
  const ReportOrder& order;
  std::vector<ChannelEvaluation> evaluations;   ///< of all channels of the document
  std::vector<std::size_t> channels;            ///< those that the report is about, in the document's order
  std::map<std::size_t, OverviewRow> overview;  ///< of those
  std::map<std::size_t, ComparedChecks> compared;  ///< of those with two checks
  CheckDiagnoses diagnoses;                        ///< of those of their checks that call for one

  bool has(ReportPart part) const { return hasPart(order.content, part); }
  const Channel& channel(std::size_t index) const { return *document.channels[index]; }
};

/// Which of a channel's checks the report is about: all, or the latest that has a reading.
std::vector<std::size_t> reportedChecks(const Channel& channel, const ReportTemplate& content);

/// Diagnoses and causes of changes only where the template has their parts. After `stop` much is missing.
ReportBasis reportBasis(const Document& document, const ReportOrder& order, const Progress& progress = {},
                        const std::stop_token& stop = {});

/// The language to write in for `order`: never null, with canonical numbers where it says so.
std::shared_ptr<const Language> languageOf(const ReportOrder& order);

}  // namespace core
