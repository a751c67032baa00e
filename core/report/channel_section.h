// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/diagnoses.h"
#include "core/report/report.h"

namespace core {

/// The sections of channel `index` of `document`: set-up, plan, each check, the last two compared.
/// `evaluation` is that of the channel, `diagnoses` of those checks that have one. `printed` as for
/// core::reportOf.
std::vector<Section> channelSections(const Document& document, std::size_t index,
                                     const ChannelEvaluation& evaluation, const CheckDiagnoses& diagnoses,
                                     std::optional<Date> printed);

}  // namespace core
