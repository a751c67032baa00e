// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/time_units.h"

#include "core/recording/characters.h"

namespace core {

std::optional<TimeForm> unitOfTime(std::string_view unit) {
  const std::string word = lower(trimmed(unit));
  if (isOneOf(word, {"s", "sec", "sec.", "secs", "second", "seconds", "sek", "sek.", "sekunden", "sekunde"}))
    return TimeForm::Seconds;
  if (isOneOf(word, {"ms", "msec", "msecs", "millisecond", "milliseconds", "millisekunden", "millis"}))
    return TimeForm::Milliseconds;
  if (isOneOf(word, {"us", "usec", "\xC2\xB5s", "\xCE\xBCs", "\xB5s", "microsecond", "microseconds",
                     "mikrosekunden", "micros", "\xC2\xB5sec"}))
    return TimeForm::Microseconds;
  if (isOneOf(word, {"min", "min.", "mins", "minute", "minutes", "minuten"})) return TimeForm::Minutes;
  if (isOneOf(word, {"h", "hr", "hrs", "hour", "hours", "std", "std.", "stunden"})) return TimeForm::Hours;
  return std::nullopt;
}

bool isUnit(TimeForm form) { return form != TimeForm::Clock && form != TimeForm::DateAndTime; }

}  // namespace core
