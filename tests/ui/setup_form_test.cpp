// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup_form.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/wire_dialog.h"

namespace ui {
namespace {

class Form : public testing::Test {
 protected:
  Form()
      : session(sample::documentOf({sample::nineStepChannel()})),
        form(session),
        refused(&form, &SetupForm::refused) {
    form.resize(320, 900);
    form.show();
    form.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&form));
  }

  QLineEdit* field(const QString& name) { return form.findChild<QLineEdit*>(name); }
  void type(const QString& name, const QString& text) {
    field(name)->setFocus();
    field(name)->selectAll();
    QTest::keyClicks(field(name), text);
    QTest::keyClick(field(name), Qt::Key_Return);
  }
  void choose(const char* box, int row) {
    auto* combo = form.findChild<QComboBox*>(box);
    combo->setCurrentIndex(row);
    emit combo->activated(row);
  }
  const core::Setup& setup() { return session.channel()->setup; }

  Session session;
  SetupForm form;
  QSignalSpy refused;
};

TEST_F(Form, EveryFieldIsEditedAsOneUndoStep) {
  struct Case {
    const char* field;
    const char* text;
    std::function<double()> value;
    double expected;
  };
  const std::vector<Case> cases = {
      {"gaugeResistance", "120", [&] { return setup().bridge.gauge.nominal.base(); }, 120},
      {"gaugeFactor", "2.1", [&] { return setup().bridge.gauge.factor; }, 2.1},
      {"arm1", "350.4", [&] { return setup().bridge.arms[0].base(); }, 350.4},
      {"arm2", "349.8", [&] { return setup().bridge.arms[1].base(); }, 349.8},
      {"arm3", "1k", [&] { return setup().bridge.arms[2].base(); }, 1000},
      {"arm4", "1k", [&] { return setup().bridge.arms[3].base(); }, 1000},
      {"lead0", "1.5", [&] { return core::resistanceOf(setup().bridge.leads[0]).base(); }, 1.5},
      {"excitation", "2.5 V", [&] { return setup().instrument.excitation.base(); }, 2.5},
      {"inputResistance", "10M", [&] { return setup().instrument.inputResistance->base(); }, 1e7},
      {"gaugeFactorSet", "2.05", [&] { return setup().instrument.gaugeFactor; }, 2.05},
      {"bridgeFactorSet", "2", [&] { return setup().instrument.bridgeFactor; }, 2},
      {"limitRelative", "0,5", [&] { return setup().limits.relative; }, 0.005},
      {"limitLeast", "2", [&] { return setup().limits.least.base(); }, 2},
      {"limitZeroReturn", "0.2 %", [&] { return setup().limits.zeroReturn; }, 0.002},
  };
  for (const Case& c : cases) {
    const int before = session.history().count();
    type(c.field, c.text);
    EXPECT_DOUBLE_EQ(c.value(), c.expected) << c.field;
    EXPECT_EQ(session.history().count(), before + 1) << c.field;
  }
  EXPECT_EQ(refused.count(), 0);
}

TEST_F(Form, ArmsAtTheNominalValueFollowItAndMeasuredOnesStay) {
  type("arm1", "350.4");
  type("gaugeResistance", "120");
  EXPECT_EQ(setup().bridge.arms[0], core::Resistance(350.4));
  for (const std::size_t arm : {1, 2, 3}) EXPECT_EQ(setup().bridge.arms[arm], core::Resistance(120));
}

TEST_F(Form, RefusedTextStaysWhileAnotherFieldIsChanged) {
  type("gaugeFactor", "two");
  type("excitation", "10");
  EXPECT_EQ(field("gaugeFactor")->text(), "two");
}

TEST_F(Form, NamesAndNotesAreText) {
  type("channelName", "TP-02");
  type("channelNote", "spar cap, left");
  EXPECT_EQ(session.channel()->name, "TP-02");
  EXPECT_EQ(session.channel()->note, "spar cap, left");
}

