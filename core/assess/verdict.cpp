// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/verdict.h"

namespace core {

std::string_view verdictWord(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return "pass";
    case Verdict::Fail:
      return "fail";
    case Verdict::CannotTell:
      return "cannot tell";
    case Verdict::NotJudged:
      return "not judged";
  }
  return {};
}

}  // namespace core
