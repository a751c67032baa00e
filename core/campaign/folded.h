// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace core {

/// `text` with the capital letters of ASCII and Latin-1 made small ("Größe" and "GRÖßE" are one), for
/// finding; letters of other scripts stay.
inline std::string folded(std::string_view text) {
  std::string result(text);
  unsigned char before = 0;
  for (char& c : result) {
    const auto byte = static_cast<unsigned char>(c);
    const bool ascii = byte >= 'A' && byte <= 'Z';
    const bool latin = before == 0xC3 && byte >= 0x80 && byte <= 0x9E && byte != 0x97;  // U+00D7 is a sign
    if (ascii || latin) c = static_cast<char>(byte + 0x20);
    before = byte;
  }
  return result;
}

}  // namespace core
