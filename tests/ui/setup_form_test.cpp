// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup_form.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <algorithm>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/locale.h"
#include "ui/quantity_edit.h"
#include "ui/setup/folded_group.h"
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
  /// What the field tells beside itself of a text that it refuses; empty: it refuses none.
  QString refusalOf(const QString& name) {
    const auto* edit = qobject_cast<NumberEdit*>(field(name));
    return edit && edit->isRefused() ? edit->echo() : QString();
  }
  QString note(const char* name) { return form.findChild<QLabel*>(name)->text(); }
  void click(const char* box) {
    auto* button = form.findChild<QCheckBox*>(box);
    QTest::mouseClick(button, Qt::LeftButton, Qt::NoModifier, QPoint(8, button->height() / 2));
  }

  struct Case {
    const char* field;
    const char* text;
    std::function<double()> value;
    double expected;
  };
  /// What is typed arrives in the document as one undo step, and undo brings value and text back.
  void expectEdits(const std::vector<Case>& cases) {
    for (const Case& c : cases) {
      const int before = session.history().index();
      const QString shown = field(c.field)->text();
      EXPECT_TRUE(field(c.field)->isVisible()) << c.field;
      type(c.field, c.text);
      EXPECT_DOUBLE_EQ(c.value(), c.expected) << c.field;
      EXPECT_EQ(session.history().index(), before + 1) << c.field;
      session.history().undo();
      EXPECT_EQ(field(c.field)->text(), shown) << c.field;
      session.history().redo();
      EXPECT_DOUBLE_EQ(c.value(), c.expected) << c.field;
    }
    EXPECT_EQ(refused.count(), 0);
  }

  Session session;
  SetupForm form;
  QSignalSpy refused;
};

TEST_F(Form, EveryFieldIsEditedAsOneUndoStep) {
  expectEdits({
      {"gaugeResistance", "120", [&] { return setup().bridge.gauge.nominal.base(); }, 120},
      {"gaugeFactor", "2.1", [&] { return setup().bridge.gauge.factor; }, 2.1},
      {"factorAt", "24", [&] { return setup().bridge.gauge.factorAt.base(); }, 24},
      {"factorCoefficient", "-0.5", [&] { return setup().bridge.gauge.factorCoefficient; }, -5e-5},
      {"gaugeTemperature", "60 C", [&] { return setup().bridge.gauge.installed.base(); }, 60},
      {"arm1", "350.4", [&] { return setup().bridge.arms[0].base(); }, 350.4},
      {"arm2", "349.8", [&] { return setup().bridge.arms[1].base(); }, 349.8},
      {"arm3", "1k", [&] { return setup().bridge.arms[2].base(); }, 1000},
      {"arm4", "1k", [&] { return setup().bridge.arms[3].base(); }, 1000},
      {"lead0", "1.5", [&] { return core::resistanceOf(setup().bridge.leads[0]).base(); }, 1.5},
      {"leadWarming", "15 K", [&] { return setup().bridge.leadWarming.base(); }, 15},
      {"excitation", "2.5 V", [&] { return setup().instrument.excitation.base(); }, 2.5},
      {"range", "3 mV/V", [&] { return setup().instrument.range.value_or(core::Output(-1)).base(); }, 3e-3},
      {"inputResistance", "10M", [&] { return setup().instrument.inputResistance->base(); }, 1e7},
      {"gaugeFactorSet", "2.05", [&] { return setup().instrument.gaugeFactor; }, 2.05},
      {"bridgeFactorSet", "2", [&] { return setup().instrument.bridgeFactor; }, 2},
      {"limitRelative", "0,5", [&] { return setup().limits.relative; }, 0.005},
      {"limitLeast", "2", [&] { return setup().limits.least.base(); }, 2},
      {"limitZeroReturn", "0.2 %", [&] { return setup().limits.zeroReturn; }, 0.002},
      {"limitChange", "0.7 %", [&] { return setup().limits.change; }, 0.007},
      {"limitZeroChange", "0.3 %", [&] { return setup().limits.zeroChange; }, 0.003},
      {"coverage", "99", [&] { return setup().decision.coverage; }, 0.99},
  });
}

