// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/polarity/polarity_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <cmath>

#include "core/polarity/place_words.h"
#include "tests/support/bridges.h"
#include "ui/polarity/polarity_model.h"
#include "ui/polarity/polarity_picture.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace polarity_panel_test {

using core::Node;
using sample::channelOf;
using sample::fullBridge;
using sample::withShunt;

struct Shown {
  ui::Session session;
  ui::PolarityPanel panel;
  QSignalSpy said{&panel, &ui::PolarityPanel::said}, refused{&panel, &ui::PolarityPanel::refused};

  explicit Shown(core::Document document, QSize size = {1000, 600})
      : session(std::move(document)), panel(session) {
    panel.resize(size);
    panel.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }

  const core::Bridge& bridge() { return session.channel()->setup.bridge; }
  const core::Shunt& shunt(std::size_t index) { return session.channel()->setup.shunts[index]; }
  QTableView& table() { return *panel.findChild<QTableView*>("polarityTable"); }
  ui::PolarityPicture& picture() { return *panel.findChild<ui::PolarityPicture*>("polarityPicture"); }
  QComboBox& shunts() { return *panel.findChild<QComboBox*>("polarityShunt"); }
  ui::QuantityEdit& ohm() { return *panel.findChild<ui::QuantityEdit*>("polarityOhm"); }
  QToolButton& button(const char* name) { return *panel.findChild<QToolButton*>(name); }
  void show(ui::PolarityQuantity quantity) {
    auto* box = panel.findChild<QComboBox*>("polarityQuantity");
    box->setCurrentIndex(static_cast<int>(quantity));
    emit box->activated(static_cast<int>(quantity));
  }
  core::Polarity colour(Node a, Node b) {
    return static_cast<core::Polarity>(cell(a, b).data(ui::PolarityModel::PolarityRole).toInt());
  }
  QString sentence() { return panel.findChild<QLabel*>("polaritySentence")->text(); }

  std::size_t point(Node node) {
    const auto& points = panel.shown().map.points;
    const auto found = std::find(points.begin(), points.end(), core::pointOf(bridge(), node));
    EXPECT_NE(found, points.end());
    return static_cast<std::size_t>(found - points.begin());
  }
  QModelIndex cell(Node a, Node b) {
    return table().model()->index(static_cast<int>(point(a)), static_cast<int>(point(b)));
  }
  QString text(Node a, Node b) { return cell(a, b).data().toString(); }
  void click(Node a, Node b) {
    table().scrollTo(cell(a, b));
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, table().visualRect(cell(a, b)).center());
  }
  void type(const QString& text) {
    ohm().setFocus();
    ohm().selectAll();
    QTest::keyClicks(&ohm(), text);
    QTest::keyClick(&ohm(), Qt::Key_Return);
  }
  QPoint spot(Node node) { return picture().layoutNow().spots[point(node)].at.toPoint(); }
  std::optional<QPoint> chip(Node a, Node b) {
    for (const ui::PolarityChip& chip : picture().chipsNow())
      if ((chip.pair.i == point(a) && chip.pair.j == point(b)) ||
          (chip.pair.i == point(b) && chip.pair.j == point(a)))
        return chip.box.center().toPoint();
    return std::nullopt;
  }
};

TEST(PolarityPanel, TableHoldsEveryPairOnBothSides) {
  Shown shown(fullBridge());
  const auto& model = *shown.table().model();
  ASSERT_EQ(model.rowCount(), 8) << "four terminals, four corners";
  ASSERT_EQ(model.columnCount(), 8);
  for (int row = 0; row < 8; ++row)
    for (int column = 0; column < 8; ++column) {
      const QModelIndex index = model.index(row, column);
      EXPECT_EQ(bool(index.flags() & Qt::ItemIsSelectable), row != column);
      EXPECT_EQ(index.data().toString(), model.index(column, row).data().toString());
      EXPECT_EQ(index.data().toString().isEmpty(), row == column);
    }
  EXPECT_EQ(model.headerData(0, Qt::Vertical).toString(), "P+");
}

