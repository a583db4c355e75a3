// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/page_flow.h"

#include <QGlyphRun>
#include <QLocale>
#include <QPdfWriter>
#include <QTextLayout>
#include <algorithm>

#include "app/report_ink.h"
#include "widgets/figures.h"
#include "widgets/words.h"

namespace trueunit {

using namespace report_ink;

namespace {
const QColor kHair(0xc9, 0xc6, 0xbb);
constexpr double kTablePoints = 8.0;
constexpr double kPointAt = 0.6;        // of the column's width: where decimal points stand
constexpr double kLittle = 125.0;       // of a last page, from its top: not worth a page
constexpr double kUnderHeading = 14.0;  // a heading never stands alone at the foot
constexpr double kTogether = 70.0;      // a paragraph up to this is never broken across pages

// The lines of one line as it was typed; scripts that run from right to left begin at the right.
void layOutLines(QTextLayout& layout, double dots) {
    const bool rightToLeft = layout.text().isRightToLeft();
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    option.setAlignment(rightToLeft ? Qt::AlignRight : Qt::AlignLeft);
    layout.setTextOption(option);
    layout.setCacheEnabled(true);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) line.setLineWidth(dots);
    layout.endLayout();
}

}  // namespace

PageFlow::PageFlow(Paper paper, bool tight)
    : width_(paper == Paper::a4 ? 210.0 : 215.9),
      height_(paper == Paper::a4 ? 297.0 : 279.4),
      margin_((width_ - kTextWidth) / 2.0),
      tight_(tight) {
    newPage();
}

PageFlow::PageFlow(Paper paper, bool tight, QPdfWriter& pdf, QString foot, std::size_t pages)
    : width_(paper == Paper::a4 ? 210.0 : 215.9),
      height_(paper == Paper::a4 ? 297.0 : 279.4),
      margin_((width_ - kTextWidth) / 2.0),
      tight_(tight),
      pdf_(&pdf),
      foot_(std::move(foot)),
      pagesKnown_(pages) {
    newPage();
}

PageFlow::~PageFlow() { painter_.reset(); }  // before the image it paints on

