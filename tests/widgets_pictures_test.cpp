// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <functional>

#include "tests/support/snapshot_builder.h"
#include "tests/support/widget_rig.h"
#include "widgets/bias_gauge.h"
#include "widgets/character_grid.h"
#include "widgets/findings_panel.h"
#include "widgets/level_meter.h"
#include "widgets/theme.h"

namespace trueunit::test {
namespace {

// Every widget in several states and sizes. With TRUEUNIT_PICTURES=folder each picture is also kept there, so that a
// person can look; QT_SCALE_FACTOR=2 gives the same at twice the resolution.
struct State {
    const char* name;
    SnapshotPtr snapshot;
};

std::vector<State> states() {
    return {
        {"none", nullptr},
        {"silent", SnapshotBuilder::silent()},
        {"in", SnapshotBuilder().bias(-1.4).build()},
        {"out", SnapshotBuilder()
                    .bias(7.3)
                    .scatter(0.9)
                    .characters(700)
                    .biasBefore(9.8, 22)
                    .biasBefore(12.5, 45)
                    .biasBefore(15.1, 71)
                    .biasBefore(13.0, 95)
                    .framingErrorAt(4)
                    .withoutStop()
                    .text("THE QUICK BROWN FOX 123")
                    .build()},
    };
}

QImage pictureOf(QWidget& widget, QSize size) {
    qApp->setStyleSheet(theme::styleSheet());
    widget.resize(size);
    static_cast<QWidget&>(widget).show();
    settle();
    const double ratio = widget.devicePixelRatioF();
    QImage image(size * ratio, QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(theme::kPaper);
    widget.render(&image);
    return image;
}

void keep(const QImage& image, const QString& name) {
    const QString folder = qEnvironmentVariable("TRUEUNIT_PICTURES");
    if (folder.isEmpty()) return;
    QDir().mkpath(folder);
    EXPECT_TRUE(image.save(QDir(folder).filePath(name + QStringLiteral(".png"))));
}

bool hasInk(const QImage& image) {
    int darkest = 255, lightest = 0;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) {
            const int gray = qGray(image.pixel(x, y));
            darkest = std::min(darkest, gray);
            lightest = std::max(lightest, gray);
        }
    return darkest < lightest - 60;
}

TEST(WidgetsPictures, EveryWidgetDrawsSomethingInEveryStateAndSize) {
    for (const State& state : states()) {
        for (const WidgetMaker& maker : allWidgets()) {
            for (const bool tiny : {false, true}) {
                const auto widget = maker.make();
                maker.show(*widget, state.snapshot);
                const QSize size = tiny ? widget->minimumSizeHint() : widget->sizeHint();
                const QImage image = pictureOf(*widget, size);
                EXPECT_TRUE(hasInk(image)) << maker.name.toStdString() << " " << state.name;
                keep(image, QStringLiteral("%1-%2%3").arg(maker.name, state.name, tiny ? "-tiny" : ""));
            }
        }
    }
}

TEST(WidgetsPictures, FindingsStandBesideTheirBars) {
    Snapshot s = SnapshotBuilder().bias(7.3).value();
    s.reading.findings = std::vector<Finding>{
        {"contact-offset", 0.97, "Contacts sit off centre",
         "Every to-mark instant is 7.2 % early, 1 to stop alike; to-space instants are in place, speed is right.",
         "the eccentric under the contact box.", "turn it a little; all five levels must move together."},
        {"level-late", 0.62, "Level 3 comes late", "Its instants stand 2.1 % after the others.",
         "the transfer lever of level 3.", "lift it by hand with the power off; it must fall freely."}};
    FindingsPanel panel;
    panel.show(std::make_shared<const Snapshot>(s));
    const QImage image = pictureOf(panel, {378, 260});
    EXPECT_TRUE(hasInk(image));
    keep(image, QStringLiteral("findings-two"));
    s.reading.findings = std::vector<Finding>{{"in-order", 0.95, "In order", "Every reading is in limits.", "", ""}};
    panel.show(std::make_shared<const Snapshot>(s));
    keep(pictureOf(panel, {378, 200}), QStringLiteral("findings-in-order"));
}

TEST(WidgetsPictures, MeterWarnsOfClippingAndLosses) {
    Snapshot s = SnapshotBuilder().value();
    s.levelDbfs = -0.1;
    s.clippingNow = true;
    s.lostSamples = 512;
    s.reading.input.gaps = 2;
    LevelMeter meter;
    meter.show(std::make_shared<const Snapshot>(s));
    const QImage image = pictureOf(meter, meter.sizeHint());
    EXPECT_TRUE(hasInk(image));
    keep(image, QStringLiteral("level-clipping"));
}

FrozenFrame notedFrame() {
    FrozenFrame frame;
    frame.snapshot = SnapshotBuilder().bias(7.3).build();
    frame.cursors = {1.0, 2.93};
    frame.notes = {
        {0.93, 0.55, "every front of a mark is early"}, {2.4, 0.0, "spaces keep their length"}, {6.4, 1.0, "stop"}};
    return frame;
}

TEST(WidgetsPictures, GridWithCursorsAndNotesDiffersFromTheBareOne) {
    const FrozenFrame frame = notedFrame();
    CharacterGrid grid, bare;
    grid.showFrame(frame);
    bare.show(frame.snapshot);
    for (const QSize size : {QSize(960, 376), QSize(520, 240)}) {
        const QImage noted = pictureOf(grid, size);
        EXPECT_NE(noted, pictureOf(bare, size));
        keep(noted, QStringLiteral("grid-noted-%1").arg(size.width()));
    }
    grid.zoom(3.0);
    keep(pictureOf(grid, {960, 376}), QStringLiteral("grid-noted-zoomed"));
}

TEST(WidgetsPictures, GaugeAloneFillsAScreen) {
    BiasGauge gauge;
    gauge.setFramed(false);
    gauge.show(SnapshotBuilder().bias(-7.3).build());
    const QImage image = pictureOf(gauge, {1366, 768});
    EXPECT_TRUE(hasInk(image));
    keep(image, QStringLiteral("gauge-alone"));
}

TEST(WidgetsPictures, GridPaintsItselfOnPaperAtThreeHundredDotsPerInch) {
    QImage paper(2000, 900, QImage::Format_RGB32);
    paper.setDotsPerMeterX(11811);
    paper.setDotsPerMeterY(11811);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    painter.scale(2.0, 2.0);
    CharacterGrid::paintFrame(notedFrame(), painter, QRectF(20, 20, 960, 400));
    painter.end();
    EXPECT_TRUE(hasInk(paper));
    keep(paper, QStringLiteral("grid-paper"));
}

}  // namespace
}  // namespace trueunit::test
