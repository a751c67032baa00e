// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/fingerprint.h"

#include <utility>

#include "core/document/canonical_json.h"

namespace core {

Result<std::string> canonicalJson(std::string_view json) {
  const auto tree = parseJson(json);
  if (!tree) return tree.error();
  std::string text;
  appendCanonical(text, *tree);
  return text;
}

Result<std::string> fingerprintOfFile(std::string_view text) {
  auto tree = parseJson(text);
  if (!tree) return tree.error();
  return fingerprintOfTree(*std::move(tree));
}

std::string shortFingerprint(std::string_view fingerprint) {
  constexpr std::size_t shown = 16, group = 4;
  std::string text;
  for (std::size_t at = 0; at < shown && at < fingerprint.size(); at += group)
    text.append(text.empty() ? "" : " ").append(fingerprint.substr(at, group));
  return text;
}

}  // namespace core
