// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/column_heading.h"

#include <algorithm>
#include <set>

#include "core/recording/characters.h"
#include "core/recording/clean_text.h"
#include "core/recording/time_units.h"

namespace core {
namespace {

/// One of `words`, which stand between blanks: a list of them would take a line each.
bool isAmong(std::string_view words, std::string_view word) {
  if (word.empty() || word.find(' ') != std::string_view::npos) return false;
  for (std::size_t at = words.find(word); at != std::string_view::npos; at = words.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    if ((at == 0 || words[at - 1] == ' ') && (end == words.size() || words[end] == ' ')) return true;
  }
  return false;
}

bool isUnitWord(std::string_view word) {
  for (const std::string_view degree : {"\xC2\xB0", "\xB0"})  // UTF-8, Latin-1
    if (word.starts_with(degree)) return isOneOf(word.substr(degree.size()), {"", "C", "F"});
  if (isOneOf(word, {"\xE2\x80\xB0", "\xCE\xA9", "\xE2\x84\xA6", "\xCE\xB5"}))
    return true;  // per mille, ohm, epsilon
  return isAmong(
      "s sec min h d m in ft g t lb lbs lbf kip klbf kp kgf N Nm Pa bar mbar psi ksi atm V A W VA J Hz "
      "ohm Ohm Ohms ohms K C F degC degF deg rad rpm C/s L l % ppm dB e E eps epsilon strain str Strain "
      "ustrain microstrain microstrains ue 1 counts count digits LSB",
      word);
}

/// Takes an SI prefix off: "k", "m", either micro sign, "u".
std::string_view withoutPrefix(std::string_view word) {
  for (const std::string_view prefix :
       {"\xC2\xB5", "\xCE\xBC", "\xB5", "k", "M", "G", "m", "u", "n", "c", "d", "h"})
    if (word.size() > prefix.size() && word.starts_with(prefix)) return word.substr(prefix.size());
  return word;
}

std::string_view withoutPower(std::string_view word) {
  for (const std::string_view power :
       {"^2", "^3", "^-1", "^-2", "2", "3", "-1", "-2", "\xC2\xB2", "\xC2\xB3", "\xB2", "\xB3"})
    if (word.size() > power.size() && word.ends_with(power))
      return word.substr(0, word.size() - power.size());
  return word;
}

bool isUnitFactor(std::string_view word) {
  const std::string_view base = withoutPower(word);
  return isUnitWord(word) || isUnitWord(base) || isUnitWord(withoutPrefix(word)) ||
         isUnitWord(withoutPrefix(base));
}

/// Whether `text` is a unit of measurement: "kN", "mV/V", "µm/m", "m/s²", "1/min", "%", "-".
bool looksLikeUnit(std::string_view text) {
  text = trimmed(text);
  if (text.empty() || text.size() > 24) return false;
  if (text == "-" || unitOfTime(text)) return true;
  if (isUnitWord(text)) return true;
  // Factors between slashes, stars, points, blanks.
  std::size_t begin = 0;
  while (begin <= text.size()) {
    std::size_t end = std::min(text.find_first_of("/*. ", begin), text.size());
    const std::string_view dot = "\xC2\xB7";
    const std::size_t middle = text.find(dot, begin);
    std::size_t next = end + 1;
    if (middle < end) {
      end = middle;
      next = middle + dot.size();
    }
    if (!isUnitFactor(text.substr(begin, end - begin))) return false;
    begin = next;
  }
  return true;
}

bool isBracketed(std::string_view text) {
  if (text.size() < 2) return false;
  const char open = text.front(), close = text.back();
  return (open == '[' && close == ']') || (open == '(' && close == ')') || (open == '{' && close == '}') ||
         (open == '<' && close == '>');
}

/// Name and unit where a unit stands behind `between`.
std::optional<ColumnHeading> splitAt(std::string_view cell, std::string_view between) {
  const std::size_t at = cell.rfind(between);
  if (at == std::string_view::npos || at == 0) return std::nullopt;
  const std::string_view unit = trimmed(cell.substr(at + between.size()));
  if (!looksLikeUnit(withoutBrackets(unit))) return std::nullopt;
  return ColumnHeading{cleanText(trimmed(cell.substr(0, at))), cleanText(withoutBrackets(unit))};
}

/// "time_ms", "t_s", "Zeit ms": only of a time, since elsewhere the last word may well belong to the name.
std::optional<ColumnHeading> timeWithSuffix(std::string_view cell) {
  const std::size_t at = cell.find_last_of("_ ");
  if (at == std::string_view::npos || at == 0) return std::nullopt;
  const std::string_view name = trimmed(cell.substr(0, at)), unit = cell.substr(at + 1);
  if (timeNameStrength(name) < 2 || !unitOfTime(unit)) return std::nullopt;
  return ColumnHeading{cleanText(name), cleanText(unit)};
}

}  // namespace

bool looksLikeTimePattern(std::string_view unit) {
  const std::string word = lower(unit);
  const bool letters = word.find_first_not_of("hmsdyjtf:.-/ ,0") == std::string::npos;
  return letters && word.size() >= 5 && word.find_first_of("hmdy") != std::string::npos &&
         word.find_first_of(":.-/") != std::string::npos;
}

std::string_view withoutBrackets(std::string_view text) {
  text = trimmed(text);
  return isBracketed(text) ? trimmed(text.substr(1, text.size() - 2)) : text;
}

ColumnHeading headingOf(std::string_view written) {
  std::string single(trimmed(written));  // two quotes inside of quotes are one
  for (std::size_t at = 0; (at = single.find("\"\"", at)) != std::string::npos; ++at) single.erase(at, 1);
  const std::string_view cell = single;
  const std::size_t open = cell.find_last_of("[({");
  if (open != std::string_view::npos && isBracketed(cell.substr(open))) {
    const std::string_view inside = withoutBrackets(cell.substr(open));
    const bool isUnit = cell[open] != '(' || inside.empty() || looksLikeUnit(inside) ||
                        looksLikeTimePattern(inside) || timeNameStrength(trimmed(cell.substr(0, open))) > 1;
    if (isUnit) return {cleanText(trimmed(cell.substr(0, open))), cleanText(inside)};
    return {cleanText(cell), ""};
  }
  for (const std::string_view between : {" / ", " in ", ", "})
    if (auto heading = splitAt(cell, between)) return *heading;
  const std::size_t slash = cell.rfind('/');
  if (slash != std::string_view::npos && timeNameStrength(cell.substr(0, slash)) > 1)
    if (auto heading = splitAt(cell, "/")) return *heading;
  if (auto heading = timeWithSuffix(cell)) return *heading;
  return {cleanText(cell), ""};
}

int timeNameStrength(std::string_view name) {
  const std::string word = lower(trimmed(name));
  if (isAmong("t time times zeit temps tempo tiempo tid tijd aika czas elapsed seconds sec secs sekunden ms "
              "milliseconds minutes hours cas \xC4\x8D"
              "as id\xC5\x91 vrijeme",
              word) ||
      word == "tempo (s)")
    return 3;
  if (isOneOf(word, {"timestamp",     "timestamps",    "time stamp",  "zeitstempel",   "datetime",
                     "date time",     "date/time",     "date & time", "date and time", "datum/zeit",
                     "datum/uhrzeit", "datum uhrzeit", "uhrzeit",     "clock",         "epoch",
                     "unix",          "unix time",     "utc",         "horodatage",    "heure",
                     "hora",          "ora",           "ts",          "elapsed time",  "zeitpunkt",
                     "date_time",     "time_stamp",    "local time"}))
    return 3;
  if (word.starts_with("time") || word.starts_with("zeit") || word.starts_with("elapsed") ||
      word.starts_with("temps") || word.starts_with("tiempo") || word.starts_with("messzeit") ||
      word.starts_with("laufzeit"))
    return 2;
  if (isOneOf(word,
              {"measurement time", "recording time", "relative time", "test time", "run time", "unix_time",
               "epoch_time", "epoch_s", "epoch_ms", "unix_s", "unix_ms", "rel. time", "rel time"}))
    return 2;
  return word.ends_with(" time") || word.ends_with("_time") || word.ends_with("zeit") ? 1 : 0;
}

ColumnHeading headingOfPath(std::string_view path) {
  const std::size_t slash = path.rfind('/');
  return headingOf(slash == std::string_view::npos ? path : path.substr(slash + 1));
}

bool isNameOfTime(std::string_view path) {
  const ColumnHeading heading = headingOfPath(path);
  return timeNameStrength(heading.name) == 3 && (heading.unit.empty() || unitOfTime(heading.unit));
}

bool isCounterName(std::string_view name) {
  const std::string word = lower(trimmed(name));
  return isOneOf(word, {"sample",
                        "samples",
                        "sample no",
                        "sample no.",
                        "sample number",
                        "sample #",
                        "index",
                        "idx",
                        "no",
                        "no.",
                        "nr",
                        "nr.",
                        "number",
                        "count",
                        "n",
                        "i",
                        "#",
                        "scan",
                        "scan no",
                        "scan no.",
                        "scan number",
                        "record",
                        "rec",
                        "row",
                        "point",
                        "lfd. nr.",
                        "lfd.nr.",
                        "messpunkt",
                        "id",
                        "num",
                        "sample_number",
                        "sample_no",
                        "sample_index",
                        "x_index"});
}

bool isUnitRow(const std::vector<std::string_view>& cells) {
  bool isSure = false, isBracketedThroughout = true, any = false;
  for (const std::string_view cell : cells) {
    if (cell.empty()) continue;
    any = true;
    const bool bracketed = isBracketed(cell);
    isBracketedThroughout = isBracketedThroughout && bracketed;
    if (!bracketed && !looksLikeUnit(cell) && !looksLikeTimePattern(cell)) return false;
    isSure = isSure || (cell != "-" && !bracketed);
  }
  return any && (isSure || isBracketedThroughout);
}

void nameColumns(std::vector<ColumnHeading>& columns) {
  std::set<std::string> taken;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    std::string& name = columns[k].name;
    if (name.empty()) name = "Column " + std::to_string(k + 1);
    const std::string first = name;
    for (std::size_t again = 2; !taken.insert(name).second; ++again)
      name = first + " (" + std::to_string(again) + ")";
  }
}

}  // namespace core
