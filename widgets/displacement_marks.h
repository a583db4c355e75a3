// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <qcustomplot.h>

#include <QPixmap>

#include "widgets/panel.h"

namespace trueunit {

// Dots, means and spreads as one item of the plot. Dots are stamped from two small pictures: thousands of polygons a
// second would cost more than the whole rest of the window.
class DisplacementMarks : public QCPAbstractItem {
public:
    explicit DisplacementMarks(QCustomPlot* plot);

    void setSnapshot(const SnapshotPtr& snapshot) { snapshot_ = snapshot; }
    void setEvidence(const EvidencePlaces& places) { evidence_ = places; }
    void setBefore(const SnapshotPtr& before) { before_ = before; }
    double selectTest(const QPointF&, bool, QVariant*) const override { return -1.0; }

protected:
    void draw(QCPPainter* painter) override;

private:
    QPointF place(double x, double percent) const;
    void drawEvidence(QCPPainter& painter) const;
    void drawDots(QCPPainter& painter) const;
    void drawMeans(QCPPainter& painter) const;
    bool showsExtremes() const;
    void drawExtremes(QCPPainter& painter) const;
    void drawWords(QCPPainter& painter) const;
    void drawWord(QCPPainter& painter, const InstantReading& i, const QString& word, const QColor& color) const;
    void drawBefore(QCPPainter& painter) const;
    void drawLegend(QCPPainter& painter) const;
    void makeStamps(double pixelRatio);

    SnapshotPtr snapshot_, before_;
    EvidencePlaces evidence_;
    QPixmap toMark_, toSpace_;
};

}  // namespace trueunit