TEST(PolarityPanel, ArmsHaveTheSignsOfTheTrade) {
  // TN-514: over arms 1 and 3 a shunt reads as compression, over 2 and 4 as tension. Derived size: R/(4 Rs +
  // 2 R) = 350 / 699300 = 0.5005 mV/V, F = 2, full bridge: 250.25 um/m; the leads of 2 ohm take 4/354 of the
  // output.
  Shown shown(fullBridge());
  shown.show(ui::PolarityQuantity::Simulated);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const QString text = shown.text(core::armBegin(arm), core::armEnd(arm));
    EXPECT_TRUE(text.startsWith(arm % 2 == 0 ? QChar(0x2212) : QChar('+'))) << qPrintable(text);
    EXPECT_NEAR(text.mid(1).toDouble(), 250.25, 0.25) << "four digits, leads in second order";
  }
  EXPECT_EQ(shown.text(Node::PPlus, Node::PMinus), "0") << "the source holds the excitation";
}

TEST(PolarityPanel, ClickOnACellMovesTheShuntInOneStep) {
  Shown shown(fullBridge());
  const core::Document before = shown.session.document();

  shown.click(Node::Arm2Begin, Node::Arm2End);

  EXPECT_EQ(shown.shunt(0).a, Node::Arm2Begin);
  EXPECT_EQ(shown.shunt(0).b, Node::Arm2End);
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_EQ(shown.session.history().undoText(), "Move shunt");
  ASSERT_EQ(shown.said.count(), 1);
  EXPECT_TRUE(shown.said.front().front().toString().contains("over arm 2"));
  EXPECT_TRUE(shown.said.front().front().toString().contains("positive"));
  ASSERT_TRUE(shown.panel.shown().present);
  EXPECT_EQ(*shown.panel.shown().present,
            shown.panel.shown().map.cellOf(shown.point(Node::Arm2Begin), shown.point(Node::Arm2End)));
  shown.session.history().undo();
  EXPECT_EQ(shown.session.document(), before);
}

TEST(PolarityPanel, ClickWhereItLiesAlreadyChangesNothing) {
  Shown shown(fullBridge());
  shown.click(Node::Arm1Begin, Node::Arm1End);
  EXPECT_EQ(shown.session.history().count(), 0);
  ASSERT_EQ(shown.said.count(), 1);
  EXPECT_TRUE(shown.said.front().front().toString().contains("already"));
}

TEST(PolarityPanel, KeysWalkTheTableAndEnterPlaces) {
  Shown shown(fullBridge());
  shown.table().setFocus();
  shown.table().setCurrentIndex(shown.cell(Node::PPlus, Node::SPlus));
  QTest::keyClick(&shown.table(), Qt::Key_Right);
  EXPECT_EQ(shown.panel.current(), (ui::PolarityPair{shown.point(Node::PPlus), shown.point(Node::SMinus)}));
  EXPECT_TRUE(shown.sentence().contains("over arm 1 from the terminals")) << qPrintable(shown.sentence());
  EXPECT_EQ(shown.session.history().count(), 0) << "looking changes nothing";
  QTest::keyClick(&shown.table(), Qt::Key_Return);
  EXPECT_EQ(shown.shunt(0).a, Node::PPlus);
  EXPECT_EQ(shown.shunt(0).b, Node::SMinus);
  EXPECT_EQ(shown.session.history().count(), 1);
}

TEST(PolarityPanel, TypedResistanceBecomesANewShunt) {
  Shown shown(fullBridge());
  const core::Document before = shown.session.document();
  shown.type("59k9");
  EXPECT_EQ(shown.session.history().count(), 0) << "typing a value edits no shunt";
  EXPECT_EQ(shown.panel.shown().map.shunt, core::Resistance(59900));

  shown.click(Node::Arm3Begin, Node::Arm3End);

  ASSERT_EQ(shown.session.channel()->setup.shunts.size(), 3u);
  EXPECT_EQ(shown.shunt(2).resistance, core::Resistance(59900));
  EXPECT_EQ(shown.shunt(2).a, Node::Arm3Begin);
  EXPECT_EQ(shown.shunt(2).b, Node::Arm3End);
  EXPECT_EQ(shown.session.history().undoText(), "Add shunt");
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_EQ(shown.shunts().currentIndex(), 2) << "a second click moves it";
  shown.session.history().undo();
  EXPECT_EQ(shown.session.document(), before);
  EXPECT_EQ(shown.panel.shown().map.shunt, core::Resistance(59900)) << "its resistance stays for the map";
}