TEST_F(Form, FiguresOfMeritAreJudgedWhereALimitIsTyped) {
  auto* heading = form.findChild<QToolButton*>("meritsGroupHeading");
  EXPECT_EQ(heading->text(), "Figures of merit: not judged");
  EXPECT_FALSE(field("limitHysteresis")->isVisible());
  form.focusField("limitNonlinearity");
  using core::MeritKind;
  const auto limit = [&](MeritKind kind) {
    return [this, kind] {
      const auto found = setup().limits.merits.find(kind);
      return found == setup().limits.merits.end() ? -1 : found->second;
    };
  };
  for (const char* name : {"limitNonlinearity", "limitSpanRatio"}) {
    EXPECT_EQ(field(name)->text(), "");
    EXPECT_EQ(field(name)->placeholderText(), "not judged");
  }
  expectEdits({{"limitNonlinearity", "0.5", limit(MeritKind::Nonlinearity), 0.005},
               {"limitHysteresis", "0,25 %", limit(MeritKind::Hysteresis), 0.0025},
               {"limitRepeatability", "0.1", limit(MeritKind::Repeatability), 0.001},
               {"limitZeroShift", "0", limit(MeritKind::ZeroShift), 0},
               {"limitSymmetry", "1", limit(MeritKind::Symmetry), 0.01},
               {"limitCombinedError", "2", limit(MeritKind::CombinedError), 0.02},
               {"limitSpanRatio", "3 %", limit(MeritKind::SpanRatio), 0.03}});
  EXPECT_EQ(setup().limits.merits.size(), 7u);
  EXPECT_FALSE(setup().limits.merits.contains(MeritKind::ZeroReturn));
  heading->click();
  EXPECT_EQ(heading->text(), "Figures of merit: 7 of 7 judged");
}

TEST_F(Form, AnEmptyLimitOfAFigureIsNotJudgedAndANegativeOneIsRefused) {
  form.focusField("limitHysteresis");
  type("limitHysteresis", "0.5");
  field("limitHysteresis")->setFocus();
  field("limitHysteresis")->selectAll();
  QTest::keyClick(field("limitHysteresis"), Qt::Key_Delete);
  QTest::keyClick(field("limitHysteresis"), Qt::Key_Return);
  EXPECT_TRUE(setup().limits.merits.empty());
  session.history().undo();
  EXPECT_EQ(setup().limits.merits.at(core::MeritKind::Hysteresis), 0.005);
  const int before = session.history().index();
  type("limitHysteresis", "-1");
  type("limitSymmetry", "nan");
  EXPECT_FALSE(refusalOf("limitHysteresis").isEmpty());
  EXPECT_FALSE(refusalOf("limitSymmetry").isEmpty());
  EXPECT_EQ(session.history().index(), before);
}

TEST_F(Form, TheLineThatDeviationsAreMeasuredFromIsChosen) {
  auto* line = form.findChild<QComboBox*>("linearityFrom");
  EXPECT_EQ(line->currentText(), "Least-squares line");
  choose("linearityFrom", static_cast<int>(core::ReferenceLine::EndPoint));
  EXPECT_EQ(setup().limits.linearityFrom, core::ReferenceLine::EndPoint);
  EXPECT_EQ(line->currentText(), "End-point line");
  EXPECT_EQ(session.history().undoText(), "Change reference line");
  EXPECT_TRUE(line->isVisible()) << "what is not usual is shown";
  session.history().undo();
  EXPECT_EQ(setup().limits.linearityFrom, core::ReferenceLine::LeastSquares);
}

