// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/limits.h"

#include <algorithm>
#include <array>

#include "core/units/language.h"

namespace core {
namespace {

struct Row {
  MeritKind kind;
  std::string_view key, name;
};

constexpr std::array<Row, meritKindCount> rows{{
    {MeritKind::Nonlinearity, "nonlinearity", sayLater("nonlinearity")},
    {MeritKind::Hysteresis, "hysteresis", sayLater("hysteresis")},
    {MeritKind::Repeatability, "repeatability", sayLater("repeatability")},
    {MeritKind::ZeroReturn, "zero_return", sayLater("zero return")},
    {MeritKind::ZeroShift, "zero_shift", sayLater("zero shift")},
    {MeritKind::Symmetry, "symmetry", sayLater("plus/minus asymmetry")},
    {MeritKind::CombinedError, "combined_error", sayLater("combined error")},
    {MeritKind::SpanRatio, "span_ratio", sayLater("span error")},
}};

const Row& rowOf(MeritKind kind) { return rows[static_cast<std::size_t>(kind)]; }

}  // namespace

std::string_view meritKindKey(MeritKind kind) { return rowOf(kind).key; }

std::optional<MeritKind> meritKindFromKey(std::string_view key) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.key == key; });
  return found == rows.end() ? std::nullopt : std::optional(found->kind);
}

std::string_view meritKindName(MeritKind kind) { return sayName(rowOf(kind).name); }

}  // namespace core
