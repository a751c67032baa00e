// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/what_if.h"

namespace core {

Result<WhatIf> whatIf(const Setup& setup, std::span<const Alteration>) {
  WhatIf result;
  result.setup = setup;
  return result;
}

}  // namespace core
