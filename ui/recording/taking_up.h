// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <span>

#include "core/intake/intake.h"
#include "core/recording/recording.h"

namespace ui {

/// Whether a find can be taken without asking anyone: one run, read in one way only, every step with its
/// level. Levels that belong to no step do not matter.
bool isPlain(const core::ChannelFind& find);

/// "TP-01: 9 of 9 steps; TP-11: ..." in words, what stands in the way included.
QString findsInWords(const core::Document& document, std::span<const core::ChannelFind> finds);

/// The document with the plain `finds` taken: as a new check of each channel, or in place of the readings of
/// an open check that was taken from this file before. `check` brings name, date and reference. Nothing when
/// none is plain.
std::optional<core::Document> withFindsTaken(core::Document document, const core::Recording& recording,
                                             std::span<const core::ChannelFind> finds,
                                             const core::Check& check);

}  // namespace ui
