// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QTextDocument;

namespace ui {

/// Starts a page where a heading or caption would be parted from what it heads, or a table or picture
/// of less than four fifths of a page would be cut. The document has its page size and paint device set.
void keepTogether(QTextDocument& text);

}  // namespace ui
