// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/findings_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStringList>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/report/nudge_words.h"
#include "widgets/finding_list.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

QStringList withoutFindings(const Snapshot& s) {
    if (!s.reading.valid())
        return {Words::tr("No cause is told without a reading.")};  // the grid says why there is none
    QStringList sentences;
    if (!s.stateText.empty()) sentences << told(s.stateText);
    for (const std::string& note : s.reading.notes) sentences << told(note);
    if (!sentences.isEmpty()) return sentences;
    return {s.state == SignalState::reading ? Words::tr("No cause has been looked for.") : whyNothing(s)};
}

// What is out has a cause; the tape stays marked meanwhile.
QString nothingFound(const Snapshot& s) {
    return s.reading.verdict.exceeded.empty() ? Words::tr("Nothing stands out so far.")
                                              : Words::tr("Too few characters yet to tell the cause of what is out.");
}

// Findings rest on other characters than the readings beside, more or, after a nudge, fewer: it is always said on how
// many.
std::size_t usedBy(const Snapshot& s) { return s.findingsUsed > 0 ? s.findingsUsed : s.windowUsed; }

// What is told of the tape rests on more of them.
QString tapeOver(const Snapshot& s) {
    if (!s.reading.findings) return {};
    const bool told = std::any_of(s.reading.findings->begin(), s.reading.findings->end(),
                                  [](const Finding& f) { return f.seenAt.slips || f.seenAt.characters; });
    const long compared = s.reading.text.compared;
    return told && compared > static_cast<long>(usedBy(s)) ? Words::tr(", the tape over %1").arg(compared) : QString();
}

QString remarkOf(const Snapshot& s) {
    if (!s.reading.findings || s.reading.findings->empty()) return {};
    const std::size_t used = usedBy(s);
    const std::size_t since = charactersSinceNudge(s, used);
    QString over = overWords(used) + tapeOver(s);
    if (since < used) over += Words::tr(", %1 since the nudge").arg(since);
    return s.reading.findings->size() < 2 ? over : Words::tr("worst first, %1").arg(over);
}

// The same where there is little room.
QString briefRemarkOf(const Snapshot& s) {
    const std::size_t used = usedBy(s);
    const std::size_t since = charactersSinceNudge(s, used);
    if (since < used) return Words::tr("%1 of %2 since the nudge").arg(since).arg(used);
    const QString tape = tapeOver(s);
    return tape.isEmpty() ? overWords(used) : Words::tr("over %1").arg(used) + tape;
}

// What the machine card says stands below the findings, with no bar of its own.
std::vector<Finding> withDrive(std::vector<Finding> findings, const std::optional<DriveReading>& drive) {
    if (!drive) return findings;
    Finding f;
    f.id = FindingList::kRemarkId;
    f.title = "Drive: " + drive->card;
    f.evidence = drive->explanation.speedWords;
    for (const std::string& cause : drive->explanation.causes) f.evidence += " " + cause;
    for (const GearWanted& g : drive->gears) f.lookAt += (f.lookAt.empty() ? "" : " ") + gearWords(g);
    findings.push_back(std::move(f));
    return findings;
}

}  // namespace

