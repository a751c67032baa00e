// SPDX-License-Identifier: GPL-3.0-or-later
// How the drawing is shown, and how it leaves the window.
#include "ui/bridge/bridge_export.h"

#include <QApplication>
#include <QClipboard>
#include <QMouseEvent>
#include <QPrinter>
#include <QSignalSpy>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include "tests/ui/bridge_shown.h"
#include "ui/safe_file.h"

namespace {

using sample::fullBridge;
using Shown = sample::ShownBridge;

QByteArray read(const QString& path) {
  const auto bytes = ui::loadBytes(path, 50'000'000);
  EXPECT_TRUE(bytes);
  return bytes ? *bytes : QByteArray();
}

/// All letters of an SVG picture, each text on its own.
QStringList textsOf(const QByteArray& svg) {
  QStringList texts;
  QXmlStreamReader xml(svg);
  while (!xml.atEnd()) {
    xml.readNext();
    if (xml.isCharacters() && !xml.isWhitespace()) texts << xml.text().toString().trimmed();
  }
  EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
  return texts;
}

TEST(BridgeExport, SvgIsWellFormedAndSaysWhatItIs) {
  core::Channel channel = *fullBridge().channels[0];
  channel.name = "<b>&TP";
  Shown shown(channel);
  shown.session.selectStep(1);
  const QByteArray svg = ui::pictureSvg(ui::bridgeDrawing(shown.session, {}));
  EXPECT_TRUE(QSvgRenderer(svg).isValid());
  const QString all = textsOf(svg).join('\n');
  for (const char* words : {"<b>&TP", "Full bridge, bending", "Step 2", "negative"})
    EXPECT_TRUE(all.contains(words)) << words;
}

TEST(BridgeExport, WritesWhatTheEndingSays) {
  Shown shown(fullBridge());
  const QTemporaryDir folder;
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused), said(&shown.view, &ui::BridgeView::said);
  // The first bytes of each format by its standard (PNG: ISO/IEC 15948; PDF: ISO 32000, from memory).
  EXPECT_TRUE(shown.view.exportTo(folder.filePath("a.png")));
  EXPECT_TRUE(read(folder.filePath("a.png")).startsWith("\x89PNG\r\n\x1a\n"));
  EXPECT_TRUE(shown.view.exportTo(folder.filePath("a.pdf")));
  EXPECT_TRUE(read(folder.filePath("a.pdf")).startsWith("%PDF-"));
  EXPECT_TRUE(shown.view.exportTo(folder.filePath("a.svg")));
  EXPECT_EQ(said.count(), 3);
  EXPECT_FALSE(shown.view.exportTo(folder.filePath("a.bmp")));
  EXPECT_FALSE(shown.view.exportTo(folder.filePath("missing/a.svg")));
  EXPECT_EQ(refused.count(), 2);
}

TEST(BridgeExport, PictureIsLightAndCopiedInADarkWindow) {
  Shown shown(fullBridge());
  shown.view.setPalette(ui::darkPalette());
  shown.view.copyPicture();
  const QImage image = QApplication::clipboard()->image();
  ASSERT_FALSE(image.isNull());
  EXPECT_EQ(image.pixelColor(0, 0), QColor(Qt::white));
  int ink = 0;
  for (int y = 0; y < image.height(); y += 4)
    for (int x = 0; x < image.width(); x += 4) ink += image.pixelColor(x, y).lightness() < 128;
  EXPECT_GT(ink, 200);
}

TEST(BridgeExport, PrintsOnePage) {
  Shown shown(fullBridge());
  const QTemporaryDir folder;
  QPrinter printer;
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(folder.filePath("bridge.pdf"));
  EXPECT_TRUE(ui::printPicture(printer, ui::bridgeDrawing(shown.session, {})));
  const QByteArray pdf = read(folder.filePath("bridge.pdf"));
  EXPECT_EQ(pdf.count("/Type /Page\n"), 1);
}

TEST(BridgeExport, NameIsFitForAFile) {
  core::Channel channel = *fullBridge().channels[0];
  channel.name = "a/b c";
  Shown shown(channel);
  shown.session.selectStep(2);
  EXPECT_EQ(ui::suggestedBridgeName(shown.session), "a_b_c-bridge-step-3");
}

