// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QImage>
#include <QPainter>
#include <QString>
#include <QStringList>
#include <QVector>
#include <memory>
#include <vector>

namespace trueunit {

// One column of a table on paper; widths in millimetres.
struct PageColumn {
    double width = 20.0;
    enum class Align { left, right, point } align = Align::left;  // point: decimal points stand under each other
    QString title;
};

// How a row is set: rows of a reading out of limits are strong and coloured, and say so in words as well.
struct PageRow {
    QStringList cells;
    bool strong = false;
};

// A4 pages filled from top to bottom. All lengths are millimetres of paper, type sizes are points; what no longer
// fits goes on to the next page, so nothing collides and nothing is left out.
class PageFlow {
public:
    static constexpr double kDotsPerInch = 200.0;
    static constexpr double kWidth = 210.0, kHeight = 297.0;
    static constexpr double kMargin = 16.0, kTop = 13.0, kFoot = 17.0;
    static constexpr double kTextWidth = kWidth - 2.0 * kMargin;

    PageFlow();
    ~PageFlow();

    static QFont font(double points, int weight = QFont::Normal);
    double dots(double millimetres) const { return millimetres * kDotsPerInch / 25.4; }

    void reserve(double height);  // starts a page when less than this is left of the present one
    void space(double height) { y_ += height; }
    void heading(const QString& text, double left = 0.0);
    void rule();
    // Wraps at words, inside one only when it is longer than the line; returns nothing lost to the edge.
    void paragraph(const QString& text, const QFont& font, const QColor& color, double left = 0.0,
                   double width = kTextWidth);
    void table(const std::vector<PageColumn>& columns, const std::vector<PageRow>& rows, double left = 0.0);
    double tableHeight(std::size_t rows) const;

    double y() const { return y_; }
    void moveTo(double y) { y_ = y; }
    QPainter& painter() { return *painter_; }
    QRectF area(double left, double width, double height) const;  // at the present place, in dots
    std::vector<QImage> finish(const QString& foot);              // the foot gets "page 1 of 2" beside it

private:
    void newPage();
    void cell(const PageColumn& column, double left, const QString& text, const QFont& font, const QColor& color);

    std::vector<QImage> pages_;
    std::unique_ptr<QPainter> painter_;
    double y_ = 0.0;
};

}  // namespace trueunit
