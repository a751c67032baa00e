// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame_style.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QButtonGroup>
#include <QPainter>
#include <QSplitter>
#include <QStyleOption>

#include "ui/access/border_access.h"
#include "ui/access/focus_ring.h"
#include "ui/preferences/preferences.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr double cornerRadius_px = 2;

/// Whether what the element draws is told from its surroundings by a frame. What cannot be worked with now
/// needs none.
bool needsFrame(QStyle::PrimitiveElement element, const QStyleOption& option) {
  if (!(option.state & QStyle::State_Enabled)) return false;
  switch (element) {
    case QStyle::PE_IndicatorCheckBox:
    case QStyle::PE_IndicatorItemViewItemCheck:
    case QStyle::PE_IndicatorRadioButton:
    case QStyle::PE_FrameLineEdit:
    case QStyle::PE_PanelButtonCommand:
      return true;
    case QStyle::PE_PanelButtonTool:
      return option.state & (QStyle::State_Raised | QStyle::State_On);
    default:
      return false;
  }
}

void drawFrame(QPainter* painter, const QStyleOption& option, bool round) {
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing, round);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(coloursFor(option.palette).frame);
  const QRect frame = option.rect.adjusted(0, 0, -1, -1);
  round ? painter->drawEllipse(frame) : painter->drawRoundedRect(frame, cornerRadius_px, cornerRadius_px);
  painter->restore();
}

/// Around a cell that has the keyboard: over the colour of chosen cells the usual ring would drown.
void drawCellRing(QPainter* painter, const QStyleOption& option) {
  const bool chosen = option.state & QStyle::State_Selected;
  painter->save();
  painter->setBrush(Qt::NoBrush);
  QPen pen(chosen ? option.palette.color(QPalette::HighlightedText) : coloursFor(option.palette).selected, 2);
  pen.setJoinStyle(Qt::MiterJoin);
  painter->setPen(pen);
  painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
  painter->restore();
}

}  // namespace

void FrameStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
  if (element == PE_FrameFocusRect && qobject_cast<const QAbstractItemView*>(widget))
    return drawCellRing(painter, *option);
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  if (needsFrame(element, *option)) drawFrame(painter, *option, element == PE_IndicatorRadioButton);
}

void FrameStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawComplexControl(control, option, painter, widget);
  if (control == CC_SpinBox && option->state & State_Enabled) drawFrame(painter, *option, false);
}

int FrameStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  const bool scrolls = qobject_cast<const QAbstractScrollArea*>(widget) != nullptr;
  if (metric == PM_DefaultFrameWidth && scrolls) return FocusRing::thickness_px;
  return QProxyStyle::pixelMetric(metric, option, widget);
}

/// Where nothing is to move by itself, the style moves nothing either.
int FrameStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* more) const {
  if (hint == SH_Widget_Animation_Duration && preferences().lessMotion) return 0;
  return QProxyStyle::styleHint(hint, option, widget, more);
}

void FrameStyle::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (auto* border = qobject_cast<QSplitterHandle*>(widget)) giveKeys(border);
  // Tab would go round the cells forever; arrows walk them, and Tab in a cell that is typed in goes to the
  // next.
  if (auto* view = qobject_cast<QAbstractItemView*>(widget)) view->setTabKeyNavigation(false);
  // One of a group of which one is chosen: to assistive tools a radio button, which a box to tick is not.
  auto* button = qobject_cast<QAbstractButton*>(widget);
  if (button && button->isCheckable() && button->group() && button->group()->exclusive())
    button->setAutoExclusive(true);
}

}  // namespace ui
