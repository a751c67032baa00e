// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diagnose/fault.h"

#include <array>

namespace core {
namespace {

struct Row {
  CauseKind kind;
  std::string_view key;
  bool hasFreeSize;
};

constexpr std::array<Row, causeKindCount> rows{{
    {CauseKind::Scale, "scale", true},
    {CauseKind::BridgeFactor, "bridge_factor", false},
    {CauseKind::Units, "units", false},
    {CauseKind::Leads, "leads", true},
    {CauseKind::LeadContact, "lead_contact", true},
    {CauseKind::ShuntPlace, "shunt_place", false},
    {CauseKind::ShuntArm, "shunt_arm", false},
    {CauseKind::ShuntValue, "shunt_value", true},
    {CauseKind::ShuntsExchanged, "shunts_exchanged", false},
    {CauseKind::ShuntOpen, "shunt_open", false},
    {CauseKind::CompletionValue, "completion_value", true},
    {CauseKind::ArmValue, "arm_value", true},
    {CauseKind::Leak, "leak", true},
    {CauseKind::NoResponse, "no_response", false},
    {CauseKind::PolarityReversed, "polarity_reversed", false},
    {CauseKind::StepsExchanged, "steps_exchanged", false},
    {CauseKind::SidesExchanged, "sides_exchanged", false},
    {CauseKind::OpenSense, "open_sense", false},
    {CauseKind::ZeroShift, "zero_shift", true},
    {CauseKind::Drift, "drift", true},
    {CauseKind::Clipping, "clipping", true},
    {CauseKind::StrayReading, "stray_reading", true},
}};

const Row& rowOf(CauseKind kind) { return rows[static_cast<std::size_t>(kind)]; }

}  // namespace

std::string_view causeKindKey(CauseKind kind) { return rowOf(kind).key; }

bool hasFreeSize(CauseKind kind) { return rowOf(kind).hasFreeSize; }

}  // namespace core
