// SPDX-License-Identifier: GPL-3.0-or-later
// monkey_ui_driver FOLDER VIEW EVENTS [SEED] [WIDTHxHEIGHT] [light|dark]
//
// Random events at one view of the program; FOLDER holds demo.bridgecal and whatever may be opened, dropped
// and overwritten, and is all that can be written to. Prints one line of JSON; 0 when every promise was kept.
// The same arguments do the same again, as far as timers and workers let them; FOLDER/.monkey.log names the
// events.
#include <chrono>
#include <nlohmann/json.hpp>
#include <thread>

#include "tests/reliability/monkey.h"
#include "tests/reliability/window_program.h"
#include "ui/preferences/preferences.h"

namespace {

using namespace reliability;

/// Ends the program when nothing has gone on for a minute and a half: a window that hangs is a fault.
void watchForHanging() {
  std::thread([] {
    for (int seen = -1, still = 0;;) {
      std::this_thread::sleep_for(std::chrono::seconds(1));
      const int now = Monkey::pulse();
      still = now == seen ? still + 1 : 0;
      seen = now;
      if (still == 90) std::fprintf(stderr, "hangs after %d events\n", now), std::abort();
    }
  }).detach();
}

struct Plan {
  QString folder;
  const MonkeyView* view = nullptr;
  int events = 0;
  std::uint64_t seed = 1;
  QSize size{1280, 800};
  bool dark = false;
};

Plan planFrom(int argc, char** argv) {
  Plan plan;
  const auto word = [&](int at) { return at < argc ? QString(argv[at]) : QString(); };
  plan.folder = QDir(word(1)).absolutePath();
  plan.view = monkeyView(word(2));
  plan.events = word(3).toInt();
  if (argc > 4) plan.seed = word(4).toULongLong();
  if (const QStringList size = word(5).split('x'); size.size() == 2)
    plan.size = {size[0].toInt(), size[1].toInt()};
  plan.dark = word(6) == "dark";
  return plan;
}

/// From a start of the program to its end; the monkey may close the window, then it starts anew.
void runOnce(const Plan& plan, Dice& dice, MonkeyTally& tally, std::FILE* log) {
  ui::Preferences wanted = ui::preferences();
  wanted.colours = plan.dark ? ui::Preferences::Colours::Dark : ui::Preferences::Colours::Light;
  ui::setPreferences(wanted);
  ui::Session session;
  ui::MainWindow window(session);
  window.resize(plan.size);
  window.show();
  window.openFile(plan.folder + "/demo.bridgecal");
  window.offerRecovery();
  if (plan.seed % 2 == 1) session.selectCheck({});  // else a closed check, which is not edited, comes first
  Monkey monkey(session, window, *plan.view, plan.size, dice, plan.folder, tally, log);
  monkey.run(plan.events);
  session.history().setClean();
}

}  // namespace

int main(int argc, char** argv) {
  Q_INIT_RESOURCE(resources);
  const Plan plan = planFrom(argc, argv);
  if (!plan.view || plan.events < 1) return std::fprintf(stderr, "see the head of the source\n"), 2;
  const auto application = windowProgram(argc, argv, plan.folder);
  watchForHanging();
  std::FILE* log = std::fopen(QFile::encodeName(plan.folder + "/.monkey.log").constData(), "w");
  Dice dice(plan.seed);
  MonkeyTally tally;
  int starts = 0;
  for (; tally.events < plan.events; ++starts) runOnce(plan, dice, tally, log);
  if (log) std::fclose(log);
  int complained = 0;
  for (const int count : complaints()) complained += count;
  nlohmann::ordered_json told{{"view", plan.view->name},  {"seed", plan.seed},
                              {"events", tally.events},   {"in_view", tally.inView},
                              {"starts", starts},         {"dialogs", tally.dialogs},
                              {"checks", tally.checks},   {"slowest_ms", tally.slowest_ms},
                              {"slowest", tally.slowest}, {"complaints", complained},
                              {"faults", tally.faults}};
  std::printf("%s\n", told.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace).c_str());
  return tally.faults.empty() ? 0 : 1;
}
