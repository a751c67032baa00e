// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/whatif/alteration.h"

namespace core {

std::string_view alterationKindKey(AlterationKind) { return {}; }
std::vector<Alteration> possibleAlterations(const Setup&) { return {}; }
std::string alterationText(const Setup&, const Alteration&) { return {}; }
Result<Setup> altered(Setup setup, std::span<const Alteration>) { return setup; }

}  // namespace core
