// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/log_command.h"

#include <QDateTime>
#include <QFileInfo>
#include <cstdio>
#include <vector>

#include "app/check_record.h"
#include "app/commands.h"
#include "app/limit_sets.h"
#include "app/log_arguments.h"
#include "app/log_listing.h"
#include "app/logbook/excerpt_flac.h"
#include "app/logbook/keeping.h"
#include "app/logbook/readings_export.h"
#include "app/logbook/salvage.h"
#include "app/logbook/statement.h"
#include "app/logbook/visit_archive.h"
#include "app/save_text.h"
#include "core/acquire/recording.h"
#include "core/recording_run.h"
#include "core/report/reading_json.h"
#include "core/report/reading_text.h"

namespace trueunit {

namespace {

constexpr double kExcerptSeconds = 60.0;  // of a recording that is kept: the last minute
constexpr std::size_t kReadSamples = 65536;

int tell(const std::string& text) {
    std::fwrite(text.data(), 1, text.size(), stdout);
    std::fflush(stdout);  // what was done is said before the next is begun
    return 0;
}

int showAll(const Store& store, const LogArguments& a) {
    if (a.verb == "machines") {
        const auto machines = listMachines(store, a.filter.text);
        if (!machines) return refuse(machines.error());
        return tell(a.json ? machinesJson(*machines) : machinesText(*machines));
    }
    FrameFilter filter = a.filter;
    filter.visit = a.visit;
    if (!a.machine.isEmpty()) {
        const auto machine = findMachineByName(store, a.machine);
        if (!machine) return refuse(machine.error());
        if (!*machine) return refuse(Error{"There is no machine \"" + a.machine.toStdString() + "\" in the logbook."});
        filter.machine = (*machine)->id;
    }
    const auto found = findFrames(store, filter);
    if (!found) return refuse(found.error());
    return tell(a.json ? framesJson(*found) : framesText(*found));
}

int showOne(const Store& store, const LogArguments& a) {
    if (a.visit) {
        if (a.json) {
            LogArguments list = a;
            list.verb = "list";
            return showAll(store, list);
        }
        const auto story = readVisitStory(store, *a.visit);
        if (!story) return refuse(story.error());
        return tell(visitText(*story));
    }
    const auto kept = readFrame(store, *a.frame);
    if (!kept) return refuse(kept.error());
    const Snapshot& then = *kept->frame.snapshot;
    if (!a.again) return tell(a.json ? readingJson(then.reading) + "\n" : readingText(then.reading, then.limits));
    const auto now = measureExcerpt(kept->excerptFlac, then.options, then.limits);
    if (!now) return refuse(now.error());
    return tell(a.json ? readingJson(now->reading) + "\n" : readingPairsText(then, *now));
}

// The last minute of the recording; what the reading rests on when the window is no longer than that.
Result<QByteArray> excerptOf(Recording& recording) {
    recording.seek(0);
    std::vector<float> all, block(kReadSamples);
    const auto keep = static_cast<std::size_t>(kExcerptSeconds * recording.rateHz());
    while (const std::size_t got = recording.read(block)) {
        all.insert(all.end(), block.begin(), block.begin() + static_cast<std::ptrdiff_t>(got));
        if (all.size() > 2 * keep) all.erase(all.begin(), all.end() - static_cast<std::ptrdiff_t>(keep));
    }
    if (all.size() > keep) all.erase(all.begin(), all.end() - static_cast<std::ptrdiff_t>(keep));
    return excerptToFlac(all, recording.rateHz());
}

int keep(const Store& store, const LogArguments& a) {
    const Result<Limits> limits = a.measuring.limits.empty() ? Limits{} : limitSetNamed(a.measuring.limits);
    if (!limits) return refuse(limits.error());
    const std::string path = a.files.front().toStdString();
    Result<Recording> recording = Recording::open(path);
    if (!recording) return refuse(recording.error());
    Keeping keeping;
    FrozenFrame& frame = keeping.kept.frame;
    frame.snapshot = std::make_shared<const Snapshot>(measureRecording(*recording, a.measuring.options, *limits));
    Result<QByteArray> excerpt = excerptOf(*recording);
    if (!excerpt) return refuse(excerpt.error());
    keeping.kept.excerptFlac = *excerpt;
    frame.takenSecondsUtc = QDateTime::currentSecsSinceEpoch();
    frame.machine = a.machine.toStdString();
    frame.remarks = a.remarks.value_or(QString()).toStdString();
    frame.selfCheck = lastCheckLine();
    frame.inputDescription = QFileInfo(a.files.front()).fileName().toStdString();
    keeping.role = a.role;
    keeping.visit = a.visit;
    const auto kept = keepFrame(store, keeping);
    if (!kept) return refuse(kept.error());
    return tell("Kept as frame " + std::to_string(kept->frame) + " of visit " + std::to_string(kept->visit) + ".\n");
}

Outcome writeTexts(const Store& store, const LogArguments& a) {
    const auto visit = findVisit(store, *a.visit);
    if (!visit) return visit.error();
    if (!*visit) return Error{"There is no visit " + std::to_string(*a.visit) + " in the logbook."};
    Visit v = **visit;
    const auto machine = findMachine(store, v.machine);
    if (!machine) return machine.error();
    Machine m = **machine;
    const auto take = [](const std::optional<QString>& from, QString& to) { to = from.value_or(to); };
    take(a.complaint, v.complaint), take(a.work, v.workDone), take(a.parts, v.parts), take(a.oil, v.oil);
    take(a.result, v.result), take(a.mark, m.mark), take(a.card, m.card), take(a.remarks, m.remarks);
    v.repaired = v.repaired || a.repaired;
    if (a.mark || a.card || a.remarks) m.changed = QDateTime::currentSecsSinceEpoch();
    v.changed = QDateTime::currentSecsSinceEpoch();
    if (const auto saved = saveMachine(store, m); !saved) return saved.error();
    if (const auto saved = saveVisit(store, v); !saved) return saved.error();
    return done();
}

int write(const Store& store, const LogArguments& a) {
    WriteTransaction transaction(store);
    if (!transaction.begun()) return refuse(transaction.begun().error());
    if (a.visit)
        if (Outcome written = writeTexts(store, a); !written) return refuse(written.error());
    if (a.frame)
        if (Outcome marked = setRole(store, *a.frame, a.role); !marked) return refuse(marked.error());
    if (Outcome committed = transaction.commit(); !committed) return refuse(committed.error());
    return 0;
}

Outcome exportReadings(const Store& store, const LogArguments& a) {
    FrameFilter filter;
    filter.limit = 10000000;
    filter.visit = a.visit;
    if (!a.visit) {
        const auto machine = findMachineByName(store, a.machine);
        if (!machine) return machine.error();
        if (!*machine) return Error{"There is no machine \"" + a.machine.toStdString() + "\" in the logbook."};
        filter.machine = (*machine)->id;
    }
    const auto found = findFrames(store, filter);
    if (!found) return found.error();
    const auto text = a.out.endsWith(".csv", Qt::CaseInsensitive) ? readingsCsv(store, found->frames)
                                                                  : readingsJson(store, found->frames);
    if (!text) return text.error();
    return saveText(a.out, *text);
}

int exportAs(const Store& store, const LogArguments& a) {
    Outcome written = Error{"The name of --out must end in .zip, .csv or .json."};
    if (a.out.endsWith(".zip", Qt::CaseInsensitive))
        written = a.visit ? writeVisitArchive(store, *a.visit, a.out)
                          : Outcome(Error{"An archive holds one visit; name it with --visit."});
    else if (a.out.endsWith(".csv", Qt::CaseInsensitive) || a.out.endsWith(".json", Qt::CaseInsensitive))
        written = exportReadings(store, a);
    return written ? 0 : refuse(written.error());
}

int import(const Store& store, const LogArguments& a) {
    for (const QString& file : a.files) {
        const auto imported = importVisitArchive(store, file);
        if (!imported) return refuse(imported.error());
        tell("Visit " + std::to_string(imported->visit) + " of " + imported->machine.toStdString() + ": " +
             std::to_string(imported->framesNew) + " new frames, " + std::to_string(imported->framesThere) +
             " that were here already.\n");
    }
    return 0;
}

int report(const Store& store, const LogArguments& a) {
    const auto story = readVisitStory(store, *a.visit);
    if (!story) return refuse(story.error());
    const auto written = writeVisitReport(*story, a.paper, a.out);
    return written ? 0 : refuse(written.error());
}

int mend(const QString& path) {
    const auto mended = mendLogbook(path);
    if (!mended) return refuse(mended.error());
    return tell(mended->sentence().toStdString() + "\n");
}

}  // namespace

bool logNeedsFonts(const QStringList& arguments) { return arguments.value(0) == QLatin1String("report"); }

int runLog(const QStringList& arguments) {
    const Result<LogArguments> parsed = parseLogArguments(arguments);
    if (!parsed) return refuse(parsed.error());
    const LogArguments& a = *parsed;
    if (a.verb == "help") return tell(logHelp());
    const QString path = a.logbook.isEmpty() ? Store::defaultPath() : a.logbook;
    if (a.verb == "mend") return mend(path);
    const auto store = Store::open(path);
    if (!store) return refuse(store.error());
    if (a.verb == "machines" || a.verb == "list") return showAll(**store, a);
    if (a.verb == "show") return showOne(**store, a);
    if (a.verb == "keep") return keep(**store, a);
    if (a.verb == "write") return write(**store, a);
    if (a.verb == "export") return exportAs(**store, a);
    if (a.verb == "import") return import(**store, a);
    if (a.verb == "report") return report(**store, a);
    if (const Outcome checked = (*store)->check(); !checked) return refuse(checked.error());
    return tell("The logbook \"" + path.toStdString() + "\" is in order.\n");
}

}  // namespace trueunit
