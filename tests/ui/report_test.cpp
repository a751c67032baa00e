// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QEventLoop>
#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/document/edits.h"
#include "core/plan/prediction.h"
#include "core/record/fingerprint.h"
#include "core/report/report.h"
#include "ui/document_file.h"
#include "ui/locale.h"
#include "ui/report/book_maker.h"
#include "ui/report/page_blocks.h"
#include "ui/report/page_table.h"
#include "ui/report_pdf.h"

namespace ui {
namespace {

core::Channel checked(const std::string& name, double reading) {
  core::Channel channel;
  channel.name = name;
  using core::Node;
  channel.setup.shunts = {
      {"R1", core::Resistance(174650), Node::Arm1Begin, Node::Arm1End, core::Resistance(0)}};
  channel.setup.sequence = {{"zero", {}, core::Duration(2)}, {"closed", {0}, core::Duration(2)}};
  for (const std::size_t check : {0, 1}) {
    channel = core::withCheckAdded(channel, core::Check{});
    channel.checks[check].readings[0] = core::Measured{core::Reading(0), {}, {}, {}};
    channel.checks[check].readings[1] =
        core::Measured{core::Reading(check == 0 ? -1001 : reading), {}, {}, {}};
  }
  return channel;
}

/// Six shunts, nine steps, two checks; `off` is what every reading but the first is off by.
core::Channel twiceChecked(const std::string& name, double off) {
  using core::Node;
  core::Channel channel;
  channel.name = name;
  channel.note = "Front spar cap, root, upper skin";
  channel.setup.sequence = {{"zero", {}, core::Duration(2)}};
  for (const bool first : {true, false}) {
    const Node a = first ? Node::Arm1Begin : Node::Arm2Begin, b = first ? Node::Arm1End : Node::Arm2End;
    for (const double kilohm : {332, 165, 110}) {
      const std::size_t shunt = channel.setup.shunts.size();
      channel.setup.shunts.push_back({"shunt " + std::to_string(shunt + 1), core::Resistance(kilohm * 1e3), a,
                                      b, core::Resistance(0.2)});
      channel.setup.sequence.push_back({"step", {shunt}, core::Duration(2)});
    }
    channel.setup.sequence.push_back({"zero", {}, core::Duration(2)});
  }
  const auto predicted = core::predict(channel.setup).steps;
  for (const std::size_t check : {0, 1}) {
    channel = core::withCheckAdded(channel, core::Check{});
    channel.checks[check].recording =
        core::RecordingReference{"recordings/check.csv", 1234, std::string(64, 'e'), name};
    for (std::size_t step = 0; step < predicted.size(); ++step)
      channel.checks[check].readings[step] =
          core::Measured{predicted[step]->reading + core::Reading(step == 0 ? 0 : off), {}, {}, {}};
  }
  return channel;
}

core::Document documentWith(std::vector<core::Channel> channels) {
  core::Document document;
  document.title = "Sandpiper tailplane";
  document.person = "R. Alder";
  for (core::Channel& channel : channels)
    document = core::withChannelInserted(std::move(document), document.channels.size(), std::move(channel));
  return document;
}

bool havePoppler() { return !QStandardPaths::findExecutable("pdftotext").isEmpty(); }

QString outputOf(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60000));
  return QString::fromUtf8(process.readAllStandardOutput());
}

/// What pdftotext makes of a PDF.
QString readBy(const QStringList& options, const QByteArray& pdf) {
  QTemporaryDir folder;
  const QString path = folder.filePath("report.pdf");
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
  file.close();
  return outputOf("pdftotext", options + QStringList{path, "-"});
}

/// The text of a PDF as another program reads it, white space made single.
QString textOf(const QByteArray& pdf) { return readBy({"-layout"}, pdf).simplified(); }

/// A word and where another program finds it on its page, in points from the page's top.
struct PlacedWord {
  QString text;
  double top, bottom;
};

