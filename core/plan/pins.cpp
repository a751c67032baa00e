// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/pins.h"

namespace core {

std::string pinText(const PinName& name) {
  return name.connector.empty() ? name.pin : name.connector + "-" + name.pin;
}

}  // namespace core
