// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/report_basis.h"

namespace core {

/// One resistor or instrument with what is known of its calibration, and where it was used.
struct Traced {
  std::string id = {};      ///< of a resistor its label, of an instrument its name; empty: not said
  std::string serial = {};  ///< of an instrument
  std::optional<Resistance> resistance = {};  ///< of a resistor
  std::string certificate = {};
  std::optional<Date> due = {};
  std::vector<std::string> uses = {};  ///< "TP-01: R1 on arm 1", "TP-01"; each once
  std::vector<std::string> overdue =
      {};  ///< "TP-01, post-test, 2031-05-04"; that it is overdue on the day of printing
};

/// Of the channels and checks of the report: every resistor that some step closes, by the set-ups that were
/// judged by, in the order of their labels; those of one label with another certificate or value stand apart.
std::vector<Traced> tracedResistors(const ReportBasis& basis);
std::vector<Traced> tracedInstruments(const ReportBasis& basis);

Section traceabilitySection(const ReportBasis& basis);

}  // namespace core
