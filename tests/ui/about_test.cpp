// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/about/about_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>

#include "tests/support/printing.h"
#include "ui/about/libraries.h"

namespace {

using ui::AboutDialog;

/// The licence that Debian's own list of copyrights names for a library, in Debian's words; from
/// /usr/share/doc/PACKAGE/copyright of Debian 12, where the package is installed to build the program.
struct DebianLicence {
  const char* library;
  const char* package;
  const char* words;
  const char* spdx;
};

class AboutWindow : public testing::Test {
 protected:
  AboutWindow() { QApplication::setApplicationVersion("1.2.3"); }
  ~AboutWindow() override { QApplication::setApplicationVersion({}); }
};

TEST_F(AboutWindow, ShowsTheVersionAndTheWholeLicence) {
  AboutDialog dialog;
  EXPECT_TRUE(dialog.findChild<QLabel*>("aboutVersion")->text().contains("1.2.3"));
  const auto* text = dialog.findChild<QPlainTextEdit*>("aboutLicence");
  QFile licence(SHUNTWRIGHT_SOURCE_DIR "/LICENSE");
  ASSERT_TRUE(licence.open(QIODevice::ReadOnly));
  EXPECT_EQ(text->toPlainText(), QString::fromUtf8(licence.readAll()));
  EXPECT_TRUE(text->isReadOnly());
}

TEST_F(AboutWindow, ListsEveryLibraryWithVersionAndLicence) {
  AboutDialog dialog;
  const auto* table = dialog.findChild<QTableWidget*>("aboutLibraries");
  ASSERT_EQ(table->rowCount(), ui::libraries().size());
  for (int row = 0; row < table->rowCount(); ++row)
    for (int column = 0; column < table->columnCount(); ++column)
      EXPECT_FALSE(table->item(row, column)->text().isEmpty()) << row << ", " << column;
}

TEST_F(AboutWindow, NamesTheLicencesThatDebianNames) {
  const DebianLicence known[] = {
      {"Qt Charts", "libqt6charts6", "GPL-3+", "GPL-3.0-only"},
      {"Qt SVG", "libqt6svg6", "LGPL-3 or GPL-2", "LGPL-3.0-only OR GPL-2.0-only OR GPL-3.0-only"},
      {"Eigen", "libeigen3-dev", "MPL-2", "MPL-2.0"},
      {"JSON for Modern C++", "nlohmann-json3-dev", "Expat", "MIT"},
      {"CLI11", "libcli11-dev", "BSD-3-clause", "BSD-3-Clause"},
      {"libxlsxwriter", "libxlsxwriter-dev", "BSD-2-Clause", "BSD-2-Clause"},
      {"Minizip", "libminizip1", "zlib", "Zlib"},
      {"MAT File I/O Library", "libmatio-dev", "BSD-2-clause", "BSD-2-Clause"},
      {"HDF5", "libhdf5-dev", "BSD-3-clause", "BSD-3-Clause"},
      {"zlib", "zlib1g", "Zlib", "Zlib"},
  };
  for (const DebianLicence& one : known) {
    QFile file(QString("/usr/share/doc/%1/copyright").arg(one.package));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << one.package;
    const QString words = QString("License: +") + QRegularExpression::escape(one.words);
    EXPECT_TRUE(QString::fromUtf8(file.readAll()).contains(QRegularExpression(words))) << one.package;
    const QList<ui::Library> all = ui::libraries();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto& l) { return l.name == one.library; });
    ASSERT_NE(found, all.end()) << one.library;
    EXPECT_EQ(found->licence, one.spdx) << one.library;
  }
}

TEST_F(AboutWindow, CopiesWhatAFaultReportNeedsAndNothingOfTheUser) {
  qputenv("USER", "somebody");
  AboutDialog dialog;
  QSignalSpy said(&dialog, &AboutDialog::said);
  QTest::mouseClick(dialog.findChild<QPushButton*>("aboutCopy"), Qt::LeftButton);
  const QString text = QGuiApplication::clipboard()->text();
  for (const QString& needed : {QString("Shuntwright 1.2.3"), QString("Qt ") + qVersion(),
                                QGuiApplication::platformName(), QLocale().name(), QString("HDF5 ")})
    EXPECT_TRUE(text.contains(needed)) << needed.toStdString();
  EXPECT_FALSE(text.contains(QSysInfo::machineHostName()));
  EXPECT_FALSE(text.contains("somebody"));
  EXPECT_EQ(said.size(), 1);
}

TEST_F(AboutWindow, LeadsToTheCautions) {
  AboutDialog dialog;
  QSignalSpy wanted(&dialog, &AboutDialog::cautionsWanted);
  QTest::mouseClick(dialog.findChild<QPushButton*>("aboutCautions"), Qt::LeftButton);
  EXPECT_EQ(wanted.size(), 1);
}

}  // namespace