TEST(PolarityPanel, BadResistanceIsRefusedAndTheMapStays) {
  Shown shown(fullBridge());
  const auto before = shown.panel.shown().map.shunt;
  shown.type("-5k");
  EXPECT_TRUE(shown.panel.findChild<ui::QuantityEdit*>("polarityOhm")->isRefused());
  EXPECT_TRUE(shown.refused.isEmpty()) << "told beside the field";
  EXPECT_EQ(shown.panel.shown().map.shunt, before);
}

TEST(PolarityPanel, SwappedSignalWiresTurnAllSignsInOneStep) {
  Shown shown(fullBridge());
  const core::Document before = shown.session.document();
  const QString output = shown.text(Node::Arm1Begin, Node::Arm1End);
  ASSERT_TRUE(output.startsWith(QChar(0x2212)));

  QTest::mouseClick(&shown.button("polaritySignal"), Qt::LeftButton);

  EXPECT_TRUE(shown.bridge().hookup.signalReversed);
  EXPECT_EQ(shown.text(Node::Arm1Begin, Node::Arm1End), '+' + output.mid(1));
  EXPECT_EQ(shown.session.history().count(), 1);
  // The drawing and every other view follow the same document.
  const auto& step = shown.session.evaluation()->prediction.steps[1];
  EXPECT_GT(step->output.base(), 0);
  shown.session.history().undo();
  EXPECT_EQ(shown.session.document(), before);
  EXPECT_FALSE(shown.button("polaritySignal").isChecked());
  EXPECT_EQ(shown.text(Node::Arm1Begin, Node::Arm1End), output);
}

TEST(PolarityPanel, TheColourIsThatOfTheNumberHoweverTheWiresAre) {
  Shown shown(fullBridge());
  // Swapped signal wires turn the output and, since they turn the gauges' output too, not the strain that a
  // shunt simulates. Number and colour must not part company: derived from what the page shows, no source.
  const auto agree = [&] {
    for (const std::size_t arm : {0, 1, 2, 3}) {
      const Node a = core::armBegin(arm), b = core::armEnd(arm);
      const bool positive = shown.text(a, b).startsWith('+');
      EXPECT_EQ(shown.colour(a, b), positive ? core::Polarity::Positive : core::Polarity::Negative) << arm;
      const QString told = shown.cell(a, b).data(Qt::AccessibleTextRole).toString();
      EXPECT_TRUE(told.contains(positive ? ": positive, +" : ": negative, −")) << qPrintable(told);
    }
  };
  const auto first = shown.colour(Node::Arm1Begin, Node::Arm1End);
  EXPECT_EQ(first, core::Polarity::Negative) << "the output is what the map shows at first";
  QTest::mouseClick(&shown.button("polaritySignal"), Qt::LeftButton);
  EXPECT_EQ(shown.colour(Node::Arm1Begin, Node::Arm1End), core::Polarity::Positive);
  for (const auto quantity :
       {ui::PolarityQuantity::Output, ui::PolarityQuantity::Simulated, ui::PolarityQuantity::Reading}) {
    shown.show(quantity);
    agree();
  }
  shown.show(ui::PolarityQuantity::Simulated);
  EXPECT_EQ(shown.colour(Node::Arm1Begin, Node::Arm1End), core::Polarity::Negative);
  shown.table().setCurrentIndex(shown.cell(Node::Arm1Begin, Node::Arm1End));
  const QLabel* sentence = shown.panel.findChild<QLabel*>("polaritySentence");
  EXPECT_EQ(sentence->palette().color(sentence->foregroundRole()), ui::coloursFor(shown.panel.palette()).text)
      << "it tells both signs";
}