// The field's own tool tip says why it refused something; else the one around it shows.
TEST_F(Form, AFigureOfMeritIsDefinedWhereItsLimitIsEntered) {
  for (const auto& [name, denominator] : std::vector<std::pair<const char*, const char*>>{
           {"limitNonlinearity", "of the measured span."},
           {"limitHysteresis", "of the measured span."},
           {"limitRepeatability", "of the measured span."},
           {"limitZeroShift", "of the greatest expected reading."},
           {"limitSymmetry", "of the expected slope."},
           {"limitCombinedError", "of the measured span."},
           {"limitSpanRatio", "of the expected span."}}) {
    EXPECT_EQ(field(name)->toolTip(), "") << name;
    EXPECT_TRUE(field(name)->parentWidget()->toolTip().endsWith(denominator)) << name;
  }
}

TEST_F(Form, LeaksAreEnteredInAGroupThatTheKeyboardOpens) {
  EXPECT_FALSE(field("leakAcross1")->isVisible());
  auto* heading = form.findChild<QToolButton*>("leaksGroupHeading");
  EXPECT_EQ(heading->text(), "Leaks: none");
  heading->setFocus();
  QTest::keyClick(heading, Qt::Key_Space);
  for (const std::size_t arm : {0, 1, 2, 3}) {
    const std::string over = "leakAcross" + std::to_string(arm + 1);
    const std::string structure = "leakStructure" + std::to_string(arm + 1);
    const std::string place = "leakPlace" + std::to_string(arm + 1);
    EXPECT_FALSE(field(place.c_str())->isVisible()) << "the place of a leak that is not there";
    const auto& leak = [&, arm]() -> const core::Leak& { return setup().bridge.leaks[arm]; };
    expectEdits(
        {{over.c_str(), "20M", [&] { return leak().across.value_or(core::Resistance(-1)).base(); }, 2e7},
         {structure.c_str(), "5M", [&] { return leak().toStructure.value_or(core::Resistance(-1)).base(); },
          5e6}});
    expectEdits({{place.c_str(), "0.25", [&] { return leak().place; }, 0.25}});
  }
  choose("grounding", static_cast<int>(core::Grounding::PMinus));
  EXPECT_EQ(setup().instrument.grounding, core::Grounding::PMinus);
  field("leakAcross2")->clear();
  field("leakAcross2")->setModified(true);
  QTest::keyClick(field("leakAcross2"), Qt::Key_Return);
  EXPECT_FALSE(setup().bridge.leaks[1].across);
  QTest::mouseClick(heading, Qt::LeftButton);
  EXPECT_EQ(heading->text(), "Leaks: 7 entered");
}

TEST_F(Form, AGroupOpensWhenTheChannelHoldsSomethingInItOrItsFieldIsAskedFor) {
  core::Channel leaking = *session.channel();
  leaking.setup.bridge.leaks[0].across = core::Resistance(1e7);
  session.editChannel("Leak", leaking);
  EXPECT_TRUE(field("leakAcross1")->isVisible());
  EXPECT_FALSE(field("gridArea")->isVisible());
  form.focusField("gridArea");
  EXPECT_TRUE(field("gridArea")->hasFocus());
}

TEST_F(Form, AcquisitionSaysHowLongAStepMustLast) {
  auto* heading = form.findChild<QToolButton*>("acquisitionGroupHeading");
  EXPECT_EQ(heading->text(), "Acquisition: settle 0.00 s, hold 1.00 s");
  QTest::mouseClick(heading, Qt::LeftButton);
  const auto& acquisition = [&]() -> const core::Acquisition& { return setup().acquisition; };
  expectEdits({{"sampleRate", "50 S/s",
                [&] { return acquisition().sampleRate.value_or(core::Frequency(-1)).base(); }, 50},
               {"mains", "60", [&] { return acquisition().mains.value_or(core::Frequency(-1)).base(); }, 60},
               {"settledTo", "0.1 %", [&] { return acquisition().settledTo; }, 1e-3}});
  // One interval of 50 samples/s: 20 ms.
  EXPECT_EQ(note("usualTimes"), "Settles in 0.02 s, hold at least 1.00 s");
  EXPECT_FALSE(field("filterCutoff")->isVisible());
  choose("filterKind", static_cast<int>(core::FilterKind::Butterworth));
  EXPECT_EQ(acquisition().filter.kind, core::FilterKind::Butterworth);
  EXPECT_EQ(session.history().undoText(), "Change filter");
  choose("filterOrder", 0);
  EXPECT_EQ(acquisition().filter.order, 1u);
  expectEdits({{"filterCutoff", "2 Hz", [&] { return acquisition().filter.cutoff.base(); }, 2}});
  // Derived: ln(1000) / (2 pi 2 Hz) = 0.5497 s, and 20 ms: rounded up to 10 ms.
  EXPECT_EQ(note("usualTimes"), "Settles in 0.57 s, hold at least 1.00 s");
  type("sampleRate", "10");
  // 20 samples at 10 samples/s; one interval is 0.1 s.
  EXPECT_EQ(note("usualTimes"), "Settles in 0.65 s, hold at least 2.00 s");
}

