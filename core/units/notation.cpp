// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notation.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <system_error>
#include <variant>

#include "core/circuit/lead.h"
#include "core/units/language.h"
#include "core/units/notation_units.h"
#include "core/units/text.h"

namespace core {
namespace {

std::size_t digitsAtFront(std::string_view text) {
  return std::min(text.find_first_not_of("0123456789"), text.size());
}

/// A decimal number still as text, so that a unit's size can be taken in before rounding.
struct Decimal {
  bool negative = false;
  std::string digits;          ///< without mark
  int exponent = 0;            ///< the number is digits times ten to the exponent
  std::string_view rest = {};  ///< what follows the number
};

/// What is wrong with a text {1}; the sentence is English, for `say`.
struct Complaint {
  std::string_view what;
  std::string mend = {};    ///< said; empty: the family's example
  std::string detail = {};  ///< {2} of the sentence
};

using Scan = std::variant<Decimal, Complaint>;
using Parsed = std::variant<double, Complaint>;

constexpr std::string_view notANumber = sayLater("{1} is not a number");

/// `run` (digits and what people put between thousands) as it should have been written, when all of it is
/// grouped in threes; a mark that stands once, at the end, is the decimal mark.
std::optional<std::string> ungrouped(std::string_view run) {
  std::string marks, plain;
  std::size_t sinceMark = 0, lastMark = std::string::npos;
  bool first = true, threes = true;
  for (const char c : run) {
    if (isDigit(c)) {
      plain += c;
      ++sinceMark;
      continue;
    }
    threes = threes && (first ? sinceMark >= 1 && sinceMark <= 3 : sinceMark == 3);
    first = false;
    sinceMark = 0;
    marks += c;
    lastMark = plain.size();
  }
  if (marks.empty() || !threes) return std::nullopt;
  const char last = marks.back();
  const bool isDecimalMark =
      (last == '.' || last == ',') && marks.size() > 1 && marks.find(last) + 1 == marks.size();
  const std::size_t before = isDecimalMark ? marks.size() - 1 : marks.size();
  if (marks.find_first_not_of(marks[0]) < before) return std::nullopt;  // different marks between thousands
  if (!isDecimalMark && sinceMark != 3) return std::nullopt;
  if (isDecimalMark && sinceMark == 0) return std::nullopt;
  if (isDecimalMark) plain.insert(lastMark, 1, language().decimalMark);
  return plain;
}

/// What to do about marks between digits; `text` begins with the number.
std::string mendForGrouping(std::string_view text) {
  std::string run(text.substr(0, text.find_first_not_of("+-0123456789., '_\xE2\x80\x99")));
  for (std::size_t at = run.find("’"); at != std::string::npos; at = run.find("’")) run.replace(at, 3, "'");
  std::string_view body = withoutEndSpaces(run);
  const bool negative = body.starts_with('-');
  if (negative || body.starts_with('+')) body.remove_prefix(1);
  if (const auto plain = ungrouped(body))
    return say("Write {1}, with nothing between the thousands", {(negative ? "-" : "") + *plain});
  return say("Use one decimal mark and no thousands separators");
}

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
  number.exponent += negative ? -value : value;
  number.rest = rest;
}

/// Why a text that begins with no digit is no number.
Complaint whyNoNumber(std::string_view text) {
  if (text.starts_with("±"))
    return {sayLater("{1} begins with a plus-minus sign"), say("Write the number alone")};
  if (text.starts_with(' ')) return {sayLater("{1} has a space behind its sign"), say("Write -5, not - 5")};
  for (const std::string_view part : {"¼", "½", "¾", "⅓", "⅔", "⅛"})
    if (text.starts_with(part))
      return {sayLater("{1} is a fraction"), say("Write a decimal number such as 0.5")};
  return {notANumber};
}

Scan scanNumber(std::string_view text) {
  Decimal number;
  std::string_view rest = text;
  if (!rest.empty() && (rest[0] == '-' || rest[0] == '+')) {
    number.negative = rest[0] == '-';
    rest.remove_prefix(1);
  }
  const std::string_view body = rest.substr(0, rest.find_first_not_of("0123456789.,"));
  const auto points = std::count(body.begin(), body.end(), '.');
  const auto commas = std::count(body.begin(), body.end(), ',');
  if (points > 0 && commas > 0)
    return Complaint{sayLater("{1} has both a point and a comma"), mendForGrouping(text)};
  if (points + commas > 1)
    return Complaint{sayLater("{1} has more than one decimal mark"), mendForGrouping(text)};
  if (std::none_of(body.begin(), body.end(), isDigit)) return whyNoNumber(rest);
  const std::size_t mark = body.find_first_of(".,");
  number.digits = body;
  if (mark != std::string_view::npos) {
    number.digits.erase(mark, 1);
    number.exponent = -static_cast<int>(body.size() - mark - 1);
  }
  number.rest = rest.substr(body.size());
  scanExponent(number);
  return number;
}

/// The digits times a whole number below 2^24, exactly.
std::string multiplied(std::string digits, int factor) {
  long carry = 0;
  for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit) {
    carry += static_cast<long>(*digit - '0') * factor;
    *digit = static_cast<char>('0' + carry % 10);
    carry /= 10;
  }
  return carry > 0 ? std::to_string(carry) + digits : digits;
}

