// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stock/stock_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include "core/budget/inputs.h"
#include "core/document/apply.h"
#include "core/stock/stock_file.h"
#include "core/units/text.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/shunt_model.h"
#include "ui/stock/part_delegate.h"
#include "ui/stock/stock_sheet.h"
#include "ui/theme.h"

namespace ui {
namespace {

using R = ResistorModel;

core::Stock ownStock() {
  core::Stock stock;
  stock.resistors = {{.id = "AF-0104",
                      .nominal = core::Resistance(59900),
                      .tolerance = 1e-4,
                      .certificate = core::Certificate{core::Resistance(59906), core::Resistance(0.6), 2},
                      .due = core::dateFromText("2026-10-01")},
                     {.id = "AF-0105", .nominal = core::Resistance(174650), .tolerance = 1e-3}};
  stock.boxes = {{.id = "AF-D1", .decades = {{core::Resistance(10000), 10}, {core::Resistance(1000), 10}}}};
  stock.series = {{core::ESeries::E24, core::Resistance(10000), core::Resistance(100000), 0.05}};
  return stock;
}

class Stock : public testing::Test {
 protected:
  Stock()
      : session(core::withStock(sample::documentOf({sample::nineStepChannel()}), ownStock())),
        page(session),
        refused(&page, &StockPage::refused) {
    session.setToday(*core::dateFromText("2026-11-25"));
    page.resize(1100, 600);
    page.show();
    page.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
  }

