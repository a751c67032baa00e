// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace CLI {
class App;
}

namespace app {

/// What the command line chose: runs it and gives the exit status. Empty: no command, the window.
using Run = std::function<int()>;

// Each adds one command with its options to `cli`, which sets `chosen` when the command is given.
void addPredict(CLI::App& cli, Run& chosen);
void addPolarity(CLI::App& cli, Run& chosen);
void addLevels(CLI::App& cli, Run& chosen);
void addLine(CLI::App& cli, Run& chosen);
void addCheck(CLI::App& cli, Run& chosen);
void addDiagnose(CLI::App& cli, Run& chosen);
void addCompare(CLI::App& cli, Run& chosen);
void addBatch(CLI::App& cli, Run& chosen);
void addChannels(CLI::App& cli, Run& chosen);
void addReport(CLI::App& cli, Run& chosen);
void addVerify(CLI::App& cli, Run& chosen);
void addReview(CLI::App& cli, Run& chosen);
void addResistors(CLI::App& cli, Run& chosen);
void addWiring(CLI::App& cli, Run& chosen);
void addWorking(CLI::App& cli, Run& chosen);
void addWhatIf(CLI::App& cli, Run& chosen);
void addPractice(CLI::App& cli, Run& chosen);
void addSpice(CLI::App& cli, Run& chosen);
void addDemo(CLI::App& cli, Run& chosen);
void addDescribe(CLI::App& cli, Run& chosen);

}  // namespace app
