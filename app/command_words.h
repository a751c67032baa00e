// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace app {

/// What the command line understands, as plain values: completions and the manual page are made from it.
struct OptionWords {
  std::vector<std::string> names;    ///< "-o", "--out"; the one name of what is given by its position
  std::string value;                 ///< "FILE", "N|auto"; empty for a flag
  std::vector<std::string> choices;  ///< the only values there are; empty: any
  std::string range;                 ///< "1 - 50"; empty: none stated
  std::string description;
  std::vector<std::string> needs, excludes;  ///< names of other options
  bool positional = false;
  bool required = false;
  bool repeated = false;  ///< several values may follow
  bool again = false;     ///< may be given more than once

  bool takesValue() const { return positional || !value.empty(); }
  /// Whether the value is the name of a file or folder.
  bool takesPath() const;
  /// Whether the value is a document of this program.
  bool takesDocument() const;
};

struct CommandWords {
  std::string name;  ///< of the program in the root
  std::string description;
  std::string
      remarks;  ///< what stands below the options; lines that begin with blanks are meant as they stand
  std::vector<OptionWords> options;  ///< with positional ones, in the order of the help
  std::vector<CommandWords> commands;
};

CommandWords commandWords(const CLI::App& cli);

/// The first thing that `description` says, on one line, for lists where a line is all there is.
std::string firstWords(const std::string& description);

}  // namespace app
