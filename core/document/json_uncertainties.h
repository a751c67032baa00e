// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <unordered_map>

#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"
#include "core/plan/setup.h"

// What is stated about uncertainties, as two members of a set-up: "uncertainties", a line a statement, and
// "correlation_groups".
//
// A statement names its input by kind ("of") and, where there are several of a kind, by place ("at"): the
// number of an arm from "1", the name of a lead, the name of a shunt, or "zero" and "step" for the reading
// that is rounded. So a diff and a reader need no indices.

namespace core {

/// Where each shunt of a set-up stands in its list, by name.
using ShuntIndices = std::unordered_map<std::string_view, std::size_t>;

/// The indices of all statements must exist.
void writeUncertainties(JsonEmitter& out, const Setup& setup);

/// Refuses a place that there is not, two statements about one input, and two groups of one name. Numbers
/// are taken as they are: that an uncertainty is negative is said where it is used.
Uncertainties readUncertainties(const JsonFields& setup, const ShuntIndices& shunts);

}  // namespace core
