// SPDX-License-Identifier: GPL-3.0-or-later
// Writes to a logbook until it is killed, and says on standard output what has been acknowledged. Test helper.
//   keep LOGBOOK SEED | import LOGBOOK ARCHIVE... | migrate LOGBOOK | mend LOGBOOK | draft FOLDER | hold LOGBOOK
#include <QCoreApplication>
#include <QFile>
#include <QThread>
#include <cstdio>

#include "app/logbook/draft.h"
#include "app/logbook/salvage.h"
#include "app/logbook/statement.h"
#include "app/logbook/uid.h"
#include "app/logbook/visit_archive.h"
#include "tests/logbook/logbook_rig.h"

using namespace trueunit;

namespace {

void say(const QString& word) {
    std::fputs((word + '\n').toUtf8().constData(), stdout);
    std::fflush(stdout);
}

int refused(const Error& error) {
    std::fprintf(stderr, "%s\n", error.text.c_str());
    return 2;
}

int keep(const Store& store, qint64 seed) {
    for (qint64 i = 0;; ++i) {
        const QString uid = freshUid();
        const auto kept = keepFrame(
            store, test::keepingOf(QStringLiteral("Skerry %1").arg(i % 3), 1700000000 + seed * 100000 + i, uid, 20000));
        if (!kept) return refused(kept.error());
        say(uid);
    }
}

int import(const Store& store, const QStringList& archives) {
    for (const QString& archive : archives) {
        const auto imported = importVisitArchive(store, archive);
        if (!imported) return refused(imported.error());
        say(archive);
    }
    return 0;
}

int draft(const QString& folder) {
    Draft draft(folder);
    for (int i = 1;; ++i) {
        FrozenFrame frame = test::keepingOf("Skerry 2", 1700000000).kept.frame;
        frame.remarks = std::to_string(i);
        if (Outcome written = draft.write(frame, "a-draft"); !written) return refused(written.error());
        say(QString::number(i));
    }
}

int hold(const Store& store) {
    const WriteTransaction transaction(store);
    say("holding");
    QThread::sleep(60);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    const QString what = arguments.value(1), path = arguments.value(2);
    if (what == "draft") return draft(path);
    if (what == "mend") {
        const auto mended = mendLogbook(path);
        if (!mended) return refused(mended.error());
        say("mended");
        return 0;
    }
    const auto store = Store::open(path);
    if (!store) return refused(store.error());
    if (what == "keep") return keep(**store, arguments.value(3).toLongLong());
    if (what == "import") return import(**store, arguments.mid(3));
    if (what == "hold") return hold(**store);
    return 0;
}
