// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/plan/setup.h"

// Why an answer is right. Internal to core/practice.

namespace core {

/// What a shunt does and how each thing that is connected otherwise turns it, in sentences.
std::vector<std::string> ruleSentences(const Setup& setup, std::size_t step);
/// What the solved network says of the step: which signal terminal moves and why, and where the instrument
/// shows another strain than is simulated, why.
std::vector<std::string> networkSentences(const Setup& setup, std::size_t step, bool withInstrument = true);
/// The textbook formula of each closed shunt with its numbers, then the whole network beside it.
std::vector<std::string> outputLines(const Setup& setup, std::size_t step);
/// How the instrument makes its reading of the change of output.
std::vector<std::string> readingLines(const Setup& setup, std::size_t step);

/// Puts `more` behind `lines`.
void append(std::vector<std::string>& lines, std::vector<std::string> more);

}  // namespace core
