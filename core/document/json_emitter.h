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

/// Writes JSON in the order of the calls, each container either a line per element or on one line; or, for
/// fingerprints, in the canonical form of RFC 8785.
///
/// Members are given with their key, elements of an array with an empty one. What cannot be written
/// (a number that is not finite, text that is not UTF-8) is noted with the way to it.
class JsonEmitter {
 public:
  enum class Layout : std::uint8_t { Lines, OneLine };
  enum class Form : std::uint8_t { AsCalled, Canonical };

  explicit JsonEmitter(Form form = Form::AsCalled) : m_canonical(form == Form::Canonical) {}

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

  /// The text, with a line break at its end unless it is canonical, or the first thing that could not be
  /// written.
  Result<std::string> finished() const;

 private:
  struct Scope {
    std::string_view key;   ///< of the container itself
    std::size_t index = 0;  ///< of the container in its parent
    bool oneLine = false;
    char closing = '}';
    std::size_t count = 0;        ///< members or elements so far
    std::size_t firstMember = 0;  ///< of it in m_members
  };
  /// Where a member begins in the text, to sort it by its key.
  struct Member {
    std::string_view key;
    std::size_t begin;
  };

  void begin(std::string_view key);
  void open(std::string_view key, Layout layout, char opening, char closing);
  void close();
  void sortMembers(const Scope& scope);
  void breakLine();
  void quote(std::string_view value);
  void fail(std::string_view key, std::string what, std::string mend);

  bool m_canonical;
  std::string m_text;
  std::vector<Scope> m_scopes;
  std::vector<Member> m_members;  ///< of all objects that are open; canonical form only
  std::optional<Error> m_error;
};

}  // namespace core