/// The double nearest to the number of that unit.
Parsed valueOf(const Decimal& number, UnitSize size) {
  std::string text = number.negative ? "-" : "";
  text += size.factor == 1 ? number.digits : multiplied(number.digits, size.factor);
  text += "e" + std::to_string(number.exponent + size.exponent);
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (read.ec != std::errc{} || read.ptr != text.data() + text.size())
    return Complaint{sayLater("{1} is too large or too small")};
  return value + 0.0;  // turns -0 into 0
}

/// Tolerances of IEC 60062 by their letter, in percent (from memory).
std::string_view toleranceOf(char letter) {
  constexpr std::string_view letters = "ELPWBCDFGHJKMN";
  constexpr std::string_view percent[] = {"0.005", "0.01", "0.02", "0.05", "0.1", "0.25", "0.5",
                                          "1",     "2",    "3",    "5",    "10",  "20",   "30"};
  const std::size_t at = letters.find(letter);
  return at == std::string_view::npos ? std::string_view() : percent[at];
}

Complaint withTolerance(std::string_view code, char letter) {
  return {sayLater("{1} ends in the letter of a tolerance, ± {2} %"),
          say("Write {1} alone: this field takes the resistance", {code}),
          shown(std::string(toleranceOf(letter)))};
}

std::optional<int> letterExponent(char letter) {
  switch (letter) {
    case 'L':
      return -3;
    case 'R':
    case 'r':
      return 0;
    case 'k':
    case 'K':
      return 3;
    case 'M':
      return 6;
    case 'G':
      return 9;
    case 'T':
      return 12;
    default:
      return std::nullopt;
  }
}

/// What follows a resistance in the letter code: nothing or an ohm sign.
Parsed codedResistance(const Decimal& number, int exponent, std::string_view text) {
  const std::string_view unit = withoutEndSpaces(number.rest);
  if (unit.empty() || unitSize(UnitFamily::Resistance, unit).value_or(UnitSize{99}).exponent == 0)
    if (unit != "R") return valueOf(number, {exponent});
  if (number.rest.size() == 1 && !toleranceOf(unit[0]).empty())
    return withTolerance(text.substr(0, text.size() - 1), unit[0]);
  return Complaint{sayLater("{1} has something behind the resistance")};
}

/// IEC 60062: the multiplier's letter in the place of the decimal mark, "59k9", "4R7", "R47". None when the
/// text is not of that form.
std::optional<Parsed> readLetterCode(std::string_view text) {
  std::string_view body = text;
  if (!body.empty() && (body[0] == '-' || body[0] == '+')) body.remove_prefix(1);
  const std::size_t whole = digitsAtFront(body);
  if (whole + 1 >= body.size() || !isDigit(body[whole + 1])) return std::nullopt;
  if (whole > 0 && body[whole] == 'm')
    return Complaint{sayLater("the m in {1} may be milliohm or megohm"),
                     say("Write 4L7 or 4.7 mΩ, or else 4M7")};
  const auto exponent = letterExponent(body[whole]);
  if (!exponent || (whole == 0 && body[0] != 'R' && body[0] != 'r' && body[0] != 'L')) return std::nullopt;
  const std::size_t places = digitsAtFront(body.substr(whole + 1));
  const Decimal number{text[0] == '-',
                       std::string(body.substr(0, whole)).append(body.substr(whole + 1, places)),
                       -static_cast<int>(places), body.substr(whole + 1 + places)};
  return codedResistance(number, *exponent, text);
}

/// "AWG 26" or "26 AWG". Only 0 to 40: "00" is another size than 0 and is not known here.
std::optional<Area> wireGauge(std::string_view text) {
  std::string upper(text);
  for (char& c : upper)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  std::string_view digits = upper;
  if (digits.starts_with("AWG"))
    digits.remove_prefix(3);
  else if (digits.size() > 3 && digits.ends_with("AWG"))
    digits.remove_suffix(3);
  else
    return std::nullopt;
  digits = withoutEndSpaces(digits);
  if (digits.empty() || digits.size() > 2 || digitsAtFront(digits) < digits.size()) return std::nullopt;
  if (digits.size() == 2 && digits[0] == '0') return std::nullopt;
  const int awg = digits.size() == 1 ? digits[0] - '0' : 10 * (digits[0] - '0') + digits[1] - '0';
  if (awg > 40) return std::nullopt;
  return awgSection(awg);
}

