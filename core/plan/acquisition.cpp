// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/acquisition.h"

#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<FilterKind, filterKindCount> filterKinds{
    {"none", "butterworth", "bessel", "moving_average"}};

}  // namespace

std::string_view filterKindKey(FilterKind kind) { return filterKinds.of(kind); }
std::optional<FilterKind> filterKindFromKey(std::string_view key) { return filterKinds.find(key); }

}  // namespace core
