// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_pages.h"

#include <QBuffer>
#include <QColor>
#include <QCoreApplication>
#include <QFile>
#include <QImageReader>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextList>
#include <QTextTable>
#include <QUrl>
#include <utility>

#include "widgets/theme.h"

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepHelp() { Q_INIT_RESOURCE(help); }

namespace trueunit {

namespace {

constexpr int kWidestDrawing = 660;
constexpr int kLineHeight = 115;  // percent of what the font asks for

// "de/bias.md" in a German window; a page that is missing there is shown in English.
QString inOurLanguage(const QString& page) {
    const QString folder = QCoreApplication::translate("trueunit::HelpWindow", "en", "folder of the help's language");
    const QString name = folder + QLatin1Char('/') + page.section(QLatin1Char('#'), 0, 0);
    return QFile::exists(QStringLiteral(":/help/") + name) ? folder + QLatin1Char('/') + page : page;
}

// "Bare contacts, interrupted tone" is linked to as "bare-contacts-interrupted-tone".
QString slugOf(const QString& heading) {
    QString slug;
    for (const QChar c : heading.toLower()) {
        if (c.isLetterOrNumber() || c == QLatin1Char('-')) slug += c;
        if (c.isSpace()) slug += QLatin1Char('-');
    }
    return slug;
}

// A rule under each row and none about the whole.
void ruleTable(QTextTable& table) {
    QTextTableFormat format = table.format();
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
            rule.setBottomBorderBrush(row == 0 ? theme::kSecondary : theme::kBorder);
            cell.setFormat(rule);
        }
}

// What a page read from plain text lacks: room between paragraphs, quiet rules in tables.
void layOut(QTextDocument& page) {
    QTextCursor cursor(&page);
    QTextTable* laidOut = nullptr;
    cursor.beginEditBlock();  // laid out once at the end, not after each block
    for (QTextBlock block = page.begin(); block.isValid(); block = block.next()) {
        cursor.setPosition(block.position());
        QTextBlockFormat format = block.blockFormat();
        const bool drawing = block.text().contains(QChar::ObjectReplacementCharacter);
        if (!drawing) format.setLineHeight(kLineHeight, QTextBlockFormat::ProportionalHeight);
        if (!cursor.currentTable()) format.setBottomMargin(block.textList() ? 4 : 9);
        if (format.headingLevel() > 1) format.setTopMargin(14);
        cursor.setBlockFormat(format);
        if (!cursor.currentTable() || cursor.currentTable() == laidOut) continue;
        laidOut = cursor.currentTable();
        ruleTable(*laidOut);
    }
    cursor.endEditBlock();
}

// The drawings are kept in the colours of a light window, which those of this one take the places of.
QByteArray inOurColours(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    QByteArray drawing = file.readAll();
    const std::pair<const char*, QColor> kDrawn[] = {
        {"#fffdf8", theme::kPanel}, {"#1e2a32", theme::kInk},  {"#5f6b74", theme::kSecondary},
        {"#b8431a", theme::kOut},   {"#0b5e8a", theme::kBlue}, {"#d7e6ee", theme::kTrack},
    };
    for (const auto& [drawn, ours] : kDrawn) drawing.replace(drawn, ours.name().toLatin1());
    return drawing;
}

// No line ends within a product, a sum in brackets, or between a number and its unit.
QString formulasWhole(QString page) {
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
    page.replace(sum, kSpace + QStringLiteral("\\1") + kSpace);
    return page.replace(unit, kSpace);
}

}  // namespace

HelpPages::HelpPages(QWidget* parent) : QTextBrowser(parent) {
    keepHelp();
    setAccessibleName(tr("Help page"));
    setFont(theme::text(theme::kTextPx + 1));
    document()->setDocumentMargin(16);
    setSearchPaths({QStringLiteral("qrc:/help")});
    QPalette paper = palette();
    paper.setColor(QPalette::Base, theme::kPanel);
    paper.setColor(QPalette::Text, theme::kInk);
    paper.setColor(QPalette::Link, theme::kBlue);
    setPalette(paper);
    connect(this, &QTextBrowser::sourceChanged, this, [this](const QUrl& url) {  // on the way back as well
        layOut(*document());
        emit opened(url.fileName());
    });
}

void HelpPages::open(const QString& page) { setSource(QUrl(QStringLiteral("qrc:/help/") + inOurLanguage(page))); }

void HelpPages::doSetSource(const QUrl& url, QTextDocument::ResourceType type) {
    if (url.scheme() != QLatin1String("qrc") && !url.isRelative()) return;  // no page leads out of the program
    const QUrl whole = source().resolved(url);
    QTextBrowser::doSetSource(url, type);
    scrollToHeading(whole.fragment());
}

void HelpPages::scrollToHeading(const QString& slug) {
    if (slug.isEmpty()) return;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0 || slugOf(block.text()) != slug) continue;
        moveCursor(QTextCursor::End);  // so that the heading comes to the top
        setTextCursor(QTextCursor(block));
        return;
    }
}

// A page less two lines, so that a line cut at the edge is read whole on the next page.
void HelpPages::keyPressEvent(QKeyEvent* event) {
    const bool up = event == QKeySequence::MoveToPreviousPage, down = event == QKeySequence::MoveToNextPage;
    QScrollBar& bar = *verticalScrollBar();
    if (event == QKeySequence::MoveToStartOfDocument) return bar.setValue(bar.minimum());
    if (event == QKeySequence::MoveToEndOfDocument) return bar.setValue(bar.maximum());
    if (!up && !down) return QTextBrowser::keyPressEvent(event);
    const int page = viewport()->height() - 2 * fontMetrics().lineSpacing() * kLineHeight / 100;
    bar.setValue(bar.value() + (up ? -page : page));
    event->accept();
}

// A drawing is made at the screen's own resolution.
QVariant HelpPages::loadResource(int type, const QUrl& name) {
    if (type == QTextDocument::MarkdownResource)
        return formulasWhole(QString::fromUtf8(QTextBrowser::loadResource(type, name).toByteArray()));
    if (type != QTextDocument::ImageResource) return QTextBrowser::loadResource(type, name);
    QByteArray drawn = inOurColours(QLatin1Char(':') + source().resolved(name).path());
    QBuffer buffer(&drawn);
    QImageReader reader(&buffer);
    QSize size = reader.size();
    if (size.isEmpty()) return {};
    if (size.width() > kWidestDrawing) size.scale(kWidestDrawing, size.height(), Qt::KeepAspectRatio);
    reader.setScaledSize(size * devicePixelRatioF());
    QImage image = reader.read();
    image.setDevicePixelRatio(devicePixelRatioF());
    return image;
}

}  // namespace trueunit