std::vector<PlacedWord> placedWords(const QByteArray& pdf) {
  const QRegularExpression word("yMin=\"([0-9.]+)\" xMax=\"[0-9.]+\" yMax=\"([0-9.]+)\">([^<]*)</word>");
  std::vector<PlacedWord> words;
  for (auto found = word.globalMatch(readBy({"-bbox"}, pdf)); found.hasNext();) {
    const auto match = found.next();
    words.push_back({match.captured(3), match.captured(1).toDouble(), match.captured(2).toDouble()});
  }
  return words;
}

TEST(ReportPdf, AnotherProgramReadsNamesVerdictsCautionsAndPageNumbers) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  core::Channel moved = checked("TP-31", -900);
  for (core::Check& check : moved.checks)  // or nobody could tell whether anything changed
    for (auto& reading : check.readings) reading->uncertainty = core::Reading(0.5);
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001.2), moved}));
  ASSERT_TRUE(pdf) << pdf.error().text();
  const QString text = textOf(*pdf);
  for (const char* part : {"Sandpiper tailplane", "Channel TP-01", "Channel TP-31", "Pass: all 2 steps",
                           "Fail: 1 of 2 steps", "Changed by ", "Page 1 of", "Prepared", "R. Alder"})
    EXPECT_TRUE(text.contains(part)) << part;
  for (const std::string& caution : core::cautions())
    EXPECT_TRUE(text.contains(QString::fromStdString(caution).left(40))) << caution;
}

TEST(ReportPdf, ReadsTheSameWhateverTheUsersDecimalMark) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const core::Document document = documentWith({checked("TP-01", -1001)});
  const auto point = reportPdf(document);
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  const auto comma = reportPdf(document);
  EXPECT_EQ(QLocale().decimalPoint(), ",");
  QLocale::setDefault(before);
  ASSERT_TRUE(point && comma);
  EXPECT_EQ(textOf(*point), textOf(*comma));
}

TEST(ReportPdf, EveryPageHasItsNumber) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001), checked("TP-02", -1001)}));
  ASSERT_TRUE(pdf);
  const QString text = textOf(*pdf);
  const int pages = text.mid(text.indexOf("Page 1 of ") + 10).section(' ', 0, 0).toInt();
  ASSERT_GT(pages, 1);
  for (int page = 1; page <= pages; ++page)
    EXPECT_EQ(text.count(QString("Page %1 of %2").arg(page).arg(pages)), 1) << page;
}

TEST(ReportPdf, EveryPageSaysProgramVersionAndDate) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const ReportStamp stamp{"7.8.9", QDate(2031, 5, 4)};
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001), checked("TP-02", -1001)}), {}, {}, stamp);
  ASSERT_TRUE(pdf);
  const QStringList pages = readBy({"-layout"}, *pdf).split('\f', Qt::SkipEmptyParts);
  ASSERT_GT(pages.size(), 1);
  for (const QString& page : pages) {
    const QString foot = page.trimmed().section('\n', -1).simplified();
    EXPECT_TRUE(foot.startsWith("Shuntwright 7.8.9 · 2031-05-04 · fingerprint ")) << foot.toStdString();
    EXPECT_TRUE(foot.contains(" Page ")) << foot.toStdString();
  }
}

/// What a bench report holds: cover, wiring, working, trend and papers are left out.
core::ReportOrder benchOrder() {
  using enum core::ReportPart;
  core::ReportOrder order;
  order.content.parts = {Summary,  Schematic, Setup,  Plan,      Budget,
                         Readings, Chart,     Merits, Diagnosis, Comparison};
  return order;
}

TEST(ReportPdf, EightChannelsStayUnderFivePagesEach) {
  std::vector<core::Channel> channels;
  for (int k = 0; k < 8; ++k) channels.push_back(checked("TP-0" + std::to_string(k), -1001));
  const auto pdf = reportPdf(documentWith(channels), benchOrder());
  ASSERT_TRUE(pdf);
  const auto pages = pdf->count("/Type /Page\n");
  EXPECT_GE(pages, 8);
  EXPECT_LE(pages, 40);
}

