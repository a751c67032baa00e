// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cmath>

#include "core/document/edits.h"
#include "core/plan/prediction.h"
#include "core/report/report.h"
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
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001.2), checked("TP-31", -900)}));
  ASSERT_TRUE(pdf) << pdf.error().text();
  const QString text = textOf(*pdf);
  for (const char* part : {"Sandpiper tailplane", "Channel TP-01", "Channel TP-31", "Pass: all 2 steps",
                           "Fail: 1 of 2 steps", "Changed: 1 of 2", "Page 1 of", "Prepared", "R. Alder"})
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
    EXPECT_TRUE(foot.startsWith("Shuntwright 7.8.9 · 2031-05-04 Page ")) << foot.toStdString();
  }
}

TEST(ReportPdf, EightChannelsStayUnderFourPagesEach) {
  std::vector<core::Channel> channels;
  for (int k = 0; k < 8; ++k) channels.push_back(checked("TP-0" + std::to_string(k), -1001));
  const auto pdf = reportPdf(documentWith(channels));
  ASSERT_TRUE(pdf);
  const auto pages = pdf->count("/Type /Page\n");
  EXPECT_GE(pages, 8);
  EXPECT_LE(pages, 32);
}

core::Document sevenTwiceChecked() {
  std::vector<core::Channel> channels;
  for (int k = 1; k <= 7; ++k) channels.push_back(twiceChecked("TP-0" + std::to_string(k), k == 2 ? 40 : 0));
  return documentWith(channels);
}

TEST(ReportPdf, NineStepsAndTwoChecksTakeLessThanFivePagesAChannel) {
  const auto pdf = reportPdf(sevenTwiceChecked());
  ASSERT_TRUE(pdf);
  const auto pages = pdf->count("/Type /Page\n");
  EXPECT_GE(pages, 14);
  // Figures of merit with their definitions make it 4.7 a channel; the summary, signatures, and one for the
  // channel that fails.
  EXPECT_LE(pages, 33 + 3);
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
  for (const core::Section& section : core::reportOf(document).sections) {
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

TEST(ReportPdf, AnEmptyDocumentIsAReportToo) {
  const auto pdf = reportPdf({});
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(pdf->startsWith("%PDF-"));
}

}  // namespace
}  // namespace ui
