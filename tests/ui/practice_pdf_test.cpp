// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_pdf.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "tests/support/practice_questions.h"
#include "ui/practice/practice_words.h"

namespace ui {
namespace {

using core::QuestionKind;

const QString title = "Practice, questions · First steps · seed 20260";

/// The pages of a PDF as another program (pdftotext of Poppler) reads them, white space made single.
QStringList pagesOf(const QByteArray& pdf) {
  EXPECT_FALSE(QStandardPaths::findExecutable("pdftotext").isEmpty())
      << "pdftotext is missing: apt-get install poppler-utils";
  const QTemporaryDir folder;
  QFile file(folder.filePath("sheets.pdf"));
  EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
  file.close();
  QProcess process;
  process.start("pdftotext", {"-layout", file.fileName(), "-"});
  EXPECT_TRUE(process.waitForFinished(60000));
  QStringList pages = QString::fromUtf8(process.readAllStandardOutput()).split('\f');
  pages.removeLast();  // after the last form feed
  for (QString& page : pages) page = page.simplified();
  return pages;
}

QStringList handMadePages(std::size_t count, bool answers) {
  const auto pdf = questionPages(title, test::handMadeSet(count, core::allQuestionKinds()), answers);
  EXPECT_TRUE(pdf) << (pdf ? "" : pdf.error().text());
  return pdf ? pagesOf(*pdf) : QStringList();
}

TEST(PracticePdf, EachPageHasTheSeedAndItsNumber) {
  for (const bool answers : {false, true}) {
    const QStringList pages = handMadePages(7, answers);
    ASSERT_GT(pages.size(), 2);
    for (qsizetype k = 0; k < pages.size(); ++k) {
      EXPECT_TRUE(pages[k].contains("seed 20260")) << k;
      EXPECT_TRUE(pages[k].contains(QString("Page %1 of %2").arg(k + 1).arg(pages.size()))) << k;
    }
  }
}

TEST(PracticePdf, QuestionSheetsAskEverythingAndTellNothing) {
  const QString text = handMadePages(5, false).join(" ");
  for (int k = 1; k <= 5; ++k) {
    EXPECT_EQ(text.count(QString("Question %1 · ").arg(k)), 1) << k;
    EXPECT_TRUE(text.contains(QString("Question %1: R1 is closed.").arg(k))) << k;
  }
  // Four of the five ask for a choice, the reading for a number.
  EXPECT_EQ(text.count("1 · a positive output"), 4);
  EXPECT_EQ(text.count("2 · a negative output"), 4);
  EXPECT_EQ(text.count("Reading in mV/V"), 1);
  EXPECT_TRUE(text.contains("175 k")) << "the drawing has letters: the shunt's value is in it";
  for (const char* told : {"S- rises", "2002", "0.4995", "Right"}) EXPECT_FALSE(text.contains(told)) << told;
  // Voltages at the nodes, as the drawing of the answer has them, would give it away.
  const QRegularExpression voltage("\\d\\.\\d{4} V");
  EXPECT_FALSE(text.contains(voltage));
  EXPECT_TRUE(handMadePages(5, true).join(" ").contains(voltage));
}

TEST(PracticePdf, AnswerSheetsHaveAKeyTheReasonAndTheFormula) {
  const QStringList pages = handMadePages(5, true);
  const QString text = pages.join(" ");
  EXPECT_EQ(text.count("Right: 2: a negative output"), 4);
  EXPECT_EQ(text.count("S- rises, so that the output falls."), 5);
  EXPECT_EQ(text.count("-350 / (4 x 175000 + 2 x 350) = -1/2002"), 5);
  // -1000/2002 is -0.4995; once in the key and once at the question.
  EXPECT_EQ(text.count("\u22120.4995 mV/V, within 5 %"), 2);
  EXPECT_TRUE(pages.front().contains("4 What reading \u22120.4995 mV/V")) << pages.front().toStdString();
}

TEST(PracticePdf, NoQuestionIsCutByAPagesEnd) {
  for (const bool answers : {false, true}) {
    const QStringList pages = handMadePages(12, answers);
    int whole = 0;
    for (const QString& page : pages) {
      const qsizetype heads = page.count(QRegularExpression("Question \\d+ · "));
      const QString end = answers ? "-1/2002" : "R1 is closed";
      EXPECT_EQ(page.count(end), heads) << page.toStdString();
      whole += static_cast<int>(heads);
    }
    EXPECT_EQ(whole, 12);
    EXPECT_LE(pages.size(), 8) << "about two go on a page";
  }
}

TEST(PracticePdf, TheSameSetGivesTheSameSheetsWhateverTheDecimalMark) {
  const std::vector<QuestionKind> kinds = {QuestionKind::Sign};
  const auto sheets = [&](std::uint64_t seed) {
    const auto pdf = practicePdf(seed, 3, core::Difficulty::First, kinds, true);
    EXPECT_TRUE(pdf) << (pdf ? "" : pdf.error().text());
    return pdf ? pagesOf(*pdf).join(" ") : QString();
  };
  const QString point = sheets(11);
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  EXPECT_EQ(QLocale().decimalPoint(), ",");
  const QString comma = sheets(11);
  QLocale::setDefault(before);
  EXPECT_EQ(point, comma);
  EXPECT_NE(sheets(12), point);
  EXPECT_TRUE(point.contains("seed 11"));
}

TEST(PracticePdf, TextOfAQuestionIsNeverMarkup) {
  std::vector<core::Question> questions = {test::handMade(QuestionKind::Sign, 0)};
  questions[0].text = "<b>R1</b> & <img src=\"0\"> closes.";
  const auto pdf = questionPages(title, questions, false);
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(pagesOf(*pdf).join(" ").contains("<b>R1</b> & <img src=\"0\"> closes."));
}

TEST(PracticePdf, StopsWhenAskedToAndTellsItsProgress) {
  std::stop_source stop;
  stop.request_stop();
  EXPECT_FALSE(practicePdf(1, 3, core::Difficulty::First, {QuestionKind::Sign}, false, {}, stop.get_token()));
  double last = 0;
  bool rising = true;
  const auto pdf = practicePdf(1, 3, core::Difficulty::First, {QuestionKind::Sign}, false, [&](double share) {
    rising = rising && share >= last;
    last = share;
  });
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(rising);
  EXPECT_EQ(last, 1.0);
}

TEST(PracticePdf, NoneAndTooManyAreRefused) {
  for (const std::size_t count : {std::size_t{0}, std::size_t{1001}})
    EXPECT_FALSE(practicePdf(1, count, core::Difficulty::First, {QuestionKind::Sign}, false)) << count;
}

}  // namespace
}  // namespace ui
