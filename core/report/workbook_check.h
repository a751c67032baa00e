// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace core {

/// Whether every part of a workbook is there to its end. libxlsxwriter puts each part together in a temporary
/// file of its own and does not look whether that could be written: on a full disk the workbook closes
/// without an error and lacks the ends of its parts. Looks at each part of the ZIP file (APPNOTE.TXT of
/// PKWARE, 4.3): it must inflate to the size and CRC that are stated, begin with an element and end by
/// closing that one.
bool isWholeWorkbook(std::string_view bytes);

}  // namespace core