TEST_F(Form, AMovingAverageHasAWindowInPlaceOfOrderAndCutoff) {
  form.focusField("sampleRate");
  choose("filterKind", static_cast<int>(core::FilterKind::MovingAverage));
  EXPECT_FALSE(field("filterCutoff")->isVisible());
  EXPECT_FALSE(form.findChild<QComboBox*>("filterOrder")->isVisible());
  expectEdits({{"filterWindow", "200 ms", [&] { return setup().acquisition.filter.window.base(); }, 0.2}});
  EXPECT_EQ(note("usualTimes"), "Settles in 0.20 s, hold at least 1.00 s");  // 0.9999 of 0.2 s
}

TEST_F(Form, SampleRateMainsAndRangeMayBeUnknown) {
  form.focusField("sampleRate");
  for (const char* name : {"sampleRate", "mains", "range"}) {
    type(name, "5");
    field(name)->setFocus();
    field(name)->selectAll();
    QTest::keyClick(field(name), Qt::Key_Delete);
    QTest::keyClick(field(name), Qt::Key_Return);
  }
  EXPECT_FALSE(setup().acquisition.sampleRate);
  EXPECT_FALSE(setup().acquisition.mains);
  EXPECT_FALSE(setup().instrument.range);
  EXPECT_EQ(field("mains")->placeholderText(), "none near");
}

TEST_F(Form, AcquisitionOutOfRangeIsRefused) {
  form.focusField("sampleRate");
  const int before = session.history().index();
  for (const auto& [name, text] : std::vector<std::pair<const char*, const char*>>{
           {"sampleRate", "0"}, {"mains", "-50"}, {"settledTo", "0"}, {"settledTo", "21"}, {"range", "0"}}) {
    type(name, text);
    EXPECT_FALSE(refusalOf(name).isEmpty()) << name << ' ' << text;
  }
  EXPECT_EQ(session.history().index(), before);
}

TEST_F(Form, ExcitationIsByVoltageOrCurrentAndEachKeepsItsValues) {
  type("excitation", "2.5");
  choose("excitationSource", 1);
  EXPECT_FALSE(field("excitation")->isVisible());
  EXPECT_EQ(session.history().undoText(), "Change excitation");
  expectEdits({{"excitationCurrent", "8", [&] { return setup().instrument.current->supplied.base(); }, 0.008},
               {"nominalBridge", "355", [&] { return setup().instrument.current->nominal.base(); }, 355}});
  EXPECT_TRUE(note("nominalExcitation").contains("2.84 V"));  // 8 mA x 355 ohm
  choose("excitationSource", 0);
  EXPECT_FALSE(setup().instrument.current);
  EXPECT_EQ(setup().instrument.excitation, core::Voltage(2.5));
  EXPECT_FALSE(field("excitationCurrent")->isVisible());
  const core::Setup before = setup();
  emit form.findChild<QuantityEdit*>("excitationCurrent")
      ->valueEdited(0.01);  // as when it goes out of view in the middle of typing
  EXPECT_EQ(setup(), before);
  choose("excitationSource", 1);
  EXPECT_EQ(setup().instrument.current->supplied, core::Current(0.008));
  EXPECT_EQ(setup().instrument.current->nominal, core::Resistance(355));
  session.history().undo();
  EXPECT_TRUE(field("excitation")->isVisible());
}

