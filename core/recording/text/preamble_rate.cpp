// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/text/preamble_rate.h"

#include <cmath>
#include <string>

#include "core/recording/characters.h"
#include "core/recording/column_heading.h"
#include "core/recording/text/number.h"
#include "core/recording/time_units.h"

namespace core {
namespace {

/// What stands before the number: letters only, all else one blank, in small letters; without what is in
/// brackets, which is put into `unit`.
std::string labelOf(std::string_view text, std::string& unit) {
  std::string label;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '[' || c == '(') {
      const std::size_t close = std::min(text.find_first_of("])", i), text.size());
      unit = std::string(trimmed(text.substr(i + 1, close - i - 1)));
      i = close;
    } else if (isLetter(c) || (c & 0x80) != 0) {
      label += c;
    } else if (!label.empty() && label.back() != ' ') {
      label += c == '/' ? '/' : ' ';
    }
  }
  while (!label.empty() && label.back() == ' ') label.pop_back();
  return lower(label);
}

bool holds(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

bool isRateLabel(std::string_view label) {
  if (isOneOf(label,
              {"rate", "fs", "f s", "sps", "samplerate", "samples/s", "samples/sec", "s/s", "sa/s",
               "scanrate", "samples per second", "messrate", "abtastrate", "abtastfrequenz", "messfrequenz"}))
    return true;
  for (const std::string_view word :
       {"filter", "cut", "carrier", "excit", "low pass", "lowpass", "baud", "count"})
    if (holds(label, word)) return false;
  const bool sampling = holds(label, "sampl") || holds(label, "scan") || holds(label, "abtast") ||
                        holds(label, "mess") || holds(label, "acqui") || holds(label, "data") ||
                        holds(label, "record") || holds(label, "log") || holds(label, "chantillon") ||
                        holds(label, "muestreo") || holds(label, "campionamento");
  const bool rate = holds(label, "rate") || holds(label, "freq") || holds(label, "fr\xC3\xA9q") ||
                    holds(label, "fr\xE9q") || holds(label, "per second") || holds(label, "frecuencia");
  return sampling && rate;
}

bool isIntervalLabel(std::string_view label) {
  if (isOneOf(label, {"dt",
                      "d t",
                      "delta t",
                      "deltat",
                      "delta_t",
                      "\xCE\x94t",
                      "\xE2\x88\x86t",
                      "interval",
                      "time step",
                      "timestep",
                      "time increment",
                      "x increment",
                      "xincrement",
                      "zeitschritt",
                      "abtastzeit",
                      "tick",
                      "abtastintervall",
                      "messintervall",
                      "intervall",
                      "intervalle",
                      "intervalo",
                      "pas de temps",
                      "delta x",
                      "x delta",
                      "time interval",
                      "time base",
                      "timebase"}))
    return true;
  const bool sampling = holds(label, "sampl") || holds(label, "scan") || holds(label, "abtast") ||
                        holds(label, "mess") || holds(label, "acqui") || holds(label, "record") ||
                        holds(label, "log") || holds(label, "chantillon") || holds(label, "muestreo");
  return sampling && (holds(label, "interv") || holds(label, "period") || holds(label, "p\xC3\xA9riod") ||
                      holds(label, "spacing") || holds(label, "step") || holds(label, "dt"));
}

/// The digits of a number with a decimal mark of its own, thousands separators taken off.
std::optional<double> numberWith(std::string_view digits, char decimal) {
  const std::size_t point = digits.rfind('.'), comma = digits.rfind(',');
  const bool both = point != std::string_view::npos && comma != std::string_view::npos;
  char mark = point != std::string_view::npos ? '.' : ',';
  if (both) mark = point > comma ? '.' : ',';
  const bool groups = !both && mark == ',' && decimal == '.' && comma != std::string_view::npos &&
                      digits.size() - comma == 4 && !digits.starts_with('0');
  std::string plain;
  for (const char c : digits) {
    if ((c == '.' || c == ',') && (c != mark || groups)) continue;
    plain += c == mark ? '.' : c;
  }
  const CellNumber number = readNumber(plain, '.');
  if (number.fault) return std::nullopt;
  return number.value;
}

/// The number at the beginning of `text`, which is moved behind it; "1/50" is taken too.
std::optional<double> takeNumber(std::string_view& text, char decimal) {
  std::size_t end = 0;
  const auto isExponent = [&](std::size_t i) {
    if (i == 0 || (text[i] | 0x20) != 'e' || !isDigit(text[i - 1]) || i + 1 >= text.size()) return false;
    return isDigit(text[i + 1]) ||
           ((text[i + 1] == '-' || text[i + 1] == '+') && i + 2 < text.size() && isDigit(text[i + 2]));
  };
  for (; end < text.size(); ++end) {
    if (isExponent(end)) {
      ++end;
      continue;
    }
    if (!isDigit(text[end]) && text[end] != '.' && text[end] != ',') break;
  }
  std::string_view digits = text.substr(0, end);
  while (!digits.empty() && !isDigit(digits.back())) digits.remove_suffix(1);
  const auto number = numberWith(digits, decimal);
  text.remove_prefix(digits.size());
  if (!number || !text.starts_with('/') || text.size() < 2 || !isDigit(text[1])) return number;
  text.remove_prefix(1);
  const auto below = takeNumber(text, decimal);
  return below && *below > 0 ? std::optional(*number / *below) : std::nullopt;
}

std::string unitBehind(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(" \t;,\"[(:=");
  if (begin == std::string_view::npos) return {};
  const std::size_t end = std::min(text.find_first_of(" \t;,\"])", begin), text.size());
  return std::string(text.substr(begin, end - begin));
}

std::optional<double> perSecond(double number, std::string_view unit) {
  const std::string word = lower(unit);
  if (isOneOf(word, {"khz", "ks/s", "ksa/s", "ksps"})) return number * 1e3;
  if (isOneOf(word, {"mhz", "ms/s", "msps"})) return number * 1e6;
  if (isOneOf(word, {"1/min", "/min", "samples/min"})) return number / 60;
  return number;
}

std::optional<double> ofInterval(double number, std::string_view unit) {
  const auto form = unitOfTime(unit);
  if (lower(unit) == "ns") return 1e9 / number;
  switch (form.value_or(TimeForm::Seconds)) {
    case TimeForm::Milliseconds:
      return 1e3 / number;
    case TimeForm::Microseconds:
      return 1e6 / number;
    case TimeForm::Minutes:
      return 1 / (number * 60);
    case TimeForm::Hours:
      return 1 / (number * 3600);
    default:
      return 1 / number;
  }
}

}  // namespace

