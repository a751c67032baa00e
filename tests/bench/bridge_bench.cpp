// SPDX-License-Identifier: GPL-3.0-or-later
// What a frame costs while a shunt is dragged over the largest bridge (full bridge, six wires, 12 shunts,
// leaks, balance): mouse move, physics, drawing and output bar painted anew (target: under 8 ms at the 99th
// percentile), what its parts cost, and the polarity map of that bridge (target: under 5 ms). Times of the
// processor, since other work on the machine is none of the bridge's.
#include <QApplication>
#include <QMouseEvent>
#include <algorithm>
#include <clocale>
#include <cstdio>
#include <ctime>

#include "core/polarity/polarity_map.h"
#include "tests/support/sample_channel.h"
#include "ui/bridge/bridge_painter.h"
#include "ui/bridge/flow_painter.h"
#include "ui/bridge/output_bar.h"
#include "ui/bridge_pane.h"
#include "ui/bridge_view.h"
#include "ui/theme.h"

namespace {

using core::Node;
using core::Resistance;

double processor_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

template <class Work>
double cost_ms(const Work& work) {
  const double before = processor_ms();
  work();
  return processor_ms() - before;
}

template <class Work>
std::vector<double> costs_ms(int count, const Work& work) {
  std::vector<double> costs;
  for (int k = 0; k < count; ++k) costs.push_back(cost_ms([&] { work(k); }));
  return costs;
}

void print(const char* what, std::vector<double> costs) {
  std::sort(costs.begin(), costs.end());
  const auto at = [&](double share) {
    return costs[static_cast<std::size_t>(share * static_cast<double>(costs.size() - 1))];
  };
  std::printf("%-52s median %7.3f ms   99 %% %7.3f ms   worst %7.3f ms   of %zu\n", what, at(0.5), at(0.99),
              costs.back(), costs.size());
}

/// Twelve shunts, three over each arm, each closed by a step of its own and all but one pair by the last.
core::Channel largest() {
  core::Channel channel = sample::nineStepChannel();
  core::Setup& setup = channel.setup;
  channel = core::withBridgeType(channel, core::BridgeType::FullPoissonBendingMixed);
  setup.bridge.sixWire = true;
  setup.bridge.leads.fill(Resistance(2));
  for (core::Leak& leak : setup.bridge.leaks) leak = {Resistance(50e6), Resistance(20e6), 0.4};
  setup.instrument.grounding = core::Grounding::PMinus;
  setup.instrument.inputResistance = Resistance(10e6);
  setup.instrument.balance.kind = core::BalanceKind::Parallel;
  setup.shunts.clear();
  setup.sequence.clear();
  setup.sequence.push_back({"zero", {}});
  for (std::size_t k = 0; k < 12; ++k) {
    setup.shunts.push_back({"R" + std::to_string(k + 1), Resistance(50e3 * static_cast<double>(k + 1)),
                            core::armBegin(k % 4), core::armEnd(k % 4)});
    setup.sequence.push_back({"R" + std::to_string(k + 1), {k}});
  }
  setup.sequence.push_back({"all", {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}});
  return channel;
}

void mouse(QWidget& view, QEvent::Type type, QPointF at) {
  const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
  const auto buttons = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(type, at, view.mapToGlobal(at), button, buttons, Qt::NoModifier);
  QApplication::sendEvent(&view, &event);
}

/// The pointer goes from one corner of the bridge to the next and on, 4 pixels a frame or so.
void drag(const char* what, QSize size, std::size_t step) {
  ui::Session session(sample::documentOf({largest()}));
  session.selectStep(step);
  ui::BridgePane pane(session);
  pane.resize(size);
  pane.show();
  QApplication::processEvents();
  ui::BridgeView& view = pane.view();
  auto& bar = *pane.findChild<ui::OutputBar*>();
  const ui::BridgePicture& picture = *view.picture();
  const auto corner = [&](Node node) { return view.toWidget(picture.layout[node].at); };
  const std::vector<QPointF> way = {view.toWidget(picture.lanes.places[0].handleA),
                                    corner(Node::Arm1End),
                                    corner(Node::Arm2End),
                                    corner(Node::Arm3End),
                                    corner(Node::Arm1Begin),
                                    corner(Node::SPlus),
                                    corner(Node::PMinus),
                                    corner(Node::Arm1End)};
  constexpr int framesPerLeg = 60;
  mouse(view, QEvent::MouseButtonPress, way[0]);
  std::size_t legal = 0;
  const auto costs = costs_ms(framesPerLeg * static_cast<int>(way.size() - 1), [&](int k) {
    const auto leg = static_cast<std::size_t>(k / framesPerLeg);
    const QPointF at = way[leg] + (way[leg + 1] - way[leg]) * ((k % framesPerLeg + 1.0) / framesPerLeg);
    mouse(view, QEvent::MouseMove, at);
    view.repaint();
    bar.repaint();
    QApplication::processEvents();
    legal += view.move() && view.move()->legal;
  });
  mouse(view, QEvent::MouseButtonRelease, way[0]);
  print(what, costs);
  // A drag that never solved anything would be no figure.
  std::printf("%-52s %zu frames over a legal node\n", "", legal);
}

void parts() {
  const core::Channel channel = largest();
  const std::size_t step = 1;
  const auto many = [](const char* what, const auto& work) { print(what, costs_ms(200, work)); };
  const core::SetupPrediction prediction = core::predict(channel.setup);
  many("  prediction of all 14 steps", [&](int) { core::predict(channel.setup); });
  many("  flow and movement of a step", [&](int) {
    if (!core::flowAndMovementAt(channel.setup, step)) std::printf("no flow\n");
  });
  many("  state of a step, sentences included", [&](int) { ui::stateAt(channel, prediction, step); });
  const ui::BridgeState state = ui::stateAt(channel, prediction, step);
  many("  spoken text of a step", [&](int) { ui::describe(channel, state); });
  many("  layout, lanes and labels, state included", [&](int) { ui::pictureOf(channel, prediction, step); });
  const ui::BridgePicture picture = ui::pictureOf(channel, prediction, step);
  QImage image(1270, 730, QImage::Format_ARGB32_Premultiplied);
  const ui::Colours colours = ui::coloursFor(ui::lightPalette());
  const auto paint = [&](const auto& what) {
    QPainter painter(&image);
    const QRectF scene = picture.lanes.scene;
    const double scale = std::min(1270 / scene.width(), 730 / scene.height());
    painter.scale(scale, scale);
    painter.translate(-scene.topLeft());
    what(painter);
  };
  many("  painting the bridge",
       [&](int) { paint([&](QPainter& painter) { ui::paintBridge(painter, picture, colours); }); });
  for (const auto& [style, name] : {std::pair(ui::FlowStyle::Width, "  painting currents as widths"),
                                    std::pair(ui::FlowStyle::Dots, "  painting currents as dots")})
    many(name, [&](int k) {
      paint([&](QPainter& painter) {
        ui::paintFlow(painter, picture, *picture.state.flow, style, k % 25 / 25.0, colours);
      });
    });
}

void map() {
  const core::Setup setup = largest().setup;
  print("polarity map of all places", costs_ms(100, [&](int) {
          if (!core::polarityMap(setup, Resistance(100e3))) std::printf("the map failed\n");
        }));
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  QApplication::setStyle("Fusion");
  QApplication::setPalette(ui::lightPalette());
  drag("frame of a drag, 490 x 380, one shunt closed", {490, 380}, 1);
  drag("frame of a drag, 1270 x 730, one shunt closed", {1270, 730}, 1);
  drag("frame of a drag, 1900 x 1000, one shunt closed", {1900, 1000}, 1);
  drag("frame of a drag, 1900 x 1000, all shunts closed", {1900, 1000}, 13);
  parts();
  map();
  return 0;
}
