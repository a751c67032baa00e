// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/result.h"

namespace core {

/// Writes JSON in the order of the calls, each container either a line per element or on one line.
///
/// Members are given with their key, elements of an array with an empty one. What cannot be written
/// (a number that is not finite, text that is not UTF-8) is noted with the way to it.
class JsonEmitter {
 public:
  enum class Layout : std::uint8_t { Lines, OneLine };

  /// `body` writes the members or elements. Everything inside a container on one line is on that line.
  template <class Body>
  void object(std::string_view key, Layout layout, const Body& body) {
    open(key, layout, '{', '}');
    body();
    close();
  }
  template <class Body>
  void array(std::string_view key, Layout layout, const Body& body) {
    open(key, layout, '[', ']');
    body();
    close();
  }

  void text(std::string_view key, std::string_view value);
  void number(std::string_view key, double value);  ///< shortest that reads back the same; -0 as 0
  void count(std::string_view key, std::uint64_t value);
  void boolean(std::string_view key, bool value);
  void null(std::string_view key);

  /// The text with a line break at its end, or the first thing that could not be written.
  Result<std::string> finished() const;

 private:
  struct Scope {
    std::string_view key;   ///< of the container itself
    std::size_t index = 0;  ///< of the container in its parent
    bool oneLine = false;
    char closing = '}';
    std::size_t count = 0;  ///< members or elements so far
  };

  void begin(std::string_view key);
  void open(std::string_view key, Layout layout, char opening, char closing);
  void close();
  void breakLine();
  void quote(std::string_view value);
  void fail(std::string_view key, std::string what, std::string mend);

  std::string m_text;
  std::vector<Scope> m_scopes;
  std::optional<Error> m_error;
};

}  // namespace core
