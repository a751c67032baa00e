// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>

namespace core {

/// Philox4x32-10: four random 32-bit words from a counter and a key, no state in between, so that any
/// trial's numbers can be worked out by any thread. J. Salmon et al., "Parallel random numbers: as easy as
/// 1, 2, 3", SC11 (2011) (from memory; checked against the authors' known answers).
std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter, std::array<std::uint32_t, 2> key);

/// In (0, 1), never either end: 53 bits, the middle of their interval.
double uniformOf(std::uint32_t high, std::uint32_t low);

/// Value below which the share p (0 < p < 1) of a standard normal distribution lies. M. Wichura, algorithm
/// AS 241 (1988), about 1e-16. Built from + - x / and sqrt alone, with a logarithm of our own, so that
/// every machine gives the same bits.
double normalQuantile(double p);

/// Share of a standard normal distribution below z; same promise.
double normalProbability(double z);

}  // namespace core
