// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "ui/polarity/polarity_shown.h"
#include "ui/session.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QTableView;

namespace ui {

class PageButton;
class PolarityModel;
class PolarityPicture;
class QuantityEdit;

/// A page of the Bridge view: what the chosen shunt would do at every place of the bridge, as a matrix and as
/// a picture on the diamond. A cell places the shunt there.
///
/// The shunt is one of the channel's, or any resistance typed, which becomes a new shunt when it is placed. A
/// chosen step that closes one shunt alone chooses it here too. Table and picture stand side by side where
/// there is room for both, else one at a time.
class PolarityPanel : public QWidget {
  Q_OBJECT

 public:
  explicit PolarityPanel(Session& session, QWidget* parent = nullptr);
  ~PolarityPanel() override;

  /// The map that is shown.
  const PolarityShown& shown() const { return m_shown; }
  std::optional<PolarityPair> current() const { return m_current; }
  /// Both table and picture are on view.
  bool isSideBySide() const { return m_sideBySide; }

  /// To be looked at alone: nothing to choose or to turn, the picture, and beside it the table where there is
  /// room for both.
  void setOnlyShown();

  /// Side by side table and picture need no more room than the pane has: it gives them one at a time again.
  QSize minimumSizeHint() const override { return {300, 200}; }

 signals:
  void refused(const QString& reason);
  void said(const QString& sentence);

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// Whose resistance is mapped: a shunt of the channel by its index, or what was typed.
  struct Choice {
    std::optional<std::size_t> shunt;
    core::Resistance typed{59000};
  };

  QWidget* choices();
  QWidget* reversals();
  PageButton* reversal(const char* name, const QString& text, const QString& tip, const QString& undo,
                       bool core::Hookup::*flag);
  void buildTable();
  QWidget* pages();

  void follow();
  void followChoice(bool otherChannel);
  void showMap();
  void showChoices();
  void showReversals();
  void arrange();
  void sizeColumns();
  void showCorner();
  int leastColumn() const;
  void setCurrent(std::optional<PolarityPair> pair);
  void showSentence(std::optional<PolarityPair> pair);
  void place(PolarityPair pair);
  void placeTyped(const core::PolarityCell& cell);

  core::Resistance resistance() const;

  Session& m_session;
  std::shared_ptr<const core::Channel> m_channel;
  std::optional<std::size_t> m_step;
  Choice m_choice;
  PolarityShown m_shown;
  std::optional<PolarityPair> m_current;
  bool m_following = false;
  bool m_sideBySide = false;
  bool m_onlyShown = false;

  QComboBox* m_shunt = nullptr;
  QuantityEdit* m_ohm = nullptr;
  QComboBox* m_quantity = nullptr;
  struct Reversal {
    PageButton* button;
    bool core::Hookup::*flag;
  };
  std::vector<Reversal> m_reversals;
  QTableView* m_table = nullptr;
  QLabel* m_corner = nullptr;  ///< over the table's corner: quantity and unit
  PolarityModel* m_model = nullptr;
  PolarityPicture* m_picture = nullptr;
  QWidget *m_choices = nullptr, *m_turns = nullptr;  ///< the two rows of controls
  QWidget* m_pages = nullptr;
  PageButton* m_asTable = nullptr;
  PageButton* m_asPicture = nullptr;
  QLabel* m_sentence = nullptr;
};

}  // namespace ui
