// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QImage>
#include <QPainter>
#include <QString>
#include <functional>

#include "core/units/result.h"

class QWidget;

namespace ui {

/// Something drawn that can leave the window as a file, in points of a 96 dpi screen.
struct PictureDrawing {
  QSize size;
  QString title, description;  ///< plain text, for those who cannot see it
  std::function<void(QPainter&)> paint;
};

// GUI thread only.

/// Two pixels a point.
QImage pictureImage(const PictureDrawing& drawing);
QByteArray picturePng(const PictureDrawing& drawing);
/// Shapes and letters, with title and description.
QByteArray pictureSvg(const PictureDrawing& drawing);
/// One page of the size of the picture, shapes and letters.
QByteArray picturePdf(const PictureDrawing& drawing);

/// By the ending of `path`: .svg, .png or .pdf; another one is refused.
core::Result<void> writePicture(const QString& path, const PictureDrawing& drawing);

struct PictureFont {
  int points = 13;
  bool bold = false;
};
/// Lines of text of at most `width` at `at`; returns where the next ones begin.
QPointF drawPictureText(QPainter& painter, const QString& text, PictureFont font, const QColor& colour,
                        double width, QPointF at);

/// Asks where a picture is to go; the folder is remembered under `group`. Empty when cancelled.
QString askForPicture(QWidget* parent, const QString& question, const QString& group, const QString& name);
void rememberPictureFolder(const QString& group, const QString& path);

/// `name` of letters, digits, '-' and '_' only.
QString asFileName(QString name);

}  // namespace ui
