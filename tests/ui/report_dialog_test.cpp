// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QEventLoop>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTimer>

#include "tests/support/sample_channel.h"
#include "ui/fields/count_edit.h"
#include "ui/report/page_preview.h"
#include "ui/report/report_dialog.h"
#include "ui/report/template_list.h"
#include "ui/theme.h"

namespace ui {
namespace report_dialog_test {

core::Document threeChannels() {
  const auto named = [](const char* name, double gain) {
    core::Channel channel =
        sample::withCheckReading(sample::withCheckReading(sample::nineStepChannel(), 1), gain);
    channel.name = name;
    return channel;
  };
  core::Document document = sample::documentOf({named("TP-01", 1), named("TP-02", 1.2), named("TP-03", 1)});
  document.title = "Sandpiper tailplane";
  return document;
}

/// A dialog with a state folder of its own.
struct Shown {
  QTemporaryDir folder;
  QByteArray stateBefore = qgetenv("XDG_STATE_HOME");
  Session session{threeChannels()};
  std::unique_ptr<ReportDialog> dialog;

  Shown() {
    qputenv("XDG_STATE_HOME", folder.filePath("state").toUtf8());
    open();
  }
  ~Shown() {
    dialog.reset();
    if (stateBefore.isNull())
      qunsetenv("XDG_STATE_HOME");
    else
      qputenv("XDG_STATE_HOME", stateBefore);
  }
  Q_DISABLE_COPY_MOVE(Shown)

