// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/circuit/hookup_words.h"
#include "core/plan/overdue.h"
#include "core/units/notation.h"

namespace app {
namespace {

/// Columns that UTF-8 text takes up; the few wide characters of other scripts count as one.
std::size_t width(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string padded(const std::string& text, std::size_t columns, bool right) {
  const std::string gap(columns - std::min(columns, width(text)), ' ');
  return right ? gap + text : text + gap;
}

/// Whether U+0080 to U+009F begins at `k`: to some terminals the same as Escape with a letter.
bool isUpperControl(const std::string& text, std::size_t k) {
  return text[k] == '\xC2' && k + 1 < text.size() && static_cast<unsigned char>(text[k + 1]) < 0xA0;
}

/// A column's title in two lines: from " (" on it stands in the lower one, and so does a title without.
struct Title {
  std::string upper, lower;
};

Title titleOf(const std::string& name) {
  const std::size_t bracket = name.rfind(" (");
  if (bracket == std::string::npos) return {"", name};
  return {name.substr(0, bracket), name.substr(bracket + 1)};
}

int written(const std::string& text, Exit exit) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
  if (whole && std::fflush(stdout) == 0) return exit;
  return fail({"standard output", "the result could not be written", "Look whether the disk is full"});
}

}  // namespace

std::string harmless(std::string text, bool keepLines) {
  for (std::size_t k = 0; k < text.size(); ++k) {
    const auto byte = static_cast<unsigned char>(text[k]);
    if ((byte < 0x20 && !(keepLines && text[k] == '\n')) || byte == 0x7F) text[k] = '?';
    if (isUpperControl(text, k)) text.replace(k, 2, "?");
  }
  return text;
}

std::string harmlessJson(const std::string& json) {
  std::string text;
  for (std::size_t k = 0; k < json.size(); ++k) {
    if (json[k] == '\x7F') {
      text += "\\u007f";
    } else if (isUpperControl(json, k)) {
      const auto code = static_cast<unsigned char>(json[++k]);
      text += code < 0x90 ? "\\u008" : "\\u009";
      text += "0123456789abcdef"[code & 15];
    } else {
      text += json[k];
    }
  }
  return text;
}

Json jsonNumber(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }
Json jsonNumber(std::optional<double> value) { return value ? jsonNumber(*value) : Json(nullptr); }

std::string shown(std::optional<double> value) { return value ? core::formatNumber(*value, 6) : "–"; }

std::string textOf(const core::Table& table) {
  std::vector<std::size_t> widths;
  std::vector<Title> titles;
  for (std::size_t k = 0; k < table.columns.size(); ++k) {
    titles.push_back(titleOf(table.columns[k].name));
    widths.push_back(std::max(width(titles[k].upper), width(titles[k].lower)));
    for (const core::TableRow& row : table.rows) widths[k] = std::max(widths[k], width(row.cells[k]));
  }
  std::string text;
  const auto addLine = [&](const auto& cellOf) {
    std::string line;
    for (std::size_t k = 0; k < table.columns.size(); ++k)
      line += (k == 0 ? "" : "  ") + padded(cellOf(k), widths[k], table.columns[k].numeric);
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  };
  if (std::any_of(titles.begin(), titles.end(), [](const Title& title) { return !title.upper.empty(); }))
    addLine([&](std::size_t k) { return titles[k].upper; });
  addLine([&](std::size_t k) { return titles[k].lower; });
  for (const core::TableRow& row : table.rows) addLine([&](std::size_t k) { return row.cells[k]; });
  return table.note.empty() ? text : text + table.note + "\n";
}

std::string textOf(const std::vector<core::Entry>& entries) {
  std::size_t widest = 0;
  for (const core::Entry& entry : entries) widest = std::max(widest, width(entry.name));
  std::string text;
  for (const core::Entry& entry : entries)
    text += padded(entry.name, widest, false) + "  " + entry.value + "\n";
  return text;
}

int print(const std::string& text, Exit exit) { return written(harmless(text, true), exit); }

int print(const Json& json, Exit exit) {
  return written(harmlessJson(json.dump(2, ' ', false, Json::error_handler_t::replace)) + "\n", exit);
}

void note(const std::string& text) {
  const std::string line = "shuntwright: " + harmless(text, false) + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
}

void noteOverdue(const std::string& channel, const core::Setup& setup, core::Date day) {
  const std::string sentence = core::overdueSentence(setup, day);
  if (!sentence.empty()) note(channel + ": " + sentence);
}

int fail(const core::Error& error) {
  note(error.text());
  return BadInput;
}

std::string connectionLine(const core::Bridge& bridge) {
  std::string text;
  for (const std::string& sentence : core::hookupSentences(bridge)) text += " " + sentence;
  return text.empty() ? text : "Connection:" + text + "\n";
}

}  // namespace app