TEST(PolarityPanel, TheTableNamesItsQuantityAndUnit) {
  Shown shown(fullBridge());
  const QLabel* corner = shown.panel.findChild<QLabel*>("polarityCorner");
  EXPECT_EQ(corner->text(), "Output\nmV/V");
  EXPECT_EQ(shown.table().accessibleDescription(), "Output, mV/V");
  EXPECT_EQ(shown.panel.findChild<QComboBox*>("polarityQuantity")->currentText(), "Output, mV/V");
  shown.show(ui::PolarityQuantity::Simulated);
  EXPECT_EQ(corner->text(), "Simulated\nµm/m");
  EXPECT_TRUE(corner->isVisible());
  EXPECT_GE(corner->width(), corner->sizeHint().width());
  EXPECT_LE(corner->geometry().right(), shown.table().viewport()->geometry().left());
  EXPECT_LE(corner->geometry().bottom(), shown.table().viewport()->geometry().top());
}

TEST(PolarityPanel, BoxesAreWideEnoughForWhatTheySay) {
  for (const QSize size : {QSize(640, 380), QSize(780, 560), QSize(1270, 700)}) {
    Shown shown(fullBridge(), size);
    shown.show(ui::PolarityQuantity::Simulated);
    QCoreApplication::processEvents();
    for (const char* name : {"polarityQuantity", "polarityShunt"}) {
      const auto* box = shown.panel.findChild<QComboBox*>(name);
      EXPECT_GE(box->width(), box->fontMetrics().horizontalAdvance(box->currentText()) + 24)
          << name << " at " << size.width() << ": arrow and frame take some 24 pixels";
    }
  }
}

TEST(PolarityPanel, AButtonThatIsOnIsBold) {
  Shown shown(fullBridge());
  EXPECT_FALSE(shown.button("polaritySignal").font().bold());
  QTest::mouseClick(&shown.button("polaritySignal"), Qt::LeftButton);
  EXPECT_TRUE(shown.button("polaritySignal").font().bold());
  shown.session.history().undo();
  EXPECT_FALSE(shown.button("polaritySignal").font().bold());
}

TEST(PolarityPanel, NamesHaveTheMinusOfTheDrawing) {
  Shown shown(fullBridge());
  const auto& model = *shown.table().model();
  for (int k = 0; k < model.rowCount(); ++k)
    EXPECT_FALSE(model.headerData(k, Qt::Vertical).toString().contains('-'));
  EXPECT_EQ(model.headerData(static_cast<int>(shown.point(Node::SMinus)), Qt::Vertical).toString(), "S−");
  shown.table().setCurrentIndex(shown.cell(Node::Arm1Begin, Node::Arm1End));
  EXPECT_TRUE(shown.sentence().contains("S−")) << qPrintable(shown.sentence());
  EXPECT_FALSE(shown.sentence().contains("S-")) << qPrintable(shown.sentence());
}

TEST(PolarityPanel, OnlyShownItHasNothingToTurnAndNothingToAskFor) {
  Shown shown(fullBridge());
  shown.panel.setOnlyShown();
  for (const char* name : {"polarityChoices", "polarityReversals", "polaritySentence"})
    EXPECT_FALSE(shown.panel.findChild<QWidget*>(name)->isVisible()) << name;
  EXPECT_TRUE(shown.table().isVisible());
  EXPECT_TRUE(shown.picture().isVisible());
  shown.panel.resize(490, 400);
  QCoreApplication::processEvents();
  EXPECT_TRUE(shown.picture().isVisible()) << "the picture goes before the table";
  EXPECT_FALSE(shown.table().isVisible());
}

