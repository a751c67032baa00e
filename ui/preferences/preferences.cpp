// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/preferences/preferences.h"

#include <algorithm>
#include <utility>

#include "ui/preferences/desktop_wishes.h"
#include "ui/state_file.h"

namespace ui {
namespace {

using ColourChoice = Preferences::Colours;

constexpr std::pair<ColourChoice, const char*> colourWords[] = {
    {ColourChoice::System, "system"}, {ColourChoice::Light, "light"}, {ColourChoice::Dark, "dark"}};

ColourChoice colourChoiceFrom(const QString& word) {
  for (const auto& [choice, written] : colourWords)
    if (word == QLatin1String(written)) return choice;
  return ColourChoice::System;
}

QString wordOf(ColourChoice wanted) {
  for (const auto& [choice, written] : colourWords)
    if (choice == wanted) return QLatin1String(written);
  return {};
}

template <typename Value>
void remember(QSettings& state, const char* key, const Value& value, const Value& usual) {
  if (value == usual)
    state.remove(key);
  else
    state.setValue(key, value);
}

}  // namespace

Preferences usualPreferences() {
  Preferences usual;
  usual.lessMotion = DesktopWishes::instance().lessMotion();
  return usual;
}

Preferences preferences() {
  const QSettings state = stateFile();
  Preferences p = usualPreferences();
  const auto yes = [&](const char* key, bool usual) { return state.value(key, usual).toBool(); };
  p.language = state.value("language").toString();
  p.colours = colourChoiceFrom(state.value("colours").toString());
  const int percent = state.value("textPercent", p.textPercent).toInt();
  if (percent >= Preferences::leastTextPercent && percent <= Preferences::greatestTextPercent)
    p.textPercent = percent;
  p.lessMotion = yes("lessMotion", p.lessMotion);
  p.openLast = yes("openLast", p.openLast);
  p.notify = yes("notify", p.notify);
  p.autosave = yes("autosave", p.autosave);
  p.hints = yes("hints", p.hints);
  p.person = state.value("person").toString();
  return p;
}

void setPreferences(const Preferences& wanted) {
  Preferences next = wanted;
  next.textPercent =
      std::clamp(next.textPercent, Preferences::leastTextPercent, Preferences::greatestTextPercent);
  next.person = next.person.trimmed();
  if (next == preferences()) return;
  const Preferences usual = usualPreferences();
  {
    QSettings state = stateFile();
    remember(state, "language", next.language, usual.language);
    remember(state, "colours", wordOf(next.colours), wordOf(usual.colours));
    remember(state, "textPercent", next.textPercent, usual.textPercent);
    remember(state, "lessMotion", next.lessMotion, usual.lessMotion);
    remember(state, "openLast", next.openLast, usual.openLast);
    remember(state, "notify", next.notify, usual.notify);
    remember(state, "autosave", next.autosave, usual.autosave);
    remember(state, "hints", next.hints, usual.hints);
    remember(state, "person", next.person, usual.person);
  }
  emit PreferencesSignal::instance().preferencesChanged();
}

PreferencesSignal& PreferencesSignal::instance() {
  static PreferencesSignal signal;
  return signal;
}

}  // namespace ui
