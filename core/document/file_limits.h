// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>

// How much of one thing a document file may hold. Far beyond any hall's needs, and little enough that what is
// worked out from pairs of them (neighbouring pins, points of an ohmmeter) stays quick. The reader refuses
// more, and so does the writer; the limits of the text itself are with parseJson.

namespace core {

inline constexpr std::size_t mostResistors = 10'000;  ///< of a stock
inline constexpr std::size_t mostBoxes = 1'000;       ///< of a stock
inline constexpr std::size_t mostSeries = 100;        ///< of a stock
inline constexpr std::size_t mostDecades = 20;        ///< of a box
inline constexpr std::size_t mostChannels = 10'000;   ///< of a document
inline constexpr std::size_t mostShunts = 1'000;      ///< of a set-up
/// Of a set-up. What is worked out of them, each step against each other one, grows with their square.
inline constexpr std::size_t mostSteps = 2'000;
inline constexpr std::size_t mostGroups = 1'000;        ///< of correlated inputs in a set-up
inline constexpr std::size_t mostChecks = 1'000;        ///< of a channel
inline constexpr std::size_t mostOtherLevels = 10'000;  ///< of a check
inline constexpr std::size_t mostPins = 200;            ///< of a channel
inline constexpr std::size_t mostJumpers = 20;          ///< of a shunt
inline constexpr std::size_t mostExchanges = 100;       ///< of a bridge's leads, one after the other
inline constexpr std::size_t mostOhmReadings = 10'000;  ///< of a channel
inline constexpr std::size_t mostRemarks = 1'000;       ///< of a check
inline constexpr std::size_t mostActs = 1'000;          ///< of a review
inline constexpr std::size_t mostRevisions = 10'000;    ///< of a history
inline constexpr std::size_t mostChanges = 100;         ///< told of a revision
/// Greatest count of changes that a revision does not tell, and of the step that a remark is pinned to.
inline constexpr std::uint64_t mostChangesCut = 1'000'000'000;
inline constexpr std::uint64_t mostPinnedStep = 1'000'000;

}  // namespace core
