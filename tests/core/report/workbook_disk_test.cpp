// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "core/report/workbook.h"
#include "core/report/workbook_check.h"
#include "tests/support/sample_channel.h"

namespace core {
namespace {

/// A temporary folder of its own, which TMPDIR names for its life.
class TemporaryFolder {
 public:
  TemporaryFolder() : m_before(std::getenv("TMPDIR") ? std::getenv("TMPDIR") : "") {
    std::string name = (std::filesystem::temp_directory_path() / "workbook-XXXXXX").string();
    m_path = mkdtemp(name.data());
    setenv("TMPDIR", m_path.c_str(), 1);
  }
  ~TemporaryFolder() {
    m_before.empty() ? unsetenv("TMPDIR") : setenv("TMPDIR", m_before.c_str(), 1);
    std::filesystem::remove_all(m_path);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::filesystem::path& path() const { return m_path; }

 private:
  std::string m_before;
  std::filesystem::path m_path;
};

Result<std::string> workbookOfOneChannel() {
  return reportWorkbook(sample::documentOf({sample::nineStepChannel()}), {});
}

TEST(WorkbookOnDisk, IsPutTogetherAndLeavesNothingBehind) {
  const TemporaryFolder folder;
  const auto made = workbookOfOneChannel();
  ASSERT_TRUE(made) << made.error().text();
  EXPECT_EQ(made->substr(0, 2), "PK");
  EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}

TEST(WorkbookOnDisk, AFullTemporaryFolderIsNamedWithItsCause) {
  const TemporaryFolder folder;
  // The same failure at the same calls as a full disk, and it binds root too.
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  rlimit usual{};
  ::getrlimit(RLIMIT_FSIZE, &usual);
  for (const rlim_t bytes : {0, 100, 1000, 3000}) {
    const rlimit small{bytes, usual.rlim_max};
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto made = workbookOfOneChannel();
    ::setrlimit(RLIMIT_FSIZE, &usual);
    ASSERT_FALSE(made) << bytes;
    EXPECT_NE(made.error().what.find(folder.path().string()), std::string::npos) << made.error().what;
    // EFBIG in the words of the C library.
    EXPECT_NE(made.error().what.find("File too large"), std::string::npos) << bytes << made.error().what;
    EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << bytes;
  }
  std::signal(SIGXFSZ, handler);
}

/// What the library says is a workbook, cut as a full disk cuts it: the part stays in the ZIP file, whose
/// sizes and sums are right, and lacks its end. Made by hand, stored in one deflate block without compression
/// (RFC 1951, 3.2.4), since that needs no library.
std::string zipOf(const std::string& name, const std::string& part) {
  const auto number = [](std::uint64_t value, int bytes) {
    std::string text;
    for (int k = 0; k < bytes; ++k) text += static_cast<char>(value >> (8 * k) & 0xFF);
    return text;
  };
  std::uint32_t crc = 0xFFFFFFFF;  // ISO 3309, as APPNOTE.TXT 4.4.7 asks
  for (const char c : part) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = crc >> 1 ^ (crc & 1 ? 0xEDB88320 : 0);
  }
  crc = ~crc;
  const std::string packed = "\x01" + number(part.size(), 2) + number(~part.size() & 0xFFFF, 2) + part;
  const std::string common = number(20, 2) + number(0, 2) + number(8, 2) + number(0, 4) + number(crc, 4) +
                             number(packed.size(), 4) + number(part.size(), 4) + number(name.size(), 2);
  const std::string local = number(0x04034b50, 4) + common + number(0, 2) + name + packed;
  const std::string entry = number(0x02014b50, 4) + number(20, 2) + common + number(0, 2) + number(0, 2) +
                            number(0, 2) + number(0, 2) + number(0, 4) + number(0, 4) + name;
  return local + entry + number(0x06054b50, 4) + number(0, 4) + number(1, 2) + number(1, 2) +
         number(entry.size(), 4) + number(local.size(), 4) + number(0, 2);
}

TEST(WorkbookOnDisk, APartWithoutItsEndIsNoticed) {
  const std::string head = "<?xml version=\"1.0\"?>\n";
  const std::string sheet = head + "<sheet a=\"1\"><row><c/></row></sheet>";
  EXPECT_TRUE(isWholeWorkbook(zipOf("sheet1.xml", sheet)));
  EXPECT_TRUE(isWholeWorkbook(zipOf("sheet1.xml", sheet + "\n")));
  EXPECT_TRUE(isWholeWorkbook(zipOf("single.xml", head + "<single a=\"1\"/>")));
  for (std::size_t size = 0; size < sheet.size(); ++size)
    EXPECT_FALSE(isWholeWorkbook(zipOf("sheet1.xml", sheet.substr(0, size)))) << size;
  const std::string whole = zipOf("sheet1.xml", sheet);
  for (std::size_t size = 0; size < whole.size(); ++size)
    EXPECT_FALSE(isWholeWorkbook(whole.substr(0, size))) << size;
  std::string damaged = whole;
  damaged[damaged.find("row")] = 'R';
  EXPECT_FALSE(isWholeWorkbook(damaged)) << "the sum does not fit";
}

TEST(WorkbookOnDisk, ATemporaryFolderThatIsNotThereIsSaid) {
  const TemporaryFolder folder;
  setenv("TMPDIR", (folder.path() / "gone").c_str(), 1);
  const auto missing = workbookOfOneChannel();
  ASSERT_FALSE(missing);
  // "No such file or directory" or "Not a directory".
  EXPECT_NE(missing.error().what.find("TMPDIR, No"), std::string::npos) << missing.error().what;
}

}  // namespace
}  // namespace core