std::optional<double> sampleRateIn(std::string_view line, char decimal) {
  if (line.size() > 400) return std::nullopt;
  std::size_t begin = 0;
  // The first number that is no part of a word or of a label in brackets, as in "Interval (1/s): 5".
  int brackets = 0;
  for (; begin < line.size(); ++begin) {
    if (line[begin] == '(' || line[begin] == '[') ++brackets;
    if (line[begin] == ')' || line[begin] == ']') --brackets;
    const bool starts =
        isDigit(line[begin]) || (line[begin] == '.' && begin + 1 < line.size() && isDigit(line[begin + 1]));
    if (brackets <= 0 && starts) break;
  }
  if (begin >= line.size() || (begin > 0 && line[begin - 1] == '-')) return std::nullopt;
  std::string unit;
  const std::string label = labelOf(line.substr(0, begin), unit);
  const bool isRate = isRateLabel(label), isInterval = !isRate && isIntervalLabel(label);
  if (!isRate && !isInterval) return std::nullopt;
  std::string_view rest = line.substr(begin);
  const auto number = takeNumber(rest, decimal);
  if (!number || !(*number > 0) || rest.starts_with(':')) return std::nullopt;
  if (unit.empty()) unit = unitBehind(rest);
  // "Rate: 20 ms" and "Interval: 50 Hz" mean what their units say.
  const bool hertz = lower(unit).ends_with("hz");
  const bool isTime = unitOfTime(unit).has_value();
  const auto rate = (isRate && !isTime) || hertz ? perSecond(*number, unit) : ofInterval(*number, unit);
  if (!rate || !std::isfinite(*rate) || !(*rate > 0)) return std::nullopt;
  return rate;
}

}  // namespace core
