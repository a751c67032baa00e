// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include "core/document/document.h"

namespace ui {

/// Where a number of a channel is read from and where it goes, in its base unit.
struct ChannelValue {
  std::function<std::optional<double>(const core::Channel&)> get;  ///< none: not given
  std::function<void(core::Channel&, double)> set;
  std::function<void(core::Channel&)> clear;  ///< of values that may be absent, else empty
};

/// Where one of several choices is read from and where it goes, counted from 0.
struct ChannelChoice {
  std::function<int(const core::Channel&)> get;
  std::function<void(core::Channel&, int)> set;
};

inline double baseOf(double value) { return value; }
template <class Kind>
double baseOf(core::Quantity<Kind> value) {
  return value.base();
}

/// The number or quantity that `at` refers to: valueAt([](auto& c) -> auto& { return c.setup.limits.least;
/// }).
template <class At>
ChannelValue valueAt(At at) {
  return {[at](const core::Channel& channel) { return std::optional(baseOf(at(channel))); },
          [at](core::Channel& channel, double base) {
            auto& value = at(channel);
            value = std::remove_reference_t<decltype(value)>(base);
          },
          {}};
}

/// The same for a quantity that may be absent.
template <class At>
ChannelValue optionalAt(At at) {
  return {[at](const core::Channel& channel) -> std::optional<double> {
            const auto& value = at(channel);
            return value ? std::optional(baseOf(*value)) : std::nullopt;
          },
          [at](core::Channel& channel, double base) {
            auto& value = at(channel);
            value = typename std::remove_reference_t<decltype(value)>::value_type(base);
          },
          [at](core::Channel& channel) { at(channel).reset(); }};
}

/// `value` shown `factor` times as large, for a unit that the notation does not know.
inline ChannelValue scaled(const ChannelValue& value, double factor) {
  return {[get = value.get, factor](const core::Channel& channel) -> std::optional<double> {
            const auto base = get(channel);
            return base ? std::optional(*base * factor) : std::nullopt;
          },
          [set = value.set, factor](core::Channel& channel, double shown) { set(channel, shown / factor); },
          value.clear};
}

/// The enumeration that `at` refers to; the choices are its enumerators in their order.
template <class At>
ChannelChoice choiceAt(At at) {
  return {[at](const core::Channel& channel) { return static_cast<int>(at(channel)); },
          [at](core::Channel& channel, int row) {
            auto& value = at(channel);
            value = static_cast<std::remove_reference_t<decltype(value)>>(row);
          }};
}

}  // namespace ui
