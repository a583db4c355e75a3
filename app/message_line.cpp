// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/message_line.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPainter>
#include <QTimer>
#include <QUrl>
#include <algorithm>

#include "app/elided_label.h"
#include "widgets/theme.h"

namespace trueunit {

namespace {
constexpr int kNewsMs = 20'000, kFiledMs = 60'000;
constexpr int kNarrowSide = 8, kNarrow = 1000;     // as the panels below have it
constexpr int kFrozenPad = 12, kFrozenSlack = 16;  // about the words, so that digits do not move the bar
}  // namespace

MessageLine::MessageLine(QWidget* parent, int side)
    : QWidget(parent),
      side_(side),
      row_(new QHBoxLayout(this)),
      words_(new ElidedLabel(this)),
      folder_(new QLabel(this)),
      frozen_(new ElidedLabel(this)),
      forget_(new QTimer(this)) {
    forget_->setSingleShot(true);
    connect(forget_, &QTimer::timeout, this, &MessageLine::clear);
    setFixedHeight(28);
    row_->setContentsMargins(side_, 0, side_, 0);
    row_->setSpacing(12);
    row_->addWidget(words_, 3);
    row_->addWidget(folder_, 0);
    row_->addWidget(frozen_, 0);
    words_->setFont(theme::text(theme::kTextPx));
    folder_->setFont(theme::text(theme::kTextPx));
    folder_->setTextFormat(Qt::RichText);
    folder_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    connect(folder_, &QLabel::linkActivated, this, [](const QString& link) { QDesktopServices::openUrl(QUrl(link)); });
    folder_->hide();
    frozen_->setFont(theme::text(theme::kTextPx, QFont::DemiBold));
    frozen_->setAlignment(Qt::AlignCenter);
    frozen_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    frozen_->setContentsMargins(kFrozenPad, 0, kFrozenPad, 0);
    QPalette onInk = frozen_->palette();
    onInk.setColor(QPalette::WindowText, theme::kPanel);
    frozen_->setPalette(onInk);
    frozen_->hide();
    setAccessibleName(tr("Messages"));
}

void MessageLine::addTool(QWidget* tool) { row_->addWidget(tool, 0); }

void MessageLine::speak(const QString& lead, const QString& sentence) {
    lead_ = lead;
    sentence_ = sentence;
    folder_->hide();
    words_->setElide(Qt::ElideRight);
    forget_->stop();
    refresh();
}

void MessageLine::say(const QString& sentence) {
    speak({}, sentence);
    forget_->start(kNewsMs);
}

// The triangle tells a warning from news without its colour.
void MessageLine::warn(const QString& sentence) { speak(QStringLiteral("\u25b2 "), sentence); }

QString MessageLine::writtenWords(const QStringList& files) {
    const QString first = QFileInfo(files.front()).fileName();
    if (files.size() == 1) return tr("Report written: %1.").arg(first);
    if (files.size() == 2) return tr("Report written: %1 and 1 page more.").arg(first);
    return tr("Report written: %1 and %2 pages more.").arg(first).arg(files.size() - 1);
}

void MessageLine::sayWritten(const QStringList& files) { sayFiled(writtenWords(files), files.front()); }

// Of long words the middle is left out: the name's end tells files apart.
void MessageLine::sayFiled(const QString& sentence, const QString& file) {
    speak({}, sentence);
    words_->setElide(Qt::ElideMiddle);
    folder_->setText(QStringLiteral("<a href=\"%1\" style=\"color:%2\">%3</a>")
                         .arg(QUrl::fromLocalFile(QFileInfo(file).absolutePath()).toString(QUrl::FullyEncoded),
                              theme::kBlue.name(), tr("open its folder")));
    folder_->setToolTip(QDir::toNativeSeparators(QFileInfo(file).absolutePath()));
    folder_->show();
    forget_->start(kFiledMs);
}

void MessageLine::dropNews() {
    if (lead_.isEmpty()) clear();
}

void MessageLine::clear() { speak({}, {}); }

void MessageLine::showState(const QString& sentence) {
    if (sentence == state_) return;
    state_ = sentence;
    refresh();
}

void MessageLine::showFrozen(const QString& words) {
    frozen_->say(words);
    const int room = std::max(0, width() - 2 * side_) * 2 / 3;
    const int wanted = std::min(room, frozen_->fontMetrics().horizontalAdvance(words) + 2 * kFrozenPad);
    if (wanted > frozen_->width() || wanted < frozen_->width() - kFrozenSlack)
        frozen_->setFixedWidth(std::min(room, wanted + kFrozenSlack / 2));
    if (frozen_->isHidden() == !words.isEmpty()) {
        frozen_->setVisible(!words.isEmpty());
        update();
    }
}

void MessageLine::refresh() {
    const bool news = !sentence_.isEmpty();
    QPalette colors = palette();
    colors.setColor(QPalette::WindowText, !news ? theme::kSecondary : lead_.isEmpty() ? theme::kInk : theme::kOut);
    words_->setPalette(colors);
    words_->say(news ? lead_ + sentence_ : state_);
}

void MessageLine::resizeEvent(QResizeEvent*) {
    row_->setContentsMargins(side_, 0, width() < kNarrow ? std::min(kNarrowSide, side_) : side_, 0);
}

// While frozen the right end is inked, seen from across the room; it ends where the panels below it do.
void MessageLine::paintEvent(QPaintEvent*) {
    if (frozen_->isHidden()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme::kBlue);
    painter.drawRoundedRect(QRectF(frozen_->geometry()).adjusted(0.0, 2.0, 0.0, -2.0), 4.0, 4.0);
}

}  // namespace trueunit
