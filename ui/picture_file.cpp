// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/picture_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPdfWriter>
#include <QSvgGenerator>

#include "ui/safe_file.h"
#include "ui/state_file.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr int scale = 2;      ///< pixels a point
constexpr int pdfScale = 12;  ///< units a point, so that nothing is moved to whole points

QString tr(const char* text) { return QCoreApplication::translate("ui::PictureFile", text); }

QByteArray written(const std::function<void(QIODevice&)>& write) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  write(buffer);
  return bytes;
}

QString folderKey(const QString& group) { return group + "/folder"; }

}  // namespace

QImage pictureImage(const PictureDrawing& drawing) {
  QImage image(scale * drawing.size, QImage::Format_RGB32);
  image.setDevicePixelRatio(scale);
  image.setText("Title", drawing.title);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  drawing.paint(painter);
  return image;
}

QByteArray picturePng(const PictureDrawing& drawing) {
  const QImage image = pictureImage(drawing);
  return written([&](QIODevice& device) { image.save(&device, "PNG"); });
}

QByteArray pictureSvg(const PictureDrawing& drawing) {
  return written([&](QIODevice& device) {
    QSvgGenerator generator;
    generator.setOutputDevice(&device);
    generator.setResolution(96);
    generator.setSize(drawing.size);
    generator.setViewBox(QRect(QPoint(0, 0), drawing.size));
    // The generator writes these two as they are.
    generator.setTitle(drawing.title.toHtmlEscaped());
    generator.setDescription(drawing.description.toHtmlEscaped());
    QPainter painter(&generator);
    drawing.paint(painter);
  });
}

QByteArray picturePdf(const PictureDrawing& drawing) {
  return written([&](QIODevice& device) {
    const QSizeF size_pt = QSizeF(drawing.size) * 72.0 / 96;
    QPdfWriter writer(&device);
    writer.setPageSize(QPageSize(size_pt, QPageSize::Point, {}, QPageSize::ExactMatch));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setResolution(96 * pdfScale);
    writer.setTitle(drawing.title);
    QPainter painter(&writer);
    painter.scale(pdfScale, pdfScale);
    drawing.paint(painter);
  });
}

core::Result<void> writePicture(const QString& path, const PictureDrawing& drawing) {
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending != "svg" && ending != "png" && ending != "pdf")
    return core::Error{QFileInfo(path).fileName().toStdString(),
                       core::say("its ending names no kind of picture"),
                       core::say("end the name with .svg, .png or .pdf")};
  return saveBytes(path, ending == "svg"   ? pictureSvg(drawing)
                         : ending == "png" ? picturePng(drawing)
                                           : picturePdf(drawing));
}

QPointF drawPictureText(QPainter& painter, const QString& text, PictureFont font, const QColor& colour,
                        double width, QPointF at) {
  if (text.isEmpty()) return at;
  QFont plain("DejaVu Sans");
  plain.setPixelSize(font.points);
  plain.setBold(font.bold);
  painter.setFont(plain);
  painter.setPen(colour);
  QRectF taken;
  painter.drawText(QRectF(at, QSizeF(width, 200)), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text,
                   &taken);
  return at + QPointF(0, taken.height() + 2);
}

QString askForPicture(QWidget* parent, const QString& question, const QString& group, const QString& name) {
  const QString folder = stateFile().value(folderKey(group), QDir::homePath()).toString();
  const QStringList kinds{tr("Vector picture (*.svg)"), tr("Picture (*.png)"), tr("PDF page (*.pdf)")};
  QString kind = kinds.first();
  const QString path =
      QFileDialog::getSaveFileName(parent, question, folder + "/" + name + ".svg", kinds.join(";;"), &kind);
  if (path.isEmpty() || !QFileInfo(path).suffix().isEmpty()) return path;
  return path + (kind == kinds[1] ? ".png" : kind == kinds[2] ? ".pdf" : ".svg");
}

void rememberPictureFolder(const QString& group, const QString& path) {
  stateFile().setValue(folderKey(group), QFileInfo(path).absolutePath());
}

QString asFileName(QString name) {
  for (QChar& letter : name)
    if (!letter.isLetterOrNumber() && letter != '-' && letter != '_') letter = '_';
  return name.left(80);
}

}  // namespace ui
