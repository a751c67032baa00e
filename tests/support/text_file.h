// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

namespace test {

/// A file that holds `bytes` and is gone with this object.
class TextFile {
 public:
  explicit TextFile(std::string_view bytes, const std::string& name = "rec.txt") {
    std::string folder = (std::filesystem::temp_directory_path() / "text-file-XXXXXX").string();
    m_folder = mkdtemp(folder.data());
    m_path = m_folder / name;
    std::ofstream(m_path, std::ios::binary) << bytes;
  }
  ~TextFile() {
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
  }
  TextFile(const TextFile&) = delete;
  TextFile& operator=(const TextFile&) = delete;

  const std::filesystem::path& path() const { return m_path; }

 private:
  std::filesystem::path m_folder, m_path;
};

}  // namespace test
