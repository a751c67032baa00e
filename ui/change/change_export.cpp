// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/change/change_export.h"

#include <QCoreApplication>

#include "ui/change/change_words.h"
#include "ui/change/interval_bar.h"
#include "ui/outcome/outcome_export.h"

namespace ui {
namespace {

constexpr double margin_px = 16;
constexpr QSize picture_px(960, 680);
constexpr double bars_px = 130;  ///< for gain and zero below the strip

QString tr(const char* text) { return QCoreApplication::translate("ui::ChangeExport", text); }

QStringList differenceCells(const std::optional<core::Difference>& difference) {
  const core::Difference none;
  const core::Difference& one = difference ? *difference : none;
  const auto value = [&](double number) { return difference ? std::optional(number) : std::nullopt; };
  QStringList cells;
  for (const auto& number : {value(one.value), one.standard, one.dof, one.expanded, one.halfWidth90,
                             one.halfWidth95, value(one.margin), one.pDifferent, one.pEquivalent, one.en})
    cells << numberCell(number);
  return cells << changeWord(difference ? difference->change : core::Change::NotCompared);
}

QStringList header(const QString& unit) {
  const QString in = ", " + unit;
  return {tr("What"),
          tr("Label"),
          tr("Before") + in,
          tr("After") + in,
          tr("Change") + in,
          tr("Standard uncertainty") + in,
          tr("Degrees of freedom"),
          tr("U") + in,
          tr("90 % interval ±") + in,
          tr("95 % interval ±") + in,
          tr("Margin ±") + in,
          tr("p (different)"),
          tr("p (beyond margin)"),
          tr("En"),
          tr("In words")};
}

std::optional<double> baseOf(const std::optional<core::Reading>& reading) {
  return reading ? std::optional(reading->base()) : std::nullopt;
}

double drawBar(QPainter& painter, const QString& title, const std::optional<core::Difference>& difference,
               const ShownUnit& in, QPointF at, double width) {
  const Colours colours = coloursFor(lightPalette());
  const QPointF below = drawPictureText(painter, title, {13, true}, colours.text, width, at);
  IntervalBar bar("pictureBar");
  bar.setFont(QFont("DejaVu Sans", 9));
  bar.showDifference(difference, in);
  const double height = bar.sizeHint().height();
  bar.paintInto(painter, {below, QSizeF(width, height)}, colours);
  const QString words = difference
                            ? changeSign(difference->change) + " " + differenceSentence(*difference, in)
                            : changeText(core::Change::NotCompared);
  return drawPictureText(painter, words, {12, false}, colours.text, width, below + QPointF(0, height + 4))
      .y();
}

void paintPicture(QPainter& painter, const ShownChange& shown, const QString& title) {
  const Colours colours = coloursFor(lightPalette());
  const core::Comparison& comparison = shown.comparison;
  const double width = picture_px.width() - 2 * margin_px;
  painter.fillRect(QRectF(QPointF(0, 0), picture_px), Qt::white);
  QPointF at = drawPictureText(painter, title, {16, true}, colours.text, width, {margin_px, margin_px});
  at = drawPictureText(painter, changeSign(comparison.change) + " " + toQString(comparison.reason),
                       {13, true}, colourOf(colours, comparison.change), width, at);
  DifferenceStrip strip;
  strip.setFont(QFont("DejaVu Sans", 9));
  strip.showSteps(stripSteps(shown), toQString(shown.unit), std::nullopt);
  const double bottom = picture_px.height() - bars_px;
  if (!comparison.steps.empty())
    strip.paintInto(painter, QRectF(at + QPointF(0, 6), QPointF(margin_px + width, bottom)), colours);
  const double half = (width - margin_px) / 2;
  drawBar(painter, tr("Gain change, %"), comparison.gain, {100, "%"}, {margin_px, bottom + 8}, half);
  drawBar(painter, tr("Zero change, %1").arg(toQString(shown.unit)), comparison.zero,
          {1, toQString(shown.unit)}, {2 * margin_px + half, bottom + 8}, half);
}

QString titleOf(const ShownChange& shown) {
  return tr("Channel %1, from %2 to %3")
      .arg(toQString(shown.channel->name), toQString(shown.before().name), toQString(shown.after().name));
}

}  // namespace

QList<StripStep> stripSteps(const ShownChange& shown) {
  QList<StripStep> steps;
  for (std::size_t k = 0; k < shown.comparison.steps.size(); ++k)
    steps.append({k, shown.comparison.steps[k].moved, stepSentence(shown, k)});
  return steps;
}

QList<QStringList> changeData(const ShownChange& shown) {
  const core::Setup& setup = shown.setupBefore();
  QList<QStringList> rows{header(toQString(shown.unit))};
  for (std::size_t k = 0; k < shown.comparison.steps.size(); ++k) {
    const core::StepComparison& step = shown.comparison.steps[k];
    rows << QStringList{tr("step %1").arg(k + 1), textCell(setup.sequence[k].label),
                        numberCell(baseOf(step.before)), numberCell(baseOf(step.after))} +
                differenceCells(step.moved);
  }
  // The gain is a pure number whatever the unit of the readings.
  rows << QStringList{tr("gain, after over before less 1"), {}, {}, {}} +
              differenceCells(shown.comparison.gain);
  rows << QStringList{tr("zero"), {}, {}, {}} + differenceCells(shown.comparison.zero);
  return rows;
}

PictureDrawing changeDrawing(std::shared_ptr<const ShownChange> shown, const QString& title) {
  const QString heading = title.isEmpty() ? titleOf(*shown) : title + ". " + titleOf(*shown);
  const QString words = toQString(shown->comparison.reason);
  return {picture_px, heading, words,
          [shown = std::move(shown), heading](QPainter& painter) { paintPicture(painter, *shown, heading); }};
}

QString suggestedChangeName(const ShownChange& shown) {
  return asFileName(toQString(shown.channel->name) + "-" + toQString(shown.before().name) + "-" +
                    toQString(shown.after().name) + "-change");
}

}  // namespace ui
