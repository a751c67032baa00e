// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/reader.h"

#include "core/recording/text/delimited_text.h"

namespace core {

Result<Preview> lookAt(const std::filesystem::path& path, const LayoutChoices&, const std::stop_token& stop) {
  const auto recording = readDelimitedFile(path, stop);
  if (!recording) return recording.error();
  Preview preview;
  for (const Column& column : recording->columns)
    preview.layout.columns.push_back({column.name, column.unit});
  return preview;
}

Result<Recording> readRecording(const std::filesystem::path& path, const LayoutChoices&,
                                const std::stop_token& stop, const Progress& progress) {
  return readDelimitedFile(path, stop, progress);
}

}  // namespace core
