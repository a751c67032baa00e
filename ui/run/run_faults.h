// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "ui/session.h"

namespace ui {

// What is known to be wrong with a plan before and while it is run. Sentences hold names out of files: to be
// shown as plain text.

/// What a run of the chosen channel would be led into.
struct RunFaults {
  QStringList sentences;          ///< each fault of the review with what to do, wiring first
  bool shortsExcitation = false;  ///< the jumpers of some shunt would: it must not be run
};

/// No channel: no faults.
RunFaults faultsOf(const Session& session);

/// What is wrong with the jumpers that are laid at `step`, each with what to do.
QStringList wiringFaultsAt(const core::Setup& setup, const core::Step& step);

/// "• one\n• two", of more than five sentences "• and 3 more" last.
QString listOf(const QStringList& sentences);

}  // namespace ui
