// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/report/report.h"

namespace core {

/// All words of a report, a line each.
class Words {
 public:
  explicit Words(const Report& report) {
    add(report.title);
    for (const Section& section : report.sections) {
      add(section.heading);
      for (const Block& block : section.blocks) std::visit([this](const auto& b) { words(b); }, block);
    }
  }
  operator const std::string&() const { return m_text; }

 private:
  void add(const std::string& text) { m_text += text + "\n"; }
  void words(const Paragraph& block) { add(block.text); }
  void words(const Caution& block) { add(block.text); }
  void words(const Picture& block) { add(block.caption); }
  void words(const Contents&) {}  // the headings stand elsewhere
  void words(const EntryList& block) {
    add(block.caption);
    for (const Entry& entry : block.entries) add(entry.name + ": " + entry.value);
  }
  void words(const Table& block) {
    std::string heads;
    for (const TableColumn& column : block.columns) heads += column.name + " | ";
    add(heads);
    for (const TableRow& row : block.rows) {
      EXPECT_EQ(row.cells.size(), block.columns.size()) << block.caption;
      std::string line;
      for (const std::string& cell : row.cells) line += cell + " | ";
      add(line);
    }
    add(block.note);
  }

  std::string m_text;
};

}  // namespace core
