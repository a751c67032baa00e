// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/workbook_check.h"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <string>

namespace core {
namespace {

// Records of a ZIP file: their lengths without what varies.
constexpr std::size_t endRecord = 22, directoryRecord = 46, localRecord = 30;
constexpr std::size_t longestEdge = 1024;  ///< bytes of a part's begin and end that are looked at

/// A number of `count` bytes, the least first.
std::uint32_t numberAt(std::string_view bytes, std::size_t at, std::size_t count) {
  std::uint32_t number = 0;
  for (std::size_t k = count; k > 0; --k)
    number = number << 8 | static_cast<unsigned char>(bytes[at + k - 1]);
  return number;
}

/// Begin and end of what was inflated, its length and its CRC.
struct Inflated {
  std::string begin, end;
  std::uint64_t size = 0;
  std::uint32_t crc = 0;

  void take(std::string_view piece) {
    size += piece.size();
    crc = static_cast<std::uint32_t>(
        crc32(crc, reinterpret_cast<const Bytef*>(piece.data()), static_cast<uInt>(piece.size())));
    begin += piece.substr(0, longestEdge - std::min(longestEdge, begin.size()));
    end += piece;
    if (end.size() > longestEdge) end.erase(0, end.size() - longestEdge);
  }
};

std::optional<Inflated> inflated(std::string_view packed) {
  z_stream stream{};
  if (inflateInit2(&stream, -MAX_WBITS) != Z_OK) return std::nullopt;
  stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(packed.data()));  // zlib does not write to it
  stream.avail_in = static_cast<uInt>(packed.size());
  Inflated found;
  std::array<char, 65536> piece;
  int state = Z_OK;
  while (state == Z_OK) {
    stream.next_out = reinterpret_cast<Bytef*>(piece.data());
    stream.avail_out = static_cast<uInt>(piece.size());
    state = inflate(&stream, Z_NO_FLUSH);
    found.take({piece.data(), piece.size() - stream.avail_out});
  }
  inflateEnd(&stream);
  return state == Z_STREAM_END ? std::optional(found) : std::nullopt;
}

/// <?xml ...?> and an element that is closed at the very end.
bool isClosed(const Inflated& part) {
  const std::size_t declared = part.begin.find("?>");
  const std::size_t root = declared == std::string::npos ? declared : part.begin.find('<', declared);
  if (root == std::string::npos) return false;
  const std::string name =
      part.begin.substr(root + 1, part.begin.find_first_of(" \t\r\n/>", root + 1) - root - 1);
  const std::string_view end = std::string_view(part.end).substr(0, part.end.find_last_not_of(" \r\n") + 1);
  return !name.empty() && (end.ends_with("</" + name + ">") ||
                           (end.ends_with("/>") && part.begin.find('<', root + 1) == std::string::npos));
}

/// The part that the entry of the directory at `at` tells of.
bool isWholePart(std::string_view bytes, std::size_t at) {
  const std::size_t local = numberAt(bytes, at + 42, 4), packed = numberAt(bytes, at + 20, 4);
  if (local + localRecord > bytes.size()) return false;
  const std::size_t data =
      local + localRecord + numberAt(bytes, local + 26, 2) + numberAt(bytes, local + 28, 2);
  if (data > bytes.size() || packed > bytes.size() - data) return false;
  const auto part = inflated(bytes.substr(data, packed));
  return part && part->size == numberAt(bytes, at + 24, 4) && part->crc == numberAt(bytes, at + 16, 4) &&
         isClosed(*part);
}

}  // namespace

bool isWholeWorkbook(std::string_view bytes) {
  if (bytes.size() < endRecord) return false;
  const std::size_t end = bytes.size() - endRecord;  // we write no comment behind it
  if (bytes.substr(end, 4) != std::string_view("PK\x05\x06", 4)) return false;
  const std::uint32_t parts = numberAt(bytes, end + 10, 2);
  std::size_t at = numberAt(bytes, end + 16, 4);
  for (std::uint32_t k = 0; k < parts; ++k) {
    if (at + directoryRecord > end || !isWholePart(bytes, at)) return false;
    at += directoryRecord + numberAt(bytes, at + 28, 2) + numberAt(bytes, at + 30, 2) +
          numberAt(bytes, at + 32, 2);
  }
  return parts > 0;
}

}  // namespace core
