// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/document/document.h"

// Edits of pins and jumpers. Indices count from 0 and must exist; `index` of an insertion may be the end.

namespace core {

Channel withPinInserted(Channel channel, std::size_t index, Pin pin);
/// New names and uses of the pins, one for one, and more pins after them. Jumpers follow new names, all at
/// once, so that two pins may swap theirs; but not from a name that two pins had.
Channel withPins(Channel channel, std::vector<Pin> pins);
/// The pin gone, with the jumpers to it unless another pin has its name.
Channel withPinRemoved(Channel channel, std::size_t index);
/// The pin somewhere else in the order that pins lie in.
Channel withPinMoved(Channel channel, std::size_t from, std::size_t to);
/// Other pins altogether. Jumpers stay, and may lead to pins that are gone.
Channel withWiring(Channel channel, Wiring wiring);
Channel withJumpers(Channel channel, std::size_t shunt, std::vector<Jumper> jumpers);

}  // namespace core
