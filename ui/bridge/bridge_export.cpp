// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/bridge_export.h"

#include <QCoreApplication>
#include <QPrinter>
#include <algorithm>

#include "ui/bridge/bridge_painter.h"
#include "ui/shown_channel.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double margin_px = 16;
constexpr int pictureWidth = 960, headingHeight = 130;

QString tr(const char* text) { return QCoreApplication::translate("Bridge", text); }

/// What stands above the drawing; plain text.
struct Heading {
  QString title, subject, step, outcome, sentence;
  core::Polarity polarity = core::Polarity::None;
};

Heading headingOf(const Session& session, const core::Channel& channel, const BridgeState& state) {
  Heading heading;
  heading.title = toQString(session.document().title);
  if (heading.title.isEmpty()) heading.title = tr("Bridge with its shunts");
  heading.subject =
      tr("Channel %1, %2")
          .arg(toQString(channel.name), toQString(core::templateOf(channel.setup.bridge.type).name));
  heading.step = state.title;
  heading.outcome = state.outcome;
  heading.sentence = state.sentence;
  heading.polarity = state.polarity;
  return heading;
}

/// Returns the height taken.
double drawHeading(QPainter& painter, const Heading& heading, double width) {
  const Colours colours = coloursFor(lightPalette());
  const double room = width - 2 * margin_px;
  const QColor sign =
      heading.polarity == core::Polarity::None ? colours.text : colourOf(colours, heading.polarity);
  QPointF at(margin_px, margin_px);
  at = drawPictureText(painter, heading.title, {16, true}, colours.text, room, at);
  at = drawPictureText(painter, heading.subject, {13, false}, colours.text, room, at);
  at = drawPictureText(painter, heading.step, {13, false}, colours.text, room, at);
  at = drawPictureText(painter, heading.outcome, {13, true}, sign, room, at);
  return drawPictureText(painter, heading.sentence, {12, false}, colours.text, room, at).y();
}

/// Shrunk to fit, in the middle.
void drawBridge(QPainter& painter, const BridgePicture& picture, FlowStyle currents, const QRectF& place) {
  const Colours colours = coloursFor(lightPalette());
  const QRectF scene = picture.lanes.scene;
  const double scale = std::min(place.width() / scene.width(), place.height() / scene.height());
  painter.save();
  painter.translate(place.center());
  painter.scale(scale, scale);
  painter.translate(-scene.center());
  paintBridge(painter, picture, colours);
  if (currents != FlowStyle::Off && picture.state.flow)
    paintFlow(painter, picture, *picture.state.flow, currents, 0, colours);
  painter.restore();
}

}  // namespace

PictureDrawing bridgeDrawing(const Session& session, const BridgeLook& look) {
  const auto channel = shownChannel(session);
  const BridgePicture picture =
      pictureOf(*channel, session.shownPrediction(), shownStep(session), look.symbols);
  const Heading heading = headingOf(session, *channel, picture.state);
  const QRectF scene = picture.lanes.scene;
  const double room = pictureWidth - 2 * margin_px;
  const int height = headingHeight + static_cast<int>(room * scene.height() / scene.width() + 2 * margin_px);
  const QSize size(pictureWidth, height);
  return {size, heading.title + ". " + heading.subject + ". " + heading.step,
          describe(*channel, picture.state), [=](QPainter& painter) {
            painter.fillRect(QRectF(QPointF(0, 0), size), Qt::white);
            const double top = drawHeading(painter, heading, size.width()) + 6;
            drawBridge(painter, picture, look.currents,
                       QRectF(margin_px, top, size.width() - 2 * margin_px, size.height() - top - margin_px));
          }};
}

QString suggestedBridgeName(const Session& session) {
  QString name = toQString(session.channel()->name) + "-bridge";
  if (const auto step = shownStep(session)) name += "-step-" + QString::number(*step + 1);
  return asFileName(name);
}

bool printPicture(QPrinter& printer, const PictureDrawing& drawing) {
  printer.setDocName(drawing.title);
  QPainter painter;
  if (!painter.begin(&printer)) return false;
  const QRectF page(QPointF(0, 0), printer.pageLayout().paintRectPixels(printer.resolution()).size());
  const double scale = std::min(page.width() / drawing.size.width(), page.height() / drawing.size.height());
  painter.translate((page.width() - scale * drawing.size.width()) / 2, 0);
  painter.scale(scale, scale);
  drawing.paint(painter);
  return painter.end();
}

}  // namespace ui
