// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/note_editor.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr int kLetters = 46, kLines = 2, kMostLines = 6, kMostLetters = 400;
constexpr int kNoteFrame = 14;  // pixels of the field about its lines
constexpr int kNoteEdge = 6;

}  // namespace

NoteEditor::NoteEditor(QWidget* grid, QWidget* parent)
    : QFrame(parent),
      grid_(grid),
      where_(new QLabel(this)),
      words_(new QPlainTextEdit(this)),
      delete_(new QPushButton(tr("Delete"), this)) {
    auto* keep = new QPushButton(tr("Attach"), this);
    for (QWidget* part : {static_cast<QWidget*>(words_), static_cast<QWidget*>(keep), static_cast<QWidget*>(delete_)})
        part->setFont(theme::text(theme::kTextPx));
    words_->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    words_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    words_->setTabChangesFocus(true);
    words_->installEventFilter(this);
    words_->setPlaceholderText(tr("what is seen here"));
    words_->setAccessibleName(tr("Words of the note"));
    auto* row = new QHBoxLayout;
    row->addWidget(words_, 1);
    row->addWidget(keep);
    row->addWidget(delete_);
    where_->setFont(theme::text(theme::kSmallPx));
    where_->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 6, 6, 6);
    column->setSpacing(4);
    column->addWidget(where_);
    column->addLayout(row);
    connect(words_, &QPlainTextEdit::textChanged, this, &NoteEditor::grow);
    connect(keep, &QPushButton::clicked, this, &NoteEditor::keep);
    connect(delete_, &QPushButton::clicked, this, [this] {
        leave();
        emit deleted();
    });
    hide();
}

void NoteEditor::open(const QString& text, bool isNew, const QString& where) {
    where_->setText(where);
    at_ = place_.value_or(grid_->rect().center());
    place_.reset();
    words_->setPlainText(text);
    delete_->setVisible(!isNew);
    show();
    grow();
    raise();
    words_->setFocus();
    if (isNew)
        words_->moveCursor(QTextCursor::End);
    else
        words_->selectAll();
}

// With what is written, so that nothing of it is out of sight.
void NoteEditor::grow() {
    const int lines = std::clamp(qRound(words_->document()->size().height()), kLines, kMostLines);
    words_->setFixedHeight(lines * words_->fontMetrics().lineSpacing() + kNoteFrame);
    words_->setFixedWidth(kLetters * words_->fontMetrics().averageCharWidth());
    const auto least = [this] {
        layout()->activate();  // so that it knows the new width
        return layout()->minimumSize().width();
    };
    const int over = least() - grid_->width();
    if (over > 0) words_->setFixedWidth(words_->minimumWidth() - over);
    const int wide = least();
    resize(wide, layout()->heightForWidth(wide));
    placeBelow(grid_->mapTo(parentWidget(), at_).x());
}

void NoteEditor::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(theme::kPanel);
    painter.setPen(theme::pen(theme::kBlue));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
}

// Under what it speaks of; where the grid reaches below the window's edge, at that edge.
void NoteEditor::placeBelow(int x) {
    const QRect grid(grid_->mapTo(parentWidget(), QPoint()), grid_->size());
    const int most = parentWidget()->height() - height() - kNoteEdge;
    move(std::clamp(x - width() / 2, grid.left(), std::max(grid.left(), grid.right() - width())),
         std::min(grid.bottom() + 1, most));
}

QString NoteEditor::text() const { return words_->toPlainText().simplified().left(kMostLetters); }

void NoteEditor::keep() {
    leave();
    emit kept(text());
}

bool NoteEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == words_ && event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();  // leaves the slip, not the view
        return true;
    }
    if (watched == words_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) return keep(), true;
    }
    return QFrame::eventFilter(watched, event);
}

void NoteEditor::leave() {
    hide();
    grid_->setFocus();
}

void NoteEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace trueunit
