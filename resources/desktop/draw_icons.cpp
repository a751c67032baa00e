// SPDX-License-Identifier: GPL-3.0-or-later
// Draws an SVG as PNG files in the sizes that desktops ask for: draw_icons PICTURE.svg FOLDER SIZE...
// writes FOLDER/SIZE.png. Called while building.
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <cstdio>

int main(int argc, char** argv) {
  if (argc < 4) {
    std::fputs("usage: draw_icons PICTURE.svg FOLDER SIZE...\n", stderr);
    return 2;
  }
  QSvgRenderer picture{QString::fromLocal8Bit(argv[1])};
  if (!picture.isValid()) {
    std::fprintf(stderr, "draw_icons: %s is no SVG picture\n", argv[1]);
    return 1;
  }
  for (int k = 3; k < argc; ++k) {
    const int size = QByteArray(argv[k]).toInt();
    QImage image(size, size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    picture.render(&painter);
    painter.end();
    const QString path = QString::fromLocal8Bit(argv[2]) + "/" + QString::number(size) + ".png";
    if (image.save(path)) continue;
    std::fprintf(stderr, "draw_icons: %s cannot be written\n", qPrintable(path));
    return 1;
  }
  return 0;
}
