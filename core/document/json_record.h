// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/assess/check.h"
#include "core/document/json_emitter.h"
#include "core/document/json_fields.h"
#include "core/document/sign_off.h"
#include "core/plan/setup.h"

// What a record has beside plan and readings. Each member is left out when there is nothing in it.

namespace core {

void writeIdentity(JsonEmitter& out, std::string_view key, const Identity& identity);
Identity readIdentity(const JsonPlace& at);

void writeAmbient(JsonEmitter& out, std::string_view key, const Ambient& ambient);
Ambient readAmbient(const JsonPlace& at);

/// The step that a remark is pinned to is counted from 1; one that the plan has lost is kept.
void writeRemarks(JsonEmitter& out, std::string_view key, const std::vector<Remark>& remarks);
std::vector<Remark> readRemarks(const JsonPlace& at);

void writeSignOff(JsonEmitter& out, std::string_view key, const SignOff& signOff);
SignOff readSignOff(const JsonPlace& at);

void writeHistory(JsonEmitter& out, std::string_view key, const std::vector<Revision>& history);
std::vector<Revision> readHistory(const JsonPlace& at);

/// A SHA-256 sum as text.
std::string readFingerprint(const JsonPlace& at);

}  // namespace core
