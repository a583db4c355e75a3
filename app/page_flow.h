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

class QPdfWriter;

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

struct PageParagraph {
    QString text;
    QFont font;
    QColor color;
};

enum class Paper { a4, letter };

// Pages of paper filled from top to bottom, as pictures or into a PDF. The column of text is as wide on either paper.
// All lengths are millimetres of paper, type sizes are points; what no longer fits goes on to the next page, so nothing
// collides and nothing is left out.
class PageFlow {
public:
    static constexpr double kDotsPerInch = 200.0;
    static constexpr double kTop = 13.0, kFoot = 17.0;
    static constexpr double kTextWidth = 178.0;

    explicit PageFlow(Paper paper = Paper::a4, bool tight = false);
    // Into a PDF of that paper and resolution; what a picture gets from finish() is known before.
    PageFlow(Paper paper, bool tight, QPdfWriter& pdf, QString foot, std::size_t pages);
    ~PageFlow();

    static QFont font(double points, int weight = QFont::Normal);
    double dots(double millimetres) const { return millimetres * kDotsPerInch / 25.4; }

    double room() const { return height_ - kFoot - y_; }  // left of the present page
    void reserve(double height);  // starts a page when less than this is left of the present one
    void space(double height) { y_ += height; }
    void heading(const QString& text, double left = 0.0);
    void rule();
    void breakPage() { reserve(height_); }
    bool tight() const { return tight_; }  // set closer, so that a few lines need no page of their own
    bool endsWithLittle() const;           // the last of several pages holds a few lines only
    // Wraps at words, inside one only when it is longer than the line; returns nothing lost to the edge.
    void paragraph(const QString& text, const QFont& font, const QColor& color, double left = 0.0,
                   double width = kTextWidth);
    double paragraphHeight(const QString& text, const QFont& font, double width = kTextWidth) const;
    // On one page when they fit on a page at all, and under their heading if they have one.
    void together(const std::vector<PageParagraph>& paragraphs, const QString& heading = {});
    // A short label, and its text hanging beside it from the given place on; they begin on one page.
    void beside(const QString& label, const QString& text, double points, double left);
    void table(const std::vector<PageColumn>& columns, const std::vector<PageRow>& rows, double left = 0.0);
    double tableHeight(std::size_t rows) const;
    bool boxes() const { return boxes_; }  // some character had no font on this computer, and stands as a box

    double y() const { return y_; }
    void moveTo(double y) { y_ = y; }
    QPainter& painter() { return *painter_; }
    QRectF area(double left, double width, double height) const;  // at the present place, in dots
    std::vector<QImage> finish(const QString& foot);              // the foot gets "page 1 of 2" beside it
    void finishPdf();

private:
    void newPage();
    double rowHeight() const { return tight_ ? 4.3 : 4.7; }
    double headingHeight() const { return tight_ ? 7.5 : 9.1; }
    double lineSpacing() const { return tight_ ? 1.02 : 1.08; }
    void cell(const PageColumn& column, double left, const QString& text, const QFont& font, const QColor& color);

    void drawFoot(QPainter& painter, const QString& foot, std::size_t page, std::size_t pages) const;

    double width_, height_, margin_;  // of the paper
    bool tight_;
    QPdfWriter* pdf_ = nullptr;
    QString foot_;
    std::size_t page_ = 0, pagesKnown_ = 0;  // of the PDF
    std::vector<QImage> pages_;
    std::unique_ptr<QPainter> painter_;
    double y_ = 0.0;
    bool boxes_ = false;
};

}  // namespace trueunit
