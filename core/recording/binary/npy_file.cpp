// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/binary/npy_file.h"

#include <bit>
#include <charconv>
#include <limits>
#include <optional>

#include "core/recording/binary/npy_header.h"
#include "core/recording/binary/number_records.h"
#include "core/recording/clean_text.h"
#include "core/recording/column_heading.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

/// The heading's text and where the numbers begin.
struct NpyText {
  std::string dictionary;
  std::uint64_t dataOffset = 0;
};

Result<NpyText> textOfHeader(const RegularFile& file) {
  const Error notWhole =
      file.error(say("the heading of the NumPy array is not whole"), say("Save the array again"));
  constexpr std::uint64_t longestHeader = 1UL << 20U;
  const auto bytes = file.read(0, 12);
  if (!bytes) return bytes.error();
  const std::string& head = *bytes;
  if (head.size() < 10) return notWhole;
  const bool longForm = head[6] > 1;
  const std::size_t lengthBytes = longForm ? 4 : 2;
  if (head.size() < 8 + lengthBytes) return notWhole;
  std::uint64_t length = 0;
  for (std::size_t k = 0; k < lengthBytes; ++k)
    length |= std::uint64_t{static_cast<unsigned char>(head[8 + k])} << (8 * k);
  if (length > longestHeader) return notWhole;
  auto dictionary = file.read(8 + lengthBytes, static_cast<std::size_t>(length));
  if (!dictionary) return dictionary.error();
  if (dictionary->size() < length) return notWhole;
  return NpyText{std::move(*dictionary), 8 + lengthBytes + length};
}

/// "<f8" and its like; none for what is no type.
struct NpyType {
  char letter = 'f';
  std::uint64_t bytes = 0;
  NumberFormat format;
  bool readable = false;
};

std::optional<NpyType> typeOf(std::string_view text) {
  if (text.size() < 3) return std::nullopt;
  NpyType type;
  type.letter = text[1];
  const auto end = std::from_chars(text.data() + 2, text.data() + text.size(), type.bytes);
  if (end.ec != std::errc()) return std::nullopt;
  if (type.letter == 'U') type.bytes *= 4;  // characters
  if (type.bytes == 0 || type.bytes > greatestRecordBytes) return std::nullopt;
  type.format.bytes = static_cast<std::size_t>(type.bytes);
  type.format.bigEndian = text[0] == '>' || (text[0] == '=' && std::endian::native == std::endian::big);
  const bool number = type.letter == 'f' || type.letter == 'i' || type.letter == 'u' || type.letter == 'b';
  if (type.letter == 'i') type.format.kind = NumberKind::Signed;
  if (type.letter == 'u' || type.letter == 'b') type.format.kind = NumberKind::Unsigned;
  type.readable = number && type.bytes != 3 && isReadable(type.format);
  return type;
}

std::string unreadable(std::string_view type) {
  if (type.find('O') != std::string_view::npos) return say("holds Python objects, which are not opened");
  if (type.find('c') != std::string_view::npos) return say("holds complex numbers");
  return say("holds elements of type {1} and no plain numbers", {inQuotes(cleanText(type))});
}

/// One element: its numbers, and the columns that they are.
struct NpyElement {
  std::size_t bytes = 0;
  std::vector<RecordField> fields;
  std::vector<ColumnHeading> columns;
  std::vector<std::string> leftOut;
};

Result<NpyElement> elementOf(const NpyHeader& header, const RegularFile& file) {
  NpyElement element;
  for (const NpyField& field : header.fields) {
    const auto type = typeOf(field.type);
    if (!type)
      return file.error(say("the array {1}", {unreadable(field.type)}), say("Save an array of numbers"));
    if (field.copies > greatestBinaryColumns ||
        element.fields.size() + field.copies > greatestBinaryColumns ||
        element.bytes + type->bytes * field.copies > greatestRecordBytes)
      return file.error(say("the elements of the array are too large"), say("Save fewer columns"));
    const std::string name = cleanName(field.name);
    for (std::uint64_t copy = 0; copy < field.copies; ++copy) {
      if (type->readable) {
        element.fields.push_back(
            {.offset = element.bytes, .format = type->format, .column = element.columns.size()});
        element.columns.push_back(
            {field.copies == 1 ? name : name + "(" + std::to_string(copy + 1) + ")", ""});
      } else if (copy == 0) {
        element.leftOut.push_back(inQuotes(name) + " " + unreadable(field.type));
      }
      element.bytes += static_cast<std::size_t>(type->bytes);
    }
  }
  if (element.fields.empty())
    return file.error(say("the array {1}", {unreadable(header.fields.front().type)}),
                      say("Save an array of numbers"));
  return element;
}

