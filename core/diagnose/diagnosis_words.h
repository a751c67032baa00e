// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diagnose/diagnosis.h"

namespace core {

/// The whole of a diagnosis in words a reviewer can quote; a suspicion until a measurement confirms it.
std::string sentenceOf(const Setup& setup, const Diagnosis& diagnosis);

}  // namespace core
