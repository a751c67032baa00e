// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace reliability {

/// A place of the program where the monkey is put, and put back when it has left.
struct MonkeyView {
  const char* name;
  const char* command;  ///< objectName of the action that opens it
  const char* part;     ///< objectName of the widget that most events go to
  bool isDialog = false;
};

/// Everything that a user can have before him. Lesser dialogs come as they are opened from these.
inline const std::vector<MonkeyView>& monkeyViews() {
  static const std::vector<MonkeyView> views{
      {"all", "viewAll", "mainWindow"},
      {"bridge", "viewBridge", "bridgePane"},
      {"polarity", "bridgePolarity", "bridgePane"},
      {"whatif", "bridgeWhatIf", "bridgePane"},
      {"sequence", "viewSequence", "sequencePane"},
      {"budget", "viewBudget", "sequencePane"},
      {"review", "prepareReview", "sequencePane"},
      {"outcome", "viewOutcome", "outcomeView"},
      {"diagnosis", "outcomeDiagnosis", "outcomeView"},
      {"working", "outcomeWorking", "outcomeView"},
      {"change", "outcomeChange", "outcomeView"},
      {"strip", "viewRecording", "stripView"},
      {"stock", "prepareStock", "stockPage"},
      {"wiring", "prepareWiring", "wiringPage"},
      {"ohmmeter", "prepareOhmmeter", "ohmmeterPage"},
      {"run", "prepareRun", "guidedRun"},
      {"watch", "checkWatch", "watchPage"},
      {"practice", "teachPractice", "practicePage"},
      {"overview", "channelOverview", "overviewPage"},
      {"record", "recordPage", "recordPage"},
      {"preferences", "preferences", "preferences"},
      {"manual", "manual", "manualWindow"},
      {"presentation", "teachPresent", "presentation"},
      {"report", "report", "reportDialog", true},
      {"recording", "checkRecording", "recordingDialog", true},
      {"resistors", "prepareResistors", "searchDialog", true},
      {"pattern", "sequenceLayOut", "patternDialog", true},
      {"apply", "prepareApply", "applyDialog", true},
      {"copies", "channelCopies", "copiesDialog", true},
      {"import", "channelImport", "importDialog", true},
      {"many", "channelEditMany", "editManyDialog", true},
      {"twins", "viewTwins", "twinDialog", true},
      {"commands", "commands", "commandList", true},
  };
  return views;
}

inline const MonkeyView* monkeyView(const QString& name) {
  for (const MonkeyView& view : monkeyViews())
    if (name == view.name) return &view;
  return nullptr;
}

}  // namespace reliability
