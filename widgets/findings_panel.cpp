// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/findings_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QStringList>
#include <QVBoxLayout>

#include "widgets/finding_list.h"
#include "widgets/theme.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

QStringList withoutFindings(const Snapshot& s) {
    QStringList sentences;
    if (!s.stateText.empty()) sentences << QString::fromStdString(s.stateText);
    for (const std::string& note : s.reading.notes) sentences << QString::fromStdString(note);
    if (!sentences.isEmpty()) return sentences;
    return {s.state == SignalState::reading ? QStringLiteral("No cause has been looked for.") : whyNothing(s)};
}

}  // namespace

FindingsPanel::FindingsPanel(QWidget* parent)
    : Panel(QStringLiteral("Findings"), parent),
      scroll_(new QScrollArea(this)),
      list_(new FindingList),
      caution_(new QLabel(QStringLiteral("Hazardous loop voltage. Unplug before tools go in."), this)) {
    const QString ink = QStringLiteral("color: %1; background: transparent;").arg(theme::kInk.name());
    scroll_->setWidget(list_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setAccessibleName(QStringLiteral("List of findings"));
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setStyleSheet(QStringLiteral("QScrollArea { background: transparent; }"));
    scroll_->viewport()->setAutoFillBackground(false);
    list_->setAutoFillBackground(false);
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

QString FindingsPanel::shownText() const { return list_->text(); }

void FindingsPanel::refresh(const Snapshot& snapshot) {
    const auto& findings = snapshot.reading.findings;
    if (!findings)
        list_->setSentences(withoutFindings(snapshot));
    else if (findings->empty())
        list_->setSentences({QStringLiteral("Nothing stands out.")});
    else
        list_->setFindings(*findings);
    setRemark(findings && findings->size() > 1 ? QStringLiteral("worst first") : QString());
    describe(shownText() + u' ' + caution_->text());
}

}  // namespace trueunit
