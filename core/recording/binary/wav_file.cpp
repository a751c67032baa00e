// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/wav_file.h"

#include <cmath>
#include <limits>
#include <optional>

#include "core/recording/binary/number_records.h"
#include "core/units/language.h"

namespace core {
namespace {

constexpr std::uint64_t unknownLength = std::numeric_limits<std::uint32_t>::max();

/// Little-endian, of bytes that may end early.
std::uint64_t integerAt(std::string_view bytes, std::size_t offset, std::size_t length) {
  std::uint64_t number = 0;
  for (std::size_t k = 0; k < length && offset + k < bytes.size(); ++k)
    number |= std::uint64_t{static_cast<unsigned char>(bytes[offset + k])} << (8 * k);
  return number;
}

struct WavFormat {
  std::uint64_t tag = 0;  ///< 1 PCM, 3 float
  std::uint64_t channels = 0;
  std::uint64_t rate_Hz = 0;
  std::uint64_t frameBytes = 0;
  std::uint64_t bits = 0;  ///< of the place of a sample
};

struct WavChunks {
  std::optional<WavFormat> format;
  std::uint64_t dataOffset = 0;
  std::uint64_t dataBytes = 0;
  bool hasData = false;
};

WavFormat formatIn(std::string_view chunk) {
  constexpr std::uint64_t extensible = 0xFFFE;
  WavFormat format{.tag = integerAt(chunk, 0, 2),
                   .channels = integerAt(chunk, 2, 2),
                   .rate_Hz = integerAt(chunk, 4, 4),
                   .frameBytes = integerAt(chunk, 12, 2),
                   .bits = integerAt(chunk, 14, 2)};
  // The extensible form has the tag in the first two bytes of a GUID.
  if (format.tag == extensible) format.tag = integerAt(chunk, 24, 2);
  return format;
}

/// Finds format and data among the chunks; others are passed over.
Result<WavChunks> chunksOf(const RegularFile& file) {
  constexpr int greatestChunks = 10'000;
  WavChunks found;
  std::uint64_t length64 = unknownLength;
  std::uint64_t offset = 12;
  for (int k = 0; k < greatestChunks; ++k) {
    // The head of a chunk, and as much of its content as is ever needed.
    const auto bytes = file.read(offset, 8 + 40);
    if (!bytes) return bytes.error();
    if (bytes->size() < 8) break;
    const std::string_view name = std::string_view(*bytes).substr(0, 4);
    const std::string_view content = std::string_view(*bytes).substr(8);
    std::uint64_t length = integerAt(*bytes, 4, 4);
    offset += 8;
    if (name == "ds64") length64 = integerAt(content, 8, 8);
    if (name == "fmt ") found.format = formatIn(content);
    if (name == "data") {
      if (length == unknownLength) length = length64;
      // A writer that was stopped leaves 0 or the greatest number.
      const bool open = length == 0 || length == unknownLength;
      found.dataOffset = offset;
      found.dataBytes = open && offset < file.size() ? file.size() - offset : length;
      found.hasData = true;
      if (found.format || open) break;
    }
    if (length > file.size()) break;
    offset += length + length % 2;
  }
  return found;
}

std::optional<Error> faultOf(const WavChunks& chunks, const RegularFile& file) {
  if (!chunks.format)
    return file.error(say("the WAV file has no description of its samples"), say("Export it again"));
  if (!chunks.hasData) return file.error(say("the WAV file has no samples"), say("Export it again"));
  const WavFormat& format = *chunks.format;
  if (format.tag != 1 && format.tag != 3) {
    return file.error(say("its samples are compressed (WAV format {1})", {std::to_string(format.tag)}),
                      say("Export it as PCM or float"));
  }
  if (format.channels == 0 || format.channels > greatestBinaryColumns)
    return file.error(say("it announces {1} channels", {std::to_string(format.channels)}),
                      say("Export it again"));
  if (format.rate_Hz == 0) return file.error(say("it announces a sample rate of 0"), say("Export it again"));
  const std::uint64_t bytes = (format.bits + 7) / 8;
  const bool plain = format.tag == 3 ? bytes == 4 || bytes == 8 : bytes >= 1 && bytes <= 4;
  if (!plain || format.frameBytes != bytes * format.channels)
    return file.error(say("it announces samples of {1} bits in frames of {2} bytes",
                          {std::to_string(format.bits), std::to_string(format.frameBytes)}),
                      say("Export it as PCM of 16, 24 or 32 bits"));
  return std::nullopt;
}

RecordField fieldOf(const WavFormat& format, std::size_t channel) {
  const auto bytes = static_cast<std::size_t>((format.bits + 7) / 8);
  RecordField field;
  field.offset = channel * bytes;
  field.column = channel;
  if (format.tag == 3) {
    field.format = {NumberKind::Float, bytes, false};
    return field;
  }
  field.format = {bytes == 1 ? NumberKind::Unsigned : NumberKind::Signed, bytes, false};
  field.shift = bytes == 1 ? -128 : 0;
  field.scale = std::ldexp(1.0, 1 - 8 * static_cast<int>(bytes));
  return field;
}

}  // namespace

Result<BinaryTable> openWav(const SharedFile& file) {
  const auto chunks = chunksOf(*file);
  if (!chunks) return chunks.error();
  if (const auto fault = faultOf(*chunks, *file)) return *fault;
  const WavFormat& format = *chunks->format;
  RecordBlock block{.offset = chunks->dataOffset,
                    .recordBytes = static_cast<std::size_t>(format.frameBytes),
                    .records = chunks->dataBytes / format.frameBytes,
                    .fields = {}};
  BinaryTable table;
  table.kind = FileKind::Wav;
  for (std::size_t k = 0; k < format.channels; ++k) {
    block.fields.push_back(fieldOf(format, k));
    table.columns.push_back({"Channel " + std::to_string(k + 1), format.tag == 1 ? "FS" : ""});
  }
  if (auto doubt = doubtWhenCut(*file, block); !doubt.empty()) table.doubts.push_back(std::move(doubt));
  table.records = block.records;
  table.spacing_s = 1 / static_cast<double>(format.rate_Hz);
  table.rateSource = say("sample rate in the file, {1} Hz", {std::to_string(format.rate_Hz)});
  table.read = [file, block](std::uint64_t records, const std::stop_token& stop, const Progress& progress) {
    return readBlocks(*file, {block}, block.fields.size(), records, stop, progress);
  };
  return table;
}

}  // namespace core
