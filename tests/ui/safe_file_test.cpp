// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safe_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <csignal>

using namespace ui;

namespace {

constexpr qint64 megabyte = 1024 * 1024;

class SafeFile : public testing::Test {
 protected:
  void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

  QString path(const QString& name) const { return m_folder.filePath(name); }
  void put(const QString& name, const QByteArray& bytes) const {
    QFile file(path(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
  }
  QByteArray get(const QString& name) const {
    QFile file(path(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("no file");
  }
  QStringList names() const {
    return QDir(m_folder.path())
        .entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
  }

  QTemporaryDir m_folder;
};

/// Limits the size of files for its life: the same failure at the same calls as a full disk, and it
/// binds root too.
class FileSizeLimit {
 public:
  explicit FileSizeLimit(rlim_t bytes) {
    m_handler = std::signal(SIGXFSZ, SIG_IGN);
    ::getrlimit(RLIMIT_FSIZE, &m_before);
    rlimit limit = m_before;
    limit.rlim_cur = bytes;
    EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &limit), 0);
  }
  ~FileSizeLimit() {
    ::setrlimit(RLIMIT_FSIZE, &m_before);
    std::signal(SIGXFSZ, m_handler);
  }
  FileSizeLimit(const FileSizeLimit&) = delete;
  FileSizeLimit& operator=(const FileSizeLimit&) = delete;

 private:
  rlimit m_before{};
  void (*m_handler)(int) = nullptr;
};

TEST_F(SafeFile, SavesNewFilesAndReplacesOldOnes) {
  ASSERT_TRUE(saveBytes(path("plan.bridgecal"), "first"));
  EXPECT_EQ(get("plan.bridgecal"), "first");
  const QByteArray large(3 * megabyte, 'x');
  ASSERT_TRUE(saveBytes(path("plan.bridgecal"), large));
  EXPECT_EQ(get("plan.bridgecal"), large);
  ASSERT_TRUE(saveBytes(path("plan.bridgecal"), ""));
  EXPECT_EQ(get("plan.bridgecal"), "");
  EXPECT_EQ(names(), QStringList{"plan.bridgecal"}) << "nothing may be left beside it";
}

TEST_F(SafeFile, KeepsTheMode) {
  put("plan.bridgecal", "old");
  ASSERT_EQ(::chmod(QFile::encodeName(path("plan.bridgecal")).constData(), 0640), 0);
  ASSERT_TRUE(saveBytes(path("plan.bridgecal"), "new"));
  struct stat status {};
  ASSERT_EQ(::stat(QFile::encodeName(path("plan.bridgecal")).constData(), &status), 0);
  EXPECT_EQ(status.st_mode & 07777, 0640u);
}

TEST_F(SafeFile, KeepsTheOldBytesWhenTheNewOnesDoNotFit) {
  // Below 16 KB all bytes wait in a buffer and fail at its flush, above they fail at the write.
  for (const qsizetype size : {5'000, 15'000, 20'000, 200'000}) {
    put("plan.bridgecal", "old");
    core::Result<void> saved;
    {
      const FileSizeLimit limit(4096);
      saved = saveBytes(path("plan.bridgecal"), QByteArray(size, 'x'));
    }
    ASSERT_FALSE(saved) << size;
    EXPECT_NE(saved.error().what.find("larger than the system allows"), std::string::npos)
        << saved.error().what;
    EXPECT_NE(saved.error().mend.find("another place"), std::string::npos) << saved.error().mend;
    EXPECT_EQ(saved.error().where, path("plan.bridgecal").toStdString());
    EXPECT_EQ(get("plan.bridgecal"), "old") << size;
    EXPECT_EQ(names(), QStringList{"plan.bridgecal"}) << size;
  }
}

TEST_F(SafeFile, LeavesNoFileWhenANewOneDoesNotFit) {
  core::Result<void> saved;
  {
    const FileSizeLimit limit(4096);
    saved = saveBytes(path("plan.bridgecal"), QByteArray(5'000, 'x'));
  }
  EXPECT_FALSE(saved);
  EXPECT_EQ(names(), QStringList{});
}

TEST_F(SafeFile, ARefusalFitsBehindTheWordsNotSaved) {
  const auto saved = saveBytes(path("gone/plan.bridgecal"), "new");
  ASSERT_FALSE(saved);
  EXPECT_EQ(saved.error().what.find("saved"), std::string::npos) << "said twice: " << saved.error().what;
}

TEST_F(SafeFile, SaysThatTheFolderIsMissing) {
  const auto saved = saveBytes(path("gone/plan.bridgecal"), "new");
  ASSERT_FALSE(saved);
  EXPECT_NE(saved.error().what.find("there is no folder " + path("gone").toStdString()), std::string::npos);
}

TEST_F(SafeFile, SaysWhyAFolderIsNotReached) {
  // Errors of path_resolution(7) other than that the folder is missing; they bind root too.
  const auto causeAt = [](const QString& name) {
    const auto saved = saveBytes(name, "new");
    return saved ? std::string("saved") : saved.error().what;
  };
  ASSERT_TRUE(QFile::link("circle", path("circle")));
  for (const QString& name : {path("circle/plan.bridgecal"), path(QString(300, 'x') + "/plan.bridgecal")})
    EXPECT_EQ(causeAt(name).find("there is no folder"), std::string::npos) << causeAt(name);
  EXPECT_NE(causeAt(path(QString(300, 'x') + "/plan.bridgecal")).find("the name is too long"),
            std::string::npos);
  put("file", "old");
  EXPECT_NE(causeAt(path("file/plan.bridgecal")).find("Not a directory"), std::string::npos);
}

TEST_F(SafeFile, RefusesPlacesThatCannotBeWritten) {
  // Nobody can make a file there, root included.
  const auto saved = saveBytes("/proc/plan.bridgecal", "new");
  ASSERT_FALSE(saved);
  EXPECT_NE(saved.error().what.find("cannot be written, "), std::string::npos);
  EXPECT_EQ(saved.error().what.find("Unknown error"), std::string::npos) << saved.error().what;
  EXPECT_EQ(saved.error().what.find("Success"), std::string::npos) << saved.error().what;
}

TEST_F(SafeFile, ReplacesTheTargetOfALinkAndKeepsTheLink) {
  ASSERT_TRUE(QDir(m_folder.path()).mkdir("store"));
  put("store/real.bridgecal", "old");
  ASSERT_TRUE(QFile::link("store/real.bridgecal", path("middle.bridgecal")));
  ASSERT_TRUE(QFile::link("middle.bridgecal", path("plan.bridgecal")));
  ASSERT_TRUE(saveBytes(path("plan.bridgecal"), "new"));
  EXPECT_EQ(get("store/real.bridgecal"), "new");
  EXPECT_TRUE(QFileInfo(path("plan.bridgecal")).isSymLink());
  EXPECT_TRUE(QFileInfo(path("middle.bridgecal")).isSymLink());
}

TEST_F(SafeFile, FollowsLinksAsTheSystemDoes) {
  // Behind the link "short", ".." is the folder "far" and not the one that holds the link.
  ASSERT_TRUE(QDir(m_folder.path()).mkpath("far/deep"));
  ASSERT_TRUE(QFile::link("far/deep", path("short")));
  ASSERT_TRUE(saveBytes(path("short/../plan.bridgecal"), "new"));
  EXPECT_EQ(get("far/plan.bridgecal"), "new");
  ASSERT_TRUE(QFile::link("short/../linked.bridgecal", path("link")));
  ASSERT_TRUE(saveBytes(path("link"), "made through a link that led nowhere"));
  EXPECT_EQ(get("far/linked.bridgecal"), "made through a link that led nowhere");
}

TEST_F(SafeFile, ReplacesOnlyRegularFiles) {
  ASSERT_EQ(::mkfifo(QFile::encodeName(path("pipe")).constData(), 0600), 0);
  ASSERT_TRUE(QDir(m_folder.path()).mkdir("folder"));
  ASSERT_TRUE(QFile::link("circle", path("circle")));
  for (const char* name : {"pipe", "folder", "circle"}) {
    EXPECT_FALSE(saveBytes(path(name), "new")) << name;
  }
  EXPECT_FALSE(saveBytes("/dev/null", "new"));
  struct stat status {};
  ASSERT_EQ(::stat("/dev/null", &status), 0);
  EXPECT_TRUE(S_ISCHR(status.st_mode));
  ASSERT_EQ(::lstat(QFile::encodeName(path("pipe")).constData(), &status), 0);
  EXPECT_TRUE(S_ISFIFO(status.st_mode));
}

TEST_F(SafeFile, LoadsUpToTheCap) {
  const QByteArray bytes(megabyte, '\xFF');
  put("data", bytes);
  const auto loaded = loadBytes(path("data"), megabyte);
  ASSERT_TRUE(loaded) << loaded.error().text();
  EXPECT_EQ(*loaded, bytes);
  const auto refused = loadBytes(path("data"), megabyte - 1);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().what.find("larger than"), std::string::npos);
  put("empty", "");
  ASSERT_TRUE(loadBytes(path("empty"), 0));
}

TEST_F(SafeFile, CapsAFileThatDoesNotTellItsSize) {
  // The system gives this one as 0 bytes long and regular.
  const auto loaded = loadBytes("/proc/self/stat", megabyte);
  ASSERT_TRUE(loaded) << loaded.error().text();
  EXPECT_GT(loaded->size(), 10);
  EXPECT_FALSE(loadBytes("/proc/self/stat", 10));
}

TEST_F(SafeFile, ReadsOnlyRegularFilesAndNeverWaits) {
  ASSERT_EQ(::mkfifo(QFile::encodeName(path("pipe")).constData(), 0600), 0);
  const auto what = [](const QString& name) {
    const auto loaded = loadBytes(name, megabyte);
    const auto hash = sha256OfFile(name);
    EXPECT_FALSE(hash) << name.toStdString();
    return loaded ? std::string("taken") : loaded.error().what;
  };
  EXPECT_NE(what(path("pipe")).find("a pipe or a device"), std::string::npos);
  EXPECT_NE(what("/dev/zero").find("a pipe or a device"), std::string::npos);
  EXPECT_NE(what(m_folder.path()).find("a folder"), std::string::npos);
  EXPECT_NE(what(path("gone")).find("no such file"), std::string::npos);
}

TEST_F(SafeFile, HashesAsFips180Does) {
  // Test vectors of FIPS 180-4 as published by NIST: "abc", the empty message, a million "a".
  put("abc", "abc");
  put("empty", "");
  put("million", QByteArray(1'000'000, 'a'));
  EXPECT_EQ(sha256OfFile(path("abc"))->toStdString(),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256OfFile(path("empty"))->toStdString(),
            "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256OfFile(path("million"))->toStdString(),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

}  // namespace
