// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/session.h"

namespace ui {

/// One view over the whole screen in large letters, for a room of people; the keys go from step to step.
class Presentation : public QWidget {
  Q_OBJECT

 public:
  enum class View { Bridge, Polarity, Sequence, Outcome };

  Presentation(Session& session, View view, QWidget* parent = nullptr);

 private:
  Session& m_session;
};

}  // namespace ui