TEST_F(Form, ACurrentSourceStartsWithTheGaugesNominalResistance) {
  type("gaugeResistance", "120");
  choose("excitationSource", 1);
  EXPECT_EQ(setup().instrument.current->nominal, core::Resistance(120));
}

TEST_F(Form, RatiometricIsASwitchWithAnExplanation) {
  EXPECT_TRUE(setup().instrument.ratiometric);
  click("ratiometric");
  EXPECT_FALSE(setup().instrument.ratiometric);
  EXPECT_TRUE(form.findChild<QCheckBox*>("ratiometric")->toolTip().contains("excitation"));
  session.history().undo();
  EXPECT_TRUE(form.findChild<QCheckBox*>("ratiometric")->isChecked());
}

TEST_F(Form, LinearisationIsOfferedForStrainOfGaugesOnly) {
  auto* linearisation = form.findChild<QComboBox*>("linearisation");
  choose("linearisation", static_cast<int>(core::Linearisation::AfterZero));
  EXPECT_EQ(setup().instrument.linearisation, core::Linearisation::AfterZero);
  EXPECT_EQ(linearisation->currentText(), "Zero subtracted, then linearised");
  choose("readingUnit", static_cast<int>(core::ReadingUnit::MillivoltPerVolt));
  EXPECT_FALSE(linearisation->isVisible());
  EXPECT_EQ(setup().instrument.linearisation, core::Linearisation::AfterZero)
      << "hidden fields keep their values";
  choose("readingUnit", static_cast<int>(core::ReadingUnit::MicrometrePerMetre));
  EXPECT_TRUE(linearisation->isVisible());
  choose("bridgeTemplate", static_cast<int>(core::BridgeType::Transducer));
  EXPECT_FALSE(linearisation->isVisible());
}

TEST_F(Form, ABalanceNetworkShowsTheFieldsOfItsKind) {
  EXPECT_FALSE(field("balancePotentiometer")->isVisible());
  choose("balance", static_cast<int>(core::BalanceKind::Parallel));
  EXPECT_EQ(setup().instrument.balance.kind, core::BalanceKind::Parallel);
  const auto& balance = [&]() -> const core::Balance& { return setup().instrument.balance; };
  expectEdits({{"balancePotentiometer", "20k", [&] { return balance().potentiometer.base(); }, 20000},
               {"balanceLimiting", "82k", [&] { return balance().limiting.base(); }, 82000},
               {"balanceWiper", "0.4", [&] { return balance().wiper; }, 0.4}});
  EXPECT_TRUE(note("balanceNote").contains("P-"));
  choose("balance", static_cast<int>(core::BalanceKind::Series));
  EXPECT_FALSE(field("balanceLimiting")->isVisible());
  EXPECT_EQ(balance().limiting, core::Resistance(82000)) << "hidden fields keep their values";
  EXPECT_TRUE(note("balanceNote").contains("arm 3"));
  session.history().undo();
  EXPECT_TRUE(field("balanceLimiting")->isVisible());
}

TEST_F(Form, TheGaugeFactorAtTheGaugesTemperatureIsSaidWhenItDiffers) {
  EXPECT_FALSE(form.findChild<QLabel*>("factorNow")->isVisible());
  type("factorCoefficient", "1 %/100 K");
  type("gaugeTemperature", "73");
  // Derived: 2 (1 + 1e-4/K x (73 - 23) K) = 2.01.
  EXPECT_EQ(note("factorNow"), "At 73 °C the gauge factor is 2.01.");
  EXPECT_TRUE(form.findChild<QLabel*>("factorNow")->isVisible());
}

