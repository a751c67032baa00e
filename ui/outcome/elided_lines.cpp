// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/elided_lines.h"

#include <QFontMetrics>
#include <QTextLayout>

namespace ui {

QString elidedToLines(const QString& text, const QFont& font, int width, int lines) {
  QTextLayout layout(text, font);
  QTextOption wrap;
  wrap.setWrapMode(QTextOption::WordWrap);
  layout.setTextOption(wrap);
  QString shown;
  layout.beginLayout();
  for (int k = 0; k < lines; ++k) {
    QTextLine line = layout.createLine();
    if (!line.isValid()) {
      layout.endLayout();
      return text;
    }
    line.setLineWidth(width);
    const QString rest = text.mid(line.textStart());
    // A label would wrap a line that is a hair too long, so the break is written.
    shown += k + 1 == lines ? QFontMetrics(font).elidedText(rest, Qt::ElideRight, width - 2)
                            : rest.left(line.textLength()).trimmed() + '\n';
  }
  layout.endLayout();
  return shown;
}

}  // namespace ui
