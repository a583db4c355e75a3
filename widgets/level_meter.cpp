// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/level_meter.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "widgets/figures.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr int kSegments = 20;
constexpr double kDbPerSegment = 3.0;
constexpr double kFloorDbfs = -kSegments * kDbPerSegment;
constexpr double kLeastWords = 60.0;  // pixels; less holds no word worth reading
constexpr double kHotDbfs = -3.0;     // segments from here on warn by colour before the word does

QString kindWords(InputKind kind) {
    switch (kind) {
        case InputKind::loop:
            return Words::tr("loop");
        case InputKind::tone:
            return Words::tr("tone");
        case InputKind::twoTone:
            return Words::tr("two tones");
        case InputKind::automatic:
            break;
    }
    return {};
}

// First of all what the person has set apart from the usual, so that no narrow line can hide it.
QString wiringWords(const InputReading& input, double slicePercent) {
    QStringList words;
    if (slicePercent != Options{}.slicePercent) words << Words::tr("slice %1 %").arg(limitNumber(slicePercent));
    if (const QString kind = kindWords(input.kind); !kind.isEmpty()) words << kind;
    if (input.inverted) words << (*input.inverted ? Words::tr("reversed") : Words::tr("upright"));
    if (!input.couplingHz.empty()) {
        QStringList corners;
        for (const double hz : input.couplingHz) corners << number(hz, hz < 2.0 ? 1 : 0);
        words << Words::tr("coupling %1 Hz evened out").arg(corners.join(Words::tr(" and ")));
    }
    if (input.snrDb) words << Words::tr("signal to noise %1 dB").arg(number(*input.snrDb, 0));
    if (input.humPercent) words << Words::tr("hum %1 %").arg(number(*input.humPercent, 0));
    return words.join(QStringLiteral(", "));
}

}  // namespace

LevelMeter::LevelMeter(QWidget* parent) : QWidget(parent), snapshot_(std::make_shared<const Snapshot>()) {
    setAccessibleName(Words::tr("Input level"));
    say(*snapshot_);
}

void LevelMeter::show(const SnapshotPtr& snapshot) {
    if (!snapshot || snapshot == snapshot_) return;
    snapshot_ = snapshot;
    say(*snapshot_);
    update();
}

void LevelMeter::setStill(bool still) {
    if (still == still_) return;
    still_ = still;
    say(*snapshot_);
    update();
}

void LevelMeter::say(const Snapshot& s) {
    const double aboveFloor = std::clamp((s.levelDbfs - kFloorDbfs) / kDbPerSegment, 0.0, double(kSegments));
    lit_ = still_ ? 0 : static_cast<int>(std::ceil(aboveFloor));
    clipping_ = s.clippingNow && !still_;
    levelWords_ = still_                 ? QStringLiteral("\u2014")
                  : clipping_            ? Words::tr("clipping")
                  : s.levelDbfs < -150.0 ? Words::tr("no level")
                                         : number(s.levelDbfs, 0) + Words::tr(" dBFS");
    lossWords_.clear();
    if (s.reading.input.gaps > 0 || s.lostSamples > 0) {
        lossWords_ = counted(s.reading.input.gaps, Words::tr("gap"), Words::tr("gaps"));
        if (s.lostSamples > 0) lossWords_ += Words::tr(", %1 samples lost").arg(static_cast<qulonglong>(s.lostSamples));
    }
    inputWords_ = wiringWords(s.reading.input, s.options.slicePercent);
    QStringList all{levelWords_};
    if (!lossWords_.isEmpty()) all << lossWords_;
    if (!inputWords_.isEmpty()) all << inputWords_;
    const QString description = all.join(QStringLiteral("; "));
    if (description != accessibleDescription()) {
        setAccessibleDescription(description);
        setToolTip(description);
    }
}

void LevelMeter::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(theme::text(theme::kSmallPx));
    const QFontMetricsF metrics(painter.font());
    constexpr double kPitch = 6.0, kSegmentWidth = 4.0, kSegmentHeight = 12.0;
    const double middle = height() / 2.0;
    for (int i = 0; i < kSegments; ++i) {
        const bool hot = kFloorDbfs + (i + 1) * kDbPerSegment > kHotDbfs;
        const QColor on = hot || clipping_ ? theme::kOut : theme::kBlue;
        painter.fillRect(QRectF(i * kPitch, middle - kSegmentHeight / 2, kSegmentWidth, kSegmentHeight),
                         i < lit_ ? on : theme::kBorder);
    }
    double x = kSegments * kPitch + 8;
    const double baseline = middle + metrics.capHeight() / 2;
    painter.setFont(theme::text(theme::kSmallPx, clipping_ ? QFont::DemiBold : QFont::Normal));
    painter.setPen(clipping_ ? theme::kOut : theme::kInk);
    drawFigures(painter, {x, baseline}, levelWords_);
    x += std::max(figuresWidth(metrics, QStringLiteral("−00 dBFS")), metrics.horizontalAdvance("clipping ")) + 14;

    // Losses above what is known of the wiring: the first is news, the second is background.
    const bool both = !lossWords_.isEmpty() && !inputWords_.isEmpty();
    const double step = both ? 0.5 * metrics.height() + 1 : 0.0;
    const auto line = [&](const QString& words, const QColor& color, double y) {
        if (width() - x < kLeastWords) return;
        painter.setPen(color);
        painter.drawText(QPointF(x, y), metrics.elidedText(words, Qt::ElideRight, width() - x));
    };
    painter.setFont(theme::text(theme::kSmallPx));
    if (!lossWords_.isEmpty()) line(lossWords_, theme::kOut, baseline - step);
    line(inputWords_, theme::kSecondary, baseline + step);
}

}  // namespace trueunit
