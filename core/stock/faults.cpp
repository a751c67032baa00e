// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/faults.h"

#include <algorithm>
#include <cmath>

#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t longestText = 1000;
constexpr double greatestTolerance = 0.5;
constexpr std::size_t mostDials = 12;
constexpr unsigned mostPositions = 24;
constexpr double leastStep_ohm = 1e-3;

std::string shownOhms(Resistance value) {
  return shown(formatQuantity(value.base(), UnitFamily::Resistance));
}
std::string percent(double share) { return shown(formatQuantity(share, UnitFamily::Percent, {}, 4)); }

bool isBetween(double value, double least, double greatest) { return least <= value && value <= greatest; }

std::optional<FieldFault> textFault(std::string_view field, std::string_view text, std::size_t longest) {
  if (text.size() > longest)
    return FieldFault{field, say("{1} is too long", {inQuotes(text)}),
                      say("Shorten it to {1} bytes", {std::to_string(longest)})};
  const bool control =
      std::any_of(text.begin(), text.end(), [](unsigned char c) { return c < 32 || c == 127; });
  if (control)
    return FieldFault{field, say("there is a line break, a tab or the like in it"), say("Take it out")};
  return std::nullopt;
}

std::optional<FieldFault> idFault(std::string_view id) {
  if (id.empty())
    return FieldFault{"id", say("it has no id"), say("Enter what stands on its label, such as AF-0104")};
  if (id.front() == ' ' || id.back() == ' ')
    return FieldFault{"id", say("{1} begins or ends with a space", {inQuotes(id)}),
                      say("Take the space out")};
  return textFault("id", id, longestStockId);
}

std::optional<FieldFault> valueFault(std::string_view field, Resistance value) {
  if (isBetween(value.base(), leastShunt.base(), greatestShunt.base())) return std::nullopt;
  const std::string what = value == Resistance(0)
                               ? say("0 Ω is no shunt but a short circuit")
                               : say("{1} is not between {2} and {3}",
                                     {shownOhms(value), shownOhms(leastShunt), shownOhms(greatestShunt)});
  return FieldFault{field, what, say("Check number and unit; a number without unit is in Ω")};
}

std::optional<FieldFault> toleranceFault(double tolerance) {
  if (tolerance > 0 && tolerance <= greatestTolerance) return std::nullopt;
  return FieldFault{"tolerance",
                    tolerance == 0 ? say("a tolerance of 0 is no tolerance")
                                   : say("{1} is not above 0 and at most {2}",
                                         {percent(tolerance), percent(greatestTolerance)}),
                    say("Enter the half width, such as 0.01 %")};
}

std::optional<FieldFault> certificateFault(const Certificate& certificate, Resistance nominal,
                                           double tolerance) {
  if (const auto fault = valueFault("certificate_value", certificate.value)) return fault;
  // A resistor that has drifted by a tenth is scrap; a decimal point or a unit gone wrong is likelier.
  const double apart = std::abs(certificate.value / nominal - 1);
  if (apart > std::max(0.1, tolerance))
    return FieldFault{"certificate_value",
                      say("the certificate's {1} is far from the nominal {2}",
                          {shownOhms(certificate.value), shownOhms(nominal)}),
                      say("Check both values and their units")};
  if (!(certificate.expanded > Resistance(0)))
    return FieldFault{"certificate_expanded",
                      say("the certificate needs its expanded uncertainty U, above 0 Ω"),
                      say("Enter U as the certificate states it, such as 0.6 Ω")};
  if (!(certificate.expanded / certificate.value <= greatestTolerance))
    return FieldFault{"certificate_expanded",
                      say("U of {1} is more than half the value", {shownOhms(certificate.expanded)}),
                      say("Check number and unit; a number without unit is in Ω")};
  if (!isBetween(certificate.coverageFactor, 1, 10))
    return FieldFault{"certificate_k", say("the coverage factor is not between 1 and 10"),
                      say("Enter k as the certificate states it, such as 2")};
  return textFault("certificate_number", certificate.number, longestText);
}

