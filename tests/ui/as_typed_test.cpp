// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/as_typed.h"

#include <gtest/gtest.h>

#include <QTextDocument>

#include "tests/support/printing.h"

namespace ui {
namespace {

/// What a tip makes of a text, which it takes for markup or not.
QString shownInATip(const QString& text) {
  if (!Qt::mightBeRichText(text)) return text;
  QTextDocument document;
  document.setHtml(text);
  return document.toPlainText();
}

TEST(AsTyped, ATipShowsAnyTextAsItStands) {
  for (const char* text : {"TP-01", "R&D \"new\" 'x'", "<b>TP-01</b>", "a < b & c > d", "&lt;b&gt; &amp;",
                           "first\nsecond <img src=x>", "<img src=\"x\">\nsecond", "100 % [*] %1 %2"})
    EXPECT_EQ(shownInATip(asTyped(text)), QString(text));
  EXPECT_EQ(asTyped(""), "");
}

// What was done before: such a text has no tag in it, and its escapes showed.
TEST(AsTyped, EscapingAloneWouldNotDo) { EXPECT_EQ(shownInATip(QString("R&D").toHtmlEscaped()), "R&amp;D"); }

}  // namespace
}  // namespace ui