TEST(PolarityPanel, ExcitationAndGaugesAreOneClickEach) {
  Shown shown(fullBridge());
  shown.show(ui::PolarityQuantity::Simulated);
  const QString strain = shown.text(Node::Arm1Begin, Node::Arm1End);
  QTest::mouseClick(&shown.button("polarityExcitation"), Qt::LeftButton);
  EXPECT_TRUE(shown.bridge().hookup.excitationReversed);
  EXPECT_EQ(shown.text(Node::Arm1Begin, Node::Arm1End), strain) << "the gauges' own output turns with it";
  EXPECT_TRUE(shown.sentence().isEmpty() || !shown.panel.current());
  QTest::mouseClick(&shown.button("polarityGauges"), Qt::LeftButton);
  EXPECT_TRUE(shown.bridge().hookup.gaugesReversed);
  EXPECT_EQ(shown.text(Node::Arm1Begin, Node::Arm1End)[0], '+');
  EXPECT_EQ(shown.session.history().count(), 2);
  QTest::mouseClick(&shown.button("polarityGauges"), Qt::LeftButton);
  EXPECT_FALSE(shown.bridge().hookup.gaugesReversed);
}

TEST(PolarityPanel, PictureClickPlacesWhatItsChipSays) {
  Shown shown(fullBridge());
  ASSERT_TRUE(shown.panel.isSideBySide());
  const auto chip = shown.chip(Node::Arm4Begin, Node::Arm4End);
  ASSERT_TRUE(chip);
  QTest::mouseMove(&shown.picture(), *chip);
  EXPECT_TRUE(shown.sentence().contains("over arm 4")) << qPrintable(shown.sentence());
  QTest::mouseClick(&shown.picture(), Qt::LeftButton, {}, *chip);
  EXPECT_EQ(shown.shunt(0).a, Node::Arm4Begin);
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_EQ(shown.table().currentIndex(), shown.cell(Node::Arm4Begin, Node::Arm4End)) << "in step";
}

TEST(PolarityPanel, PickedPointSpreadsOutItsRow) {
  Shown shown(fullBridge());
  EXPECT_FALSE(shown.chip(Node::PPlus, Node::Arm1End)) << "not among those shown at first";
  QTest::mouseClick(&shown.picture(), Qt::LeftButton, {}, shown.spot(Node::PPlus));
  EXPECT_EQ(shown.picture().pickedNow(), shown.point(Node::PPlus));
  EXPECT_EQ(shown.picture().chipsNow().size(), 7u) << "one at each other point";
  const auto chip = shown.chip(Node::PPlus, Node::Arm1End);
  ASSERT_TRUE(chip);
  QTest::mouseClick(&shown.picture(), Qt::LeftButton, {}, *chip);
  EXPECT_EQ(shown.shunt(0).a, Node::PPlus);
  EXPECT_EQ(core::pointOf(shown.bridge(), shown.shunt(0).b), Node::Arm1End);
}

TEST(PolarityPanel, PictureIsWalkedByKeys) {
  Shown shown(fullBridge());
  shown.picture().setFocus();
  QTest::keyClick(&shown.picture(), Qt::Key_Right);
  QTest::keyClick(&shown.picture(), Qt::Key_Right);
  EXPECT_EQ(shown.panel.current(), (ui::PolarityPair{0, 2}));
  QTest::keyClick(&shown.picture(), Qt::Key_Down);
  EXPECT_EQ(shown.panel.current(), (ui::PolarityPair{1, 2}));
  QTest::keyClick(&shown.picture(), Qt::Key_Down);
  EXPECT_EQ(shown.panel.current(), (ui::PolarityPair{3, 2})) << "a point with itself is left out";
  EXPECT_TRUE(shown.picture().accessibleDescription().contains("over the output"));
  QTest::keyClick(&shown.picture(), Qt::Key_Left);
  QTest::keyClick(&shown.picture(), Qt::Key_Return);
  EXPECT_EQ(shown.session.history().count(), 1);
  EXPECT_EQ(core::placeWords(shown.bridge(), shown.shunt(0).a, shown.shunt(0).b),
            "over arm 2 from the terminals");
}

TEST(PolarityPanel, ChosenStepChoosesItsShunt) {
  Shown shown(fullBridge());
  shown.session.selectStep(2);
  EXPECT_EQ(shown.shunts().currentIndex(), 1);
  shown.session.selectStep(1);
  EXPECT_EQ(shown.shunts().currentIndex(), 0);
  shown.session.selectStep(0);
  EXPECT_EQ(shown.shunts().currentIndex(), 0) << "a zero step chooses none";
}

