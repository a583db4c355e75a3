// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/help_window.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "app/ask_file.h"
#include "app/find_on_page.h"
#include "app/help_pages.h"
#include "app/help_paper.h"
#include "app/message_line.h"
#include "app/report_dialog.h"
#include "app/window_memory.h"
#include "widgets/theme.h"
#include "widgets/told.h"

namespace trueunit {

namespace {

constexpr int kContentsWidth = 200;

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
const QString kContents = QStringLiteral("index.md");

}  // namespace

QStringList HelpWindow::pageNames() {
    QStringList names;
    for (const Page& page : kPages) names += QString::fromLatin1(page.file);
    return names;
}

// Of the widget or of what it stands in.
QString HelpWindow::pageUnder(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget())
        if (const QString page = widget->property(theme::kHelpPage).toString(); !page.isEmpty()) return page;
    return kContents;
}

QString HelpWindow::pageWanted(const QWidget& window) {
    const QString pointed = pageUnder(window.childAt(window.mapFromGlobal(QCursor::pos())));
    return pointed != kContents ? pointed : pageUnder(window.focusWidget());
}

HelpWindow::HelpWindow(QWidget* parent)
    : QDialog(parent),
      contents_(new QListWidget),
      pages_(new HelpPages),
      find_(new FindOnPage(pages_)),
      foot_(new MessageLine(nullptr, 0)) {
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
    auto* paper = buttons->addButton(tr("As PDF\u2026"), QDialogButtonBox::ActionRole);
    paper->setShortcut(QKeySequence::Print);
    paper->setToolTip(tr("This page as a file to print (Ctrl+P)"));
    paper->setIcon({});
    connect(paper, &QPushButton::clicked, this, &HelpWindow::askForPaper);
    connect(pages_, &QTextBrowser::backwardAvailable, back, &QWidget::setEnabled);
    connect(back, &QPushButton::clicked, pages_, &QTextBrowser::backward);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(new QShortcut(Qt::CTRL | Qt::Key_F1, this), &QShortcut::activated, this,
            [this] { pages_->open(QStringLiteral("connect.md")); });  // as in the window it was opened from
    auto* row = new QHBoxLayout;
    row->addWidget(contents_);
    auto* right = new QVBoxLayout;
    right->addWidget(find_);
    right->addWidget(pages_, 1);
    row->addLayout(right, 1);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(foot_, 1);
    foot->addWidget(buttons);
    column->addLayout(foot);
    resizeOnScreen(*this, {960, 740});
    pages_->open(QStringLiteral("index.md"));
}

QString HelpWindow::pageTitle() const { return tr(kPages[std::max(0, contents_->currentRow())].title); }

void HelpWindow::writePage(const QString& path, bool letter) {
    const Outcome written = writeHelpPaper(pages_->source(), pageTitle(), letter ? Paper::letter : Paper::a4, path);
    if (!written) return foot_->warn(told(written.error().text));
    foot_->sayFiled(tr("This page is in %1.").arg(QFileInfo(path).fileName()), path);
}

void HelpWindow::askForPaper() {
    const QString a4 = tr("PDF, A4 (*.pdf)"), letter = tr("PDF, Letter (*.pdf)");
    QString kind;
    QString path =
        askToSave(this, tr("Write this page to"), ReportDialog::freshPath(pageTitle(), {}, QStringLiteral(".pdf")),
                  a4 + QStringLiteral(";;") + letter, &kind);
    if (path.isEmpty()) return;
    if (!path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) path += QStringLiteral(".pdf");
    writePage(path, kind == letter);
}

// Enter in the field finds on; no button takes it.
void HelpWindow::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter || !find_->field().hasFocus()) QDialog::keyPressEvent(event);
}

void openHelpBeside(QWidget* window, const QString& page) {
    auto* help = window->findChild<HelpWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!help) help = new HelpWindow(window);
    help->show();  // first: what is not yet laid out cannot be scrolled to a heading
    if (help->pages().source().fileName() != page) help->pages().open(page);  // else it stays where it was read to
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
