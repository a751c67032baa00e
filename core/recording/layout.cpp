// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/layout.h"

#include <charconv>
#include <cmath>
#include <utility>

#include "core/recording/exact_text.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

template <class T>
using Words = std::initializer_list<std::pair<T, std::string_view>>;

const Words<TextEncoding> encodings = {{TextEncoding::Utf8, "utf-8"},
                                       {TextEncoding::Latin1, "latin-1"},
                                       {TextEncoding::Utf16LittleEndian, "utf-16le"},
                                       {TextEncoding::Utf16BigEndian, "utf-16be"}};
const Words<char> separators = {
    {',', "comma"}, {';', "semicolon"}, {'\t', "tab"}, {'|', "bar"}, {' ', "blanks"}};
const Words<char> decimals = {{'.', "point"}, {',', "comma"}};
const Words<TimeForm> timeForms = {{TimeForm::Seconds, "s"},       {TimeForm::Milliseconds, "ms"},
                                   {TimeForm::Microseconds, "us"}, {TimeForm::Minutes, "min"},
                                   {TimeForm::Hours, "h"},         {TimeForm::Clock, "clock"},
                                   {TimeForm::DateAndTime, "date"}};
const Words<DateOrder> dateOrders = {
    {DateOrder::YearMonthDay, "ymd"}, {DateOrder::DayMonthYear, "dmy"}, {DateOrder::MonthDayYear, "mdy"}};

template <class T>
std::string wordFor(const Words<T>& words, T value) {
  for (const auto& [meaning, word] : words)
    if (meaning == value) return std::string(word);
  return {};
}

bool isPlain(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte > 0x20 && byte != 0x7F && c != '%';
}

/// Takes the words of a line one by one into choices.
class ChoiceReader {
 public:
  Result<LayoutChoices> read(std::string_view text);

 private:
  Result<void> take(std::string_view word);
  Result<void> takeUnit(std::string_view key, std::string_view value);
  Error error(std::string what, std::string mend) const {
    return {"layout " + inQuotes(m_word), std::move(what), std::move(mend)};
  }
  template <class T>
  Result<void> oneOf(const Words<T>& words, std::string_view value, std::optional<T>& choice) {
    if (choice) return twice();
    std::string all;
    for (const auto& [meaning, word] : words) {
      if (word == value) choice = meaning;
      all += (all.empty() ? "" : ", ") + std::string(word);
    }
    if (choice) return {};
    return error(say("this value is not known"), say("It may be one of: {1}", {all}));
  }
  Error twice() const { return error(say("this is given twice"), say("Give it once")); }
  static std::optional<std::size_t> wholeNumber(std::string_view text) {
    std::size_t number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
  }
  /// A line or column counted from 1; `noneWord` stands for line 0.
  Result<void> count(std::string_view value, std::size_t less, bool mayBeNone,
                     std::optional<std::size_t>& choice) {
    if (choice) return twice();
    if (mayBeNone && value == "none") {
      choice = 0;
      return {};
    }
    const auto number = wholeNumber(value);
    if (!number || *number == 0)
      return error(
          say("this is no number of a line or column"),
          mayBeNone ? say("They count from 1; none means that there is none") : say("They count from 1"));
    choice = *number - less;
    return {};
  }
  Result<void> rate(std::string_view value);

  std::string_view m_word;
  LayoutChoices m_choices;
};

Result<void> ChoiceReader::rate(std::string_view value) {
  if (m_choices.rate_Hz) return twice();
  double rate_Hz = 0;
  const auto [end, fault] = std::from_chars(value.data(), value.data() + value.size(), rate_Hz);
  const bool whole = fault == std::errc() && end == value.data() + value.size();
  if (!whole || !std::isfinite(rate_Hz) || !(rate_Hz > 0))
    return error(say("the rate is no number above 0"), say("Give samples per second, such as rate=50"));
  m_choices.rate_Hz = rate_Hz;
  return {};
}

