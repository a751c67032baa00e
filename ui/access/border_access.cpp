// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/access/border_access.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QSplitter>
#include <algorithm>
#include <optional>

namespace ui {
namespace {

constexpr int keyStep_px = 16;
constexpr int allTheWay_px = 100'000;

QString viewName(const QWidget* view) {
  if (!view) return {};
  if (!view->accessibleName().isEmpty()) return view->accessibleName();
  // A view with its name above has it in its first label; one that holds several has the first of theirs.
  for (const QLabel* label : view->findChildren<QLabel*>())
    if (label->isVisibleTo(view) && !label->text().isEmpty() && label->parentWidget()->isVisibleTo(view))
      return label->text();
  return {};
}

/// Counted as the splitter does: handle k stands before widget k, that of widget 0 is never seen.
int placeOf(const QSplitterHandle* border) {
  return border->splitter()->indexOf(const_cast<QSplitterHandle*>(border));
}

int sizeBefore(const QSplitterHandle* border) {
  const QList<int> sizes = border->splitter()->sizes();
  const int place = placeOf(border);
  return place > 0 && place <= sizes.size() ? sizes[place - 1] : 0;
}

void moveBy(QSplitterHandle* border, int pixels) {
  QSplitter* splitter = border->splitter();
  QList<int> sizes = splitter->sizes();
  const int after = placeOf(border);
  if (after < 1) return;
  // Neighbours that are hidden have no size to give.
  int before = after - 1;
  while (before > 0 && !splitter->widget(before)->isVisibleTo(splitter)) --before;
  const bool upright = splitter->orientation() == Qt::Vertical;
  const auto least = [&](int view) {
    const QWidget* widget = splitter->widget(view);
    const QSize hint = widget->minimumSizeHint().expandedTo(widget->minimumSize());
    return upright ? hint.height() : hint.width();
  };
  const int fewest = std::min(0, least(before) - sizes[before]);
  const int most = std::max(0, sizes[after] - least(after));
  const int moved = std::clamp(pixels, fewest, most);
  sizes[before] += moved;
  sizes[after] -= moved;
  splitter->setSizes(sizes);
}

/// How far a key moves a border, in pixels; none for keys that do not.
std::optional<int> movedBy(int key, Qt::Orientation views) {
  const bool upright = views == Qt::Vertical;
  if (key == Qt::Key_Home) return -allTheWay_px;
  if (key == Qt::Key_End) return allTheWay_px;
  if (key == (upright ? Qt::Key_Up : Qt::Key_Left)) return -keyStep_px;
  if (key == (upright ? Qt::Key_Down : Qt::Key_Right)) return keyStep_px;
  return std::nullopt;
}

/// Of one border, which owns it.
class BorderKeys : public QObject {
 public:
  explicit BorderKeys(QSplitterHandle* border) : QObject(border) {
    border->setFocusPolicy(Qt::TabFocus);
    border->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() != QEvent::KeyPress) return false;
    auto* border = static_cast<QSplitterHandle*>(watched);
    const auto pixels = movedBy(static_cast<QKeyEvent*>(event)->key(), border->splitter()->orientation());
    if (!pixels) return false;
    moveBy(border, *pixels);
    QAccessibleValueChangeEvent told(border, sizeBefore(border));
    QAccessible::updateAccessibility(&told);
    return true;
  }
};

}  // namespace

BorderAccess::BorderAccess(QSplitterHandle* border) : QAccessibleWidget(border, QAccessible::Separator) {}

QSplitterHandle* BorderAccess::border() const { return static_cast<QSplitterHandle*>(widget()); }

QString BorderAccess::text(QAccessible::Text what) const {
  const QSplitter* splitter = border()->splitter();
  const int place = placeOf(border());
  if (what != QAccessible::Name || place < 1) return QAccessibleWidget::text(what);
  const QString before = viewName(splitter->widget(place - 1)), after = viewName(splitter->widget(place));
  return QCoreApplication::translate("Access", "Border between %1 and %2").arg(before, after);
}

void* BorderAccess::interface_cast(QAccessible::InterfaceType type) {
  if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
  return QAccessibleWidget::interface_cast(type);
}

QVariant BorderAccess::currentValue() const { return sizeBefore(border()); }

void BorderAccess::setCurrentValue(const QVariant& value) {
  moveBy(border(), value.toInt() - sizeBefore(border()));
}

QVariant BorderAccess::maximumValue() const {
  const QSplitter* splitter = border()->splitter();
  return splitter->orientation() == Qt::Vertical ? splitter->height() : splitter->width();
}

void giveKeys(QSplitterHandle* border) {
  constexpr auto name = "borderKeys";
  if (border->findChild<QObject*>(name, Qt::FindDirectChildrenOnly)) return;
  (new BorderKeys(border))->setObjectName(name);
}

}  // namespace ui
