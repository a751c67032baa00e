// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/reader.h"

#include <string>

#include "core/recording/binary/binary_files.h"
#include "core/recording/file_bytes.h"
#include "core/recording/text/delimited_text.h"

namespace core {
namespace {

/// Told by the first bytes; what no binary kind begins with is taken for text.
Result<FileKind> kindOf(const std::filesystem::path& path) {
  const auto file = RegularFile::open(path);
  if (!file) return file.error();
  const auto bytes = file->read(0, binaryKindBytes);
  if (!bytes) return bytes.error();
  return binaryKindOf(*bytes).value_or(FileKind::Text);
}

}  // namespace

Result<Preview> lookAt(const std::filesystem::path& path, const LayoutChoices& choices,
                       const std::stop_token& stop) {
  const auto kind = kindOf(path);
  if (!kind) return kind.error();
  if (*kind == FileKind::Text) return lookAtText(path, choices, stop);
  return lookAtBinary(path, *kind, choices, stop);
}

Result<Recording> readRecording(const std::filesystem::path& path, const LayoutChoices& choices,
                                const std::stop_token& stop, const Progress& progress) {
  const auto kind = kindOf(path);
  if (!kind) return kind.error();
  if (*kind == FileKind::Text) return readText(path, choices, stop, progress);
  return readBinary(path, *kind, choices, stop, progress);
}

}  // namespace core
