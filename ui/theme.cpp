// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme.h"

#include <QCoreApplication>

namespace ui {
namespace {

QPalette paletteFrom(QColor window, QColor base, QColor alternate, QColor button, QColor text, QColor quiet,
                     QColor highlight) {
  QPalette palette(button, window);
  palette.setColor(QPalette::Base, base);
  palette.setColor(QPalette::AlternateBase, alternate);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
    palette.setColor(role, text);
  palette.setColor(QPalette::ToolTipBase, base);
  palette.setColor(QPalette::PlaceholderText, quiet);
  palette.setColor(QPalette::Highlight, highlight);
  palette.setColor(QPalette::HighlightedText, Qt::white);
  const bool dark = window.lightness() < text.lightness();
  palette.setColor(QPalette::Link, dark ? highlight.lighter(150) : highlight);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, quiet);
  return palette;
}

}  // namespace

bool isDark(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

Colours coloursFor(const QPalette& palette) {
  Colours c;
  c.dark = isDark(palette);
  const auto pick = [&](const char* light, const char* dark) { return QColor(c.dark ? dark : light); };
  c.background = palette.color(QPalette::Base);
  c.text = palette.color(QPalette::Text);
  c.quiet = pick("#5b6470", "#a3adb8");
  c.grid = pick("#d9dde2", "#3c444d");
  c.frame = pick("#7c838d", "#7b8794");
  c.positive = pick("#0072b2", "#56b4e9");
  c.negative = pick("#9c3b7a", "#e59bc4");
  c.pass = pick("#00704f", "#35c79a");
  c.fail = pick("#b84600", "#ff8f52");
  c.cannotTell = pick("#8a6100", "#e6b450");
  c.notJudged = c.quiet;
  c.measured = pick("#0072b2", "#56b4e9");
  c.compared = pick("#8a6100", "#e6b450");
  c.fitted = pick("#3d4752", "#c3ccd6");
  c.band = pick("#00966d", "#35c79a");
  c.selected = pick("#c26a00", "#ffb347");
  return c;
}

QColor colourOf(const Colours& colours, core::Verdict verdict) {
  switch (verdict) {
    case core::Verdict::Pass:
      return colours.pass;
    case core::Verdict::Fail:
      return colours.fail;
    case core::Verdict::CannotTell:
      return colours.cannotTell;
    case core::Verdict::NotJudged:
      return colours.notJudged;
  }
  return colours.text;
}

QColor colourOf(const Colours& colours, core::Polarity polarity) {
  switch (polarity) {
    case core::Polarity::Positive:
      return colours.positive;
    case core::Polarity::Negative:
      return colours.negative;
    case core::Polarity::None:
      return colours.quiet;
  }
  return colours.text;
}

QString polarityText(core::Polarity polarity) {
  switch (polarity) {
    case core::Polarity::Positive:
      return QCoreApplication::translate("Polarity", "+ positive");
    case core::Polarity::Negative:
      return QCoreApplication::translate("Polarity", "− negative");
    case core::Polarity::None:
      return QCoreApplication::translate("Polarity", "none");
  }
  return {};
}

QPalette lightPalette() {
  return paletteFrom("#eef0f2", "#ffffff", "#f5f7f9", "#e4e7ea", "#14191f", "#5b6470", "#00649c");
}

QPalette darkPalette() {
  return paletteFrom("#22272e", "#1a1e24", "#20252c", "#2d343d", "#e8ecf1", "#a3adb8", "#2377ab");
}

QString toText(const core::Error& error) { return QString::fromStdString(error.text()); }

QString toQString(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

core::Date toDate(const QDate& day) { return std::chrono::year(day.year()) / day.month() / day.day(); }

}  // namespace ui
