// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/outcome/outcome_export.h"

#include <QAbstractButton>
#include <QClipboard>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include "core/report/step_row.h"
#include "tests/ui/outcome_shown.h"
#include "ui/outcome/figures_page.h"

namespace ui {
namespace {

QByteArray contentsOf(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return file.readAll();
}

/// Texts of an SVG picture by element name; fails when it is no XML.
QMap<QString, QStringList> elementsOf(const QByteArray& svg) {
  QMap<QString, QStringList> elements;
  QXmlStreamReader xml(svg);
  while (!xml.atEnd())
    if (xml.readNext() == QXmlStreamReader::StartElement) {
      const QString name = xml.name().toString();
      const bool text = name == "title" || name == "desc" || name == "text";
      elements[name] << (text ? xml.readElementText() : QString());
    }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return elements;
}

TEST(OutcomePages, AChangeThatIsNotThereIsNotCopied) {
  ShownView shown(oneCheck());
  shown.view.showPage(OutcomeView::Page::Change);
  QSignalSpy refused(&shown.view, &OutcomeView::refused);
  for (const char* name : {"outcomeCopyData", "outcomeCopyPicture"}) {
    auto* action = shown.view.findChild<QAction*>(name);
    ASSERT_TRUE(action) << name;
    action->trigger();
  }
  ASSERT_EQ(refused.count(), 2);
  EXPECT_EQ(refused[0][0].toString(), "There is nothing to copy or export: no two checks are compared.");
}

TEST(OutcomePages, EachButtonShowsItsPage) {
  ShownView shown(oneCheck());
  const std::pair<const char*, const char*> pages[] = {{"outcomeAsTable", "outcomeTable"},
                                                       {"outcomeAsFigures", "outcomeFiguresPage"},
                                                       {"outcomeAsCharts", "outcomeBars"}};
  for (const auto& [button, page] : pages) {
    shown.click(button);
    for (const auto& [otherButton, other] : pages)
      EXPECT_EQ(shown.find<QWidget>(other)->isVisible(), page == other) << page << ", " << other;
  }
  shown.click("outcomeAsDiagnosis");
  EXPECT_EQ(shown.view.page(), OutcomeView::Page::Diagnosis);
  EXPECT_FALSE(shown.find<QWidget>("outcomeBars")->isVisible());
  EXPECT_FALSE(shown.find<QWidget>("outcomeFigures")->isVisible());
  shown.click("outcomeAsWorking");
  EXPECT_EQ(shown.view.page(), OutcomeView::Page::Working);
}

TEST(OutcomePages, FiguresAreThereWithTheSentencesOfTheMerits) {
  ShownView shown(checkedWith(oneCheck(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6}), {490, 380});
  shown.session.compareWith(0);
  shown.click("outcomeAsFigures");
  QStringList texts;
  const QString joiner(QChar(0x2060));
  for (const QLabel* label : shown.find<FiguresPage>("outcomeFiguresPage")->findChildren<QLabel*>())
    if (label->isVisibleTo(&shown.view)) texts << label->text().remove(joiner);
  std::size_t merits = 0;
  for (const auto& check : shown.session.evaluation()->checks)
    for (const core::Merit& merit : check.assessment.merits) {
      EXPECT_TRUE(texts.contains(toQString(merit.reason))) << merit.reason;
      ++merits;
    }
  EXPECT_EQ(merits, 2 * core::meritKindCount);
  EXPECT_TRUE(texts.contains("Change of gain"));
  EXPECT_TRUE(texts.contains("fail"));  // the verdict of the later check, as a word
}

TEST(OutcomePages, FiguresInShortShowNoMoreThanFits) {
  ShownView shown(oneCheck(), {490, 600});
  auto* figures = shown.find<QWidget>("outcomeFigures");
  int visible = 0, all = 0;
  for (const QLabel* label : figures->findChildren<QLabel*>()) ++all, visible += label->isVisible();
  EXPECT_GT(visible, 0);
  EXPECT_LT(visible, all);
  EXPECT_LE(figures->height(), 600 / 6);
  EXPECT_TRUE(figures->accessibleDescription().contains("Steps judged"));
  shown.view.resize(490, 380);
  shown.settle();
  EXPECT_FALSE(figures->isVisible()) << "the charts need the room";
}

TEST(OutcomePages, FiguresBesideTheChartsAreAllThereAndScroll) {
  ShownView shown(oneCheck(), {1250, 450});
  const auto* figures = shown.find<QWidget>("outcomeFigures");
  for (const QLabel* label : figures->findChildren<QLabel*>())
    EXPECT_TRUE(label->isVisible()) << label->text().toStdString();
  const auto* room = shown.find<QScrollArea>("outcomeFiguresBeside");
  EXPECT_GE(room->verticalScrollBar()->maximum() + room->viewport()->height(), figures->height());
  EXPECT_GT(room->verticalScrollBar()->maximum(), 0);
  EXPECT_LE(figures->width(), room->viewport()->width());
}

TEST(OutcomePages, TheVerdictLeavesRoomInALowViewAndTheCautionStays) {
  core::Channel channel = checkedWith(twoLevels(), "pre-test", {0, 480, -1101.5, 90});
  for (core::MeritKind kind : {core::MeritKind::Nonlinearity, core::MeritKind::ZeroShift,
                               core::MeritKind::CombinedError, core::MeritKind::SpanRatio})
    channel.setup.limits.merits[kind] = 0.0001;
  ShownView shown(channel, {490, 380});
  auto* verdict = shown.find<QLabel>("outcomeVerdict");
  const std::string& whole = shown.session.evaluation()->checks[0].assessment.reason;
  EXPECT_LE(verdict->height(), 2 * verdict->fontMetrics().lineSpacing() + 4);
  EXPECT_TRUE(verdict->text().endsWith("…")) << verdict->text().toStdString();
  EXPECT_TRUE(verdict->toolTip().contains(toQString(whole).toHtmlEscaped()));
  EXPECT_TRUE(shown.find<QLabel>("outcomeScope")->isVisible());
  shown.click("outcomeAsFigures");
  EXPECT_FALSE(verdict->isVisible()) << "said on the page itself";
  QStringList texts;
  for (const QLabel* label : shown.find<FiguresPage>("outcomeFiguresPage")->findChildren<QLabel*>())
    texts << label->text().remove(QChar(0x2060));
  EXPECT_EQ(texts.count(toQString(whole)), 1);
}

TEST(OutcomePages, ThePageOnViewIsBold) {
  ShownView shown(oneCheck());
  shown.click("outcomeAsTable");
  for (const QAbstractButton* button : shown.find<QWidget>("outcomePages")->findChildren<QAbstractButton*>())
    EXPECT_EQ(button->font().bold(), button->objectName() == "outcomeAsTable");
}

TEST(OutcomeCopy, DataAreTheRowsOfTheSteps) {
  ShownView shown(oneCheck());
  shown.choose("outcomeShare", "outcomeCopyData");
  const QStringList lines = QApplication::clipboard()->text().split('\n', Qt::SkipEmptyParts);
  const auto rows = core::stepRows(*shown.session.channel(), *shown.session.evaluation(), 0);
  ASSERT_EQ(lines.size(), static_cast<qsizetype>(rows.size()) + 1);
  const QStringList head = lines[0].split('\t');
  EXPECT_EQ(head.value(4), "Simulated, µm/m");
  EXPECT_EQ(head.value(8), "Deviation, µm/m");
  for (std::size_t k = 0; k < rows.size(); ++k) {
    const QStringList cells = lines[static_cast<qsizetype>(k) + 1].split('\t');
    ASSERT_EQ(cells.size(), head.size());
    EXPECT_EQ(cells[0], "pre-test");
    EXPECT_EQ(cells[1].toInt(), static_cast<int>(k) + 1);
    const std::optional<double> values[] = {rows[k].simulated, rows[k].expected,  rows[k].reading,
                                            rows[k].change,    rows[k].deviation, rows[k].decided->expanded,
                                            rows[k].limit,     rows[k].residual};
    for (int column = 0; column < 8; ++column) {
      const QString cell = cells[4 + column];
      ASSERT_EQ(!cell.isEmpty(), values[column].has_value()) << column;
      // Fifteen digits are written.
      const double value = values[column].value_or(0);
      EXPECT_NEAR(cell.toDouble(), value, 1e-14 * std::abs(value));
    }
    EXPECT_EQ(cells.last(), toQString(core::verdictWord(rows[k].verdict)));
  }
  EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasHtml());
}

TEST(OutcomeCopy, NoLabelBecomesAFormulaNoNameATagAndNoCellTwo) {
  core::Channel channel = oneCheck();
  channel.setup.sequence[1].label = "=1+1";
  channel.setup.sequence[2].label = "a\tb\nc<b>";
  ShownView shown(channel);
  shown.choose("outcomeShare", "outcomeCopyData");
  const QStringList lines = QApplication::clipboard()->text().split('\n', Qt::SkipEmptyParts);
  ASSERT_EQ(lines.size(), 5);
  EXPECT_EQ(lines[2].split('\t').value(2), "'=1+1");
  EXPECT_EQ(lines[3].split('\t').value(2), "a b c<b>");
  EXPECT_TRUE(QApplication::clipboard()->mimeData()->html().contains("c&lt;b&gt;"));
}

// A spreadsheet takes "1,001.5" for text, or where the comma is the decimal sign for another number.
TEST(OutcomeCopy, DigitsAreNotGroupedAndALevelWithItsSignIsPlain) {
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  core::Channel channel = oneCheck();
  channel.setup.sequence[1].label = "+1";
  channel.setup.sequence[2].label = "-2,5";
  ShownView shown(channel);
  shown.choose("outcomeShare", "outcomeCopyData");
  const QStringList lines = QApplication::clipboard()->text().split('\n', Qt::SkipEmptyParts);
  QLocale::setDefault(QLocale::c());
  ASSERT_EQ(lines.size(), 5);
  EXPECT_EQ(lines[2].split('\t').value(2), "+1");
  EXPECT_EQ(lines[3].split('\t').value(2), "-2,5");
  EXPECT_EQ(lines[3].split('\t').value(7).toDouble(), -1001.5) << lines[3].toStdString();
}

TEST(OutcomeCopy, ThePictureIsLightAndTwiceTheSize) {
  ShownView shown(oneCheck());
  shown.view.setPalette(darkPalette());
  shown.choose("outcomeShare", "outcomeCopyPicture");
  const QImage image = QApplication::clipboard()->image();
  EXPECT_EQ(image.size(), 2 * outcomePictureSize(shownOutcome(shown.session)));
  EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
}

TEST(OutcomeExport, AnSvgIsXmlWithItsHeadingInLettersAndNoPixels) {
  const QTemporaryDir folder;
  core::Channel channel = oneCheck();
  channel.name = "TP <1> & \"co\"";
  ShownView shown(channel);
  ASSERT_TRUE(shown.view.exportTo(folder.filePath("out.svg")));
  const auto elements = elementsOf(contentsOf(folder.filePath("out.svg")));
  EXPECT_EQ(elements["title"],
            QStringList("Outcome of a shunt check. Channel TP <1> & \"co\", pre-test (2026-03-02)"));
  EXPECT_TRUE(elements["desc"].value(0).startsWith("Pass: "));
  const QString letters = elements["text"].join(' ');
  for (const char* word : {"pre-test", "2026-03-02", "Pass", "Deviation", "Simulated"})
    EXPECT_TRUE(letters.contains(word)) << word << " not in " << letters.toStdString();
  EXPECT_FALSE(elements.contains("image"));
}

TEST(OutcomeExport, PdfAndPngAreWhatTheirNamesSay) {
  const QTemporaryDir folder;
  ShownView shown(checkedWith(oneCheck(), "post-test", {5, 5 - 500.4, 5 - 1031.5, 6}));
  shown.session.compareWith(0);
  ASSERT_TRUE(shown.view.exportTo(folder.filePath("out.pdf")));
  ASSERT_TRUE(shown.view.exportTo(folder.filePath("out.PNG")));
  const QByteArray pdf = contentsOf(folder.filePath("out.pdf"));
  EXPECT_TRUE(pdf.startsWith("%PDF-"));
  EXPECT_TRUE(pdf.contains("%%EOF"));
  EXPECT_TRUE(pdf.contains("/Font")) << "letters are letters";
  EXPECT_FALSE(pdf.contains("/Subtype /Image"));
  // Derived: a page of 1200 x 760 points of 1/96 inch is 900 x 570 points of 1/72 inch.
  EXPECT_TRUE(pdf.contains("/MediaBox [0 0 900") && pdf.contains(" 570")) << pdf.left(800).toStdString();
  const QImage png(folder.filePath("out.PNG"));
  EXPECT_EQ(png.size(), QSize(2400, 1520));
}

TEST(OutcomeExport, WhatCannotBeWrittenIsRefusedInWords) {
  const QTemporaryDir folder;
  ShownView shown(oneCheck());
  QSignalSpy refused(&shown.view, &OutcomeView::refused);
  EXPECT_FALSE(shown.view.exportTo(folder.filePath("missing/out.svg")));
  EXPECT_FALSE(shown.view.exportTo(folder.path() + ".d/x.pdf"));
  EXPECT_FALSE(shown.view.exportTo(folder.filePath("out.txt")));
  ASSERT_EQ(refused.size(), 3);
  EXPECT_TRUE(refused[0][0].toString().startsWith("Not exported: "))
      << refused[0][0].toString().toStdString();
  EXPECT_TRUE(refused[2][0].toString().contains(".svg")) << refused[2][0].toString().toStdString();
  EXPECT_FALSE(QFile::exists(folder.filePath("out.txt")));

  shown.session.reset({});
  EXPECT_FALSE(shown.view.exportTo(folder.filePath("out.svg")));
  EXPECT_TRUE(refused.last()[0].toString().contains("No channel yet"));
}

TEST(OutcomeExport, TheSuggestedNameIsMadeOfChannelAndCheckAndSafe) {
  core::Channel channel = checkedWith(twoLevels(), "../../etc/pre test", {0});
  channel.name = "TP/1";
  Session session(sample::documentOf({channel}));
  EXPECT_EQ(suggestedName(shownOutcome(session)), "TP_1-______etc_pre_test");
}

}  // namespace
}  // namespace ui
