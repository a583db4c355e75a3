// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/finding_list.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/report/finding_words.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr double kBarWidth = 4, kIndent = 13;  // the text beside the bar
constexpr double kRight = 7;                   // kept free beside the frame of the chosen one
constexpr double kFrame = 4;                   // between the frame and the text above and below
constexpr double kBetween = 10;                // entries
constexpr double kLeading = 2;                 // paragraphs

// Of the help, where a finding has a page or a part of one of its own: the others are told by the page of all findings.
QString pageOf(const std::string& id) {
    static const std::map<std::string, const char*> kPages = {
        {"contact-offset", "bias.md"},     {"end-offset", "end.md"},      {"contact-bounce", "bounce.md"},
        {"contact-scatter", "scatter.md"}, {"wrong-speed", "speed.md"},   {"unsteady-speed", "speed.md"},
        {"cyclic-drive", "cyclic.md"},     {"level-late", "instants.md"}, {"slow-rise", "characteristic.md"},
        {"trip-late", "stop.md"}};
    if (id == "level-dropout" || id == "level-stuck")
        return Words::tr("findings.md#marks-that-get-lost", "page of the help");
    if (id == "feed-slip") return Words::tr("findings.md#when-the-feed-slips", "page of the help");
    if (id == "weak-signal" || id == "hum" || id == "clipped")
        return Words::tr("connect.md#levels-and-grounds", "page of the help");
    const auto page = kPages.find(id);
    return page == kPages.end() ? QString() : QString::fromLatin1(page->second);
}

}  // namespace

QString sureText(const Finding& f) {
    if (f.id == "no-signal" || f.id == FindingList::kRemarkId) return {};
    const QString words = f.minor ? Words::tr("minor, %1 % sure") : Words::tr("%1 % sure");
    return words.arg(std::lround(100.0 * f.confidence));
}

QString sureMeans() {
    return Words::tr(
        "\u201cSure\u201d: how often such a finding was right on simulated machines with one known fault each; with "
        "several, maybe less often. It holds for all that stands under \u201cLook at\u201d together, not for one of "
        "them. "
        "\u201cMinor\u201d: within its limit.");
}

FindingList::FindingList(QWidget* parent) : QWidget(parent) {
    setAccessibleName(Words::tr("List of findings"));
    setToolTip(sureMeans());
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
}

void FindingList::setChosen(int index) {
    if (index == chosen_) return;
    chosen_ = index;
    explainedBy(index);
    std::vector<double> tops;
    const double height = layOut(width(), nullptr, &tops);
    if (chosen_ >= 0 && chosen_ < static_cast<int>(tops.size())) {
        const auto i = static_cast<std::size_t>(chosen_);
        emit shownAt(static_cast<int>(tops[i]), static_cast<int>(i + 1 < tops.size() ? tops[i + 1] : height));
    }
    update();
}

int FindingList::topOf(int index) const {
    std::vector<double> tops;
    layOut(width(), nullptr, &tops);
    return static_cast<int>(tops.at(static_cast<std::size_t>(index)));
}

int FindingList::findingCount() const {
    int count = 0;
    for (const Entry& entry : entries_) count += entry.bar.isValid() ? 1 : 0;
    return count;
}

int FindingList::findingAt(double y) const {
    std::vector<double> tops;
    layOut(width(), nullptr, &tops);
    int at = -1;
    for (std::size_t i = 0; i < tops.size(); ++i)
        if (entries_[i].bar.isValid() && y >= tops[i]) at = static_cast<int>(i);
    return at;
}

void FindingList::mousePressEvent(QMouseEvent* event) {
    const int hit = findingAt(event->position().y());
    emit wanted(hit == chosen_ ? -1 : hit);
}

void FindingList::mouseMoveEvent(QMouseEvent* event) { explainedBy(findingAt(event->position().y())); }

void FindingList::explainedBy(int index) {
    const bool any = index >= 0 && index < static_cast<int>(entries_.size());
    setProperty(theme::kHelpPage, any ? pageOf(entries_[static_cast<std::size_t>(index)].id) : QString());
}

void FindingList::keyPressEvent(QKeyEvent* event) {
    const int last = findingCount() - 1;
    if (last >= 0 && event->key() == Qt::Key_Down)
        emit wanted(std::min(last, chosen_ + 1));
    else if (last >= 0 && event->key() == Qt::Key_Up)
        emit wanted(std::max(-1, chosen_ - 1));
    else
        QWidget::keyPressEvent(event);
}

void FindingList::focusInEvent(QFocusEvent*) { update(); }
void FindingList::focusOutEvent(QFocusEvent*) { update(); }