core::Document sevenTwiceChecked() {
  std::vector<core::Channel> channels;
  for (int k = 1; k <= 7; ++k) channels.push_back(twiceChecked("TP-0" + std::to_string(k), k == 2 ? 40 : 0));
  return documentWith(channels);
}

TEST(ReportPdf, NineStepsAndTwoChecksTakeLessThanSixPagesAChannel) {
  const auto pdf = reportPdf(sevenTwiceChecked(), benchOrder());
  ASSERT_TRUE(pdf);
  const auto pages = pdf->count("/Type /Page\n");
  EXPECT_GE(pages, 14);
  // Each channel begins a page; the summary is among them.
  EXPECT_LT(pages, 7 * 6);
}

TEST(ReportPdf, NothingIsDrawnOnTwoPages) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(sevenTwiceChecked());
  ASSERT_TRUE(pdf);
  // The text keeps 26 mm from top and bottom of 297 mm; beyond it are only the lines with title and number,
  // 10 mm further out. A line that belongs to the next page, cut off, is still in the file.
  const double top = 26 / 25.4 * 72, bottom = 271 / 25.4 * 72, line = 6 / 25.4 * 72;
  const auto words = placedWords(*pdf);
  ASSERT_GT(words.size(), 1000U);
  for (const PlacedWord& word : words) {
    EXPECT_FALSE(word.bottom > bottom + 1 && word.top < bottom + line) << word.text.toStdString();
    EXPECT_FALSE(word.top < top - 1 && word.bottom > top - line + 1) << word.text.toStdString();
  }
}

TEST(ReportPdf, NoHeadingOrCaptionEndsAPage) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const core::Document document = sevenTwiceChecked();
  QStringList headings;
  for (const core::Section& section : core::reportOf(document, core::ReportOrder{}).sections) {
    headings << QString::fromStdString(section.heading);
    for (const core::Block& block : section.blocks) {
      if (const auto* table = std::get_if<core::Table>(&block))
        headings << QString::fromStdString(table->caption);
      if (const auto* list = std::get_if<core::EntryList>(&block))
        headings << QString::fromStdString(list->caption);
    }
  }
  const auto pdf = reportPdf(document);
  ASSERT_TRUE(pdf);
  const QStringList pages = readBy({"-layout"}, *pdf).split('\f', Qt::SkipEmptyParts);
  ASSERT_GT(pages.size(), 14);
  for (const QString& page : pages) {
    const QStringList lines = page.split('\n').filter(QRegularExpression("\\S"));
    ASSERT_GT(lines.size(), 2);
    ASSERT_TRUE(lines.back().contains("Page ")) << lines.back().toStdString();
    EXPECT_FALSE(headings.contains(lines[lines.size() - 2].trimmed())) << page.toStdString();
  }
}

TEST(ReportPdf, TheLastSentenceOfAChannelDoesNotMoveToTheNextOnesPage) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  std::vector<core::Channel> planned;
  for (int k = 1; k <= 7; ++k) {
    planned.push_back(twiceChecked("TP-0" + std::to_string(k), 0));
    planned.back().checks.clear();
  }
  const auto pdf = reportPdf(documentWith(planned));
  ASSERT_TRUE(pdf);
  EXPECT_EQ(textOf(*pdf).count("The channel has not been checked."), 7);
  for (const QString& page : readBy({"-layout"}, *pdf).split('\f', Qt::SkipEmptyParts)) {
    const QStringList lines = page.split('\n').filter(QRegularExpression("\\S"));
    ASSERT_GT(lines.size(), 2);
    EXPECT_FALSE(lines[1].contains("has not been checked")) << page.toStdString();  // below the title
    EXPECT_FALSE(lines[1].contains("No channel has been checked")) << page.toStdString();
  }
}

