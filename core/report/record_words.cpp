// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/record_words.h"

#include <algorithm>

#include "core/units/language.h"

namespace core {

std::string givenText(const std::string& text) { return text.empty() ? say("not given") : text; }

std::string shownDay(const std::string& date) {
  const auto day = dateFromText(date);
  return day ? shown(*day) : givenText(date);
}

std::string shownTime(const std::string& time) {
  const bool isMoment = time.size() == 20 && time[10] == 'T' && time.back() == 'Z';
  const auto day = isMoment ? dateFromText(time.substr(0, 10)) : std::nullopt;
  return day ? shown(*day) + " " + time.substr(11, 5) + " UTC" : givenText(time);
}

std::string identityText(const Identity& identity) {
  std::string text = identity.name;
  const auto add = [&](std::string part) { text += (text.empty() ? "" : ", ") + std::move(part); };
  if (!identity.serial.empty()) add(say("serial {1}", {identity.serial}));
  if (!identity.certificate.empty()) add(say("certificate {1}", {identity.certificate}));
  if (identity.due) add(say("calibration due {1}", {shown(*identity.due)}));
  return givenText(text);
}

std::string meritHeading(MeritKind kind) {
  std::string name = std::string(meritKindName(kind));
  if (!name.empty() && name[0] >= 'a' && name[0] <= 'z') name[0] = static_cast<char>(name[0] - 'a' + 'A');
  return name;
}

std::string listedNames(const std::vector<std::string>& names) {
  constexpr std::size_t most = 12;
  std::string text;
  for (std::size_t k = 0; k < std::min(names.size(), most); ++k) text += (k == 0 ? "" : ", ") + names[k];
  if (names.size() <= most) return text;
  return say("{1} and {2} more", {text, std::to_string(names.size() - most)});
}

}  // namespace core
