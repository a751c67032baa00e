// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report_pdf_pictures.h"

#include <QPainter>

#include "ui/bridge/paper_bridge.h"
#include "ui/locale.h"
#include "ui/outcome/outcome_picture.h"
#include "ui/wiring/wiring_pictures.h"

namespace ui {
namespace {

constexpr QSize outcome_px(535, 285);    ///< as laid out: narrower, and the legend has no room
constexpr double outcomeWidth_pt = 318;  ///< leaves a third of the page's width for figures
constexpr double outcomeScale_pt = outcomeWidth_pt / outcome_px.width();

constexpr QSizeF bridgeRoom_pt(480, 430);  ///< text width less a little; three fifths of the text's height

}  // namespace

ReportPictures::ReportPictures(const core::Document& document, QTextDocument& text)
    : m_document(document), m_language(core::currentLanguage()), m_pictures(text) {}

core::PictureSource ReportPictures::add(const core::Picture& picture) {
  const core::Channel& channel = *m_document.channels[picture.channel];
  switch (picture.kind) {
    case core::Picture::Kind::Bridge:
      return addBridge(picture.channel);
    case core::Picture::Kind::Wiring:
      return m_pictures.add(wiringSize_pt(channel.setup, picture.shunt),
                            [this, &channel, shunt = picture.shunt](QPainter& painter, const QRectF& room) {
                              const SpokenScope words(m_language);
                              drawWiring(painter, room, channel.setup, shunt);
                            });
    case core::Picture::Kind::Outcome:
      break;
  }
  return m_pictures.add(
      QSizeF(outcome_px) * outcomeScale_pt, [this, &channel, picture](QPainter& painter, const QRectF& room) {
        const SpokenScope words(m_language);
        painter.drawImage(room,
                          outcomePicture(channel, evaluationOf(picture.channel), picture.check, outcome_px));
      });
}

core::PictureSource ReportPictures::addBridge(std::size_t channel) {
  const auto drawn = [this, channel] {
    return pictureOf(*m_document.channels[channel], evaluationOf(channel).prediction, std::nullopt);
  };
  return m_pictures.add(paperSize_pt(drawn(), bridgeRoom_pt),
                        [this, drawn](QPainter& painter, const QRectF& room) {
                          const SpokenScope words(m_language);
                          drawOnPaper(painter, room, drawn());
                        });
}

const core::ChannelEvaluation& ReportPictures::evaluationOf(std::size_t channel) {
  if (m_evaluated != channel) m_evaluation = core::evaluate(*m_document.channels[channel]);
  m_evaluated = channel;
  return m_evaluation;
}

}  // namespace ui