std::optional<FieldFault> careFault(const std::optional<Date>& due, const std::optional<Power>& rating) {
  if (due && !dateFromText(dateText(*due)))
    return FieldFault{"due", say("there is no such day"), say("Write the day as in 2026-11-25")};
  constexpr Power least(1e-6), greatest(1e4);
  if (rating && !(*rating >= least && *rating <= greatest))
    return FieldFault{
        "rating",
        say("{1} is no power of a resistor", {shown(formatQuantity(rating->base(), UnitFamily::Power))}),
        say("Enter what it may turn into heat, such as 250 mW")};
  return std::nullopt;
}

std::optional<FieldFault> dialFault(const Decade& decade) {
  if (!isBetween(decade.step.base(), leastStep_ohm, greatestShunt.base()))
    return FieldFault{"decades", say("a dial's step of {1} cannot be", {shownOhms(decade.step)}),
                      say("Check number and unit")};
  const double micro = decade.step.base() * 1e6;  // of 15 digits that a decimal number keeps, 12 must agree
  if (std::abs(micro - std::round(micro)) > 1e-12 * micro)
    return FieldFault{"decades", say("a dial's step of {1} is finer than 1 µΩ", {shownOhms(decade.step)}),
                      say("Round it to whole micro-ohms")};
  if (decade.positions == 0 || decade.positions > mostPositions)
    return FieldFault{"decades", say("a dial has {1} positions above 0", {std::to_string(decade.positions)}),
                      say("Enter 1 to {1}; most dials have 10", {std::to_string(mostPositions)})};
  return std::nullopt;
}

std::optional<FieldFault> dialsFault(const DecadeBox& box) {
  if (box.decades.empty() || box.decades.size() > mostDials)
    return FieldFault{"decades", say("a box has 1 to {1} dials", {std::to_string(mostDials)}),
                      say("Write positions times step of each dial, such as 10x10k 10x1k 10x100")};
  for (std::size_t k = 0; k < box.decades.size(); ++k) {
    if (const auto fault = dialFault(box.decades[k])) return fault;
    if (k > 0 && box.decades[k].step >= box.decades[k - 1].step)
      return FieldFault{"decades", say("the steps of the dials do not fall"),
                        say("Begin with the greatest step")};
  }
  if (const Resistance most = greatestSetting(box); !(most >= leastShunt && most <= greatestShunt))
    return FieldFault{"decades",
                      say("the box goes up to {1}, which is not between {2} and {3}",
                          {shownOhms(most), shownOhms(leastShunt), shownOhms(greatestShunt)}),
                      say("Check the steps and their units")};
  if (!(box.residual >= Resistance(0) && box.residual <= box.decades.front().step))
    return FieldFault{"residual", say("{1} cannot remain with all dials at 0", {shownOhms(box.residual)}),
                      say("Enter what is measured with all dials at 0, such as 0.05 Ω")};
  return std::nullopt;
}

}  // namespace

std::optional<FieldFault> faultOf(const Resistor& resistor) {
  if (const auto fault = idFault(resistor.id)) return fault;
  if (const auto fault = valueFault("resistance", resistor.nominal)) return fault;
  if (const auto fault = toleranceFault(resistor.tolerance);
      fault && !(resistor.tolerance == 0 && resistor.certificate))
    return fault;
  if (resistor.certificate)
    if (const auto fault = certificateFault(*resistor.certificate, resistor.nominal, resistor.tolerance))
      return fault;
  if (const auto fault = careFault(resistor.due, resistor.rating)) return fault;
  if (const auto fault = textFault("fitted_in", resistor.fittedIn, longestText)) return fault;
  return textFault("note", resistor.note, longestText);
}

std::optional<FieldFault> faultOf(const DecadeBox& box) {
  if (const auto fault = idFault(box.id)) return fault;
  if (const auto fault = dialsFault(box)) return fault;
  if (const auto fault = toleranceFault(box.tolerance)) return fault;
  if (const auto fault = careFault(box.due, box.rating)) return fault;
  return textFault("note", box.note, longestText);
}

std::optional<FieldFault> faultOf(const SeriesRange& range) {
  if (const auto fault = valueFault("from", range.from)) return fault;
  if (const auto fault = valueFault("to", range.to)) return fault;
  if (range.from > range.to)
    return FieldFault{
        "to",
        say("the range ends at {1} before it begins at {2}", {shownOhms(range.to), shownOhms(range.from)}),
        say("Enter the lower value as its begin")};
  return toleranceFault(range.tolerance);
}

}  // namespace core
