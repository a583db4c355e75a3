// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook of 20,000 frames: how long lists and searches take, in the store and in the window. Fails when one of them
// takes more than 100 ms in the middle of its trials, or opening the window more than 300.
#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QListWidget>
#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

#include "app/logbook/frame_search.h"
#include "app/logbook/machines.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"
#include "app/logbook/visits.h"
#include "app/logbook_window.h"
#include "tests/support/frame_builder.h"
#include "tests/support/temporary_folder.h"

using namespace trueunit;

namespace {

constexpr int kMachines = 40, kVisits = 50, kFramesEach = 10;  // 20,000 frames
constexpr qint64 kFirstDay = 1700000000, kDay = 86400;
constexpr double kBudgetMs = 100.0, kOpeningMs = 300.0;
constexpr int kTrials = 9;

const std::vector<QString> kComplaints = {
    QStringLiteral("Garbles on the long line to the north mole; the receiver there prints letters for figures now and "
                   "then, more so when the room is cold in the morning."),
    QStringLiteral("Prints a wrong character about once a line, always with the fourth level missing."),
    QStringLiteral("Runs audibly faster since the motor was changed; the far end loses every tenth word."),
    QStringLiteral("Δεν διαβάζει το τέταρτο επίπεδο· λάθη σε κάθε γραμμή."),
    QStringLiteral("Искажает знаки после долгой паузы."),
};
const std::vector<QString> kWork = {
    QStringLiteral("Contact faces dressed with a burnishing strip and set to the gap of the card; the eccentric of the "
                   "contact box turned until the bias stood at zero, screws tightened, reading watched for a minute."),
    QStringLiteral("Sensing pin of the fourth level freed and its spring replaced. Tape guide cleaned."),
    QStringLiteral("Governor set by the stroboscopic drum; gears looked at, one tooth worn, noted for next time."),
};
const std::vector<std::vector<std::string>> kFound = {
    {"contact-offset"}, {"level-dropout", "contact-scatter"}, {"wrong-speed"}, {"in-order"}, {"contact-bounce"}};

template <typename T>
const T& pick(const std::vector<T>& all, int n) {
    return all[static_cast<std::size_t>(n) % all.size()];
}

FrozenFrame frameNumber(int n, qint64 taken) {
    static const FrozenFrame drawn = test::frameOfLongMarks();
    FrozenFrame frame = drawn;
    auto s = std::make_shared<Snapshot>(*drawn.snapshot);
    s->traces.clear();
    std::vector<Finding> findings;
    for (const std::string& id : pick(kFound, n * 7)) {
        findings.emplace_back();
        findings.back().id = id;
        findings.back().confidence = 0.9;
    }
    s->reading.findings = findings;
    frame.snapshot = s;
    frame.takenSecondsUtc = taken;
    frame.remarks = "Tape of RY, window 128, motor warm, counter " + std::to_string(n);
    return frame;
}

template <typename T>
T must(Result<T> result) {
    if (!result) qFatal("%s", result.error().text.c_str());
    return std::move(*result);
}

void fill(const Store& store) {
    WriteTransaction transaction(store);
    int n = 0;
    for (int m = 0; m < kMachines; ++m) {
        Machine machine;
        machine.name = QStringLiteral("Skerry %1").arg(m + 1);
        machine.mark = QStringLiteral("LM %1").arg(1000 + m);
        machine.remarks = QStringLiteral("Stands in the message room, third table from the window.");
        const qint64 id = must(saveMachine(store, machine));
        for (int v = 0; v < kVisits; ++v) {
            Visit visit;
            visit.machine = id;
            visit.opened = visit.changed = kFirstDay + kDay * (v * 20) + m * 600;
            visit.complaint = pick(kComplaints, m + v);
            visit.workDone = pick(kWork, m * 3 + v);
            visit.result = QStringLiteral("Left in limits.");
            visit.repaired = v % 3 == 0;
            const qint64 visitId = must(saveVisit(store, visit));
            for (int f = 0; f < kFramesEach; ++f, ++n) {
                const KeptFrame kept{frameNumber(n, visit.opened + f * 120), QByteArray(2000, 'x')};
                must(insertFrame(store, visitId, freshUid(), f == 0 ? FrameRole::before : FrameRole::none, kept));
            }
        }
    }
    if (!transaction.commit()) qFatal("not committed");
}

// Prints one line of the table; whether it is within the budget.
bool timed(const char* what, const std::function<qint64()>& run, double budgetMs = kBudgetMs) {
    std::vector<double> ms;
    qint64 found = 0;
    for (int i = 0; i < kTrials; ++i) {
        QElapsedTimer timer;
        timer.start();
        found = run();
        ms.push_back(double(timer.nsecsElapsed()) * 1e-6);
    }
    std::sort(ms.begin(), ms.end());
    const bool in = ms[kTrials / 2] < budgetMs;
    std::printf("%-52s %7lld %8.1f %8.1f  %s\n", what, static_cast<long long>(found), ms[kTrials / 2], ms.back(),
                in ? "" : "BEYOND");
    return in;
}

bool frames(const Store& store, const char* what, FrameFilter filter) {
    return timed(what, [&] { return must(findFrames(store, filter)).all; });
}

bool searches(const Store& store) {
    bool in = true;
    FrameFilter f;
    in &= frames(store, "list: the newest 500 of all", f);
    f.machine = 17;
    in &= frames(store, "machine", f);
    f.text = QStringLiteral("burnishing");
    in &= frames(store, "machine and text", f);
    f = {};
    f.fromUtc = kFirstDay + kDay * 400, f.beforeUtc = *f.fromUtc + kDay * 60;
    in &= frames(store, "date: two months", f);
    f = {};
    f.finding = QStringLiteral("wrong-speed");
    in &= frames(store, "finding", f);
    for (const auto& [what, words] : std::vector<std::pair<const char*, const char*>>{
             {"text in the complaint, one word", "garbles"},
             {"text, three words of different tables", "skerry warm burnishing"},
             {"text, Greek", "ΤΈΤΑΡΤΟ"},
             {"text in one frame", "19999"},
             {"text that is nowhere", "albatross"}}) {
        f = {};
        f.text = QString::fromUtf8(words);
        in &= frames(store, what, f);
    }
    f.text = QStringLiteral("garbles"), f.finding = QStringLiteral("contact-offset");
    f.fromUtc = kFirstDay + kDay * 100;
    in &= frames(store, "text, finding and date", f);
    for (const char* words : {"", "garbles", "skerry warm burnishing", "albatross"})
        in &= timed(qPrintable(QStringLiteral("machines, text \"%1\"").arg(QLatin1String(words))),
                    [&] { return static_cast<qint64>(must(listMachines(store, QString::fromUtf8(words))).size()); });
    in &= timed("visits of a machine", [&] { return static_cast<qint64>(must(visitsOf(store, 17)).size()); });
    in &= timed("frames of a visit", [&] { return static_cast<qint64>(must(framesOf(store, 800)).size()); });
    return in;
}

bool inTheWindow(const QString& path) {
    const auto open = [&] {
        LogbookWindow window(path);
        window.show();
        QApplication::processEvents();
        return qint64{window.machines().count()};
    };
    bool in = timed("the window opens", open, kOpeningMs);
    LogbookWindow window(path);
    window.show();
    QApplication::processEvents();
    for (auto* field : window.findChildren<QLineEdit*>())
        if (field->accessibleName() == QLatin1String("Search")) field->setText(QStringLiteral("garbles"));
    in &= timed("the window shows a search", [&] {
        window.reload();
        QApplication::processEvents();
        return qint64{window.machines().count()};
    });
    return in;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const test::TemporaryFolder folder;
    const QString path = QString::fromStdString(folder.file("logbook.sqlite"));
    QElapsedTimer timer;
    timer.start();
    fill(*must(Store::open(path)));
    std::printf("20,000 frames written in %.1f s\n\n%-52s %7s %8s %8s\n", double(timer.elapsed()) * 1e-3, "", "found",
                "ms", "most ms");
    bool in = timed("open the logbook", [&] { return must(Store::open(path))->readOnly() ? qint64{0} : qint64{1}; });
    in &= searches(*must(Store::open(path)));
    in &= inTheWindow(path);
    return in ? 0 : 1;
}
