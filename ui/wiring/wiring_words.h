// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/plan/pins.h"
#include "core/plan/setup.h"
#include "core/units/result.h"

namespace ui {

/// "unused", "S-", "R1 end 2".
QString pinUseText(const core::PinUse& use);
/// Everything that a pin of this channel can lead to, in the words of `pinUseText`.
QStringList pinUseChoices(const core::Setup& setup);
core::Result<core::PinUse> pinUseFromText(const core::Setup& setup, const QString& text);

/// "J1-A leads to S-", "J1-B is unused".
QString leadsToText(const core::Pin& pin);

/// The pins by name as jumpers call them.
QStringList pinTexts(const core::Wiring& wiring);
core::Result<core::PinName> pinFromText(const core::Wiring& wiring, const QString& text);
/// The name that usually follows: "B" after "A", "8" after "7", on the same connector.
core::PinName pinNameAfter(const core::PinName& name);

/// The pins that `jumpers` join to `name` directly.
std::vector<core::PinName> joinedTo(const std::vector<core::Jumper>& jumpers, const core::PinName& name);

/// Of each shunt: "R1: across arm 1, − negative", "R2: P+ to S-, − negative".
QStringList shuntTitles(const core::Setup& setup);

}  // namespace ui
