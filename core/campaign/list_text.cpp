// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/list_text.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/recording/text/encoding.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// What Windows-1252 has at 0x80 to 0x9F, as UTF-8; empty where it has nothing. (Unicode Consortium mapping
/// table CP1252.TXT, from memory; held against another implementation in the tests.)
constexpr std::array<std::string_view, 32> upperControls = {
    "€", "",  "‚", "ƒ", "„", "…", "†", "‡", "ˆ", "‰", "Š", "‹", "Œ", "", "Ž", "",
    "",  "‘", "’", "“", "”", "•", "–", "—", "˜", "™", "š", "›", "œ", "", "ž", "Ÿ"};

Error inLine(std::string_view text, std::size_t at, std::string what, std::string mend) {
  const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
  return {say("line {1}", {std::to_string(line)}), std::move(what), std::move(mend)};
}

Result<std::string> fromWindows1252(std::string_view bytes) {
  std::string text;
  text.reserve(bytes.size() + bytes.size() / 8);
  for (std::size_t k = 0; k < bytes.size(); ++k) {
    const auto byte = static_cast<unsigned char>(bytes[k]);
    if (byte < 0x80 || byte > 0x9F) {
      appendUtf8(bytes.substr(k, 1), TextEncoding::Latin1, text);
      continue;
    }
    const std::string_view character = upperControls[byte - 0x80U];
    if (character.empty())
      return inLine(bytes, k, say("the text is neither UTF-8 nor Windows-1252"),
                    say("Save the file as CSV in UTF-8"));
    text += character;
  }
  return text;
}

/// How many rows are as long as the first.
std::size_t rowsAlike(const std::vector<Row>& rows) {
  return static_cast<std::size_t>(std::count_if(rows.begin(), rows.end(), [&](const Row& row) {
    return row.cells.size() == rows.front().cells.size();
  }));
}

}  // namespace

Result<std::string> listText(std::string_view bytes) {
  if (bytes.starts_with("PK\x03\x04") || bytes.starts_with("\xD0\xCF\x11\xE0"))
    return Error{"", say("this is a workbook and no list"),
                 say("Save its sheet as CSV and choose that file")};
  const TextEncoding encoding = encodingOf(bytes);
  if (encoding == TextEncoding::Utf8) return std::string(bytes.substr(byteOrderMark(bytes, encoding)));
  if (!isUtf16(encoding)) return fromWindows1252(bytes);
  bytes.remove_prefix(byteOrderMark(bytes, encoding));
  std::string text;
  if (appendUtf8(bytes, encoding, text) != bytes.size())
    return Error{say("end"), say("the text ends within a character"), say("Save the file as CSV in UTF-8")};
  return text;
}

Result<ListRows> listRows(std::string_view text, std::size_t mostRows) {
  std::optional<ListRows> best;
  std::optional<Error> error;
  double most = 0;
  const std::string_view firstLine = text.substr(0, text.find_first_of("\r\n"));
  for (const char delimiter : {'\t', ';', ','}) {
    auto rows = delimitedRows(text, mostRows, delimiter);
    if (!rows) {
      // With another delimiter than its own a quotation mark is text, and its fault would not show.
      if (!error && firstLine.find(delimiter) != text.npos) error = rows.error();
      continue;
    }
    const bool cuts = !rows->empty() && rows->front().cells.size() > 1;
    const double share =
        cuts ? static_cast<double>(rowsAlike(*rows)) / static_cast<double>(rows->size()) : 0.0;
    if (best && !(share > most)) continue;
    most = share;
    best = ListRows{share > 0 ? delimiter : ',', *std::move(rows)};
  }
  if (error && most == 0) return *error;
  if (!best) return delimitedRows(text, mostRows, ',').error();
  return *std::move(best);
}

}  // namespace core