FindingsPanel::FindingsPanel(QWidget* parent)
    : Panel(Words::tr("Findings"), parent),
      scroll_(new QScrollArea(this)),
      list_(new FindingList),
      caution_(new QLabel(this)) {
    setExercise(false);
    const QString ink = QStringLiteral("color: %1; background: transparent;").arg(theme::kInk.name());
    scroll_->setWidget(list_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setAccessibleName(Words::tr("List of findings"));
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setStyleSheet(QStringLiteral("QScrollArea { background: transparent; }"));
    scroll_->viewport()->setAutoFillBackground(false);
    list_->setAutoFillBackground(false);
    scroll_->setMinimumHeight(24);
    // Other lines are cut by the edges then.
    connect(scroll_->verticalScrollBar(), &QScrollBar::valueChanged, list_, qOverload<>(&QWidget::update));
    connect(scroll_->verticalScrollBar(), &QScrollBar::rangeChanged, list_, qOverload<>(&QWidget::update));
    caution_->setFont(theme::text(theme::kSmallPx, QFont::Medium));
    caution_->setStyleSheet(ink);
    caution_->setWordWrap(true);
    caution_->setAccessibleName(Words::tr("Caution"));
    bodyLayout()->addWidget(scroll_, 1);
    bodyLayout()->addSpacing(6);
    bodyLayout()->addWidget(caution_);
    auto* card = new QToolButton(this);
    card->setText(Words::tr("Card"));
    card->setToolTip(Words::tr("The machine card: motor, gears, and what they make of the speed (Ctrl+K)"));
    card->setAccessibleName(Words::tr("Machine card"));
    card->setFont(theme::text(theme::kSmallPx));
    card->setFocusPolicy(Qt::TabFocus);
    taller_ = new QToolButton(this);
    taller_->setText(Words::tr("Taller"));
    taller_->setToolTip(Words::tr("Give the findings the height of the readings, or take it back (Shift+F)"));
    taller_->setAccessibleName(Words::tr("Taller findings"));
    taller_->setCheckable(true);
    taller_->setFont(theme::text(theme::kSmallPx));
    taller_->setFocusPolicy(Qt::TabFocus);
    addTool(taller_);
    addTool(card);
    connect(taller_, &QToolButton::clicked, this, &FindingsPanel::setTall);
    connect(scroll_->verticalScrollBar(), &QScrollBar::rangeChanged, this, &FindingsPanel::weighHeight);
    connect(card, &QToolButton::clicked, this, &FindingsPanel::cardWanted);
    connect(list_, &FindingList::wanted, this, &FindingsPanel::choose);
    connect(list_, &FindingList::shownAt, this, &FindingsPanel::bringInto);
    refresh(shown());
}

void FindingsPanel::setExercise(bool exercise) {
    caution_->setText(exercise ? Words::tr("An exercise. On a machine: hazardous voltage, unplug first.")
                               : Words::tr("Hazardous loop voltage. Unplug before tools go in."));
}

void FindingsPanel::toggleTall() {
    if (taller_->isVisibleTo(this)) setTall(!tall_);
}

int FindingsPanel::fullHeight() const {
    const QSize seen = scroll_->viewport()->size();
    return height() - seen.height() + list_->heightForWidth(seen.width());
}

void FindingsPanel::setTall(bool tall) {
    wished_ = tall;
    beTall(tall);
}

void FindingsPanel::beTall(bool tall) {
    tall_ = tall;
    taller_->setChecked(tall);
    if (!tall) scroll_->verticalScrollBar()->setValue(0);  // the worst is in sight again
    emit tallWanted(tall);
}

// The button is there while it is of use; what fits in the usual height goes back to it until more is found again.
void FindingsPanel::weighHeight() {
    if (!tall_) usualRoom_ = scroll_->viewport()->height();
    const bool fits = list_->heightForWidth(scroll_->viewport()->width()) <= usualRoom_;
    taller_->setVisible(!fits);
    if (fits ? tall_ : wished_ && !tall_) beTall(!fits);
}

void FindingsPanel::choose(int index) {
    const auto& findings = shown().reading.findings;
    const bool known = findings && index >= 0 && index < static_cast<int>(findings->size());
    chosen_ = known ? (*findings)[static_cast<std::size_t>(index)].id : std::string();
    keepChosen(findings.value_or(std::vector<Finding>{}));
}

// The heading of the chosen one at the top, unless all of it, or as much as there is room for, is seen already.
void FindingsPanel::bringInto(int top, int bottom) {
    QScrollBar* bar = scroll_->verticalScrollBar();
    const int room = scroll_->viewport()->height();
    if (top < bar->value() || std::min(bottom, top + room) > bar->value() + room) bar->setValue(top);
}

void FindingsPanel::chooseNext() {
    const auto& findings = shown().reading.findings;
    const int count = findings ? static_cast<int>(findings->size()) : 0;
    choose(list_->chosen() + 1 < count ? list_->chosen() + 1 : -1);
}

// Findings change places as their numbers change; the chosen one is followed by its id.
void FindingsPanel::keepChosen(const std::vector<Finding>& findings) {
    int index = -1;
    EvidencePlaces places;
    for (std::size_t i = 0; i < findings.size() && index < 0; ++i)
        if (!chosen_.empty() && findings[i].id == chosen_) {
            index = static_cast<int>(i);
            places = findings[i].seenAt;
        }
    list_->setChosen(index);
    if (places == places_) return;
    places_ = places;
    emit evidenceChosen(places_);
}

QString FindingsPanel::shownText() const { return list_->text(); }

void FindingsPanel::refresh(const Snapshot& snapshot) {
    if (snapshot.seconds < seconds_) {  // another input: its findings are read from their beginning
        chosen_.clear();
        scroll_->verticalScrollBar()->setValue(0);
    }
    seconds_ = snapshot.seconds;
    const auto& findings = snapshot.reading.findings;
    if (!findings)
        list_->setSentences(withoutFindings(snapshot));
    else if (findings->empty())
        list_->setSentences({nothingFound(snapshot)});
    else
        list_->setFindings(withDrive(*findings, snapshot.reading.drive));
    keepChosen(findings.value_or(std::vector<Finding>{}));
    const std::size_t count = findings ? findings->size() : 0;
    setTitle(count < 2 ? Words::tr("Findings") : Words::tr("%1 findings").arg(count));  // not all may be in view
    const QString remark = remarkOf(snapshot);
    setRemark(remark, Tone::quiet, {briefRemarkOf(snapshot), overWords(usedBy(snapshot))});
    weighHeight();
    describe(shownText() + u' ' + caution_->text());
}

}  // namespace trueunit
