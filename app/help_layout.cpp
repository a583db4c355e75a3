// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_layout.h"

#include <QBuffer>
#include <QByteArray>
#include <QImageReader>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextList>
#include <QTextTable>

namespace trueunit {

namespace {

// A rule under each row and none about the whole.
void ruleTable(QTextTable& table, const HelpRules& rules) {
    QTextTableFormat format = table.format();
    format.setHeaderRowCount(1);
    format.setBorderCollapse(true);  // else the rules of cells are not drawn
    format.setBorder(0);
    format.setCellPadding(4);
    format.setBottomMargin(12);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 99));
    table.setFormat(format);
    for (int row = 0; row < table.rows(); ++row)
        for (int column = 0; column < table.columns(); ++column) {
            QTextTableCell cell = table.cellAt(row, column);
            QTextTableCellFormat rule = cell.format().toTableCellFormat();
            rule.setBottomBorder(1);
            rule.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
            rule.setBottomBorderBrush(row == 0 ? rules.head : rules.row);
            cell.setFormat(rule);
        }
}

}  // namespace

void layOutHelp(QTextDocument& page, const HelpRules& rules) {
    QTextCursor cursor(&page);
    QTextTable* laidOut = nullptr;
    cursor.beginEditBlock();  // laid out once at the end, not after each block
    for (QTextBlock block = page.begin(); block.isValid(); block = block.next()) {
        cursor.setPosition(block.position());
        QTextBlockFormat format = block.blockFormat();
        const bool drawing = block.text().contains(QChar::ObjectReplacementCharacter);
        if (!drawing) format.setLineHeight(kHelpLineHeight, QTextBlockFormat::ProportionalHeight);
        if (!cursor.currentTable()) format.setBottomMargin(block.textList() ? 4 : 9);
        if (format.headingLevel() > 1) format.setTopMargin(14);
        cursor.setBlockFormat(format);
        if (!cursor.currentTable() || cursor.currentTable() == laidOut) continue;
        laidOut = cursor.currentTable();
        ruleTable(*laidOut, rules);
    }
    cursor.endEditBlock();
}

QString helpFormulasWhole(QString page) {
    static const QString kSpace(QChar::Nbsp);
    static const QRegularExpression times(QStringLiteral("[ \\n]x[ \\n](?=\\S)")),
        sum(QStringLiteral("(?<=[\\d)\u03a9]) ([+-])[ \\n](?=[\\d(])")),
        unit(QStringLiteral("(?<=\\d)[ \\n](?=(?:[m\u00b5kM]?(?:A|V|s|W|J|F|Hz|\u03a9)|%|H)(?![\\w]))"),
             QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression quotient(QStringLiteral("(?<=[\\d)])/(?=[\\d(])")),
        minus(QStringLiteral("\\(-(?=[\\d(])"));
    static const QChar kJoin(0x2060);
    page.replace(quotient, QStringLiteral("/") + kJoin);
    page.replace(minus, QStringLiteral("(-") + kJoin);
    page.replace(times, kSpace + QChar(0xd7) + kSpace);
    page.replace(
        sum, kSpace + QStringLiteral("\\1") + kJoin + kSpace);  // behind a hyphen a line may end, even before a space
    return page.replace(unit, kSpace);
}

QImage helpDrawing(QByteArray svg, double scale, int widest) {
    QBuffer buffer(&svg);
    QImageReader reader(&buffer);
    QSize size = reader.size();
    if (size.isEmpty()) return {};
    if (size.width() > widest) size.scale(widest, size.height(), Qt::KeepAspectRatio);
    reader.setScaledSize(size * scale);
    QImage image = reader.read();
    image.setDevicePixelRatio(scale);
    return image;
}

}  // namespace trueunit
