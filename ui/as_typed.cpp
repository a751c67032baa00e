// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/as_typed.h"

#include <QRegularExpression>

namespace ui {

QString asTyped(const QString& text) {
  static const QRegularExpression markup("[<&\n]");
  if (!text.contains(markup)) return text;
  return "<span>" + text.toHtmlEscaped().replace('\n', "<br>") + "</span>";
}

}  // namespace ui
