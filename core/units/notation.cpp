// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notation.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <span>
#include <system_error>
#include <variant>

#include "core/circuit/lead.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// A spelling of a unit: so many times ten to the `exponent` base units.
struct Unit {
  std::string_view text;
  int exponent = 0;
  double factor = 1;  ///< for the few units that are no power of ten
};

constexpr Unit ohmUnits[] = {{"ohm"},      {"Ohm"},      {"Ω"},       {"R"},       {"kohm", 3}, {"kOhm", 3},
                             {"kΩ", 3},    {"KΩ", 3},    {"k", 3},    {"K", 3},    {"Mohm", 6}, {"MOhm", 6},
                             {"MΩ", 6},    {"M", 6},     {"Gohm", 9}, {"GOhm", 9}, {"GΩ", 9},   {"G", 9},
                             {"mohm", -3}, {"mOhm", -3}, {"mΩ", -3}};
constexpr Unit outputUnits[] = {{"mV/V", -3}, {"uV/V", -6}, {"V/V"}};
constexpr Unit strainUnits[] = {{"um/m", -6}, {"ue", -6}, {"uε", -6}, {"ustrain", -6}, {"microstrain", -6},
                                {"mm/m", -3}, {"mε", -3}, {"%", -2},  {"m/m"},         {"ε"}};
constexpr Unit voltUnits[] = {{"V"}, {"mV", -3}, {"uV", -6}};
constexpr Unit secondUnits[] = {{"s"}, {"ms", -3}, {"min", 0, 60}};
constexpr Unit metreUnits[] = {{"m"}, {"mm", -3}, {"cm", -2}, {"km", 3}, {"ft", 0, 0.3048}};
constexpr Unit areaUnits[] = {{"mm²", -6}, {"mm2", -6}, {"mm^2", -6}, {"cm²", -4},
                              {"cm2", -4}, {"m²"},      {"m2"}};
constexpr Unit celsiusUnits[] = {{"°C"}, {"C"}, {"degC"}, {"℃"}};
constexpr Unit percentUnits[] = {{"%", -2}};
constexpr Unit hertzUnits[] = {{"Hz"}, {"kHz", 3}, {"MHz", 6}, {"S/s"}, {"kS/s", 3}};
constexpr Unit wattUnits[] = {{"mW", -3}, {"W"}, {"uW", -6}};

struct Family {
  std::span<const Unit> units;
  int fieldExponent;
  std::string_view fieldUnit;
  std::string_view mend;
};

// In the order of UnitFamily.
const std::array<Family, 13> families = {{
    {ohmUnits, 0, "Ω", sayLater("Enter a resistance such as 350 Ω, 174.65k or 59k9")},
    {outputUnits, -3, "mV/V", sayLater("Enter an output such as 1.5 mV/V or 500 µV/V")},
    {strainUnits, -6, "µm/m", sayLater("Enter a strain such as -1000 µm/m or 0.1 %")},
    {voltUnits, 0, "V", sayLater("Enter a voltage such as 5 V or 500 mV")},
    {secondUnits, 0, "s", sayLater("Enter a time such as 2 s, 500 ms or 1 min")},
    {metreUnits, 0, "m", sayLater("Enter a length such as 12.5 m or 40 ft")},
    {areaUnits, -6, "mm²", sayLater("Enter a section such as 0.14 mm² or AWG 26 (0 to 40)")},
    {celsiusUnits, 0, "°C", sayLater("Enter a temperature in degrees Celsius such as 20 °C")},
    {percentUnits, -2, "%", sayLater("Enter a share such as 0.5 %")},
    {hertzUnits, 0, "Hz", sayLater("Enter a frequency such as 100 Hz or 2.5 kHz")},
    {wattUnits, -3, "mW", sayLater("Enter a power such as 250 mW or 0.5 W")},
    {{}, 0, "", sayLater("Enter a number such as 2.05")},
    {{}, 0, "", sayLater("Enter a number such as 12.5")},
}};

const Family& familyOf(UnitFamily family) { return families[static_cast<std::size_t>(family)]; }

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