TEST(ReportPdf, TheBridgeIsDrawnWithLettersOfSevenPoints) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  core::Channel channel = twiceChecked("TP-01", 0);
  channel.setup.instrument.excitation = core::Voltage(6.1234);  // a number that stands nowhere else
  const auto pdf = reportPdf(documentWith({channel}));
  ASSERT_TRUE(pdf);
  int seen = 0;
  for (const PlacedWord& word : placedWords(*pdf)) {
    if (word.text != "6.1234") continue;
    ++seen;
    // From ascender to descender DejaVu Sans is 1.16 of its size, to two places.
    EXPECT_GE(word.bottom - word.top, 1.16 * 7 - 0.05);
    EXPECT_LE(word.bottom - word.top, 1.17 * 9);
  }
  EXPECT_GE(seen, 2);  // beside the source and at terminal P+
}

TEST(ReportPdf, HostileNamesAreShownAsTyped) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(documentWith({checked("<b>TP</b>&lt;%1", -1001)}));
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(textOf(*pdf).contains("Channel <b>TP</b>&lt;%1"));
}

TEST(ReportPdf, AReadingThatIsNoNumberNeverPasses) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(documentWith({checked("TP-01", std::nan(""))}));
  ASSERT_TRUE(pdf);
  const QString text = textOf(*pdf);
  EXPECT_TRUE(text.contains("Step 2 fails. The reading is no finite number."));
  EXPECT_FALSE(text.contains("nan", Qt::CaseInsensitive));
}

TEST(ReportPdf, TellsItsProgressAndStops) {
  const core::Document document = documentWith({checked("TP-01", -1001)});
  std::vector<double> told;
  ASSERT_TRUE(reportPdf(document, [&](double share) { told.push_back(share); }));
  ASSERT_FALSE(told.empty());
  EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
  EXPECT_EQ(told.back(), 1.0);

  std::stop_source stop;
  const auto stopped = reportPdf(
      document, [&](double) { stop.request_stop(); }, stop.get_token());
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().what, "was stopped before it was finished");
}

/// What `program` says about a PDF.
QString toldBy(const QString& program, const QStringList& options, const QByteArray& pdf) {
  QTemporaryDir folder;
  const QString path = folder.filePath("report.pdf");
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
  file.close();
  return outputOf(program, options + QStringList{path});
}

TEST(ReportPdf, AllFontsAreEmbeddedAndHaveTheirLetters) {
  ASSERT_TRUE(havePoppler()) << "pdffonts is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(documentWith({checked("TP-01", -900)}));
  ASSERT_TRUE(pdf);
  const QStringList lines = toldBy("pdffonts", {}, *pdf).split('\n', Qt::SkipEmptyParts);
  ASSERT_GT(lines.size(), 2);
  // name, type, encoding, emb, sub, uni, object: as pdffonts(1) of poppler prints them.
  for (const QString& line : lines.mid(2))
    EXPECT_TRUE(line.contains(QRegularExpression("yes +\\S+ +yes +\\d+ +\\d+$"))) << line.toStdString();
}

