// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <bit>
#include <charconv>
#include <cstdint>

#include "core/recording/binary/binary_files.h"
#include "core/recording/characters.h"

namespace core {
namespace {

constexpr std::string_view hdf5Mark = "\x89HDF\r\n\x1a\n";

/// The mark stands at 0, or after a block of 512, 1024, 2048 ... bytes that belongs to the user.
bool isHdf5(std::string_view bytes) {
  if (bytes.starts_with(hdf5Mark)) return true;
  for (std::size_t at = 512; at + hdf5Mark.size() <= bytes.size(); at *= 2)
    if (bytes.substr(at).starts_with(hdf5Mark)) return true;
  return false;
}

bool isWave(std::string_view bytes) {
  return bytes.size() >= 12 && (bytes.starts_with("RIFF") || bytes.starts_with("RF64")) &&
         bytes.substr(8, 4) == "WAVE";
}

std::uint32_t wordAt(std::string_view bytes, std::size_t offset, bool bigEndian) {
  std::uint32_t word = 0;
  for (std::size_t k = 0; k < 4; ++k)
    word |= std::uint32_t{static_cast<unsigned char>(bytes[offset + k])} << (8 * (bigEndian ? 3 - k : k));
  return word;
}

/// MATLAB 4 has no mark: five words (type MOPT, rows, columns, complex or not, length of the name) and the
/// name. Source: MAT-File Format, "Level 4 MAT-File Format"; from memory.
bool isMatlab4(std::string_view bytes, bool bigEndian) {
  constexpr std::size_t header = 20;
  if (bytes.size() < header + 2) return false;
  const std::uint32_t type = wordAt(bytes, 0, bigEndian);
  const bool plausible =
      type / 1000 == (bigEndian ? 1U : 0U) && type / 100 % 10 == 0 && type / 10 % 10 <= 5 && type % 10 <= 2;
  const std::uint32_t nameLength = wordAt(bytes, 16, bigEndian);
  if (!plausible || wordAt(bytes, 12, bigEndian) > 1 || nameLength < 2 || nameLength > 64) return false;
  const std::string_view name = bytes.substr(header, nameLength - 1);
  const auto isOfName = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
  };
  return std::all_of(name.begin(), name.end(), isOfName);
}

/// A line "    -1", then the number of a data set.
bool isUniversalFile(std::string_view bytes) {
  constexpr std::array<std::string_view, 16> known = {"58",   "15",   "18",   "55",   "56",   "82",
                                                      "151",  "164",  "1858", "2411", "2412", "2414",
                                                      "2420", "2429", "2467", "58b"};
  const auto end = bytes.find('\n');
  if (end == std::string_view::npos || end > 81 || !bytes.starts_with("    ") ||
      trimmed(bytes.substr(0, end)) != "-1")
    return false;
  const std::string_view second = bytes.substr(end + 1, bytes.substr(end + 1).find('\n'));
  const std::string_view number = trimmed(second.substr(0, 7));
  return second.starts_with("  ") && std::find(known.begin(), known.end(), number) != known.end();
}

}  // namespace

std::optional<FileKind> binaryKindOf(std::string_view firstBytes) {
  if (isWave(firstBytes)) return FileKind::Wav;
  if (firstBytes.starts_with("\x93NUMPY")) return FileKind::Npy;
  if (isHdf5(firstBytes)) return FileKind::Hdf5;
  if (firstBytes.starts_with("MATLAB 5.0 MAT-file")) return FileKind::Mat;
  if (isUniversalFile(firstBytes)) return FileKind::Uff58;
  if (isMatlab4(firstBytes, false) || isMatlab4(firstBytes, true)) return FileKind::Mat;
  return std::nullopt;
}

}  // namespace core
