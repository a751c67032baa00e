// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace core {

/// The names of an enumeration's values in files, in their order.
template <class Enum, std::size_t count>
struct KeyNames {
  std::array<std::string_view, count> names;

  constexpr std::string_view of(Enum value) const { return names[static_cast<std::size_t>(value)]; }
  constexpr std::optional<Enum> find(std::string_view name) const {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) return std::nullopt;
    return static_cast<Enum>(found - names.begin());
  }
};

}  // namespace core
