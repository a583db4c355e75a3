// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tape_text_dialog.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QFontDatabase>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "app/ask_file.h"
#include "app/help_window.h"
#include "core/frame/code_table.h"

namespace trueunit {

namespace {
constexpr qsizetype kLongestShown = 240;  // characters
constexpr qint64 kLargestText = 65536;    // bytes; a loop of tape has some hundred characters
}  // namespace

TapeTextDialog::TapeTextDialog(const std::string& text, const std::string& code, FoundText found, QWidget* parent)
    : QDialog(parent), code_(code), found_(std::move(found)), text_(new QPlainTextEdit), message_(new QLabel) {
    setWindowTitle(tr("Text of the tape"));
    auto* what = new QLabel(tr(
        "What the tape says, once, from any point of it; a new line stands for carriage return and line feed, shifts "
        "are added. With it lost marks and filled spaces are counted. RY, the fox sentence, and a tape that comes "
        "round three times are recognised without; a text learned from the rounds may hide what goes wrong in most of "
        "them."));
    what->setWordWrap(true);
    text_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    text_->setAccessibleName(tr("Text of the tape"));
    text_->setTabChangesFocus(true);
    message_->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole)->setDefault(true);
    buttons->button(QDialogButtonBox::Cancel)->setIcon({});
    auto* file = buttons->addButton(tr("From a &file"), QDialogButtonBox::ActionRole);
    auto* taken = buttons->addButton(tr("As f&ound"), QDialogButtonBox::ActionRole);
    taken->setToolTip(tr("Puts the text that was found into the field, to be corrected there"));
    taken->setVisible(!found_.round.empty());
    auto* forget = buttons->addButton(tr("&Not known"), QDialogButtonBox::ActionRole);
    buttons->addButton(makeHelpButton(this, QStringLiteral("tape.md")), QDialogButtonBox::HelpRole);
    auto* column = new QVBoxLayout(this);
    column->addWidget(what);
    column->addWidget(text_, 1);
    column->addWidget(message_);
    column->addWidget(buttons);
    connect(text_, &QPlainTextEdit::textChanged, this, &TapeTextDialog::count);
    connect(file, &QPushButton::clicked, this, &TapeTextDialog::askFile);
    connect(taken, &QPushButton::clicked, this, [this] { setText(found_.round); });
    connect(forget, &QPushButton::clicked, this, [this] {
        text_->clear();
        accept();
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    setText(text);
    count();
    text_->setFocus();
    resize(560, 320);
}

void TapeTextDialog::setText(const std::string& text) {
    const QChar notKnown(0x2026);  // between its rounds
    text_->setPlainText(QString::fromStdString(text).remove(QLatin1Char('\r')).remove(notKnown));
}

std::string TapeTextDialog::text() const {
    return text_->toPlainText().replace(QLatin1Char('\n'), QLatin1String("\r\n")).toStdString();
}

QString TapeTextDialog::message() const { return message_->text(); }

void TapeTextDialog::count() {
    const CodeTable* table = findCode(code_);
    const auto holes = table ? static_cast<int>(encodeRound(*table, text()).size()) : 0;
    const QString given = text_->toPlainText();
    if (given.isEmpty())
        message_->setText(tr("No text is given: it is looked for in the signal. %1").arg(foundWords()).trimmed());
    else if (holes == 0)
        message_->setText(tr("The code has none of these characters."));
    else if (given.endsWith(u'\n'))
        message_->setText(tr("%1 characters of tape, shifts included.").arg(holes));
    else
        message_->setText(tr("%1 characters of tape, shifts included; a line end that the tape has after them is "
                             "found without being given.")
                              .arg(holes));
}

// "RY or the fox sentence was recognised: “RYRYRY⏎”"
QString TapeTextDialog::foundWords() const {
    if (found_.round.empty()) return found_.how;
    QString round = QString::fromStdString(found_.round).remove(QLatin1Char('\r'));
    round.replace(QLatin1Char('\n'), QChar(0x23ce));
    if (round.size() > kLongestShown) round = round.left(kLongestShown) + QChar(0x2026);
    return found_.how.chopped(1) + QStringLiteral(": ") + tr("\u201c%1\u201d").arg(round);
}

void TapeTextDialog::askFile() {
    const QString path =
        askToOpen(this, tr("Text of the tape"), QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                  tr("Text (*.txt);;All files (*)"));
    if (!path.isEmpty()) take(path);
}

void TapeTextDialog::take(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return message_->setText(tr("\"%1\" cannot be read: %2.").arg(path, file.errorString()));
    if (file.size() > kLargestText)
        return message_->setText(tr("\"%1\" is too large for the text of a tape.").arg(path));
    setText(file.readAll().toStdString());
}

}  // namespace trueunit