TEST(ReportPdf, ProgramsFindTitleAuthorSubjectAndFingerprint) {
  ASSERT_TRUE(havePoppler()) << "pdfinfo is missing: apt-get install poppler-utils";
  core::Document document = documentWith({checked("TP-01", -1001)});
  document.person = "R. Älder (test) \\";
  document.article = "Sandpiper <2>";
  const auto fingerprint = core::fingerprintOf(document);
  ASSERT_TRUE(fingerprint);
  const auto pdf = reportPdf(document);
  ASSERT_TRUE(pdf);
  const QString info = toldBy("pdfinfo", {}, *pdf);
  EXPECT_TRUE(info.contains(QRegularExpression("Title: +Sandpiper tailplane\n"))) << info.toStdString();
  EXPECT_TRUE(info.contains(QRegularExpression("Author: +R\\. Älder \\(test\\) \\\\\n")))
      << info.toStdString();
  EXPECT_TRUE(info.contains("Sandpiper <2>"));
  EXPECT_TRUE(info.contains("shuntwright-fingerprint:" + QString::fromStdString(*fingerprint)));
  // As plain letters, for programs that look for them in the bytes.
  EXPECT_TRUE(pdf->contains("shuntwright-fingerprint:" + QByteArray::fromStdString(*fingerprint)));
  const QString xmp = toldBy("pdfinfo", {"-meta"}, *pdf);
  EXPECT_TRUE(xmp.contains("<shuntwright:fingerprint>" + QString::fromStdString(*fingerprint) + "<"));
  EXPECT_TRUE(xmp.contains("Sandpiper &lt;2&gt;"));
  EXPECT_TRUE(textOf(*pdf).contains(QString::fromStdString(core::shortFingerprint(*fingerprint))));
}

TEST(ReportPdf, OutlineAndContentsLeadToThePagesOfTheHeadings) {
  ASSERT_TRUE(havePoppler()) << "pdftohtml is missing: apt-get install poppler-utils";
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001), checked("TP-02", -900)}));
  ASSERT_TRUE(pdf);
  const QString xml = toldBy("pdftohtml", {"-xml", "-i", "-stdout"}, *pdf);
  const QStringList pages = readBy({"-layout"}, *pdf).split('\f', Qt::SkipEmptyParts);
  int outlined = 0;
  for (const char* heading : {"Channel TP-01", "Channel TP-02"}) {
    const auto item = QRegularExpression(QString("<item page=\"(\\d+)\">%1</item>").arg(heading)).match(xml);
    ASSERT_TRUE(item.hasMatch()) << heading << xml.right(2000).toStdString();
    const int page = item.captured(1).toInt();
    ASSERT_LE(page, pages.size());
    // The heading stands there alone on a line, and the contents name that page.
    EXPECT_TRUE(pages[page - 1].contains(
        QRegularExpression(QString("^ *%1$").arg(heading), QRegularExpression::MultilineOption)))
        << pages[page - 1].toStdString();
    EXPECT_TRUE(textOf(*pdf).contains(QRegularExpression(QString("%1 %2 ").arg(heading).arg(page))));
    EXPECT_TRUE(xml.contains(QRegularExpression(QString("html#%1\">%2</a>").arg(page).arg(heading))));
    ++outlined;
  }
  EXPECT_EQ(outlined, 2);
}

TEST(ReportPdf, ATableOfManyPagesRepeatsItsHead) {
  ASSERT_TRUE(havePoppler()) << "pdftotext is missing: apt-get install poppler-utils";
  core::Report report{"Long", {{"One table", 1, {}}}};
  core::Table table{"Rows", {{"Number", true}, {"Word"}}, {}};
  for (int row = 1; row <= 200; ++row)
    table.rows.push_back({{std::to_string(row), "w" + std::to_string(row)}, {}});
  report.sections[0].blocks.push_back(table);
  ReportBook book(report);
  book.layOut(0);
  book.deal(1);
  ASSERT_GE(book.pageCount(), 3U);
  // Each row is dealt out once, each page begins with the head.
  const std::vector<Slice> slices = tableSlices(table, 1000 * dotsPerPoint);
  ASSERT_EQ(slices.size(), 201U);
  for (std::size_t k = 1; k < slices.size(); ++k) EXPECT_EQ(slices[k].head, slices[1].head);
}

TEST(ReportPdf, ACellOfMorePagesThanOneIsCutBetweenItsLines) {
  core::Report report{"Tall", {{"One cell", 1, {}}}};
  std::string words;
  for (int k = 0; k < 6000; ++k) words += "word ";
  report.sections[0].blocks.push_back(core::Table{"", {{"Text"}}, {{{words}, {}}}});
  ReportBook book(report);
  book.layOut(0);
  book.deal(1);
  // 6000 words of five letters, some 20 a line on paper of 178 mm, 60 lines a page: five pages, roughly.
  EXPECT_GE(book.pageCount(), 3U);
  EXPECT_LE(book.pageCount(), 9U);
}