TEST_F(Form, SelfHeatingSaysPowerAndPowerDensity) {
  for (const char* lead : {"lead0", "lead3", "lead6"}) type(lead, "0");
  form.focusField("gridArea");
  // Derived: half of 5 V over 350 ohm, 2.5^2 / 350 = 17.86 mW; on 4 mm^2 that is 4.464 kW/m^2.
  EXPECT_TRUE(note("heatNote").contains("17.9 mW"));
  expectEdits({{"gridArea", "4",
                [&] { return setup().bridge.gauge.grid.area.value_or(core::Area(-1)).base(); }, 4e-6}});
  EXPECT_TRUE(note("heatNote").contains("4.46 kW/m²")) << note("heatNote");
  EXPECT_TRUE(note("heatNote").contains("within"));
  EXPECT_TRUE(note("heatNote").contains("data sheet"));
  choose("heatSink", static_cast<int>(core::HeatSink::Poor));
  EXPECT_EQ(setup().bridge.gauge.grid.heatSink, core::HeatSink::Poor);
  EXPECT_TRUE(note("heatNote").contains("above"));
  choose("heatDemand", static_cast<int>(core::HeatDemand::DynamicLow));
  EXPECT_EQ(setup().bridge.gauge.grid.demand, core::HeatDemand::DynamicLow);
  session.history().undo();
  EXPECT_EQ(form.findChild<QComboBox*>("heatDemand")->currentText(), "static, moderate accuracy");
  choose("bridgeTemplate", static_cast<int>(core::BridgeType::Transducer));
  EXPECT_FALSE(field("gridArea")->isVisible());
}

