// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/assess/verdict.h"

#include "core/units/language.h"

namespace core {

std::string_view verdictWord(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return sayName("pass");
    case Verdict::Fail:
      return sayName("fail");
    case Verdict::CannotTell:
      return sayName("cannot tell");
    case Verdict::NotJudged:
      return sayName("not judged");
  }
  return {};
}

}  // namespace core
