// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/setup/setup_rows.h"

// The groups of the set-up form, from top to bottom.

namespace ui {

void addChannelGroup(SetupRows& rows);
void addBridgeGroup(SetupRows& rows);  ///< template, gauges or rating
void addArmsGroup(SetupRows& rows);
void addLeadsGroup(SetupRows& rows);
void addLeaksGroup(SetupRows& rows);
void addInstrumentGroup(SetupRows& rows);   ///< excitation, readings, balance network
void addAcquisitionGroup(SetupRows& rows);  ///< sample rate, filter, mains: how long a step must last
void addHeatingGroup(SetupRows& rows);      ///< self-heating of the gauges
void addLimitsGroup(SetupRows& rows);       ///< limits and the decision rule
void addMeritsGroup(SetupRows& rows);       ///< limits of figures of merit, and the line they start from

/// "settles in 0.32 s, hold at least 1.00 s", or why that cannot be said.
QString usualTimesText(const core::Acquisition& acquisition);
/// Whether the channel's bridge is made of gauges with a gauge factor; a transducer has a rating instead.
bool hasGauge(const core::Channel& channel);

}  // namespace ui