void replaceAll(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

/// One spelling for what looks the same on paper: spaces, minus, micro, ohm and strain signs.
std::string normalized(std::string_view text) {
  std::string plain(text);
  for (const std::string_view space : {"\t", "\r", "\n", "\u00A0", "\u2007", "\u2009", "\u202F"})
    replaceAll(plain, space, " ");
  replaceAll(plain, "\u2212", "-");
  replaceAll(plain, "\u00B5", "u");
  replaceAll(plain, "\u03BC", "u");
  replaceAll(plain, "\u2126", "Ω");
  return std::string(trimmed(plain));
}

/// A decimal number still as text, so that a unit's power of ten can be added before rounding.
struct Decimal {
  std::string mantissa;  ///< sign, digits, at most one point
  int exponent = 0;
  std::string_view rest;  ///< what follows the number
};

/// What is wrong with a text; the caller adds the quotation.
struct Complaint {
  std::string_view what;
  std::string_view mend;  ///< empty: the family's example
};

constexpr Complaint notANumber{sayLater("is not a number"), ""};
constexpr Complaint grouped{sayLater("has something between its digits"),
                            sayLater("Write the number without spaces or marks between thousands")};

using Scan = std::variant<Decimal, Complaint>;

/// Reads "e-3" and the like; leaves an "e" alone that no digit follows.
void scanExponent(Decimal& number) {
  std::string_view rest = number.rest;
  if (rest.size() < 2 || (rest[0] != 'e' && rest[0] != 'E')) return;
  rest.remove_prefix(1);
  const bool negative = rest[0] == '-';
  if (negative || rest[0] == '+') rest.remove_prefix(1);
  if (rest.empty() || !isDigit(rest[0])) return;
  int value = 0;
  for (; !rest.empty() && isDigit(rest[0]); rest.remove_prefix(1))
    value = std::min(value * 10 + (rest[0] - '0'), 1'000'000);
  number.exponent = negative ? -value : value;
  number.rest = rest;
}

Scan scanNumber(std::string_view text) {
  Decimal number;
  if (!text.empty() && (text[0] == '-' || text[0] == '+')) {
    if (text[0] == '-') number.mantissa = "-";
    text.remove_prefix(1);
  }
  const std::string_view body = text.substr(0, text.find_first_not_of("0123456789.,"));
  const auto points = std::count(body.begin(), body.end(), '.');
  const auto commas = std::count(body.begin(), body.end(), ',');
  if (points > 0 && commas > 0)
    return Complaint{sayLater("has both a point and a comma"),
                     sayLater("Use one decimal mark and no thousands separators")};
  if (points + commas > 1)
    return Complaint{sayLater("has more than one decimal mark"),
                     sayLater("Use one decimal mark and no thousands separators")};
  if (std::none_of(body.begin(), body.end(), isDigit)) return notANumber;
  number.mantissa += body;
  std::replace(number.mantissa.begin(), number.mantissa.end(), ',', '.');
  number.rest = text.substr(body.size());
  scanExponent(number);
  return number;
}

std::optional<int> letterExponent(char letter) {
  switch (letter) {
    case 'R':
      return 0;
    case 'k':
    case 'K':
      return 3;
    case 'M':
      return 6;
    case 'G':
      return 9;
    default:
      return std::nullopt;
  }
}

/// IEC 60062: the multiplier's letter in the place of the decimal mark, "59k9", "4R7", "R47".
std::optional<Decimal> scanLetterCode(std::string_view text) {
  const std::size_t begin = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  std::size_t at = begin;
  while (at < text.size() && isDigit(text[at])) ++at;
  if (at + 1 >= text.size() || !isDigit(text[at + 1])) return std::nullopt;
  const auto exponent = letterExponent(text[at]);
  if (!exponent || (at == begin && text[at] != 'R')) return std::nullopt;
  std::size_t end = at + 1;
  while (end < text.size() && isDigit(text[end])) ++end;
  std::string mantissa = text[0] == '-' ? "-" : "";
  mantissa.append(text.substr(begin, at - begin)).append(".").append(text.substr(at + 1, end - at - 1));
  return Decimal{std::move(mantissa), *exponent, text.substr(end)};
}

/// The double nearest to the number; none beyond the range of a double.
std::optional<double> rounded(const Decimal& number, int shift) {
  const std::string text = number.mantissa + "e" + std::to_string(number.exponent + shift);
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (read.ec != std::errc{} || read.ptr != text.data() + text.size()) return std::nullopt;
  return value + 0.0;  // turns -0 into 0
}

/// "AWG 26" or "26 AWG". Only 0 to 40: "00" is another size than 0 and is not known here.
std::optional<Area> wireGauge(std::string_view text) {
  std::string upper(text);
  for (char& c : upper)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  std::string_view digits = upper;
  if (digits.substr(0, 3) == "AWG")
    digits.remove_prefix(3);
  else if (digits.size() > 3 && digits.substr(digits.size() - 3) == "AWG")
    digits.remove_suffix(3);
  else
    return std::nullopt;
  digits = trimmed(digits);
  if (digits.empty() || digits.size() > 2 || !std::all_of(digits.begin(), digits.end(), isDigit))
    return std::nullopt;
  if (digits.size() == 2 && digits[0] == '0') return std::nullopt;
  const int awg = digits.size() == 1 ? digits[0] - '0' : 10 * (digits[0] - '0') + digits[1] - '0';
  if (awg > 40) return std::nullopt;
  return awgSection(awg);
}

const Unit* findUnit(std::span<const Unit> units, std::string_view text) {
  std::string tight(text);
  replaceAll(tight, " /", "/");
  replaceAll(tight, "/ ", "/");
  const auto found = std::find_if(units.begin(), units.end(), [&](const Unit& u) { return u.text == tight; });
  return found == units.end() ? nullptr : &*found;
}

using Parsed = std::variant<double, Complaint>;

Parsed valueOf(const Decimal& number, int shift, double factor) {
  const auto value = rounded(number, shift);
  if (!value || !std::isfinite(*value * factor)) return Complaint{sayLater("is too large or too small"), ""};
  return *value * factor;
}

Parsed withKnownUnit(const Decimal& number, const Family& family) {
  const std::string_view unitText = trimmed(number.rest);
  if (unitText.empty()) return valueOf(number, family.fieldExponent, 1);
  if (isDigit(unitText[0]) || unitText[0] == '\'' || unitText[0] == '_' || unitText.starts_with("’"))
    return grouped;
  if (const Unit* unit = findUnit(family.units, unitText))
    return valueOf(number, unit->exponent, unit->factor);
  return Complaint{
      family.units.empty() ? sayLater("has text after the number") : sayLater("has no unit that fits here"),
      ""};
}

Parsed readKnown(std::string_view text, UnitFamily family) {
  if (family == UnitFamily::Area)
    if (const auto section = wireGauge(text)) return section->base();
  if (family == UnitFamily::Resistance)
    if (const auto coded = scanLetterCode(text)) {
      const std::string_view unit = trimmed(coded->rest);
      if (!unit.empty() && unit != "Ω" && unit != "ohm") return notANumber;
      return valueOf(*coded, 0, 1);
    }
  const Scan scan = scanNumber(text);
  if (const auto* complaint = std::get_if<Complaint>(&scan)) return *complaint;
  return withKnownUnit(std::get<Decimal>(scan), familyOf(family));
}

/// The unit may be any text, even one that looks like part of a number, so it is taken off first.
Parsed readNamed(std::string_view text, std::string_view unit) {
  Scan scan = scanNumber(text);
  const auto* whole = std::get_if<Decimal>(&scan);
  const bool numberOnly = whole && whole->rest.empty();
  if (!numberOnly && !unit.empty() && text.ends_with(unit))
    scan = scanNumber(trimmed(text.substr(0, text.size() - unit.size())));
  if (const auto* complaint = std::get_if<Complaint>(&scan)) return *complaint;
  return withKnownUnit(std::get<Decimal>(scan), familyOf(UnitFamily::Named));
}

/// A finite number's digits: 0.d1d2d3... times ten to the `exponent`, no trailing zeros; zero has none.
struct Digits {
  bool negative = false;
  std::string digits;
  int exponent = 0;
};

Digits digitsOf(double value, int significantDigits) {
  const auto scientific = [&](auto... precision) {
    std::array<char, 64> buffer;
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::abs(value),
                                   std::chars_format::scientific, precision...);
    return std::string(buffer.data(), end.ptr);
  };
  const std::string shortest = scientific();
  const auto wanted = static_cast<std::size_t>(std::clamp(significantDigits, 1, 17));
  const bool tooLong = shortest.find('e') > wanted + 1;  // the digits and their point
  const std::string text = tooLong ? scientific(static_cast<int>(wanted) - 1) : shortest;

  Digits result{std::signbit(value), text.substr(0, text.find('e')),
                std::stoi(text.substr(text.find('e') + 1)) + 1};
  std::erase(result.digits, '.');
  result.digits.erase(result.digits.find_last_not_of('0') + 1);
  if (result.digits.empty()) return {};
  return result;
}

