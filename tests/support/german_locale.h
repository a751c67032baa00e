// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <unistd.h>

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <string>

namespace test {

/// While it lives, the C locale is German: decimal comma. The locale is made by localedef in a folder
/// of its own, since a machine for tests seldom has it installed.
class GermanLocale {
 public:
  GermanLocale() : m_before(std::setlocale(LC_ALL, nullptr)) {
    char folder[] = "/tmp/german-locale-XXXXXX";
    m_folder = mkdtemp(folder);
    const std::string made = m_folder.string() + "/de_DE.UTF-8";
    const int status = std::system(("localedef -i de_DE -f UTF-8 " + made + " 2>/dev/null").c_str());
    setenv("LOCPATH", folder, 1);
    m_active = status == 0 && std::setlocale(LC_ALL, "de_DE.UTF-8");
  }
  ~GermanLocale() {
    std::setlocale(LC_ALL, m_before.c_str());
    unsetenv("LOCPATH");
    std::filesystem::remove_all(m_folder);
  }

  /// False when localedef is missing: install the package "locales".
  bool active() const { return m_active; }

 private:
  std::string m_before;
  std::filesystem::path m_folder;
  bool m_active = false;
};

}  // namespace test