Result<void> ChoiceReader::takeUnit(std::string_view key, std::string_view value) {
  const auto column = wholeNumber(key);
  if (!column || *column == 0)
    return error(say("this is no number of a column"), say("Columns count from 1, such as unit.2=kN"));
  const auto unit = percentDecoded(value);
  if (!unit)
    return error(say("a % must be followed by two hexadecimal digits"), say("Write a percent sign as %25"));
  if (firstInvalidUtf8(*unit)) return error(say("the text is not UTF-8"), say("Type it again"));
  if (!m_choices.units.emplace(*column - 1, *unit).second) return twice();
  return {};
}

Result<void> ChoiceReader::take(std::string_view word) {
  m_word = word;
  const std::size_t equals = word.find('=');
  const std::string_view key = word.substr(0, equals);
  const std::string_view value =
      equals == std::string_view::npos ? std::string_view() : word.substr(equals + 1);
  if (equals != std::string_view::npos) {
    if (key == "encoding") return oneOf(encodings, value, m_choices.encoding);
    if (key == "separator") return oneOf(separators, value, m_choices.separator);
    if (key == "decimal") return oneOf(decimals, value, m_choices.decimal);
    if (key == "first-row") return count(value, 0, false, m_choices.firstRow);
    if (key == "names") return count(value, 0, true, m_choices.nameLine);
    if (key == "units") return count(value, 0, true, m_choices.unitLine);
    if (key == "time") return count(value, 1, false, m_choices.timeColumn);
    if (key == "time-form") return oneOf(timeForms, value, m_choices.timeForm);
    if (key == "date-order") return oneOf(dateOrders, value, m_choices.dateOrder);
    if (key == "rate") return rate(value);
    if (key.starts_with("unit.")) return takeUnit(key.substr(5), value);
  }
  return error(say("this choice is not known"),
               say("There are encoding=, separator=, decimal=, first-row=, names=, units=, time=, "
                   "time-form=, date-order=, rate= and unit.N="));
}

Result<LayoutChoices> ChoiceReader::read(std::string_view text) {
  while (true) {
    const std::size_t begin = text.find_first_not_of(' ');
    if (begin == std::string_view::npos) return m_choices;
    text.remove_prefix(begin);
    const std::string_view word = text.substr(0, text.find(' '));
    if (const auto taken = take(word); !taken) return taken.error();
    text.remove_prefix(word.size());
  }
}

}  // namespace

std::string textOf(const LayoutChoices& choices) {
  std::string text;
  const auto add = [&](std::string_view key, const std::string& value) {
    if (!text.empty()) text += ' ';
    ((text += key) += '=') += value;
  };
  const auto line = [](std::size_t number) {
    return number == 0 ? std::string("none") : std::to_string(number);
  };
  if (choices.encoding) add("encoding", wordFor(encodings, *choices.encoding));
  if (choices.separator) add("separator", wordFor(separators, *choices.separator));
  if (choices.decimal) add("decimal", wordFor(decimals, *choices.decimal));
  if (choices.firstRow) add("first-row", std::to_string(*choices.firstRow));
  if (choices.nameLine) add("names", line(*choices.nameLine));
  if (choices.unitLine) add("units", line(*choices.unitLine));
  if (choices.timeColumn) add("time", std::to_string(*choices.timeColumn + 1));
  if (choices.timeForm) add("time-form", wordFor(timeForms, *choices.timeForm));
  if (choices.dateOrder) add("date-order", wordFor(dateOrders, *choices.dateOrder));
  if (choices.rate_Hz) add("rate", shortestText(*choices.rate_Hz));
  for (const auto& [column, unit] : choices.units)
    add("unit." + std::to_string(column + 1), percentEncoded(unit, isPlain));
  return text;
}

Result<LayoutChoices> choicesFromText(std::string_view text) { return ChoiceReader().read(text); }

}  // namespace core
