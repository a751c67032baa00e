// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_set.h"

#include <algorithm>
#include <numeric>

namespace ui {

core::QuestionKind kindOf(const PracticeSet& set, std::size_t index) {
  return set.kinds[index % set.kinds.size()];
}

std::size_t PracticeRun::rightOnes() const {
  return static_cast<std::size_t>(
      std::count_if(given.begin(), given.end(), [](const GivenAnswer& answer) { return answer.right; }));
}

PracticeRun runOf(PracticeSet set) {
  PracticeRun run;
  run.order.resize(set.count);
  std::iota(run.order.begin(), run.order.end(), std::size_t{0});
  run.set = std::move(set);
  return run;
}

std::optional<PracticeRun> repeatOfWrong(const PracticeRun& run) {
  PracticeRun repeat{.set = run.set, .order = {}, .given = {}, .isRepeat = true};
  for (std::size_t k = 0; k < run.given.size(); ++k)
    if (!run.given[k].right) repeat.order.push_back(run.order[k]);
  if (repeat.order.empty()) return std::nullopt;
  return repeat;
}

}  // namespace ui
