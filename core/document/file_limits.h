// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

// How much of one thing a document file may hold. Far beyond any hall's needs, and little enough that what is
// worked out from pairs of them (neighbouring pins, points of an ohmmeter) stays quick. The reader refuses
// more, and so does the writer; the limits of the text itself are with parseJson.

namespace core {

inline constexpr std::size_t mostResistors = 10'000;    ///< of a stock
inline constexpr std::size_t mostBoxes = 1'000;         ///< of a stock
inline constexpr std::size_t mostSeries = 100;          ///< of a stock
inline constexpr std::size_t mostDecades = 20;          ///< of a box
inline constexpr std::size_t mostPins = 200;            ///< of a channel
inline constexpr std::size_t mostJumpers = 20;          ///< of a shunt
inline constexpr std::size_t mostExchanges = 100;       ///< of a bridge's leads, one after the other
inline constexpr std::size_t mostOhmReadings = 10'000;  ///< of a channel

}  // namespace core
