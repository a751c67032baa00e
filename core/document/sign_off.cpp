// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/sign_off.h"

#include <algorithm>
#include <array>

namespace core {
namespace {

constexpr std::array<std::string_view, stageCount> keys = {"draft", "submitted", "accepted", "returned"};

}  // namespace

std::string_view stageKey(Stage stage) { return keys[static_cast<std::size_t>(stage)]; }

std::optional<Stage> stageFromKey(std::string_view key) {
  const auto found = std::find(keys.begin(), keys.end(), key);
  if (found == keys.end()) return std::nullopt;
  return static_cast<Stage>(found - keys.begin());
}

}  // namespace core