  void open() {
    dialog.reset();
    dialog = std::make_unique<ReportDialog>(session, folder.filePath("report"));
    dialog->show();
    waitForPages();
  }
  void waitForPages() const {
    QSignalSpy ready(dialog.get(), &ReportDialog::previewReady);
    EXPECT_TRUE(ready.wait(60000));
  }
  template <class Widget>
  Widget* find(const char* name) const {
    auto* widget = dialog->findChild<Widget*>(name);
    EXPECT_NE(widget, nullptr) << name;
    return widget;
  }
  PagePreview& preview() const { return *find<PagePreview>("reportPreview"); }
  TemplateList& templates() const { return *dialog->findChild<TemplateList*>(); }
  QListWidget& list() const { return *find<QListWidget>("reportTemplates"); }
  QByteArray written(const char* name) const {
    QFile file(folder.filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
};

/// How many pixels are not the white of paper.
int inked(const QImage& image) {
  int count = 0;
  for (int y = 0; y < image.height(); y += 2)
    for (int x = 0; x < image.width(); x += 2) count += qGray(image.pixel(x, y)) < 200;
  return count;
}

TEST(ReportDialog, ShowsThePagesAndTurnsThem) {
  Shown shown;
  PagePreview& preview = shown.preview();
  ASSERT_GT(preview.pageCount(), 5);
  QSignalSpy painted(&preview, &PagePreview::shown);
  if (!preview.isShowing()) {
    ASSERT_TRUE(painted.wait(10000));
  }
  const QImage first = preview.image();
  EXPECT_GT(inked(first), 200);
  preview.setPage(1);
  ASSERT_TRUE(painted.wait(10000));
  EXPECT_EQ(shown.find<CountEdit>("previewPage")->value(), 2);
  EXPECT_NE(preview.image(), first);
  preview.setPage(100000);
  EXPECT_EQ(preview.page(), preview.pageCount() - 1);
  EXPECT_TRUE(shown.find<QLabel>("previewPages")->text().contains(QString::number(preview.pageCount())));
}

TEST(ReportDialog, ZoomsAboutTheWholePage) {
  Shown shown;
  PagePreview& preview = shown.preview();
  QSignalSpy painted(&preview, &PagePreview::shown);
  if (!preview.isShowing()) {
    ASSERT_TRUE(painted.wait(10000));
  }
  const int fitted = preview.image().height();
  EXPECT_LE(fitted / preview.devicePixelRatioF(), preview.maximumViewportSize().height());
  preview.zoomIn();
  ASSERT_TRUE(painted.wait(10000));
  EXPECT_GT(preview.image().height(), fitted);
  preview.setZoom(0);
  ASSERT_TRUE(painted.wait(10000));
  EXPECT_EQ(preview.image().height(), fitted);
}

TEST(ReportDialog, FewerPartsAreFewerPages) {
  Shown shown;
  const int all = shown.preview().pageCount();
  shown.find<QCheckBox>("part_budget")->click();
  shown.find<QCheckBox>("part_working")->click();
  shown.waitForPages();
  EXPECT_LT(shown.preview().pageCount(), all);
  EXPECT_FALSE(shown.dialog->order().content.parts.contains(core::ReportPart::Budget));
}

TEST(ReportDialog, ChannelsAreChosenFromTheList) {
  Shown shown;
  const int all = shown.preview().pageCount();
  EXPECT_FALSE(shown.find<QListWidget>("reportChannelList")->isVisible());
  shown.find<QComboBox>("reportChannels")->setCurrentIndex(int(core::ReportChannels::Chosen));
  shown.waitForPages();
  auto* list = shown.find<QListWidget>("reportChannelList");
  EXPECT_TRUE(list->isVisibleTo(shown.dialog.get()));
  ASSERT_EQ(list->count(), 3);
  list->item(0)->setCheckState(Qt::Unchecked);
  list->item(1)->setCheckState(Qt::Checked);
  shown.waitForPages();
  EXPECT_EQ(shown.dialog->order().channels, std::vector<std::size_t>{1});
  EXPECT_LT(shown.preview().pageCount(), all);
}

TEST(ReportDialog, ReadyTemplatesAreMarkedAndStayAsTheyAre) {
  Shown shown;
  for (std::size_t k = 0; k < core::readyTemplates().size(); ++k)
    EXPECT_TRUE(shown.list().item(int(k))->text().contains("(built in)"));
  shown.find<QCheckBox>("part_cover")->click();
  shown.templates().keep();
  ASSERT_EQ(shown.list().count(), int(core::readyTemplates().size()) + 1);
  EXPECT_TRUE(shown.templates().isOwn());
  EXPECT_FALSE(shown.templates().chosen().parts.contains(core::ReportPart::Cover));
  EXPECT_TRUE(core::readyTemplates().front().parts.contains(core::ReportPart::Cover));
}

TEST(ReportDialog, OwnTemplatesAreKeptRenamedAndDeleted) {
  Shown shown;
  shown.templates().duplicate();
  shown.templates().rename("Bench record");
  shown.find<QCheckBox>("part_history")->click();
  shown.templates().keep();
  shown.open();
  shown.templates().choose("Bench record");
  ASSERT_TRUE(shown.templates().isOwn());
  EXPECT_FALSE(shown.templates().chosen().parts.contains(core::ReportPart::History));
  QSignalSpy refused(&shown.templates(), &TemplateList::refused);
  shown.templates().rename("FULL RECORD");
  EXPECT_EQ(refused.count(), 1);
  shown.templates().rename("  ");
  EXPECT_EQ(refused.count(), 2);
  EXPECT_EQ(shown.templates().chosen().name, "Bench record");
  shown.templates().remove();
  EXPECT_FALSE(shown.templates().isOwn());
  shown.open();
  EXPECT_EQ(shown.list().count(), int(core::readyTemplates().size()));
}

TEST(ReportDialog, TemplatesTravelAsFiles) {
  Shown shown;
  shown.find<QCheckBox>("part_trend")->click();
  const QString path = shown.folder.filePath("mine.bridgereport");
  shown.templates().exportTo(path);
  shown.templates().importFrom(path);
  ASSERT_TRUE(shown.templates().isOwn());
  EXPECT_FALSE(shown.templates().chosen().parts.contains(core::ReportPart::Trend));
  QFile bad(shown.folder.filePath("bad.bridgereport"));
  ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
  bad.write("{\"format\": \"other\"}");
  bad.close();
  QSignalSpy refused(&shown.templates(), &TemplateList::refused);
  shown.templates().importFrom(bad.fileName());
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().contains("bad.bridgereport"));
}

TEST(ReportDialog, WritesEveryFormat) {
  Shown shown;
  QSignalSpy said(shown.dialog.get(), &ReportDialog::said);
  for (const char* name : {"r.pdf", "r.xlsx", "r.html", "r.csv", "r.json"})
    EXPECT_TRUE(shown.dialog->writeTo(shown.folder.filePath(name))) << name;
  EXPECT_EQ(said.count(), 5);
  EXPECT_TRUE(shown.written("r.pdf").startsWith("%PDF-"));
  EXPECT_TRUE(shown.written("r.xlsx").startsWith("PK"));  // a ZIP file (ECMA-376-2)
  EXPECT_TRUE(shown.written("r.html").contains("data:image/svg+xml;base64,"));
  EXPECT_TRUE(shown.written("r.csv").startsWith("channel,check,"));
  EXPECT_TRUE(shown.written("r.json").startsWith("{"));
  EXPECT_TRUE(shown.find<QPushButton>("saveReport")->isEnabled());
}

TEST(ReportDialog, ANameWithoutEndingGetsThatOfTheFormat) {
  Shown shown;
  shown.find<QComboBox>("reportFormat")->setCurrentIndex(3);
  EXPECT_TRUE(shown.dialog->writeTo(shown.folder.filePath("plain")));
  EXPECT_FALSE(shown.written("plain.csv").isEmpty());
}

TEST(ReportDialog, SaysWhyNothingWasWritten) {
  Shown shown;
  QSignalSpy refused(shown.dialog.get(), &ReportDialog::refused);
  EXPECT_FALSE(shown.dialog->writeTo(shown.folder.filePath("r.doc")));
  EXPECT_FALSE(shown.dialog->writeTo(shown.folder.filePath("missing/r.csv")));
  ASSERT_EQ(refused.count(), 2);
  EXPECT_TRUE(refused[0][0].toString().contains(".xlsx"));
  EXPECT_TRUE(refused[1][0].toString().contains("there is no folder"));
}

TEST(ReportDialog, CancelWritesNothing) {
  Shown shown;
  auto* cancel = shown.find<QPushButton>("cancelReport");
  QTimer::singleShot(0, cancel, &QPushButton::click);
  EXPECT_FALSE(shown.dialog->writeTo(shown.folder.filePath("r.pdf")));
  EXPECT_TRUE(shown.written("r.pdf").isEmpty());
  EXPECT_FALSE(shown.dialog->isWriting());
  EXPECT_TRUE(shown.find<QLabel>("reportState")->text().contains("Cancelled"));
  EXPECT_TRUE(shown.find<QWidget>("reportTemplates")->isEnabled());
}

TEST(ReportDialog, EscapeWhileWritingEndsTheWritingOnly) {
  Shown shown;
  QTimer::singleShot(0, shown.dialog.get(), &QDialog::reject);
  EXPECT_FALSE(shown.dialog->writeTo(shown.folder.filePath("r.pdf")));
  EXPECT_TRUE(shown.dialog->isVisible());
}

TEST(ReportDialog, PrintsThePagesAskedFor) {
  Shown shown;
  QPrinter printer;
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(shown.folder.filePath("printed.pdf"));
  printer.setFromTo(2, 3);
  EXPECT_TRUE(shown.dialog->printOn(printer));
  EXPECT_EQ(shown.written("printed.pdf").count("/Type /Page\n"), 2);
}

TEST(ReportDialog, EverythingHasANameForThoseWhoDoNotSeeIt) {
  Shown shown;
  for (const QWidget* widget : shown.dialog->findChildren<QWidget*>()) {
    const bool field = qobject_cast<const QComboBox*>(widget) || qobject_cast<const QListWidget*>(widget) ||
                       qobject_cast<const CountEdit*>(widget);
    if (field) {
      EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->objectName().toStdString();
    }
  }
}

}  // namespace report_dialog_test
}  // namespace ui
