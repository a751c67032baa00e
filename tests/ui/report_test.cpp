// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cmath>

#include "core/document/edits.h"
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

/// The text of a PDF as another program reads it, white space made single.
QString textOf(const QByteArray& pdf) {
  QTemporaryDir folder;
  const QString path = folder.filePath("report.pdf");
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
  file.close();
  return outputOf("pdftotext", {"-layout", path, "-"}).simplified();
}

TEST(ReportPdf, AnotherProgramReadsNamesVerdictsCautionsAndPageNumbers) {
  if (!havePoppler()) GTEST_SKIP() << "pdftotext is not installed";
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001.2), checked("TP-31", -900)}));
  ASSERT_TRUE(pdf) << pdf.error().text();
  const QString text = textOf(*pdf);
  for (const char* part : {"Sandpiper tailplane", "Channel TP-01", "Channel TP-31", "Pass: all 2 steps",
                           "Fail: 1 of 2 steps", "Changed: 1 of 2", "Page 1 of", "Prepared", "R. Alder"})
    EXPECT_TRUE(text.contains(part)) << part;
  for (const std::string& caution : core::cautions())
    EXPECT_TRUE(text.contains(QString::fromStdString(caution).left(40))) << caution;
}

TEST(ReportPdf, EveryPageHasItsNumber) {
  if (!havePoppler()) GTEST_SKIP() << "pdftotext is not installed";
  const auto pdf = reportPdf(documentWith({checked("TP-01", -1001), checked("TP-02", -1001)}));
  ASSERT_TRUE(pdf);
  const QString text = textOf(*pdf);
  const int pages = text.mid(text.indexOf("Page 1 of ") + 10).section(' ', 0, 0).toInt();
  ASSERT_GT(pages, 1);
  for (int page = 1; page <= pages; ++page)
    EXPECT_EQ(text.count(QString("Page %1 of %2").arg(page).arg(pages)), 1) << page;
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

TEST(ReportPdf, HostileNamesAreShownAsTyped) {
  if (!havePoppler()) GTEST_SKIP() << "pdftotext is not installed";
  const auto pdf = reportPdf(documentWith({checked("<b>TP</b>&lt;%1", -1001)}));
  ASSERT_TRUE(pdf);
  EXPECT_TRUE(textOf(*pdf).contains("Channel <b>TP</b>&lt;%1"));
}

TEST(ReportPdf, AReadingThatIsNoNumberNeverPasses) {
  if (!havePoppler()) GTEST_SKIP() << "pdftotext is not installed";
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