void FindingList::setFindings(const std::vector<Finding>& findings) {
    std::vector<Entry> entries;
    const QFont plain = theme::text(theme::kSmallPx);
    CautionsSaid said{};
    for (const Finding& f : findings) {
        Entry entry;
        const bool remark = f.id == kRemarkId;
        if (!remark) entry.bar = f.id == "in-order" ? theme::kInOrder : f.minor ? theme::kSecondary : theme::kOut;
        entry.hollow = f.minor;
        entry.id = f.id;
        entry.aside = sureText(f);
        entry.pieces.push_back({told(f.title), theme::text(theme::kTitlePx, QFont::DemiBold), theme::kInk});
        if (!f.evidence.empty()) entry.pieces.push_back({told(f.evidence), plain, theme::kSecondary});
        if (!f.lookAt.empty())
            entry.pieces.push_back({(remark ? Words::tr("Gears: ") : Words::tr("Look at: ")) + told(f.lookAt), plain,
                                    remark ? theme::kSecondary : theme::kInk});
        if (const std::string confirm = withoutRepeated(f.confirm, said); !confirm.empty())
            entry.pieces.push_back({Words::tr("Confirm: ") + told(confirm), plain, theme::kInk});
        entries.push_back(std::move(entry));
    }
    take(std::move(entries));
}

void FindingList::setSentences(const QStringList& sentences) {
    std::vector<Entry> entries;
    for (const QString& sentence : sentences)
        entries.push_back(
            {{{sentence, theme::text(theme::kSmallPx), entries.empty() ? theme::kInk : theme::kSecondary}},
             {},
             {},
             {},
             {}});
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
    const QFontMetricsF metrics(piece.font);
    const QString text = unbroken(piece.text);
    const double height = metrics.boundingRect(room, flags, text).height();
    if (!painter) return height;
    const double lines = std::max(1.0, std::round(height / metrics.lineSpacing()));
    painter->save();
    painter->setClipRect(wholeLines(top, height / lines), Qt::IntersectClip);
    painter->setFont(piece.font);
    painter->setPen(piece.color);
    painter->drawText(room, flags, text);
    painter->restore();
    return height;
}

// What is scrolled to shows no line that the edge of its panel would cut through.
QRectF FindingList::wholeLines(double top, double line) const {
    constexpr double kRounding = 0.05;  // of a line
    const QRectF seen = parentWidget() ? QRectF(-pos(), parentWidget()->size()) : QRectF(rect());
    const double first = std::ceil((seen.top() - top) / line - kRounding),
                 last = std::floor((seen.bottom() - top) / line + kRounding);
    const double from = std::max(seen.top(), top + first * line), to = std::min(seen.bottom(), top + last * line);
    return {seen.left(), from, seen.width(), std::max(0.0, to - from)};
}

// What is told though it is not beyond its limit differs by its shape as well.
void FindingList::drawBar(QPainter& painter, const QRectF& bar, const Entry& entry) {
    if (!entry.hollow) return painter.fillRect(bar, entry.bar);
    painter.setPen(theme::pen(entry.bar));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar.adjusted(0.5, 0.5, -0.5, -0.5));
}

double FindingList::layOut(double width, QPainter* painter, std::vector<double>* tops) const {
    double y = kFrame;
    for (const Entry& entry : entries_) {
        const bool chosen = chosen_ >= 0 && &entry == &entries_[static_cast<std::size_t>(chosen_)];
        if (tops) tops->push_back(y - kFrame);
        const double left = entry.bar.isValid() ? kIndent : 0;
        const double top = y;
        for (std::size_t i = 0; i < entry.pieces.size(); ++i) {
            double room = width - left - kRight;
            if (i == 0 && !entry.aside.isEmpty()) {
                const Piece aside{entry.aside, theme::text(theme::kSmallPx), theme::kSecondary};
                const double asideWidth = QFontMetricsF(aside.font).horizontalAdvance(aside.text) + 1;
                if (painter) paragraph(aside, width - kRight - asideWidth, y + 1, asideWidth + 1, painter);
                room -= asideWidth + 8;
            }
            y += paragraph(entry.pieces[i], left, y, room, painter) + kLeading;
        }
        if (painter && entry.bar.isValid()) drawBar(*painter, {0, top, kBarWidth, y - top - kLeading}, entry);
        if (painter && chosen) {
            painter->setPen(theme::pen(theme::kBlue, 1.5));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(QRectF(0.75, top - kFrame + 0.75, width - 1.5, y - top - kLeading + 2 * kFrame - 1.5));
        }
        y += kBetween;
    }
    return entries_.empty() ? 0 : y - kBetween - kLeading + kFrame;
}

int FindingList::heightForWidth(int width) const { return static_cast<int>(std::ceil(layOut(width, nullptr))); }

void FindingList::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    layOut(width(), &painter);
    if (!hasFocus() || chosen_ >= 0) return;
    QPen focus = theme::pen(theme::kBlue);
    focus.setDashPattern({1, 3});  // a finding that fills the list must not pass for chosen
    painter.setPen(focus);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace trueunit
