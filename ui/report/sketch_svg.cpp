// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <QList>
#include <cmath>

#include "ui/report/sketch.h"

namespace ui {
namespace {

/// Two places are a hundredth of a pixel.
QByteArray number(double value) {
  QByteArray text = QByteArray::number(value, 'f', 2);
  while (text.endsWith('0')) text.chop(1);
  if (text.endsWith('.')) text.chop(1);
  return text == "-0" ? QByteArray("0") : text;
}

QByteArray pair(QPointF at) { return number(at.x()) + " " + number(at.y()); }

QByteArray pathData(const QPainterPath& path) {
  QByteArray data;
  for (int k = 0; k < path.elementCount(); ++k) {
    const QPainterPath::Element at = path.elementAt(k);
    if (at.type == QPainterPath::MoveToElement) data += "M";
    if (at.type == QPainterPath::LineToElement) data += "L";
    if (at.type == QPainterPath::CurveToElement) data += "C";
    if (at.type == QPainterPath::CurveToDataElement) data += " ";
    data += pair(at);
  }
  return data;
}

/// A colour with its opacity, as the attributes of `what`: fill or stroke.
QByteArray paint(const char* what, const QColor& colour, double opacity) {
  QByteArray text = " " + QByteArray(what) + "=\"" + colour.name().toLatin1() + "\"";
  const double seen = colour.alphaF() * opacity;
  return seen < 0.999 ? text + " " + what + "-opacity=\"" + number(seen) + "\"" : text;
}

double scaleOf(const QTransform& transform) { return std::sqrt(std::abs(transform.determinant())); }

QByteArray penOf(const Sketch::Stroke& stroke) {
  const QPen& pen = stroke.pen;
  if (pen.style() == Qt::NoPen) return {};
  const double width =
      pen.widthF() > 0 ? pen.widthF() * (pen.isCosmetic() ? 1 : scaleOf(stroke.transform)) : 1;
  QByteArray text = paint("stroke", pen.color(), stroke.opacity) + " stroke-width=\"" + number(width) + "\"";
  if (pen.capStyle() == Qt::RoundCap) text += " stroke-linecap=\"round\"";
  if (pen.capStyle() == Qt::SquareCap) text += " stroke-linecap=\"square\"";
  if (pen.joinStyle() == Qt::RoundJoin) text += " stroke-linejoin=\"round\"";
  if (pen.style() == Qt::SolidLine) return text;
  QByteArray dashes;
  for (const double dash : pen.dashPattern()) dashes += (dashes.isEmpty() ? "" : " ") + number(dash * width);
  return text + " stroke-dasharray=\"" + dashes + "\"";
}

class SvgWriter {
 public:
  QByteArray written(QSizeF size, const std::vector<Sketch::Stroke>& strokes) {
    for (const Sketch::Stroke& stroke : strokes) add(stroke);
    const QByteArray width = number(size.width()), height = number(size.height());
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "\" height=\"" + height +
           "\" viewBox=\"0 0 " + width + " " + height + "\" font-family=\"DejaVu Sans, sans-serif\">" +
           m_clips + m_body + "</svg>\n";
  }

 private:
  void add(const Sketch::Stroke& stroke) {
    switch (stroke.kind) {
      case Sketch::Stroke::Kind::Path:
        return addPath(stroke);
      case Sketch::Stroke::Kind::Text:
        return addText(stroke);
      case Sketch::Stroke::Kind::Image:
        return;  // views draw none
    }
  }

  void addPath(const Sketch::Stroke& stroke) {
    const QPainterPath path = stroke.transform.map(stroke.path);
    const bool filled = stroke.brush.style() != Qt::NoBrush;
    const double reach =
        stroke.pen.style() == Qt::NoPen ? 0 : stroke.pen.widthF() * scaleOf(stroke.transform);
    m_body += "<path d=\"" + pathData(path) + "\"";
    m_body += filled ? paint("fill", stroke.brush.color(), stroke.opacity) : QByteArray(" fill=\"none\"");
    if (filled && path.fillRule() == Qt::OddEvenFill) m_body += " fill-rule=\"evenodd\"";
    m_body += penOf(stroke) + clip(stroke, path.boundingRect().adjusted(-reach, -reach, reach, reach)) + "/>";
  }

  void addText(const Sketch::Stroke& stroke) {
    const double size = stroke.font.pixelSize() / double(Sketch::finer);
    const QTransform& t = stroke.transform;
    const bool upright = !t.isRotating() && qFuzzyCompare(t.m11(), t.m22());
    const QPointF at = upright ? t.map(stroke.at) : stroke.at;
    const double scale = upright ? t.m11() : 1;
    m_body += "<text x=\"" + number(at.x()) + "\" y=\"" + number(at.y()) + "\" font-size=\"" +
              number(size * scale) + "\" textLength=\"" + number(stroke.width * scale) +
              "\" lengthAdjust=\"spacingAndGlyphs\"";
    if (stroke.font.bold()) m_body += " font-weight=\"bold\"";
    if (stroke.font.italic()) m_body += " font-style=\"italic\"";
    if (!upright)
      m_body += " transform=\"matrix(" + number4(t.m11()) + " " + number4(t.m12()) + " " + number4(t.m21()) +
                " " + number4(t.m22()) + " " + pair({t.dx(), t.dy()}) + ")\"";
    m_body += paint("fill", stroke.pen.color(), stroke.opacity) + ">" + stroke.text.toHtmlEscaped().toUtf8() +
              "</text>";
  }

  static QByteArray number4(double value) { return QByteArray::number(value, 'f', 4); }

  /// Only where something would be cut.
  QByteArray clip(const Sketch::Stroke& stroke, const QRectF& box) {
    if (!stroke.clip || stroke.clip->contains(box)) return {};
    const QByteArray data = pathData(*stroke.clip);
    qsizetype index = m_known.indexOf(data);
    if (index < 0) {
      index = m_known.size();
      m_known.append(data);
      m_clips += "<clipPath id=\"c" + QByteArray::number(index) + "\"><path d=\"" + data + "\"/></clipPath>";
    }
    return " clip-path=\"url(#c" + QByteArray::number(index) + ")\"";
  }

  QByteArray m_clips, m_body;
  QList<QByteArray> m_known;
};

}  // namespace

QByteArray Sketch::svg() const { return SvgWriter().written(m_size, m_strokes); }

}  // namespace ui
