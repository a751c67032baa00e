// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock.h"

namespace core {

std::shared_ptr<const Stock> noStock() {
  static const auto none = std::make_shared<const Stock>();
  return none;
}

}  // namespace core
