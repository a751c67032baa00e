// SPDX-License-Identifier: GPL-3.0-or-later
// What people type for numbers. The first byte chooses the kind of field, the rest is the text.

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/stock/stock_text.h"
#include "core/units/date.h"
#include "core/units/notation.h"
#include "tests/fuzz/target.h"

namespace {

using core::UnitFamily;
using fuzz::must;

constexpr unsigned families = static_cast<unsigned>(UnitFamily::Named) + 1;
constexpr int allDigits = 17;  // of any double; ISO/IEC 9899:2018, DBL_DECIMAL_DIG

bool isSame(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

/// The text with decimal commas for points, and the other way round.
std::string otherMark(std::string_view text) {
  std::string other(text);
  for (char& c : other) c = c == '.' ? ',' : c == ',' ? '.' : c;
  return other;
}

void parseTyped(std::string_view text, UnitFamily family) {
  const std::string_view unit = family == UnitFamily::Named ? "kN" : "";
  const auto value = core::parseQuantity(text, family, unit);
  const auto other = core::parseQuantity(otherMark(text), family, unit);
  must(static_cast<bool>(value) == static_cast<bool>(other), "either decimal mark is taken alike");
  if (!value) return fuzz::mustBeTold(value.error(), text);
  must(std::isfinite(*value), "a number is finite");
  must(isSame(*value, *other), "either decimal mark is the same number");
  const std::string shown = core::formatQuantity(*value, family, unit, allDigits);
  const auto back = core::parseQuantity(shown, family, unit);
  must(back && *back == *value, "what a field shows is the same number when it is read again");
  must(!core::formatInBaseUnit(*value, family, unit).empty(), "a number has a text");
}

void parseCounted(std::string_view text) {
  const auto count = core::parseCount(text);
  if (!count) return fuzz::mustBeTold(count.error(), text);
  const auto back = core::parseCount(std::to_string(*count));
  must(back && *back == *count, "a count comes back");
}

void parseDays(std::string_view text) {
  if (const auto day = core::dateFromText(text)) must(core::dateText(*day) == text, "a day has one spelling");
  if (const auto time = core::timeFromText(text))
    must(core::timeText(*time) == text, "a moment has one spelling");
}

void parseStocked(std::string_view text) {
  if (const auto share = core::shareFromText(text)) must(std::isfinite(*share), "a share is finite");
  const auto decades = core::decadesFromText(text);
  if (!decades) return fuzz::mustBeTold(decades.error(), text);
  const auto back = core::decadesFromText(core::decadesText(*decades));
  must(back && *back == *decades, "decades come back");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view text = fuzz::textOf(data + 1, size - 1);
  const unsigned kind = data[0] % (families + 3);
  if (kind < families) parseTyped(text, static_cast<UnitFamily>(kind));
  if (kind == families) parseCounted(text);
  if (kind == families + 1) parseDays(text);
  if (kind == families + 2) parseStocked(text);
  return 0;
}
