// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/document/json_stock.h"

#include "core/document/file_limits.h"
#include "core/units/language.h"

namespace core {
namespace {

using enum JsonEmitter::Layout;

/// A dial has about ten positions; more than this is no dial, and checkBox has the last word.
constexpr std::uint64_t mostPositions = 1'000;

void writeResistor(JsonEmitter& out, const Resistor& resistor) {
  out.object({}, OneLine, [&] {
    out.text("id", resistor.id);
    out.number("nominal_ohm", resistor.nominal.base());
    out.number("tolerance", resistor.tolerance);
    if (resistor.certificate)
      out.object("certificate", OneLine, [&] {
        out.number("value_ohm", resistor.certificate->value.base());
        out.number("expanded_ohm", resistor.certificate->expanded.base());
        out.number("coverage_factor", resistor.certificate->coverageFactor);
        if (!resistor.certificate->number.empty()) out.text("number", resistor.certificate->number);
      });
    writeDate(out, "due", resistor.due);
    if (resistor.rating) out.number("rating_W", resistor.rating->base());
    out.text("fitted_in", resistor.fittedIn);
    out.text("note", resistor.note);
  });
}

void writeBox(JsonEmitter& out, const DecadeBox& box) {
  out.object({}, OneLine, [&] {
    out.text("id", box.id);
    out.array("decades", OneLine, [&] {
      for (const Decade& decade : box.decades)
        out.object({}, OneLine, [&] {
          out.number("step_ohm", decade.step.base());
          out.count("positions", decade.positions);
        });
    });
    out.number("residual_ohm", box.residual.base());
    out.number("tolerance", box.tolerance);
    writeDate(out, "due", box.due);
    if (box.rating) out.number("rating_W", box.rating->base());
    out.text("note", box.note);
  });
}

void writeRange(JsonEmitter& out, const SeriesRange& range) {
  out.object({}, OneLine, [&] {
    out.text("series", eSeriesName(range.series));
    out.number("from_ohm", range.from.base());
    out.number("to_ohm", range.to.base());
    out.number("tolerance", range.tolerance);
  });
}

std::optional<Power> readRating(const JsonFields& in) {
  if (!in.has("rating_W")) return std::nullopt;
  return Power(in.number("rating_W"));
}

/// Notes what is wrong with a part of the stock at its place; the place says more than its id.
void noteFault(const JsonPlace& at, const Result<void>& checked) {
  if (!checked) at.fail(checked.error().what, checked.error().mend);
}

Certificate readCertificate(const JsonPlace& at) {
  const JsonFields in(at, {"value_ohm", "expanded_ohm", "coverage_factor", "number"});
  return {Resistance(in.number("value_ohm")), Resistance(in.number("expanded_ohm")),
          in.number("coverage_factor"), in.has("number") ? in.text("number") : ""};
}

Resistor readResistor(const JsonPlace& at, JsonNames& ids) {
  const JsonFields in(
      at, {"id", "nominal_ohm", "tolerance", "certificate", "due", "rating_W", "fitted_in", "note"});
  ids.add(in.at("id"), say("part of the stock"));
  Resistor resistor;
  resistor.id = in.text("id");
  resistor.nominal = Resistance(in.number("nominal_ohm"));
  resistor.tolerance = in.number("tolerance");
  if (in.has("certificate")) resistor.certificate = readCertificate(in.at("certificate"));
  resistor.due = readDate(in, "due");
  resistor.rating = readRating(in);
  resistor.fittedIn = in.text("fitted_in");
  resistor.note = in.text("note");
  if (!at.failed()) noteFault(at, checkResistor(resistor));
  return resistor;
}

Decade readDecade(const JsonPlace& at) {
  const JsonFields in(at, {"step_ohm", "positions"});
  return {Resistance(in.number("step_ohm")), static_cast<unsigned>(in.at("positions").count(mostPositions))};
}

DecadeBox readBox(const JsonPlace& at, JsonNames& ids) {
  const JsonFields in(at, {"id", "decades", "residual_ohm", "tolerance", "due", "rating_W", "note"});
  ids.add(in.at("id"), say("part of the stock"));
  DecadeBox box;
  box.id = in.text("id");
  box.decades = readShortList<Decade>(in.at("decades"), mostDecades, "dials", readDecade);
  box.residual = Resistance(in.number("residual_ohm"));
  box.tolerance = in.number("tolerance");
  box.due = readDate(in, "due");
  box.rating = readRating(in);
  box.note = in.text("note");
  if (!at.failed()) noteFault(at, checkBox(box));
  return box;
}

SeriesRange readRange(const JsonPlace& at) {
  const JsonFields in(at, {"series", "from_ohm", "to_ohm", "tolerance"});
  const SeriesRange range{
      readWord<ESeries>(in.at("series"), "series", eSeriesFromName, eSeriesName, eSeriesCount),
      Resistance(in.number("from_ohm")), Resistance(in.number("to_ohm")), in.number("tolerance")};
  if (!at.failed()) noteFault(at, checkSeriesRange(range));
  return range;
}

}  // namespace

void writeStock(JsonEmitter& out, const Stock& stock) {
  out.object("stock", Lines, [&] {
    out.array("resistors", Lines, [&] {
      for (const Resistor& resistor : stock.resistors) writeResistor(out, resistor);
    });
    out.array("boxes", Lines, [&] {
      for (const DecadeBox& box : stock.boxes) writeBox(out, box);
    });
    out.array("series", Lines, [&] {
      for (const SeriesRange& range : stock.series) writeRange(out, range);
    });
  });
}

Stock readStock(const JsonPlace& at) {
  const JsonFields in(at, {"resistors", "boxes", "series"});
  JsonNames ids;
  Stock stock;
  stock.resistors = readShortList<Resistor>(in.at("resistors"), mostResistors, "resistors",
                                            [&](const JsonPlace& p) { return readResistor(p, ids); });
  stock.boxes = readShortList<DecadeBox>(in.at("boxes"), mostBoxes, "boxes",
                                         [&](const JsonPlace& p) { return readBox(p, ids); });
  stock.series = readShortList<SeriesRange>(in.at("series"), mostSeries, "ranges", readRange);
  return stock;
}

void writeDate(JsonEmitter& out, std::string_view key, const std::optional<Date>& date) {
  if (date) out.text(key, dateText(*date));
}

std::optional<Date> readDate(const JsonFields& in, std::string_view key) {
  if (!in.has(key)) return std::nullopt;
  const JsonPlace at = in.at(key);
  const auto date = dateFromText(at.text());
  if (!date)
    at.fail(say("{1} is not a day", {inQuotes(at.text())}),
            say("Write it as year-month-day, such as 2026-11-25"));
  return date;
}

}  // namespace core
