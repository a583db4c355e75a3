// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_window.h"

#include <QBuffer>
#include <QColor>
#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QFile>
#include <QHBoxLayout>
#include <QImageReader>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextList>
#include <QTextTable>
#include <QUrl>
#include <algorithm>
#include <utility>

#include "app/find_on_page.h"
#include "app/window_memory.h"
#include "widgets/theme.h"

// The resource sits in a static library, where nothing else would make the linker keep it.
static void keepHelp() { Q_INIT_RESOURCE(help); }

namespace trueunit {

namespace {

constexpr int kContentsWidth = 200;
constexpr int kWidestDrawing = 660;
constexpr int kLineHeight = 115;  // percent of what the font asks for

struct Page {
    const char* file;
    const char* title;
};

const Page kPages[] = {
    {"index.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Contents")},
    {"connect.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Connecting a loop")},
    {"battery.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Off the loop: battery")},
    {"tone.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Off the loop: tone")},
    {"quench.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Live loop: quench")},
    {"optocoupler.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Live loop: optocoupler")},
    {"transformer.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Live loop: transformer")},
    {"speed.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Speed and unit")},
    {"bias.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Bias")},
    {"end.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "End distortion")},
    {"gross.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Start-stop, gross")},
    {"synchronous.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Start-stop, synchronous")},
    {"instants.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Displacement by instant")},
    {"characteristic.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Characteristic")},
    {"cyclic.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Cyclic")},
    {"scatter.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Scatter (fortuitous)")},
    {"shaft.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Shaft")},
    {"stop.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Stop")},
    {"margin.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Receiving margin")},
    {"bounce.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Contact bounce")},
    {"findings.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Findings")},
    {"adjusting.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Adjusting")},
    {"tape.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Tape and text")},
    {"cards.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Cards and limits")},
    {"logbook.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Logbook")},
    {"check.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Self-check")},
    {"glossary.md", QT_TRANSLATE_NOOP("trueunit::HelpWindow", "Glossary")},
};

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

}  // namespace

namespace {

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

QStringList HelpWindow::pageNames() {
    QStringList names;
    for (const Page& page : kPages) names += QString::fromLatin1(page.file);
    return names;
}

// Of the widget or of what it stands in.
QString HelpWindow::pageUnder(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget())
        if (const QString page = widget->property(theme::kHelpPage).toString(); !page.isEmpty()) return page;
    return QStringLiteral("index.md");
}

HelpWindow::HelpWindow(QWidget* parent)
    : QDialog(parent), contents_(new QListWidget), pages_(new HelpPages), find_(new FindOnPage(pages_)) {
    setWindowTitle(tr("Help"));
    contents_->setAccessibleName(tr("Contents of the help"));
    contents_->setFixedWidth(kContentsWidth);
    contents_->setFont(theme::text(theme::kTextPx));
    contents_->setSpacing(2);
    for (const Page& page : kPages) contents_->addItem(tr(page.title));
    connect(contents_, &QListWidget::currentRowChanged, this, [this](int row) {
        const QString file = QString::fromLatin1(kPages[std::max(0, row)].file);
        if (pages_->source().fileName() != file) pages_->open(file);
    });
    connect(contents_, &QListWidget::itemClicked, this, [this] { pages_->verticalScrollBar()->setValue(0); });
    connect(pages_, &HelpPages::opened, this, [this](const QString& page) {
        contents_->setCurrentRow(int(pageNames().indexOf(page)));
        find_->say({});
    });
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* back = buttons->addButton(tr("Back"), QDialogButtonBox::ActionRole);
    back->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Left));
    back->setEnabled(false);
    back->setIcon({});
    buttons->button(QDialogButtonBox::Close)->setIcon({});
    connect(pages_, &QTextBrowser::backwardAvailable, back, &QWidget::setEnabled);
    connect(back, &QPushButton::clicked, pages_, &QTextBrowser::backward);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* row = new QHBoxLayout;
    row->addWidget(contents_);
    auto* right = new QVBoxLayout;
    right->addWidget(find_);
    right->addWidget(pages_, 1);
    row->addLayout(right, 1);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    column->addWidget(buttons);
    resizeOnScreen(*this, {960, 740});
    pages_->open(QStringLiteral("index.md"));
}

// Enter in the field finds on; no button takes it.
void HelpWindow::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter || !find_->field().hasFocus()) QDialog::keyPressEvent(event);
}

void openHelpBeside(QWidget* window, const QString& page) {
    auto* help = window->findChild<HelpWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!help) help = new HelpWindow(window);
    if (help->pages().source().fileName() != page) help->pages().open(page);  // else it stays where it was read to
    help->show();
    help->raise();
    help->activateWindow();
    help->pages().setFocus();  // the keys turn the page that was asked for
}

QPushButton* makeHelpButton(QWidget* window, const QString& page) {
    auto* button = new QPushButton(HelpWindow::tr("Help"), window);
    button->setShortcut(Qt::Key_F1);
    button->setToolTip(HelpWindow::tr("What this window is for (F1)"));
    button->setAutoDefault(false);
    window->setProperty(theme::kHelpPage, page);
    QObject::connect(button, &QPushButton::clicked, window, [window, page] { openHelpBeside(window, page); });
    return button;
}

}  // namespace trueunit
