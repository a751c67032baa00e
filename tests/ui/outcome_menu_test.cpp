// SPDX-License-Identifier: GPL-3.0-or-later
#include <QClipboard>
#include <QLabel>

#include "tests/ui/outcome_shown.h"
#include "ui/main_window.h"

namespace ui {
namespace {

void trigger(MainWindow& window, const char* name) {
  auto* action = window.findChild<QAction*>(name);
  ASSERT_TRUE(action) << name;
  action->trigger();
  QApplication::processEvents();
}

TEST(OutcomeMenu, EachPageHasAnEntryThatBringsItToSightFromAnywhere) {
  Session session(sample::documentOf({oneCheck()}));
  MainWindow window(session);
  window.show();
  auto* outcome = window.findChild<OutcomeView*>();
  using Page = OutcomeView::Page;
  const std::pair<const char*, Page> entries[] = {{"outcomeTablePage", Page::Table},
                                                  {"outcomeFiguresAll", Page::Figures},
                                                  {"outcomeDiagnosis", Page::Diagnosis},
                                                  {"outcomeWorking", Page::Working},
                                                  {"outcomeCharts", Page::Charts}};
  for (const auto& [entry, page] : entries) {
    trigger(window, "prepareStock");  // a page in place of all views
    ASSERT_FALSE(outcome->isVisible());
    trigger(window, entry);
    EXPECT_TRUE(outcome->isVisible()) << entry;
    EXPECT_EQ(outcome->page(), page) << entry;
  }
}

TEST(OutcomeMenu, CopyingIsToldAndARefusalStandsInTheBar) {
  Session session(sample::documentOf({oneCheck()}));
  MainWindow window(session);
  window.show();
  trigger(window, "checkCopyData");
  EXPECT_TRUE(QApplication::clipboard()->text().startsWith("Check\tStep\t"));
  session.reset({});
  trigger(window, "checkCopyPicture");
  auto* notice = window.findChild<QLabel*>("noticeText");
  EXPECT_TRUE(notice->isVisible());
  EXPECT_TRUE(notice->text().contains("nothing to copy")) << notice->text().toStdString();
}

}  // namespace
}  // namespace ui
