// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/effects.h"

#include "core/units/key_names.h"

namespace core {
namespace {

constexpr KeyNames<Grounding, groundingCount> groundings{{"floating", "P-", "P+"}};
constexpr KeyNames<BalanceKind, balanceKindCount> balanceKinds{{"none", "parallel", "series"}};
constexpr KeyNames<Linearisation, linearisationCount> linearisations{{"none", "before_zero", "after_zero"}};

}  // namespace

std::string_view groundingKey(Grounding grounding) { return groundings.of(grounding); }
std::optional<Grounding> groundingFromKey(std::string_view key) { return groundings.find(key); }
std::string_view balanceKindKey(BalanceKind kind) { return balanceKinds.of(kind); }
std::optional<BalanceKind> balanceKindFromKey(std::string_view key) { return balanceKinds.find(key); }
std::string_view linearisationKey(Linearisation linearisation) { return linearisations.of(linearisation); }
std::optional<Linearisation> linearisationFromKey(std::string_view key) { return linearisations.find(key); }

}  // namespace core
