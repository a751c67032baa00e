// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_list.h"

#include "core/units/language.h"

namespace core {

std::string numberList(const std::vector<std::size_t>& places) {
  constexpr std::size_t shortestRange = 3;
  std::vector<std::string> numbers;
  for (std::size_t begin = 0; begin < places.size();) {
    std::size_t end = begin + 1;
    while (end < places.size() && places[end] == places[end - 1] + 1) ++end;
    const std::string first = std::to_string(places[begin] + 1);
    if (end - begin >= shortestRange) {
      numbers.push_back(first + "–" + std::to_string(places[end - 1] + 1));
      begin = end;
    } else {
      numbers.push_back(first);
      ++begin;
    }
  }
  return sayAll(numbers);
}

}  // namespace core
