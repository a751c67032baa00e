// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QMessageBox>
#include <QPointer>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <functional>
#include <memory>

#include "core/document/json_writer.h"
#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/document_file.h"
#include "ui/main_window.h"
#include "ui/safety/recovery_file.h"

namespace ui {

/// A state folder of its own for each test, so that nothing is left for the next one.
class SafetyTest : public testing::Test {
 protected:
  SafetyTest() : m_before(qgetenv("XDG_STATE_HOME")) {
    qputenv("XDG_STATE_HOME", folder.filePath("state").toUtf8());
  }
  ~SafetyTest() override {
    qputenv("XDG_STATE_HOME", m_before);
    for (const QPointer<QTimer>& timer : m_waiting)
      EXPECT_FALSE(timer && timer->isActive()) << "nothing was asked";
    for (const QPointer<QTimer>& timer : m_waiting) delete timer;
  }

  QString path(const QString& name) const { return folder.filePath(name); }

  static QByteArray contentOf(const QString& file) {
    QFile read(file);
    return read.open(QIODevice::ReadOnly) ? read.readAll() : QByteArray();
  }
  static void put(const QString& file, const QByteArray& bytes) {
    QFile write(file);
    ASSERT_TRUE(write.open(QIODevice::WriteOnly)) << file.toStdString();
    ASSERT_EQ(write.write(bytes), bytes.size());
  }
  static QStringList keptFiles() {
    QStringList files;
    for (const QString& name : QDir(recoveryFolder()).entryList({"*.recovery"}, QDir::Files))
      files << QDir(recoveryFolder()).filePath(name);
    return files;
  }
  /// Copies, their locks and all: the locks go a moment after the copies.
  static bool waitUntilFolderIsEmpty() {
    return QTest::qWaitFor([] { return QDir(recoveryFolder()).isEmpty(QDir::Files | QDir::Hidden); });
  }
  static core::Document oneChannel(const char* name = "TP-01") {
    core::Channel channel = sample::nineStepChannel();
    channel.name = name;
    return sample::documentOf({channel});
  }
  /// What another program writes.
  static QByteArray textOf(const core::Document& document) {
    const auto text = core::writeDocument(document);
    return text ? QByteArray::fromStdString(*text) : QByteArray();
  }
  /// As a program leaves it that ended badly: the copy, and nobody who holds its lock.
  static QString leave(const core::Document& document, const QString& path, const QString& title = {}) {
    const RecoverySlot slot = newRecoverySlot();
    EXPECT_TRUE(writeRecovery(slot, {path, title, QDateTime::currentDateTime()}, document));
    slot.lock->unlock();
    return slot.file;
  }
  /// Does `act` with the next dialog that stops the window, as soon as it is there.
  template <class Dialog>
  void withNext(const std::function<void(Dialog&)>& act) {
    auto* timer = new QTimer(qApp);
    QObject::connect(timer, &QTimer::timeout, timer, [timer, act] {
      auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
      if (!dialog) return;
      timer->stop();
      timer->deleteLater();
      act(*dialog);
    });
    timer->start(5);
    m_waiting << timer;
  }
  /// Clicks that button of the next message box, and notes what the box said.
  void answerNext(const QString& button, QString* text = nullptr) {
    withNext<QMessageBox>([button, text](QMessageBox& box) {
      if (text) *text = box.text();
      for (QAbstractButton* one : box.buttons())
        if (one->objectName() == button || one->text().remove('&') == button)
          return QTest::mouseClick(one, Qt::LeftButton);
      ADD_FAILURE() << "the box has no " << button.toStdString() << ": " << box.text().toStdString();
      box.reject();
    });
  }

  QTemporaryDir folder;

 private:
  QByteArray m_before;
  QList<QPointer<QTimer>> m_waiting;
};

/// A window as the program opens it.
struct ShownWindow {
  explicit ShownWindow(core::Document document = {}) : session(std::move(document)), window(session) {
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  template <class Widget = QWidget>
  Widget* find(const QString& name) const {
    return window.findChild<Widget*>(name);
  }
  bool shows(const QString& name) const { return find(name) && find(name)->isVisible(); }
  bool waitUntilShown(const QString& name) const {
    return QTest::qWaitFor([&] { return shows(name); });
  }
  void click(const QString& button) const {
    ASSERT_TRUE(find<QPushButton>(button)) << button.toStdString();
    QTest::mouseClick(find<QPushButton>(button), Qt::LeftButton);
    QCoreApplication::processEvents();
  }
  QString text(const QString& label) const {
    return find<QLabel>(label) ? find<QLabel>(label)->text() : QString();
  }
  QString warned() const { return shows("noticeText") ? text("noticeText") : QString(); }
  void trigger(const char* action) const { window.findChild<QAction*>(action)->trigger(); }
  void rename(const char* channel) {
    core::Channel next = *session.channel();
    next.name = channel;
    session.editChannel("Rename", std::move(next));
  }

  Session session;
  MainWindow window;
};

}  // namespace ui
