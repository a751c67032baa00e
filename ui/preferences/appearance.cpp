// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/appearance.h"

#include <QApplication>
#include <QHeaderView>
#include <QPointer>
#include <QTimer>
#include <QWidget>
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "ui/preferences/desktop_wishes.h"
#include "ui/preferences/preferences.h"
#include "ui/theme.h"

namespace ui {
namespace {

constexpr int textStep_percent = 10;

/// What the program has set last, since there is one application.
struct Shown {
  QFont desktopFont;
  int textPercent = Preferences::usualTextPercent;
  bool ownPalette = false;
};

Shown& shown() {
  static Shown now{QApplication::font()};
  return now;
}

QFont times(QFont font, double factor) {
  if (font.pointSizeF() > 0)
    font.setPointSizeF(font.pointSizeF() * factor);
  else
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(font.pixelSize() * factor))));
  return font;
}

bool hasOwnSize(const QWidget& widget) {
  return widget.testAttribute(Qt::WA_SetFont) && (widget.font().resolveMask() & QFont::SizeResolved) != 0;
}

/// What of a widget was chosen for a size of text, and does not follow the application's font by itself.
struct SizedForText {
  QPointer<QWidget> widget;
  std::optional<QFont> ownFont;
  QSize most, least;
};

int scaledMost(int px, double factor) {
  return px >= QWIDGETSIZE_MAX ? px : static_cast<int>(std::lround(px * factor));
}

/// Where the widget has not worked it out anew by itself when the font changed.
void scale(const SizedForText& before, double factor) {
  QWidget& widget = *before.widget;
  if (before.ownFont && hasOwnSize(widget)) {
    const QFont now = widget.font();
    if (now.pointSizeF() == before.ownFont->pointSizeF() && now.pixelSize() == before.ownFont->pixelSize())
      widget.setFont(times(now, factor));
  }
  if (widget.maximumSize() != before.most || widget.minimumSize() != before.least) return;
  const QSize most(scaledMost(before.most.width(), factor), scaledMost(before.most.height(), factor));
  widget.setMaximumSize(most);
  if (before.least.width() == before.most.width()) widget.setMinimumWidth(most.width());
  if (before.least.height() == before.most.height()) widget.setMinimumHeight(most.height());
}

/// Columns keep what they were given, by the program or by the user.
void scaleColumns(QHeaderView& head, double factor) {
  for (int section = 0; section < head.count(); ++section) {
    const auto mode = head.sectionResizeMode(section);
    if (mode != QHeaderView::Interactive && mode != QHeaderView::Fixed) continue;
    if (!head.isSectionHidden(section) && !(head.stretchLastSection() && section == head.count() - 1))
      head.resizeSection(section, static_cast<int>(std::lround(head.sectionSize(section) * factor)));
  }
}

/// Widgets follow the application's font by themselves, but for those that were given a size of their own;
/// some of these work it out anew from the font around them.
void showText(int percent) {
  if (percent == shown().textPercent) return;
  const double factor = double(percent) / shown().textPercent;
  std::vector<SizedForText> sized;
  const QSize any(QWIDGETSIZE_MAX, QWIDGETSIZE_MAX);
  for (QWidget* widget : QApplication::allWidgets())
    if (hasOwnSize(*widget) || (widget->maximumSize() != any && !widget->isWindow()))
      sized.push_back({widget, hasOwnSize(*widget) ? std::optional(widget->font()) : std::nullopt,
                       widget->maximumSize(), widget->minimumSize()});
  shown().textPercent = percent;
  const QFont& plain = shown().desktopFont;
  QApplication::setFont(percent == Preferences::usualTextPercent ? plain : times(plain, percent / 100.0));
  for (const SizedForText& one : sized)
    if (one.widget) scale(one, factor);
  for (QWidget* widget : QApplication::allWidgets())
    if (auto* head = qobject_cast<QHeaderView*>(widget); head && head->orientation() == Qt::Horizontal)
      scaleColumns(*head, factor);
}

void setOwnPalette(const QPalette& palette) {
  shown().ownPalette = true;
  if (QApplication::palette() != palette) QApplication::setPalette(palette);
}

/// The desktop's own palette, unless it contradicts what the desktop asks for.
void showDesktopColours() {
  using Scheme = DesktopWishes::Scheme;
  if (std::exchange(shown().ownPalette, false)) QApplication::setPalette(QPalette());
  const Scheme wish = DesktopWishes::instance().scheme();
  const bool dark = isDark(QApplication::palette());
  if (wish == Scheme::Dark && !dark) setOwnPalette(darkPalette());
  if (wish == Scheme::Light && dark) setOwnPalette(lightPalette());
}

void showColours(Preferences::Colours colours) {
  switch (colours) {
    case Preferences::Colours::System:
      return showDesktopColours();
    case Preferences::Colours::Light:
      return setOwnPalette(lightPalette());
    case Preferences::Colours::Dark:
      return setOwnPalette(darkPalette());
  }
}

}  // namespace

Appearance::Appearance(QObject* parent) : QObject(parent) {
  shown();  // the desktop's font, before it is changed
  follow();
  connect(&PreferencesSignal::instance(), &PreferencesSignal::preferencesChanged, this, &Appearance::follow);
  DesktopWishes& wishes = DesktopWishes::instance();
  connect(&wishes, &DesktopWishes::changed, this, [] {
    // What is as usual may now be another: whoever asked must ask again.
    emit PreferencesSignal::instance().preferencesChanged();
  });
  // Once the window is there: the bus may take its time.
  QTimer::singleShot(0, &wishes, &DesktopWishes::ask);
}

void Appearance::follow() {
  const Preferences wanted = preferences();
  showColours(wanted.colours);
  showText(wanted.textPercent);
}

double textScale() { return shown().textPercent / 100.0; }

int atTextSize(int px) { return static_cast<int>(std::lround(px * textScale())); }

void stepTextSize(int direction) {
  Preferences wanted = preferences();
  const int steps = wanted.textPercent / textStep_percent + direction;
  wanted.textPercent = direction == 0 ? Preferences::usualTextPercent : steps * textStep_percent;
  setPreferences(wanted);
}

}  // namespace ui
