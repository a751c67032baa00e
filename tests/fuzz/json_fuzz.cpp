// SPDX-License-Identifier: GPL-3.0-or-later
// JSON of unknown origin, and its canonical form (RFC 8785).

#include "core/document/json_text.h"
#include "core/record/fingerprint.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using fuzz::must;
  const std::string_view text = fuzz::textOf(data, size);
  const auto value = core::parseJson(text);
  const auto canonical = core::canonicalJson(text);
  must(static_cast<bool>(value) == static_cast<bool>(canonical), "what is read has a canonical form");
  if (!value) {
    fuzz::mustBeTold(value.error());
    return 0;
  }
  const auto again = core::canonicalJson(*canonical);
  must(again && *again == *canonical, "the canonical form is its own");
  must(core::jsonPath("a", 1) == "a[1]", "a place has a name");
  return 0;
}