TEST(BridgeExport, WithoutAChannelThereIsNothingToShare) {
  Shown shown(core::Document{});
  QSignalSpy refused(&shown.view, &ui::BridgeView::refused);
  shown.view.copyPicture();
  EXPECT_FALSE(shown.view.exportTo("a.svg"));
  shown.view.print();
  shown.view.editSelected();
  shown.view.removeSelected();
  shown.view.duplicateSelected();
  shown.view.alignSelected();
  shown.view.selectAll();
  EXPECT_EQ(refused.count(), 8);
}

// ---- how it is shown -------------------------------------------------------------------------

TEST(BridgeLook, IsRememberedForTheNextTime) {
  Shown shown(fullBridge());
  for (const auto& [name, look] :
       {std::pair("symbolsIeee", ui::BridgeLook{ui::Symbols::Ieee315, ui::FlowStyle::Width}),
        std::pair("currentsDots", ui::BridgeLook{ui::Symbols::Ieee315, ui::FlowStyle::Dots}),
        std::pair("currentsOff", ui::BridgeLook{ui::Symbols::Ieee315, ui::FlowStyle::Off}),
        std::pair("symbolsIec", ui::BridgeLook{ui::Symbols::Iec60617, ui::FlowStyle::Off}),
        std::pair("currentsWidth", ui::BridgeLook{})}) {
    shown.action(name)->trigger();
    EXPECT_EQ(shown.view.look(), look) << name;
    EXPECT_EQ(shown.view.picture()->symbols, look.symbols) << name;
    EXPECT_EQ(ui::rememberedBridgeLook(), look) << name;
    EXPECT_TRUE(shown.action(name)->isChecked()) << name;
  }
}

TEST(BridgeLook, CurrentsAreSeenOnlyWhenTheyAreWanted) {
  Shown shown(fullBridge());
  shown.session.selectStep(1);
  shown.view.setLook({ui::Symbols::Iec60617, ui::FlowStyle::Off});
  const QImage off = shown.view.grab().toImage();
  shown.view.setLook({ui::Symbols::Iec60617, ui::FlowStyle::Width});
  EXPECT_NE(shown.view.grab().toImage(), off);
}

TEST(BridgeLook, ZoomedDrawingIsMovedByDragMiddleButtonAndKeys) {
  Shown shown(fullBridge());
  for (int k = 0; k < 6; ++k) shown.key(Qt::Key_Plus);
  const QPointF node = shown.view.picture()->layout[core::Node::Arm1Begin].at;
  const auto moved = [&](const std::function<void()>& act) {
    const QPointF before = shown.view.toWidget(node);
    act();
    return shown.view.toWidget(node) - before;
  };
  EXPECT_EQ(moved([&] { shown.key(Qt::Key_Left, Qt::ControlModifier); }), QPointF(40, 0));
  EXPECT_EQ(moved([&] { shown.key(Qt::Key_Down, Qt::ControlModifier); }), QPointF(0, -40));
  const QPointF byMiddle = moved([&] {
    QTest::mousePress(&shown.view, Qt::MiddleButton, {}, {200, 200});
    QMouseEvent move(QEvent::MouseMove, QPointF(230, 180), shown.view.mapToGlobal(QPointF(230, 180)),
                     Qt::NoButton, Qt::MiddleButton, {});
    QApplication::sendEvent(&shown.view, &move);
    QTest::mouseRelease(&shown.view, Qt::MiddleButton, {}, {230, 180});
  });
  EXPECT_EQ(byMiddle, QPointF(30, -20));
  shown.key(Qt::Key_0);
  // In the whole drawing there is nothing to move.
  EXPECT_EQ(moved([&] { shown.key(Qt::Key_Left, Qt::ControlModifier); }), QPointF(0, 0));
}

TEST(BridgeLook, MenuOfTheWindowGetsEverythingWithItsKeys) {
  Shown shown(fullBridge());
  QMenu menu;
  shown.view.fillMenu(&menu);
  QStringList names;
  std::set<QKeySequence> keys;
  for (const QAction* action : menu.actions()) {
    names << action->objectName();
    for (const QKeySequence& key : action->shortcuts())
      EXPECT_TRUE(keys.insert(key).second) << qPrintable(key.toString()) << " is there twice";
  }
  for (const char* name : {"bridgeEdit", "bridgeRemove", "bridgeDuplicate", "bridgeAlign", "bridgeExport",
                           "bridgePrint", "bridgeCopyPicture", "bridgeFit"})
    EXPECT_TRUE(names.contains(name)) << name;
}

}  // namespace
