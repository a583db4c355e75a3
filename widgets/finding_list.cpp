// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/finding_list.h"

#include <QPainter>
#include <QStringList>
#include <cmath>

#include "widgets/theme.h"

namespace trueunit {

namespace {

constexpr double kBarWidth = 4, kIndent = 13;  // the text beside the bar
constexpr double kBetween = 10;                // entries
constexpr double kLeading = 2;                 // paragraphs

QString qt(const std::string& text) { return QString::fromStdString(text); }

}  // namespace

FindingList::FindingList(QWidget* parent) : QWidget(parent) {
    setAccessibleName(QStringLiteral("List of findings"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FindingList::setFindings(std::vector<Finding> findings) {
    std::vector<Entry> entries;
    const QFont plain = theme::text(theme::kSmallPx);
    for (const Finding& f : findings) {
        Entry entry;
        entry.bar = f.id == "in-order" ? theme::kInOrder : theme::kOut;
        entry.aside = QStringLiteral("%1 % sure").arg(std::lround(100.0 * f.confidence));
        entry.pieces.push_back({qt(f.title), theme::text(theme::kTitlePx, QFont::DemiBold), theme::kInk});
        if (!f.evidence.empty()) entry.pieces.push_back({qt(f.evidence), plain, theme::kSecondary});
        if (!f.lookAt.empty()) entry.pieces.push_back({QStringLiteral("Look at: ") + qt(f.lookAt), plain, theme::kInk});
        if (!f.confirm.empty())
            entry.pieces.push_back({QStringLiteral("Confirm: ") + qt(f.confirm), plain, theme::kInk});
        entries.push_back(std::move(entry));
    }
    take(std::move(entries));
}

void FindingList::setSentences(const QStringList& sentences) {
    std::vector<Entry> entries;
    for (const QString& sentence : sentences)
        entries.push_back(
            {{{sentence, theme::text(theme::kSmallPx), entries.empty() ? theme::kInk : theme::kSecondary}}, {}, {}});
    take(std::move(entries));
}

void FindingList::take(std::vector<Entry> entries) {
    const QString before = text();
    const int height = heightForWidth(width());
    entries_ = std::move(entries);
    if (text() == before) return;
    if (heightForWidth(width()) != height) updateGeometry();
    update();
}

QString FindingList::text() const {
    QStringList lines;
    for (const Entry& entry : entries_) {
        for (const Piece& piece : entry.pieces) lines << piece.text;
        if (!entry.aside.isEmpty()) lines << entry.aside;
    }
    return lines.join(u'\n');
}

double FindingList::paragraph(const Piece& piece, double left, double top, double width, QPainter* painter) const {
    const int flags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
    const QRectF room(left, top, std::max(20.0, width), 10000);
    if (!painter) return QFontMetricsF(piece.font).boundingRect(room, flags, piece.text).height();
    QRectF used;
    painter->setFont(piece.font);
    painter->setPen(piece.color);
    painter->drawText(room, flags, piece.text, &used);
    return used.height();
}

double FindingList::layOut(double width, QPainter* painter) const {
    double y = 0;
    for (const Entry& entry : entries_) {
        const double left = entry.bar.isValid() ? kIndent : 0;
        const double top = y;
        for (std::size_t i = 0; i < entry.pieces.size(); ++i) {
            double room = width - left;
            if (i == 0 && !entry.aside.isEmpty()) {
                const Piece aside{entry.aside, theme::text(theme::kSmallPx), theme::kSecondary};
                const double asideWidth = QFontMetricsF(aside.font).horizontalAdvance(aside.text) + 1;
                if (painter) paragraph(aside, width - asideWidth, y + 1, asideWidth + 1, painter);
                room -= asideWidth + 8;
            }
            y += paragraph(entry.pieces[i], left, y, room, painter) + kLeading;
        }
        if (painter && entry.bar.isValid()) painter->fillRect(QRectF(0, top, kBarWidth, y - top - kLeading), entry.bar);
        y += kBetween;
    }
    return entries_.empty() ? 0 : y - kBetween;
}

int FindingList::heightForWidth(int width) const { return static_cast<int>(std::ceil(layOut(width, nullptr))); }

void FindingList::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    layOut(width(), &painter);
}

}  // namespace trueunit