std::string decimalText(const Digits& number) {
  if (number.digits.empty()) return "0";
  const auto count = static_cast<int>(number.digits.size());
  std::string text = number.digits;
  if (number.exponent < -6 || number.exponent > 15) {
    if (count > 1) text.insert(1, ".");
    text += "e" + std::to_string(number.exponent - 1);
  } else if (number.exponent <= 0) {
    text = "0." + std::string(static_cast<std::size_t>(-number.exponent), '0') + text;
  } else if (number.exponent < count) {
    text.insert(static_cast<std::size_t>(number.exponent), ".");
  } else {
    text.append(static_cast<std::size_t>(number.exponent - count), '0');
  }
  return (number.negative ? "-" : "") + text;
}

constexpr std::string_view noNumber = "–";

}  // namespace

Result<double> parseQuantity(std::string_view text, UnitFamily family, std::string_view namedUnit) {
  constexpr std::size_t longest = 1000;  // no number that anyone types, and it bounds the time taken
  if (text.size() > longest)
    return Error{"", say("{1} is too long", {inQuotes(text)}), say(familyOf(family).mend)};
  const std::string plain = normalized(text);
  const std::string unit = normalized(namedUnit);
  std::string mend = say(familyOf(family).mend);
  if (family == UnitFamily::Named && !unit.empty()) mend += " " + std::string(trimmed(namedUnit));
  if (plain.empty()) return Error{"", say("there is no number"), mend};
  const Parsed parsed = family == UnitFamily::Named ? readNamed(plain, unit) : readKnown(plain, family);
  if (const auto* value = std::get_if<double>(&parsed)) return *value;
  const Complaint complaint = std::get<Complaint>(parsed);
  if (!complaint.mend.empty()) mend = say(complaint.mend);
  return Error{"", inQuotes(text) + " " + say(complaint.what), mend};
}

