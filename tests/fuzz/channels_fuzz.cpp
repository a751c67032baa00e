// SPDX-License-Identifier: GPL-3.0-or-later
// Lists of channels. The first line of an input says what the columns are, the rest is the list.

#include "core/campaign/channel_list.h"
#include "tests/fuzz/target.h"

namespace {

using fuzz::must;

void mustBeSound(const core::ListTable& table) {
  must(table.rows.size() == table.lines.size(), "every row has its line");
  for (const auto& row : table.rows) {
    must(row.size() == table.header.size(), "rows are as long as the header");
    for (const std::string& cell : row) must(!core::firstInvalidUtf8(cell), "cells are UTF-8");
  }
}

/// Names and groups in their order; numbers are held by the table that is written.
bool isSame(const core::Document& a, const core::Document& b) {
  return std::equal(a.channels.begin(), a.channels.end(), b.channels.begin(), b.channels.end(),
                    [](const auto& one, const auto& other) {
                      return one->name == other->name && one->group == other->group;
                    });
}

void mustComeBack(const core::Document& document) {
  const auto table = core::readListTable(core::channelListCsv(document));
  must(static_cast<bool>(table), "a list that was written can be read");
  const auto again = core::withChannelList({}, *table, core::guessedFields(*table), {});
  must(static_cast<bool>(again), "its columns are known");
  if (again->refused.empty()) must(isSame(again->document, document), "the channels come back");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::string_view bytes = fuzz::textOf(data, size);
  const std::string_view words = fuzz::firstLineOff(bytes);
  const auto table = core::readListTable(bytes);
  if (!table) {
    fuzz::mustBeTold(table.error());
    return 0;
  }
  mustBeSound(*table);
  const auto fields = core::fieldsFromText(*table, words);
  if (!fields) fuzz::mustBeTold(fields.error(), words);
  const auto import =
      core::withChannelList({}, *table, fields ? *fields : core::guessedFields(*table), core::Channel{});
  if (!import) {
    fuzz::mustBeTold(import.error());
    return 0;
  }
  must(import->added + import->refused.size() == table->rows.size(), "every row is added or refused");
  must(import->document.channels.size() == import->added, "what is added is there");
  for (const core::Error& error : import->refused) fuzz::mustBeTold(error);
  // Writing and reading again take half of the time: one in four comes back.
  if (fuzz::isOneIn(4, fuzz::textOf(data, size))) mustComeBack(import->document);
  return 0;
}