TEST_F(Form, ADecisionRuleShowsItsOwnNumbersAndSaysWhatPasses) {
  struct Rule {
    core::DecisionRule rule;
    const char* name;
    const char* field;  ///< the number that only this rule uses
  };
  const std::vector<Rule> rules = {{core::DecisionRule::Simple, "Simple acceptance", nullptr},
                                   {core::DecisionRule::SharedRisk, "Shared risk", "greatestShare"},
                                   {core::DecisionRule::Guarded, "Guarded acceptance", "guardFactor"},
                                   {core::DecisionRule::Conformity, "Conformity probability", "conformity"},
                                   {core::DecisionRule::EnNumber, "En number", nullptr}};
  QStringList sentences;
  for (const Rule& rule : rules) {
    choose("decisionRule", static_cast<int>(rule.rule));
    EXPECT_EQ(setup().decision.rule, rule.rule);
    EXPECT_EQ(form.findChild<QComboBox*>("decisionRule")->currentText(), rule.name);
    sentences << note("decisionNote");
    for (const char* number : {"greatestShare", "guardFactor", "conformity"})
      EXPECT_EQ(field(number)->isVisible(), rule.field && QString(number) == rule.field)
          << rule.name << number;
  }
  sentences.removeDuplicates();
  EXPECT_EQ(sentences.size(), 5);
  choose("decisionRule", static_cast<int>(core::DecisionRule::SharedRisk));
  expectEdits({{"greatestShare", "25", [&] { return setup().decision.greatestShare; }, 0.25}});
  choose("decisionRule", static_cast<int>(core::DecisionRule::Guarded));
  expectEdits({{"guardFactor", "0.83", [&] { return setup().decision.guardFactor; }, 0.83}});
  choose("decisionRule", static_cast<int>(core::DecisionRule::Conformity));
  expectEdits({{"conformity", "97.5 %", [&] { return setup().decision.conformity; }, 0.975}});
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

TEST_F(Form, ImpossibleValuesAreRefusedByTheirFields) {
  for (const char* name : {"gaugeFactor", "arm1", "excitation", "gaugeResistance"}) type(name, "0");
  type("lead0", "-1");
  for (const char* name : {"gaugeFactor", "arm1", "excitation", "gaugeResistance", "lead0"})
    EXPECT_FALSE(refusalOf(name).isEmpty()) << name;
  EXPECT_EQ(refused.count(), 0) << "told beside the fields, and so nowhere else";
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Form, NumbersOutOfTheirRangeAreRefused) {
  form.focusField("leakAcross1");
  form.focusField("gridArea");
  type("leakStructure1", "5M");
  choose("excitationSource", 1);
  choose("balance", static_cast<int>(core::BalanceKind::Parallel));
  const int before = session.history().index();
  const std::vector<std::pair<const char*, const char*>> wrong = {
      {"leakAcross1", "0"},        {"leakStructure1", "-1M"},  {"leakPlace1", "1.2"},
      {"gridArea", "0"},           {"excitationCurrent", "0"}, {"nominalBridge", "0"},
      {"balanceWiper", "-1"},      {"balanceLimiting", "0"},   {"coverage", "100"},
      {"gaugeTemperature", "-274"}};
  for (const auto& [name, text] : wrong) {
    type(name, text);
    EXPECT_FALSE(refusalOf(name).isEmpty()) << name;
  }
  EXPECT_EQ(session.history().index(), before);
  choose("decisionRule", static_cast<int>(core::DecisionRule::Conformity));
  for (const char* text : {"50", "100"}) {
    type("conformity", text);
    EXPECT_FALSE(refusalOf("conformity").isEmpty()) << text;
  }
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

/// In German a group that is closed at first has the longest label.
TEST(FormInGerman, NoRowIsCutOffWhenItsGroupOpens) {
  const SpokenScope words{languageFor("de", true)};
  Session session(sample::documentOf({sample::nineStepChannel()}));
  SetupForm form(session);
  form.resize(form.minimumWidth(), 900);
  form.show();
  for (auto* group : form.findChildren<FoldedGroup*>()) group->open();
  QApplication::processEvents();
  EXPECT_GE(form.viewport()->width(), form.widget()->minimumSizeHint().width());
}

TEST_F(Form, AReadingInAScaledUnitAsksForItsScale) {
  choose("readingUnit", static_cast<int>(core::ReadingUnit::Scaled));
  type("scale", "25");
  type("scaledUnit", "kN");
  EXPECT_EQ(core::readingUnitText(setup().instrument), "kN");
  EXPECT_DOUBLE_EQ(setup().instrument.unitsPerMillivoltPerVolt, 25);
  EXPECT_FALSE(field("gaugeFactorSet")->isVisible());
}

TEST_F(Form, SaysWhichInstrumentItIs) {
  type("identityName", "Bridge amplifier BA-8");
  type("identitySerial", "AF-0801 input 1");
  type("identityCertificate", "AFC-2026-0801");
  type("identityDue", "2027-01-31");
  EXPECT_EQ(setup().identity, (core::Identity{"Bridge amplifier BA-8", "AF-0801 input 1", "AFC-2026-0801",
                                              std::chrono::year(2027) / 1 / 31}));
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

TEST_F(Form, AClosedCheckShowsTheSetupItWasJudgedByToReadAndCopy) {
  const auto* why = form.findChild<QLabel*>("setupClosed");
  EXPECT_FALSE(why->isVisible());
  core::Channel channel = core::withCheckClosed(core::withCheckAdded(*session.channel(), {}), 0);
  channel.setup.bridge.arms[0] = core::Resistance(351);
  session.editChannel("Check and plan", channel);
  session.selectCheck({});
  EXPECT_EQ(field("arm1")->text(), "351 Ω");
  session.selectCheck(0);
  ASSERT_TRUE(session.checkIsClosed());
  EXPECT_TRUE(why->isVisible());
  EXPECT_TRUE(why->text().startsWith("This check is closed and shows the set-up it was judged by"));
  EXPECT_TRUE(why->text().contains("plan only"));
  EXPECT_EQ(field("arm1")->text(), "350 Ω");

  const int edits = session.history().index();
  type("arm1", "352");
  EXPECT_EQ(session.history().index(), edits);
  EXPECT_EQ(field("arm1")->text(), "350 Ω");
  EXPECT_EQ(refused.count(), 3);  // each key is answered
  EXPECT_EQ(refused.first().first().toString(), why->text());
  field("arm1")->selectAll();
  field("arm1")->copy();
  EXPECT_EQ(QApplication::clipboard()->text(), "350 Ω");
  for (const char* name : {"bridgeTemplate", "sixWire", "ratiometric", "wire0"})
    EXPECT_FALSE(form.findChild<QWidget*>(name)->isEnabled()) << name;
  EXPECT_TRUE(form.findChild<QWidget*>("leaksGroupHeading")->isEnabled());
  // The name is not of the set-up.
  type("channelName", "Other");
  EXPECT_EQ(session.channel()->name, "Other");
  EXPECT_TRUE(session.checkIsClosed());

  session.selectCheck({});
  EXPECT_FALSE(why->isVisible());
  EXPECT_EQ(field("arm1")->text(), "351 Ω");
  EXPECT_TRUE(form.findChild<QWidget*>("bridgeTemplate")->isEnabled());
  type("arm1", "352");
  EXPECT_EQ(setup().bridge.arms[0], core::Resistance(352));
  // Undone and done again while the check is shown, the plan changes and the form does not.
  session.selectCheck(0);
  session.history().undo();
  EXPECT_EQ(setup().bridge.arms[0], core::Resistance(351));
  EXPECT_EQ(field("arm1")->text(), "350 Ω");
  session.history().redo();
  EXPECT_EQ(setup().bridge.arms[0], core::Resistance(352));
  EXPECT_EQ(field("arm1")->text(), "350 Ω");
}

TEST_F(Form, UndoInAFieldWithNothingTypedReachesTheDocument) {
  type("gaugeFactor", "2.1");
  session.history().undo();
  EXPECT_EQ(field("gaugeFactor")->text(), "2");
}

TEST_F(Form, TabWalksEveryFieldFromTopToBottom) {
  form.focusField("leakAcross1");
  form.focusField("gridArea");
  type("leakStructure1", "5M");
  field("channelName")->setFocus();
  std::vector<QString> walked;
  int last = -1;
  for (QWidget* at = QApplication::focusWidget(); form.widget()->isAncestorOf(at);
       at = QApplication::focusWidget()) {
    const int top = at->mapTo(form.widget(), QPoint(0, at->height() / 2)).y();
    // Half a line: a field and the button beside it differ by a few pixels in height.
    if (top < last - at->height() / 2) break;  // round again at the first field
    walked.push_back(at->objectName());
    last = top;
    QTest::keyClick(at, Qt::Key_Tab);
    if (QApplication::focusWidget() == at) break;
  }
  for (const QWidget* field : form.findChildren<QWidget*>()) {
    const bool takesKeys = qobject_cast<const QLineEdit*>(field) || qobject_cast<const QComboBox*>(field) ||
                           qobject_cast<const QCheckBox*>(field) || qobject_cast<const QToolButton*>(field);
    if (takesKeys && field->isVisible()) {
      EXPECT_NE(std::find(walked.begin(), walked.end(), field->objectName()), walked.end())
          << field->objectName();
    }
  }
}

TEST_F(Form, ALongNumberShowsItsFirstDigits) {
  type("arm1", "350.123456789");
  field("arm2")->setFocus();
  session.history().undo();
  session.history().redo();
  EXPECT_EQ(field("arm1")->text(), "350.123456789 Ω");
  EXPECT_EQ(field("arm1")->cursorPosition(), 0);
}

TEST_F(Form, EveryFieldHasANameForAssistiveTools) {
  for (const auto* edit : form.findChildren<QLineEdit*>())
    if (!edit->objectName().startsWith("qt_")) {
      EXPECT_FALSE(edit->accessibleName().isEmpty()) << edit->objectName().toStdString();
    }
  for (const auto* box : form.findChildren<QComboBox*>())
    EXPECT_FALSE(box->accessibleName().isEmpty()) << box->objectName().toStdString();
}

}  // namespace
}  // namespace ui
