// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/help/help_places.h"

#include <QHash>
#include <QTabBar>
#include <QTabWidget>
#include <QVariant>
#include <QWidget>

namespace ui {
namespace {

constexpr auto placeOfAll = "start.md#window";

QString addressUnder(const QString& name) {
  static const QHash<QString, QString> table = [] {
    QHash<QString, QString> made;
    for (const HelpPlace& place : helpPlaces()) made.insert(place.name, place.address);
    return made;
  }();
  return table.value(name);
}

/// What is said of the widget itself; empty: nothing.
QString ownAddress(const QWidget* widget) {
  if (const QString own = widget->property(helpPageProperty).toString(); !own.isEmpty()) return own;
  if (const QString own = addressUnder(widget->objectName()); !own.isEmpty()) return own;
  return addressUnder(widget->metaObject()->className());
}

/// Of the page that is on view in `tabs`, or of the first known part in it.
QString addressWithin(const QTabWidget* tabs) {
  const QWidget* page = tabs->currentWidget();
  if (!page) return {};
  if (const QString own = ownAddress(page); !own.isEmpty()) return own;
  for (const QWidget* part : page->findChildren<QWidget*>())
    if (const QString own = ownAddress(part); !own.isEmpty()) return own;
  return {};
}

}  // namespace

QString helpPlaceOf(const QWidget* widget) {
  for (const QWidget* at = widget; at; at = at->parentWidget()) {
    if (const auto* tabs = qobject_cast<const QTabWidget*>(at))
      if (const QString within = addressWithin(tabs); !within.isEmpty()) return within;
    if (const QString own = ownAddress(at); !own.isEmpty()) return own;
  }
  return placeOfAll;
}

const std::vector<HelpPlace>& helpPlaces() {
  static const std::vector<HelpPlace> places{
      // The left column.
      {"channelColumn", "setup.md#channels"},
      {"addChannel", "setup.md#channels"},
      {"duplicateChannel", "setup.md#channels"},
      {"removeChannel", "setup.md#channels"},
      {"setupForm", "setup.md"},
      {"channelGroup", "setup.md#channel"},
      {"bridgeGroup", "setup.md#bridge"},
      {"armsGroup", "setup.md#arms"},
      {"leadsGroup", "setup.md#leads"},
      {"leaksGroup", "setup.md#leaks"},
      {"instrumentGroup", "setup.md#instrument"},
      {"acquisitionGroup", "setup.md#acquisition"},
      {"heatingGroup", "setup.md#heating"},
      {"limitsGroup", "setup.md#limits"},
      {"meritsGroup", "setup.md#merits"},
      {"ui::WireDialog", "setup.md#leads"},
      // The views.
      {"bridgePane", "bridge.md"},
      {"bridgeView", "bridge.md"},
      {"partEditor", "bridge.md#edit"},
      {"polarityPanel", "polarity.md"},
      {"polarityReversals", "polarity.md#reversals"},
      {"whatIfPanel", "what-if.md"},
      {"sequenceTable", "sequence.md#steps"},
      {"shuntTable", "sequence.md#shunts"},
      {"uncertaintyTable", "uncertainties.md"},
      {"budgetView", "budget.md"},
      {"trialPanel", "budget.md#trials"},
      {"reviewPage", "review.md"},
      {"sequencePane", "sequence.md"},
      {"ui::CheckBar", "check.md"},
      {"checkBox", "check.md"},
      {"comparedBox", "check.md"},
      {"outcomeView", "outcome.md"},
      {"outcomeTable", "outcome.md#table"},
      {"outcomeBars", "outcome.md#charts"},
      {"outcomeMeasured", "outcome.md#charts"},
      {"outcomeMeasuredAfter", "outcome.md#charts"},
      {"outcomeFiguresPage", "figures.md"},
      {"diagnosisPanel", "diagnosis.md"},
      {"causeDetails", "diagnosis.md#cause"},
      {"workingPanel", "working.md"},
      {"changePanel", "change.md"},
      {"changeCause", "change.md#cause"},
      {"changeTrend", "change.md#trend"},
      {"stripView", "recording-strip.md"},
      {"stripKeySheet", "recording-strip.md#keys"},
      {"presentation", "presentation.md"},
      // The pages.
      {"wiringPage", "wiring.md"},
      {"ohmmeterPage", "ohmmeter.md"},
      {"stockPage", "stock.md"},
      {"resistorTable", "stock.md#resistors"},
      {"boxTable", "stock.md#boxes"},
      {"seriesTable", "stock.md#series"},
      {"importQuestion", "stock.md#parts"},
      {"guidedRun", "guided-run.md"},
      {"ui::RunStartPage", "guided-run.md#start"},
      {"ui::RunCautionPage", "guided-run.md#cautions"},
      {"ui::RunStepPage", "guided-run.md#steps"},
      {"ui::RunStopPage", "guided-run.md#stop"},
      {"ui::RunSummaryPage", "guided-run.md#summary"},
      {"watchPage", "watch.md"},
      {"practicePage", "practice.md"},
      {"overviewPage", "overview.md"},
      {"recordPage", "record.md"},
      {"recordRemarks", "record.md#remarks"},
      {"recordHistory", "record.md#history"},
      {"recordDetails", "record.md#history"},
      {"actDialog", "record.md#review"},
      {"findBar", "tables.md#find"},
      {"filterBar", "tables.md#filter"},
      {"preferences", "preferences.md"},
      {"resetBox", "preferences.md"},
      // Dialogs.
      {"patternDialog", "pattern.md"},
      {"searchDialog", "choose-resistors.md"},
      {"applyDialog", "apply.md"},
      {"recordingDialog", "recording-import.md"},
      {"layoutPane", "recording-import.md#layout"},
      {"foundPane", "recording-import.md#found"},
      {"copiesDialog", "overview.md#copies"},
      {"importDialog", "overview.md#import"},
      {"editManyDialog", "overview.md#many"},
      {"reportDialog", "report.md"},
      {"commandList", "commands.md"},
      {"twinDialog", "bridge.md#twins"},
      {"differencesDialog", "files.md#changed"},
      {"lockBox", "files.md#lock"},
      {"saveOverBox", "files.md#changed"},
      {"discardWorkBox", "files.md#recovery"},
      {"recoveryBar", "files.md#recovery"},
      {"diskBar", "files.md#changed"},
      {"discardBox", "files.md#open"},
      {"cautionsBox", "cautions.md"},
      {"QFileDialog", "files.md#open"},
      {"QPrintDialog", "report.md#write"},
  };
  return places;
}

}  // namespace ui
