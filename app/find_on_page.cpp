// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/find_on_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QTextEdit>

#include "widgets/theme.h"

namespace trueunit {

FindOnPage::FindOnPage(QTextEdit* page, QWidget* parent)
    : QWidget(parent), page_(page), field_(new QLineEdit), said_(new QLabel) {
    field_->setPlaceholderText(tr("Find on this page (Ctrl+F, Enter for the next)"));
    field_->setAccessibleName(tr("Find on this page"));
    field_->setClearButtonEnabled(true);
    field_->setFont(theme::text(theme::kTextPx));
    said_->setFont(theme::text(theme::kTextPx));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(field_, 1);
    row->addWidget(said_);
    connect(field_, &QLineEdit::textEdited, this, [this] { find(page_->textCursor().selectionStart()); });
    connect(field_, &QLineEdit::returnPressed, this, [this] { find(page_->textCursor().selectionEnd()); });
    connect(new QShortcut(QKeySequence::Find, this), &QShortcut::activated, this, [this] {
        field_->setFocus(Qt::ShortcutFocusReason);
        field_->selectAll();
    });
    say({});
}

QString FindOnPage::said() const { return said_->text(); }

void FindOnPage::say(const QString& words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
    field_->setAccessibleDescription(words);
}

void FindOnPage::find(int from) {
    const QString words = field_->text();
    const auto foundFrom = [&](int at) { return page_->document()->find(words, at); };
    QTextCursor found = words.isEmpty() ? QTextCursor() : foundFrom(from);
    if (found.isNull() && !words.isEmpty()) found = foundFrom(0);
    say(words.isEmpty() || !found.isNull() ? QString() : tr("not on this page"));
    if (found.isNull()) {  // what was found of the word's beginning is no longer marked
        found = page_->textCursor();
        found.setPosition(found.selectionStart());
    }
    page_->setTextCursor(found);
}

}  // namespace trueunit
