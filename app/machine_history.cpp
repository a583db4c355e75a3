// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/machine_history.h"

#include <qcustomplot.h>

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "widgets/plot_style.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

struct MachineHistory::Row {
    const char* name;
    std::optional<double> FrameRow::*value;
    bool bothSides;  // the scale goes from minus to plus
    double least;    // of the end of the scale, percent
};

namespace {

constexpr double kSpread = 0.5;  // of a visit's column: from its first frame to its last
constexpr int kLeft = 78, kRight = 12;
constexpr int kTop = 15, kFoot = 19, kBetween = 5;  // for repairs, for days, about each curve
constexpr double kRing = 7.0;                       // pixels across
constexpr double kRingRoom = 5.0;                   // from the middle of a ring to the edge
constexpr double kWordsApart = 8.0;                 // pixels

double placeOf(std::size_t visit, std::size_t frame, std::size_t frames) {
    const double part = frames < 2 ? 0.0 : double(frame) / double(frames - 1) - 0.5;
    return double(visit) + kSpread * part;
}

// Behind the frame marked as before the repair; without one before the frame after it, the last unless another is
// marked.
double repairPlace(std::size_t visit, const std::vector<FrameRow>& frames) {
    if (frames.empty()) return double(visit);
    const double half = 0.5 * kSpread / double(std::max<std::size_t>(1, frames.size() - 1));
    const auto marked = [&](FrameRole role) -> std::optional<std::size_t> {
        const auto at =
            std::find_if(frames.begin(), frames.end(), [role](const FrameRow& f) { return f.role == role; });
        return at == frames.end() ? std::nullopt : std::optional(std::size_t(at - frames.begin()));
    };
    const auto before = marked(FrameRole::before), after = marked(FrameRole::after);
    if (before && (!after || *before < *after)) return placeOf(visit, *before, frames.size()) + half;
    if (!after && frames.size() == 1) return placeOf(visit, 0, 1) + half;
    return placeOf(visit, after.value_or(frames.size() - 1), frames.size()) - half;
}

QCPGraph* dots(QCustomPlot& plot, QCPAxisRect& rect, const QColor& ground, double size) {
    QCPGraph* graph = plot.addGraph(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
    graph->setLineStyle(QCPGraph::lsNone);
    graph->setScatterStyle({QCPScatterStyle::ssCircle, theme::pen(theme::kInk, 1.3), QBrush(ground), size});
    return graph;
}

// The least round value that is not below the given, so that no dot lies beyond the figures.
double roundAbove(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    for (const double digit : {1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0})
        if (digit * power >= most) return digit * power;
    return 10.0 * power;
}

// The ends of the scale; zero, which has a line of its own, where its figure has room between them.
QSharedPointer<QCPAxisTicker> ticksTo(double end, bool bothSides, bool zero) {
    const int decimals = end < 1.0 ? 1 : 0;
    const QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    ticker->addTick(0.0, zero ? QStringLiteral("0") : QString());
    ticker->addTick(end, bothSides ? signedNumber(end, decimals) : number(end, decimals));
    if (bothSides) ticker->addTick(-end, signedNumber(-end, decimals));
    return ticker;
}

// Words side by side, of which none touches another. Pixels.
class WordsInARow {
public:
    bool take(double left, double width) {
        for (const auto& [from, to] : taken_)
            if (left < to + kWordsApart && from < left + width + kWordsApart) return false;
        taken_.emplace_back(left, left + width);
        return true;
    }

private:
    std::vector<std::pair<double, double>> taken_;
};

}  // namespace

MachineHistory::MachineHistory(QWidget* parent)
    : QWidget(parent),
      plot_(new QCustomPlot(this)),
      legend_(new QLabel(tr("\u25cb before   \u25cf after the repair   \u2022 other frames"))) {
    dressPlot(*plot_);
    plot_->plotLayout()->setAutoMargins(QCP::msNone);
    plot_->plotLayout()->setMargins(QMargins(0, kTop, 0, kFoot));
    connect(plot_, &QCustomPlot::beforeReplot, this, &MachineHistory::fit);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(plot_, 1);
    column->addWidget(legend_);
    legend_->setFont(theme::text(theme::kSmallPx));
    legend_->setWordWrap(true);
    legend_->setStyleSheet(QStringLiteral("color: %1; background: %2; padding: 0 0 4px %3px;")
                               .arg(theme::kSecondary.name(), theme::kPanel.name())
                               .arg(kLeft));
    setMinimumSize(330, 264);  // three days side by side, the names of the scales above each other
    setAccessibleName(tr("Bias, end, gross distortion and speed over the visits"));
}

// Room for a whole ring at either end of each scale.
void MachineHistory::fit() {
    plot_->plotLayout()->update(QCPLayoutElement::upLayout);  // to the size the plot has now
    const double figure = QFontMetricsF(theme::text(theme::kSmallPx)).height();
    for (const auto& [axis, from, to] : scales_) {
        const bool across = axis->orientation() == Qt::Horizontal, bothSides = from < 0.0;
        const int side = across ? axis->axisRect()->width() : axis->axisRect()->height();
        const double length = std::max(1.0, side - 2.0 * kRingRoom);
        const double ring = kRingRoom * (to - from) / length;
        axis->setRange(from - ring, to + ring);
        if (!across) axis->setTicker(ticksTo(to, bothSides, length > (bothSides ? 2.0 : 1.0) * figure));
    }
    nameDays();
    nameRepairs();
}

// The newest and the oldest, and between them those that have room.
void MachineHistory::nameDays() {
    QCPAxis* axis = plot_->axisRects().last()->axis(QCPAxis::atBottom);
    const QFontMetricsF metrics(axis->tickLabelFont());
    const QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    WordsInARow row;
    const auto name = [&](std::size_t visit) {
        const QString day = dayWords(visits_[visit].visit.opened);
        const double width = metrics.horizontalAdvance(day);
        const double left =
            std::min(axis->coordToPixel(double(visit)) - 0.5 * width, plot_->width() - width - kWordsApart);
        if (row.take(left, width)) ticker->addTick(axis->pixelToCoord(left + 0.5 * width), day);
    };
    if (!visits_.empty()) name(visits_.size() - 1);
    for (std::size_t i = 0; i + 1 < visits_.size(); ++i) name(i);
    axis->setTicker(ticker);
}

// The newest first; beside the right edge to the left of its rule.
void MachineHistory::nameRepairs() {
    WordsInARow row;
    for (auto word = repairs_.rbegin(); word != repairs_.rend(); ++word) {
        const double width = QFontMetricsF((*word)->font()).horizontalAdvance((*word)->text());
        const double at = (*word)->position->pixelPosition().x();
        const bool atTheEdge = at + 0.5 * width > plot_->width();
        (*word)->setPositionAlignment(Qt::AlignBottom | (atTheEdge ? Qt::AlignRight : Qt::AlignHCenter));
        (*word)->setVisible(row.take(at - (atTheEdge ? width : 0.5 * width), width));
    }
}

void MachineHistory::markRepairs(QCPAxisRect& rect, const std::vector<VisitHistory>& visits, bool named) {
    for (std::size_t i = 0; i < visits.size(); ++i) {
        if (!visits[i].visit.repaired) continue;
        auto* line = new QCPItemStraightLine(plot_);
        line->setClipAxisRect(&rect);
        for (QCPItemPosition* p : {line->point1, line->point2})
            p->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
        const double at = repairPlace(i, visits[i].frames);
        line->point1->setCoords(at, 0.0);
        line->point2->setCoords(at, 1.0);
        line->setPen(QPen(theme::kBlue, 1.0, Qt::DashLine));
        if (!named) continue;
        auto* word = new QCPItemText(plot_);
        word->setText(tr("repaired"));
        word->setFont(theme::text(theme::kSmallPx));
        word->setColor(theme::kBlue);
        word->setClipToAxisRect(false);
        word->position->setTypeX(QCPItemPosition::ptPlotCoords);
        word->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        word->position->setAxisRect(&rect);
        word->position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
        word->position->setCoords(at, 0.0);
        repairs_.push_back(word);
    }
}

void MachineHistory::drawRow(QCPAxisRect& rect, const std::vector<VisitHistory>& visits, const Row& row) {
    QCPAxis* y = rect.axis(QCPAxis::atLeft);
    QCPGraph* line = plot_->addGraph(rect.axis(QCPAxis::atBottom), y);
    line->setPen(theme::pen(theme::kSecondary));
    QCPGraph* others = dots(*plot_, rect, theme::kInk, 2.0);
    QCPGraph* before = dots(*plot_, rect, theme::kPanel, kRing);
    QCPGraph* after = dots(*plot_, rect, theme::kInk, kRing);
    double most = row.least;
    for (std::size_t v = 0; v < visits.size(); ++v) {
        const auto& frames = visits[v].frames;
        for (std::size_t f = 0; f < frames.size(); ++f) {
            const auto& value = frames[f].*row.value;
            if (!value) continue;
            const double x = placeOf(v, f, frames.size());
            most = std::max(most, std::abs(*value));
            line->addData(x, *value);
            const FrameRole role = frames[f].role;
            (role == FrameRole::before ? before : role == FrameRole::after ? after : others)->addData(x, *value);
        }
        line->addData(double(v) + 0.5, std::nan(""));  // visits are not joined: nobody knows what was between
    }
    const double end = roundAbove(most);
    scales_.push_back({y, row.bothSides ? -end : 0.0, end});
    y->setLabel(MachineHistory::tr(row.name));
    y->setLabelFont(theme::text(theme::kSmallPx));
    y->setLabelColor(theme::kSecondary);
}

void MachineHistory::change(const Visit& visit) {
    for (VisitHistory& v : visits_)
        if (v.visit.id == visit.id) v.visit = visit;
    draw();
}

void MachineHistory::show(const std::vector<VisitHistory>& visits) {
    visits_ = visits;
    draw();
}

void MachineHistory::draw() {
    static const Row rows[] = {
        {QT_TRANSLATE_NOOP("trueunit::MachineHistory", "bias %"), &FrameRow::bias, true, 5.0},
        {QT_TRANSLATE_NOOP("trueunit::MachineHistory", "end %"), &FrameRow::end, true, 5.0},
        {QT_TRANSLATE_NOOP("trueunit::MachineHistory", "gross %"), &FrameRow::gross, false, 10.0},
        {QT_TRANSLATE_NOOP("trueunit::MachineHistory", "speed %"), &FrameRow::speedError, true, 0.5}};
    plot_->clearItems();
    plot_->clearGraphs();
    plot_->plotLayout()->clear();
    scales_.clear();
    repairs_.clear();
    std::size_t at = 0;
    for (const Row& row : rows) {
        auto* rect = new QCPAxisRect(plot_);
        rect->setAutoMargins(QCP::msNone);
        const bool last = at + 1 == std::size(rows);
        rect->setMargins(QMargins(kLeft, kBetween, kRight, kBetween));
        rect->setMinimumSize(50, 30);
        plot_->plotLayout()->addElement(int(at), 0, rect);
        for (QCPAxis* axis : rect->axes()) {
            axis->setTickLabelFont(theme::text(theme::kSmallPx));
            axis->setTickLabelColor(theme::kSecondary);
            axis->setBasePen(Qt::NoPen);
            axis->setTickPen(Qt::NoPen);
            axis->setSubTickPen(Qt::NoPen);
            axis->grid()->setPen(theme::pen(theme::kHairline));
            axis->grid()->setZeroLinePen(theme::pen(theme::kSecondary, 0.8));
        }
        rect->axis(QCPAxis::atBottom)->grid()->setVisible(false);
        rect->axis(QCPAxis::atBottom)->setTickLabels(last);
        scales_.push_back({rect->axis(QCPAxis::atBottom), -0.5, std::max(0.5, double(visits_.size()) - 0.5)});
        markRepairs(*rect, visits_, at == 0);
        drawRow(*rect, visits_, row);
        ++at;
    }
    plot_->replot();
}

}  // namespace trueunit
