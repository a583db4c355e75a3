// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/note_editor.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "widgets/theme.h"

namespace trueunit {

NoteEditor::NoteEditor(QWidget* parent)
    : QFrame(parent), words_(new QLineEdit(this)), delete_(new QPushButton(tr("Delete"), this)) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    QPalette colors = palette();
    colors.setColor(QPalette::Window, theme::kPanel);
    setPalette(colors);
    auto* keep = new QPushButton(tr("Keep"), this);
    words_->setMinimumWidth(240);
    words_->setMaxLength(400);
    words_->setPlaceholderText(tr("what is seen here"));
    words_->setAccessibleName(tr("Words of the note"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 6, 6, 6);
    row->addWidget(words_, 1);
    row->addWidget(keep);
    row->addWidget(delete_);
    const auto keepIt = [this] {
        leave();
        emit kept(text());
    };
    connect(words_, &QLineEdit::returnPressed, this, keepIt);
    connect(keep, &QPushButton::clicked, this, keepIt);
    connect(delete_, &QPushButton::clicked, this, [this] {
        leave();
        emit deleted();
    });
    hide();
}

void NoteEditor::open(const QString& text, bool isNew) {
    words_->setText(text);
    delete_->setVisible(!isNew);
    adjustSize();
    const int room = parentWidget()->width();
    move(std::max(0, (room - width()) / 2), 34);  // below the panel's title
    show();
    raise();
    words_->setFocus();
    words_->selectAll();
}

QString NoteEditor::text() const { return words_->text().trimmed(); }

void NoteEditor::leave() {
    hide();
    parentWidget()->setFocus();
}

void NoteEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace trueunit
