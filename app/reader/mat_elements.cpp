// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reader/mat_elements.h"

#include <sys/stat.h>
#include <unistd.h>
#include <zlib.h>

#include <algorithm>
#include <cerrno>
#include <optional>

#include "app/reader/mat_bytes.h"
#include "core/recording/binary/reader_protocol.h"

namespace reader {
namespace {

constexpr std::size_t headBytes = 4096;
constexpr const char* cutOff = "is cut off by the end of the file";
constexpr const char* doNotFit = "announces sizes that do not fit its data";
constexpr const char* doesNotUnpack = "is damaged: its data do not unpack";

/// Bytes of a number of a level 5 storage type; 0 for what is no type of numbers.
std::uint64_t bytesOfType(std::uint32_t type) {
  constexpr std::uint64_t bytes[] = {0, 1, 1, 2, 2, 4, 4, 4, 0, 8, 0, 0, 8, 8};
  return type < std::size(bytes) ? bytes[type] : 0;
}

/// A part of a level 5 element: its type, length, and where its data are. Short ones hold both in one word.
struct Part {
  std::uint32_t type = 0;
  std::uint64_t length = 0;
  std::size_t data = 0;
  std::size_t next = 0;
};

std::optional<Part> partAt(const MatBytes& bytes, std::size_t offset) {
  if (!bytes.holds(offset, 8)) return std::nullopt;
  const std::uint32_t first = bytes.word(offset);
  if (first >> 16U != 0) return Part{first & 0xFFFFU, first >> 16U, offset + 4, offset + 8};
  const std::uint64_t length = bytes.word(offset + 4);
  return Part{first, length, offset + 8, static_cast<std::size_t>(offset + 8 + (length + 7) / 8 * 8)};
}

/// The product of the dimensions; none when it cannot be counted.
std::optional<std::uint64_t> numbersIn(const MatBytes& bytes, const Part& sizes) {
  std::uint64_t numbers = 1;
  for (std::size_t at = 0; at + 4 <= sizes.length; at += 4)
    if (__builtin_mul_overflow(numbers, std::uint64_t{bytes.word(sizes.data + at)}, &numbers))
      return std::nullopt;
  return numbers;
}

/// Reads the head of a matrix of `length` bytes. What is not numeric has no sizes to check.
MatElement matrixIn(const MatBytes& bytes, std::uint64_t length) {
  constexpr std::uint32_t leastNumericClass = 6;
  const auto flags = partAt(bytes, 0);
  const auto sizes = flags ? partAt(bytes, flags->next) : std::nullopt;
  const auto name = sizes ? partAt(bytes, sizes->next) : std::nullopt;
  if (!name || !bytes.holds(flags->data, 8) || !bytes.holds(sizes->data, sizes->length) ||
      !bytes.holds(name->data, name->length))
    return {"", doNotFit};
  MatElement element{bytes.text(name->data, name->length), ""};
  if ((bytes.word(flags->data) & 0xFFU) < leastNumericClass) return element;
  const auto numbers = numbersIn(bytes, *sizes);
  if (numbers == 0U) return element;
  const auto data = partAt(bytes, name->next);
  const std::uint64_t each = data ? bytesOfType(data->type) : 0;
  const bool fits = numbers && each > 0 && data->length / each == *numbers && data->length % each == 0 &&
                    data->data + data->length <= length;
  if (!fits) element.fault = doNotFit;
  return element;
}

/// Unpacks a compressed element, keeping its head alone.
class Unpacking {
 public:
  explicit Unpacking(bool bigEndian) : m_bigEndian(bigEndian) { m_ready = inflateInit(&m_stream) == Z_OK; }
  ~Unpacking() { inflateEnd(&m_stream); }
  Unpacking(const Unpacking&) = delete;
  Unpacking& operator=(const Unpacking&) = delete;

  /// True when the stream comes to its own good end within the bytes. Ends early when there is more than the
  /// head announces: a small stream may unpack to terabytes.
  bool unpack(int fd, std::uint64_t offset, std::uint64_t length) {
    constexpr std::size_t piece = 1UL << 16U;
    while (m_ready && length > 0) {
      std::string packed =
          bytesAt(fd, offset, static_cast<std::size_t>(std::min<std::uint64_t>(piece, length)));
      if (packed.empty()) return false;
      offset += packed.size();
      length -= packed.size();
      if (const int state = feed(packed); state != Z_OK) return state == Z_STREAM_END;
      if (isTooMuch()) return true;
    }
    return false;
  }
  const std::string& head() const { return m_head; }
  std::uint64_t bytes() const { return m_bytes; }

 private:
  bool isTooMuch() const {
    return m_head.size() >= 8 && m_bytes > 8 + std::uint64_t{MatBytes(m_head, m_bigEndian).word(4)};
  }
  int feed(std::string& packed) {
    m_stream.next_in = reinterpret_cast<Bytef*>(packed.data());
    m_stream.avail_in = static_cast<uInt>(packed.size());
    do {
      m_stream.next_out = m_out;
      m_stream.avail_out = sizeof m_out;
      const int state = inflate(&m_stream, Z_NO_FLUSH);
      const std::size_t got = sizeof m_out - m_stream.avail_out;
      m_bytes += got;
      m_head.append(reinterpret_cast<const char*>(m_out), std::min(got, headBytes - m_head.size()));
      if (state == Z_BUF_ERROR || (state == Z_OK && isTooMuch())) return Z_OK;
      if (state != Z_OK) return state;
    } while (m_stream.avail_in > 0 || m_stream.avail_out == 0);
    return Z_OK;
  }

