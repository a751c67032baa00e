// SPDX-License-Identifier: GPL-3.0-or-later
// Against a service of notices and a settings portal of the test's own, on a bus of its own: what is sent
// must be what the Desktop Notifications Specification 1.2 and the portal's documentation ask for.
#include "ui/notice/long_work.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusVirtualObject>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/printing.h"
#include "tests/support/sample_channel.h"
#include "ui/budget/trial_runner.h"
#include "ui/main_window.h"
#include "ui/notice/desktop_notice.h"
#include "ui/notice/session_bus.h"
#include "ui/preferences/desktop_wishes.h"
#include "ui/preferences/preferences.h"
#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

using Groups = QMap<QString, QVariantMap>;

/// Takes every call at its path, keeps those of one interface and answers them.
class Service : public QDBusVirtualObject {
 public:
  std::function<QVariantList(const QDBusMessage&)> answer;
  QList<QDBusMessage> calls;

  QString introspect(const QString&) const override { return {}; }
  bool handleMessage(const QDBusMessage& call, const QDBusConnection& bus) override {
    calls.append(call);
    bus.send(call.createReply(answer(call)));
    return true;
  }
};

class PrivateBus : public testing::Test {
 protected:
  PrivateBus() {
    stateFile().clear();
    daemon.start("dbus-daemon", {"--session", "--nofork", "--print-address"});
    EXPECT_TRUE(daemon.waitForReadyRead(10000)) << "dbus-daemon (package dbus-daemon) must be there";
    const QByteArray address = daemon.readLine().trimmed();
    EXPECT_FALSE(address.isEmpty());
    before = qgetenv("DBUS_SESSION_BUS_ADDRESS");
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    bus = QDBusConnection::connectToBus(QString::fromUtf8(address), "test-" + address);
    EXPECT_TRUE(bus.isConnected());
  }
  ~PrivateBus() override {
    LongWork::setLong(LongWork::usuallyLong);
    qputenv("DBUS_SESSION_BUS_ADDRESS", before);
    QDBusConnection::disconnectFromBus(bus.name());
    daemon.kill();
    daemon.waitForFinished();
    stateFile().clear();
  }

  /// Who shows notices; `capabilities` as it tells them.
  void startNotices(const QStringList& capabilities) {
    notices.answer = [capabilities](const QDBusMessage& call) -> QVariantList {
      if (call.member() == "GetCapabilities") return {capabilities};
      return {7u};
    };
    ASSERT_TRUE(bus.registerVirtualObject("/org/freedesktop/Notifications", &notices));
    ASSERT_TRUE(bus.registerService("org.freedesktop.Notifications"));
  }
  QList<QDBusMessage> shown() {
    QList<QDBusMessage> notified;
    for (const QDBusMessage& call : notices.calls)
      if (call.member() == "Notify") notified.append(call);
    return notified;
  }

  QProcess daemon;
  QByteArray before;
  QDBusConnection bus{QString()};
  Service notices, portal;
};

TEST_F(PrivateBus, LongWorkBehindAnotherWindowIsToldOnceInPlainText) {
  startNotices({"body", "body-markup"});
  LongWork::setLong(std::chrono::milliseconds(0));
  LongWork().done("The report <b>A&B</b>.pdf is written.");
  ASSERT_TRUE(QTest::qWaitFor([&] { return shown().size() == 1; }));
  const QDBusMessage call = shown().first();
  // Specification, "org.freedesktop.Notifications.Notify": UINT32 of (STRING app_name, UINT32 replaces_id,
  // STRING app_icon, STRING summary, STRING body, as actions, a{sv} hints, INT32 expire_timeout).
  EXPECT_EQ(call.interface(), "org.freedesktop.Notifications");
  EXPECT_EQ(call.signature(), "susssasa{sv}i");
  EXPECT_EQ(call.arguments()[1].toUInt(), 0u);
  EXPECT_EQ(call.arguments()[4].toString(), "The report &lt;b&gt;A&amp;B&lt;/b&gt;.pdf is written.");
  EXPECT_EQ(call.arguments()[7].toInt(), -1) << "as long as the desktop likes";
  // The next one takes its place: they never pile up.
  QTest::qWait(50);
  LongWork().done("Another is done.");
  ASSERT_TRUE(QTest::qWaitFor([&] { return shown().size() == 2; }));
  EXPECT_EQ(shown()[1].arguments()[1].toUInt(), 7u);
}

TEST_F(PrivateBus, WhereMarkupIsNotUnderstoodNothingIsEscaped) {
  startNotices({"body"});
  DesktopNotice::instance().show("Title", "A & B < C");
  ASSERT_TRUE(QTest::qWaitFor([&] { return shown().size() == 1; }));
  EXPECT_EQ(shown().first().arguments()[4].toString(), "A & B < C");
}

TEST_F(PrivateBus, ShortWorkAndWorkInFrontAndUnwantedNoticesAreNotTold) {
  startNotices({"body"});
  LongWork().done("short");
  LongWork::setLong(std::chrono::milliseconds(0));
  Preferences quiet = preferences();
  quiet.notify = false;
  setPreferences(quiet);
  LongWork().done("unwanted");
  setPreferences(usualPreferences());
  {
    Session session;
    MainWindow window(session);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    LongWork().done("in front");
  }
  DesktopNotice::instance().show("last", "told");
  ASSERT_TRUE(QTest::qWaitFor([&] { return !shown().isEmpty(); }));
  ASSERT_EQ(shown().size(), 1);
  EXPECT_EQ(shown().first().arguments()[4].toString(), "told");
}

