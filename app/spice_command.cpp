// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <memory>

#include "app/commands.h"
#include "app/files.h"
#include "app/output.h"
#include "core/plan/spice.h"

namespace app {
namespace {

struct SpiceOptions {
  std::string file;
  std::string channel;
  long long step = 0;
  bool json = false;
};

int spice(const SpiceOptions& options) {
  const auto document = openDocument(options.file);
  if (!document) return fail(document.error());
  const auto chosen = channelsNamed(*document, options.channel);
  if (!chosen) return fail(chosen.error());
  const core::Channel& channel = *document->channels[chosen->front()];
  const auto steps = static_cast<long long>(channel.setup.sequence.size());
  if (options.step < 1 || options.step > steps)
    return fail({"--step", "there is no step " + std::to_string(options.step),
                 steps == 0 ? "Channel " + channel.name + " has no steps"
                            : "Channel " + channel.name + " has steps 1 to " + std::to_string(steps)});
  const auto step = static_cast<std::size_t>(options.step) - 1;
  const std::string title = channel.name + ", step " + std::to_string(options.step);
  const auto netlist = core::spiceNetlist(channel.setup, step, title);
  if (!netlist) return fail(inFile(options.file, netlist.error()));
  if (!options.json) return print(*netlist, AllPass);
  return print(Json{{"channel", channel.name}, {"step", options.step}, {"netlist", *netlist}}, AllPass);
}

}  // namespace

void addSpice(CLI::App& cli, Run& chosen) {
  auto options = std::make_shared<SpiceOptions>();
  CLI::App* command = cli.add_subcommand("spice", "One step as a netlist that circuit simulators run");
  command->add_option("FILE", options->file, "A .bridgecal document")->type_name("")->required();
  command->add_option("--channel", options->channel, "Name of the channel")->required()->check(faultOfName);
  command->add_option("--step", options->step, "Number of the step, counted from 1")->required();
  command->add_flag("--json", options->json, "JSON with the netlist as one text");
  command->callback([options, &chosen] { chosen = [options] { return spice(*options); }; });
}

}  // namespace app