std::string formatQuantity(double base, UnitFamily family, std::string_view namedUnit,
                           int significantDigits) {
  if (!std::isfinite(base)) return std::string(noNumber);
  Digits number = digitsOf(base, significantDigits);
  std::string unit(family == UnitFamily::Named ? namedUnit : familyOf(family).fieldUnit);
  number.exponent -= familyOf(family).fieldExponent;
  if (family == UnitFamily::Resistance && number.exponent > 3) {  // 1000 ohm and more
    const bool mega = number.exponent > 6;
    number.exponent -= mega ? 6 : 3;
    unit = mega ? "MΩ" : "kΩ";
  }
  const std::string text = decimalText(number);
  return unit.empty() ? text : text + " " + unit;
}

std::string formatNumber(double value, int significantDigits) {
  if (!std::isfinite(value)) return std::string(noNumber);
  return decimalText(digitsOf(value, significantDigits));
}

std::string formatFixed(double value, int decimals) {
  if (!std::isfinite(value)) return std::string(noNumber);
  std::array<char, 400> buffer;  // 309 digits before the point, 50 behind it
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                 std::chars_format::fixed, std::clamp(decimals, 0, 50));
  std::string text(buffer.data(), end.ptr);
  if (text[0] == '-' && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
  return text;
}

}  // namespace core
