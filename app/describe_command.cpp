// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QFile>
#include <cassert>
#include <memory>

#include "app/command_words.h"
#include "app/commands.h"
#include "app/completions.h"
#include "app/man_page.h"
#include "app/output.h"

namespace app {
namespace {

std::string manFrame() {
  QFile file(":/man/shuntwright.1");
  [[maybe_unused]] const bool open = file.open(QIODevice::ReadOnly);
  assert(open);
  return file.readAll().toStdString();
}

std::string description(const CLI::App& cli, const std::string& form) {
  const CommandWords program = commandWords(cli);
  if (form == "bash") return bashCompletion(program);
  if (form == "zsh") return zshCompletion(program);
  if (form == "fish") return fishCompletion(program);
  return manPage(manFrame(), program, SHUNTWRIGHT_VERSION);
}

}  // namespace

void addDescribe(CLI::App& cli, Run& chosen) {
  auto form = std::make_shared<std::string>();
  CLI::App* command = cli.add_subcommand("describe", "Completions for a shell, or the manual page");
  command->add_option("FORM", *form, "What for")
      ->type_name("")
      ->required()
      ->check(CLI::IsMember({"bash", "zsh", "fish", "man"}));
  command->footer(
      "All of them are made from the commands and options that this program understands. In bash they count "
      "at\n"
      "once with\n"
      "  eval \"$(shuntwright describe bash)\"\n"
      "and for good when the output is kept as ~/.local/share/bash-completion/completions/shuntwright.");
  // Made at once, while the tree of commands is there.
  command->callback(
      [form, &cli, &chosen] { chosen = [text = description(cli, *form)] { return print(text, AllPass); }; });
}

}  // namespace app
