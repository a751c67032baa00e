// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notation_units.h"

#include <algorithm>
#include <array>

#include "core/units/language.h"

namespace core {
namespace {

using enum UnitFamily;

constexpr UnitSize kilo{3}, mega{6}, giga{9}, tera{12};

// A prefix alone stands for ohm after it: "174.65k". A small m alone does not: milli and mega are too close.
constexpr UnitSymbol ohmUnits[] = {
    {"Ω", "numkKMGT"}, {"R"},           {"k", "", kilo}, {"K", "", kilo},   {"M", "", mega},
    {"G", "", giga},   {"T", "", tera}, {"L", "", {-3}}, {"Meg", "", mega}, {"MegΩ", "", mega}};
constexpr UnitSymbol outputUnits[] = {{"V/V", "num"}};
constexpr UnitSymbol strainUnits[] = {{"m/m", "num"},    {"ε", "num"},     {"e", "u"},
                                      {"strain", "um"},  {"in/in", "num"}, {"microstrain", "", {-6}},
                                      {"ppm", "", {-6}}, {"%", "", {-2}},  {"‰", "", {-3}}};
constexpr UnitSymbol voltUnits[] = {{"V", "numk"}};
constexpr UnitSymbol secondUnits[] = {{"s", "num"}, {"min", "", {1, 6}}, {"h", "", {2, 36}}};
// The international yard is 0.9144 m exactly (agreement of 1959), the foot a third of it, the inch 25.4 mm.
constexpr UnitSymbol metreUnits[] = {
    {"m", "numck"}, {"in", "", {-4, 254}}, {"ft", "", {-4, 3048}}, {"yd", "", {-4, 9144}}};
constexpr UnitSymbol areaUnits[] = {
    {"m²"}, {"mm²", "", {-6}}, {"cm²", "", {-4}}, {"um²", "", {-12}}, {"in²", "", {-8, 64516}}};
constexpr UnitSymbol celsiusUnits[] = {{"°C"}, {"C"}, {"degC"}};
constexpr UnitSymbol shareUnits[] = {{"%", "", {-2}}, {"‰", "", {-3}}, {"ppm", "", {-6}}};
constexpr UnitSymbol hertzUnits[] = {{"Hz", "mkKMG"}, {"S/s", "kKM"}, {"1/s"}};
constexpr UnitSymbol wattUnits[] = {{"W", "numkM"}};

// In the order of UnitFamily.
const std::array<FamilyNotation, 13> notations = {{
    {ohmUnits, 0, "Ω", "Ω", sayLater("Enter a resistance such as 350 Ω, 174.65k or 59k9"),
     sayLater("{1} has the unit of a resistance")},
    {outputUnits, -3, "mV/V", "V/V", sayLater("Enter an output such as 1.5 mV/V or 500 µV/V"),
     sayLater("{1} has the unit of an output")},
    {strainUnits, -6, "µm/m", "m/m", sayLater("Enter a strain such as -1000 µm/m or 0.1 %"),
     sayLater("{1} has the unit of a strain")},
    {voltUnits, 0, "V", "V", sayLater("Enter a voltage such as 5 V or 500 mV"),
     sayLater("{1} has the unit of a voltage")},
    {secondUnits, 0, "s", "s", sayLater("Enter a time such as 2 s, 500 ms or 1 min 30 s"),
     sayLater("{1} has the unit of a time")},
    {metreUnits, 0, "m", "m", sayLater("Enter a length such as 12.5 m or 40 ft"),
     sayLater("{1} has the unit of a length")},
    {areaUnits, -6, "mm²", "m²", sayLater("Enter a section such as 0.14 mm² or AWG 26 (0 to 40)"),
     sayLater("{1} has the unit of a section")},
    {celsiusUnits, 0, "°C", "°C", sayLater("Enter a temperature in degrees Celsius such as 20 °C"),
     sayLater("{1} has the unit of a temperature")},
    {shareUnits, -2, "%", "", sayLater("Enter a share such as 0.5 % or 100 ppm"),
     sayLater("{1} has the unit of a share")},
    {hertzUnits, 0, "Hz", "Hz", sayLater("Enter a frequency such as 100 Hz or 2.5 kHz"),
     sayLater("{1} has the unit of a frequency")},
    {wattUnits, -3, "mW", "W", sayLater("Enter a power such as 250 mW or 0.5 W"),
     sayLater("{1} has the unit of a power")},
    {{}, 0, "", "", sayLater("Enter a number such as 2.05"), ""},
    {{}, 0, "", "", sayLater("Enter a number such as 12.5"), ""},
}};

std::optional<int> prefixExponent(char prefix) {
  constexpr std::string_view letters = "pnumckKMGT";
  constexpr std::array<int, 10> exponents = {-12, -9, -6, -3, -2, 3, 3, 6, 9, 12};
  const std::size_t at = letters.find(prefix);
  return at == std::string_view::npos ? std::nullopt : std::optional(exponents[at]);
}

std::optional<UnitSize> sizeBy(const UnitSymbol& unit, std::string_view text) {
  if (text == unit.symbol) {
    const bool prefixed = unit.symbol == "e" || unit.symbol == "strain";  // never without
    return prefixed ? std::nullopt : std::optional(unit.size);
  }
  if (text.size() != unit.symbol.size() + 1 || !text.ends_with(unit.symbol)) return std::nullopt;
  if (unit.prefixes.find(text[0]) == std::string_view::npos) return std::nullopt;
  return UnitSize{unit.size.exponent + *prefixExponent(text[0]), unit.size.factor};
}

void replaceEach(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

/// "kOhms" as "kΩ".
void useOhmSign(std::string& unit) {
  for (const std::string_view word : {"ohms", "ohm"}) {
    if (unit.size() < word.size()) continue;
    const std::size_t at = unit.size() - word.size();
    const bool same = std::equal(word.begin(), word.end(), unit.begin() + static_cast<std::ptrdiff_t>(at),
                                 [](char a, char b) { return a == (b >= 'A' && b <= 'Z' ? b + 32 : b); });
    if (!same) continue;
    unit.replace(at, word.size(), "Ω");
    return;
  }
}

/// What a character other than ASCII stands for; none: itself.
std::optional<std::string_view> standsFor(char32_t c) {
  static const std::string ascii = [] {
    std::string all;
    for (char k = '!'; k <= '~'; ++k) all += k;
    return all;
  }();
  if (c >= 0xFF01 && c <= 0xFF5E) return std::string_view(ascii).substr(c - 0xFF01, 1);  // full width
  if (c == 0x00A0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F || c == 0x205F || c == 0x3000)
    return " ";
  if ((c >= 0x200B && c <= 0x200F) || c == 0x2060 || c == 0xFEFF || (c >= 0x202A && c <= 0x202E) ||
      (c >= 0x2066 && c <= 0x2069))
    return "";  // cannot be seen: directions and joiners that come along with copied text
  switch (c) {
    case 0x2212:
    case 0xFE63:
      return "-";
    case 0x00B5:
    case 0x03BC:
      return "u";
    case 0x2126:
      return "Ω";
    case 0x03F5:
      return "ε";
    case 0x00BA:
      return "°";
    case 0x2103:
      return "°C";
    case 0x2044:
    case 0x2215:
      return "/";
    default:
      return std::nullopt;
  }
}

struct Character {
  char32_t code = 0;
  std::size_t bytes = 1;
};

/// The character at the front when it has two or three bytes, which all that `standsFor` knows have.
Character frontCharacter(std::string_view text) {
  const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  const auto more = [&](std::size_t k) { return k < text.size() && (byte(k) & 0xC0) == 0x80; };
  const auto low = [&](std::size_t k) { return char32_t(byte(k) & 0x3F); };
  if ((byte(0) & 0xE0) == 0xC0 && more(1)) return {char32_t(byte(0) & 0x1F) << 6 | low(1), 2};
  if ((byte(0) & 0xF0) == 0xE0 && more(1) && more(2))
    return {char32_t(byte(0) & 0x0F) << 12 | low(1) << 6 | low(2), 3};
  return {};
}

}  // namespace

const FamilyNotation& notationOf(UnitFamily family) { return notations[static_cast<std::size_t>(family)]; }

std::string_view withoutEndSpaces(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

std::optional<UnitSize> unitSize(UnitFamily family, std::string_view unit) {
  std::string tight(unit);
  replaceEach(tight, " /", "/");
  replaceEach(tight, "/ ", "/");
  if (family == Resistance) useOhmSign(tight);
  if (family == Area) {
    replaceEach(tight, "^2", "²");
    if (tight.ends_with('2')) tight.replace(tight.size() - 1, 1, "²");
  }
  for (const UnitSymbol& symbol : notationOf(family).units)
    if (const auto size = sizeBy(symbol, tight)) return size;
  return std::nullopt;
}

std::optional<UnitFamily> familyWith(std::string_view unit) {
  for (const UnitFamily family :
       {Percent, Resistance, Output, Strain, Voltage, Duration, Length, Area, Temperature, Frequency, Power})
    if (unitSize(family, unit)) return family;
  return std::nullopt;
}

std::string plainSpelling(std::string_view text) {
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const char c = text[at];
    if (static_cast<unsigned char>(c) < 0x80) {
      plain += c == '\t' || c == '\r' || c == '\n' ? ' ' : c;
      ++at;
      continue;
    }
    const Character character = frontCharacter(text.substr(at));
    const auto same = standsFor(character.code);
    plain += same ? *same : text.substr(at, character.bytes);
    at += character.bytes;
  }
  plain = withoutEndSpaces(plain);
  // Hyphens and dashes, U+2010 to U+2015, are a minus only where nothing else can be meant.
  if (plain.size() > 3 && plain.starts_with("\xE2\x80") && plain[2] >= '\x90' && plain[2] <= '\x95')
    plain.replace(0, 3, "-");
  return plain;
}

}  // namespace core
