// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of resistors.

#include "core/stock/stock_file.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using fuzz::must;
  const auto stock = core::readStockFile(fuzz::textOf(data, size));
  if (!stock) {
    fuzz::mustBeTold(stock.error());
    return 0;
  }
  const auto back = core::readStockFile(core::stockFileText(*stock));
  must(static_cast<bool>(back), "what was written can be read");
  must(back->resistors == stock->resistors && back->boxes == stock->boxes, "resistors and boxes come back");
  return 0;
}
