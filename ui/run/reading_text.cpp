// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/reading_text.h"

#include <QRegularExpression>

#include "core/assess/reading_unit.h"
#include "core/uncertainty/propagation.h"
#include "core/units/language.h"
#include "core/units/notation.h"

namespace ui {
namespace {

core::Result<double> numberFromText(const QString& text, const core::Instrument& instrument) {
  const auto number =
      core::parseQuantity(text.toStdString(), core::UnitFamily::Named, core::readingUnitText(instrument));
  if (!number) return number;
  if (auto ok = core::checkReading(instrument, core::Reading(*number)); !ok) return ok.error();
  return number;
}

}  // namespace

core::Result<TypedReading> readingFromText(const QString& text, const core::Instrument& instrument) {
  if (text.size() >= longestReadingText)
    return core::Error{"reading", core::say("this is more text than a reading takes"),
                       core::say("Paste fewer numbers, or their mean")};
  static const QRegularExpression between("[\\n\\r\\t;\\x{2028}\\x{2029}]+");
  QStringList parts;
  for (const QString& part : text.split(between))
    if (!part.trimmed().isEmpty()) parts << part.trimmed();
  if (parts.isEmpty())
    return core::Error{"reading", core::say("it is empty"), core::say("Enter what the instrument shows")};
  std::vector<double> numbers;
  for (const QString& part : parts) {
    const auto number = numberFromText(part, instrument);
    if (!number) {
      core::Error error = number.error();
      error.where = parts.size() == 1 ? "reading" : "number " + std::to_string(numbers.size() + 1);
      return error;
    }
    numbers.push_back(*number);
  }
  if (numbers.size() == 1) return TypedReading{{core::Reading(numbers.front()), {}, {}, {}, {}}, 1};
  const auto series = core::evaluateTypeA(numbers);
  if (!series) return series.error();
  return TypedReading{{core::Reading(series->mean), core::Reading(series->standardUncertainty), {}, {}, {}},
                      numbers.size()};
}

}  // namespace ui
