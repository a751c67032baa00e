// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf_pictures.h"

#include <QAbstractTextDocumentLayout>
#include <QPaintDevice>
#include <QPainter>
#include <QTextDocument>
#include <algorithm>

#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/bridge_picture.h"
#include "ui/outcome/outcome_picture.h"
#include "ui/theme.h"
#include "ui/wiring/wiring_pictures.h"

namespace ui {
namespace {

constexpr double pointsPerPixel = 72.0 / 96;

constexpr QSize outcome_px(535, 285);    ///< as laid out: narrower, and the legend has no room
constexpr double outcomeWidth_pt = 318;  ///< leaves a third of the page's width for figures
constexpr double outcomeScale_pt = outcomeWidth_pt / outcome_px.width();

constexpr QSizeF bridgeRoom_pt(480, 430);  ///< text width less a little; three fifths of the text's height
constexpr double bridgeLetter_pt = 7.0;    ///< the smallest, where there is room

BridgePicture bridgeOf(const core::Channel& channel, const core::ChannelEvaluation& evaluation) {
  return pictureOf(channel, evaluation.prediction, std::nullopt);
}

/// What is drawn on: less than the scene, which is as wide for every bridge.
QRectF inked(const BridgePicture& picture) {
  QRectF box = picture.layout.instrument | picture.layout.article;
  box.setTop(std::min(box.top(), picture.lanes.scene.top()));
  box.setBottom(std::max(box.bottom(), picture.lanes.scene.bottom()));
  for (const ShuntPlace& place : picture.lanes.places)
    box |= place.toA.boundingRect() | place.toB.boundingRect() | place.labelBox;
  return box.adjusted(-2, -2, 2, 2);
}

}  // namespace

ReportPictures::ReportPictures(const core::Document& document, QTextDocument& text) : m_document(document) {
  text.documentLayout()->registerHandler(QTextFormat::ImageObject, this);
}

core::PictureSource ReportPictures::add(const core::Picture& picture) {
  const QSizeF size_pt = sizeOf_pt(picture);
  m_places.push_back({picture, size_pt});
  return {std::to_string(m_places.size() - 1), static_cast<int>(size_pt.width() / pointsPerPixel)};
}

QSizeF ReportPictures::sizeOf_pt(const core::Picture& picture) {
  switch (picture.kind) {
    case core::Picture::Kind::Bridge:
      return bridgeSize_pt(picture.channel);
    case core::Picture::Kind::Wiring:
      return wiringSize_pt(m_document.channels[picture.channel]->setup, picture.shunt);
    case core::Picture::Kind::Outcome:
      break;
  }
  return QSizeF(outcome_px) * outcomeScale_pt;
}

const core::ChannelEvaluation& ReportPictures::evaluationOf(std::size_t channel) {
  if (m_evaluated != channel) m_evaluation = core::evaluate(*m_document.channels[channel]);
  m_evaluated = channel;
  return m_evaluation;
}

const ReportPictures::Place* ReportPictures::placeOf(const QTextFormat& format) const {
  bool isNumber = false;
  const std::size_t index = format.toImageFormat().name().toULongLong(&isNumber);
  return isNumber && index < m_places.size() ? &m_places[index] : nullptr;
}

QSizeF ReportPictures::intrinsicSize(QTextDocument* text, int, const QTextFormat& format) {
  const Place* place = placeOf(format);
  return place ? place->size_pt * text->documentLayout()->paintDevice()->logicalDpiX() / 72.0 : QSizeF();
}

void ReportPictures::drawObject(QPainter* painter, const QRectF& room, QTextDocument*, int,
                                const QTextFormat& format) {
  const Place* place = placeOf(format);
  if (!place) return;
  const std::size_t channel = place->picture.channel;
  if (place->picture.kind == core::Picture::Kind::Bridge) return drawBridge(*painter, room, channel);
  if (place->picture.kind == core::Picture::Kind::Wiring)
    return drawWiring(*painter, room, m_document.channels[channel]->setup, place->picture.shunt);
  painter->drawImage(room, outcomePicture(*m_document.channels[channel], evaluationOf(channel),
                                          place->picture.check, outcome_px));
}

QSizeF ReportPictures::bridgeSize_pt(std::size_t channel) {
  const QSizeF drawn = inked(bridgeOf(*m_document.channels[channel], evaluationOf(channel))).size();
  const double scale =
      std::min({bridgeLetter_pt / labelFont(LabelRole::Note).pixelSize(),
                bridgeRoom_pt.width() / drawn.width(), bridgeRoom_pt.height() / drawn.height()});
  return drawn * scale;
}

void ReportPictures::drawBridge(QPainter& painter, const QRectF& room, std::size_t channel) {
  const BridgePicture picture = bridgeOf(*m_document.channels[channel], evaluationOf(channel));
  const QRectF box = inked(picture);
  painter.save();
  painter.translate(room.topLeft());
  painter.scale(room.width() / box.width(), room.height() / box.height());
  painter.translate(-box.topLeft());
  paintBridge(painter, picture, coloursFor(lightPalette()));
  painter.restore();
}

}  // namespace ui
