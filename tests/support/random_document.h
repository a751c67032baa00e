// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "core/document/document.h"

namespace support {

enum class Numbers : std::uint8_t {
  Plausible,  ///< what an engineer enters, so that bridges can be calculated
  AnyFinite,  ///< any finite double: zeros, negative, subnormal, greatest
};

/// A document that keeps the promises of its types (unique names, rising indices, no more readings
/// than steps) and is otherwise as odd as `seed` makes it: no to four channels of any template, all
/// units, leads given either way, leaks, balance networks, both kinds of supply, statements about
/// uncertainties of any input, texts with quotes, line breaks, markup and letters of many scripts,
/// checks open and closed. The same seed gives the same document everywhere.
core::Document randomDocument(std::uint64_t seed, Numbers numbers = Numbers::Plausible);

}  // namespace support
