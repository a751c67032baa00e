// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/limits.h"

#include <algorithm>
#include <array>

namespace core {
namespace {

struct Row {
  MeritKind kind;
  std::string_view key, name;
};

constexpr std::array<Row, meritKindCount> rows{{
    {MeritKind::Nonlinearity, "nonlinearity", "nonlinearity"},
    {MeritKind::Hysteresis, "hysteresis", "hysteresis"},
    {MeritKind::Repeatability, "repeatability", "repeatability"},
    {MeritKind::ZeroReturn, "zero_return", "zero return"},
    {MeritKind::ZeroShift, "zero_shift", "zero shift"},
    {MeritKind::Symmetry, "symmetry", "plus/minus asymmetry"},
    {MeritKind::CombinedError, "combined_error", "combined error"},
    {MeritKind::SpanRatio, "span_ratio", "span error"},
}};

const Row& rowOf(MeritKind kind) { return rows[static_cast<std::size_t>(kind)]; }

}  // namespace

std::string_view meritKindKey(MeritKind kind) { return rowOf(kind).key; }

std::optional<MeritKind> meritKindFromKey(std::string_view key) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.key == key; });
  return found == rows.end() ? std::nullopt : std::optional(found->kind);
}

std::string_view meritKindName(MeritKind kind) { return rowOf(kind).name; }

}  // namespace core
