// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/diagnose/diagnosis.h"

namespace core {

/// Between which checks something changed, and which way.
struct ChangeWay {
  std::string before, after;  ///< names of both checks
  /// It was there in the earlier check and is no longer; else it came, or grew, since.
  bool gone = false;
  const Explanation* earlier = nullptr;  ///< what was wrong in the earlier check already; may be null
};

/// The zero that moved between the checks: a shift before the first step.
inline bool isZeroBetween(const Fault& fault) {
  return fault.kind == CauseKind::ZeroShift && fault.index == 0;
}
/// Whether it is of the readings of one check and says nothing about what lies between both.
bool isWithinOneCheck(CauseKind kind);
/// Whether it moved the zero within one check, as it may have done before that as well.
bool isOfItsZero(CauseKind kind);
/// Whether the scale of strain data taken between both checks does not feel it.
bool sparesDataBetween(CauseKind kind);

/// "Leak over gauge 1 grew", "Contact in lead S- went bad".
std::string changeTitle(const Setup& setup, const Fault& fault, const ChangeWay& way);
/// "from none to 118 ± 9 kΩ over gauge 1"; what the explanation says already of one that is gone or within
/// one check.
std::string changeSize(const Setup& setup, const Explanation& explanation, const ChangeWay& way);

/// Puts title, size, measurement and effect on strain of a described explanation into the words of a change.
void describeChange(const Setup& setup, const ChangeWay& way, Explanation& explanation);

}  // namespace core
