// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/document/document.h"
#include "core/units/result.h"

namespace core {

/// The document as file text (.bridgecal): UTF-8, keys in a fixed order, one shunt, step and reading
/// a line, so that a diff shows what was changed. Numbers are in base units and are the shortest
/// decimals that read back as the same doubles.
///
/// Leads that the template does not use are left out when they are zero.
/// Fails, naming the place ("channels[2].setup.bridge.gauge.factor"), on a number that is not finite,
/// on text that is not UTF-8, and on anything that readDocument would refuse: what was saved opens.
Result<std::string> writeDocument(const Document& document);

}  // namespace core