TEST(PolarityPanel, FollowsAnEditOfTheBridge) {
  Shown shown(fullBridge());
  core::Channel channel = *shown.session.channel();
  channel.setup.bridge.sixWire = true;
  shown.session.editChannel("six wires", channel);
  EXPECT_EQ(shown.table().model()->rowCount(), 10);
  channel = core::withBridgeType(channel, core::BridgeType::QuarterTwoWire);
  shown.session.editChannel("quarter", channel);
  EXPECT_EQ(shown.table().model()->rowCount(), 6);
}

TEST(PolarityPanel, PlaceWithoutPredictionIsRefusedWithItsReason) {
  core::Document document = fullBridge();
  core::Channel channel = *document.channels[0];
  channel.setup.bridge.leads.fill(core::Resistance(0));
  Shown shown(core::withChannel(document, 0, channel));
  EXPECT_EQ(shown.text(Node::PPlus, Node::Arm1Begin), "–");
  shown.click(Node::PPlus, Node::Arm1Begin);
  EXPECT_EQ(shown.session.history().count(), 0);
  ASSERT_EQ(shown.refused.count(), 1);
  EXPECT_TRUE(shown.refused.front().front().toString().contains("one node"));
}

TEST(PolarityPanel, BridgeThatCannotBeSolvedSaysWhy) {
  core::Document document = fullBridge();
  core::Channel channel = *document.channels[0];
  channel.setup.bridge.arms[2] = core::Resistance(-1);
  Shown shown(core::withChannel(document, 0, channel));
  EXPECT_EQ(shown.table().model()->rowCount(), 0);
  EXPECT_TRUE(shown.sentence().contains("arm 3")) << qPrintable(shown.sentence());
  EXPECT_TRUE(shown.picture().accessibleDescription().contains("arm 3"));
  shown.picture().grab();
}

TEST(PolarityPanel, DocumentWithoutChannelsIsShownEmpty) {
  Shown shown(core::Document{});
  EXPECT_EQ(shown.table().model()->rowCount(), 0);
  shown.panel.grab();
  QTest::keyClick(&shown.picture(), Qt::Key_Right);
  EXPECT_FALSE(shown.panel.current());
}

TEST(PolarityPanel, NarrowPaneShowsOneAtATime) {
  Shown shown(fullBridge(), {490, 350});
  EXPECT_FALSE(shown.panel.isSideBySide());
  EXPECT_TRUE(shown.table().isVisible());
  EXPECT_FALSE(shown.picture().isVisible());
  QTest::mouseClick(&shown.button("polarityAsPicture"), Qt::LeftButton);
  EXPECT_FALSE(shown.table().isVisible());
  EXPECT_TRUE(shown.picture().isVisible());
  EXPECT_LE(shown.panel.minimumSizeHint().width(), 490);
  EXPECT_LE(shown.panel.minimumSizeHint().height(), 350);
}

TEST(PolarityPanel, EverythingHasANameForScreenReaders) {
  Shown shown(fullBridge());
  for (QWidget* widget : {static_cast<QWidget*>(&shown.table()), static_cast<QWidget*>(&shown.picture()),
                          static_cast<QWidget*>(&shown.shunts()), static_cast<QWidget*>(&shown.ohm())})
    EXPECT_FALSE(widget->accessibleName().isEmpty()) << qPrintable(widget->objectName());
  const QString told = shown.cell(Node::Arm1Begin, Node::Arm1End).data(Qt::AccessibleTextRole).toString();
  EXPECT_TRUE(told.contains("over arm 1: negative")) << qPrintable(told);
  const QString picture = shown.picture().accessibleDescription();
  for (const char* place :
       {"over arm 1: negative", "over arm 2: positive", "over the output", "It lies over arm 1"})
    EXPECT_TRUE(picture.contains(place)) << place << " is not in " << qPrintable(picture);
}