/// Takes a whole number of hours or minutes, such as "1 h ", off the front of `text`.
std::optional<long> takeWholePart(std::string_view& text, std::string_view unit, long seconds) {
  const std::size_t digits = digitsAtFront(text);
  if (digits == 0 || digits > 9) return std::nullopt;
  std::string_view rest = withoutEndSpaces(text.substr(digits));
  if (!rest.starts_with(unit)) return std::nullopt;
  rest.remove_prefix(unit.size());
  if (!rest.empty() && rest[0] != ' ' && !isDigit(rest[0])) return std::nullopt;
  long count = 0;
  std::from_chars(text.data(), text.data() + digits, count);
  text = withoutEndSpaces(rest);
  return count * seconds;
}

/// "1 h 30 min", "1 min 30.5 s": whole hours and minutes, then seconds, added up as decimals.
std::optional<Parsed> readTimeInParts(std::string_view text) {
  std::string_view rest = text;
  const bool negative = rest.starts_with('-');
  if (negative || rest.starts_with('+')) rest.remove_prefix(1);
  const auto hours = takeWholePart(rest, "h", 3600);
  const auto minutes = takeWholePart(rest, "min", 60);
  if (!hours && !minutes) return std::nullopt;
  const long whole = hours.value_or(0) + minutes.value_or(0);
  if (rest.empty()) return valueOf({negative, std::to_string(whole)}, {});
  if (!isDigit(rest[0])) return std::nullopt;
  const Scan scan = scanNumber(rest);
  const auto* seconds = std::get_if<Decimal>(&scan);
  if (!seconds || withoutEndSpaces(seconds->rest) != "s" || seconds->exponent > 0) return std::nullopt;
  const auto places = static_cast<std::size_t>(-seconds->exponent);
  if (places > seconds->digits.size() || seconds->digits.size() - places > 9) return std::nullopt;
  const std::size_t before = seconds->digits.size() - places;
  long count = 0;
  std::from_chars(seconds->digits.data(), seconds->digits.data() + before, count);
  return valueOf(
      {negative, std::to_string(whole + count) + seconds->digits.substr(before), seconds->exponent}, {});
}

/// What the text behind a number most likely was meant to be, when it is no unit of any kind.
std::optional<Complaint> whyNoUnit(std::string_view text, std::string_view rest) {
  const auto startsWithAny = [&](std::initializer_list<std::string_view> parts) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](std::string_view part) { return rest.starts_with(part); });
  };
  const std::size_t slash = rest.find('/');
  const bool ratio = slash != std::string_view::npos &&
                     rest.substr(0, slash).find_first_not_of("0123456789 ") == std::string_view::npos;
  if (ratio || startsWithAny({"¼", "½", "¾", "⅓", "⅔", "⅛"}))
    return Complaint{sayLater("{1} is a fraction"), say("Write a decimal number such as 0.5")};
  if (isDigit(rest[0]) || rest[0] == '\'' || rest[0] == '_' || rest.starts_with("’"))
    return Complaint{sayLater("{1} has something between its digits"), mendForGrouping(text)};
  if (startsWithAny({"·", "×", "*", "^", "x10", "x 10"}))
    return Complaint{sayLater("{1} is a calculation"),
                     say("Write powers of ten with e, such as 5e3 for 5000")};
  if (rest[0] == ':')
    return Complaint{sayLater("{1} has a colon in it"),
                     say("Write times with their units, such as 1 min 30 s")};
  if (startsWithAny({"-", "–", "—", "…", ".."}) && rest.find_first_of("0123456789") != std::string_view::npos)
    return Complaint{sayLater("{1} is more than one number"), say("Write one number")};
  if (rest.starts_with("±"))
    return Complaint{sayLater("{1} has a plus-minus sign in it"), say("Write the number alone")};
  return std::nullopt;
}

/// A unit that does not belong here, named by its kind.
Complaint foreignUnit(std::string_view unit, UnitFamily family) {
  if (family == UnitFamily::Resistance && unit == "m")
    return {sayLater("the m in {1} may be milliohm or megohm"), say("Write mΩ or MΩ")};
  if (family == UnitFamily::Temperature && (unit == "K" || unit == "°F" || unit == "F"))
    return {sayLater("{1} is no temperature in degrees Celsius")};
  if (const auto other = familyWith(unit)) return {notationOf(*other).foreign};
  if (notationOf(family).units.empty()) return {sayLater("{1} has text after the number")};
  return {sayLater("{1} has no unit that fits here")};
}