  z_stream m_stream{};
  bool m_bigEndian;
  bool m_ready = false;
  Bytef m_out[1UL << 16U];
  std::string m_head;
  std::uint64_t m_bytes = 0;
};

MatElement packedElement(int fd, std::uint64_t offset, std::uint64_t length, bool bigEndian) {
  Unpacking unpacking(bigEndian);
  const bool whole = unpacking.unpack(fd, offset, length);
  const MatBytes head(unpacking.head(), bigEndian);
  if (!head.holds(0, 8)) return {"", doesNotUnpack};
  const std::uint64_t announced = head.word(4);
  const std::string body = unpacking.head().substr(8);
  MatElement element = matrixIn(MatBytes(body, bigEndian), announced);
  if (!whole) {
    element.fault = doesNotUnpack;
  } else if (announced + 8 != unpacking.bytes()) {
    element.fault = doNotFit;
  }
  return element;
}

std::vector<MatElement> level5Elements(int fd, std::uint64_t size, bool bigEndian) {
  constexpr std::uint32_t matrix = 14;
  constexpr std::uint32_t compressed = 15;
  std::vector<MatElement> elements;
  for (std::uint64_t offset = 128; offset + 8 <= size && elements.size() <= core::greatestReaderVariables;) {
    const std::string tag = bytesAt(fd, offset, 8);
    if (tag.size() < 8) break;
    const std::uint32_t type = MatBytes(tag, bigEndian).word(0);
    const std::uint64_t length = MatBytes(tag, bigEndian).word(4);
    offset += 8;
    if (type != matrix && type != compressed) break;
    if (type == matrix) {
      const std::string head =
          bytesAt(fd, offset, static_cast<std::size_t>(std::min<std::uint64_t>(length, headBytes)));
      elements.push_back(matrixIn(MatBytes(head, bigEndian), length));
    } else {
      elements.push_back(packedElement(fd, offset, length, bigEndian));
    }
    if (length > size - offset) {
      elements.back().fault = cutOff;
      break;
    }
    offset += length;
  }
  return elements;
}

/// Bytes of a number of level 4, by the third digit of its type.
std::uint64_t level4Bytes(std::uint32_t type) {
  constexpr std::uint64_t bytes[] = {8, 4, 4, 2, 2, 1};
  const std::uint32_t digit = type / 10 % 10;
  return digit < std::size(bytes) ? bytes[digit] : 0;
}

std::vector<MatElement> level4Elements(int fd, std::uint64_t size) {
  constexpr std::size_t header = 20;
  std::vector<MatElement> elements;
  for (std::uint64_t offset = 0;
       offset + header <= size && elements.size() <= core::greatestReaderVariables;) {
    const std::string bytes = bytesAt(fd, offset, header + 64);
    if (bytes.size() < header) break;
    const bool bigEndian = MatBytes(bytes, false).word(0) > 9999;
    const MatBytes head(bytes, bigEndian);
    const std::uint64_t each = level4Bytes(head.word(0));
    const std::uint64_t nameLength = head.word(16);
    std::uint64_t numbers = 0;
    if (each == 0 || nameLength == 0 || nameLength > 64 || !head.holds(header, nameLength) ||
        head.word(12) > 1)
      break;
    elements.push_back({head.text(header, nameLength - 1), ""});
    std::uint64_t length = 0;
    if (__builtin_mul_overflow(std::uint64_t{head.word(4)}, std::uint64_t{head.word(8)}, &numbers) ||
        __builtin_mul_overflow(numbers, each * (1 + head.word(12)), &length) ||
        length > size - offset - header - nameLength) {
      elements.back().fault = cutOff;
      break;
    }
    offset += header + nameLength + length;
  }
  return elements;
}

}  // namespace

std::string bytesAt(int fd, std::uint64_t offset, std::size_t count) {
  std::string bytes(count, '\0');
  std::size_t have = 0;
  while (have < count) {
    const ssize_t got = ::pread(fd, bytes.data() + have, count - have, static_cast<off_t>(offset + have));
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) break;
    have += static_cast<std::size_t>(got);
  }
  bytes.resize(have);
  return bytes;
}

std::vector<MatElement> matElements(int fd) {
  struct stat status {};
  if (::fstat(fd, &status) != 0) return {};
  const auto size = static_cast<std::uint64_t>(status.st_size);
  const std::string head = bytesAt(fd, 0, 128);
  if (!head.starts_with("MATLAB 5.0")) return level4Elements(fd, size);
  if (head.size() < 128) return {};
  return level5Elements(fd, size, head.substr(126, 2) == "MI");
}

}  // namespace reader