TEST_F(Form, ImpossibleValuesAreRefusedWithTheFieldsName) {
  for (const char* name : {"gaugeFactor", "arm1", "excitation", "gaugeResistance"}) type(name, "0");
  type("lead0", "-1");
  EXPECT_EQ(refused.count(), 5);
  EXPECT_TRUE(refused.at(0).at(0).toString().startsWith("Gauge factor:"));
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Form, AnEmptyInputResistanceTakesNoCurrent) {
  type("inputResistance", "1M");
  field("inputResistance")->clear();
  field("inputResistance")->setModified(true);
  QTest::keyClick(field("inputResistance"), Qt::Key_Return);
  EXPECT_FALSE(setup().instrument.inputResistance);
}

TEST_F(Form, TheTemplateDecidesWhichFieldsAreShown) {
  EXPECT_FALSE(field("ratedOutput")->isVisible());
  EXPECT_FALSE(field("poissonRatio")->isVisible());
  EXPECT_TRUE(field("lead6")->isVisible()) << "return lead of the three-wire bridge";
  choose("bridgeTemplate", static_cast<int>(core::BridgeType::Transducer));
  EXPECT_TRUE(field("ratedOutput")->isVisible());
  EXPECT_FALSE(field("gaugeFactor")->isVisible());
  EXPECT_FALSE(field("lead6")->isVisible());
  type("ratedOutput", "1.998 mV/V");
  type("capacity", "50");
  EXPECT_DOUBLE_EQ(setup().bridge.rating.ratedOutput.base(), 1.998e-3);
  EXPECT_DOUBLE_EQ(setup().bridge.rating.capacity, 50);
  auto* sixWire = form.findChild<QCheckBox*>("sixWire");
  QTest::mouseClick(sixWire, Qt::LeftButton, Qt::NoModifier, QPoint(8, sixWire->height() / 2));
  EXPECT_TRUE(setup().bridge.sixWire);
  choose("bridgeTemplate", static_cast<int>(core::BridgeType::HalfPoisson));
  EXPECT_TRUE(field("poissonRatio")->isVisible());
  EXPECT_EQ(session.history().undoText(), "Change bridge template");
}

TEST_F(Form, AReadingInAScaledUnitAsksForItsScale) {
  choose("readingUnit", static_cast<int>(core::ReadingUnit::Scaled));
  type("scale", "25");
  type("scaledUnit", "kN");
  EXPECT_EQ(core::readingUnitText(setup().instrument), "kN");
  EXPECT_DOUBLE_EQ(setup().instrument.unitsPerMillivoltPerVolt, 25);
  EXPECT_FALSE(field("gaugeFactorSet")->isVisible());
}

TEST_F(Form, ALeadIsWorkedOutFromLengthAndWireGauge) {
  QTimer::singleShot(0, [&] {
    auto* dialog = form.findChild<WireDialog*>();
    ASSERT_TRUE(dialog);
    auto* length = dialog->findChild<QLineEdit*>("wireLength");
    length->setFocus();
    length->selectAll();
    QTest::keyClicks(length, "30 m");
    auto* section = dialog->findChild<QLineEdit*>("wireSection");
    section->setFocus();
    section->selectAll();
    QTest::keyClicks(section, "AWG 28");
    dialog->findChild<QLineEdit*>("wireTemperature")->setFocus();
    dialog->findChild<QCheckBox*>("wireForAll")->setChecked(true);
    dialog->accept();
  });
  QTest::mouseClick(form.findChild<QToolButton*>("wire0"), Qt::LeftButton);
  // Published (HyperPhysics wire table after Floyd): AWG 28 has 212.9 ohm/km at 20 C; four printed digits.
  for (const core::LeadRole role :
       {core::LeadRole::ExcitationPlus, core::LeadRole::SignalMinus, core::LeadRole::Return})
    EXPECT_NEAR(core::resistanceOf(setup().bridge.leads[static_cast<std::size_t>(role)]).base(),
                0.030 * 212.9, 0.03 * 0.05);
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(Form, UndoInAFieldWithNothingTypedReachesTheDocument) {
  type("gaugeFactor", "2.1");
  session.history().undo();
  EXPECT_EQ(field("gaugeFactor")->text(), "2");
}

TEST_F(Form, EveryFieldHasANameForAssistiveTools) {
  for (const auto* edit : form.findChildren<QLineEdit*>())
    if (!edit->objectName().startsWith("qt_")) {
      EXPECT_FALSE(edit->accessibleName().isEmpty()) << edit->objectName().toStdString();
    }
}

}  // namespace
}  // namespace ui
