// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/working/working.h"

// How an approximation is held against the exact value. Internal to core/working.

namespace core {

/// One quantity, worked out exactly and by an approximation.
struct Compared {
  double exact = 0;
  double approximate = 0;
};

/// Works both out for a set-up whose only step is the one in question; none when it cannot be worked out.
using Comparing = std::function<std::optional<Compared>(const Setup&)>;

/// An approximation that holds for a step.
struct Approximation {
  enum class Unit : unsigned char { Strain, Load, Output, Factor } unit = Unit::Strain;
  std::string what, by, formula, numbers, source;
  std::string rest;  ///< what makes it differ in a bridge of equal arms without leads
  Comparing comparing;
};

/// The exact value beside `approximation`, and why they differ: one thing after another that the formula does
/// not know (leads, leaks, loading, constant current, unequal arms, settings) is taken out of the set-up,
/// and what that does to the difference is its part. None where the exact value is zero.
std::optional<WorkingContrast> contrastOf(const Setup& oneStep, const Approximation& approximation);

}  // namespace core