/// `text` as it was typed from the number on, for what to write instead.
Parsed withKnownUnit(const Decimal& number, UnitFamily family, std::string_view text) {
  const std::string_view unit = withoutEndSpaces(number.rest);
  if (unit.empty()) return valueOf(number, {notationOf(family).fieldExponent});
  if (const auto size = unitSize(family, unit)) return valueOf(number, *size);
  if (auto complaint = whyNoUnit(text, unit)) return *complaint;
  if (family == UnitFamily::Resistance && unit.size() == 2 && letterExponent(unit[0]) &&
      !toleranceOf(unit[1]).empty())
    return withTolerance(text.substr(0, text.size() - 1), unit[1]);
  return foreignUnit(unit, family);
}

Parsed readKnown(std::string_view text, UnitFamily family) {
  if (family == UnitFamily::Area)
    if (const auto section = wireGauge(text)) return section->base();
  if (family == UnitFamily::Resistance)
    if (const auto coded = readLetterCode(text)) return *coded;
  if (family == UnitFamily::Duration)
    if (const auto time = readTimeInParts(text)) return *time;
  const Scan scan = scanNumber(text);
  if (const auto* complaint = std::get_if<Complaint>(&scan)) return *complaint;
  return withKnownUnit(std::get<Decimal>(scan), family, text);
}

/// The unit may be any text, even one that looks like part of a number, so it is taken off first.
Parsed readNamed(std::string_view text, std::string_view unit) {
  Scan scan = scanNumber(text);
  const auto* whole = std::get_if<Decimal>(&scan);
  const bool numberOnly = whole && whole->rest.empty();
  if (!numberOnly && !unit.empty() && text.ends_with(unit))
    scan = scanNumber(withoutEndSpaces(text.substr(0, text.size() - unit.size())));
  if (const auto* complaint = std::get_if<Complaint>(&scan)) return *complaint;
  return withKnownUnit(std::get<Decimal>(scan), UnitFamily::Named, text);
}

/// Spaces around it are no part of what is wrong.
std::string quoted(std::string_view text) { return inQuotes(withoutEndSpaces(text)); }

}  // namespace

Result<double> parseQuantity(std::string_view text, UnitFamily family, std::string_view namedUnit) {
  constexpr std::size_t longest = 1000;  // no number that anyone types, and it bounds the time taken
  if (text.size() > longest)
    return Error{"", say("{1} is too long", {quoted(text)}), say(notationOf(family).mend)};
  const std::string plain = plainSpelling(text);
  const std::string unit = plainSpelling(namedUnit);
  const bool named = family == UnitFamily::Named;
  const Parsed parsed = plain.empty() ? Parsed(Complaint{sayLater("there is no number")})
                        : named       ? readNamed(plain, unit)
                                      : readKnown(plain, family);
  if (const auto* value = std::get_if<double>(&parsed)) return *value;
  const Complaint& complaint = std::get<Complaint>(parsed);
  std::string mend = complaint.mend;
  if (mend.empty() && named && !unit.empty())
    mend = say("Enter a number such as {1}", {shown("12.5 ") + std::string(withoutEndSpaces(namedUnit))});
  if (mend.empty()) mend = say(notationOf(family).mend);
  return Error{"", say(complaint.what, {quoted(text), complaint.detail}), mend};
}

Result<std::uint64_t> parseCount(std::string_view text) {
  const auto whole = [&](std::string_view what) {
    return Error{"", say(what, {quoted(text)}), say("Enter a whole number such as 12")};
  };
  const std::string plain = plainSpelling(text.substr(0, std::min<std::size_t>(text.size(), 1000)));
  std::string_view digits = plain;
  if (digits.starts_with('+')) digits.remove_prefix(1);
  if (!digits.empty() && digitsAtFront(digits) == digits.size()) {
    std::uint64_t count = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), count);
    return read.ec == std::errc{} ? Result<std::uint64_t>(count) : whole(sayLater("{1} is too large"));
  }
  const auto number = parseQuantity(text, UnitFamily::Plain);
  if (!number) return Error{"", number.error().what, say("Enter a whole number such as 12")};
  constexpr double exact = 9007199254740992.0;  // 2^53: up to here every whole number is a double
  if (*number < 0 || *number != std::floor(*number) || *number > exact)
    return whole(sayLater("{1} is not a whole number from 0 on"));
  return static_cast<std::uint64_t>(*number);
}

}  // namespace core
