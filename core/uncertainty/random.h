// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

namespace core {

/// Philox4x32-10: four random 32-bit words from a counter and a key, no state in between, so that any
/// trial's numbers can be worked out by any thread. J. Salmon et al., "Parallel random numbers: as easy as
/// 1, 2, 3", SC11 (2011) (from memory; checked against the authors' known answers).
std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter, std::array<std::uint32_t, 2> key);

/// In (0, 1), never either end: the middle of one of 2^52 equal intervals, so that 1 - u is exact too.
double uniformOf(std::uint32_t high, std::uint32_t low);

/// Value below which the share p (0 < p < 1) of a standard normal distribution lies. M. Wichura, algorithm
/// AS 241 (1988), about 1e-16. Built from + - x / and sqrt alone, with a logarithm of our own, so that
/// every machine gives the same bits. normalQuantile(1 - p) = -normalQuantile(p) exactly, if 1 - p is exact.
double normalQuantile(double p);

/// Share of a standard normal distribution below z; same promise. W. J. Cody, "Rational Chebyshev
/// approximations for the error function" (1969). Below z = -37.5 it is zero.
double normalProbability(double z);

/// Trials that are worked out side by side, so that loops over them become vector instructions.
inline constexpr std::size_t trialLanes = 32;

/// One number for each of `trialLanes` trials.
using Lanes = std::span<double, trialLanes>;

/// Draws two independent numbers, uniform in (-1/2, 1/2), for each trial from `firstTrial` on, which must be
/// a multiple of `trialLanes`: uniformOf - 1/2 of philox({trial low, trial high, draw, 0}, {seed low, high}),
/// its first two words and its last two.
void drawCentred(std::uint64_t seed, std::uint64_t firstTrial, std::uint32_t draw, Lanes first, Lanes second);

/// Replaces each centred share F - 1/2 by its normalQuantile(F).
void normalFromCentred(Lanes lanes);

/// Replaces each standard normal deviate z by normalProbability(z) - 1/2, an odd function of z exactly.
void centredFromNormal(Lanes lanes);

}  // namespace core
