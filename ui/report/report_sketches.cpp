// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/report/report_sketches.h"

#include <QPainter>

#include "ui/bridge/paper_bridge.h"
#include "ui/locale.h"
#include "ui/outcome/deviation_plot.h"
#include "ui/outcome/measured_plot.h"
#include "ui/wiring/wiring_pictures.h"

namespace ui {
namespace {

constexpr QSize outcome_px(535, 285);  ///< as laid out: narrower, and the legend has no room
constexpr int upper_px = outcome_px.height() * 3 / 5;
constexpr double outcomeWidth_pt = 318;  ///< leaves a third of the page's width for figures
constexpr double outcomeScale_pt = outcomeWidth_pt / outcome_px.width();

constexpr QSizeF bridgeRoom_pt(480, 430);  ///< text width less a little; three fifths of the text's height
constexpr double finer = 2;                ///< points of a sketch a point of paper: strokes are thin there

/// Numbers of the views follow the user's locale, on paper they follow the report's. Only as long as one
/// picture is drawn, in which the window does nothing.
class LocaleScope {
 public:
  explicit LocaleScope(const QLocale& locale) { QLocale::setDefault(locale); }
  ~LocaleScope() { QLocale::setDefault(m_before); }
  Q_DISABLE_COPY_MOVE(LocaleScope)

 private:
  QLocale m_before;
};

QLocale localeWith(char decimalMark) {
  if (decimalMark == '.') return QLocale::c();
  QLocale locale(QLocale::German, QLocale::Germany);
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale;
}

template <class Plot>
std::unique_ptr<Plot> plotOf(QSize size) {
  auto plot = std::make_unique<Plot>();
  plot->setAttribute(Qt::WA_DontShowOnScreen);
  plot->setFont(QFont("DejaVu Sans", 9));
  plot->setPalette(lightPalette());
  plot->resize(size);
  plot->show();  // on no screen: without it the chart does not lay itself out
  return plot;
}

}  // namespace

ReportSketches::ReportSketches(const core::Document& document, std::shared_ptr<const core::Language> language)
    : m_document(document), m_language(std::move(language)), m_locale(localeWith(m_language->decimalMark)) {}
ReportSketches::~ReportSketches() = default;

QSizeF ReportSketches::sizeOf(const core::Picture& picture) {
  const LocaleScope scope(m_locale);
  const SpokenScope words(m_language);
  switch (picture.kind) {
    case core::Picture::Kind::Bridge:
      return paperSize_pt(bridgeOf(picture), bridgeRoom_pt);
    case core::Picture::Kind::Wiring:
      return wiringSize_pt(m_document.channels[picture.channel]->setup, picture.shunt);
    case core::Picture::Kind::Outcome:
      break;
  }
  return QSizeF(outcome_px) * outcomeScale_pt;
}

std::shared_ptr<const Sketch> ReportSketches::draw(const core::Picture& picture) {
  if (picture.kind == core::Picture::Kind::Outcome) {
    const LocaleScope scope(m_locale);
    const SpokenScope words(m_language);
    return outcome(picture);
  }
  const QRectF room(QPointF(0, 0), sizeOf(picture) * finer);
  const LocaleScope scope(m_locale);
  const SpokenScope words(m_language);
  return Sketch::of(room.size(), [&](QPainter& painter) {
    if (picture.kind == core::Picture::Kind::Bridge)
      drawOnPaper(painter, room, bridgeOf(picture));
    else
      drawWiring(painter, room, m_document.channels[picture.channel]->setup, picture.shunt);
  });
}

BridgePicture ReportSketches::bridgeOf(const core::Picture& picture) {
  return pictureOf(*m_document.channels[picture.channel], evaluationOf(picture.channel).prediction,
                   std::nullopt);
}

std::shared_ptr<const Sketch> ReportSketches::outcome(const core::Picture& picture) {
  if (!m_measured) {
    m_measured = plotOf<MeasuredPlot>({outcome_px.width(), upper_px});
    m_bars = plotOf<DeviationPlot>({outcome_px.width(), outcome_px.height() - upper_px});
  }
  const core::Channel& channel = *m_document.channels[picture.channel];
  const core::ChannelEvaluation& evaluation = evaluationOf(picture.channel);
  // On paper the limits are what the bars are held against.
  ChartOptions options;
  options.fit = BarFit::Limits;
  const CheckPlot plot = checkPlot(channel, evaluation, picture.check);
  Extent x, y;
  addExtent(plot, x, y);
  m_measured->setLeft(0);
  m_bars->setLeft(0);
  m_measured->showPlot(plot, options, MeasuredPlot::Role::Chosen, false, niceTicks(x, 8),
                       niceTicks(y, m_measured->uprightIntervals()), {});
  m_bars->showBars(barPicture(channel, evaluation, picture.check, plot, options), niceTicks(x, 8), {});
  const int left = std::max(m_measured->neededLeft(), m_bars->neededLeft());
  m_measured->setLeft(left);
  m_bars->setLeft(left);
  return Sketch::of(outcome_px, [&](QPainter& painter) {
    m_measured->paintInto(painter, QRectF(0, 0, outcome_px.width(), upper_px));
    m_bars->paintInto(painter, QRectF(0, upper_px, outcome_px.width(), outcome_px.height() - upper_px));
  });
}

const core::ChannelEvaluation& ReportSketches::evaluationOf(std::size_t channel) {
  if (m_evaluated != channel) m_evaluation = core::evaluate(*m_document.channels[channel]);
  m_evaluated = channel;
  return m_evaluation;
}

}  // namespace ui
