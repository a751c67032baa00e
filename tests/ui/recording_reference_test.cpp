// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings that a document names, when the document is a stranger's: what leads out of its folder is not
// opened before the user asks. The system itself tells who opened what (inotify).
#include <gtest/gtest.h>
#include <sys/inotify.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/sample_channel.h"
#include "ui/recording/recording_store.h"
#include "ui/session.h"
#include "ui/strip/strip_view.h"

namespace ui {
namespace {

/// Counts how often files were opened, by whomever.
class OpenWatch {
 public:
  ~OpenWatch() { ::close(m_descriptor); }

  void add(const QString& path) {
    ASSERT_GE(::inotify_add_watch(m_descriptor, path.toLocal8Bit().constData(), IN_OPEN | IN_DONT_FOLLOW), 0);
  }
  int opened() {
    char events[4096];
    int count = 0;
    for (ssize_t got; (got = ::read(m_descriptor, events, sizeof events)) > 0;)
      for (const char* at = events; at < events + got; ++count)
        at += sizeof(inotify_event) + reinterpret_cast<const inotify_event*>(at)->len;
    return count;
  }

 private:
  int m_descriptor = ::inotify_init1(IN_NONBLOCK | IN_CLOEXEC);
};

class StrangersReference : public testing::Test {
 protected:
  using State = RecordingStore::State;

  StrangersReference() {
    QFile file(secret);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("time,TP-01\n0,1\n1,2\n2,3\n");
    file.close();
    EXPECT_TRUE(QFile::link(secret, folder.filePath("link.csv")));
    EXPECT_TRUE(QFile::link(elsewhere.path(), folder.filePath("sub")));
    EXPECT_TRUE(QFile::link("/dev/zero", folder.filePath("zero.csv")));
    EXPECT_EQ(::mkfifo(folder.filePath("fifo.csv").toLocal8Bit().constData(), 0600), 0);
    watch.add(secret);
    watch.add(folder.filePath("fifo.csv"));
    store.setFolder(folder.path());
  }

  core::RecordingReference to(const QString& path) const {
    return {path.toStdString(),
            static_cast<std::uint64_t>(QFileInfo(secret).size()),
            std::string(64, '0'),
            "TP-01",
            {}};
  }

  QTemporaryDir folder, elsewhere;
  QString secret = elsewhere.filePath("secret.csv");
  OpenWatch watch;
  RecordingStore store;
};

TEST_F(StrangersReference, IsNotOpenedUnasked) {
  const QString up = "../" + elsewhere.path().section('/', -1) + "/secret.csv";
  const QString paths[] = {secret,
                           up,
                           "./x/.././" + up,
                           "link.csv",
                           "sub/secret.csv",
                           "sub/../link.csv",
                           "zero.csv",
                           "fifo.csv",
                           "/dev/zero",
                           "/proc/self/environ",
                           "file://" + secret,
                           "http://127.0.0.1/a.csv",
                           "//127.0.0.1/a/b.csv",
                           ":/demo/pre_test.csv",
                           "qrc:/demo/pre_test.csv",
                           QString("link.csv") + QChar(0) + ".csv",
                           "",
                           ".",
                           QString(100'000, 'a')};
  for (const QString& path : paths) {
    SCOPED_TRACE(path.left(80).toStdString());
    const auto reference = to(path);
    store.want(reference);
    EXPECT_EQ(store.state(reference), State::Failed);
    ASSERT_TRUE(store.error(reference));
    EXPECT_FALSE(store.error(reference)->what.empty());
    EXPECT_LT(store.error(reference)->text().size(), 400u);
    EXPECT_EQ(store.recording(reference), nullptr);
  }
  QTest::qWait(100);  // for workers, if there were any
  EXPECT_EQ(watch.opened(), 0);
  // That the watch sees, and that asking opens.
  const auto linked = to("link.csv");
  store.want(linked, true);
  EXPECT_TRUE(QTest::qWaitFor([&] { return store.state(linked) == State::Ready; }, 20'000));
  EXPECT_GT(watch.opened(), 0);
}

TEST_F(StrangersReference, ThatIsNoFileIsRefusedEvenWhenItIsAskedFor) {
  for (const char* path : {"fifo.csv", "zero.csv", "/dev/zero", "."}) {
    SCOPED_TRACE(path);
    store.want(to(path), true);
    EXPECT_TRUE(QTest::qWaitFor([&] { return store.state(to(path)) == State::Failed; }, 20'000));
  }
}

TEST_F(StrangersReference, IsShownAsPlainTextAndStaysClosed) {
  const QString marked = "<img src='x'>.csv";
  EXPECT_TRUE(QFile::link(secret, elsewhere.filePath(marked)));
  core::Channel channel = sample::withCheckReading(sample::nineStepChannel(), 1.0);
  channel.checks[0].recording = to("sub/" + marked);
  Session session(sample::documentOf({channel}));
  StripView view(session, store);
  view.resize(900, 300);
  view.show();
  QTest::qWait(100);
  EXPECT_EQ(watch.opened(), 0);
  const auto* message = view.findChild<QLabel*>("stripMessage");
  ASSERT_TRUE(message);
  EXPECT_TRUE(message->text().contains("<img src='x'>")) << message->text().toStdString();
  EXPECT_EQ(message->textFormat(), Qt::PlainText);
}

}  // namespace
}  // namespace ui
