// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace core {

/// A number with a unit, stored in the base unit of its kind.
///
/// The types separate kinds, not dimensions: strain and bridge output are both pure ratios, yet
/// adding one to the other does not compile.
template <class Kind>
class Quantity {
 public:
  constexpr Quantity() = default;
  constexpr explicit Quantity(double base) : m_base(base) {}

  /// The number in the base unit. Belongs where types end: in equations, and in text and files.
  constexpr double base() const { return m_base; }

  constexpr Quantity operator-() const { return Quantity(-m_base); }
  constexpr Quantity& operator+=(Quantity other) { return *this = *this + other; }
  constexpr Quantity& operator-=(Quantity other) { return *this = *this - other; }

  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_base + b.m_base); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_base - b.m_base); }
  friend constexpr Quantity operator*(double factor, Quantity q) { return Quantity(factor * q.m_base); }
  friend constexpr Quantity operator*(Quantity q, double factor) { return Quantity(factor * q.m_base); }
  friend constexpr Quantity operator/(Quantity q, double divisor) { return Quantity(q.m_base / divisor); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.m_base / b.m_base; }
  friend constexpr auto operator<=>(Quantity, Quantity) = default;

 private:
  double m_base = 0;
};

using Resistance = Quantity<struct ResistanceKind>;    ///< ohm
using Voltage = Quantity<struct VoltageKind>;          ///< V
using Current = Quantity<struct CurrentKind>;          ///< A
using Output = Quantity<struct OutputKind>;            ///< bridge output: signal over excitation, V/V
using Strain = Quantity<struct StrainKind>;            ///< m/m, of the active gauges; tension positive
using Duration = Quantity<struct DurationKind>;        ///< s
using Frequency = Quantity<struct FrequencyKind>;      ///< Hz
using Power = Quantity<struct PowerKind>;              ///< W
using Length = Quantity<struct LengthKind>;            ///< m
using Area = Quantity<struct AreaKind>;                ///< m^2
using Temperature = Quantity<struct TemperatureKind>;  ///< degree Celsius
using Warming = Quantity<struct WarmingKind>;          ///< difference of temperatures, K
/// What the instrument shows, in the channel's own unit (see core::Instrument).
using Reading = Quantity<struct ReadingKind>;

inline namespace literals {
constexpr Resistance operator""_ohm(long double v) { return Resistance(static_cast<double>(v)); }
constexpr Resistance operator""_kohm(long double v) { return Resistance(static_cast<double>(v * 1e3L)); }
constexpr Resistance operator""_Mohm(long double v) { return Resistance(static_cast<double>(v * 1e6L)); }
constexpr Current operator""_mA(long double v) { return Current(static_cast<double>(v * 1e-3L)); }
constexpr Voltage operator""_V(long double v) { return Voltage(static_cast<double>(v)); }
constexpr Output operator""_mV_per_V(long double v) { return Output(static_cast<double>(v * 1e-3L)); }
constexpr Strain operator""_ustrain(long double v) { return Strain(static_cast<double>(v * 1e-6L)); }
constexpr Duration operator""_s(long double v) { return Duration(static_cast<double>(v)); }
constexpr Frequency operator""_Hz(long double v) { return Frequency(static_cast<double>(v)); }
constexpr Power operator""_mW(long double v) { return Power(static_cast<double>(v * 1e-3L)); }
constexpr Length operator""_m(long double v) { return Length(static_cast<double>(v)); }
constexpr Area operator""_mm2(long double v) { return Area(static_cast<double>(v * 1e-6L)); }
constexpr Warming operator""_K(long double v) { return Warming(static_cast<double>(v)); }
constexpr Temperature operator""_degC(long double v) { return Temperature(static_cast<double>(v)); }
}  // namespace literals

}  // namespace core
