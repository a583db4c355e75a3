// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of the logbook's window: which machines, visits and frames are shown.
#include <QComboBox>
#include <QDateTime>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QTreeWidget>
#include <map>

#include "app/finding_names.h"
#include "app/logbook_window.h"
#include "app/machine_history.h"
#include "app/message_line.h"
#include "app/visit_form.h"
#include "widgets/theme.h"
#include "widgets/told.h"
#include "widgets/words.h"

namespace trueunit {

namespace {

constexpr int kMostFrames = 2000;  // of one machine; the search narrows further
constexpr int kRowId = Qt::UserRole;
constexpr int kMachineLines = 3, kMachineGap = 8;  // of an entry; pixels about its lines

// As the country writes it, or as files have it.
QDate dayIn(const QString& text) {
    const QDate day = QLocale().toDate(text.trimmed(), dayFormat());
    return day.isValid() ? day : QDate::fromString(text.trimmed(), Qt::ISODate);
}

QString percent(const std::optional<double>& v, bool sign) {
    if (!v) return QStringLiteral("\u2014");
    return sign ? signedNumber(*v, 1) : number(*v, 1);
}

// What was found, and what the person wrote on it or with it.
QString wordsOf(const FrameRow& frame) {
    QStringList names;
    for (const QString& id : frame.findings) names += findingName(id, frame);
    QString words = names.join(QStringLiteral(", "));
    const QString written = frame.notes + QLatin1Char('\n') + frame.remarks;
    for (const QString& note : written.split(u'\n', Qt::SkipEmptyParts))
        words += (words.isEmpty() ? QString() : QStringLiteral("; ")) + LogbookWindow::tr("\u201c%1\u201d").arg(note);
    return words;
}

// Name, then what there is of it, one line each; a name without room is elided and stands in the tool tip.
QListWidgetItem* machineItem(const MachineSummary& m, QListWidget* list) {
    QString name = m.machine.name;
    if (!m.machine.mark.isEmpty()) name += QStringLiteral(" \u00b7 ") + m.machine.mark;
    const QString last = m.lastTaken ? LogbookWindow::tr("last %1").arg(dayWords(m.lastTaken)) : QString();
    const QString count = counted(m.visits, LogbookWindow::tr("visit"), LogbookWindow::tr("visits")) +
                          QStringLiteral(", ") +
                          counted(m.frames, LogbookWindow::tr("frame"), LogbookWindow::tr("frames"));
    auto* item = new QListWidgetItem(name + QLatin1Char('\n') + count + QLatin1Char('\n') + last, list);
    item->setToolTip(item->text());
    item->setData(kRowId, m.machine.id);
    item->setSizeHint({1, kMachineLines * list->fontMetrics().lineSpacing() + kMachineGap});  // no wider than the list
    return item;
}

QTreeWidgetItem* frameItem(const FrameRow& row) {
    const QString time = QDateTime::fromSecsSinceEpoch(row.taken).toString(QStringLiteral("HH:mm:ss"));
    auto* item = new QTreeWidgetItem(
        {roleName(row.role).isEmpty() ? time : time + QStringLiteral(", ") + told(roleName(row.role).toStdString()),
         percent(row.bias, true), percent(row.end, true), percent(row.gross, false), percent(row.speedError, true),
         !row.within   ? LogbookWindow::tr("cannot tell")
         : *row.within ? LogbookWindow::tr("in")
                       : LogbookWindow::tr("OUT"),
         wordsOf(row)});
    item->setToolTip(6, item->text(6));
    item->setData(0, kRowId, row.id);
    for (int c = 0; c < item->columnCount(); ++c)
        item->setTextAlignment(c, (c >= 1 && c <= 4 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    if (row.within && !*row.within) item->setForeground(5, theme::kOut);
    return item;
}

}  // namespace

QString LogbookWindow::titleOf(const Visit& visit) {
    QString title = dayWords(visit.opened);
    if (visit.repaired) title += LogbookWindow::tr("  repaired");
    if (visit.result.trimmed().isEmpty()) title += LogbookWindow::tr("  open, no result yet");
    return title;
}

FrameFilter LogbookWindow::filter() const {
    FrameFilter f;
    f.text = search_->text();
    if (finding_->currentIndex() > 0) f.finding = finding_->currentData().toString();
    const QDate since = dayIn(since_->text());
    const QDate until = dayIn(until_->text());
    if (since.isValid()) f.fromUtc = since.startOfDay().toSecsSinceEpoch();
    if (until.isValid()) f.beforeUtc = until.addDays(1).startOfDay().toSecsSinceEpoch();
    f.limit = kMostFrames;
    return f;
}

void LogbookWindow::fillMachines() {
    const auto before = chosenMachine();
    const auto all = listMachines(*store_, search_->text());
    if (failed(all)) return;
    framesListed_ = 0;
    {
        const QSignalBlocker quiet(machines_);
        machines_->clear();
        for (const MachineSummary& m : *all) {
            framesListed_ += m.frames;
            QListWidgetItem* item = machineItem(m, machines_);
            if (before == m.machine.id) machines_->setCurrentItem(item);
        }
        if (!machines_->currentItem() && machines_->count() > 0) machines_->setCurrentRow(0);
    }
    if (all->empty())
        foot_->showState(search_->text().isEmpty()
                             ? tr("The logbook is empty; K in the bench window keeps what it shows.")
                             : tr("Nothing in the logbook fits."));
    fillVisits();
}

void LogbookWindow::sayFound(qint64 frames) {
    foot_->clear();
    for (const QString& typed : {since_->text().trimmed(), until_->text().trimmed()})
        if (!typed.isEmpty() && !dayIn(typed).isValid())
            return foot_->warn(tr("\u201c%1\u201d is not a day; write it as %2, or leave the field empty for any day.")
                                   .arg(typed, exampleDay()));
    const QString shownOfAll = frames < framesListed_ ? tr("%1 of %2 frames").arg(frames).arg(framesListed_)
                                                      : counted(frames, tr("frame"), tr("frames"));
    foot_->showState(
        frames > kMostFrames
            ? tr("The newest %1 of %2 frames are shown; narrow the search for others.").arg(kMostFrames).arg(frames)
            : tr("%1 in %2. Enter opens a frame, F1 is the help.").arg(shownOfAll, path_));
}

void LogbookWindow::fillVisits() {
    form_->saveNow();
    const auto machine = chosenMachine();
    const auto frameBefore = chosenFrame();
    const auto visitBefore = chosenVisit();
    std::vector<VisitHistory> histories;
    {
        const QSignalBlocker quiet(visits_);
        visits_->clear();
        if (machine) {
            FrameFilter wanted = filter();
            wanted.machine = machine;
            const auto visits = visitsOf(*store_, *machine);
            const auto found = findFrames(*store_, wanted);
            if (failed(visits) || failed(found)) return;
            std::map<qint64, std::vector<FrameRow>> frames;
            for (auto it = found->frames.rbegin(); it != found->frames.rend(); ++it)
                frames[it->row.visit].push_back(it->row);
            const bool narrowed = found->all > 0 && (wanted.fromUtc || wanted.beforeUtc || !wanted.finding.isEmpty());
            for (const Visit& visit : *visits) {
                if (narrowed && frames[visit.id].empty()) continue;
                auto* item = new QTreeWidgetItem(visits_, {titleOf(visit)});
                item->setData(0, kRowId, visit.id);
                item->setFirstColumnSpanned(true);
                item->setToolTip(0, visit.complaint);
                QFont strong = item->font(0);
                strong.setWeight(QFont::DemiBold);
                item->setFont(0, strong);
                for (const FrameRow& row : frames[visit.id]) {
                    auto* frame = frameItem(row);
                    item->addChild(frame);
                    if (frameBefore == row.id) visits_->setCurrentItem(frame);
                }
                item->setExpanded(true);
                if (!frameBefore && visitBefore == visit.id) visits_->setCurrentItem(item);
                histories.insert(histories.begin(), {visit, frames[visit.id]});
            }
            sayFound(found->all);
        }
        if (!visits_->currentItem() && visits_->topLevelItemCount() > 0)
            visits_->setCurrentItem(visits_->topLevelItem(0));
    }
    history_->show(histories);
    showChosen();
}

}  // namespace trueunit
