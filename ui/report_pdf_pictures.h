// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTextObjectInterface>
#include <functional>
#include <optional>
#include <vector>

#include "core/document/document.h"
#include "core/evaluate/evaluation.h"
#include "core/report/html.h"

class QTextDocument;

namespace ui {

/// Draws the pictures of a report straight onto the page of a text document, so that bridge and wiring are
/// made of lines and letters and not of pixels, and no picture is kept.
///
/// Takes over all images of `text`, which has its paint device set and must not outlive this. GUI thread.
class ReportPictures : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)

 public:
  ReportPictures(const core::Document& document, QTextDocument& text);

  /// Makes room for `picture`; the address is to stand in the document's text.
  core::PictureSource add(const core::Picture& picture);

  QSizeF intrinsicSize(QTextDocument* text, int position, const QTextFormat& format) override;
  void drawObject(QPainter* painter, const QRectF& room, QTextDocument* text, int position,
                  const QTextFormat& format) override;

 private:
  struct Place {
    core::Picture picture;
    QSizeF size_pt;
  };

  const core::ChannelEvaluation& evaluationOf(std::size_t channel);
  const Place* placeOf(const QTextFormat& format) const;
  QSizeF sizeOf_pt(const core::Picture& picture);
  QSizeF bridgeSize_pt(std::size_t channel);
  void drawBridge(QPainter& painter, const QRectF& room, std::size_t channel);

  const core::Document& m_document;
  std::vector<Place> m_places;  ///< the address is the index
  std::optional<std::size_t> m_evaluated;
  core::ChannelEvaluation m_evaluation;  ///< of channel m_evaluated
};

}  // namespace ui
