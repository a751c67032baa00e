// SPDX-License-Identifier: GPL-3.0-or-later
// Templates of reports.

#include "core/report/report_template.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto chosen = core::readTemplate(fuzz::textOf(data, size));
  if (!chosen) {
    fuzz::mustBeTold(chosen.error());
    return 0;
  }
  const auto back = core::readTemplate(core::writeTemplate(*chosen));
  fuzz::must(back && *back == *chosen, "a template comes back");
  return 0;
}