TEST(PageBlocks, AVerdictOfManyLinesStaysOnOnePageWithWhatItIsAbout) {
  std::string words;
  for (int k = 0; k < 60; ++k) words += "word ";
  const auto heldOf = [&](const core::Paragraph& paragraph) {
    const core::Report report{"", {{"Check", 2, {paragraph, core::Paragraph{"What it is about", {}}}}}};
    const Chapter chapter = chapterOf(report, 0, 1, 200 * dotsPerPoint, 700 * dotsPerPoint, {});
    EXPECT_GT(chapter.slices.size(), 6U);
    return std::all_of(chapter.slices.begin(), chapter.slices.end() - 1,
                       [](const Slice& slice) { return slice.holdsNext; });
  };
  EXPECT_TRUE(heldOf({words, core::Verdict::Fail}));
  EXPECT_FALSE(heldOf({words, {}}));
}

TEST(PageText, LinesAreNoWiderThanAskedForAndLoseNothing) {
  const QString text =
      QString::fromUtf8("Ünïted words; a-very-long-" + QByteArray(300, 'x') + " 350 Ω ±0.1 %, ε");
  for (const double width : {40.0, 90.0, 400.0}) {
    QString joined;
    for (const TextLine& line : linesOf(text, Look::Body, width * dotsPerPoint)) {
      EXPECT_LE(line.width, width * dotsPerPoint + 0.5);  // the half dot that sums may be off by
      joined += line.text;
    }
    EXPECT_EQ(joined.remove(' '), QString(text).remove(' '));
  }
}

TEST(PageTable, ColumnsShareTheWidthAndKeepWhatTheyNeed) {
  // Enough for all: in proportion to what they want. Derived: 300 of 100 + 200.
  EXPECT_EQ(columnWidths({10, 10}, {100, 200}, {0, 0}, 600), (std::vector<double>{200, 400}));
  // Too little: least, and what is left by what each gives up. Derived: 10 + 90 (150 - 20) / 280 and 10 + 190
  // of it.
  const auto tight = columnWidths({10, 10}, {100, 200}, {0, 0}, 150);
  EXPECT_NEAR(tight[0], 10 + 90 * 130.0 / 280, 1e-9);  // rounding of a few operations
  EXPECT_NEAR(tight[0] + tight[1], 150, 1e-9);
  // A fixed one has its width.
  EXPECT_EQ(columnWidths({10, 10}, {100, 200}, {50, 0}, 350), (std::vector<double>{50, 300}));
}

TEST(PageTable, AWordWithoutAnEndTakesNothingFromTheColumnsBeside) {
  EXPECT_EQ(columnWidths({5000, 40, 60}, {5000, 80, 90}, {0, 0, 0}, 300), (std::vector<double>{200, 40, 60}));
  // Two of them share what is left.
  EXPECT_EQ(columnWidths({5000, 40, 9000}, {5000, 80, 9000}, {0, 0, 0}, 300),
            (std::vector<double>{130, 40, 130}));
  EXPECT_EQ(columnWidths({5000, 40, 60}, {5000, 80, 90}, {50, 0, 0}, 110), (std::vector<double>{50, 30, 30}));
}

/// Every table of the demo's full record in `code`.
std::vector<core::Table> tablesIn(const char* code) {
  const auto document = openDocument(SHUNTWRIGHT_SOURCE_DIR "/examples/demo.bridgecal");
  core::ReportOrder order;
  order.content.language = code;
  order.content.localNumbers = true;
  order.language = languageFor(code, true);
  std::vector<core::Table> tables;
  for (const core::Section& section : core::reportOf(*document, order).sections)
    for (const core::Block& block : section.blocks)
      if (const auto* table = std::get_if<core::Table>(&block)) tables.push_back(*table);
  return tables;
}

