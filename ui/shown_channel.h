// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>

#include "ui/session.h"

namespace ui {

/// The chosen channel with the set-up that is shown: that which the chosen check was judged by where it is
/// closed, else the plan. Null in a document without channels.
std::shared_ptr<const core::Channel> shownChannel(const Session& session);

/// The chosen step where the set-up that is shown has it.
std::optional<std::size_t> shownStep(const Session& session);

/// Why the set-up that is shown cannot be edited, and what to do; empty where it can.
QString whyNotEdited(const Session& session);

}  // namespace ui