  const core::Stock& stock() { return *session.document().stock; }
  SheetView& view(const char* name) { return *page.findChild<SheetView*>(name); }
  QAbstractItemModel& resistors() { return *view("resistorTable").model(); }
  QString shown(const char* table, int row, int column) {
    return view(table).model()->index(row, column).data().toString();
  }
  bool set(const char* table, int row, int column, const QString& text) {
    return view(table).model()->setData(view(table).model()->index(row, column), text);
  }
  void click(const char* button) { QTest::mouseClick(page.findChild<QToolButton*>(button), Qt::LeftButton); }
  void choose(const char* table, int row, int column) {
    view(table).setCurrentIndex(view(table).model()->index(row, column));
    view(table).setFocus();
  }
  void paste(SheetView& table, const QString& text) {
    QApplication::clipboard()->setText(text);
    QTest::keyClick(&table, Qt::Key_V, Qt::ControlModifier);
  }
  QString lastRefusal() { return refused.isEmpty() ? QString() : refused.last().first().toString(); }
  QString file(const QString& name, const std::string& text) {
    QFile file(folder.filePath(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
    return file.fileName();
  }
  /// Presses the button of the question that is about to be asked.
  void answer(const QString& button) {
    QTimer::singleShot(0, [button] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_TRUE(box);
      for (QAbstractButton* one : box->buttons())
        if (one->text().remove('&') == button) return one->click();
      ADD_FAILURE() << "no button " << button;
      box->reject();
    });
  }

  Session session;
  StockPage page;
  QSignalSpy refused;
  QTemporaryDir folder;
};

TEST_F(Stock, ModelsKeepTheRulesOfItemModels) {
  for (const char* table : {"resistorTable", "boxTable", "seriesTable"}) {
    const QAbstractItemModelTester tester(view(table).model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    session.edit("Empty", core::withStock(session.document(), {}));
    session.history().undo();
  }
  EXPECT_EQ(stock(), ownStock());
}

TEST_F(Stock, ShowsWhatIsOwnedAndWhatIsOverdue) {
  EXPECT_EQ(shown("resistorTable", 0, R::Id), "AF-0104");
  EXPECT_EQ(shown("resistorTable", 0, R::Value), "59.9 kΩ");
  EXPECT_EQ(shown("resistorTable", 0, R::CertificateValue), "59.906 kΩ");
  EXPECT_EQ(shown("resistorTable", 0, R::Expanded), "0.6 Ω");
  EXPECT_EQ(shown("resistorTable", 0, R::CoverageFactor), "2");
  EXPECT_EQ(shown("resistorTable", 0, R::Due), "2026-10-01 overdue");
  EXPECT_EQ(resistors().index(0, R::Due).data(Qt::ForegroundRole).value<QColor>(),
            coloursFor(QPalette()).fail);
  EXPECT_EQ(shown("resistorTable", 1, R::Due), "");
  EXPECT_EQ(shown("boxTable", 0, BoxModel::Dials), "10x10k 10x1k");
  EXPECT_EQ(shown("boxTable", 0, BoxModel::UpTo), "110 kΩ");
  EXPECT_EQ(shown("seriesTable", 0, SeriesModel::Values), "25");  // 24 in a decade and its upper end
  EXPECT_EQ(page.findChild<QLabel*>("stockSummary")->text(),
            "2 resistors, 1 decade box, 1 range of preferred values");
  EXPECT_EQ(page.findChild<QLabel*>("stockOverdue")->text(), "1 overdue");

  session.setToday(*core::dateFromText("2026-10-01"));
  EXPECT_EQ(shown("resistorTable", 0, R::Due), "2026-10-01") << "on the very day it is not yet overdue";
  EXPECT_FALSE(page.findChild<QLabel*>("stockOverdue")->isVisible());
}

TEST_F(Stock, TypedTextIsOneUndoStepInTheTradesNotation) {
  EXPECT_TRUE(set("resistorTable", 1, R::Value, "59k9"));
  EXPECT_EQ(stock().resistors[1].nominal, core::Resistance(59900));
  EXPECT_EQ(session.history().undoText(), "Change resistor of the stock");
  EXPECT_TRUE(set("resistorTable", 1, R::Tolerance, "±50 ppm"));
  EXPECT_EQ(stock().resistors[1].tolerance, 50e-6);
  EXPECT_TRUE(set("resistorTable", 1, R::Tolerance, "0,1"));
  EXPECT_EQ(stock().resistors[1].tolerance, 1e-3) << "a number alone is in per cent";
  EXPECT_TRUE(set("resistorTable", 1, R::Due, "2027-03-01"));
  EXPECT_EQ(stock().resistors[1].due, core::dateFromText("2027-03-01"));
  EXPECT_TRUE(set("resistorTable", 1, R::Rating, "0.5 W"));
  EXPECT_EQ(stock().resistors[1].rating, core::Power(0.5));
  EXPECT_TRUE(set("resistorTable", 1, R::FittedIn, "Amplifier 2"));
  EXPECT_TRUE(set("boxTable", 0, BoxModel::Dials, "10x100k 10x10k"));
  EXPECT_EQ(stock().boxes[0].decades[0].step, core::Resistance(100'000));
  EXPECT_TRUE(set("seriesTable", 0, SeriesModel::Series, "e96"));
  EXPECT_EQ(stock().series[0].series, core::ESeries::E96);
  EXPECT_EQ(session.history().count(), 8);
  EXPECT_TRUE(refused.isEmpty());
  for (int k = 0; k < 8; ++k) session.history().undo();
  EXPECT_EQ(stock(), ownStock());
}

TEST_F(Stock, BadTextIsRefusedWithItsPlaceAndChangesNothing) {
  const std::vector<std::tuple<const char*, int, QString, QString>> wrong = {
      {"resistorTable", R::Value, "0", "row 2, column Value"},
      {"resistorTable", R::Value, "1e12 ohm", "row 2, column Value"},
      {"resistorTable", R::Value, "5 V", "row 2, column Value"},
      {"resistorTable", R::Id, "AF-0104", "row 2, column Id"},
      {"resistorTable", R::Id, "AF-D1", "row 2, column Id"},
      {"resistorTable", R::Id, " ", "row 2, column Id"},
      {"resistorTable", R::Tolerance, "", "row 2, column Tolerance"},
      {"resistorTable", R::Tolerance, "200 %", "row 2, column Tolerance"},
      {"resistorTable", R::CertificateValue, "174.6k", "row 2, column U"},
      {"resistorTable", R::CertificateValue, "59.9k ± 1", "row 2, column Certificate"},
      {"resistorTable", R::Expanded, "1", "row 2, column U"},
      {"resistorTable", R::Due, "next year", "row 2, column Due"},
      {"resistorTable", R::Rating, "0", "row 2, column Rating"},
  };
  for (const auto& [table, column, text, place] : wrong) {
    refused.clear();
    EXPECT_FALSE(set(table, 1, column, text)) << text;
    EXPECT_TRUE(lastRefusal().startsWith(place)) << text << " " << lastRefusal();
  }
  EXPECT_FALSE(set("boxTable", 0, BoxModel::Dials, "10x1k 10x10k"));
  EXPECT_FALSE(set("boxTable", 0, BoxModel::Id, "AF-0105"));
  EXPECT_FALSE(set("seriesTable", 0, SeriesModel::Series, "E25"));
  EXPECT_FALSE(set("seriesTable", 0, SeriesModel::From, "1M"));
  EXPECT_EQ(stock(), ownStock());
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Stock, ACertificateIsTypedWithItsUncertainty) {
  EXPECT_TRUE(set("resistorTable", 1, R::CertificateValue, "174.66k ± 2")) << lastRefusal();
  EXPECT_EQ(stock().resistors[1].certificate,
            (core::Certificate{core::Resistance(174660), core::Resistance(2), 2}));
  EXPECT_TRUE(set("resistorTable", 1, R::CertificateValue, "174.67k")) << "U is there already";
  EXPECT_TRUE(set("resistorTable", 1, R::Expanded, "10 ppm"));
  EXPECT_DOUBLE_EQ(stock().resistors[1].certificate->expanded.base(), 1.7467);  // 174670 times 1e-5
  EXPECT_TRUE(set("resistorTable", 1, R::CoverageFactor, "2.1"));
  EXPECT_EQ(stock().resistors[1].certificate->coverageFactor, 2.1);
  EXPECT_TRUE(set("resistorTable", 1, R::Tolerance, "")) << "the certificate alone tells";
  EXPECT_TRUE(set("resistorTable", 1, R::Tolerance, "0.1 %"));
  EXPECT_TRUE(set("resistorTable", 1, R::CertificateValue, ""));
  EXPECT_FALSE(stock().resistors[1].certificate);
  EXPECT_EQ(shown("resistorTable", 1, R::Expanded), "");
}

TEST_F(Stock, APastedListAddsRowsInOneStep) {
  choose("resistorTable", 1, R::Id);
  paste(view("resistorTable"), "AF-0201\t58k0\t0.1 %\nAF-0202\t87k15\t0.1 %\nAF-0203\t174.65k\t0.1 %\n");
  EXPECT_TRUE(refused.isEmpty()) << lastRefusal();
  ASSERT_EQ(stock().resistors.size(), 4u);
  EXPECT_EQ(stock().resistors[1].id, "AF-0201");
  EXPECT_EQ(stock().resistors[3].nominal, core::Resistance(174650));
  EXPECT_EQ(session.history().count(), 1);

  paste(view("resistorTable"), "AF-0301\t58k0\t0.1 %\nAF-0302\t0\t0.1 %");
  EXPECT_EQ(stock().resistors[1].id, "AF-0201") << "all or nothing";
  paste(view("resistorTable"), "AF-0301\t58k0\t0.1 %\nAF-0301\t58k0\t0.1 %");
  EXPECT_TRUE(lastRefusal().contains("in the stock already")) << lastRefusal();
  EXPECT_EQ(session.history().count(), 1);
}

TEST_F(Stock, AnEmptyTableTakesAPastedList) {
  session.edit("Empty", core::withStock(session.document(), {}));
  view("resistorTable").setFocus();
  paste(view("resistorTable"), "AF-0201\t58k0\t0.1 %");
  ASSERT_EQ(stock().resistors.size(), 1u);
  EXPECT_EQ(stock().resistors[0].nominal, core::Resistance(58000));
  paste(view("boxTable"), "AF-D2\t10x10k 10x1k\t0.05\t0.1 %");
  ASSERT_EQ(stock().boxes.size(), 1u);
  EXPECT_EQ(stock().boxes[0].residual, core::Resistance(0.05));
  paste(view("seriesTable"), "E96\t10k\t1M\t1 %");
  ASSERT_EQ(stock().series.size(), 1u);
  paste(view("resistorTable"), "AF-0202\t58k0");
  EXPECT_EQ(stock().resistors.size(), 1u) << "no tolerance is made up";
  EXPECT_TRUE(lastRefusal().contains("olerance")) << lastRefusal();
}

TEST_F(Stock, ACopiedBlockIsPastedAsItWas) {
  view("resistorTable").setFocus();
  view("resistorTable")
      .selectionModel()
      ->select(QItemSelection(resistors().index(0, R::Id), resistors().index(1, R::Note)),
               QItemSelectionModel::ClearAndSelect);
  QTest::keyClick(&view("resistorTable"), Qt::Key_C, Qt::ControlModifier);
  const QString copied = QApplication::clipboard()->text();
  session.edit("Empty", core::withStock(session.document(), {}));
  paste(view("resistorTable"), copied);
  EXPECT_TRUE(refused.isEmpty()) << lastRefusal();
  EXPECT_EQ(stock().resistors, ownStock().resistors);
}

TEST_F(Stock, DeleteEmptiesWhatCanBeEmpty) {
  view("resistorTable")
      .selectionModel()
      ->select(QItemSelection(resistors().index(0, R::Id), resistors().index(0, R::UsedBy)),
               QItemSelectionModel::ClearAndSelect);
  QTest::keyClick(&view("resistorTable"), Qt::Key_Delete);
  EXPECT_TRUE(refused.isEmpty()) << lastRefusal();
  EXPECT_EQ(stock().resistors[0],
            (core::Resistor{.id = "AF-0104", .nominal = core::Resistance(59900), .tolerance = 1e-4}));
}

TEST_F(Stock, TheNextIdOfTheLongestOneIsNoLonger) {
  // With letters to the end, with as many digits as are counted on, with a character that must not be cut in
  // two.
  for (const std::string& id :
       {std::string(60, 'x'), std::string(51, 'x') + std::string(9, '9'), std::string(58, 'x') + "\u00B5"}) {
    core::Stock stock;
    stock.resistors.push_back({.id = id, .nominal = core::Resistance(59900), .tolerance = 1e-4});
    ASSERT_TRUE(core::checkStock(stock));
    for (int k = 0; k < 12; ++k) {
      core::Resistor next = stock.resistors.front();
      next.id = nextId(stock, stock.resistors.back().id);
      EXPECT_FALSE(core::firstInvalidUtf8(next.id)) << next.id;
      stock.resistors.push_back(next);
    }
    EXPECT_TRUE(core::checkStock(stock)) << core::checkStock(stock).error().text();
  }
}

TEST_F(Stock, RowsAreAddedWithTheNextIdAndRemoved) {
  choose("resistorTable", 0, R::Id);
  click("addResistor");
  ASSERT_EQ(stock().resistors.size(), 3u);
  EXPECT_EQ(stock().resistors[1].id, "AF-0106") << "AF-0105 is taken";
  EXPECT_EQ(stock().resistors[1].nominal, core::Resistance(59900));
  EXPECT_FALSE(stock().resistors[1].certificate) << "a certificate belongs to one resistor";
  EXPECT_EQ(view("resistorTable").currentIndex().row(), 1);
  click("removeResistor");
  EXPECT_EQ(stock().resistors, ownStock().resistors);
  click("addBox");
  click("addSeries");
  EXPECT_EQ(stock().boxes.back().id, "AF-D2");
  EXPECT_EQ(stock().series.size(), 2u);
  click("removeBox");
  click("removeSeries");
  EXPECT_EQ(stock(), ownStock());
  session.edit("Empty", core::withStock(session.document(), {}));
  click("removeResistor");
  EXPECT_FALSE(refused.isEmpty());
  for (const char* button : {"addResistor", "addResistor", "addBox", "addSeries"}) click(button);
  EXPECT_EQ(stock().resistors.size(), 2u);
  EXPECT_TRUE(core::checkStock(stock())) << core::checkStock(stock()).error().text();
}

TEST_F(Stock, TypingAndChoosingWorkByKeyboard) {
  choose("resistorTable", 1, R::Value);
  QTest::keyClicks(&view("resistorTable"), "5");
  auto* editor = view("resistorTable").viewport()->findChild<QLineEdit*>();
  ASSERT_TRUE(editor);
  QTest::keyClicks(editor, "8k");
  QTest::keyClick(editor, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !view("resistorTable").viewport()->findChild<QLineEdit*>(); }));
  EXPECT_EQ(stock().resistors[1].nominal, core::Resistance(58000));

  choose("resistorTable", 1, R::UsedBy);
  QTest::keyClicks(&view("resistorTable"), "x");
  EXPECT_TRUE(lastRefusal().contains("worked out"));

  session.reset(core::withStock({}, ownStock()));  // a document without channels
  choose("seriesTable", 0, SeriesModel::Series);
  QTest::keyClick(&view("seriesTable"), Qt::Key_Return);
  auto* box = view("seriesTable").viewport()->findChild<QComboBox*>();
  ASSERT_TRUE(box);
  ASSERT_EQ(box->count(), static_cast<int>(core::eSeriesCount));
  box->setCurrentText("E192");
  QTest::keyClick(box, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !view("seriesTable").viewport()->findChild<QComboBox*>(); }));
  EXPECT_EQ(stock().series[0].series, core::ESeries::E192);
}

TEST_F(Stock, AFileIsImportedInOneStepAndExportedAgain) {
  const QString path = file("list.csv", "id,resistance,tolerance\nAF-0301,59k9,0.01 %\n");
  answer("Add");
  page.importFrom(path);
  ASSERT_EQ(stock().resistors.size(), 3u);
  EXPECT_EQ(stock().resistors[2].id, "AF-0301");
  EXPECT_EQ(session.history().undoText(), "Import resistors");
  answer("Add");
  page.importFrom(path);
  EXPECT_TRUE(lastRefusal().startsWith("list.csv, line 2, id: ")) << lastRefusal();
  EXPECT_TRUE(lastRefusal().contains("AF-0301")) << "the ids are there already";
  EXPECT_EQ(session.history().count(), 1);
  answer("Cancel");
  page.importFrom(path);
  EXPECT_EQ(stock().resistors.size(), 3u);
  answer("Replace");
  page.importFrom(path);
  EXPECT_EQ(stock().resistors.size(), 1u);
  EXPECT_TRUE(stock().boxes.empty());
  EXPECT_EQ(stock().series, ownStock().series) << "files hold no ranges";

  session.history().undo();
  page.exportTo(folder.filePath("out.csv"));
  QFile written(folder.filePath("out.csv"));
  ASSERT_TRUE(written.open(QIODevice::ReadOnly));
  const auto read = core::readStockFile(written.readAll().toStdString());
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(read->resistors, stock().resistors);
  EXPECT_EQ(read->boxes, stock().boxes);
}

TEST_F(Stock, ReturnAndEscapeAtTheQuestionOfAnImportLoseNothing) {
  const QString path = file("list.csv", "id,resistance,tolerance\nAF-0301,59k9,0.01 %\n");
  const auto press = [](Qt::Key key) {
    QTimer::singleShot(0, [key] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_TRUE(box);
      QTest::keyClick(box, key);
      if (box->isVisible()) box->reject(), ADD_FAILURE() << "the key presses nothing";
    });
  };
  press(Qt::Key_Escape);
  page.importFrom(path);
  EXPECT_EQ(session.history().count(), 0);
  press(Qt::Key_Return);
  page.importFrom(path);
  EXPECT_EQ(stock().resistors.size(), 3u) << "added to the two that were there";
  EXPECT_EQ(stock().boxes, ownStock().boxes);
}

TEST_F(Stock, ABadFileLeavesTheStockAsItIs) {
  page.importFrom(file("wrong.csv", "id,resistance,tolerance\nAF-0301,59k9,0.01 %\nAF-0302,0,0.01 %\n"));
  EXPECT_TRUE(lastRefusal().startsWith("wrong.csv, line 3, resistance")) << lastRefusal();
  page.importFrom(folder.filePath("none.csv"));
  EXPECT_EQ(refused.count(), 2);
  EXPECT_TRUE(lastRefusal().contains("none.csv")) << lastRefusal();
  page.importFrom(folder.path());
  EXPECT_EQ(refused.count(), 3) << "a folder is no list";
  page.exportTo(folder.filePath("no/such/folder.csv"));
  EXPECT_EQ(refused.count(), 4);
  page.importFrom(file("twice.csv", "id,resistance,tolerance\nA,1k,1 %\nB,1k,1 %\nA,2k,1 %\n"));
  EXPECT_TRUE(lastRefusal().startsWith("twice.csv, line 4, id")) << lastRefusal();
  EXPECT_TRUE(lastRefusal().contains("line 2")) << lastRefusal();
  EXPECT_EQ(session.history().count(), 0);
}

TEST_F(Stock, AnEmptyStockTakesAFileWithoutAsking) {
  session.edit("Empty", core::withStock(session.document(), {}));
  page.importFrom(file("list.csv", core::stockFileText(ownStock())));
  EXPECT_EQ(stock().resistors, ownStock().resistors);
  EXPECT_EQ(stock().boxes, ownStock().boxes);
}

TEST_F(Stock, ThePartOfAShuntComesFromTheStock) {
  ShuntModel shunts(session);
  const QAbstractItemModelTester tester(&shunts, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const auto shunt = [&]() -> const core::Shunt& { return session.channel()->setup.shunts[0]; };
  const auto cell = [&](int column) { return shunts.index(0, column).data().toString(); };
  const core::Part none = shunt().part;

  EXPECT_TRUE(shunts.setData(shunts.index(0, ShuntModel::Part), "AF-0104"));
  EXPECT_EQ(shunt().resistance, core::Resistance(59906)) << "as the certificate says";
  EXPECT_EQ(shunt().part.id, "AF-0104");
  EXPECT_EQ(cell(ShuntModel::Due), "2026-10-01 overdue");
  EXPECT_EQ(shunts.index(0, ShuntModel::Due).data(Qt::ForegroundRole).value<QColor>(),
            coloursFor(QPalette()).fail);
  EXPECT_EQ(session.history().undoText(), "Choose part of shunt");
  EXPECT_EQ(session.history().count(), 1);
  EXPECT_EQ(shown("resistorTable", 0, R::UsedBy), "TP-01: " + toQString(shunt().name));

  EXPECT_TRUE(set("resistorTable", 0, R::Due, "2027-10-01"));
  EXPECT_EQ(cell(ShuntModel::Part), "AF-0104, not as in stock");
  click("updateShunts");
  EXPECT_EQ(cell(ShuntModel::Part), "AF-0104");
  EXPECT_EQ(cell(ShuntModel::Due), "2027-10-01");
  click("updateShunts");
  EXPECT_EQ(refused.count(), 1) << "there is nothing more to take";

  EXPECT_TRUE(shunts.setData(shunts.index(0, ShuntModel::Part), "AF-D1"));
  EXPECT_EQ(shunt().resistance, core::Resistance(59906)) << "a box is set to what the shunt has";
  EXPECT_EQ(shown("boxTable", 0, BoxModel::UsedBy), "TP-01: " + toQString(shunt().name));
  EXPECT_TRUE(shunts.setData(shunts.index(0, ShuntModel::Due), "2026-01-31"));
  EXPECT_EQ(shunt().part.due, core::dateFromText("2026-01-31"));
  EXPECT_FALSE(shunts.setData(shunts.index(0, ShuntModel::Due), "2026-02-30"));
  EXPECT_TRUE(shunts.setData(shunts.index(0, ShuntModel::Part), "borrowed"));
  EXPECT_EQ(shunt().part, core::Part{.id = "borrowed"}) << "of another resistor nothing is known";
  EXPECT_TRUE(shunts.setData(shunts.index(0, ShuntModel::Part), ""));
  EXPECT_EQ(shunt().part, none);
}

TEST_F(Stock, PartsAreOfferedWithTheirValues) {
  ShuntModel shunts(session);
  SheetView table;
  table.setModel(&shunts);
  table.setItemDelegateForColumn(ShuntModel::Part, new PartDelegate(session, &table));
  table.resize(1200, 300);
  table.show();
  table.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&table));
  const auto isClosed = [&] { return !table.viewport()->findChild<QComboBox*>(); };
  const auto open = [&] {
    table.setCurrentIndex(shunts.index(0, ShuntModel::Part));
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Return);
    return table.viewport()->findChild<QComboBox*>();
  };
  auto* box = open();
  ASSERT_TRUE(box);
  EXPECT_EQ(box->count(), 3);
  EXPECT_EQ(box->currentText(), "");
  EXPECT_EQ(box->itemText(0), "AF-0104: 59.906 kΩ ±0.001 %, 2026-10-01 overdue");
  box->setCurrentText(box->itemText(1));
  QTest::keyClick(box, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor(isClosed));
  EXPECT_EQ(session.channel()->setup.shunts[0].part.id, "AF-0105");
  EXPECT_EQ(session.channel()->setup.shunts[0].resistance, core::Resistance(174650));

  box = open();
  ASSERT_TRUE(box);
  EXPECT_EQ(box->currentText(), "AF-0105");
  box->setCurrentText("own make");
  QTest::keyClick(box, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor(isClosed));
  EXPECT_EQ(session.channel()->setup.shunts[0].part, core::Part{.id = "own make"});
}

}  // namespace
}  // namespace ui