TEST_F(PrivateBus, TrialsOfABudgetThatEndUnseenAreTold) {
  startNotices({"body"});
  LongWork::setLong(std::chrono::milliseconds(0));
  const auto channel = sample::nineStepChannel();
  TrialRunner runner;
  TrialRunner::Subject subject;
  subject.setup = channel.setup;
  runner.show(subject, false);
  runner.run();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !shown().isEmpty(); }, 60000));
  EXPECT_EQ(shown().first().arguments()[4].toString(), "The trials of the budget are done.");
}

TEST_F(PrivateBus, APressOnTheNoticeBringsTheWindowForward) {
  startNotices({"body", "actions"});
  Session session;
  MainWindow window(session);
  window.show();
  QWidget other;
  other.show();
  other.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&other));
  DesktopNotice::instance().show("Title", "done");
  ASSERT_TRUE(QTest::qWaitFor([&] { return shown().size() == 1; }));
  EXPECT_EQ(shown().first().arguments()[5].toStringList().value(0), "default");
  QTest::qWait(50);  // until the answer with the notice's number is back
  QDBusMessage pressed = QDBusMessage::createSignal("/org/freedesktop/Notifications",
                                                    "org.freedesktop.Notifications", "ActionInvoked");
  pressed << 7u << QString("default");
  bus.send(pressed);
  EXPECT_TRUE(QTest::qWaitFor([&] { return window.isActiveWindow(); }));
}

TEST_F(PrivateBus, ColoursAndMotionFollowWhatTheDesktopAsksWhileTheWindowIsOpen) {
  // Portal documentation, "org.freedesktop.appearance": color-scheme 0 no preference, 1 dark, 2 light;
  // reduced-motion 0 no preference, 1 reduced.
  qDBusRegisterMetaType<Groups>();
  portal.answer = [](const QDBusMessage&) -> QVariantList {
    return {QVariant::fromValue(Groups{{"org.freedesktop.appearance", {{"color-scheme", 1u}}}})};
  };
  ASSERT_TRUE(bus.registerVirtualObject("/org/freedesktop/portal/desktop", &portal));
  ASSERT_TRUE(bus.registerService("org.freedesktop.portal.Desktop"));
  Session session;
  MainWindow window(session);
  EXPECT_TRUE(QTest::qWaitFor([&] { return isDark(window.palette()); }));
  ASSERT_FALSE(portal.calls.isEmpty());
  EXPECT_EQ(portal.calls.first().member(), "ReadAll");
  const auto set = [&](const QString& key, uint value) {
    QDBusMessage change = QDBusMessage::createSignal("/org/freedesktop/portal/desktop",
                                                     "org.freedesktop.portal.Settings", "SettingChanged");
    change << QString("org.freedesktop.appearance") << key << QVariant::fromValue(QDBusVariant(value));
    bus.send(change);
  };
  set("reduced-motion", 1);
  EXPECT_TRUE(QTest::qWaitFor([&] { return preferences().lessMotion; }));
  set("color-scheme", 2);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !isDark(window.palette()); }));

  // What the user has chosen stays, whatever the desktop asks.
  Preferences dark = preferences();
  dark.colours = Preferences::Colours::Dark;
  setPreferences(dark);
  EXPECT_TRUE(QTest::qWaitFor([&] { return isDark(window.palette()); }));
  set("color-scheme", 0);
  set("reduced-motion", 0);
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return DesktopWishes::instance().scheme() == DesktopWishes::Scheme::NoWish; }));
  EXPECT_TRUE(isDark(window.palette()));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !DesktopWishes::instance().lessMotion(); }));
  setPreferences(usualPreferences());
}

TEST(Notice, WithoutABusNothingHappensAndNobodyWaits) {
  const QByteArray address = qgetenv("DBUS_SESSION_BUS_ADDRESS"), folder = qgetenv("XDG_RUNTIME_DIR");
  qunsetenv("DBUS_SESSION_BUS_ADDRESS");
  const QTemporaryDir empty;
  qputenv("XDG_RUNTIME_DIR", empty.path().toUtf8());
  EXPECT_FALSE(sessionBus().isConnected());
  qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=" + empty.path().toUtf8() + "/nobody");
  QElapsedTimer time;
  time.start();
  DesktopNotice::instance().show("Title", "nobody hears this");
  LongWork::setLong(std::chrono::milliseconds(0));
  LongWork().done("nor this");
  LongWork::setLong(LongWork::usuallyLong);
  EXPECT_LT(time.elapsed(), 20'000);  // a call that waits for its answer does so for 25 s
  if (address.isNull())
    qunsetenv("DBUS_SESSION_BUS_ADDRESS");
  else
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
  folder.isNull() ? qunsetenv("XDG_RUNTIME_DIR") : qputenv("XDG_RUNTIME_DIR", folder);
}

}  // namespace
}  // namespace ui
