// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/margin_view.h"

#include <QPainter>

#include "widgets/margin_bars.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kWordsHeight = 18.0;  // each of the two lines below

// Which character and level would misread first, sampled too early or too late.
QString misread(const MarginReading& margin, int levels, bool low) {
    const double percent = low ? margin.lowPercent : margin.highPercent;
    for (const LevelMargin& l : margin.levels) {
        const auto& bound = low ? l.low : l.high;
        if (!bound || bound->percent != percent) continue;
        const int as = low ? l.level - 1 : l.level + 1;
        const QString neighbour = as >= 1 && as <= levels ? Words::tr("level %1").arg(as)
                                                          : (low ? Words::tr("the start") : Words::tr("the stop"));
        return (low ? Words::tr("before %1 %: level %2 of %3 reads as %4")
                    : Words::tr("after %1 %: level %2 of %3 reads as %4"))
            .arg(number(percent, 1), QString::number(l.level), told(bound->print), neighbour);
    }
    return {};
}

}  // namespace

MarginView::MarginView(QWidget* parent) : Panel(Words::tr("Receiving margin"), parent) { say(shown()); }

void MarginView::refresh(const Snapshot& snapshot) {
    say(snapshot);
    update();
}

void MarginView::say(const Snapshot& s) {
    const auto& margin = s.reading.margin;
    lowWords_.clear();
    highWords_.clear();
    if (!margin) {
        setRemark(QString());
        describe(whyNothing(s));
        return;
    }
    lowWords_ = misread(*margin, s.levels, true);
    highWords_ = misread(*margin, s.levels, false);
    setRemark(Words::tr("percent of each level, ideal receiver"), Tone::quiet, {Words::tr("% of level")});
    describe(Words::tr("A receiver may sample from %1 to %2 percent of each level; %3; %4")
                 .arg(number(margin->lowPercent, 1), number(margin->highPercent, 1), lowWords_, highWords_));
}

void MarginView::paintBody(QPainter& painter, const QRectF& body) {
    const auto& margin = shown().reading.margin;
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kSecondary);
    if (!margin || margin->levels.empty()) {
        painter.drawText(body, Qt::AlignCenter | Qt::TextWordWrap, whyNothing(shown()));
        return;
    }
    const bool words = body.height() > 150;
    const double below = words ? 2 * kWordsHeight : 0.0;
    MarginBars(*margin, body.adjusted(0, 0, 0, -below)).paint(painter);
    if (!words) return;
    painter.setFont(theme::text(theme::kSmallPx));
    painter.setPen(theme::kInk);
    QRectF line(body.left(), body.bottom() - below, body.width(), kWordsHeight);
    for (const QString& text : {lowWords_, highWords_}) {
        painter.drawText(line, Qt::AlignLeft | Qt::AlignBottom,
                         painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(line.width())));
        line.translate(0, kWordsHeight);
    }
}

}  // namespace trueunit
