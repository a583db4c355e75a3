// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_pages.h"

#include <QColor>
#include <QCoreApplication>
#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QScrollBar>
#include <QTextBlock>
#include <QUrl>
#include <utility>

#include "app/help_layout.h"
#include "widgets/theme.h"

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepHelp() { Q_INIT_RESOURCE(help); }

namespace trueunit {

namespace {

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
        layOutHelp(*document(), {theme::kSecondary, theme::kBorder});
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
    const int page = viewport()->height() - 2 * fontMetrics().lineSpacing() * kHelpLineHeight / 100;
    bar.setValue(bar.value() + (up ? -page : page));
    event->accept();
}

// A drawing is made at the screen's own resolution.
QVariant HelpPages::loadResource(int type, const QUrl& name) {
    if (type == QTextDocument::MarkdownResource)
        return helpFormulasWhole(QString::fromUtf8(QTextBrowser::loadResource(type, name).toByteArray()));
    if (type != QTextDocument::ImageResource) return QTextBrowser::loadResource(type, name);
    return helpDrawing(inOurColours(QLatin1Char(':') + source().resolved(name).path()), devicePixelRatioF());
}

}  // namespace trueunit
