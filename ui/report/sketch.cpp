// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/sketch.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPaintEngine>
#include <QPainter>
#include <cmath>

namespace ui {
namespace {

constexpr int finer = Sketch::finer;

QPainterPath polygonPath(const QPointF* points, int count, bool closed) {
  QPainterPath path(points[0]);
  for (int k = 1; k < count; ++k) path.lineTo(points[k]);
  if (closed) path.closeSubpath();
  return path;
}

/// Writes down what a painter is told.
class SketchEngine : public QPaintEngine {
 public:
  explicit SketchEngine(std::vector<Sketch::Stroke>& strokes)
      : QPaintEngine(AllFeatures), m_strokes(strokes) {}

  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  Type type() const override { return User; }

  void updateState(const QPaintEngineState& state) override {
    const DirtyFlags dirty = state.state();
    if (dirty & DirtyTransform) m_now.transform = state.transform();
    if (dirty & DirtyPen) m_now.pen = state.pen();
    if (dirty & DirtyBrush) m_now.brush = state.brush();
    if (dirty & DirtyOpacity) m_now.opacity = state.opacity();
    if (dirty & DirtyHints) m_now.smooth = state.renderHints() & QPainter::SmoothPixmapTransform;
    if (dirty & DirtyClipPath) clip(state.clipPath(), state);
    if (dirty & DirtyClipRegion) {
      QPainterPath path;
      path.addRegion(state.clipRegion());
      clip(path, state);
    }
    if ((dirty & DirtyClipEnabled) && !state.isClipEnabled()) m_now.clip.reset();
  }

  void drawPath(const QPainterPath& path) override { add(path, m_now.brush); }

  void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
    QPainterPath path = polygonPath(points, count, mode != PolylineMode);
    path.setFillRule(mode == WindingMode ? Qt::WindingFill : Qt::OddEvenFill);
    add(path, mode == PolylineMode ? QBrush(Qt::NoBrush) : m_now.brush);
  }

  void drawLines(const QLineF* lines, int count) override {
    for (int k = 0; k < count; ++k) {
      const QPointF ends[] = {lines[k].p1(), lines[k].p2()};
      add(polygonPath(ends, 2, false), Qt::NoBrush);
    }
  }

  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    Sketch::Stroke stroke = m_now;
    stroke.kind = Sketch::Stroke::Kind::Text;
    stroke.text = item.text();
    stroke.at = at;
    stroke.width = item.width();
    stroke.font = item.font();
    // The device's 96 dpi make the pixels; a resolved size of the font's own would follow the next device.
    const double pixels =
        item.font().pixelSize() > 0 ? item.font().pixelSize() : item.font().pointSizeF() * 96 / 72;
    stroke.font.setPixelSize(static_cast<int>(std::lround(pixels * finer)));
    stroke.font.setHintingPreference(QFont::PreferNoHinting);
    m_strokes.push_back(std::move(stroke));
  }

  void drawPixmap(const QRectF& target, const QPixmap& pixmap, const QRectF& source) override {
    drawImage(target, pixmap.toImage(), source, Qt::AutoColor);
  }

  void drawImage(const QRectF& target, const QImage& image, const QRectF& source,
                 Qt::ImageConversionFlags) override {
    Sketch::Stroke stroke = m_now;
    stroke.kind = Sketch::Stroke::Kind::Image;
    stroke.target = target;
    stroke.image = image.copy(source.toAlignedRect());
    m_strokes.push_back(std::move(stroke));
  }

 private:
  void add(const QPainterPath& path, const QBrush& brush) {
    if (m_now.pen.style() == Qt::NoPen && brush.style() == Qt::NoBrush) return;
    Sketch::Stroke stroke = m_now;
    stroke.path = path;
    stroke.brush = brush;
    m_strokes.push_back(std::move(stroke));
  }

  void clip(const QPainterPath& path, const QPaintEngineState& state) {
    if (state.clipOperation() == Qt::NoClip) return m_now.clip.reset();
    QPainterPath mapped = state.transform().map(path);
    if (state.clipOperation() == Qt::IntersectClip && m_now.clip) mapped = m_now.clip->intersected(mapped);
    m_now.clip = std::make_shared<const QPainterPath>(std::move(mapped));
  }

  std::vector<Sketch::Stroke>& m_strokes;
  Sketch::Stroke m_now;
};

class SketchDevice : public QPaintDevice {
 public:
  SketchDevice(QSizeF size, std::vector<Sketch::Stroke>& strokes) : m_size(size), m_engine(strokes) {}
  QPaintEngine* paintEngine() const override { return &m_engine; }

 protected:
  int metric(PaintDeviceMetric which) const override {
    switch (which) {
      case PdmWidth:
        return static_cast<int>(std::ceil(m_size.width()));
      case PdmHeight:
        return static_cast<int>(std::ceil(m_size.height()));
      case PdmWidthMM:
        return static_cast<int>(m_size.width() * 25.4 / 96);
      case PdmHeightMM:
        return static_cast<int>(m_size.height() * 25.4 / 96);
      case PdmDpiX:
      case PdmDpiY:
      case PdmPhysicalDpiX:
      case PdmPhysicalDpiY:
        return 96;
      case PdmDepth:
        return 32;
      case PdmDevicePixelRatio:
        return 1;
      case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
      default:
        return QPaintDevice::metric(which);
    }
  }

 private:
  QSizeF m_size;
  mutable SketchEngine m_engine;  // a device hands its engine out although it is const
};

void drawText(QPainter& painter, const Sketch::Stroke& stroke) {
  painter.translate(stroke.at);
  painter.scale(1.0 / finer, 1.0 / finer);
  const double natural = QFontMetricsF(stroke.font).horizontalAdvance(stroke.text);
  // Letters on the grid of a screen are a little wider or narrower than on paper: what was placed stays
  // placed.
  if (natural > 0 && stroke.width > 0) painter.scale(stroke.width * finer / natural, 1);
  painter.setFont(stroke.font);
  painter.drawText(QPointF(0, 0), stroke.text);
}

}  // namespace

std::shared_ptr<const Sketch> Sketch::of(QSizeF size, const std::function<void(QPainter&)>& draw) {
  auto sketch = std::make_shared<Sketch>();
  sketch->m_size = size;
  SketchDevice device(size, sketch->m_strokes);
  QPainter painter(&device);
  draw(painter);
  painter.end();
  return sketch;
}

void Sketch::draw(QPainter& painter, const QRectF& room) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(room.topLeft());
  painter.scale(room.width() / m_size.width(), room.height() / m_size.height());
  painter.setClipRect(QRectF(QPointF(0, 0), m_size), Qt::IntersectClip);
  for (const Stroke& stroke : m_strokes) {
    painter.save();
    if (stroke.clip) painter.setClipPath(*stroke.clip, Qt::IntersectClip);
    painter.setOpacity(stroke.opacity);
    painter.setTransform(stroke.transform, true);
    painter.setPen(stroke.pen);
    painter.setBrush(stroke.brush);
    if (stroke.kind == Stroke::Kind::Text)
      drawText(painter, stroke);
    else if (stroke.kind == Stroke::Kind::Image)
      painter.drawImage(stroke.target, stroke.image);
    else
      painter.drawPath(stroke.path);
    painter.restore();
  }
  painter.restore();
}

}  // namespace ui