/// The words of the head as they are drawn; a line may end in a word's own hyphen.
QStringList headWords(const core::Table& table, double width) {
  QString words;
  const std::vector<Slice> slices = tableSlices(table, width);
  for (const auto& ink : slices.front().ink)
    if (const auto* text = std::get_if<InkText>(&ink))
      words += text->text + (text->text.endsWith('-') ? "" : " ");
  return words.split(' ');
}

TEST(PageTable, NoWordOfAHeadIsBrokenInAnyLanguage) {
  constexpr double paper = 178 * dotsPerMm;  // A4 between margins of 16 mm
  for (const char* code : {"en", "de"}) {
    const auto tables = tablesIn(code);
    ASSERT_GT(tables.size(), 10U);
    for (const core::Table& table : tables) {
      const QStringList drawn = headWords(table, paper);
      for (const core::TableColumn& column : table.columns)
        for (const QString& word : QString::fromStdString(column.name).split(' ', Qt::SkipEmptyParts))
          EXPECT_TRUE(drawn.contains(word)) << code << ": " << word.toStdString() << " in “" << table.caption
                                            << "”, column " << column.name;
    }
  }
}

TEST(PageTable, ColumnsOfOneTableHaveNamesOfTheirOwn) {
  for (const char* code : {"en", "de"})
    for (const core::Table& table : tablesIn(code)) {
      std::set<std::string> names;
      for (const core::TableColumn& column : table.columns)
        EXPECT_TRUE(column.name.empty() || names.insert(column.name).second)
            << code << ": two columns of “" << table.caption << "” are called " << column.name;
    }
}

TEST(ReportWords, TheReturnLeadIsInTheLanguage) {
  QStringList cells;
  for (const core::Table& table : tablesIn("de"))
    for (const core::TableRow& row : table.rows)
      for (const std::string& cell : row.cells) cells << QString::fromStdString(cell);
  EXPECT_TRUE(cells.contains("Rück"));
  EXPECT_TRUE(cells.filter(QRegularExpression("\\breturn\\b")).isEmpty())
      << cells.filter("return").join("; ").toStdString();
}

TEST(PageTable, AHeadWithoutAnEndStaysOnThePage) {
  core::Table table{"", {{"Step"}, {std::string(5000, 'C')}}, {}};
  for (int row = 0; row < 3; ++row) table.rows.push_back({{"1", "+1000"}, {}});
  const auto slices = tableSlices(table, 180 * dotsPerMm);
  ASSERT_EQ(slices.size(), 4U);
  EXPECT_LT(slices[0].height, 20 * dotsPerMm);
}

TEST(BookMaker, ShowsTheFirstPagesBeforeTheLast) {
  std::vector<core::Channel> channels;
  for (int k = 1; k <= 12; ++k) channels.push_back(twiceChecked("TP-" + std::to_string(k), 0));
  BookMaker maker(documentWith(channels), {});
  QEventLoop loop;
  std::size_t first = 0;
  QObject::connect(&maker, &BookMaker::grown, &loop, [&] {
    if (first == 0) first = maker.book()->pageCount();
  });
  QObject::connect(&maker, &BookMaker::finished, &loop, &QEventLoop::quit);
  loop.exec();
  ASSERT_TRUE(maker.isFinished());
  EXPECT_GT(first, 0U);
  EXPECT_TRUE(maker.book()->isWhole());
  EXPECT_GE(maker.book()->pageCount(), first);
  EXPECT_GE(maker.book()->marks().size(), 12U);
}

TEST(ReportPdf, AnEmptyDocumentIsAReportToo) {
  const auto pdf = reportPdf({});
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(pdf->startsWith("%PDF-"));
}

}  // namespace
}  // namespace ui