/// Rows and columns of a vector or matrix, the rows the samples.
struct NpyShape {
  std::uint64_t samples = 0;
  std::uint64_t channels = 1;
  bool interleaved = true;  ///< the channels of a sample stand together
};

std::optional<NpyShape> shapeOf(const NpyHeader& header) {
  const auto& shape = header.shape;
  if (shape.size() == 1) return NpyShape{shape[0], 1, true};
  if (shape.size() != 2) return std::nullopt;
  const bool rowsAreSamples = shape[0] >= shape[1];
  return NpyShape{rowsAreSamples ? shape[0] : shape[1], rowsAreSamples ? shape[1] : shape[0],
                  rowsAreSamples != header.columnMajor};
}

std::optional<Error> faultOf(const NpyShape& shape, const NpyElement& element, const RegularFile& file) {
  const auto announces = std::to_string(shape.samples) + " by " + std::to_string(shape.channels);
  if (shape.samples == 0 || shape.channels == 0)
    return file.error(say("the array is empty"), say("Save it again"));
  if (shape.channels > 1 && element.columns.size() > 1)
    return file.error(say("the array has records in rows and columns"), say("Save a vector of records"));
  if (shape.channels > greatestBinaryColumns)
    return file.error(say("the array has {1} numbers, more than 4096 columns", {announces}),
                      say("Save fewer columns"));
  if (shape.samples > std::numeric_limits<std::uint64_t>::max() / (shape.channels * element.bytes))
    return file.error(say("the array announces {1} numbers, more than there can be", {announces}),
                      say("Save it again"));
  return std::nullopt;
}

/// Where the numbers of each column stand. Of columns one after the other those that the file ends before are
/// dropped.
std::vector<RecordBlock> blocksOf(const NpyShape& shape, const NpyElement& element, std::uint64_t dataOffset,
                                  const RegularFile& file, BinaryTable& table) {
  const auto channels = static_cast<std::size_t>(shape.channels);
  if (channels == 1) return {{dataOffset, element.bytes, shape.samples, element.fields}};
  table.columns.clear();
  std::vector<RecordBlock> blocks;
  if (shape.interleaved) blocks.push_back({dataOffset, element.bytes * channels, shape.samples, {}});
  for (std::size_t k = 0; k < channels; ++k) {
    RecordField field = element.fields.front();
    field.column = k;
    const std::string name = "Column " + std::to_string(k + 1);
    if (shape.interleaved) {
      field.offset += k * element.bytes;
      blocks.front().fields.push_back(field);
    } else {
      const RecordBlock block{
          dataOffset + k * shape.samples * element.bytes, element.bytes, shape.samples, {field}};
      if (recordsHeld(file, block) == 0) {
        table.leftOut.push_back(say("{1} and what follows: the file ends before it", {inQuotes(name)}));
        break;
      }
      blocks.push_back(block);
    }
    table.columns.push_back({name, ""});
  }
  return blocks;
}

}  // namespace

Result<BinaryTable> openNpy(const SharedFile& file) {
  const auto text = textOfHeader(*file);
  if (!text) return text.error();
  auto header = npyHeader(text->dictionary);
  if (!header) return file->error(header.error().what, header.error().mend);
  auto element = elementOf(*header, *file);
  if (!element) return element.error();
  const auto shape = shapeOf(*header);
  if (!shape) {
    return file->error(say("the array has {1} dimensions", {std::to_string(header->shape.size())}),
                       say("Save a vector or a matrix"));
  }
  if (const auto fault = faultOf(*shape, *element, *file)) return *fault;
  BinaryTable table;
  table.kind = FileKind::Npy;
  table.columns = element->columns;
  table.leftOut = element->leftOut;
  table.records = shape->samples;
  auto blocks = blocksOf(*shape, *element, text->dataOffset, *file, table);
  if (blocks.empty())
    return file->error(say("the array holds no numbers: the file ends before them"), say("Save it again"));
  if (auto doubt = doubtWhenCut(*file, blocks.back()); !doubt.empty())
    table.doubts.push_back(std::move(doubt));
  nameColumns(table.columns);
  const std::size_t columns = table.columns.size();
  table.read = [file, blocks = std::move(blocks), columns](std::uint64_t records, const std::stop_token& stop,
                                                           const Progress& progress) {
    return readBlocks(*file, blocks, columns, records, stop, progress);
  };
  return table;
}

}  // namespace core
