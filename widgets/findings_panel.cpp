// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/findings_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QTextDocumentFragment>
#include <QVBoxLayout>
#include <cmath>

#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

QString colored(const QColor& color, const QString& html) {
    return QStringLiteral("<span style='color:%1'>%2</span>").arg(color.name(), html);
}

// One finding beside a bar: colour for a fault, green for "in order"; the title says which in words.
QString findingHtml(const Finding& f) {
    const bool inOrder = f.id == "in-order";
    const QColor bar = inOrder ? theme::kInOrder : theme::kOut;
    QString text =
        QStringLiteral(
            "<table width='100%' cellspacing='0' cellpadding='0'><tr>"
            "<td><span style='font-size:14px;font-weight:600'>%1</span></td>"
            "<td align='right'>%2</td></tr></table>")
            .arg(escaped(f.title),
                 colored(theme::kSecondary, QStringLiteral("%1 % sure").arg(std::lround(100.0 * f.confidence))));
    if (!f.evidence.empty()) text += colored(theme::kSecondary, escaped(f.evidence)) + QStringLiteral("<br/>");
    if (!f.lookAt.empty()) text += QStringLiteral("Look at: ") + escaped(f.lookAt) + QStringLiteral("<br/>");
    if (!f.confirm.empty()) text += QStringLiteral("Confirm: ") + escaped(f.confirm);
    return QStringLiteral(
               "<table width='100%' cellspacing='0' cellpadding='0' style='margin-bottom:8px'><tr>"
               "<td width='4' bgcolor='%1'></td><td style='padding-left:9px'>%2</td></tr></table>")
        .arg(bar.name(), text);
}

QString withoutFindings(const Snapshot& s) {
    QString html;
    if (!s.stateText.empty()) html += QStringLiteral("<p style='margin:0 0 6px 0'>%1</p>").arg(escaped(s.stateText));
    for (const std::string& note : s.reading.notes)
        html += QStringLiteral("<p style='margin:0 0 6px 0'>%1</p>").arg(colored(theme::kSecondary, escaped(note)));
    if (!html.isEmpty()) return html;
    return s.state == SignalState::reading ? colored(theme::kSecondary, QStringLiteral("No cause has been looked for."))
                                           : whyNothing(s).toHtmlEscaped();
}

QString listHtml(const Snapshot& s) {
    if (!s.reading.findings) return withoutFindings(s);
    QString html;
    for (const Finding& f : *s.reading.findings) html += findingHtml(f);
    return html.isEmpty() ? colored(theme::kInOrder, QStringLiteral("Nothing stands out.")) : html;
}

}  // namespace

FindingsPanel::FindingsPanel(QWidget* parent)
    : Panel(QStringLiteral("Findings"), parent),
      scroll_(new QScrollArea(this)),
      list_(new QLabel),
      caution_(new QLabel(QStringLiteral("Hazardous loop voltage. Unplug before tools go in."), this)) {
    const QString ink = QStringLiteral("color: %1; background: transparent;").arg(theme::kInk.name());
    list_->setFont(theme::text(theme::kSmallPx));
    list_->setStyleSheet(ink);
    list_->setWordWrap(true);
    list_->setTextFormat(Qt::RichText);
    list_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    list_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    list_->setAccessibleName(QStringLiteral("List of findings"));
    scroll_->setWidget(list_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setAccessibleName(QStringLiteral("List of findings"));
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setStyleSheet(QStringLiteral("QScrollArea { background: transparent; }"));
    scroll_->viewport()->setAutoFillBackground(false);
    scroll_->setMinimumHeight(24);
    caution_->setFont(theme::text(theme::kSmallPx, QFont::Medium));
    caution_->setStyleSheet(ink);
    caution_->setWordWrap(true);
    caution_->setAccessibleName(QStringLiteral("Caution"));
    bodyLayout()->addWidget(scroll_, 1);
    bodyLayout()->addSpacing(6);
    bodyLayout()->addWidget(caution_);
    refresh(shown());
}

QString FindingsPanel::shownText() const { return QTextDocumentFragment::fromHtml(list_->text()).toPlainText(); }

void FindingsPanel::refresh(const Snapshot& snapshot) {
    const QString html = listHtml(snapshot);
    if (html == list_->text() && !accessibleDescription().isEmpty()) return;
    list_->setText(html);
    setRemark(snapshot.reading.findings ? QStringLiteral("worst first") : QString());
    describe(shownText() + u' ' + caution_->text());
}

}  // namespace trueunit
