// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/number_records.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cstring>
#include <string>
#include <type_traits>

#include "core/units/language.h"

namespace core {
namespace {

template <std::size_t Bytes>
using Word =
    std::conditional_t<Bytes == 1, std::uint8_t,
                       std::conditional_t<Bytes == 2, std::uint16_t,
                                          std::conditional_t<Bytes <= 4, std::uint32_t, std::uint64_t>>>;

template <std::size_t Bytes, bool BigEndian>
Word<Bytes> wordAt(const char* at) {
  std::uint64_t word = 0;
  for (std::size_t k = 0; k < Bytes; ++k) {
    const auto byte = static_cast<unsigned char>(at[BigEndian ? Bytes - 1 - k : k]);
    word |= std::uint64_t{byte} << (8 * k);
  }
  return static_cast<Word<Bytes>>(word);
}

template <NumberKind Kind, std::size_t Bytes, bool BigEndian>
double numberAt(const char* at) {
  const auto word = wordAt<Bytes, BigEndian>(at);
  if constexpr (Kind == NumberKind::Float) {
    if constexpr (Bytes == 4) return static_cast<double>(std::bit_cast<float>(word));
    if constexpr (Bytes == 8) return std::bit_cast<double>(word);
  } else if constexpr (Kind == NumberKind::Signed) {
    // Up to the sign bit and back, which spreads the sign of three bytes over four.
    constexpr unsigned unused = 8 * (sizeof(word) - Bytes);
    using SignedWord = std::make_signed_t<Word<Bytes>>;
    return static_cast<double>(static_cast<SignedWord>(static_cast<SignedWord>(word << unused) >> unused));
  } else {
    return static_cast<double>(word);
  }
}

/// Numbers at `at`, `stride` bytes apart.
struct Run {
  const char* at;
  std::size_t count;
  std::size_t stride;
};

template <NumberKind Kind, std::size_t Bytes, bool BigEndian>
void append(const Run& run, const RecordField& field, Samples& to) {
  for (std::size_t k = 0; k < run.count; ++k)
    to.push_back((numberAt<Kind, Bytes, BigEndian>(run.at + k * run.stride) + field.shift) * field.scale);
}

template <NumberKind Kind, std::size_t Bytes>
void appendEitherEndian(const Run& run, const RecordField& field, Samples& to) {
  field.format.bigEndian ? append<Kind, Bytes, true>(run, field, to)
                         : append<Kind, Bytes, false>(run, field, to);
}

template <NumberKind Kind>
void appendIntegers(const Run& run, const RecordField& field, Samples& to) {
  switch (field.format.bytes) {
    case 1:
      return appendEitherEndian<Kind, 1>(run, field, to);
    case 2:
      return appendEitherEndian<Kind, 2>(run, field, to);
    case 3:
      return appendEitherEndian<Kind, 3>(run, field, to);
    case 4:
      return appendEitherEndian<Kind, 4>(run, field, to);
    default:
      return appendEitherEndian<Kind, 8>(run, field, to);
  }
}

void appendNumbers(const Run& run, const RecordField& field, Samples& to) {
  switch (field.format.kind) {
    case NumberKind::Signed:
      return appendIntegers<NumberKind::Signed>(run, field, to);
    case NumberKind::Unsigned:
      return appendIntegers<NumberKind::Unsigned>(run, field, to);
    case NumberKind::Float:
      break;
  }
  field.format.bytes == 4 ? appendEitherEndian<NumberKind::Float, 4>(run, field, to)
                          : appendEitherEndian<NumberKind::Float, 8>(run, field, to);
}

std::uint64_t bytesHeld(const RegularFile& file, const RecordBlock& block) {
  return block.offset < file.size() ? file.size() - block.offset : 0;
}

/// The fields of a last record of which only `bytes` are there.
void appendPartOfRecord(const RecordBlock& block, const char* record, std::size_t bytes,
                        ColumnValues& values) {
  for (const RecordField& field : block.fields) {
    if (field.offset + field.format.bytes > bytes) continue;
    appendNumbers({record + field.offset, 1, block.recordBytes}, field, values[field.column]);
  }
}

/// How far all blocks together are.
struct Account {
  const std::stop_token& stop;
  const Progress& progress;
  std::uint64_t bytesToRead = 0;
  std::uint64_t bytesRead = 0;
};

Result<void> readBlock(const RegularFile& file, const RecordBlock& block, std::uint64_t records,
                       ColumnValues& values, Account& account) {
  constexpr std::size_t pieceBytes = 1UL << 20U;
  const auto recordsAPiece = static_cast<std::size_t>(std::min<std::uint64_t>(
      std::max<std::size_t>(1, pieceBytes / block.recordBytes), recordsHeld(file, block) + 1));
  std::vector<char> piece(recordsAPiece * block.recordBytes);
  for (std::uint64_t done = 0; done < records;) {
    if (account.stop.stop_requested()) return cancelled();
    const auto wanted = static_cast<std::size_t>(std::min<std::uint64_t>(recordsAPiece, records - done));
    const auto bytes =
        file.read(block.offset + done * block.recordBytes, piece.data(), wanted * block.recordBytes);
    if (!bytes) return bytes.error();
    const std::size_t whole = *bytes / block.recordBytes;
    for (const RecordField& field : block.fields)
      appendNumbers({piece.data() + field.offset, whole, block.recordBytes}, field, values[field.column]);
    if (whole < wanted) {
      const std::size_t used = whole * block.recordBytes;
      appendPartOfRecord(block, piece.data() + used, *bytes - used, values);
      return {};
    }
    done += whole;
    account.bytesRead += *bytes;
    if (account.progress)
      account.progress(static_cast<double>(account.bytesRead) / static_cast<double>(account.bytesToRead));
  }
  return {};
}

}  // namespace

bool isReadable(const NumberFormat& format) {
  const std::size_t n = format.bytes;
  if (format.kind == NumberKind::Float) return n == 4 || n == 8;
  return n == 1 || n == 2 || n == 3 || n == 4 || n == 8;
}

std::uint64_t recordsHeld(const RegularFile& file, const RecordBlock& block) {
  return std::min(block.records, bytesHeld(file, block) / block.recordBytes);
}

std::string doubtWhenCut(const RegularFile& file, const RecordBlock& block) {
  const std::uint64_t held = recordsHeld(file, block);
  if (held == block.records) return {};
  return say("The file announces {1} samples and ends after {2}.",
             {std::to_string(block.records), std::to_string(held)});
}

Result<ColumnValues> readBlocks(const RegularFile& file, const std::vector<RecordBlock>& blocks,
                                std::size_t columns, std::uint64_t records, const std::stop_token& stop,
                                const Progress& progress) {
  Account account{stop, progress};
  std::uint64_t cells = 0;
  for (const RecordBlock& block : blocks) {
    assert(block.recordBytes > 0 && block.recordBytes <= greatestRecordBytes);
    const std::uint64_t held = std::min(records, recordsHeld(file, block));
    account.bytesToRead += held * block.recordBytes;
    cells += held * block.fields.size();
  }
  if (cells > greatestBinaryCells) {
    return file.error(
        say("the file holds {1} numbers, more than can be read at once", {std::to_string(cells)}),
        say("Export a shorter recording or fewer channels"));
  }
  ColumnValues values(columns);
  for (const RecordBlock& block : blocks) {
    const std::uint64_t held = std::min(records, recordsHeld(file, block));
    for (const RecordField& field : block.fields) {
      Samples& column = values[field.column];
      column.reserve(column.size() + static_cast<std::size_t>(held) + 1);
    }
    if (const auto read = readBlock(file, block, std::min(records, block.records), values, account); !read)
      return read.error();
  }
  return values;
}

}  // namespace core
