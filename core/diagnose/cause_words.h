// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/diagnose/refit.h"

namespace core {

/// "118 ± 9", "0.850 ± 0.012": the value to the digits that its standard uncertainty warrants, one of the
/// uncertainty, or two when it begins with 1 or 2 (DIN 1333, from memory). Never more than six digits of the
/// value; without an uncertainty, and with one too small for those, four. `signedValue`: "+0.55".
std::string withStandard(double value, const std::optional<double>& standard, bool signedValue = false);
/// A resistance with its unit: "165.9 ± 0.1 kΩ".
std::string ohmWithStandard(double ohm, const std::optional<double>& standard);
/// "+0.55 ± 0.06 %" of a share of 0.0055.
std::string percentWithStandard(double share, const std::optional<double>& standard, bool signedValue = true);

/// The value alone, to the digits that its uncertainty warrants.
std::string warranted(double value, const std::optional<double>& standard, bool signedValue = false);

/// "gauge 1" where arm 1 is strained, else "dummy gauge in arm 2" or "completion resistor of arm 3"; `arm`
/// counted from 0.
std::string armWords(const Bridge& bridge, std::size_t arm);
/// "step 3 (R1 up)", "steps 3 and 4": counted from 1.
std::string stepWords(const Setup& setup, std::size_t step);
/// "Strain", or "Load" of a transducer.
std::string measurandWord(const Bridge& bridge);

/// "Leads longer than entered", "Leak over gauge 1".
std::string causeTitle(const Setup& setup, const Fault& fault);
/// "each lead 0.85 ± 0.05 Ω more than entered"; empty for a kind without a size. `lasted_s`: over which time
/// the check ran, what a drift comes to in it; as planned where it is not said.
std::string sizeWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard,
                      const std::optional<double>& lasted_s = {});
/// Which setting would explain a wrong scale, bridge factor or unit: "gauge factor 2.00 set where 2.07
/// belongs"; empty for other kinds.
std::string settingWords(const Setup& setup, const Fault& fault, const std::optional<double>& standard);
/// One measurement, to be made with the safe state that it begins with, and what it should show; `lasted_s`
/// as above.
std::string confirmWords(const Setup& setup, const Fault& fault, const std::optional<double>& lasted_s = {});

}  // namespace core