TEST(PolarityPanel, ForeignTextIsNoMarkup) {
  core::Document document = fullBridge();
  core::Channel channel = *document.channels[0];
  channel.setup.shunts[0].name = "<b>R</b>";
  Shown shown(core::withChannel(document, 0, channel));
  shown.table().setCurrentIndex(shown.cell(Node::Arm1Begin, Node::Arm1End));
  EXPECT_EQ(shown.panel.findChild<QLabel*>("polaritySentence")->textFormat(), Qt::PlainText);
  EXPECT_TRUE(shown.sentence().contains("<b>R</b>"));
  EXPECT_TRUE(
      shown.cell(Node::Arm1Begin, Node::Arm1End).data(Qt::ToolTipRole).toString().contains("&lt;b&gt;"));
}

/// Of all templates, four- and six-wire.
std::vector<core::Document> allBridges() {
  std::vector<core::Document> documents;
  for (const core::BridgeTemplate& shape : core::allTemplates())
    for (const bool six : {false, true}) {
      if (six && !shape.senseLeads) continue;
      core::Channel channel = withShunt(channelOf(shape.type, six), "R1", Node::Arm1Begin, Node::Arm1End);
      channel.setup.bridge.arms = {core::Resistance(350.3), core::Resistance(349.6), core::Resistance(350.9),
                                   core::Resistance(349.3)};
      documents.push_back(core::withChannelInserted({}, 0, channel));
    }
  return documents;
}

TEST(PolarityPicture, NoLabelLiesOnAnotherForAnyTemplate) {
  for (const core::Document& document : allBridges())
    for (const QSize size : {QSize(480, 260), QSize(390, 420), QSize(620, 560), QSize(900, 880)}) {
      ui::PolarityShown shown;
      shown.channel = document.channels[0];
      shown.map = *core::polarityMap(shown.channel->setup, core::Resistance(59000));
      for (const auto quantity : {ui::PolarityQuantity::Simulated, ui::PolarityQuantity::Output}) {
        shown.quantity = quantity;
        ui::PolarityPicture picture(shown);
        picture.resize(size);
        const auto spots = picture.layoutNow().spots;
        const auto arms = picture.layoutNow().arms;
        SCOPED_TRACE(std::string(core::templateOf(shown.bridge().type).key) + " " +
                     std::to_string(spots.size()) + " points " + std::to_string(size.width()) + " quantity " +
                     std::to_string(static_cast<int>(quantity)));
        for (std::size_t from = 0; from <= spots.size(); ++from) {
          // Last: nothing picked.
          if (from < spots.size())
            QTest::mouseClick(&picture, Qt::LeftButton, {}, spots[from].at.toPoint());
          else
            QTest::keyClick(&picture, Qt::Key_Escape);
          // A chip on an arm's band would be taken for the arm's. A low picture has no other room for it.
          for (const ui::PolarityChip& chip : picture.chipsNow())
            for (const auto& arm : arms) {
              QPainterPath band(spots[arm.begin].at);
              band.lineTo(spots[arm.end].at);
              if (from == spots.size() && !chip.overArm && size.height() >= 400) {
                EXPECT_FALSE(band.intersects(chip.box)) << chip.text.toStdString();
              }
            }
          std::vector<QRectF> boxes;
          for (const ui::PolarityChip& chip : picture.chipsNow()) boxes.push_back(chip.box);
          ASSERT_GE(boxes.size(), from < spots.size() ? spots.size() - 1 : 6u);
          for (const ui::PolaritySpot& spot : spots)
            boxes.push_back(QRectF(spot.at - QPointF(4, 4), QSizeF(8, 8)));
          for (const ui::PolaritySpot& spot : spots) boxes.push_back(spot.nameBox);
          for (std::size_t i = 0; i < boxes.size(); ++i) {
            EXPECT_TRUE(QRectF(picture.rect()).contains(boxes[i])) << from << " " << i;
            for (std::size_t j = i + 1; j < boxes.size(); ++j)
              EXPECT_FALSE(boxes[i].adjusted(1, 1, -1, -1).intersects(boxes[j]))
                  << from << ": " << i << ", " << j;
          }
        }
      }
    }
}

}  // namespace polarity_panel_test