QFont PageFlow::font(double points, int weight) {
    QFont f;
    f.setFamilies({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    f.setPixelSize(std::max(1, qRound(points * kDotsPerInch / 72.0)));
    f.setWeight(static_cast<QFont::Weight>(weight));
    return f;
}

void PageFlow::newPage() {
    y_ = kTop;
    if (pdf_) {
        if (!painter_)
            painter_ = std::make_unique<QPainter>(pdf_);
        else
            pdf_->newPage();
        drawFoot(*painter_, foot_, ++page_, pagesKnown_);
        return;
    }
    painter_.reset();
    QImage page(qRound(dots(width_)), qRound(dots(height_)), QImage::Format_RGB32);
    page.fill(Qt::white);
    page.setDotsPerMeterX(qRound(kDotsPerInch / 0.0254));
    page.setDotsPerMeterY(qRound(kDotsPerInch / 0.0254));
    pages_.push_back(std::move(page));
    painter_ = std::make_unique<QPainter>(&pages_.back());
    painter_->setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
}

void PageFlow::reserve(double height) {
    if (y_ + height > height_ - kFoot && y_ > kTop) newPage();
}

QRectF PageFlow::area(double left, double width, double height) const {
    return {dots(margin_ + left), dots(y_), dots(width), dots(height)};
}

void PageFlow::heading(const QString& text, double left) {
    reserve(kUnderHeading);
    y_ += headingHeight();
    painter_->setFont(font(10.0, QFont::DemiBold));
    painter_->setPen(kInk);
    painter_->drawText(QPointF(dots(margin_ + left), dots(y_ - (tight_ ? 1.6 : 2.2))), text);
}

void PageFlow::rule() {
    painter_->setPen(QPen(kHair, dots(0.2)));
    painter_->drawLine(QPointF(dots(margin_), dots(y_)), QPointF(dots(margin_ + kTextWidth), dots(y_)));
}

void PageFlow::paragraph(const QString& text, const QFont& f, const QColor& color, double left, double width) {
    if (const double whole = paragraphHeight(text, f, width); whole < kTogether) reserve(whole);
    for (const QString& typed : text.trimmed().split(QLatin1Char('\n'))) {
        QTextLayout layout(unbroken(typed), f, painter_->device());
        layOutLines(layout, dots(width));
        for (const QGlyphRun& run : layout.glyphRuns()) boxes_ = boxes_ || run.glyphIndexes().contains(0);
        for (int i = 0; i < layout.lineCount(); ++i) {
            const QTextLine line = layout.lineAt(i);
            const double height = line.height() * 25.4 / kDotsPerInch;
            reserve(height);
            painter_->setFont(f);
            painter_->setPen(color);
            line.draw(painter_.get(), QPointF(dots(margin_ + left), dots(y_) - line.y()));
            y_ += height * lineSpacing();
        }
    }
}

double PageFlow::paragraphHeight(const QString& text, const QFont& f, double width) const {
    double height = 0.0;
    for (const QString& typed : text.trimmed().split(QLatin1Char('\n'))) {
        QTextLayout layout(unbroken(typed), f, painter_->device());
        layOutLines(layout, dots(width));
        for (int i = 0; i < layout.lineCount(); ++i) height += layout.lineAt(i).height();
    }
    return height * lineSpacing() * 25.4 / kDotsPerInch;
}

void PageFlow::together(const std::vector<PageParagraph>& paragraphs, const QString& title) {
    double whole = title.isEmpty() ? 0.0 : headingHeight();
    for (const PageParagraph& p : paragraphs) whole += paragraphHeight(p.text, p.font);
    reserve(title.isEmpty() ? whole : std::max(whole, kUnderHeading));
    if (!title.isEmpty()) heading(title);
    for (const PageParagraph& p : paragraphs) paragraph(p.text, p.font, p.color);
}

void PageFlow::beside(const QString& label, const QString& text, double points, double left) {
    const double whole = paragraphHeight(text, font(points), kTextWidth - left);
    reserve(whole < kTogether ? std::max(whole, 5.0) : 6.0);
    const double top = y_;
    paragraph(label, font(points, QFont::DemiBold), kInk, 0.0, left - 0.5);
    const double below = y_;
    y_ = top;
    paragraph(text, font(points), kInk, left, kTextWidth - left);
    if (y_ > top) y_ = std::max(y_, below);  // on the same page
}

bool PageFlow::endsWithLittle() const { return (pdf_ ? page_ : pages_.size()) > 1 && y_ < kTop + kLittle; }

double PageFlow::tableHeight(std::size_t rows) const { return rowHeight() * static_cast<double>(rows + 1) + 0.8; }

void PageFlow::cell(const PageColumn& column, double left, const QString& text, const QFont& f, const QColor& color) {
    painter_->setFont(f);
    painter_->setPen(color);
    const QFontMetricsF metrics(f, painter_->device());
    const double x = dots(margin_ + left), width = dots(column.width), baseline = dots(y_ + 3.4);
    const QString shown = figuresWidth(metrics, text) > width ? metrics.elidedText(text, Qt::ElideRight, width) : text;
    double start = x;
    if (column.align == PageColumn::Align::right) {
        start = x + width - figuresWidth(metrics, shown);
    } else if (column.align == PageColumn::Align::point) {
        const auto point = shown.indexOf(QLocale().decimalPoint());
        start = x + width * kPointAt - figuresWidth(metrics, point < 0 ? shown : shown.left(point));
    }
    drawFigures(*painter_, {start, baseline}, shown);
}

void PageFlow::table(const std::vector<PageColumn>& columns, const std::vector<PageRow>& rows, double left) {
    double width = 0.0;
    for (const PageColumn& c : columns) width += c.width;
    double x = left;
    for (const PageColumn& c : columns) {
        PageColumn title = c;
        if (c.align == PageColumn::Align::point) {  // over its figures: ends where two decimal places would
            title.align = PageColumn::Align::right;
            title.width = c.width * kPointAt + 3.5;
        }
        cell(title, x, c.title, font(7.0), kFaint);
        x += c.width;
    }
    y_ += rowHeight() + 0.4;
    for (const PageRow& row : rows) {
        painter_->setPen(QPen(kHair, dots(0.15)));
        painter_->drawLine(QPointF(dots(margin_ + left), dots(y_)), QPointF(dots(margin_ + left + width), dots(y_)));
        x = left;
        for (std::size_t i = 0; i < columns.size() && i < static_cast<std::size_t>(row.cells.size()); ++i) {
            cell(columns[i], x, row.cells[static_cast<qsizetype>(i)],
                 font(kTablePoints, row.strong ? QFont::DemiBold : QFont::Normal), row.strong ? kOut : kInk);
            x += columns[i].width;
        }
        y_ += rowHeight();
    }
    y_ += 0.4;
}

void PageFlow::drawFoot(QPainter& p, const QString& foot, std::size_t page, std::size_t pages) const {
    p.setFont(font(7.5));
    p.setPen(kFaint);
    const QRectF line(dots(margin_), dots(height_ - 12.0), dots(kTextWidth), dots(5.0));
    const QString number = Words::tr("page %1 of %2").arg(page).arg(pages);
    const double room = line.width() - p.fontMetrics().horizontalAdvance(number) - dots(4.0);
    p.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, p.fontMetrics().elidedText(foot, Qt::ElideRight, qRound(room)));
    p.drawText(line, Qt::AlignRight | Qt::AlignVCenter, number);
}

std::vector<QImage> PageFlow::finish(const QString& foot) {
    painter_.reset();
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        QPainter p(&pages_[i]);
        p.setRenderHint(QPainter::TextAntialiasing);
        drawFoot(p, foot, i + 1, pages_.size());
    }
    return std::move(pages_);
}

void PageFlow::finishPdf() { painter_.reset(); }

}  // namespace trueunit
