// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <variant>
#include <vector>

#include "core/evaluate/evaluation.h"
#include "core/report/report_template.h"
#include "core/units/date.h"
#include "core/units/language.h"
#include "core/units/progress.h"

// What a report says, without any layout. All texts are plain text with foreign names in them;
// whoever lays them out escapes them. Numbers have a decimal point, unless the reader's way of writing was
// asked for.

namespace core {

struct Paragraph {
  std::string text;
  std::optional<Verdict> verdict;  ///< for emphasis only; the text says it in words
};

/// Something the reader must not overlook.
struct Caution {
  std::string text;
};

struct Entry {
  std::string name;
  std::string value;
  bool fine = false;  ///< may be set small: to be compared by a program, not read
};

struct EntryList {
  std::string caption;  ///< may be empty
  std::vector<Entry> entries;
};

struct TableRow {
  std::vector<std::string> cells;  ///< one a column
  std::optional<Verdict> verdict;  ///< for emphasis only; a cell says it in words
};

struct TableColumn {
  std::string name;       ///< with unit: "Expected, µm/m"
  bool numeric = false;   ///< to be set right-aligned
  int width_percent = 0;  ///< of the table's width; 0: as its text needs
};

struct Table {
  std::string caption;
  std::vector<TableColumn> columns;
  std::vector<TableRow> rows;
  bool handwriting = false;  ///< empty cells are to be filled in by hand
  bool fine = false;         ///< may be set small: what figures elsewhere rest on
  std::string note = {};     ///< to stand below it: what its numbers mean; may be empty
};

/// A place for a picture that whoever lays out the report may draw.
struct Picture {
  enum class Kind : std::uint8_t { Bridge, Outcome, Wiring };
  Kind kind = Kind::Bridge;
  std::size_t channel = 0;  ///< index in the document
  std::size_t check = 0;    ///< index in the channel; of an outcome only
  std::string caption;      ///< what it shows, in words that stand in for it
  std::size_t shunt = 0;    ///< index in the channel; of wiring only: pins with the jumpers of that shunt
};

/// The place of the list of sections. Whoever lays out adds the pages where there are such.
struct Contents {
  std::vector<std::size_t> sections;  ///< indices in Report::sections, rising: their headings and levels
};

using Block = std::variant<Paragraph, Caution, EntryList, Table, Picture, Contents>;

struct Section {
  std::string heading;
  int level = 1;  ///< 1 a chapter, 2 within it
  std::vector<Block> blocks;
};

struct Report {
  std::string title;
  std::vector<Section> sections;
  std::string language = "en";   ///< of its sentences, ISO 639
  std::string fingerprint = {};  ///< of the document, 64 hexadecimal digits; empty: of none, or not known
  std::shared_ptr<const Language> words = english();  ///< for what a layout adds: "Caution."
};

/// What is wanted of a report.
struct ReportOrder {
  ReportTemplate content = readyTemplates().front();
  std::vector<std::size_t> channels = {};  ///< indices in the document, where the template says Chosen
  std::optional<Date> printed = {};        ///< on which day; none: not said
  std::string program = {};                ///< that makes it, with its version; empty: not said
  /// In which `content.language` is written; null: English, whatever the template says. Its decimal mark and
  /// its days are used with `content.localNumbers` only.
  std::shared_ptr<const Language> language = {};
};

/// `document` in words, those parts of it that the template asks for: cover, cautions, channels and checks
/// worst first, each channel with what was planned, read, judged, suspected and compared, where resistors and
/// instrument come from, remarks, history, sign-off. With the day that it is printed on, plans say what is
/// overdue then; checks say it of their own day. What is left out is said in the first section, and what
/// cannot be told where it belongs.
///
/// Evaluates and diagnoses (see core::callsForDiagnosis; some ten milliseconds a check) on all threads, in
/// the language of the order; `progress` is told on this one. After `stop` parts are missing: the report is
/// of no use.
Report reportOf(const Document& document, const ReportOrder& order = {}, const Progress& progress = {},
                const std::stop_token& stop = {});
/// The full record in English.
Report reportOf(const Document& document, std::optional<Date> printed, const Progress& progress = {},
                const std::stop_token& stop = {});

/// What is in every report and in the window beside a verdict: what it does and does not cover.
std::string chainScopeStatement();
/// That assumed uncertainties are usual tolerances; in every report that holds one.
std::string assumedUncertaintyStatement();
/// What the reader has to know before acting on a report or wiring a shunt.
std::vector<std::string> cautions();

}  // namespace core
