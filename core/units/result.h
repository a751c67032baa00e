// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace core {

/// Why something could not be done, for the person at the screen. All texts are plain text.
struct Error {
  std::string where;  ///< the thing at fault as the user knows it: "step 4", "arm 2", "line 17"
  std::string what;   ///< one sentence without full stop that says what is wrong
  std::string mend;   ///< what the user can do about it; may be empty

  /// "where: what. mend."
  std::string text() const {
    std::string line = where.empty() ? what : where + ": " + what;
    return mend.empty() ? line + "." : line + ". " + mend + ".";
  }

  friend bool operator==(const Error&, const Error&) = default;
};

/// A value or the reason why there is none. Never both, never neither.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : m_state(std::move(value)) {}
  Result(Error error) : m_state(std::move(error)) {}

  explicit operator bool() const { return m_state.index() == 0; }

  const T& operator*() const& { return value(); }
  T& operator*() & { return value(); }
  T&& operator*() && { return std::move(value()); }
  const T* operator->() const { return &value(); }
  T* operator->() { return &value(); }

  /// The reason; only to be asked for when there is no value.
  const Error& error() const {
    assert(m_state.index() == 1);
    return *std::get_if<1>(&m_state);
  }

 private:
  const T& value() const {
    assert(m_state.index() == 0);
    return *std::get_if<0>(&m_state);
  }
  T& value() {
    assert(m_state.index() == 0);
    return *std::get_if<0>(&m_state);
  }

  std::variant<T, Error> m_state;
};

/// Success without a value, or the reason for failure.
template <>
class [[nodiscard]] Result<void> {
 public:
  Result() = default;
  Result(Error error) : m_error(std::move(error)) {}

  explicit operator bool() const { return !m_error.has_value(); }
  const Error& error() const {
    assert(m_error.has_value());
    return *m_error;
  }

 private:
  std::optional<Error> m_error;
};

}  // namespace core
